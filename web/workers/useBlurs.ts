/** Neighbours that blur into each other in greys, compared in a worker; null until they are known. The answer for a block is shared by all callers. */
import { useEffect, useState } from 'react'
import type { Block, Blur } from '../../geometry/index.ts'
import { blursClient } from './clients.ts'
import type { Reply } from './workerClient.ts'

const client = blursClient()
const asked = new WeakMap<Block, Promise<Reply<readonly Blur[]>>>()

function blursOf(block: Block): Promise<Reply<readonly Blur[]>> {
  const known = asked.get(block)
  if (known !== undefined) return known
  const reply = client.request('blurs', block)
  asked.set(block, reply)
  void reply.then(({ type }) => type === 'dropped' && asked.delete(block))
  return reply
}

export function useBlurs(block: Block): readonly Blur[] | null {
  const [blurs, setBlurs] = useState<readonly Blur[] | null>(null)
  useEffect(() => client.retain(), [])
  useEffect(() => {
    let current = true
    void blursOf(block).then((reply) => {
      if (current) setBlurs(reply.type === 'answer' ? reply.value : null)
    })
    return () => {
      current = false
    }
  }, [block])
  return blurs
}
