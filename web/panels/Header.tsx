/** The head of the page: the block's name, what one begins from, files, undo, and whether all is kept. */
import { type ChangeEvent, useRef } from 'react'
import { setName } from '../../geometry/index.ts'
import { beginBlock, STARTERS } from '../state/blocks.ts'
import { saveFile } from '../state/download.ts'
import { openFile } from '../state/save.ts'
import { edit, redo, undo, useStore } from '../state/store.ts'
import { t } from '../words/words.ts'
import { ThisScreen } from './ThisScreen.tsx'

export function Header() {
  const block = useStore(({ history }) => history.block)
  const past = useStore(({ history }) => history.past.length)
  const future = useStore(({ history }) => history.future.length)
  return (
    <header>
      <h1>Nestwright</h1>
      <label className="name">
        {t('Block')}
        <input value={block.name} maxLength={200} onChange={(event) => edit(setName(event.target.value))} />
      </label>
      <label className="start">
        {t('Begin from')}
        <select value="" onChange={(event) => void beginBlock(STARTERS[event.target.value as keyof typeof STARTERS])}>
          <option value="">…</option>
          <option value="star">{t('a star')}</option>
          <option value="lantern">{t('a lantern')}</option>
          <option value="empty">{t('an empty grid')}</option>
        </select>
      </label>
      <div className="buttons">
        <Files />
        <button type="button" disabled={past === 0} onClick={undo}>
          {t('Undo')}
        </button>
        <button type="button" disabled={future === 0} onClick={redo}>
          {t('Do again')}
        </button>
      </div>
      <div className="ending">
        <Kept />
        <ThisScreen />
      </div>
    </header>
  )
}

function Files() {
  const block = useStore(({ history }) => history.block)
  const file = useRef<HTMLInputElement>(null)
  const open = (event: ChangeEvent<HTMLInputElement>): void => {
    const [chosen] = event.target.files ?? []
    if (chosen !== undefined) void openFile(chosen)
    event.target.value = ''
  }
  return (
    <>
      <button type="button" onClick={() => file.current?.click()}>
        {t('Open a file')}
      </button>
      <input ref={file} type="file" accept=".json,application/json" hidden aria-label={t('Block file')} onChange={open} />
      <button type="button" onClick={() => saveFile(block)}>
        {t('Save a file')}
      </button>
    </>
  )
}

function Kept() {
  const saved = useStore((state) => state.saved)
  const words = { failed: t('Not kept in this browser'), saving: t('Keeping…'), saved: t('Kept in this browser') }
  return (
    <span className="saved" role="status">
      {words[saved]}
    </span>
  )
}
