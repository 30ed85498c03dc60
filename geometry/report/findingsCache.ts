/**
 * What was said of a block before an edit, kept where it still holds.
 *
 * In      patches, seams and crossings as they come, in order; an edit leaves those it does not touch the very same objects.
 * Out     the very rows that were made of them before.
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
