/**
 * Keeps the solvers' last answers between the cut lists of a block that is being edited.
 *
 * In      the solvers to call when no answer is kept.
 * Out     solvers with the same answers. Each follower of a block has its own cache; nothing is kept anywhere else.
 */
import { type CoverSolver, cachedCovers } from './batches/coverCache.ts'
import { cachedStrips, type StripSolver } from './strips/stripsPerFabric.ts'

export interface CutListCache {
  /** The fewest batches of geese. */
  readonly covers: CoverSolver
  /** The least length of one fabric. */
  readonly strips: StripSolver
}

export const cutListCache = (covers?: CoverSolver, strips?: StripSolver): CutListCache => ({
  covers: cachedCovers(covers),
  strips: cachedStrips(strips),
})
