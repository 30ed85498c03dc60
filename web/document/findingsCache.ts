/**
 * The findings of the block on the board, worked out once.
 *
 * In      a block, and its layers of cloth where they have been counted, for the findings come with them.
 * Out     its findings, or why there are none: trouble in working them out never blanks the screen. Each block is worked out from the one before it, at the
 *         cost of what an edit changed. A large block never waits: the findings before it stand until those of a worker are there.
 */
import { type Block, type Findings, liveFindings, type Layered, type Message, message } from '../../geometry/index.ts'
import { isLarge } from './blockSize.ts'

export type FindingsState = { readonly report: Findings; readonly trouble: null } | { readonly report: null; readonly trouble: Message }

/** A block with its layers of cloth. */
export interface LayeredBlock {
  readonly block: Block
  readonly layered: Layered
}

const waiting: FindingsState = { report: null, trouble: message('findings-follow') }
const follow = liveFindings()
let cache: { readonly block: Block; readonly findings: FindingsState } | null = null

export function cachedFindings(block: Block, layers: LayeredBlock | null): FindingsState {
  if (layers?.block === block) {
    const report = layers.layered.findings
    if (cache?.findings.report !== report) cache = { block, findings: { report, trouble: null } }
    return cache.findings
  }
  if (cache?.block === block) return cache.findings
  if (isLarge(block) && typeof Worker !== 'undefined') return cache?.findings ?? waiting
  cache = { block, findings: workedOut(block) }
  return cache.findings
}

function workedOut(block: Block): FindingsState {
  try {
    return { report: follow(block), trouble: null }
  } catch (error) {
    return noFindings(error instanceof Error ? error.message : 'no reason given')
  }
}

export const noFindings = (reason: string): FindingsState => ({
  report: null,
  trouble: message('not-worked-out', { error: reason }),
})

/** The findings of a block if they are there already. */
export const knownFindings = (block: Block): Findings | null => (cache?.block === block ? cache.findings.report : null)

export function keepFindings(block: Block, findings: FindingsState): void {
  cache = { block, findings }
}

/** What was found in another block says nothing of the next. */
export function clearFindings(): void {
  cache = null
}
