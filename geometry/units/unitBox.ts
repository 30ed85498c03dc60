/**
 * The box a unit lies in.
 *
 * In      a unit, or a draft of one.
 * Out     the top left and bottom right corner of its box, after turning, in cells.
 * Exact   fractions throughout.
 */
import { add, compare, type Rational } from '../exact/rational.ts'
import type { Mutable, Unit } from '../values/block.ts'
import { type ExactPoint, exactPoint } from './kinds.ts'

export interface ExactBox {
  readonly low: ExactPoint
  readonly high: ExactPoint
}

export function boxOf(unit: Unit | Mutable<Unit>): ExactBox {
  if (unit.kind !== 'polygon') {
    const at = exactPoint(unit.at)
    const size = exactPoint(unit.size)
    return { low: at, high: [add(at[0], size[0]), add(at[1], size[1])] }
  }
  const corners = unit.corners.map((corner) => exactPoint(corner))
  const least = (axis: 0 | 1, sign: 1 | -1): Rational => corners.map((corner) => corner[axis]).reduce((a, b) => (compare(a, b) * sign <= 0 ? a : b))
  return { low: [least(0, 1), least(1, 1)], high: [least(0, -1), least(1, -1)] }
}
