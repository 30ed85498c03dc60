/**
 * The findings of a large block, beside the page: both hold the last block and the last findings, and only what differs goes between them.
 *
 * In      what differs from the block before.
 * Out     what differs from the findings before; or that it could not be worked out, and then the next block is told as if it were the first.
 */
import { type Block, type Findings, following } from '../../geometry/index.ts'
import { type Sent, sent, received } from './sentDifference.ts'

export type TellerAnswer = { readonly changes: Sent } | { readonly trouble: string }

let block: object = {}
let findings: Partial<Findings> = {}
const follow = following()

self.onmessage = ({ data }: MessageEvent<Sent>) => {
  self.postMessage(answer(data))
}

function answer(changes: Sent): TellerAnswer {
  try {
    block = received(block, changes)
    const before = findings
    findings = follow(block as Block)
    return { changes: sent(before, findings) }
  } catch (error) {
    return { trouble: error instanceof Error ? error.message : String(error) }
  }
}
