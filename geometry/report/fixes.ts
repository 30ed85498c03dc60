/**
 * What to do about a clash: each fix, applied, takes that clash away and makes no other.
 *
 * In      the pressed plan, the other orders pressed as well, and the crossings that clash.
 * Out     for each clashing crossing its fixes, at least one.
 * How     a fix is tried, not guessed: wishes are changed as the fix would change them and everything tied to those seams is pressed anew.
 */
import type { Laid } from '../block/lay.ts'
import type { Dot } from '../plane/points.ts'
import type { Plane } from '../plane/subdivide.ts'
import type { Fix } from '../values/report.ts'
import { judged, pressAll } from '../pressing/press.ts'
import { type Groups, groupsOf } from '../pressing/tiedSeams.ts'
import type { Like } from '../pressing/matchingSeams.ts'
import type { PressedPlan } from '../pressing/plan.ts'
import { pressTogether, tieUp } from '../pressing/pressAlike.ts'
import { type ClashesOf, clashesIn, clashPlace, mends, Turns } from '../pressing/unitTurns.ts'
import type { Crossing, Pressed, Wish } from '../pressing/values.ts'
import { wishesOf } from '../pressing/pressRules.ts'

const NONE: ReadonlyMap<number, readonly Fix[]> = new Map()

export function fixesOf(
  laid: Laid,
  plane: Plane,
  plan: PressedPlan,
  others: readonly PressedPlan[],
  joinId: (seam: number) => string,
  clashesOf: ClashesOf,
): ReadonlyMap<number, readonly Fix[]> {
  const { met, wishes, pressed } = plan
  if (pressed.clashes === 0) return NONE
  const groups = groupsOf(met.crossings, wishes, plan.together?.like ?? null)
  const turns = new Turns(laid, plane, plan, clashesOf)
  const found = new Map<number, readonly Fix[]>()
  for (const clash of pressed.clashing) {
    const crossing = met.crossings[clash] as Crossing
    const seams = crossing.seams
    const fixes = [
      ...seams.flatMap((seam) => pressAnew(laid, plane, plan, groups, clash, seam)),
      ...seams.flatMap((seam) => otherWay(plan, clash, seam, joinId)),
      ...orders(laid, plane, plan, others, clash),
      ...seams.flatMap((seam) => turns.fixes(crossing, (plan.seams[seam] as PressedPlan['seams'][number]).unit)),
      ...seams.flatMap((seam) => opened(plan, groups, clash, seam, joinId)),
    ]
    found.set(clash, fixes)
  }
  return found
}

/** Press again with some wishes changed; only what is tied to them can change. */
function again(plan: PressedPlan, groups: Groups, changed: ReadonlyMap<number, Wish>): { crossings: readonly number[]; pressed: Pressed } {
  const seams = [...new Set([...changed.keys()].flatMap((seam) => groups.members[groups.of[seam] as number] as number[]))]
  const place = new Map(seams.map((seam, index) => [seam, index]))
  const crossings = plan.met.crossings.flatMap((crossing, index) =>
    crossing.sort === 'pair' && crossing.seams.every((seam) => place.has(seam)) ? [index] : [],
  )
  const local = crossings.map((index) => {
    const crossing = plan.met.crossings[index] as Crossing
    return { ...crossing, seams: crossing.seams.map((seam) => place.get(seam) as number) }
  })
  const { together } = plan
  const asked = together?.asked ?? plan.wishes
  const wishes = seams.map((seam) => changed.get(seam) ?? (asked[seam] as Wish))
  if (together === null) return { crossings, pressed: pressAll(local, wishes) }
  // A unit whose rule is lifted is no longer like the others.
  const like = seams.map((seam) => (changed.has(seam) && changed.get(seam)?.rule === null ? null : (together.like[seam] as Like | null)))
  return { crossings, pressed: pressTogether(local, tieUp(wishes, like)) }
}

