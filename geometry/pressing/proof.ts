/**
 * Why the number of clashes cannot be lower with these joins.
 *
 * In      the pressed plan.
 * Out     a message: each chain or ring that must clash, by the numbers of its seams in sewing order.
 */
import { tiesOf } from './press.ts'
import type { PressedPlan } from './plan.ts'
import type { Crossing } from './values.ts'
import { type ClashingChain, type BoardMessage, message } from '../values/messages.ts'

/** Chains longer than this are named by their first seam and their length. */
const MOST_NAMED = 12

export function proofOf(plan: PressedPlan): BoardMessage {
  const { met, constraints, pressed } = plan
  if (pressed.clashes === 0) return message('all-nest')
  if (plan.matched !== null) return matchedProof(plan)
  const ties = tiesOf(met.crossings, constraints)
  const seen = new Set<number>()
  const chains: ClashingChain[] = []
  for (const clash of pressed.clashing) {
    const first = (met.crossings[clash] as Crossing).seams[0] as number
    if (seen.has(first)) continue
    const group = [first]
    seen.add(first)
    for (const seam of group)
      for (const { other } of ties[seam] ?? []) {
        if (seen.has(other)) continue
        seen.add(other)
        group.push(other)
      }
    chains.push({
      joins: (group.length <= MOST_NAMED ? group : [first]).map((seam) => seam + 1),
      length: group.length,
      settled: group.filter((seam) => constraints[seam]?.fixed !== null).length,
      clashes: pressed.clashing.filter((index) => (met.crossings[index] as Crossing).seams.every((seam) => group.includes(seam))).length,
    })
  }
  return message('chains-must-clash', { chains })
}

function matchedProof({ constraints, pressed: { atLeast, clashes }, matched }: PressedPlan): BoardMessage {
  const choices = new Set(constraints.flatMap(({ fixed }, seam) => (fixed === null ? [matched?.shared.choiceOf[seam]] : []))).size
  return message(atLeast === clashes ? 'alike-all-weighed' : 'alike-best-found', { choices, atLeast })
}
