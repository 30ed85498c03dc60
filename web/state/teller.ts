/**
 * The findings of a block too large to be told while the hand waits: worked out beside the page, the newest block next, never one that is past already.
 *
 * In      blocks as they come; what to do with the findings of one.
 * Out     nothing at once. The worker is kept, so that it need not learn again what it knows.
 */
import type { Block, Findings } from '../../geometry/index.ts'
import type { DeepAnswer, DeepWish } from './deep.worker.ts'

/** Units above which the findings come a moment after the edit. */
export const LARGE = 2000

export function teller(take: (block: Block, report: Findings) => void): (block: Block) => void {
  let worker: Worker | null = null
  let asked: Block | null = null
  let waiting: Block | null = null
  const end = (): void => {
    worker?.terminate()
    worker = null
    asked = null
  }
  const ask = (block: Block): void => {
    asked = block
    worker ??= started()
    worker.postMessage({ sort: 'findings', block } satisfies DeepWish)
  }
  const started = (): Worker => {
    const made = new Worker(new URL('./deep.worker.ts', import.meta.url), { type: 'module' })
    made.onmessage = ({ data }: MessageEvent<DeepAnswer>) => {
      const [block, next] = [asked, waiting]
      asked = null
      waiting = null
      if (block !== null && data.sort === 'findings') take(block, data.value)
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
