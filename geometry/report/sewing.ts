/**
 * A block laid out and sewn: the first stages of the pipeline, shared by all that is said about a block.
 *
 * In      a block.
 * Out     its patches and plane; what keeps it from being sewn; and, where nothing does, its plans, pressed.
 */
import { type Laid, lay } from '../block/lay.ts'
import type { Block } from '../values/block.ts'
import { multiply, rational, toFile } from '../exact/rational.ts'
import type { Dot } from '../plane/points.ts'
import { regions } from '../plane/regions.ts'
import { type Plane, subdivide } from '../plane/subdivide.ts'
import type { PressedPlan } from '../pressing/plan.ts'
import { plansOf } from './plans.ts'
import type { Thickest } from '../pressing/layers/bulk.ts'
import { type Folds, foldsOf } from '../pressing/layers/folds.ts'
import { lighter } from '../pressing/layers/reduceBulk.ts'
import { type Clashes, clashesIn } from '../pressing/unitTurns.ts'
import type { Problem } from '../values/report.ts'

/** How far a plan is worked out: at once, or with the layers of cloth, which take longer. */
export type Depth = 'quick' | 'whole'

export interface SewnBlock {
  readonly laid: Laid
  readonly plane: Plane
  readonly faults: readonly Problem[]
  readonly depth: Depth
  readonly sewn: { readonly taken: PressedPlan; readonly others: readonly PressedPlan[] } | null
  /** The cloth as it lies; null where it was not asked for, or where the block has too many patches or folds. */
  readonly cloth: { readonly folds: Folds; readonly thickest: Thickest } | null
}

/** Patches above which layers of cloth are not reckoned. */
const MOST_LAYERED = 12_000

export function sewnBlock(block: Block, depth: Depth = 'whole'): SewnBlock {
  const laid = lay(block)
  const plane = planeOf(laid)
  const faults = faultsOf(laid, plane)
  const sewn = faults.length === 0 ? plansOf(laid, plane, block.order ?? 'auto') : null
  if (sewn === null || depth === 'quick' || laid.patches.length > MOST_LAYERED) return { laid, plane, faults, depth, sewn, cloth: null }
  const folds = foldsOf(laid, plane, sewn.taken)
  const found = lighter(plane, sewn.taken, folds)
  if (found === null) return { laid, plane, faults, depth, sewn, cloth: null }
  return { laid, plane, faults, depth, sewn: { ...sewn, taken: found.plan }, cloth: { folds, thickest: found.thickest } }
}

export function planeOf(laid: Laid): Plane {
  return subdivide(
    laid.patches.map(({ corners }) => corners),
    outlineOf(laid),
  )
}

/** The block with its borders on. */
export function outlineOf({ borders, den, width, height }: Laid): Dot[] {
  const out = borders * den
  return box(-out, -out, width + out, height + out)
}

const box = (x0: number, y0: number, x1: number, y1: number): Dot[] => [
  [x0, y0],
  [x1, y0],
  [x1, y1],
  [x0, y1],
]

const WORDS = {
  gap: 'There is no cloth here; fill the gap.',
  overlap: 'Units lie over each other here; move one of them.',
  outside: 'Cloth lies beyond the grid here; move it in or make the grid larger.',
}

export function faultsOf(laid: Laid, plane: Plane): Problem[] {
  if (plane.faults.length === 0) return []
  const own = laid.patches.filter(({ unit }) => unit >= 0)
  const corners = own.map((patch) => patch.corners)
  // With borders on, the plane's outline is not the grid's.
  const { faults } = laid.borders === 0 ? plane : subdivide(corners, box(0, 0, laid.width, laid.height))
  const sorted = [...faults].sort((a, b) => a.from[0] - b.from[0] || a.from[1] - b.from[1] || a.to[0] - b.to[0] || a.to[1] - b.to[1])
  return regions(sorted, corners, laid.width, laid.height).map(({ kind, at, area, patches }) => ({
    code: kind,
    at: [toFile(multiply(at[0], rational(1, laid.den))), toFile(multiply(at[1], rational(1, laid.den)))],
    units: unitsOf(
      laid,
      patches.map((patch) => (own[patch] as Laid['patches'][number]).unit),
    ),
    message: WORDS[kind],
    area: area / (laid.den * laid.den),
  }))
}

/** Ids of units by their places, each once. */
export const unitsOf = (laid: Laid, units: readonly number[]): string[] => [...new Set(units)].flatMap((unit) => laid.block.units[unit]?.id ?? [])

/** The clashes of another block that is weighed against this one; null where it cannot be sewn. */
export function clashesOf(block: Block): Clashes | null {
  const { laid, plane, sewn } = sewnBlock(block, 'quick')
  return sewn === null ? null : clashesIn(laid, plane, sewn.taken)
}
