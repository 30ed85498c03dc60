/**
 * The whole report, made by a worker: what the booklet and its steps are written from, on the screen as on paper.
 *
 * In      the block. Its own booklet words do not change the report, so editing them does not ask for another.
 * Out     the last report and the block it is about, until the next one arrives; or why there is none.
 */
import { useEffect, useRef, useState } from 'react'
import type { Block, Report } from '../../geometry/index.ts'
import { deepClient } from '../workers/clients.ts'
import { useClient } from '../workers/useWorker.ts'

interface WholeReport {
  readonly result: { readonly block: Block; readonly report: Report } | null
  readonly trouble: string | null
}

export function useWholeReport(block: Block): WholeReport {
  const [result, setResult] = useState<WholeReport['result']>(null)
  const [trouble, setTrouble] = useState<string | null>(null)
  const client = useClient(deepClient)
  const lastDifferent = useRef(block)
  if (!sameButBooklet(lastDifferent.current, block)) lastDifferent.current = block
  const reported = lastDifferent.current
  useEffect(() => {
    let current = true
    void client.request('report', reported).then((reply) => {
      if (!current || reply.type === 'dropped') return
      setTrouble(reply.type === 'failed' ? reply.reason : null)
      if (reply.type === 'answer') setResult({ block: reported, report: reply.value })
    })
    return () => {
      current = false
    }
  }, [reported, client])
  return { result, trouble }
}

/** Whether two states of a block are alike but for the words of the booklet. */
export function sameButBooklet(one: Block, other: Block): boolean {
  const names = new Set([...Object.keys(one), ...Object.keys(other)]) as Set<keyof Block>
  names.delete('booklet')
  return [...names].every((name) => one[name] === other[name])
}
