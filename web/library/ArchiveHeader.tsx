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
      <p className="hint">{t('Archived blocks are kept for {n} days. Click one to restore it.', { n: ARCHIVE_DAYS })}</p>
      <div className="buttons">
        <button className="danger" type="button" onClick={deleteAll}>
          {sure ? tn(cards.length, 'Yes, delete it', 'Yes, delete {n} blocks') : t('Delete all')}
        </button>
        {sure && (
          <button type="button" onClick={() => setSure(false)}>
            {t('Cancel')}
          </button>
        )}
      </div>
    </div>
  )
}
