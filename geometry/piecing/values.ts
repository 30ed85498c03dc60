/** The values of the piecing room: trees of pieces, and seams with their paths. */
import type { Stage } from '../values/report.ts'

export type { Stage }

/** A part (unit or border strip) by its number, or two pieces joined. */
export type Tree = number | Branch

export interface Branch {
  readonly sides: readonly [Tree, Tree]
  readonly stage: Stage
}

/** A joining order for all parts of a block. */
export interface Plan {
  readonly name: 'rows' | 'columns' | 'sections'
  readonly tree: Tree
  /** Whether no plan that keeps units whole has fewer bends, set-in and partial joins. */
  readonly proved: boolean
}

/** Which straight cuts are tried first: through the `middle` (halves and quarters), or at the `outside` (strips peeled off, as for a log cabin). */
export type CutOrder = 'middle' | 'outside'

/** Which of the possible plans to make. */
export interface PlanChoice {
  readonly name: Plan['name']
  readonly cutOrder: CutOrder
  /** How many of the best cuts are skipped at the first cut. */
  readonly skippedCuts: number
}

/** A key for everything kept about one choice of plan. */
export const planKey = ({ name, cutOrder, skippedCuts }: PlanChoice): string => `${name} ${cutOrder} ${skippedCuts}`

/** A sewn line. */
export interface Seam {
  /** What it joins: rows are sewn before the block, borders last. */
  readonly stage: Stage
  readonly kind: 'straight' | 'partial' | 'set-in'
  /** A piece is a patch (0 … patches − 1) or an earlier seam s (patches + s). */
  readonly sides: readonly [number, number]
  /** Dots of the plane from end to end, the whole seam as it is once finished. */
  readonly path: readonly number[]
  /** Places of the bends in `path`. */
  readonly bends: readonly number[]
  /** Partial seams: the seam after which the open part is sewn shut. */
  readonly finishedAfter: number | null
  /** The unit it belongs to, where it is sewn inside one; else −1. */
  readonly unit: number
}
