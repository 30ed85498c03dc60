/** Jobs of the deep worker that only an open sheet needs, so their code is not loaded with the page. */
import {
  type Block,
  type FabricForCopies,
  fabricForCopies,
  nearestColouring,
  quiltingRoute,
  report,
  settingReport,
  type StashFor,
  stashFor,
  type StashPiece,
  wrongSide,
} from '../../geometry/index.ts'
import { layoutRepairs } from './layoutRepairs.ts'

export const lazyJobs = {
  report,
  route: quiltingRoute,
  cloth: fabricAndStash,
  nearest: nearestColouring,
  wrongSide,
  setting: settingReport,
  repairs: layoutRepairs,
}
export type LazyJobs = typeof lazyJobs

/** The fabric to buy for a number of blocks, and how much of it the pieces on hand can give. */
function fabricAndStash(
  block: Block,
  copies: number,
  stash: readonly StashPiece[],
): { readonly cloth: FabricForCopies; readonly stash: readonly StashFor[] } {
  return { cloth: fabricForCopies(block, copies), stash: stash.length === 0 ? [] : stashFor(block, stash, copies) }
}
