/** A block as it would be after a fix, shown on the board before the fix is taken. */
import type { Block, Findings } from '../../geometry/index.ts'
import type { DrawnSeam } from './shapes.ts'

export interface Preview {
  readonly block: Block
  readonly report: Findings
  /** Seams that would be pressed another way, as they would lie. */
  readonly pressed: readonly DrawnSeam[]
  readonly units: readonly string[]
  readonly clashes: readonly [number, number]
  /** Whether the block can be sewn, before and after the fix. */
  readonly sewn: readonly [boolean, boolean]
}
