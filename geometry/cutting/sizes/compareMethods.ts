/**
 * The methods of one unit side by side: what each cuts, uses, wastes and stretches, and what its offcuts still give.
 *
 * In      a unit and its block, both read; how much larger than needed to cut (0 for nothing), in the measure's unit.
 * Out     a choice for each method that the kind offers, in the kind's order; fabric in square units of measure (sq in or sq cm).
 * How     fabric kept is each patch with its allowances, inside the unfinished outline; the rest of what was cut is wasted (of flipped corners: what is
 *         cut off beyond the seams; the few threads where two corners meet at a tip are left out). A square flipped over a corner
 *         leaves two triangles beyond the trimmed seam: sewn along their long sides they are one more half-square triangle.
 * Exact   no: allowances run on the slant, so areas are doubles; nothing else rests on them.
 * Source  stitch and flip [S5], bias edges [S33], bonus triangles [S57]; the sizes by geometry.
 */
import { cellOf } from '../../block/lengthsOf.ts'
import type { Block, BoxUnit, Method, Unit } from '../../values/block.ts'
import type { BoardMessage } from '../../values/messages.ts'
import { EPSILON } from '../../exact/lengths.ts'
import { toNumber } from '../../exact/rational.ts'
import { areaOf, clip, type Convex, type Half, sidesOfConvex } from '../../plane/convex.ts'
import { type ExactPoint, exactPoint, KIND_FACTS, shapeAtRest, sizeAtRest } from '../../units/kinds.ts'
import { type CutPiece, type OneRun, oneRun, ruleOf } from '../oneRun.ts'
import type { Rule } from './cutSize.ts'
import { isTrimmed } from '../matchingUnits.ts'

/** Half-square triangles from the offcuts of flipped corners: sewn before the corners are cut off, a second line two allowances beyond the first. */
interface Bonus {
  /** The base's fabric and the corner's. */
  readonly fabrics: readonly [string, string]
  /** Rounded down to what the ruler shows; what to trim to is two allowances more. */
  readonly finished: number
  /** For each unit. */
  readonly count: number
}

export type MethodChoice = PossibleChoice | { readonly method: Method; readonly possible: false; readonly why: BoardMessage }

export interface PossibleChoice extends OneRun {
  readonly possible: true
  /** Pieces to cut for one run, before any is cut corner to corner. */
  readonly toCut: number
  /** Area of fabric for one run, in square inches or square centimetres; divide by `makes` for one unit. */
  readonly fabricArea: number
  /** The part of that area that ends up in no unit of the run: trimmings, dog ears and offcuts. */
  readonly wasted: number
  /** The part of the waste that the bonus triangles would use. */
  readonly saved: number
  /** Seams of one unit sewn along edges that are already cut on the bias: they stretch. */
  readonly biasSeams: number
  /** Outside edges of one unit on the bias. */
  readonly biasEdges: number
  readonly trimmed: boolean
  readonly bonus: readonly Bonus[]
}

export function compareMethods(unit: Unit, block: Block, oversize = 0): MethodChoice[] {
  return KIND_FACTS[unit.kind].methods.map((method) => {
    const run = oneRun(unit, block, method, oversize)
    return 'code' in run ? { method, possible: false, why: run } : choiceOf(unit, block, run)
  })
}

function choiceOf(unit: Unit, block: Block, run: OneRun): PossibleChoice {
  const rule = ruleOf(block)
  const fabricArea = run.pieces.reduce((sum, { size, count }) => sum + size[0] * size[1] * count, 0)
  const flipped = run.method === 'corner-flip'
  const bonus = flipped ? bonusOf(unit, run, block, rule) : []
  return {
    ...run,
    possible: true,
    toCut: run.pieces.reduce((sum: number, { count }: CutPiece) => sum + count, 0),
    fabricArea,
    wasted: flipped ? offcutsOf(unit, run, block, rule) : Math.max(0, fabricArea - run.makes * keptIn(unit, block, rule.seam)),
    saved: run.makes * bonus.reduce((sum, { finished, count }) => sum + count * keptInTriangles(finished, rule.seam), 0),
    biasSeams: run.method === 'plain' ? slantingSeams(unit) : 0,
    biasEdges: run.method === 'hst-4' ? 4 : unit.kind === 'polygon' ? slantingSides(unit.corners.map(exactPoint)) : 0,
    trimmed: isTrimmed(unit.kind, run.method),
    bonus,
  }
}

/** The leg of the triangle that is cut off beyond a seam, less what sewing its long side and both its short ones takes. */
export const bonusFinished = (leg: number, { seam, round }: Rule): number =>
  Math.max(0, Math.floor((leg - 2 * Math.SQRT2 * seam) / round + EPSILON) * round)

const isCorner = (name: string): boolean => name !== 'goose' && name !== 'centre'

