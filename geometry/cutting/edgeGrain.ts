/**
 * Grain at the edge of the block: free patches that could easily be cut with a bias edge there.
 *
 * In      a block that has been read.
 * Out     advice `grain` for free patches that have a side at the outside of the block and others on the slant.
 * How     the methods of all other units give straight grain on the outside, except triangles four at a time, which the problem `bias-edge`
 *         names. A free patch has straight grain where its template lies on the fabric as the patch lies in the block; laid along a slanting side, as a
 *         triangle halved from a square would be, its outside edge stretches. Borders hold what is inside them.
 * Exact   equal fractions are equal doubles, and they are only compared for equality.
 * Source  straight grain on the outer edge [S63].
 */
import type { Block, PolygonUnit } from '../values/block.ts'
import { toNumber } from '../exact/rational.ts'
import { exactPoint } from '../units/kinds.ts'
import type { Advice, ReportPoint } from '../values/report.ts'
import { message } from '../values/messages.ts'

export function grainAdvice({ grid, units, borders = [] }: Block): Advice[] {
  if (borders.length > 0) return []
  const slanting = units.filter((unit): unit is PolygonUnit => unit.kind === 'polygon' && isSlantingOutside(unit, [grid.columns, grid.rows]))
  const [first] = slanting
  if (first === undefined) return []
  return [{ code: 'grain', at: first.corners[0] as ReportPoint, units: slanting.map(({ id }) => id), message: message('grain-at-edge') }]
}

type Flat = readonly [number, number]

function isSlantingOutside({ corners }: PolygonUnit, far: Flat): boolean {
  const points = corners.map((corner) => exactPoint(corner).map(toNumber) as unknown as Flat)
  const sides = points.map((from, index) => [from, points[(index + 1) % points.length] as Flat] as const)
  const along = (axis: 0 | 1, [from, to]: (typeof sides)[number]): boolean => from[axis] === to[axis]
  const outside = (axis: 0 | 1, side: (typeof sides)[number]): boolean => along(axis, side) && (side[0][axis] === 0 || side[0][axis] === far[axis])
  return sides.some((side) => outside(0, side) || outside(1, side)) && sides.some((side) => !along(0, side) && !along(1, side))
}
