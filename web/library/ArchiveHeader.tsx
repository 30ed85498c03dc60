/** Above the archived blocks: how long they are kept, and a button to delete them all, which asks for confirmation. */
import { useState } from 'react'
import { ARCHIVE_DAYS } from '../keeping/archive.ts'
import type { Card } from '../keeping/schema.ts'
import { deleteBlocks, tryOrNotify } from '../keeping/blockActions.ts'
import { t, tn } from '../words/words.ts'

export function ArchiveHeader({ cards }: { readonly cards: readonly Card[] }) {
  const [sure, setSure] = useState(false)
  if (cards.length === 0) return null
  const deleteAll = (): void => {
    if (sure) void tryOrNotify(() => deleteBlocks(cards.map(({ id }) => id)))
    setSure(!sure)
  }
  return (
    <div className="start-row">
      <p className="hint">{t('What is put aside stays here for {n} days; choose one to bring it back.', { n: ARCHIVE_DAYS })}</p>
      <div className="buttons">
        <button type="button" onClick={deleteAll}>
          {sure ? tn(cards.length, 'Yes, take it away for good', 'Yes, take {n} blocks away for good') : t('Take all of these away for good')}
        </button>
        {sure && (
          <button type="button" onClick={() => setSure(false)}>
            {t('No, leave them')}
          </button>
        )}
      </div>
    </div>
  )
}
