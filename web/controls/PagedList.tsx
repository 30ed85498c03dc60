/** A long list, a part at a time. */
import { type ReactNode, useState } from 'react'
import { t } from '../words/words.ts'

/** Shown at once; more on asking. */
const AT_ONCE = 40

/** The first of a list, and more when asked; all up to one that is sought. */
export function PagedList<T>({ all, upTo, each }: { readonly all: readonly T[]; readonly upTo: number; readonly each: (one: T) => ReactNode }) {
  const [most, setMost] = useState(AT_ONCE)
  const shown = Math.max(most, upTo + 1)
  return (
    <>
      {all.slice(0, shown).map(each)}
      {shown < all.length && (
        <li>
          <button type="button" onClick={() => setMost(shown + AT_ONCE)}>
            {t('Show {more} more of {left}', { more: Math.min(AT_ONCE, all.length - shown), left: all.length - shown })}
          </button>
        </li>
      )}
    </>
  )
}
