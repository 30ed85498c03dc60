/** The wrong side of the block, piece of fabric by piece, computed in a worker while it is shown. */
import type { Block, IronedSheet } from '../../geometry/index.ts'
import { deepClient } from '../workers/clients.ts'
import { useWorker } from '../workers/useWorker.ts'

export function useWrongSide(block: Block, shown: boolean): readonly IronedSheet[] | null {
  const reply = useWorker(deepClient, 'wrongSide', shown ? [block] : null)
  return reply?.type === 'answer' ? reply.value : null
}
