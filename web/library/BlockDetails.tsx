/** One of the maker's blocks: its name, what can be done with it, and its versions. */
import { useEffect, useRef } from 'react'
import { EntryField } from '../controls/EntryField.tsx'
import { renameDocument, setView } from '../document/store.ts'
import { BlockPicture } from '../drawing/BlockPicture.tsx'
import { saveFile } from '../keeping/download.ts'
import { documentOf, openBlock } from '../keeping/openBlock.ts'
import type { Card } from '../keeping/schema.ts'
import { copyBlock, renameBlock, tryOrNotify } from '../keeping/blockActions.ts'
import { t } from '../words/words.ts'
import { BlockVersions } from './BlockVersions.tsx'
import { CopyLinkButton } from './CopyLinkButton.tsx'
import { dateAndTime } from './timeText.ts'

interface Props {
  readonly card: Card
  /** Whether this is the block on the board. */
  readonly open: boolean
  readonly onBack: () => void
  readonly onArchive: () => void
  /** Called when a block was opened on the board. */
  readonly onOpened: () => void
}

export function BlockDetails({ card, open, onBack, onArchive, onOpened }: Props) {
  const { id, name } = card
  const section = useRef<HTMLElement>(null)
  // In the document it comes after all the pictures, so the focus is moved to it.
  useEffect(() => section.current?.focus(), [])
  return (
    <section ref={section} tabIndex={-1} className="block-details" aria-label={t('About {name}', { name })}>
      <button type="button" className="plain back-to-list" onClick={onBack}>
        {t('Back to all blocks')}
      </button>
      <BlockPicture load={() => documentOf(id)} stamp={`${id} ${card.changed}`} side={180} />
      <EntryField label={t('Name')} value={name} validate={nameProblem} onCommit={(text) => void tryOrNotify(() => rename(card, open, text))} />
      <p className="hint">{t('Started {made}, changed {changed}.', { made: dateAndTime(card.made), changed: dateAndTime(card.changed) })}</p>
      <div className="buttons">
        {!open && (
          <button type="button" className="main" onClick={() => void openBlock(id).then((opened) => opened && onOpened())}>
            {t('Open')}
          </button>
        )}
        <button type="button" onClick={() => void tryOrNotify(() => copyBlock(id))}>
          {t('Make a copy')}
        </button>
        <button type="button" onClick={() => void documentOf(id).then((block) => block !== null && saveFile(block))}>
          {t('Save file')}
        </button>
        <CopyLinkButton id={id} />
        <button type="button" onClick={onArchive}>
          {t('Archive')}
        </button>
      </div>
      <BlockVersions card={card} onOpened={onOpened} />
    </section>
  )
}

const nameProblem = (text: string): string | null => (text.trim() === '' ? t('Give the block a name.') : null)

async function rename({ id }: Card, open: boolean, name: string): Promise<void> {
  if (open) renameDocument(name)
  else if ((await renameBlock(id, name)) === 'in another tab') setView({ notice: t('This block is open in another tab. Rename it there.') })
}
