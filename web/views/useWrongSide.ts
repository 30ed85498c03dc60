/** The wrong side of the block by sheets of cloth, worked out beside the page while anyone looks at it. */
import type { Block, IronedSheet } from '../../geometry/index.ts'
import { deepClient } from '../workers/clients.ts'
import { useWorker } from '../workers/useWorker.ts'

export function useSheets(block: Block, looking: boolean): readonly IronedSheet[] | null {
  const reply = useWorker(deepClient, 'wrongSide', looking ? [block] : null)
  return reply?.type === 'answer' ? reply.value : null
}
