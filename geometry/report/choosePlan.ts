/**
 * Choose between plans: a stage above planning, which presses each and takes the best.
 *
 * In      the laid block (its `order`), and the way to divide, sew and press one plan.
 * Out     the plan taken; and the others, pressed too, to show what another order would do.
 * Chosen  fewest set-in and partial joins, then fewest clashes, then fewest seams against their preference, then fewest different pieces; rows before
 *         columns before sections where all is equal.
 */
import type { Laid } from '../block/lay.ts'
import { countDifferent, type FingerprintCache } from '../piecing/matchingPieces.ts'
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

type PressChoice = (choice: PlanChoice) => PressedPlan

export function choosePlan(laid: Laid, fingerprints: FingerprintCache | null, pressChoice: PressChoice): Plans {
  const order = laid.block.order ?? 'auto'
  if (order !== 'auto') {
    const taken = bestBy(laid, order, pressChoice)
    // Another order helps only where this one clashes.
    const others = taken.pressed.clashes === 0 ? [] : NAMES.filter((name) => name !== order).map((name) => bestBy(laid, name, pressChoice))
    return { taken, others }
  }
  if (laid.patches.length > KEPT_PATCHES) return { taken: bestOneByOne(laid, fingerprints, pressChoice), others: [] }
  const all = NAMES.map((name) => bestBy(laid, name, pressChoice))
  const taken = all.reduce((best, plan) => (better(laid, plan, best, fingerprints) ? plan : best))
  return { taken, others: all.filter((plan) => plan !== taken) }
}

/** The best plan, dropping each as soon as another is better: large blocks would not fit in memory twice. */
function bestOneByOne(laid: Laid, fingerprints: FingerprintCache | null, pressChoice: PressChoice): PressedPlan {
  return NAMES.reduce<PressedPlan | null>((best, name) => {
    // Nothing beats a straight plan without clashes and without a seam against its preference.
    if (best !== null && crookedness(best) + best.pressed.clashes + best.pressed.against === 0) return best
    const plan = bestBy(laid, name, pressChoice)
    return best === null || better(laid, plan, best, fingerprints) ? plan : best
  }, null) as PressedPlan
}

/** The best of the plans of one name. */
function bestBy(laid: Laid, name: Plan['name'], pressChoice: PressChoice): PressedPlan {
  const middle = pressChoice({ name, cutOrder: 'middle', skippedCuts: 0 })
  const sections = name === 'sections' || middle.seams.some(({ stage }) => stage === 'section')
  const settled = crookedness(middle) === 0 && middle.pressed.clashes === 0
  if (!sections || laid.block.units.length > (settled ? COMPARED_UNITS : PEELED_UNITS)) return middle
  // Peeling may sew straight, or nest, what halving does not; where the two tie, peeling is taken: it sews round after round, as makers do.
  const outside = pressChoice({ name, cutOrder: 'outside', skippedCuts: 0 })
  const best = simpler(laid, middle, outside) ? middle : outside
  if (name !== 'sections' || laid.block.units.length > COMPARED_UNITS || crookedness(best) > 0) return best
  // Another first cut may leave matching pieces: four paws, five four-patches.
  return Array.from({ length: FIRST_CUTS }, (_, cut) => pressChoice({ name, cutOrder: 'middle', skippedCuts: cut + 1 })).reduce(
    (found, plan) => (simpler(laid, plan, found) ? plan : found),
    best,
  )
}

/** Whether a plan of one name is better than one of another. */
function better(laid: Laid, plan: PressedPlan, best: PressedPlan, fingerprints: FingerprintCache | null): boolean {
  return isLess([
    () => crookedness(plan) - crookedness(best),
    () => plan.pressed.clashes - best.pressed.clashes,
    () => plan.pressed.against - best.pressed.against,
    () => countDifferent(laid, plan.seams, 'fabrics', fingerprints) - countDifferent(laid, best.seams, 'fabrics', fingerprints),
  ])
}

/** Compares plans of one name: fewest clashes, then fewest different shapes of pieces, then fewest seams against their preference, then fewest joins one after another. */
function simpler(laid: Laid, plan: PressedPlan, best: PressedPlan): boolean {
  return isLess([
    () => crookedness(plan) - crookedness(best),
    () => plan.pressed.clashes - best.pressed.clashes,
    () => countDifferent(laid, plan.seams, 'shapes') - countDifferent(laid, best.seams, 'shapes'),
    () => plan.pressed.against - best.pressed.against,
    () => longestWait(laid, plan) - longestWait(laid, best),
  ])
}

/** Whether the first difference other than zero is negative. */
function isLess(differences: readonly (() => number)[]): boolean {
  for (const difference of differences) {
    const more = difference()
    if (more !== 0) return more < 0
  }
  return false
}

/** The longest row of joins that must wait for one another. */
function longestWait(laid: Laid, { seams }: PressedPlan): number {
  const rounds: number[] = new Array(laid.patches.length).fill(0)
  for (const { sides } of seams) rounds.push(1 + Math.max(rounds[sides[0]] as number, rounds[sides[1]] as number))
  return rounds.at(-1) as number
}

/** Set-in seams count for more than any number of partial ones in a block that can be read. */
function crookedness({ seams }: PressedPlan): number {
  return seams.reduce((sum, { kind }) => sum + (kind === 'set-in' ? 1000 : kind === 'partial' ? 1 : 0), 0)
}
