/** One sewn block as the pipeline hands it on, and the caches kept from one edit to the next. */
import type { Laid } from '../block/lay.ts'
import type { Plane } from '../plane/subdivide.ts'
import type { Thickest } from '../pressing/layers/countLayers.ts'
import type { Folds } from '../pressing/layers/folds.ts'
import type { PlanSewer, PressedPlan } from '../pressing/plan.ts'
import type { Block } from '../values/block.ts'
import type { Problem } from '../values/report.ts'

/** How far a block is worked out: at once, or with the layers of fabric and all that is proved, which take longer. */
export type Depth = 'quick' | 'whole'

export interface Sewing {
  /** The patches, with the places of their corners (`laid.places`). */
  readonly laid: Laid
  readonly plane: Plane
  /** What keeps the layout from being sewn: gaps, overlaps, fabric beyond the grid. */
  readonly faults: readonly Problem[]
  readonly depth: Depth
  readonly plans: Plans | null
  /** The folded fabric; null in a `quick` run, or where the block has too many patches or folds. */
  readonly layers: { readonly folds: Folds; readonly thickest: Thickest } | null
}

/** The plan that is taken, and others that were pressed, to show what another order would do. */
export interface Plans {
  readonly taken: PressedPlan
  readonly others: readonly PressedPlan[]
}

/** The first stages of the pipeline for a block that is edited: the same results as from nothing, at the cost of what an edit changed. */
export interface SewingCache {
  lay(block: Block): Laid
  subdivide(laid: Laid): Plane
  sewer(laid: Laid): PlanSewer
}
