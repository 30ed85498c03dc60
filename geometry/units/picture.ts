/**
 * What is seen of a unit: which fabrics lie where.
 *
 * In      a unit.
 * Out     its view as it lies in its box, the order in which it is sewn, and its picture: the view however it is turned. Two units with the same
 *         picture are alike once turned; a mirror image is another picture unless it looks the same.
 * Exact   places are fractions of a cell.
 */
import type { BoxUnit, Turn, Unit } from '../block/values.ts'
import { compare, type Rational, rational, subtract } from '../exact/rational.ts'
import { type ExactPoint, exactPoint, place, type Sewn, shapeOf } from './kinds.ts'

interface SeenPatch {
  readonly name: string
  readonly corners: readonly ExactPoint[]
}

const said = ([x, y]: ExactPoint): string => `${x.n}/${x.d},${y.n}/${y.d}`
const outline = (corners: readonly ExactPoint[]): string => corners.map(said).sort().join(' ')

const patchesOf = (unit: Unit): readonly SeenPatch[] =>
  unit.kind === 'polygon' ? [{ name: 'patch', corners: unit.corners.map(exactPoint) }] : shapeOf(unit).patches

export interface ExactBox {
  readonly low: ExactPoint
  readonly high: ExactPoint
}

/** The box a unit lies in, in cells. */
export function exactBox(unit: Unit): ExactBox {
  const corners = patchesOf(unit).flatMap((patch) => patch.corners)
  const end = (axis: 0 | 1, sign: 1 | -1): Rational => corners.map((corner) => corner[axis]).reduce((a, b) => (compare(a, b) * sign <= 0 ? a : b))
  return { low: [end(0, 1), end(1, 1)], high: [end(0, -1), end(1, -1)] }
}

/** The view of a unit in its box, turned so many quarters clockwise. */
export function viewOf(unit: Unit, turn: Turn = 0): string {
  const { low, high } = exactBox(unit)
  const size: ExactPoint = [subtract(high[0], low[0]), subtract(high[1], low[1])]
  return patchesOf(unit)
    .map(({ name, corners }) => {
      const moved = corners.map(([x, y]): ExactPoint => [subtract(x, low[0]), subtract(y, low[1])])
      return `${unit.fabrics[name]}:${outline(place(moved, size, false, turn, [rational(0), rational(0)]))}`
    })
    .sort()
    .join(';')
}

/** The least of the four turned views, as text. */
export const pictureOf = (unit: Unit): string => ([0, 1, 2, 3] as const).map((turn) => viewOf(unit, turn)).sort()[0] as string

/** Which patches are sewn to which, by where they lie. */
export function sewnOf(unit: BoxUnit): string {
  const { patches, sewn } = shapeOf(unit)
  const places = new Map(patches.map(({ name, corners }) => [name, outline(corners)]))
  const tree = (node: Sewn): string => (typeof node === 'string' ? (places.get(node) as string) : `(${[tree(node[0]), tree(node[1])].sort()})`)
  return tree(sewn)
}
