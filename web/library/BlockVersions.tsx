/** The versions of a block: keep one by name, go back to one, begin a new block from one, delete a named one. */
import { type FormEvent, useEffect, useState } from 'react'
import { setView } from '../document/store.ts'
import { BlockPicture } from '../drawing/BlockPicture.tsx'
import type { Card, Version, VersionWhy } from '../keeping/schema.ts'
import { blockOfVersion, deleteVersion, goBackTo, keepNamedVersion, tryOrNotify, versionAsBlock, versionsFor } from '../keeping/blockActions.ts'
import { t } from '../words/words.ts'
import { dateAndTime } from './timeText.ts'

export function BlockVersions({ card, onOpened }: { readonly card: Card; readonly onOpened: () => void }) {
  const [versions, setVersions] = useState<readonly Version[]>([])
  const [name, setName] = useState('')
  const [reads, setReads] = useState(0)
  // biome-ignore lint/correctness/useExhaustiveDependencies: a changed block may have a new version, and so may one just kept or deleted
  useEffect(() => void versionsFor(card.id).then(setVersions), [card.id, card.changed, reads])
  const keep = (event: FormEvent): void => {
    event.preventDefault()
    if (name.trim() === '') return
    void tryOrNotify(() => keepNamedVersion(card.id, name.trim())).then((kept) => {
      if (!kept) return
      setName('')
      setReads(reads + 1)
      setView({ notice: t('Version saved as “{name}”.', { name: name.trim() }) })
    })
  }
  return (
    <>
      <h3>{t('Versions')}</h3>
      <form className="keep-version" onSubmit={keep}>
        <label>
          {t('Save this version as')}
          <input value={name} maxLength={100} onChange={(event) => setName(event.target.value)} />
        </label>
        <button type="submit" aria-disabled={name.trim() === ''}>
          {t('Save')}
        </button>
      </form>
      {versions.length === 0 && <p className="hint">{t('Versions are saved as you work. Named ones stay until you delete them.')}</p>}
      <ul className="versions">
        {versions.map((version) => (
          <VersionItem key={version.id} version={version} onOpened={onOpened} onDeleted={() => setReads(reads + 1)} />
        ))}
      </ul>
    </>
  )
}

/** What an unnamed version is called: why it was kept. */
const REASONS: Readonly<Record<VersionWhy, () => string>> = {
  asked: () => t('Saved by you'),
  rest: () => t('Saved while you worked'),
  leaving: () => t('Saved when you left'),
  'going back': () => t('Saved before going back'),
  brought: () => t('Came with the block'),
}

function VersionItem({ version, onOpened, onDeleted }: { readonly version: Version; readonly onOpened: () => void; readonly onDeleted: () => void }) {
  const { id, made, name, why } = version
  const label = name ?? REASONS[why]()
  const labelWithTime = `${label}, ${dateAndTime(made)}`
  const afterDelete = (deleted: boolean): void => {
    if (deleted) setView({ notice: t('{version} is deleted.', { version: label }) })
    onDeleted()
  }
  return (
    <li>
      <BlockPicture load={() => blockOfVersion(version)} stamp={id} side={56} />
      <div>
        <p className="version-name">{label}</p>
        <p className="card-time">{dateAndTime(made)}</p>
        <div className="buttons">
          <button
            type="button"
            aria-label={t('Go back to {version}', { version: labelWithTime })}
            onClick={() => void tryOrNotify(() => goBackTo(version)).then((went) => went && onOpened())}
          >
            {t('Go back')}
          </button>
          <button
            type="button"
            aria-label={t('Start a new block from {version}', { version: labelWithTime })}
            onClick={() => void versionAsBlock(version).then((begun) => begun && onOpened())}
          >
            {t('As a new block')}
          </button>
          {name !== null && <DeleteButton which={labelWithTime} onDelete={() => void tryOrNotify(() => deleteVersion(id)).then(afterDelete)} />}
        </div>
      </div>
    </li>
  )
}

/** A deleted version cannot be restored, so the maker has to confirm. */
function DeleteButton({ which, onDelete }: { readonly which: string; readonly onDelete: () => void }) {
  const [sure, setSure] = useState(false)
  if (!sure)
    return (
      <button className="danger" type="button" aria-label={t('Delete {version}', { version: which })} onClick={() => setSure(true)}>
        {t('Delete')}
      </button>
    )
  return (
    <button type="button" className="danger" onClick={onDelete} onBlur={() => setSure(false)}>
      {t('Yes, delete it')}
    </button>
  )
}
