/**
 * Press every plan and choose.
 *
 * In      the laid block, its plane, and the order asked for.
 * Out     the plan taken, sewn and pressed; and the others, pressed too, for those who want to know what another order would do.
 * Chosen  fewest clashes, then fewest seams against their preference, then fewest different pieces; rows before columns before sections
 *         where all is equal.
 */
import type { Laid } from '../block/lay.ts'
import type { Block } from '../block/values.ts'
import { countDifferent } from '../piecing/alike.ts'
import { Divider, type Habit } from '../piecing/divide.ts'
import { chain, inRows } from '../piecing/rows.ts'
import { sew } from '../piecing/sew.ts'
import type { Plan, Seam, Tree } from '../piecing/values.ts'
import type { Plane } from '../plane/subdivide.ts'
import { pressAll } from './chains.ts'
import { type Like, likeSeams } from './likeness.ts'
import { type Met, meet, type SideOf } from './meet.ts'
import { sidesOf } from './sides.ts'
import { pressTogether, type Tied, tieUp } from './together.ts'
import type { Pressed } from './values.ts'
import { type Wishes, wishesOf } from './wishes.ts'

export interface PressedPlan extends Wishes {
  readonly name: Plan['name']
  readonly seams: readonly Seam[]
  readonly sideOf: SideOf
  readonly met: Met
  readonly pressed: Pressed
  /** Where alike units are to be pressed alike: what each wish was before, which seams are alike, and the choices they make together. */
  readonly together: { readonly asked: Wishes['wishes']; readonly like: readonly (Like | null)[]; readonly tied: Tied } | null
  /** Whether the fewest set-in and partial joins are proved. */
  readonly proved: boolean
}

const ORDERS = ['rows', 'columns', 'sections'] as const

/** Peeling strip by strip takes as many rounds as there are strips: beyond this many units only halves are tried. */
const PEELED_UNITS = 2_000

export function plansOf(laid: Laid, plane: Plane, order: NonNullable<Block['order']>): { taken: PressedPlan; others: readonly PressedPlan[] } {
  const known = new Map<string, Tree>()
  if (order === 'auto') {
    const all = ORDERS.map((name) => pressedPlan(laid, plane, name, known))
    const taken = all.reduce((best, plan) => (better(laid, plan, best) ? plan : best))
    return { taken, others: all.filter((plan) => plan !== taken) }
  }
  const taken = pressedPlan(laid, plane, order, known)
  // Another order is only of use where this one clashes.
  const others = taken.pressed.clashes === 0 ? [] : ORDERS.filter((name) => name !== order).map((name) => pressedPlan(laid, plane, name, known))
  return { taken, others }
}

function better(laid: Laid, plan: PressedPlan, best: PressedPlan): boolean {
  const steps = [crooked(plan) - crooked(best), plan.pressed.clashes - best.pressed.clashes, plan.pressed.against - best.pressed.against]
  const decided = steps.find((step) => step !== 0)
  if (decided !== undefined) return decided < 0
  return countDifferent(laid, plan.seams) < countDifferent(laid, best.seams)
}

/** Set-in seams weigh more than partial ones. */
function crooked({ seams }: PressedPlan): number {
  return seams.reduce((sum, { kind }) => sum + (kind === 'set-in' ? 1000 : kind === 'partial' ? 1 : 0), 0)
}

function pressedPlan(laid: Laid, plane: Plane, name: Plan['name'], known: Map<string, Tree>): PressedPlan {
  const middle = press(laid, plane, name, 'middle', known)
  const settled = crooked(middle) === 0 && middle.pressed.clashes === 0
  if (name !== 'sections' || settled || laid.block.units.length > PEELED_UNITS) return middle
  // Peeling may sew straight, or nest, what halving does not.
  const outside = press(laid, plane, name, 'outside', known)
  return better(laid, outside, middle) ? outside : middle
}

function press(laid: Laid, plane: Plane, name: Plan['name'], habit: Habit, known: Map<string, Tree>): PressedPlan {
  const divider = new Divider(laid, plane, habit, known)
  const section = (parts: readonly number[]): Tree => divider.divide(parts)
  const units = laid.block.units.map((_, part) => part)
  const inner = name === 'sections' ? section(units) : inRows(laid, name, section)
  const strips = laid.parts.map((_, part) => part).slice(units.length)
  const seams = sew(laid, plane, chain([inner, ...strips], 'border'))
  const sideOf = sidesOf(laid.patches.length, seams)
  const met = meet(plane, seams, sideOf)
  const { wishes, passedOver } = wishesOf(laid, plane, seams, met.ends, sideOf)
  const sewn = { name, seams, sideOf, met, passedOver, proved: divider.proved }
  if (laid.block.pressAlike !== true) return { ...sewn, wishes, pressed: pressAll(met.crossings, wishes), together: null }
  const like = likeSeams(laid, plane, seams, met.clockwise)
  const tied = tieUp(wishes, like)
  return { ...sewn, wishes: tied.wishes, pressed: pressTogether(met.crossings, tied), together: { asked: wishes, like, tied } }
}
