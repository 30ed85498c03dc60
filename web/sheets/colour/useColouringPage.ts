/**
 * A page of colourings, found by a worker.
 *
 * In      the block, what may change, and the number of the page's first colouring, from 0.
 * Out     the last page that arrived, or why there is none; null for both until the first answer.
 */
import { useEffect, useState } from 'react'
import type { Block, ColouringPage, ColouringRequest } from '../../../geometry/index.ts'
import { patchKey } from '../../drawing/ColouringPicture.tsx'
import { colourClient } from '../../workers/clients.ts'
import { useClient } from '../../workers/useWorker.ts'
import { PAGE_SIZE } from './ColouringCards.tsx'

export function useColouringPage(
  block: Block,
  request: ColouringRequest,
  from: number,
): { readonly page: ColouringPage | null; readonly trouble: string | null } {
  const [state, setState] = useState<{ readonly page: ColouringPage | null; readonly trouble: string | null }>({ page: null, trouble: null })
  const client = useClient(colourClient)
  useEffect(() => {
    let current = true
    void client.request('page', block, request, from, PAGE_SIZE).then((reply) => {
      if (!current) return
      if (reply.type === 'answer') setState({ page: reply.value, trouble: null })
      else if (reply.type === 'failed') setState({ page: null, trouble: reply.reason })
    })
    return () => {
      current = false
    }
  }, [block, request, from, client])
  return state
}

/** Whether only fabrics of the patches that may change have changed: then the page is still right. */
export function sameButFabricsOf({ slots }: ColouringPage, base: Block, block: Block): boolean {
  const changeable = new Set(slots.map(({ unit, name }) => patchKey(unit, name)))
  const withoutThem = (one: Block): string =>
    JSON.stringify({
      ...one,
      name: '',
      units: one.units.map((unit) => ({
        ...unit,
        fabrics: Object.fromEntries(
          Object.entries(unit.fabrics).map(([name, fabric]) => [name, changeable.has(patchKey(unit.id, name)) ? '' : fabric]),
        ),
      })),
    })
  return base.units.length === block.units.length && withoutThem(base) === withoutThem(block)
}