function helps(plan: PressedPlan, clash: number, { crossings, pressed }: ReturnType<typeof again>): boolean {
  const before = new Set(plan.pressed.clashing)
  return pressed.clashing.every((index) => crossings[index] !== clash && before.has(crossings[index] as number))
}

function pressAnew(laid: Laid, plane: Plane, plan: PressedPlan, groups: Groups, clash: number, seam: number): Fix[] {
  if (plan.wishes[seam]?.rule !== 'method') return []
  const unit = (plan.seams[seam] as PressedPlan['seams'][number]).unit
  const id = laid.block.units[unit]?.id as string
  const freed = freedWishes(laid, plane, plan, unit)
  if (!helps(plan, clash, again(plan, groups, freed))) return []
  return [{ do: 'press', what: id, message: `Press the seams of ${id} the other way where it helps: lift the rule of its method.` }]
}

function freedWishes(laid: Laid, plane: Plane, plan: PressedPlan, unit: number): Map<number, Wish> {
  const own = plan.seams.flatMap((seam, index) => (seam.unit === unit ? [index] : []))
  const block = { ...laid.block, press: [], units: laid.block.units.map((one, index) => (index === unit ? { ...one, pressFree: true } : one)) }
  const seams = own.map((seam) => plan.seams[seam] as PressedPlan['seams'][number])
  const sideOf = (seam: number, patch: number): -1 | 0 | 1 => plan.sideOf(own[seam] as number, patch)
  const { wishes } = wishesOf(
    { ...laid, block },
    plane,
    seams,
    {
      ends: own.map((seam) => plan.met.ends[seam] as readonly [number, number]),
      clockwise: own.map((seam) => plan.met.clockwise[seam] as 0 | 1),
    },
    sideOf,
  )
  return new Map(own.flatMap((seam, index) => (plan.wishes[seam]?.rule === 'asked' ? [] : [[seam, wishes[index] as Wish] as const])))
}

/** Only where both seams are the maker's own word: a free seam that could be turned would have been. */
function otherWay(plan: PressedPlan, clash: number, seam: number, joinId: (seam: number) => string): Fix[] {
  const crossing = plan.met.crossings[clash] as Crossing
  if (plan.wishes[seam]?.rule !== 'asked') return []
  const toward = plan.pressed.toward.map((way, index) => (index === seam && way !== 'open' ? (way === 0 ? 1 : 0) : way))
  const turned = judged(plan.met.crossings, plan.wishes, toward)
  const before = new Set(plan.pressed.clashing)
  if (turned.clashing.includes(clash) || !turned.clashing.every((index) => before.has(index)) || crossing.seams.length !== 2) return []
  return [{ do: 'press', what: joinId(seam), message: 'Press this seam the other way.' }]
}

function orders(laid: Laid, plane: Plane, plan: PressedPlan, others: readonly PressedPlan[], clash: number): Fix[] {
  const before = clashesIn(laid, plane, plan)
  const here = clashPlace(laid, plane.dots[(plan.met.crossings[clash] as Crossing).dot] as Dot)
  return others.flatMap((other): Fix[] => {
    if (!mends(before, clashesIn(laid, plane, other), here)) return []
    return [
      {
        do: 'order',
        what: other.name,
        message:
          other.pressed.clashes === 0
            ? `Join by ${other.name}: then every meeting nests.`
            : `Join by ${other.name}: then this meeting does not clash.`,
      },
    ]
  })
}

function opened(plan: PressedPlan, groups: Groups, clash: number, seam: number, joinId: (seam: number) => string): Fix[] {
  const wish = plan.wishes[seam] as Wish
  const crossing = plan.met.crossings[clash] as Crossing
  if (wish.rule === 'asked' && crossing.seams.some((other) => plan.wishes[other]?.rule !== 'asked')) return []
  if (!helps(plan, clash, again(plan, groups, new Map([[seam, { ...wish, fixed: 'open' as const }]])))) return []
  return [{ do: 'open', what: joinId(seam), message: 'Press this seam open.' }]
}
