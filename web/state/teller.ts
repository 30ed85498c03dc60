/**
 * The findings of a block too large to be told while the hand waits: worked out beside the page, the newest block next, never one that is past already.
 *
 * In      blocks as they come; what to do with the findings of one.
 * Out     nothing at once. The worker is kept with what it knows: it is told only what differs from the block before, and tells only what differs from
 *         the findings before.
 */
import type { Block, Findings } from '../../geometry/index.ts'
import { received, sent } from './sending.ts'
import type { TellerAnswer } from './teller.worker.ts'

/** Units above which the findings come a moment after the edit. */
export const LARGE = 2000

export function teller(take: (block: Block, report: Findings) => void): (block: Block) => void {
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
  const started = (): Worker => {
    const made = new Worker(new URL('./teller.worker.ts', import.meta.url), { type: 'module' })
    made.onmessage = ({ data }: MessageEvent<TellerAnswer>) => {
      const [block, next] = [asked, waiting]
      asked = null
      waiting = null
      if ('trouble' in data) end()
      else if (block !== null) {
        const findings = received(known.findings, data.changes)
        known = { ...known, findings }
        take(block, findings as Findings)
      }
      if (next !== null) ask(next)
    }
    made.onerror = (event) => {
      event.preventDefault()
      end()
    }
    return made
  }
  return (block) => {
    if (typeof Worker === 'undefined' || block === asked) return
    if (asked === null) ask(block)
    else waiting = block
  }
}
