/**
 * What to do about a clash: each fix, once applied, removes that clash and adds no other.
 *
 * In      the laid block and its plane, the pressed plan, the other orders pressed as well, and the way to sew a changed block.
 * Out     for each clashing crossing, by its number, at least one fix.
 * How     a fix is tried, not guessed: constraints are changed as the fix would change them and everything tied to those seams is pressed again; for a
 *         turned unit the pipeline runs on the changed block. So this stage stands above planning.
 */
import type { Laid } from '../block/lay.ts'
import { unitPlaces } from '../block/unitPlaces.ts'
import type { Plane } from '../plane/subdivide.ts'
import type { MatchingSeam } from '../pressing/matchingSeams.ts'
import type { PressedPlan } from '../pressing/plan.ts'
import { press, scorePressing } from '../pressing/press.ts'
import { pressAlike, shareChoices } from '../pressing/pressAlike.ts'
import { constraintsOf } from '../pressing/pressRules.ts'
import { type SeamGroups, tiedSeams } from '../pressing/tiedSeams.ts'
import type { Crossing, PressConstraint, Pressed } from '../pressing/values.ts'
import type { Fix } from '../values/report.ts'
import { type ClashPlaces, clashPlace, clashPlaces, isFixed } from './clashPlaces.ts'
import { joinId } from './joinRows.ts'
import { type SewBlock, UnitTurns } from './unitTurns.ts'
import { message } from '../values/messages.ts'

const NONE: ReadonlyMap<number, readonly Fix[]> = new Map()

/** Everything that fixes of one plan are tried on. */
interface Trial {
  readonly laid: Laid
  readonly plane: Plane
  readonly plan: PressedPlan
  readonly groups: SeamGroups
  readonly before: ClashPlaces
  readonly clashing: ReadonlySet<number>
}

export function fixesOf(
  laid: Laid,
  plane: Plane,
  plan: PressedPlan,
  others: readonly PressedPlan[],
  sewBlock: SewBlock,
): ReadonlyMap<number, readonly Fix[]> {
  const { met, constraints, pressed } = plan
  if (pressed.clashes === 0) return NONE
  const groups = tiedSeams(met.crossings, constraints, plan.matched?.matching ?? null)
  const trial: Trial = { laid, plane, plan, groups, before: clashPlaces(laid, plane, plan), clashing: new Set(pressed.clashing) }
  const turns = new UnitTurns(laid, plane, plan, sewBlock)
  const orders = others.map((other) => ({ other, after: clashPlaces(laid, plane, other) }))
  const found = new Map<number, readonly Fix[]>()
  for (const clash of pressed.clashing) {
    const crossing = met.crossings[clash] as Crossing
    const { seams } = crossing
    found.set(clash, [
      ...seams.flatMap((seam) => liftRule(trial, clash, seam)),
      ...seams.flatMap((seam) => otherWay(trial, clash, seam)),
      ...orders.flatMap(({ other, after }) => otherOrder(trial, crossing, other, after)),
      ...seams.flatMap((seam) => turns.fixes(crossing, (plan.seams[seam] as PressedPlan['seams'][number]).unit)),
      ...seams.flatMap((seam) => pressOpen(trial, clash, seam)),
    ])
  }
  return found
}

/** Presses again with some constraints changed; only seams tied to them can change. `crossings`: the numbers of those that were pressed again. */
function pressAgain(
  { plan, groups }: Trial,
  changed: ReadonlyMap<number, PressConstraint>,
): { readonly crossings: readonly number[]; readonly pressed: Pressed } {
  const seams = [...new Set([...changed.keys()].flatMap((seam) => groups.members[groups.of[seam] as number] as number[]))]
  const place = new Map(seams.map((seam, index) => [seam, index]))
  const crossings = plan.met.crossings.flatMap((crossing, index) =>
    crossing.type === 'pair' && crossing.seams.every((seam) => place.has(seam)) ? [index] : [],
  )
  const local = crossings.map((index) => {
    const crossing = plan.met.crossings[index] as Crossing
    return { ...crossing, seams: crossing.seams.map((seam) => place.get(seam) as number) }
  })
  const { matched } = plan
  const before = matched?.before ?? plan.constraints
  const constraints = seams.map((seam) => changed.get(seam) ?? (before[seam] as PressConstraint))
  if (matched === null) return { crossings, pressed: press(local, constraints) }
  // A unit whose rule is lifted no longer matches the others.
  const matching = seams.map((seam) =>
    changed.has(seam) && changed.get(seam)?.rule === null ? null : (matched.matching[seam] as MatchingSeam | null),
  )
  return { crossings, pressed: pressAlike(local, shareChoices(constraints, matching)) }
}

