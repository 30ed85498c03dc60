/**
 * The maker's own blocks: pictures to choose from, and beside them all that can be done with one.
 *
 * In      the cards of the database.
 * Out     a dialog over the page; opening a block closes it.
 */
import './library.css'
import { type KeyboardEvent, useEffect, useRef, useState } from 'react'
import { ASIDE_DAYS, beginBlock, blockOf, canKeep, openBlock, STARTERS, useCards } from '../keeping/openBlock.ts'
import { bringBack, filedBlocks, forgetBlocks, putAside, tried } from '../keeping/shelf.ts'
import { writeBlocks } from '../keeping/blocksFile.ts'
import { download } from '../keeping/download.ts'
import type { Card } from '../keeping/schema.ts'
import { displayName } from '../document/blockNames.ts'
import { setView, useStore } from '../document/store.ts'
import { t, tn } from '../words/words.ts'
import { BlockDetails } from './BlockDetails.tsx'
import { BlockPicture } from '../drawing/BlockPicture.tsx'
import { OpenFileButton } from './OpenFileButton.tsx'
import { dayOrTime } from './timeText.ts'

interface Props {
  readonly close: () => void
}

export function BlockLibrary({ close }: Props) {
  const dialog = useRef<HTMLDialogElement>(null)
  const cards = useCards()
  const open = useStore(({ currentBlock }) => currentBlock.id)
  const [sought, seek] = useState('')
  const [aside, setAside] = useState(false)
  const [chosen, choose] = useState<string | null>(null)
  const [gone, setGone] = useState<string | null>(null)
  const [room, setRoom] = useState(AT_ONCE)
  // Its picture is there a moment later: then the focus goes to it.
  const [returned, setReturned] = useState<string | null>(null)
  const isBack = cards.some(({ id, aside: since }) => id === returned && since === null)
  useEffect(() => {
    if (isBack) document.getElementById(`more-${returned}`)?.focus()
  }, [isBack, returned])
  useEffect(() => {
    dialog.current?.showModal()
    // Where its picture was there before the dialog was shown, it could not take the focus by itself.
    dialog.current?.querySelector<HTMLElement>('[aria-current="true"]')?.focus()
    setView({ notice: '' })
  }, [])
  const set = cards.filter((card) => (card.aside !== null) === aside)
  const shown = set.filter((card) => found(card, sought)).sort((a, b) => (b.aside ?? b.changed) - (a.aside ?? a.changed))
  const about = set.find(({ id }) => id === chosen)
  const leave = (id: string): void => {
    choose(null)
    document.getElementById(`more-${id}`)?.focus()
  }
  const putAway = (id: string): void => {
    choose(null)
    void tried(() => putAside(id)).then((done) => done && setGone(id))
  }
  const comeBack = (): void => {
    setReturned(gone)
    setGone(null)
    setView({ notice: t('It is back.') })
  }
  const away = cards.filter((card) => card.aside !== null)
  return (
    <dialog ref={dialog} className="blocks" aria-labelledby="blocks-title" onClose={close}>
      <div className="blockshead">
        <h2 id="blocks-title">{t('Your blocks')}</h2>
        <input
          type="search"
          className="seek"
          aria-label={t('Find by name or fabric')}
          placeholder={t('Find by name or fabric')}
          value={sought}
          onChange={(event) => {
            seek(event.target.value)
            setRoom(AT_ONCE)
          }}
        />
        <div className="buttons">
          <button type="button" aria-pressed={!aside} onClick={() => setAside(false)}>
            {t('At hand ({n})', { n: cards.length - away.length })}
          </button>
          <button type="button" aria-pressed={aside} onClick={() => setAside(true)}>
            {t('Put aside ({n})', { n: away.length })}
          </button>
        </div>
        <button type="button" className="done" onClick={() => dialog.current?.close()}>
          {t('Close')}
        </button>
      </div>
      <div className={about === undefined ? 'blocksbody' : 'blocksbody with'}>
        <div className="shelf">
          {!canKeep() && <p className="hint nowhere">{t('This browser keeps no blocks here; save the block on the board as a file.')}</p>}
          {aside ? <AsideHead cards={away} /> : <Beginning done={() => dialog.current?.close()} count={cards.length - away.length} />}
          <p className="unseen" role="status">
            {tn(shown.length, 'One block is shown.', '{n} blocks are shown.')}
          </p>
          {shown.length === 0 && canKeep() && <p className="none">{nothing(sought, aside)}</p>}
          <ul className="cards" onKeyDown={walk}>
            {shown.slice(0, room).map((card) => (
              <CardOf
                key={card.id}
                card={card}
                open={card.id === open}
                chosen={card.id === chosen}
                onOpen={() => void openBlock(card.id).then((done) => done && dialog.current?.close())}
                onAbout={() => (card.id === chosen ? leave(card.id) : choose(card.id))}
              />
            ))}
          </ul>
          {room < shown.length && <More key={room} show={() => setRoom(room + AT_ONCE)} />}
        </div>
        {about !== undefined && !aside && (
          <BlockDetails
            key={about.id}
            card={about}
            open={about.id === open}
            back={() => leave(about.id)}
            putAway={() => putAway(about.id)}
            done={() => dialog.current?.close()}
          />
        )}
      </div>
      <Told gone={gone} back={() => comeBack()} />
    </dialog>
  )
}

/** Blocks that are put on the shelf in one go; the next ones come as their place comes in sight. */
const AT_ONCE = 120

function More({ show }: { readonly show: () => void }) {
  const end = useRef<HTMLDivElement>(null)
  const then = useRef(show)
  then.current = show
  useEffect(() => {
    const seen = new IntersectionObserver(([entry]) => entry?.isIntersecting === true && then.current())
    if (end.current !== null) seen.observe(end.current)
    return () => seen.disconnect()
  }, [])
  return <div ref={end} className="more" />
}

