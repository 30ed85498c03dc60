/**
 * Printing that can be waited for and taken back.
 *
 * In      what to print, and who wants to know how far it is.
 * Out     the bytes, or null once it was taken back.
 */
import type { PrintNews, PrintWish } from './print.worker.ts'

export interface Printing {
  readonly bytes: Promise<Uint8Array<ArrayBuffer> | null>
  /** Ends the work at once. */
  readonly cancel: () => void
}

export function startPrinting(wish: PrintWish, onProgress: (done: number, of: number) => void): Printing {
  const worker = new Worker(new URL('./print.worker.ts', import.meta.url), { type: 'module' })
  let cancel = (): void => undefined
  const bytes = new Promise<Uint8Array<ArrayBuffer> | null>((resolve, reject) => {
    cancel = () => resolve(null)
    worker.onmessage = ({ data }: MessageEvent<PrintNews>) => {
      if (data.sort === 'progress') onProgress(data.done, data.of)
      else if (data.sort === 'done') resolve(data.bytes)
      else reject(new Error(data.message))
    }
    worker.onerror = (event) => {
      event.preventDefault()
      reject(new Error(event.message))
    }
    worker.postMessage(wish)
  }).finally(() => worker.terminate())
  return { bytes, cancel: () => cancel() }
}
