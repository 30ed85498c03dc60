/** Which blocks are too large to compute before the page responds. */
import { type Block, patchCount } from '../../geometry/index.ts'

/** Units, or patches in all, above which the findings come a moment after the edit. */
const MOST_UNITS = 2000
const MOST_PATCHES = 8000
const known = new WeakMap<Block, boolean>()

/** A unit may have a thousand strips, so counting units is not enough. */
export function isLarge(block: Block): boolean {
  const large = known.get(block) ?? (block.units.length > MOST_UNITS || patchCount(block) > MOST_PATCHES)
  known.set(block, large)
  return large
}
