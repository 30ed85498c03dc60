/** The header of the page: the block's name, the library, files, undo and redo, whether everything is saved, and help. On a phone, one row and a menu. */
import { lazy, type ReactNode, useState } from 'react'
import { createPortal } from 'react-dom'
import { isQuilt } from '../document/document.ts'
import { saveFile } from '../keeping/download.ts'
import { openDocument, redo, renameDocument, undo, useStore } from '../document/store.ts'
import { t } from '../words/words.ts'
import { ActionButton } from '../controls/ActionButton.tsx'
import { OpenFileButton } from '../library/OpenFileButton.tsx'
import { Display, DisplayFields } from './Display.tsx'
import { LazyPanel } from '../controls/LazyPanel.tsx'
import { Popover } from '../controls/Popover.tsx'
import { PHONE, useMedia } from '../controls/useMedia.ts'

/** What opens over the page. */
const DIALOGS = {
  library: lazy(async () => ({ default: (await import('../library/BlockLibrary.tsx')).BlockLibrary })),
  help: lazy(async () => ({ default: (await import('./help/HelpDialog.tsx')).HelpDialog })),
} as const

export function Header() {
  const doc = useStore((state) => openDocument(state).block)
  const past = useStore((state) => openDocument(state).past.length)
  const future = useStore((state) => openDocument(state).future.length)
  const phone = useMedia(PHONE)
  const [dialog, setDialog] = useState<keyof typeof DIALOGS | null>(null)
  const files = (
    <>
      <button type="button" aria-haspopup="dialog" onClick={() => setDialog('library')}>
        {t('My blocks')}
      </button>
      <OpenFileButton />
      <button type="button" onClick={() => saveFile(doc)}>
        {t('Save file')}
      </button>
    </>
  )
  const help = (
    <button type="button" aria-haspopup="dialog" onClick={() => setDialog('help')}>
      {t('Help')}
    </button>
  )
  return (
    <header data-part="head">
      <h1>Nestwright</h1>
      <label className="name">
        <span>{isQuilt(doc) ? t('Quilt') : t('Block')}</span>
        <input value={doc.name} maxLength={200} onChange={(event) => renameDocument(event.target.value)} />
      </label>
      <div className="buttons">
        {!phone && files}
        <ActionButton disabled={past === 0} onClick={undo}>
          {t('Undo')}
        </ActionButton>
        <ActionButton disabled={future === 0} onClick={redo}>
          {t('Redo')}
        </ActionButton>
      </div>
      <div className="header-end">
        <SaveState />
        {phone ? (
          <Menu>
            {files}
            {help}
          </Menu>
        ) : (
          <>
            {help}
            <Display />
          </>
        )}
      </div>
      {dialog !== null && <Dialog name={dialog} close={() => setDialog(null)} />}
    </header>
  )
}

function Menu({ children }: { readonly children: ReactNode }) {
  return (
    <Popover name={t('Menu')} className="display-settings">
      <div className="popover-content menu">
        {children}
        <DisplayFields />
      </div>
    </Popover>
  )
}

function Dialog({ name, close }: { readonly name: keyof typeof DIALOGS; readonly close: () => void }) {
  const Content = DIALOGS[name]
  return createPortal(
    <LazyPanel>
      <Content close={close} />
    </LazyPanel>,
    document.body,
  )
}

function SaveState() {
  const saved = useStore((state) => state.saved)
  const elsewhere = useStore(({ currentBlock }) => currentBlock.readOnly && currentBlock.trouble === null)
  const words = { failed: t('Not saved in this browser'), saving: t('Saving…'), saved: t('Saved in this browser') }
  // Not announced: every edit is saved, and hearing that each time would drown out what the edit did. If saving fails, the line below the header is announced.
  return <span className="save-state">{elsewhere ? t('Open in another tab') : words[saved]}</span>
}
