/** A block as a fix would leave it, shown on the board before it is taken. */
import type { Block, Findings } from '../../geometry/index.ts'
import type { DrawnSeam } from './shapes.ts'

export interface Preview {
  readonly block: Block
  readonly report: Findings
  /** Seams whose allowances would lie otherwise, as they would lie. */
  readonly pressed: readonly DrawnSeam[]
  readonly units: readonly string[]
  readonly clashes: readonly [number, number]
  /** Whether it can be sewn, now and then. */
  readonly sewn: readonly [boolean, boolean]
}
