/**
 * Asks the worker, one wish at a time: a newer wish ends an older one that is still being worked out.
 *
 * In      a wish and what to do with its answer.
 * Out     a function that takes the wish back.
 */
import type { DeepAnswer, DeepWish } from './deepMessages.ts'

/** Milliseconds of rest before work begins: a hand that goes on needs no answer yet. */
const REST = 120

export function asker(): (wish: DeepWish, take: (answer: DeepAnswer) => void) => void {
  let worker: Worker | null = null
  let busy = false
  let rest: ReturnType<typeof setTimeout> | undefined
  return (wish, take) => {
    if (typeof Worker === 'undefined') return
    clearTimeout(rest)
    rest = setTimeout(() => {
      if (busy) {
        worker?.terminate()
        worker = null
      }
      worker ??= new Worker(new URL('./deep.worker.ts', import.meta.url), { type: 'module' })
      busy = true
      worker.onmessage = ({ data }: MessageEvent<DeepAnswer>) => {
        busy = false
        take(data)
      }
      worker.onerror = (event) => {
        event.preventDefault()
        busy = false
        worker?.terminate()
        worker = null
        take({ sort: 'trouble', message: 'it could not be worked out beside the page' })
      }
      worker.postMessage(wish)
    }, REST)
  }
}
