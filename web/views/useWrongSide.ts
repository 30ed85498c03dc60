/** The wrong side of the block by sheets of cloth, worked out beside the page while anyone looks at it. */
import { useEffect, useMemo, useState } from 'react'
import type { Block, IronedSheet } from '../../geometry/index.ts'
import { asker } from '../workers/deepClient.ts'

interface Known {
  readonly block: Block
  readonly sheets: readonly IronedSheet[] | null
}

export function useSheets(block: Block, looking: boolean): readonly IronedSheet[] | null {
  const [known, setKnown] = useState<Known | null>(null)
  const ask = useMemo(asker, [])
  useEffect(() => {
    if (!looking || known?.block === block) return
    ask({ sort: 'wrong', block }, (answer) => {
      if (answer.sort === 'wrong') setKnown({ block, sheets: answer.value })
    })
  }, [looking, block, known, ask])
  return looking && known?.block === block ? known.sheets : null
}
