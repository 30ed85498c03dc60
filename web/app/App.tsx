/** The page: the head, the tray and fabrics, the board, the sheets beside it. */
import { type ComponentType, lazy, useEffect } from 'react'
import { Board } from '../board/Board.tsx'
import { SymmetrySelect } from '../board/SymmetrySelect.tsx'
import { KEYS } from '../board/keys/keyList.ts'
import { useTrayDrag } from '../board/hand/trayDrag.ts'
import { Swatch } from '../drawing/FabricDefs.tsx'
import { NestingChanges } from '../views/NestingChanges.tsx'
import { Popover } from '../controls/Popover.tsx'
import { FabricList } from '../tray/FabricList.tsx'
import { Header } from './Header.tsx'
import { useDroppedFiles } from '../library/OpenFileButton.tsx'
import { SaveStatus } from './SaveStatus.tsx'
import { SheetTabs } from '../sheets/SheetTabs.tsx'
import { Tray } from '../tray/Tray.tsx'
import { UnitPicture } from '../board/UnitPicture.tsx'
import { type ViewMode, setView, getState, redo, type SheetName, undo, useStore } from '../document/store.ts'
import { loadChunk } from '../keeping/loadChunk.ts'
import { t } from '../words/words.ts'
import { LazyPanel } from '../controls/LazyPanel.tsx'

// What is not needed to begin with comes when it is asked for, so that the page is there at once.
/** What the colours of a look mean. */
const MEANINGS: Readonly<Partial<Record<ViewMode, ComponentType>>> = {
  value: lazy(async () => ({ default: (await import('../views/ValueKey.tsx')).ValueKey })),
  layers: lazy(async () => ({ default: (await import('../views/LayersKey.tsx')).LayersKey })),
}

const OTHER_BOARDS: Readonly<Partial<Record<ViewMode, ComponentType>>> = {
  order: lazy(async () => ({ default: (await import('../views/SewingOrder.tsx')).SewingOrder })),
  setting: lazy(async () => ({ default: (await import('../views/RepeatedBlocks.tsx')).RepeatedBlocks })),
}

const LOOKS: readonly (readonly [ViewMode, () => string])[] = [
  ['cloth', () => t('Cloth')],
  ['value', () => t('Value')],
  ['wrong', () => t('Wrong side')],
  ['layers', () => t('Layers of cloth')],
  ['order', () => t('Sewing order')],
  ['quilting', () => t('Quilting line')],
  ['setting', () => t('Among copies')],
]

/** What is asked about such a view stands on its sheet; the quilting line is reckoned there. */
const SHEET_OF: Readonly<Partial<Record<ViewMode, SheetName>>> = { quilting: 'quilting', setting: 'setting' }

export function App() {
  // Another language draws the whole page anew.
  const language = useStore(({ view }) => view.language)
  useEffect(withKeys, [])
  useEffect(() => {
    const key = (event: KeyboardEvent): void => {
      if (event.key === 'F6' && !event.ctrlKey && !event.metaKey && !event.altKey) {
        event.preventDefault()
        void focus().then((come) => come?.focusNextPart(event.shiftKey ? -1 : 1))
      }
      if (!(event.ctrlKey || event.metaKey) || event.defaultPrevented || isField(event.target)) return
      const name = event.key.toLowerCase()
      if (name !== 'z' && name !== 'y') return
      event.preventDefault()
      if (name === 'y' || event.shiftKey) redo()
      else undo()
    }
    window.addEventListener('keydown', key)
    return () => window.removeEventListener('keydown', key)
  }, [])
  useDroppedFiles()
  return (
    <div className="page" key={language}>
      <Skips />
      <Header />
      <SaveStatus />
      <main>
        <div className="side left">
          <Tray />
          <FabricList />
        </div>
        <section className="middle" aria-labelledby="board-title">
          <h2 id="board-title" className="unseen">
            {t('Board')}
          </h2>
          <Looks />
          <OnTheBoard />
          <div className="under" data-part="under">
            <div className="says">
              <div className="said">
                <NestingChanges />
                <Notice />
              </div>
            </div>
            <Seeing />
          </div>
        </section>
        <SheetTabs />
      </main>
      <Carried />
    </div>
  )
}

