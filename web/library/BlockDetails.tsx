/** One of the maker's blocks: its name, what can be done with it, and its versions to go back to. */
import { type FormEvent, useEffect, useRef, useState } from 'react'
import { setName } from '../../geometry/index.ts'
import { blockOf, openBlock } from '../keeping/openBlock.ts'
import {
  blockOfVersion,
  copyBlock,
  forgetVersion,
  goBackTo,
  keepThisVersion,
  renameBlock,
  tried,
  versionAsBlock,
  versionsFor,
} from '../keeping/shelf.ts'
import { saveFile } from '../keeping/download.ts'
import type { Card, Version, VersionWhy } from '../keeping/schema.ts'
import { linkTo } from '../keeping/shareLink.ts'
import { edit, setView } from '../document/store.ts'
import { t } from '../words/words.ts'
import { BlockPicture } from '../drawing/BlockPicture.tsx'
import { EntryField } from '../controls/EntryField.tsx'
import { dateAndTime } from './timeText.ts'

interface Props {
  readonly card: Card
  /** It is the one on the board. */
  readonly open: boolean
  readonly back: () => void
  readonly putAway: () => void
  readonly done: () => void
}

export function BlockDetails({ card, open, back, putAway, done }: Props) {
  const { id, name } = card
  const here = useRef<HTMLElement>(null)
  // It stands after all pictures: the focus need not walk there.
  useEffect(() => here.current?.focus(), [])
  return (
    <section ref={here} tabIndex={-1} className="aboutblock" aria-label={t('About {name}', { name })}>
      <button type="button" className="plain backto" onClick={back}>
        {t('Back to all blocks')}
      </button>
      <BlockPicture load={() => blockOf(id)} stamp={`${id} ${card.changed}`} side={180} />
      <EntryField label={t('Name')} value={name} validate={noName} onCommit={(text) => void tried(() => rename(card, open, text))} />
      <p className="hint">{t('Begun {made}, changed {changed}.', { made: dateAndTime(card.made), changed: dateAndTime(card.changed) })}</p>
      <div className="buttons">
        {!open && (
          <button type="button" onClick={() => void openBlock(id).then((opened) => opened && done())}>
            {t('Open')}
          </button>
        )}
        <button type="button" onClick={() => void tried(() => copyBlock(id))}>
          {t('Make a copy')}
        </button>
        <button type="button" onClick={() => void blockOf(id).then((block) => block !== null && saveFile(block))}>
          {t('Save a file')}
        </button>
        <CopyLink id={id} />
        <button type="button" onClick={putAway}>
          {t('Put aside')}
        </button>
      </div>
      <Versions card={card} done={done} />
    </section>
  )
}

const noName = (text: string): string | null => (text.trim() === '' ? t('Give the block a name.') : null)

async function rename({ id }: Card, open: boolean, name: string): Promise<void> {
  if (open) edit(setName(name))
  else if ((await renameBlock(id, name)) === 'in another tab') setView({ notice: t('This block is open in another tab; rename it there.') })
}

function CopyLink({ id }: { readonly id: string }) {
  const [link, setLink] = useState<string | null>(null)
  const copy = async (): Promise<void> => {
    const block = await blockOf(id)
    if (block === null) return
    const made = await linkTo(block, window.location.href)
    if (!made.ok) {
      setView({
        notice:
          made.why === 'too long' ? t('This block is too large for a link; save it as a file.') : t('This browser cannot make links; save a file.'),
      })
      return
    }
    const copied = await navigator.clipboard.writeText(made.link).then(
      () => true,
      () => false,
    )
    setLink(copied ? null : made.link)
    setView({ notice: told(copied, made.photographs) })
  }
  return (
    <>
      <button type="button" onClick={() => void copy()}>
        {t('Copy a link')}
      </button>
      {link !== null && (
        <label className="link">
          {t('Link')}
          <input readOnly value={link} onFocus={(event) => event.target.select()} />
        </label>
      )}
    </>
  )
}

const told = (copied: boolean, photographs: boolean): string =>
  [
    copied ? t('The link is copied; it holds the whole block.') : t('The link stands beside the button; it holds the whole block.'),
    ...(photographs ? [t('Photographs are left out.')] : []),
  ].join(' ')

function Versions({ card, done }: { readonly card: Card; readonly done: () => void }) {
  const [versions, setVersions] = useState<readonly Version[]>([])
  const [name, setName] = useState('')
  const [turn, again] = useState(0)
  // biome-ignore lint/correctness/useExhaustiveDependencies: a block that was changed may have another version
  useEffect(() => void versionsFor(card.id).then(setVersions), [card.id, card.changed, turn])
  const keep = (event: FormEvent): void => {
    event.preventDefault()
    if (name.trim() === '') return
    void tried(() => keepThisVersion(card.id, name.trim())).then((kept) => {
      if (!kept) return
      setName('')
      again(turn + 1)
      setView({ notice: t('This version is kept as “{name}”.', { name: name.trim() }) })
    })
  }
  return (
    <>
      <h3>{t('Versions')}</h3>
      <form className="keepversion" onSubmit={keep}>
        <label>
          {t('Keep this version as')}
          <input value={name} maxLength={100} onChange={(event) => setName(event.target.value)} />
        </label>
        <button type="submit" aria-disabled={name.trim() === ''}>
          {t('Keep')}
        </button>
      </form>
      {versions.length === 0 && <p className="hint">{t('Versions are kept by themselves while you work; named ones stay.')}</p>}
      <ul className="versions">
        {versions.map((version) => (
          <VersionOf key={version.id} version={version} done={done} gone={() => again(turn + 1)} />
        ))}
      </ul>
    </>
  )
}

const WHY: Readonly<Record<VersionWhy, () => string>> = {
  asked: () => t('Kept by you'),
  rest: () => t('While you worked'),
  leaving: () => t('As you left it'),
  'going back': () => t('Before going back'),
  brought: () => t('Brought with the block'),
}

function VersionOf({ version, done, gone }: { readonly version: Version; readonly done: () => void; readonly gone: () => void }) {
  const { id, made, name, why } = version
  const called = name ?? WHY[why]()
  const which = `${called}, ${dateAndTime(made)}`
  const takenAway = (done: boolean): void => {
    if (done) setView({ notice: t('{version} is taken away.', { version: called }) })
    gone()
  }
  return (
    <li>
      <BlockPicture load={() => blockOfVersion(version)} stamp={id} side={56} />
      <div>
        <p className="versionname">{called}</p>
        <p className="cardtime">{dateAndTime(made)}</p>
        <div className="buttons">
          <button
            type="button"
            aria-label={t('Go back to {version}', { version: which })}
            onClick={() => void tried(() => goBackTo(version)).then((went) => went && done())}
          >
            {t('Go back')}
          </button>
          <button
            type="button"
            aria-label={t('Begin a block from {version}', { version: which })}
            onClick={() => void versionAsBlock(version).then((begun) => begun && done())}
          >
            {t('As a new block')}
          </button>
          {name !== null && <TakeAway which={which} act={() => void tried(() => forgetVersion(id)).then(takenAway)} />}
        </div>
      </div>
    </li>
  )
}

/** A named version goes for good, so it is asked twice. */
function TakeAway({ which, act }: { readonly which: string; readonly act: () => void }) {
  const [sure, setSure] = useState(false)
  if (!sure)
    return (
      <button type="button" aria-label={t('Take away {version}', { version: which })} onClick={() => setSure(true)}>
        {t('Take away')}
      </button>
    )
  return (
    <button type="button" onClick={act} onBlur={() => setSure(false)}>
      {t('Yes, take it away for good')}
    </button>
  )
}
