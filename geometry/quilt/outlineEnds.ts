/**
 * The seams that end on the outline of a place, frame and all, as it lies turned and pressed.
 *
 * In      a laid place whose block can be sewn, its turn, which way it is pressed.
 * Out     for top, right, bottom, left: each seam end with its exact place in the quilt. Ends in a corner are seen from both edges.
 */
import { cellOf } from '../block/lengthsOf.ts'
import { add, multiply, type Rational, subtract, ZERO } from '../exact/rational.ts'
import { type LaidEdge, turnedEdges } from '../neighbours/blocksSideBySide.ts'
import { type ShownEdges, shownEdges } from '../neighbours/looseEnds.ts'
import type { PressedPlan } from '../pressing/plan.ts'
import { opposite, tiedSeams } from '../pressing/tiedSeams.ts'
import type { Toward } from '../pressing/values.ts'
import type { Turn } from '../values/block.ts'
import type { PlacePressing } from '../values/quilt.ts'
import type { ExactSize } from './measures.ts'
import type { LaidPlace } from './places.ts'
import type { WornBlock } from './wornBlocks.ts'

export interface OutlineEnd {
  readonly at: ExactSize
  /** The seam's direction: along the edge to the right or down, and into the place. */
  readonly along: number
  readonly inward: number
  /** The way its allowances lean along the edge: +1 right or down, 0 open. */
  readonly lean: -1 | 0 | 1
  readonly seam: string
}

/** Top, right, bottom, left. */
export type Outline = readonly [readonly OutlineEnd[], readonly OutlineEnd[], readonly OutlineEnd[], readonly OutlineEnd[]]

/** Where an end lies along an edge and how it runs: ends on two sides of a joint lie on each other where these are the same. */
export const endKey = ({ n, d }: Rational, { along, inward }: Pick<OutlineEnd, 'along' | 'inward'>): string => `${n}/${d} ${along}/${inward}`

const NOTHING: Outline = [[], [], [], []]

/** The seams that end on the outline of what lies in a place, turned and pressed as it lies (or with each seam of the block as said), in units of measure. */
export function placeOutline(laid: LaidPlace, turn: Turn, pressed: PlacePressing | readonly Toward[]): Outline {
  const { block, place, origin, frame } = laid
  const taken = block?.sewing.plans?.taken
  if (block === null || taken === undefined) return NOTHING
  const cell = cellOf(block.block)
  const before = frame.reduce<ExactSize>((all, { across, down }) => [add(all[0], across), add(all[1], down)], [ZERO, ZERO])
  const low: ExactSize = [add(origin[0], before[0]), add(origin[1], before[1])]
  const [w, h] = turn % 2 === 0 ? block.finished : [block.finished[1], block.finished[0]]
  const high: ExactSize = [add(low[0], w), add(low[1], h)]
  const name = (seam: number): string => `${place.id}/j:${seam + 1}`
  const toward = typeof pressed === 'string' ? towardOf(block, taken, pressed) : pressed
  const edges = turnedEdges(shownBy(block, taken), turn, toward)
  return framedOutline(
    laid,
    edges.map((edge, side) => endsOn(edge, side, cell, low, high, name)),
    low,
    high,
  )
}

const shown = new WeakMap<WornBlock, ShownEdges>()

function shownBy(block: WornBlock, { met }: PressedPlan): ShownEdges {
  const known = shown.get(block) ?? shownEdges(block.sewing.laid, block.sewing.plane, met.loose)
  shown.set(block, known)
  return known
}

const pressings = new WeakMap<WornBlock, readonly Toward[]>()

/** The pressing of a block's seams, as planned or the opposite way. */
export function towardOf(block: WornBlock, { met, constraints, matched, pressed }: PressedPlan, press: PlacePressing): readonly Toward[] {
  if (press === 'planned') return pressed.toward
  const known = pressings.get(block)
  if (known !== undefined) return known
  const groups = tiedSeams(met.crossings, constraints, matched?.matching ?? null)
  const { toward } = opposite(groups, constraints, pressed.toward, 'rules')
  pressings.set(block, toward)
  return toward
}

function endsOn({ ends }: LaidEdge, side: number, cell: Rational, low: ExactSize, high: ExactSize, name: (seam: number) => string): OutlineEnd[] {
  // Bottom and left run against the quilt's axes.
  const way = side < 2 ? 1 : -1
  return ends
    .filter(({ inward }) => inward > 0)
    .map(({ place, along, inward, lean, seam }) => {
      const far = multiply(place, cell)
      const at: ExactSize =
        side === 0
          ? [add(low[0], far), low[1]]
          : side === 1
            ? [high[0], add(low[1], far)]
            : side === 2
              ? [subtract(high[0], far), high[1]]
              : [low[0], subtract(high[1], far)]
      return { at, along: along * way, inward, lean: (lean * way + 0) as -1 | 0 | 1, seam: name(seam) }
    })
}

/** Each round covers what ended on its sides, then on top and bottom, and its own seams end there instead. They are pressed away from the block. */
function framedOutline({ frame, place }: LaidPlace, inner: readonly (readonly OutlineEnd[])[], from: ExactSize, to: ExactSize): Outline {
  let [top = [], right = [], bottom = [], left = []] = inner
  let [low, high] = [from, to]
  const seam = `${place.id}/frame`
  const square = { along: 0, inward: 1, seam } as const
  for (const { across, down } of frame) {
    if (across.n > 0n) {
      const at = (y: Rational): OutlineEnd[] => [
        { ...square, at: [low[0], y], lean: -1 },
        { ...square, at: [high[0], y], lean: 1 },
      ]
      top = [...top, ...at(low[1])]
      bottom = [...bottom, ...at(high[1])]
      low = [subtract(low[0], across), low[1]]
      high = [add(high[0], across), high[1]]
      left = []
      right = []
    }
    if (down.n > 0n) {
      const at = (x: Rational): OutlineEnd[] => [
        { ...square, at: [x, low[1]], lean: -1 },
        { ...square, at: [x, high[1]], lean: 1 },
      ]
      left = [...left, ...at(low[0])]
      right = [...right, ...at(high[0])]
      low = [low[0], subtract(low[1], down)]
      high = [high[0], add(high[1], down)]
      top = []
      bottom = []
    }
  }
  return [top, right, bottom, left]
}
