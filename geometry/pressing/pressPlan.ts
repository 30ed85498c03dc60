/**
 * Press one sewn plan.
 *
 * In      the laid block, its plane, and the plan as it is sewn.
 * Out     the plan with a way for every seam: fewest clashes, then fewest seams against their preference. In a block with `pressAlike` set, matching
 *         seams of matching units are pressed the same way.
 */
import type { Laid } from '../block/lay.ts'
import type { Plan } from '../piecing/values.ts'
import type { Plane } from '../plane/subdivide.ts'
import { matchingSeams } from './matchingSeams.ts'
import type { PressedPlan, SewnPlan } from './plan.ts'
import { press } from './press.ts'
import { pressAlike, shareChoices } from './pressAlike.ts'

/** A sewn plan with each seam pressed by itself, whatever matches it. */
export const pressFree = ({ name, proved }: Plan, sewn: SewnPlan): PressedPlan => ({
  ...sewn,
  name,
  proved,
  pressed: press(sewn.met.crossings, sewn.constraints),
  matched: null,
})

export function pressPlan(laid: Laid, plane: Plane, planned: Plan, sewn: SewnPlan): PressedPlan {
  if (laid.block.pressAlike !== true) return pressFree(planned, sewn)
  const { name, proved } = planned
  const { seams, met, constraints } = sewn
  const matching = matchingSeams(laid, plane, seams, met.clockwise)
  const shared = shareChoices(constraints, matching)
  return {
    ...sewn,
    name,
    proved,
    constraints: shared.constraints,
    pressed: pressAlike(met.crossings, shared),
    matched: { before: constraints, matching, shared },
  }
}
