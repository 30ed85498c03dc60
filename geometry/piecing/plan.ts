/**
 * One plan: the order in which the parts of a block are joined.
 *
 * In      the laid block, its plane, which plan to make, and what earlier plans already found.
 * Out     a tree of joins over all units and border strips, and whether this is proved to have the fewest bends, set-in and partial joins.
 */
import type { Laid } from '../block/lay.ts'
import type { Plane } from '../plane/subdivide.ts'
import { chain, inRows } from './rows.ts'
import { type DivisionContext, Divider } from './straightCuts.ts'
import type { Plan, PlanChoice, Tree } from './values.ts'

export function plan(laid: Laid, plane: Plane, choice: PlanChoice, context: DivisionContext): Plan {
  const { name } = choice
  const divider = new Divider(laid, plane, choice, context)
  const inner = name === 'sections' ? divider.divide(laid.block.units.map((_, part) => part)) : inRows(laid, name, divider, context.cache)
  return { name, tree: chain([inner, ...laid.frame.map(framePiece)], 'border'), proved: divider.proved }
}

/** A border strip; where it has corner squares, the square before it, the strip, then the square after it. */
function framePiece(piece: Laid['frame'][number]): Tree {
  if (typeof piece === 'number') return piece
  const [strip, first, last] = piece
  return chain([first, strip, last], 'border')
}
