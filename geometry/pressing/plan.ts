/** A plan as it is sewn and pressed: what the stages after pressing read. */
import type { Prints } from '../piecing/matchingPieces.ts'
import type { Helps } from '../piecing/straightCuts.ts'
import type { Plan, Seam, Tree } from '../piecing/values.ts'
import type { Like } from './matchingSeams.ts'
import type { Met, SideOf } from './meet.ts'
import type { Tied } from './pressAlike.ts'
import type { Wishes } from './pressRules.ts'
import type { Pressed } from './values.ts'

export interface SewnPlan extends Wishes {
  readonly seams: readonly Seam[]
  readonly sideOf: SideOf
  readonly met: Met
}

export interface PressedPlan extends Wishes {
  readonly name: Plan['name']
  readonly seams: readonly Seam[]
  readonly sideOf: SideOf
  readonly met: Met
  readonly pressed: Pressed
  /** Where alike units are to be pressed alike: what each wish was before, which seams are alike, and the choices they make together. */
  readonly together: { readonly asked: Wishes['wishes']; readonly like: readonly (Like | null)[]; readonly tied: Tied } | null
  /** Whether the fewest set-in and partial joins are proved. */
  readonly proved: boolean
}

/** How plans are sewn: each anew, or with what is known from before an edit (see `resew`). */
export interface Workroom {
  /** What helps to divide pieces for one sort of plan. */
  readonly helps: (sort: string) => Helps
  /** `sort`: of plan, as in `helps`. */
  readonly sew: (tree: Tree, sort: string) => SewnPlan
  readonly prints: Prints | null
}
