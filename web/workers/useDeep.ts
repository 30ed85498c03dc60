/**
 * The answer to a wish that is worked out beside the page.
 *
 * In      who is asked, and the wish; null for none. What stands in it must be the same values from one look to the next.
 * Out     its answer once it is there; null until then, and when the wish is another.
 */
import { useEffect, useState } from 'react'
import type { asker } from './deepClient.ts'
import type { DeepAnswer, DeepWish } from './deepMessages.ts'

export function useDeep(ask: ReturnType<typeof asker>, wish: DeepWish | null): DeepAnswer | null {
  const [told, setTold] = useState<{ readonly wished: readonly unknown[]; readonly answer: DeepAnswer } | null>(null)
  const wished = wish === null ? [] : Object.values(wish)
  const known = told !== null && same(told.wished, wished)
  // biome-ignore lint/correctness/useExhaustiveDependencies: a wish is what stands in it
  useEffect(() => {
    if (wish === null) return
    let waiting = true
    ask(wish, (answer) => {
      if (waiting) setTold({ wished, answer })
    })
    return () => {
      waiting = false
    }
  }, [ask, wished.length, ...wished])
  return wish !== null && known ? told.answer : null
}

const same = (one: readonly unknown[], other: readonly unknown[]): boolean =>
  one.length === other.length && one.every((value, place) => Object.is(value, other[place]))
