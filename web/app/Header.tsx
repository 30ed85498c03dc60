/** The head of the page: the block's name, the maker's blocks, files, undo, and whether all is kept. */
import { lazy, useState } from 'react'
import { createPortal } from 'react-dom'
import { setName } from '../../geometry/index.ts'
import { saveFile } from '../keeping/download.ts'
import { edit, redo, undo, useStore } from '../document/store.ts'
import { t } from '../words/words.ts'
import { Act } from '../controls/ActionButton.tsx'
import { OpenFile } from '../library/OpenFile.tsx'
import { ThisScreen } from './Display.tsx'
import { Later } from '../controls/LazyPanel.tsx'

const Blocks = lazy(async () => ({ default: (await import('../library/Blocks.tsx')).Blocks }))

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
        <OwnBlocks />
        <OpenFile />
        <button type="button" onClick={() => saveFile(block)}>
          {t('Save a file')}
        </button>
        <Act off={past === 0} act={undo}>
          {t('Undo')}
        </Act>
        <Act off={future === 0} act={redo}>
          {t('Do again')}
        </Act>
      </div>
      <div className="ending">
        <Kept />
        <ThisScreen />
      </div>
    </header>
  )
}

function OwnBlocks() {
  const [open, setOpen] = useState(false)
  return (
    <>
      <button type="button" aria-haspopup="dialog" onClick={() => setOpen(true)}>
        {t('Blocks')}
      </button>
      {open &&
        createPortal(
          <Later>
            <Blocks close={() => setOpen(false)} />
          </Later>,
          document.body,
        )}
    </>
  )
}

function Kept() {
  const saved = useStore((state) => state.saved)
  const elsewhere = useStore(({ desk }) => desk.elsewhere && desk.trouble === null)
  const words = { failed: t('Not kept in this browser'), saving: t('Keeping…'), saved: t('Kept in this browser') }
  // Each edit is kept: to say so each time would drown what it did. Where it is not, the line under the head says so aloud.
  return <span className="saved">{elsewhere ? t('Kept by another tab') : words[saved]}</span>
}