const focus = () => loadChunk(() => import('../controls/focus.ts'))

/** Where the keyboard goes on is watched from the first key that is pressed. */
function withKeys(): () => void {
  const begin = (): void => void focus().then((come) => come?.watchFocus())
  window.addEventListener('keydown', begin, { once: true })
  return () => window.removeEventListener('keydown', begin)
}

/** For the keyboard: past all that stands before the board, seen only while they have the focus. */
function Skips() {
  return (
    <nav className="skips" aria-label={t('Go to')}>
      <button type="button" onClick={() => void focus().then((come) => come?.focusPart('board'))}>
        {t('To the board')}
      </button>
      <button type="button" onClick={() => void focus().then((come) => come?.focusPart('sheet'))}>
        {t('To the sheet')}
      </button>
    </nav>
  )
}

/** The block itself, or the block drawn some way that a hand does not lay units on. */
function OnTheBoard() {
  const shown = useStore(({ view }) => view.mode)
  const [Other, Meaning] = [OTHER_BOARDS[shown], MEANINGS[shown]]
  if (Other === undefined)
    return (
      <Board>
        {Meaning !== undefined && (
          <LazyPanel key={shown}>
            <Meaning />
          </LazyPanel>
        )}
      </Board>
    )
  return (
    <LazyPanel key={shown} fallback={<div className="board" />}>
      <Other />
    </LazyPanel>
  )
}

/** A field for words has an undo of its own. */
const isField = (target: EventTarget | null): boolean =>
  target instanceof HTMLTextAreaElement || (target instanceof HTMLInputElement && !WORDLESS.has(target.type))
const WORDLESS: ReadonlySet<string> = new Set(['checkbox', 'range', 'color', 'file'])

function Looks() {
  const shown = useStore(({ view }) => view.mode)
  return (
    <fieldset className="looks" data-part="looks">
      <legend className="unseen">{t('How to look at it')}</legend>
      {LOOKS.map(([one, name]) => (
        <button
          key={one}
          type="button"
          aria-pressed={shown === one}
          onClick={() => setView({ mode: one, sheet: SHEET_OF[one] ?? getState().view.sheet })}
        >
          {name()}
        </button>
      ))}
    </fieldset>
  )
}

/** How much of the board is seen, and which keys work on it. */
function Seeing() {
  const shown = useStore(({ view }) => view.mode)
  const marks = useStore(({ view }) => view.marks)
  return (
    <div className="buttons seeing">
      {OTHER_BOARDS[shown] === undefined && <SymmetrySelect />}
      <button type="button" aria-pressed={marks} onClick={() => setView({ marks: !marks })}>
        {t('Numbers and marks')}
      </button>
      <button type="button" onClick={() => setView({ zoom: 1, pan: [0, 0] })}>
        {t('Fit')}
      </button>
      <Keys />
    </div>
  )
}

function Notice() {
  const notice = useStore(({ view }) => view.notice)
  const notices = useStore(({ view }) => view.notices)
  return (
    <p className="notice" role="status" aria-live="polite">
      {/* Made anew each time, so that the same sentence is said again, and on a small screen comes up and goes again. */}
      <span key={notices}>{notice}</span>
    </p>
  )
}

function Keys() {
  return (
    <Popover name={t('Keys')} className="upward keys">
      <dl id="keys" className="popover-content">
        {KEYS.map(([key, what]) => (
          <div key={key}>
            <dt>{t(key)}</dt>
            <dd>{t(what)}</dd>
          </div>
        ))}
      </dl>
    </Popover>
  )
}

/** What is carried between the tray or the fabrics and the board. */
function Carried() {
  const dragged = useTrayDrag()
  const block = useStore(({ history }) => history.block)
  if (dragged === null) return null
  const fabric = dragged.type === 'fabric' ? block.fabrics.find(({ id }) => id === dragged.fabric) : undefined
  return (
    <div className="carried" aria-hidden="true" style={{ left: dragged.x, top: dragged.y }}>
      {fabric !== undefined && <Swatch fabric={fabric} unit={block.measure.unit} />}
      {dragged.type === 'unit' && <UnitPicture block={block} kind={dragged.kind} />}
    </div>
  )
}
