/** What the piecing room hands on: trees of pieces, and joins that know where they run. */
import type { Stage } from '../values/report.ts'

export type { Stage }

/** A part (unit or border strip) by its number, or two pieces joined. */
export type Tree = number | Branch

export interface Branch {
  readonly sides: readonly [Tree, Tree]
  readonly stage: Stage
}

export interface Plan {
  readonly name: 'rows' | 'columns' | 'sections'
  readonly tree: Tree
}

/** A sewn line. */
export interface Seam {
  readonly stage: Stage
  /** Which is sewn first within one order: rows before the block. */
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
