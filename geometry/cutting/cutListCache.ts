/**
 * What a cut list keeps for the next one of a block that is being edited: the solvers' last answers.
 *
 * In      the solvers to ask where no answer is kept.
 * Out     solvers with the same answers. A cache belongs to whoever follows a block; nothing is kept anywhere else.
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
