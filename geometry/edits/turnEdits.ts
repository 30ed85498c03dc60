/**
 * Turning units about their middle.
 *
 * In      ids, quarter turns clockwise, and whether half cells are asked for.
 * Out     a named change, as in `unitEdits.ts`. In whole cells, a unit of 2 × 1 cells keeps one of its cells; with halves, its middle stays exactly.
 * Exact   fractions throughout; four quarters change nothing, but beside an edge of the grid a unit may end a cell away from there.
 */
import { boxAround, shift, turnIn } from '../block/boxes.ts'
import { add, compare, multiply, type Rational, rational, subtract, toFile, ZERO } from '../exact/rational.ts'
import type { ExactBox } from '../units/unitBox.ts'
import type { Turn } from '../values/block.ts'
import { message } from '../values/messages.ts'
import type { Draft, Edit } from './unitEdits.ts'

const HALF = rational(1, 2)

/** Turns units by so many quarters clockwise, together, about the middle of the box round them; one step to undo. */
export const turnAboutMiddle = (ids: readonly string[], quarters: Turn, halves: boolean): Edit => ({
  name: ids.length > 1 && quarters === 2 ? message('turn-units-half-round') : message('turn-units', { units: ids.length }),
  change: (draft) => {
    const wanted = new Set(ids)
    const units = draft.units.filter(({ id }) => wanted.has(id))
    const before = boxAround(units)
    for (let quarter = 0; quarter < quarters; quarter++) {
      const box = boxAround(units)
      if (box !== null) for (const unit of units) turnIn(unit, box)
    }
    const after = boxAround(units)
    if (before === null || after === null) return
    const by = ([0, 1] as const).map((axis) => toFile(shiftAlong(axis, before, after, draft.grid, halves))) as [number | string, number | string]
    if (by.some((one) => one !== 0)) for (const unit of units) shift(unit, ...by)
  },
})

/** Turns units by so many quarters clockwise, each about its own middle; one step to undo. */
export const turnEach = (ids: readonly string[], quarters: Turn, halves: boolean): Edit => ({
  name: message('turn-units', { units: ids.length }),
  change: (draft) => {
    for (const id of ids) turnAboutMiddle([id], quarters, halves).change(draft)
  },
})

/** How far the turned box, whose top left stayed, goes along an axis so that it lies about the same middle. */
function shiftAlong(axis: 0 | 1, before: ExactBox, after: ExactBox, grid: Draft['grid'], halves: boolean): Rational {
  const middle = ({ low, high }: ExactBox): Rational => multiply(add(low[axis], high[axis]), HALF)
  const exact = subtract(middle(before), middle(after))
  if (halves) return exact
  const whole = rational(exact.n / exact.d)
  if (exact.d === 1n) return whole
  // Halfway between two cells, both lie as near: the one that stays on the grid.
  const other = add(whole, rational(exact.n < 0n ? -1 : 1))
  const fits = (by: Rational): boolean =>
    compare(add(after.low[axis], by), ZERO) >= 0 && compare(add(after.high[axis], by), rational(axis === 0 ? grid.columns : grid.rows)) <= 0
  return !fits(whole) && fits(other) ? other : whole
}
