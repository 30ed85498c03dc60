/**
 * Report rows from before an edit, kept where they are still right.
 *
 * In      patches, seams and crossings as they come, in order; an edit keeps the objects it does not touch.
 * Out     the same row objects that were made from them before.
 */
import type { LaidPatch } from '../block/lay.ts'
import type { CutListCache } from '../cutting/cutListCache.ts'
import type { Seam } from '../piecing/values.ts'
import type { Crossing, PressConstraint } from '../pressing/values.ts'
import type { Join, Meeting, Patch } from '../values/report.ts'
import type { Extent } from './pieceSizes.ts'
import { ReuseCache } from './reuseCache.ts'

export class FindingsCache {
  readonly patches = new ReuseCache<LaidPatch, Patch>()
  readonly joins = new ReuseCache<Seam, CachedJoin>()
  readonly meetings = new ReuseCache<Crossing, Meeting>()
  readonly cutList: CutListCache

  constructor(cutList: CutListCache) {
    this.cutList = cutList
  }
}

/** A row of the report, and what it was made from. */
interface CachedJoin {
  readonly join: Join
  /** The seam's number. */
  readonly number: number
  readonly extent: Extent
  readonly constraint: PressConstraint
}
