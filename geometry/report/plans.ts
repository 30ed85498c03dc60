/**
 * Press every plan and choose.
 *
 * In      the laid block, its plane, and the order asked for.
 * Out     the plan taken, sewn and pressed; and the others, pressed too, for those who want to know what another order would do.
 * Chosen  fewest clashes, then fewest seams against their preference, then fewest different pieces; rows before columns before sections
 *         where all is equal.
 */
import type { Laid } from '../block/lay.ts'
import type { Block } from '../values/block.ts'
import { countDifferent, type Prints } from '../piecing/matchingPieces.ts'
import { Divider, type Habit, type Helps } from '../piecing/straightCuts.ts'
import { chain, inRows } from '../piecing/rows.ts'
import { sew, sewUnits } from '../piecing/sew.ts'
import type { Plan, Seam, Tree } from '../piecing/values.ts'
import type { Plane } from '../plane/subdivide.ts'
import { pressAll } from '../pressing/press.ts'
import { type Like, likeSeams } from '../pressing/matchingSeams.ts'
import { type Met, meet, type SideOf } from '../pressing/meet.ts'
import { sidesOf } from '../pressing/sidesOf.ts'
import { pressTogether, type Tied, tieUp } from '../pressing/pressAlike.ts'
import type { Pressed } from '../pressing/values.ts'
import { wisher, wishesOf } from '../pressing/pressRules.ts'
import type { PressedPlan, Workroom } from '../pressing/plan.ts'

const ORDERS = ['rows', 'columns', 'sections'] as const

/** Peeling strip by strip takes as many rounds as there are strips: beyond this many units only halves are tried. */
const PEELED_UNITS = 2_000

/** Up to this many units, plans that sew straight and nest are weighed against others all the same, that many other first cuts among them. */
const WEIGHED_UNITS = 64
const FIRST_CUTS = 5

/** Patches above which only the plan taken is kept: then no other order is offered as a fix. */
const KEPT_PATCHES = 20_000

export function plansOf(
  laid: Laid,
  plane: Plane,
  order: NonNullable<Block['order']>,
  begun: Workroom = newRoom(laid, plane),
): { taken: PressedPlan; others: readonly PressedPlan[] } {
  if (order === 'auto') {
    if (laid.patches.length > KEPT_PATCHES) return { taken: bestOneByOne(laid, plane, begun), others: [] }
    const all = ORDERS.map((name) => pressedPlan(laid, plane, name, begun))
    const taken = all.reduce((best, plan) => (better(laid, plan, best, begun.prints) ? plan : best))
    return { taken, others: all.filter((plan) => plan !== taken) }
  }
  const taken = pressedPlan(laid, plane, order, begun)
  // Another order is only of use where this one clashes.
  const others = taken.pressed.clashes === 0 ? [] : ORDERS.filter((name) => name !== order).map((name) => pressedPlan(laid, plane, name, begun))
  return { taken, others }
}

/** All plans of a block begin with its units, sewn, with their meetings and wishes. */
function newRoom(laid: Laid, plane: Plane): Workroom {
  const units = sewUnits(laid, plane)
  const inUnits = meet(plane, units.seams, sidesOf(laid.patches.length, units.seams))
  const wish = wisher(laid, plane)
  const wishes = units.seams.map((seam, index) => wish(seam, inUnits.ends[index] as readonly [number, number], inUnits.clockwise[index] as 0 | 1))
  const known = new Map<string, Tree>()
  return {
    helps: () => ({ known }),
    prints: null,
    sew: (tree) => {
      const seams = sew(laid, plane, units, tree)
      const sideOf = sidesOf(laid.patches.length, seams)
      const met = meet(plane, seams, sideOf, inUnits)
      return { seams, sideOf, met, ...wishesOf(laid, plane, seams, met, sideOf, wishes) }
    },
  }
}

/** The best plan, each forgotten as soon as another is better: large blocks would not fit twice. */
function bestOneByOne(laid: Laid, plane: Plane, begun: Workroom): PressedPlan {
  return ORDERS.reduce<PressedPlan | null>((best, name) => {
    // Nothing is better than no clash and nothing against its preference.
    if (best !== null && crooked(best) + best.pressed.clashes + best.pressed.against === 0) return best
    const plan = pressedPlan(laid, plane, name, begun)
    return best === null || better(laid, plan, best, begun.prints) ? plan : best
  }, null) as PressedPlan
}

