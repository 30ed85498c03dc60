/**
 * Printing that can be waited for and cancelled.
 *
 * In      the block, the paper, which pages (null: all of them), and who wants to know how far it is.
 * Out     the bytes of a PDF, or null once it was cancelled; what goes wrong is thrown. The worker ends with the work.
 */
import type { Block, Paper, SinglePage } from '../../geometry/index.ts'
import { printClient } from './clients.ts'
import type { PrintProgress } from './print.worker.ts'

export interface Printing {
  readonly bytes: Promise<Uint8Array<ArrayBuffer> | null>
  /** Ends the work at once. */
  readonly cancel: () => void
}

export function startPrinting(block: Block, paper: Paper, only: SinglePage | null, onProgress: (done: number, of: number) => void): Printing {
  const client = printClient()
  client.onProgress = (progress) => onProgress(...(progress as PrintProgress))
  const bytes = client.request('print', block, paper, only).then((reply) => {
    client.close()
    if (reply.type === 'failed') throw new Error(reply.reason)
    return reply.type === 'answer' ? reply.value : null
  })
  return { bytes, cancel: client.close }
}
