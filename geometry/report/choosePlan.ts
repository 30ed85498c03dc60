/**
 * Choose between plans: a stage above planning, which presses each and takes the best.
 *
 * In      the laid block (its `order`), and the way to divide, sew and press one plan.
 * Out     the plan taken; and the others, pressed too, to show what another order would do.
 * Chosen  fewest bends, then fewest set-in seams, then fewest partial seams, then fewest clashes. Among equals, rows and then columns, if each of their
 *         items is one unit: what a maker lays out in rows is sewn in rows. Else the fewest different pieces by shape, rows before columns before
 *         sections. Fabrics never decide, nor does the maker's own word on how a seam is pressed.
 */
import type { Laid } from '../block/lay.ts'
import { countShapes, type FingerprintCache } from '../piecing/matchingPieces.ts'
import type { Plan, PlanChoice } from '../piecing/values.ts'
import type { PressedPlan } from '../pressing/plan.ts'
import type { Plans } from './sewing.ts'

const NAMES = ['rows', 'columns', 'sections'] as const

/** Peeling strip by strip takes one round for each strip: with more units than this, only halves are tried. */
const PEELED_UNITS = 2_000

/** Up to this many units, a plan that sews straight and nests is still compared with others, several other first cuts among them. */
const COMPARED_UNITS = 64
const FIRST_CUTS = 5

/** With more patches than this only the chosen plan is kept: then no other order is offered as a fix. */
const KEPT_PATCHES = 20_000

/** Plans are compared as the methods' rules press them, and handed on as the maker presses them. */
interface PlanPresses {
  readonly byMethod: (choice: PlanChoice) => PressedPlan
  readonly byMaker: (plan: PressedPlan) => PressedPlan
}
type PressChoice = PlanPresses['byMethod']

export function choosePlan(laid: Laid, fingerprints: FingerprintCache | null, { byMethod, byMaker }: PlanPresses): Plans {
  const order = laid.block.order ?? 'auto'
  if (order === 'auto' && laid.patches.length > KEPT_PATCHES) return { taken: byMaker(bestOneByOne(laid, fingerprints, byMethod)), others: [] }
  const all = (order === 'auto' ? NAMES : [order]).map((name) => bestBy(laid, name, byMethod))
  const best = all.reduce((found, plan) => (better(laid, plan, found, fingerprints) ? plan : found))
  const taken = byMaker(best)
  // Another order helps only where this one clashes.
  if (taken.pressed.clashes === 0) return { taken, others: [] }
  const others = NAMES.filter((name) => name !== best.name).map((name) => all.find((plan) => plan.name === name) ?? bestBy(laid, name, byMethod))
  return { taken, others: others.map(byMaker) }
}

/** The best plan, dropping each as soon as another is better: large blocks would not fit in memory twice. */
function bestOneByOne(laid: Laid, fingerprints: FingerprintCache | null, pressChoice: PressChoice): PressedPlan {
  return NAMES.reduce<PressedPlan | null>((best, name) => {
    // Nothing beats straight rows of single units that nest.
    if (best !== null && isSimplest(best)) return best
    const plan = bestBy(laid, name, pressChoice)
    return best === null || better(laid, plan, best, fingerprints) ? plan : best
  }, null) as PressedPlan
}

const isSimplest = (plan: PressedPlan): boolean => {
  const { bends, setIn, partial } = crookedness(plan)
  return bends + setIn + partial + plan.pressed.clashes === 0 && isOfSingleUnits(plan)
}

/** The best of the plans of one name. */
function bestBy(laid: Laid, name: Plan['name'], pressChoice: PressChoice): PressedPlan {
  const middle = pressChoice({ name, cutOrder: 'middle', skippedCuts: 0 })
  const sections = name === 'sections' || middle.seams.some(({ stage }) => stage === 'section')
  const settled = isStraight(middle) && middle.pressed.clashes === 0
  if (!sections || laid.block.units.length > (settled ? COMPARED_UNITS : PEELED_UNITS)) return middle
  // Peeling may sew straight, or nest, what halving does not; where the two tie, peeling is taken: it sews round after round, as makers do.
  const outside = pressChoice({ name, cutOrder: 'outside', skippedCuts: 0 })
  const best = simpler(laid, middle, outside) ? middle : outside
  if (name !== 'sections' || laid.block.units.length > COMPARED_UNITS || !isStraight(best)) return best
  // Another first cut may leave matching pieces: four paws, five four-patches.
  return Array.from({ length: FIRST_CUTS }, (_, cut) => pressChoice({ name, cutOrder: 'middle', skippedCuts: cut + 1 })).reduce(
    (found, plan) => (simpler(laid, plan, found) ? plan : found),
    best,
  )
}

/** Whether a plan of one name is better than one of another; of equals the earlier name is taken. */
function better(laid: Laid, plan: PressedPlan, best: PressedPlan, fingerprints: FingerprintCache | null): boolean {
  return isLess([
    ...harder(plan, best),
    () => Number(isOfSingleUnits(best)) - Number(isOfSingleUnits(plan)),
    () => (isOfSingleUnits(best) ? 0 : countShapes(laid, plan.seams, fingerprints) - countShapes(laid, best.seams, fingerprints)),
  ])
}

/** Compares plans of one name: as easy to sew, then fewest different shapes of pieces, then fewest joins one after another. */
function simpler(laid: Laid, plan: PressedPlan, best: PressedPlan): boolean {
  return isLess([
    ...harder(plan, best),
    () => countShapes(laid, plan.seams) - countShapes(laid, best.seams),
    () => longestWait(laid, plan) - longestWait(laid, best),
  ])
}

/** How much harder one plan is to sew than another, the weightiest first. */
function harder(plan: PressedPlan, best: PressedPlan): (() => number)[] {
  const [one, other] = [crookedness(plan), crookedness(best)]
  return [
    () => one.bends - other.bends,
    () => one.setIn - other.setIn,
    () => one.partial - other.partial,
    () => plan.pressed.clashes - best.pressed.clashes,
  ]
}

/** Whether the first difference other than zero is negative. */
function isLess(differences: readonly (() => number)[]): boolean {
  for (const difference of differences) {
    const more = difference()
    if (more !== 0) return more < 0
  }
  return false
}

/** Whether a plan sews rows or columns of units, with nothing to be joined inside an item. */
const isOfSingleUnits = ({ name, seams }: PressedPlan): boolean => name !== 'sections' && !seams.some(({ stage }) => stage === 'section')

/** The longest row of joins that must wait for one another. */
function longestWait(laid: Laid, { seams }: PressedPlan): number {
  const rounds: number[] = new Array(laid.patches.length).fill(0)
  for (const { sides } of seams) rounds.push(1 + Math.max(rounds[sides[0]] as number, rounds[sides[1]] as number))
  return rounds.at(-1) as number
}

interface Crookedness {
  readonly bends: number
  readonly setIn: number
  readonly partial: number
}

function crookedness({ seams }: PressedPlan): Crookedness {
  let [bends, setIn, partial] = [0, 0, 0]
  for (const seam of seams) {
    if (seam.kind === 'set-in') {
      setIn++
      bends += seam.bends.length
    } else if (seam.kind === 'partial') partial++
  }
  return { bends, setIn, partial }
}

const isStraight = ({ seams }: PressedPlan): boolean => seams.every(({ kind }) => kind === 'straight')
