/**
 * Sew the plans of a block from nothing: every join, where seams meet across it, and the constraint on its pressing.
 *
 * In      the laid block and its plane.
 * Out     a `PlanSewer`. The units are sewn once: every plan of a block begins with them.
 */
import type { Laid } from '../block/lay.ts'
import { sew, sewUnits } from '../piecing/sew.ts'
import type { Tree } from '../piecing/values.ts'
import type { Plane } from '../plane/subdivide.ts'
import { meet } from './meet.ts'
import type { PlanSewer, SewnPlan } from './plan.ts'
import { constraintsOf, seamConstraint } from './pressRules.ts'
import { sideLookup } from './sideLookup.ts'

export function sewFromNothing(laid: Laid, plane: Plane): PlanSewer {
  const patches = laid.patches.length
  const units = sewUnits(laid, plane)
  const inUnits = meet(plane, units.seams, sideLookup(patches, units.seams))
  const constraintOf = seamConstraint(laid, plane)
  const constraints = units.seams.map((seam, index) =>
    constraintOf(seam, inUnits.ends[index] as readonly [number, number], inUnits.clockwise[index] as 0 | 1),
  )
  const context = { known: new Map<string, Tree>(), cache: null, edgesOf: null }
  return {
    divisionContext: () => context,
    fingerprints: null,
    sew({ tree }): SewnPlan {
      const seams = sew(laid, plane, units, tree)
      const sideOf = sideLookup(patches, seams)
      const met = meet(plane, seams, sideOf, inUnits)
      return { seams, sideOf, met, ...constraintsOf(laid, plane, seams, met, sideOf, constraints) }
    },
  }
}
