/**
 * The picture of a unit: which fabrics lie where.
 *
 * In      a unit.
 * Out     its view as it lies in its box, the order in which it is sewn, and its picture: the view, ignoring turns. Two units with the same
 *         picture match once turned; a mirror image has a different picture unless it looks the same.
 * Exact   places are fractions of a cell.
 */
import type { BoxUnit, Turn, Unit } from '../values/block.ts'
import { rational, subtract } from '../exact/rational.ts'
import { type ExactPoint, exactPoint, place, type Sewn, shapeOf } from './kinds.ts'
import { boxOf } from './unitBox.ts'

interface SeenPatch {
  readonly name: string
  readonly corners: readonly ExactPoint[]
}

const textOf = ([x, y]: ExactPoint): string => `${x.n}/${x.d},${y.n}/${y.d}`
const outline = (corners: readonly ExactPoint[]): string => corners.map(textOf).sort().join(' ')

const patchesOf = (unit: Unit): readonly SeenPatch[] =>
  unit.kind === 'polygon' ? [{ name: 'patch', corners: unit.corners.map(exactPoint) }] : shapeOf(unit).patches

/** The outlines of a unit's patches in its box, for each of its four turns. */
type Outlines = readonly (readonly { readonly name: string; readonly outline: string }[])[]

function outlinesOf(unit: Unit): Outlines {
  const { low, high } = boxOf(unit)
  const size: ExactPoint = [subtract(high[0], low[0]), subtract(high[1], low[1])]
  const moved = patchesOf(unit).map(({ name, corners }) => ({
    name,
    corners: corners.map(([x, y]): ExactPoint => [subtract(x, low[0]), subtract(y, low[1])]),
  }))
  return ([0, 1, 2, 3] as const).map((turn) =>
    moved.map(({ name, corners }) => ({ name, outline: outline(place(corners, size, false, turn, [rational(0), rational(0)])) })),
  )
}

const seen = ({ fabrics }: Unit, outlines: Outlines[number]): string =>
  outlines
    .map(({ name, outline: there }) => `${fabrics[name]}:${there}`)
    .sort()
    .join(';')

/** The view of a unit in its box after `turn` further quarter turns clockwise. */
export const viewOf = (unit: Unit, turn: Turn = 0): string => seen(unit, outlinesOf(unit)[turn] as Outlines[number])

/** The least of the four turned views, as text. */
export const pictureOf = (unit: Unit): string => leastOf(unit, outlinesOf(unit))

const leastOf = (unit: Unit, outlines: Outlines): string => outlines.map((one) => seen(unit, one)).sort()[0] as string

/** The same for many units: outlines are computed once for each kind, size and turn. */
export function pictures(): (unit: Unit) => string {
  const known = new Map<string, Outlines>()
  return (unit) => {
    if (unit.kind === 'polygon') return pictureOf(unit)
    const { kind, size, turn, mirror, corner, fabrics } = unit
    const key = JSON.stringify([kind, size, turn ?? 0, mirror === true, corner, Object.keys(fabrics)])
    const outlines = known.get(key) ?? outlinesOf(unit)
    known.set(key, outlines)
    return leastOf(unit, outlines)
  }
}

/** Which patches are sewn to which, by where they lie. */
export function sewnOf(unit: BoxUnit): string {
  const { patches, sewn } = shapeOf(unit)
  const places = new Map(patches.map(({ name, corners }) => [name, outline(corners)]))
  const tree = (node: Sewn): string => (typeof node === 'string' ? (places.get(node) as string) : `(${[tree(node[0]), tree(node[1])].sort()})`)
  return tree(sewn)
}
