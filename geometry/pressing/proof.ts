/**
 * Why the number of clashes cannot be lower with these joins, in words a maker can follow.
 *
 * In      the pressed plan.
 * Out     one paragraph: each chain or ring that must clash, by its seams.
 */
import { tiesOf } from './press.ts'
import type { PressedPlan } from './plan.ts'
import type { Crossing } from './values.ts'

/** Longer rings are named by their number of seams. */
const MOST_NAMED = 12

export function proofOf(plan: PressedPlan, joinId: (seam: number) => string): string {
  const { met, constraints, pressed } = plan
  if (pressed.clashes === 0) return 'Every pair of seams that meet nests, so there is nothing to lower.'
  if (plan.alike !== null) return alikeProof(plan)
  const ties = tiesOf(met.crossings, constraints)
  const seen = new Set<number>()
  const reasons: string[] = []
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
    const inside = pressed.clashing.filter((index) => (met.crossings[index] as Crossing).seams.every((seam) => group.includes(seam))).length
    const fixed = group.filter((seam) => constraints[seam]?.fixed !== null).length
    const named = group.length <= MOST_NAMED ? group.map(joinId).join(', ') : `${group.length} seams from ${joinId(first)} on`
    const times = inside === 1 ? 'one clash' : `${inside} clashes`
    const cause =
      fixed > 0 ? `the ways of ${fixed} of them are settled by their method or by you` : 'going once round, the turns do not come out even'
    reasons.push(`${group.length <= MOST_NAMED ? 'Seams ' : ''}${named} each decide the next: ${cause}, so at least ${times} must stay`)
  }
  return `${reasons.join('. ')}. All other seams are free of these, so no pressing of these joins has fewer.`
}

function alikeProof({ constraints, pressed, alike }: PressedPlan): string {
  const free = new Set(constraints.flatMap(({ fixed }, seam) => (fixed === null ? [alike?.shared.choiceOf[seam]] : []))).size
  const alikeWords = `Alike units are pressed alike, so their seams turn together: ${free === 1 ? 'one choice is' : `${free} choices are`} left.`
  if (pressed.atLeast === pressed.clashes)
    return `${alikeWords} Each was weighed against every way those it meets may lie, and none was left out: no pressing has fewer than ${pressed.clashes}.`
  return `${alikeWords} There are too many to weigh them all: this is the best found, and no pressing has fewer than ${pressed.atLeast}.`
}
