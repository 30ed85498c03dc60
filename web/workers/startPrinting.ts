/**
 * Starts printing in a worker; it can be awaited and cancelled.
 *
 * In      the block, what to print of it, and a callback for progress.
 * Out     the bytes of a PDF, or null if it was cancelled; errors are thrown. The worker ends when the job is done.
 */
import type { Block } from '../../geometry/index.ts'
import { printClient } from './clients.ts'
import type { PrintChoice, PrintProgress } from './print.worker.ts'

export interface Printing {
  readonly bytes: Promise<Uint8Array<ArrayBuffer> | null>
  /** Ends the work at once. */
  readonly cancel: () => void
}

export function startPrinting(block: Block, choice: PrintChoice, onProgress: (done: number, of: number) => void): Printing {
  const client = printClient()
  client.onProgress = (progress) => onProgress(...(progress as PrintProgress))
  const bytes = client.request('print', block, choice).then((reply) => {
    client.close()
    if (reply.type === 'failed') throw new Error(reply.reason)
    return reply.type === 'answer' ? reply.value : null
  })
  return { bytes, cancel: client.close }
}
