/**
 * The wrong side as it lies on the ironing board: every sheet of fabric, the one nearest the board first.
 *
 * In      the folds of a plan and the way each seam is pressed (see `folds.ts`).
 * Out     sheets in the order in which they lie on each other, seen from the wrong side; each shows its wrong side, or its right side where it is folded
 *         back. Null if there would be more than anyone looks at.
 * How     Fabric is folded join by join, as in `folds.ts`. Right sides together, then opened: the fabric of the side that the seam is pressed to lies
 *         lowest, its own allowance folded back on it (so turned over, last first), and on both the other side, whose allowance stays flat. Pressed open,
 *         each side's own allowance lies folded on it.
 * Bounds  doubles, for drawing only.
 * Source  common practice, no source; counted against the rule of layers in the tests.
 */
import { beyond, type Convex, clip, type Half } from '../../plane/convex.ts'
import { cutShape } from './cutShape.ts'
import { type FoldOver, type Folds, foldsOver, laidBack, MOST_CORNERS, type Ply, plyOf, trimmed } from './folds.ts'
import type { Toward } from '../values.ts'

/** Fabric of one patch that lies in one plane: the patch with the allowances that stay flat, or an allowance folded back. */
export interface FabricSheet {
  readonly patch: number
  readonly face: 'wrong' | 'right'
  readonly plies: Ply[]
}

/** Sheets of a block: a patch seldom has more than five. */
const MOST_SHEETS = 100_000

export function wrongSideSheets(folds: Folds, toward: readonly Toward[]): FabricSheet[] | null {
  const { laid, seams, after, allowance } = folds
  if (laid.patches.some(({ corners }) => corners.length > MOST_CORNERS)) return null
  const held: (FabricSheet[] | undefined)[] = laid.patches.map(({ corners }, patch) => [
    { patch, face: 'wrong', plies: cutShape(laid, corners, allowance).map((poly) => plyOf(poly, patch)) },
  ])
  for (const [index, { sides }] of seams.entries()) {
    const pieces = sides.map((side) => held[side] ?? []) as [FabricSheet[], FabricSheet[]]
    held[sides[0]] = undefined
    held[sides[1]] = undefined
    const [first, ...finishing] = after[index] ?? []
    if (first === undefined) return null
    const way = toward[index] as Toward
    const [near, far] = ([0, 1] as const).map((side) => foldsOver(folds, first, way, side).reduce(foldedBack, pieces[side])) as [
      FabricSheet[],
      FabricSheet[],
    ]
    // The side that is folded lies under the flat allowance of the other.
    let whole = way === 1 ? [...far, ...near] : [...near, ...far]
    for (const trim of first.trims) for (const { plies } of whole) trimmed(plies, trim, allowance)
    for (const one of finishing)
      for (const side of [0, 1] as const) whole = foldsOver(folds, one, toward[one.seam] as Toward, side).reduce(foldedBack, whole)
    if (whole.length > MOST_SHEETS) return null
    held[laid.patches.length + index] = whole.filter(({ plies }) => plies.length > 0)
  }
  return held.flatMap((sheets) => sheets ?? [])
}

/** Folds the sheets that reach over the line back onto their side, turned over as a pile: the last sheet first. */
function foldedBack(sheets: FabricSheet[], over: FoldOver): FabricSheet[] {
  const { kept, flat } = over.own === null ? { kept: sheets, flat: [] } : lifted(sheets, over)
  const stays: FabricSheet[] = []
  const back: FabricSheet[] = []
  for (const sheet of kept) {
    const split = sheet.plies.map((ply) => laidBack(ply, over))
    if (split.every((laid) => laid === null)) {
      stays.push(sheet)
      continue
    }
    const plies = sheet.plies.flatMap((ply, index) => split[index]?.kept.map((poly) => plyOf(poly, ply.patch)) ?? [ply])
    if (plies.length > 0) stays.push({ ...sheet, plies })
    const laid = split.flatMap((one) => (one === null ? [] : [plyOf(one.back, sheet.patch)]))
    back.unshift({ patch: sheet.patch, face: sheet.face === 'wrong' ? 'right' : 'wrong', plies: laid })
  }
  return [...stays, ...back, ...flat]
}

/** Where a partial seam is finished, the other side's allowance lies flat there already: it is lifted, to lie on the fold. */
function lifted(sheets: readonly FabricSheet[], { line, limits, own }: FoldOver): { kept: FabricSheet[]; flat: FabricSheet[] } {
  const width = (limits[0] as Half).c - line.c
  const strip: readonly Half[] = [line, { nx: -line.nx, ny: -line.ny, c: width - line.c }, ...limits.slice(1)]
  const kept: FabricSheet[] = []
  const flat: FabricSheet[] = []
  for (const sheet of sheets) {
    const cut = sheet.plies.map((ply) => (own?.(ply) === false ? cutOut(ply.poly, strip) : null))
    if (cut.every((one) => one === null)) {
      kept.push(sheet)
      continue
    }
    const rest = sheet.plies.flatMap((ply, index) => cut[index]?.rest.map((poly) => plyOf(poly, ply.patch)) ?? [ply])
    if (rest.length > 0) kept.push({ ...sheet, plies: rest })
    flat.push({ ...sheet, plies: cut.flatMap((one) => (one === null ? [] : [plyOf(one.within, sheet.patch)])) })
  }
  return { kept, flat }
}

/** The part of a piece within some half planes, and the rest; null where no part is. */
function cutOut(poly: Convex, halves: readonly Half[]): { within: Convex; rest: Convex[] } | null {
  const rest: Convex[] = []
  let within: Convex | null = poly
  for (const half of halves) {
    const outside = clip(within, beyond(half))
    if (outside !== null) rest.push(outside)
    within = clip(within, half)
    if (within === null) return null
  }
  return { within, rest }
}
