/**
 * Starts printing in a worker; it can be awaited and cancelled.
 *
 * In      the block, what to print of it, and a callback for progress.
 * Out     the bytes of a PDF, or null if it was cancelled; errors are thrown. The worker ends when the job is done.
 */
import type { Block, Quilt } from '../../geometry/index.ts'
import { printClient } from './clients.ts'
import type { PrintChoice, PrintProgress, QuiltPrintChoice } from './print.worker.ts'

export interface Printing {
  readonly bytes: Promise<Uint8Array<ArrayBuffer> | null>
  /** Ends the work at once. */
  readonly cancel: () => void
}

type OnProgress = (done: number, of: number) => void

export const startPrinting = (block: Block, choice: PrintChoice, onProgress: OnProgress): Printing =>
  printing((client) => client.request('print', block, choice), onProgress)

export const startPrintingQuilt = (quilt: Quilt, choice: QuiltPrintChoice, onProgress: OnProgress): Printing =>
  printing((client) => client.request('printQuilt', quilt, choice), onProgress)

type PrintClient = ReturnType<typeof printClient>

function printing(request: (client: PrintClient) => ReturnType<PrintClient['request']>, onProgress: OnProgress): Printing {
  const client = printClient()
  client.onProgress = (progress) => onProgress(...(progress as PrintProgress))
  const bytes = request(client).then((reply) => {
    client.close()
    if (reply.type === 'failed') throw new Error(reply.reason)
    return reply.type === 'answer' ? reply.value : null
  })
  return { bytes, cancel: client.close }
}
