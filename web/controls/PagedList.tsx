/** A long list, shown a page at a time. */
import { type ReactNode, useState } from 'react'
import { t } from '../words/words.ts'

/** Items on a page. */
const PAGE = 40

interface Props<T> {
  readonly items: readonly T[]
  /** The index of an item that must be shown, or -1 for none. */
  readonly upTo: number
  readonly render: (item: T, index: number) => ReactNode
}

/** The first items and a button for more. An item that someone jumps to is shown along with everything before it. */
export function PagedList<T>({ items, upTo, render }: Props<T>) {
  const [most, setMost] = useState(PAGE)
  const shown = Math.max(most, upTo + 1)
  return (
    <>
      {items.slice(0, shown).map((item, index) => render(item, index))}
      {shown < items.length && (
        <li>
          <button type="button" onClick={() => setMost(shown + PAGE)}>
            {t('Show {more} more of {left}', { more: Math.min(PAGE, items.length - shown), left: items.length - shown })}
          </button>
        </li>
      )}
    </>
  )
}
