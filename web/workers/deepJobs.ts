/** What the deep worker works out only for a sheet that is open: a first visit does not load it. */
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

export const laterJobs = {
  report,
  route: quiltingRoute,
  cloth: clothAndStash,
  nearest: nearestColouring,
  wrongSide,
  setting: settingReport,
  repairs: layoutRepairs,
}
export type LaterJobs = typeof laterJobs

/** Cloth to buy for so many blocks, and what of it the pieces on hand can serve. */
function clothAndStash(
  block: Block,
  copies: number,
  stash: readonly StashPiece[],
): { readonly cloth: FabricForCopies; readonly stash: readonly StashFor[] } {
  return { cloth: fabricForCopies(block, copies), stash: stash.length === 0 ? [] : stashFor(block, stash, copies) }
}
