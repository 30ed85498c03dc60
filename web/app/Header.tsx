/** The header of the page: the block's name, the library, files, undo and redo, and whether everything is saved. */
import { lazy, useState } from 'react'
import { createPortal } from 'react-dom'
import { setName } from '../../geometry/index.ts'
import { saveFile } from '../keeping/download.ts'
import { edit, redo, undo, useStore } from '../document/store.ts'
import { t } from '../words/words.ts'
import { ActionButton } from '../controls/ActionButton.tsx'
import { OpenFileButton } from '../library/OpenFileButton.tsx'
import { Display } from './Display.tsx'
import { LazyPanel } from '../controls/LazyPanel.tsx'

const BlockLibrary = lazy(async () => ({ default: (await import('../library/BlockLibrary.tsx')).BlockLibrary }))

export function Header() {
  const block = useStore(({ history }) => history.block)
  const past = useStore(({ history }) => history.past.length)
  const future = useStore(({ history }) => history.future.length)
  return (
    <header data-part="head">
      <h1>Nestwright</h1>
      <label className="name">
        <span>{t('Block')}</span>
        <input value={block.name} maxLength={200} onChange={(event) => edit(setName(event.target.value))} />
      </label>
      <div className="buttons">
        <LibraryButton />
        <OpenFileButton />
        <button type="button" onClick={() => saveFile(block)}>
          {t('Save file')}
        </button>
        <ActionButton disabled={past === 0} onClick={undo}>
          {t('Undo')}
        </ActionButton>
        <ActionButton disabled={future === 0} onClick={redo}>
          {t('Redo')}
        </ActionButton>
      </div>
      <div className="header-end">
        <SaveState />
        <Display />
      </div>
    </header>
  )
}

function LibraryButton() {
  const [open, setOpen] = useState(false)
  return (
    <>
      <button type="button" aria-haspopup="dialog" onClick={() => setOpen(true)}>
        {t('My blocks')}
      </button>
      {open &&
        createPortal(
          <LazyPanel>
            <BlockLibrary close={() => setOpen(false)} />
          </LazyPanel>,
          document.body,
        )}
    </>
  )
}

function SaveState() {
  const saved = useStore((state) => state.saved)
  const elsewhere = useStore(({ currentBlock }) => currentBlock.readOnly && currentBlock.trouble === null)
  const words = { failed: t('Not saved in this browser'), saving: t('Saving…'), saved: t('Saved in this browser') }
  // Not announced: every edit is saved, and hearing that each time would drown out what the edit did. If saving fails, the line below the header is announced.
  return <span className="save-state">{elsewhere ? t('Open in another tab') : words[saved]}</span>
}