function nothing(sought: string, aside: boolean): string {
  if (sought !== '') return t('No block has “{sought}” in its name or among its fabrics.', { sought })
  return aside ? t('Nothing is put aside.') : t('No block yet: begin one above, or open a file.')
}

/** Every word that is sought is in the name or in a fabric's name. */
function found({ name, fabrics }: Card, sought: string): boolean {
  const words = sought.toLocaleLowerCase().split(/\s+/)
  const text = [name, ...fabrics].join('\n').toLocaleLowerCase()
  return words.every((word) => text.includes(word))
}

interface CardProps {
  readonly card: Card
  readonly open: boolean
  readonly chosen: boolean
  readonly onOpen: () => void
  readonly onAbout: () => void
}

function CardOf({ card, open, chosen, onOpen, onAbout }: CardProps) {
  const { id, name, changed, aside } = card
  const said = displayName({ name })
  return (
    <li className={open ? 'card open' : 'card'}>
      <button
        type="button"
        className="face"
        // biome-ignore lint/a11y/noAutofocus: a dialog begins at the block that is on the board
        autoFocus={open}
        aria-current={open}
        aria-label={aside === null ? t('Open {name}', { name: said }) : t('Bring back {name}', { name: said })}
        onClick={aside === null ? onOpen : () => void tried(() => bringBack(id))}
      >
        <BlockPicture load={() => blockOf(id)} stamp={`${id} ${changed}`} side={148} />
        <span className="cardname">{said}</span>
        <span className="cardtime">
          {aside === null ? (open ? t('on the board') : dayOrTime(changed)) : t('put aside {when}', { dayOrTime: dayOrTime(aside) })}
        </span>
      </button>
      {aside === null && (
        <button
          type="button"
          className="about"
          id={`more-${id}`}
          aria-expanded={chosen}
          aria-label={t('More about {name}', { name: said })}
          onClick={onAbout}
        >
          <svg viewBox="0 0 20 20" width="18" height="18" fill="none" stroke="currentColor" strokeWidth="1.8" aria-hidden="true">
            <path d="M3 6h14M3 10h14M3 14h9" />
          </svg>
        </button>
      )}
    </li>
  )
}

const MOVES: Readonly<Record<string, (columns: number) => number>> = {
  ArrowRight: () => 1,
  ArrowLeft: () => -1,
  ArrowDown: (columns) => columns,
  ArrowUp: (columns) => -columns,
}

/** Arrows walk over the pictures as they lie. */
function walk(event: KeyboardEvent<HTMLUListElement>): void {
  const move = MOVES[event.key]
  const faces = [...event.currentTarget.querySelectorAll<HTMLElement>('.face')]
  const here = faces.indexOf(document.activeElement as HTMLElement)
  if (move === undefined || here < 0) return
  const columns = Math.max(1, faces.filter(({ offsetTop }) => offsetTop === faces[0]?.offsetTop).length)
  const next = faces[here + move(columns)]
  event.preventDefault()
  next?.focus()
}

const BEGINNINGS = [
  ['star', () => t('a star')],
  ['lantern', () => t('a lantern')],
  ['empty', () => t('an empty grid')],
] as const

function Beginning({ done, count }: { readonly done: () => void; readonly count: number }) {
  return (
    <div className="beginning">
      <h3>{t('Begin a new block')}</h3>
      <ul className="starts">
        {BEGINNINGS.map(([starter, name]) => (
          <li key={starter}>
            <button type="button" onClick={() => void beginBlock(STARTERS[starter]).then((begun) => begun && done())}>
              <BlockPicture load={async () => STARTERS[starter]} stamp={starter} side={34} />
              {name()}
            </button>
          </li>
        ))}
      </ul>
      <div className="buttons">
        <OpenFileButton done={done} />
        {count > 0 && (
          <button type="button" onClick={() => void tried(saveAll)}>
            {t('Save all in one file')}
          </button>
        )}
      </div>
    </div>
  )
}

async function saveAll(): Promise<void> {
  const blocks = await filedBlocks()
  download('nestwright-blocks.json', writeBlocks(blocks), 'application/json')
  setView({ notice: tn(blocks.length, 'One block is saved in a file.', '{n} blocks are saved in a file.') })
}

function AsideHead({ cards }: { readonly cards: readonly Card[] }) {
  const [sure, setSure] = useState(false)
  if (cards.length === 0) return null
  const empty = (): void => {
    if (sure) void tried(() => forgetBlocks(cards.map(({ id }) => id)))
    setSure(!sure)
  }
  return (
    <div className="beginning">
      <p className="hint">{t('What is put aside stays here for {n} days; choose one to bring it back.', { n: ASIDE_DAYS })}</p>
      <div className="buttons">
        <button type="button" onClick={empty}>
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

/** The same function each time, so that it takes the focus once. */
const takeFocus = (here: HTMLElement | null): void => here?.focus()

/** What was done last, said here because the page behind cannot be heard; what was put aside last can be had back at once. */
function Told({ gone, back }: { readonly gone: string | null; readonly back: () => void }) {
  const notice = useStore(({ view }) => view.notice)
  const notices = useStore(({ view }) => view.notices)
  return (
    <div className={notice === '' && gone === null ? 'told silent' : 'told'}>
      <p role="status">
        <span key={notices}>{notice}</span>
      </p>
      {gone !== null && (
        <button type="button" ref={takeFocus} onClick={() => void tried(() => bringBack(gone)).then(back)}>
          {t('Bring it back')}
        </button>
      )}
    </div>
  )
}