/** Two triangles at each corner, one of the base and one of the square, whose legs end one allowance beyond the seam. */
function offcutsOf(unit: Unit, run: OneRun, block: Block, { seam }: Rule): number {
  const leg = legOf(unit, run, block) + (2 - Math.SQRT2) * seam
  return Object.keys(unit.fabrics).filter(isCorner).length * leg * leg
}

function bonusOf(unit: Unit, run: OneRun, block: Block, rule: Rule): Bonus[] {
  const base = unit.fabrics.goose ?? unit.fabrics.centre ?? ''
  const finished = bonusFinished(legOf(unit, run, block), rule)
  if (finished <= 0) return []
  const counts = new Map<string, number>()
  for (const [name, fabric] of Object.entries(unit.fabrics)) {
    if (isCorner(name)) counts.set(fabric, (counts.get(fabric) ?? 0) + 1)
  }
  return [...counts].map(([corner, count]) => ({ fabrics: [base, corner] as const, finished, count }))
}

/** The finished leg of the corners that are flipped. */
function legOf(unit: Unit, { finished: [wide, high] }: OneRun, block: Block): number {
  if (unit.kind === 'goose') return high
  if (unit.kind === 'diamond') return wide / 2
  const corner = unit.kind === 'polygon' ? 0 : (unit.corner ?? 0)
  return toNumber(exactPoint([corner, 0])[0]) * toNumber(cellOf(block))
}

/** Every seam inside a unit, except in strips, lies on the slant; cut as it lies, its edges are on the bias. */
const slantingSeams = (unit: Unit): number =>
  unit.kind === 'strips' || unit.kind === 'polygon' ? 0 : Math.max(0, shapeAtRest(unit).patches.length - 1)

const slantingSides = (corners: readonly ExactPoint[]): number =>
  corners.filter(([x, y], index) => {
    const [nextX, nextY] = corners[(index + 1) % corners.length] as ExactPoint
    return (x.n !== nextX.n || x.d !== nextX.d) && (y.n !== nextY.n || y.d !== nextY.d)
  }).length

function keptIn(unit: Unit, block: Block, seam: number): number {
  const cell = toNumber(cellOf(block))
  if (unit.kind === 'polygon') return grownArea(unit.corners.map(exactPoint).map(inUnits(cell)), seam)
  const box = boxUnitSize(unit, cell)
  const outline = sidesOfConvex([0, 0, box[0], 0, box[0], box[1], 0, box[1]]).map(movedOut(seam))
  return shapeAtRest(unit).patches.reduce((sum, { corners }) => sum + grownInside(corners.map(inUnits(cell)), outline, seam), 0)
}

const keptInTriangles = (finished: number, seam: number): number => {
  const outline = sidesOfConvex([0, 0, finished, 0, finished, finished, 0, finished]).map(movedOut(seam))
  const half = [
    [0, 0],
    [finished, 0],
    [0, finished],
  ] as const
  return 2 * grownInside(half, outline, seam)
}

type Flat = readonly [number, number]

const inUnits =
  (cell: number) =>
  ([x, y]: ExactPoint): Flat => [toNumber(x) * cell, toNumber(y) * cell]

function boxUnitSize(unit: BoxUnit, cell: number): Flat {
  return inUnits(cell)(sizeAtRest(unit))
}

const movedOut =
  (seam: number) =>
  (half: Half): Half => ({ ...half, c: half.c + seam })

/** A convex patch one allowance larger all round, as far as the outline holds it. */
function grownInside(corners: readonly Flat[], outline: readonly Half[], seam: number): number {
  const poly = corners.flat()
  const far = 1e6
  const everywhere: Convex = [-far, -far, far, -far, far, far, -far, far]
  const grown = [...outline, ...sidesOfConvex(poly).map(movedOut(seam))].reduce<Convex | null>(
    (rest, half) => (rest === null ? null : clip(rest, half)),
    everywhere,
  )
  return grown === null ? 0 : Math.abs(areaOf(grown))
}

/** Any simple patch with its allowances mitred: area, allowance by outline, and a kite at each corner (taken off again at inner ones). */
function grownArea(corners: readonly Flat[], seam: number): number {
  const clockwise = areaOf(corners.flat()) > 0 ? 1 : -1
  const parts = corners.map(([x, y], index) => {
    const [beforeX, beforeY] = corners.at(index - 1) as Flat
    const [nextX, nextY] = corners[(index + 1) % corners.length] as Flat
    const [ax, ay, bx, by] = [x - beforeX, y - beforeY, nextX - x, nextY - y]
    const turn = clockwise * Math.atan2(ax * by - ay * bx, ax * bx + ay * by)
    return seam * Math.hypot(bx, by) + seam * seam * Math.tan(turn / 2)
  })
  return parts.reduce((sum, part) => sum + part, Math.abs(areaOf(corners.flat())))
}
