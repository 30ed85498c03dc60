/**
 * Asks beside the page for colourings, palettes and neighbours that blur.
 *
 * In      a wish.
 * Out     its answer. A newer wish of the same sort ends an older one that is still being worked out: that one is answered `ended`.
 */
import { useEffect, useState } from 'react'
import type { Block, Blur } from '../../geometry/index.ts'
import type { ColourAnswer, ColourWish } from './colour.worker.ts'

export type Answered = ColourAnswer | { readonly sort: 'ended' }

interface Asked {
  readonly worker: Worker
  /** Of what is being worked out. */
  end: ((answer: Answered) => void) | null
}

const asked = new Map<ColourWish['sort'], Asked>()
let wishes = 0

export function askColour(wish: ColourWish): Promise<Answered> {
  const one = free(wish.sort)
  const number = ++wishes
  return new Promise((resolve) => {
    one.end = (answer) => {
      one.end = null
      resolve(answer)
    }
    one.worker.onmessage = ({ data }: MessageEvent<{ readonly number: number; readonly answer: ColourAnswer }>) => {
      if (data.number === number) one.end?.(data.answer)
    }
    one.worker.onerror = (event) => {
      event.preventDefault()
      one.end?.({ sort: 'trouble', message: 'it could not be worked out beside the page' })
    }
    one.worker.postMessage({ number, wish })
  })
}

/** A worker that has nothing to do. */
function free(sort: ColourWish['sort']): Asked {
  const known = asked.get(sort)
  if (known !== undefined && known.end === null) return known
  known?.worker.terminate()
  known?.end?.({ sort: 'ended' })
  const fresh: Asked = { worker: new Worker(new URL('./colour.worker.ts', import.meta.url), { type: 'module' }), end: null }
  asked.set(sort, fresh)
  return fresh
}

/** Milliseconds of rest before neighbours are asked after. */
const REST = 150

/** One answer for all that ask about the same block. */
const found = new WeakMap<Block, Promise<Answered>>()

function blursOf(block: Block): Promise<Answered> {
  const known = found.get(block)
  if (known !== undefined) return known
  const answer = askColour({ sort: 'blurs', block })
  found.set(block, answer)
  void answer.then(({ sort }) => sort === 'ended' && found.delete(block))
  return answer
}

/** Neighbours that blur; null until they are known. */
export function useBlurs(block: Block): readonly Blur[] | null {
  const [blurs, setBlurs] = useState<readonly Blur[] | null>(null)
  useEffect(() => {
    let current = true
    const rest = setTimeout(async () => {
      const answer = await blursOf(block)
      if (current) setBlurs(answer.sort === 'blurs' ? answer.value : null)
    }, REST)
    return () => {
      current = false
      clearTimeout(rest)
    }
  }, [block])
  return blurs
}