function better(laid: Laid, plan: PressedPlan, best: PressedPlan, prints: Prints | null): boolean {
  const steps = [crooked(plan) - crooked(best), plan.pressed.clashes - best.pressed.clashes, plan.pressed.against - best.pressed.against]
  const decided = steps.find((step) => step !== 0)
  if (decided !== undefined) return decided < 0
  return countDifferent(laid, plan.seams, 'fabrics', prints) < countDifferent(laid, best.seams, 'fabrics', prints)
}

/** Of plans by one order: fewest clashes, then fewest different shapes of pieces, then fewest seams against their preference, then fewest joins one after another. */
function simpler(laid: Laid, plan: PressedPlan, best: PressedPlan): boolean {
  const steps = [
    () => crooked(plan) - crooked(best),
    () => plan.pressed.clashes - best.pressed.clashes,
    () => countDifferent(laid, plan.seams, 'shapes') - countDifferent(laid, best.seams, 'shapes'),
    () => plan.pressed.against - best.pressed.against,
    () => roundsOf(laid, plan) - roundsOf(laid, best),
  ]
  for (const step of steps) {
    const more = step()
    if (more !== 0) return more < 0
  }
  return false
}

/** The longest row of joins that must wait for one another. */
function roundsOf(laid: Laid, { seams }: PressedPlan): number {
  const rounds: number[] = new Array(laid.patches.length).fill(0)
  for (const { sides } of seams) rounds.push(1 + Math.max(rounds[sides[0]] as number, rounds[sides[1]] as number))
  return rounds.at(-1) as number
}

/** Set-in seams weigh more than partial ones. */
function crooked({ seams }: PressedPlan): number {
  return seams.reduce((sum, { kind }) => sum + (kind === 'set-in' ? 1000 : kind === 'partial' ? 1 : 0), 0)
}

function pressedPlan(laid: Laid, plane: Plane, name: Plan['name'], begun: Workroom): PressedPlan {
  const middle = press(laid, plane, name, 'middle', begun)
  const sections = name === 'sections' || middle.seams.some(({ stage }) => stage === 'section')
  const settled = crooked(middle) === 0 && middle.pressed.clashes === 0
  if (!sections || laid.block.units.length > (settled ? WEIGHED_UNITS : PEELED_UNITS)) return middle
  // Peeling may sew straight, or nest, what halving does not; where the two are as good it sews round after round, as makers do.
  const outside = press(laid, plane, name, 'outside', begun)
  const best = simpler(laid, middle, outside) ? middle : outside
  if (name !== 'sections' || laid.block.units.length > WEIGHED_UNITS || crooked(best) > 0) return best
  // Another first cut may leave pieces that are alike: four paws, five four-patches.
  return Array.from({ length: FIRST_CUTS }, (_, passed) => press(laid, plane, name, 'middle', begun, passed + 1)).reduce(
    (found, plan) => (simpler(laid, plan, found) ? plan : found),
    best,
  )
}

function press(laid: Laid, plane: Plane, name: Plan['name'], habit: Habit, begun: Workroom, passed = 0): PressedPlan {
  const sort = `${name} ${habit} ${passed}`
  const helps = begun.helps(sort)
  const divider = new Divider(laid, plane, habit, helps, passed)
  const inner = name === 'sections' ? divider.divide(laid.block.units.map((_, part) => part)) : inRows(laid, name, divider, helps.memory)
  const frame = laid.frame.map((piece): Tree => {
    if (typeof piece === 'number') return piece
    const [strip, first, last] = piece
    return chain([first, strip, last], 'border')
  })
  const { seams, sideOf, met, wishes, passedOver } = begun.sew(chain([inner, ...frame], 'border'), sort)
  const sewn = { name, seams, sideOf, met, passedOver, proved: divider.proved }
  if (laid.block.pressAlike !== true) return { ...sewn, wishes, pressed: pressAll(met.crossings, wishes), together: null }
  const like = likeSeams(laid, plane, seams, met.clockwise)
  const tied = tieUp(wishes, like)
  return { ...sewn, wishes: tied.wishes, pressed: pressTogether(met.crossings, tied), together: { asked: wishes, like, tied } }
}
