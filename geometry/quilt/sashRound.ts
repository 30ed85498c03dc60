/**
 * A sash that runs round the outside of a quilt, sides before top and bottom like a border.
 *
 * In      the quilt, its measures, its size inside the sash, and its joints.
 * Out     cut sizes; with corner squares, one in each corner and wherever a joint ends on the sash, as printed settings do [S297].
 */
import { add, compare, multiply, type Rational, rational } from '../exact/rational.ts'
import type { Quilt } from '../values/quilt.ts'
import type { PlacedJoint } from './joinPlaces.ts'
import { type ExactSize, type Measures, times } from './measures.ts'
import { pieced } from './strips.ts'

export interface SashRound {
  readonly sides: readonly ExactSize[]
  readonly topAndBottom: readonly ExactSize[]
  readonly corners: number
  readonly corner: ExactSize
}

export function sashRound(
  { way = {}, grid }: Quilt,
  { gap, seam, join }: Measures,
  [w, h]: ExactSize,
  joints: readonly PlacedJoint[],
): SashRound | null {
  const { sash } = way
  if (join !== 'whole' || sash?.round !== true || gap.n === 0n) return null
  const seams = times(seam, 2)
  const across = add(gap, seams)
  const squared = sash.corner !== undefined
  const ending = (axis: 0 | 1, line: number, low: boolean): Rational[] =>
    joints
      .filter(({ cells }) => cells.axis === axis && (low ? cells.from : cells.to) === line)
      .map(({ from }) => from[axis])
      .sort(compare)
  const side = (axis: 0 | 1, line: number, low: boolean, length: Rational): ExactSize[] =>
    pieced(add(length, seams), squared ? ending(axis, line, low) : [], gap, seams, across)
  const wide = squared ? w : add(w, multiply(gap, rational(2)))
  const sides = [side(1, 0, true, h), side(1, grid.columns, false, h)]
  const topAndBottom = [side(0, 0, true, wide), side(0, grid.rows, false, wide)]
  const squares = [...sides, ...topAndBottom].reduce((all, own) => all + own.length - 1, 4)
  return { sides: sides.flat(), topAndBottom: topAndBottom.flat(), corners: squared ? squares : 0, corner: [across, across] }
}
