/**
 * The findings of a block too large to be told while the hand waits: worked out beside the page, the newest block next, never one that is past already.
 *
 * In      blocks as they come; what to do with the findings of one.
 * Out     nothing at once. The worker is kept with what it knows: it is told only what differs from the block before, and tells only what differs from
 *         the findings before.
 */
import type { Block, Findings } from '../../geometry/index.ts'
import { received, sent } from './sentDifference.ts'
import type { TellerAnswer } from './findings.worker.ts'

/** Units, or patches in all, above which the findings come a moment after the edit. */
const LARGE = 2000
const MANY_PATCHES = 8000
const known = new WeakMap<Block, boolean>()

/** A unit may hold a thousand strips, so units alone do not tell. */
export function isLarge(block: Block): boolean {
  const large = known.get(block) ?? (block.units.length > LARGE || patchesOf(block) > MANY_PATCHES)
  known.set(block, large)
  return large
}

const patchesOf = ({ units, borders = [] }: Block): number =>
  units.reduce((sum, { fabrics }) => sum + Object.keys(fabrics).length, 4 * borders.length)

/** What came of a block: its findings, or why they could not be worked out. */
export type Outcome = { readonly report: Findings } | { readonly reason: string }

export function teller(take: (block: Block, outcome: Outcome) => void): (block: Block) => void {
  let worker: Worker | null = null
  let asked: Block | null = null
  let waiting: Block | null = null
  /** What the worker knows. */
  let known: { block: object; findings: object } = { block: {}, findings: {} }
  const end = (): void => {
    worker?.terminate()
    worker = null
    asked = null
    known = { block: {}, findings: {} }
  }
  const ask = (block: Block): void => {
    asked = block
    worker ??= started()
    worker.postMessage(sent(known.block, block))
    known = { ...known, block }
  }
  /** On to the newest block that was asked for meanwhile. */
  const answered = (outcome: Outcome): void => {
    const [block, next] = [asked, waiting]
    asked = null
    waiting = null
    if (next !== null) ask(next)
    if (block !== null) take(block, outcome)
  }
  const failed = (reason: string): void => {
    const block = asked
    end()
    asked = block
    answered({ reason })
  }
  const started = (): Worker => {
    const made = new Worker(new URL('./findings.worker.ts', import.meta.url), { type: 'module' })
    made.onmessage = ({ data }: MessageEvent<TellerAnswer>) => {
      if ('trouble' in data) return failed(data.trouble)
      const findings = received(known.findings, data.changes)
      known = { ...known, findings }
      answered({ report: findings as Findings })
    }
    made.onerror = (event) => {
      event.preventDefault()
      failed('the work beside the page came to an end')
    }
    return made
  }
  return (block) => {
    if (typeof Worker === 'undefined' || block === asked) return
    if (asked === null) ask(block)
    else waiting = block
  }
}
