/**
 * Turns a fix of the report into an edit of the block.
 *
 * In      the fix, and the report that suggests it.
 * Out     a named edit. Once it is applied, the clash that the report lists is gone.
 */
import {
  type Edit,
  type Fix,
  type Findings,
  type Order,
  pressSeams,
  setOrder,
  setPressedOpen,
  setPressFree,
  setTurn,
} from '../../../geometry/index.ts'

export function editForFix(fix: Fix, report: Findings): Edit {
  if (fix.do === 'order') return setOrder(fix.what as Order)
  if (fix.do === 'turn') return setTurn(fix.what, fix.turn ?? 0, fix.mirror ?? false)
  const join = report.joins.find(({ id }) => id === fix.what)
  if (join === undefined) return fix.do === 'open' ? setPressedOpen([fix.what], true) : setPressFree([fix.what], true)
  return pressSeams(report, new Map([[join.id, fix.do === 'open' ? 'open' : join.press.toward === 0 ? 1 : 0]]))
}
