/**
 * What follows from the block on the board a little later, worked out beside the page: its layers of cloth, and the findings of a large one.
 *
 * In      each history that the store shows, from the call on.
 * Out     the store has the layers and findings once they are there; those of a block that is past already are passed over.
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
