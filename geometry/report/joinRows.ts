/**
 * The joins of a pressed plan as the report lists them.
 *
 * In      the sewn block and its plan.
 * Out     a row for each join in sewing order: its line in cells, what it joins, the unfinished size it makes in the measure's unit, and which way it is
 *         pressed and why.
 */
import type { Seam } from '../piecing/values.ts'
import type { Dot } from '../plane/points.ts'
import type { PressedPlan } from '../pressing/plan.ts'
import { verdictOf } from '../pressing/nesting.ts'
import type { PressConstraint, Toward } from '../pressing/values.ts'
import type { Join, ReportPoint } from '../values/report.ts'
import type { FindingsCache } from './findingsCache.ts'
import { PieceSizes } from './pieceSizes.ts'
import type { Sewing } from './sewing.ts'
import { type BoardMessage, message } from '../values/messages.ts'

/** The id of a join by the number of its seam. */
export const joinId = (seam: number): string => `j:${seam + 1}`

/** The report's joins for a pressed plan, in sewing order; a cache hands on the rows that have not changed. */
export function joinsOf({ laid, plane }: Sewing, plan: PressedPlan, cache: FindingsCache | null): Join[] {
  const { patches, places } = laid
  const sizes = new PieceSizes(laid)
  const costly = costlyTurns(plan)
  const pieceId = (piece: number): string => (piece < patches.length ? (patches[piece]?.id as string) : joinId(piece - patches.length))
  const placeOf = (dot: number): ReportPoint => places.written(plane.dots[dot] as Dot)
  cache?.joins.begin()
  return plan.seams.map((seam, index): Join => {
    const [toward, constraint] = [plan.pressed.toward[index] as Toward, plan.constraints[index] as PressConstraint]
    const last = cache?.joins.reuse(seam)
    const extent = sizes.next(seam, last?.extent)
    const press = pressOf(toward, constraint, costly[index] === 1, last?.constraint === constraint ? last.join.press : undefined)
    if (cache !== null && last?.number === index && last.join.press === press) return cache.joins.keep(seam, last).join
    const join: Join = {
      id: joinId(index),
      stage: seam.stage,
      kind: seam.kind,
      from: placeOf(seam.path[0] as number),
      to: placeOf(seam.path.at(-1) as number),
      via: seam.bends.map((place) => placeOf(seam.path[place] as number)),
      sides: [pieceId(seam.sides[0]), pieceId(seam.sides[1])],
      unfinished: sizes.unfinished(extent),
      press,
      clockwise: plan.met.clockwise[index] as 0 | 1,
      ...finishedAfter(seam),
    }
    return cache?.joins.keep(seam, { join, number: index, extent, constraint }).join ?? join
  })
}

const finishedAfter = ({ finishedAfter: after }: Seam): Pick<Join, 'finishedAfter'> => (after === null ? {} : { finishedAfter: joinId(after) })

/** By seam: 1 where turning it, with the seams that match it, would cost a clash. */
function costlyTurns({ met, pressed, seams, matched }: PressedPlan): Uint8Array {
  const choice = (seam: number): number => matched?.shared.choiceOf[seam] ?? seam
  const cost = new Int32Array(seams.length)
  for (const crossing of met.crossings) {
    const verdict = verdictOf(crossing, pressed.toward)
    if (verdict !== 'nests' && verdict !== 'clashes') continue
    const [one, other] = [choice(crossing.seams[0] as number), choice(crossing.seams[1] as number)]
    if (one === other) continue
    const more = verdict === 'nests' ? 1 : -1
    cost[one] = (cost[one] as number) + more
    cost[other] = (cost[other] as number) + more
  }
  return Uint8Array.from(seams, (_, seam) => ((cost[choice(seam)] as number) > 0 ? 1 : 0))
}

/** How a join is pressed and why. `last`: the row from before an edit, returned again where nothing differs. */
function pressOf(toward: Toward, constraint: PressConstraint, costly: boolean, last: Join['press'] | undefined): Join['press'] {
  const [rule, why] = reasonOf(toward, constraint, costly)
  return last?.toward === toward && last.rule === rule ? last : { toward, rule, why }
}

const NESTS = message('so-that-it-nests')
const EITHER_WAY = message('either-way')

function reasonOf(toward: Toward, constraint: PressConstraint, costly: boolean): [Join['press']['rule'], BoardMessage] {
  if (constraint.rule !== null) return [constraint.rule, constraint.why]
  if (costly) return ['meeting', NESTS]
  if (constraint.preference !== null && constraint.preference === toward) return ['preference', constraint.why]
  return ['none', EITHER_WAY]
}
