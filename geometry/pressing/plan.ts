/** A plan as it is sewn and as it is pressed, for the later stages. */
import type { FingerprintCache } from '../piecing/matchingPieces.ts'
import type { DivisionContext } from '../piecing/straightCuts.ts'
import type { Plan, PlanChoice, Seam } from '../piecing/values.ts'
import type { MatchingSeam } from './matchingSeams.ts'
import type { MetSeams, SideOf } from './meet.ts'
import type { SharedChoices } from './pressAlike.ts'
import type { PressConstraints } from './pressRules.ts'
import type { Pressed } from './values.ts'

export interface SewnPlan extends PressConstraints {
  readonly seams: readonly Seam[]
  readonly sideOf: SideOf
  readonly met: MetSeams
}

export interface PressedPlan extends SewnPlan {
  readonly name: Plan['name']
  readonly pressed: Pressed
  /** Where matching units are pressed the same way: the constraints before that, which seams match, and the choices they share. */
  readonly matched: {
    readonly before: PressConstraints['constraints']
    readonly matching: readonly (MatchingSeam | null)[]
    readonly shared: SharedChoices
  } | null
  /** Whether no plan has fewer bends, set-in and partial joins. */
  readonly proved: boolean
}

/** How the plans of one block are divided and sewn: from nothing (`sewFromNothing`), or with results kept from before an edit (`IncrementalSew`). */
export interface PlanSewer {
  readonly divisionContext: (choice: PlanChoice) => DivisionContext
  readonly sew: (plan: Plan, choice: PlanChoice) => SewnPlan
  readonly fingerprints: FingerprintCache | null
}
