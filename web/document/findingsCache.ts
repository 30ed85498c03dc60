/**
 * The findings of the block on the board, computed once.
 *
 * In      a block, and its layers of fabric if they have been counted, because the findings come with them.
 * Out     its findings, or why there are none, so that an error never blanks the screen. Each block is computed from the one before it, at the
 *         cost of what the edit changed. A large block never waits: its older findings stay until a worker has the new ones.
 */
import { type Block, type Findings, liveFindings, type Layered, type BoardMessage, message } from '../../geometry/index.ts'
import { isLarge } from './blockSize.ts'

export type FindingsState = { readonly report: Findings; readonly trouble: null } | { readonly report: null; readonly trouble: BoardMessage }

/** A block with its layers of fabric. */
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
  cache = { block, findings: computed(block) }
  return cache.findings
}

function computed(block: Block): FindingsState {
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

/** Call this when another block is opened. */
export function clearFindings(): void {
  cache = null
}