/** Whether, with some constraints changed, a clash is gone and no other has appeared. */
function helps(trial: Trial, clash: number, changed: ReadonlyMap<number, PressConstraint>): boolean {
  const { crossings, pressed } = pressAgain(trial, changed)
  return pressed.clashing.every((index) => crossings[index] !== clash && trial.clashing.has(crossings[index] as number))
}

function liftRule(trial: Trial, clash: number, seam: number): Fix[] {
  const { laid, plan } = trial
  if (plan.constraints[seam]?.rule !== 'method') return []
  const unit = (plan.seams[seam] as PressedPlan['seams'][number]).unit
  const id = laid.block.units[unit]?.id as string
  if (!helps(trial, clash, withoutRule(trial, unit))) return []
  return [{ do: 'press', what: id, message: message('lift-rule', { unit: unitPlaces(laid.block)(id) }) }]
}

/** The constraints of a unit's own seams with its method's rule lifted; the maker's requests stay. */
function withoutRule({ laid, plane, plan }: Trial, unit: number): Map<number, PressConstraint> {
  const own = plan.seams.flatMap((seam, index) => (seam.unit === unit ? [index] : []))
  const block = { ...laid.block, press: [], units: laid.block.units.map((one, index) => (index === unit ? { ...one, pressFree: true } : one)) }
  const seams = own.map((seam) => plan.seams[seam] as PressedPlan['seams'][number])
  const sideOf = (seam: number, patch: number): -1 | 0 | 1 => plan.sideOf(own[seam] as number, patch)
  const met = {
    ends: own.map((seam) => plan.met.ends[seam] as readonly [number, number]),
    clockwise: own.map((seam) => plan.met.clockwise[seam] as 0 | 1),
  }
  const { constraints } = constraintsOf({ ...laid, block }, plane, seams, met, sideOf)
  return new Map(
    own.flatMap((seam, index) => (plan.constraints[seam]?.rule === 'asked' ? [] : [[seam, constraints[index] as PressConstraint] as const])),
  )
}

/** Only where the maker requested both seams: a free seam that could be turned would have been. */
function otherWay({ plan, clashing }: Trial, clash: number, seam: number): Fix[] {
  const crossing = plan.met.crossings[clash] as Crossing
  if (plan.constraints[seam]?.rule !== 'asked' || crossing.seams.length !== 2) return []
  const toward = plan.pressed.toward.map((way, index) => (index === seam && way !== 'open' ? (way === 0 ? 1 : 0) : way))
  const turned = scorePressing(plan.met.crossings, plan.constraints, toward)
  if (turned.clashing.includes(clash) || !turned.clashing.every((index) => clashing.has(index))) return []
  return [{ do: 'press', what: joinId(seam), message: message('press-other-way') }]
}

function otherOrder({ laid, plane, before }: Trial, crossing: Crossing, other: PressedPlan, after: ClashPlaces): Fix[] {
  if (!isFixed(before, after, clashPlace(laid, plane, crossing))) return []
  return [{ do: 'order', what: other.name, message: message('join-by-order', { order: other.name, all: other.pressed.clashes === 0 }) }]
}

function pressOpen(trial: Trial, clash: number, seam: number): Fix[] {
  const { plan } = trial
  const constraint = plan.constraints[seam] as PressConstraint
  const crossing = plan.met.crossings[clash] as Crossing
  if (constraint.rule === 'asked' && crossing.seams.some((other) => plan.constraints[other]?.rule !== 'asked')) return []
  if (!helps(trial, clash, new Map([[seam, { ...constraint, fixed: 'open' as const }]]))) return []
  return [{ do: 'open', what: joinId(seam), message: message('press-open') }]
}
