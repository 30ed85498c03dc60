/** Which blocks are too large to be worked out while the hand waits. */
import { type Block, patchCount } from '../../geometry/index.ts'

/** Units, or patches in all, above which the findings come a moment after the edit. */
const MOST_UNITS = 2000
const MOST_PATCHES = 8000
const known = new WeakMap<Block, boolean>()

/** A unit may hold a thousand strips, so units alone do not tell. */
export function isLarge(block: Block): boolean {
  const large = known.get(block) ?? (block.units.length > MOST_UNITS || patchCount(block) > MOST_PATCHES)
  known.set(block, large)
  return large
}
