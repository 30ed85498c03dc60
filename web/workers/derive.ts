/**
 * Computes in workers what can come a moment after an edit: the block's layers of fabric, and the findings of a large block.
 *
 * In      every history that the store shows from now on.
 * Out     the layers and findings in the store, once they are there. Results for an older state of the block are dropped.
 */
import { type Block, hasLayers } from '../../geometry/index.ts'
import { isLarge } from '../document/blockSize.ts'
import { noFindings } from '../document/findingsCache.ts'
import { getState, setFindings, setLayers, subscribe } from '../document/store.ts'
import { deepClient, findingsWorker } from './clients.ts'

const layersClient = deepClient()
const findingsClient = findingsWorker()

export function startDeriving(): void {
  derive(getState().history.block)
  subscribe(({ history }, before) => {
    if (history !== before.history) derive(history.block)
  })
}

function derive(block: Block): void {
  if (isLarge(block)) void deriveFindings(block)
  if (hasLayers(block)) void deriveLayers(block)
}

async function deriveFindings(block: Block): Promise<void> {
  const reply = await findingsClient.request('findings', block)
  if (reply.type === 'answer') setFindings(block, { report: reply.value, trouble: null })
  if (reply.type === 'failed') setFindings(block, noFindings(reply.reason))
}

async function deriveLayers(block: Block): Promise<void> {
  const reply = await layersClient.request('layers', block)
  if (reply.type === 'answer') setLayers(block, reply.value)
}
