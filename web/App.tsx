/** The page: what one begins from, the tray and fabrics, the board, the findings. */
import { type ChangeEvent, lazy, Suspense, useEffect, useRef } from 'react'
import { setName } from '../geometry/index.ts'
import { Board, KEYS } from './canvas/Board.tsx'
import { useHeld } from './canvas/gestures.ts'
import { Chosen } from './panels/Chosen.tsx'
import { CutList } from './panels/CutList.tsx'
import { Fabrics } from './panels/Fabrics.tsx'
import { Findings } from './panels/Findings.tsx'
import { Picture, Tray } from './panels/Tray.tsx'
import { Settings } from './panels/Settings.tsx'
import { emptyGrid } from './starters/emptyGrid.ts'
import { eveningStar } from './starters/eveningStar.ts'
import { lantern } from './starters/lantern.ts'
import { openFile, saveFile } from './state/save.ts'
import { edit, type Look, look, redo, replace, undo, useStore } from './state/store.ts'

// What is not needed to begin with comes a moment later, so that the page is there at once.
const LayersKey = lazy(async () => ({ default: (await import('./panels/LayersKey.tsx')).LayersKey }))
const Quilting = lazy(async () => ({ default: (await import('./panels/Quilting.tsx')).Quilting }))
const WholeQuilt = lazy(async () => ({ default: (await import('./panels/WholeQuilt.tsx')).WholeQuilt }))
const Neighbours = lazy(async () => ({ default: (await import('./panels/Neighbours.tsx')).Neighbours }))
const AsSewn = lazy(async () => ({ default: (await import('./panels/AsSewn.tsx')).AsSewn }))

const STARTERS = { star: eveningStar, lantern, empty: emptyGrid } as const
const LOOKS: readonly (readonly [Look, string])[] = [
  ['cloth', 'Cloth'],
  ['value', 'Value'],
  ['wrong', 'Wrong side'],
  ['layers', 'Layers of cloth'],
  ['quilting', 'Quilting line'],
]

export function App() {
  useEffect(() => {
    const key = (event: KeyboardEvent): void => {
      if (!(event.ctrlKey || event.metaKey) || event.defaultPrevented || event.target instanceof HTMLInputElement) return
      const name = event.key.toLowerCase()
      if (name !== 'z' && name !== 'y') return
      event.preventDefault()
      if (name === 'y' || event.shiftKey) redo()
      else undo()
    }
    window.addEventListener('keydown', key)
    return () => window.removeEventListener('keydown', key)
  }, [])
  return (
    <>
      <Header />
      <main>
        <div className="side left">
          <Tray />
          <Fabrics />
        </div>
        <div className="middle">
          <Looks />
          <Suspense>
            <LayersKey />
          </Suspense>
          <Board />
          <Notice />
          <Keys />
        </div>
        <div className="side right">
          <Chosen />
          <Findings />
          <CutList />
          <Suspense>
            <WholeQuilt />
            <Quilting />
            <Neighbours />
            <AsSewn />
          </Suspense>
          <Settings />
        </div>
      </main>
      <Carried />
    </>
  )
}

function Header() {
  const block = useStore(({ history }) => history.block)
  const past = useStore(({ history }) => history.past.length)
  const future = useStore(({ history }) => history.future.length)
  const saved = useStore((state) => state.saved)
  const file = useRef<HTMLInputElement>(null)
  const open = (event: ChangeEvent<HTMLInputElement>): void => {
    const [chosen] = event.target.files ?? []
    if (chosen !== undefined) void openFile(chosen)
    event.target.value = ''
  }
  return (
    <header>
      <h1>Nestwright</h1>
      <label className="name">
        Block
        <input value={block.name} maxLength={200} onChange={(event) => edit(setName(event.target.value))} />
      </label>
      <label className="start">
        Begin from
        <select value="" onChange={(event) => replace(STARTERS[event.target.value as keyof typeof STARTERS], 'begin anew')}>
          <option value="">…</option>
          <option value="star">a star</option>
          <option value="lantern">a lantern</option>
          <option value="empty">an empty grid</option>
        </select>
      </label>
      <div className="buttons">
        <button type="button" onClick={() => file.current?.click()}>
          Open a file
        </button>
        <input ref={file} type="file" accept=".json,application/json" hidden aria-label="Block file" onChange={open} />
        <button type="button" onClick={() => saveFile(block)}>
          Save a file
        </button>
        <button type="button" disabled={past === 0} onClick={undo}>
          Undo
        </button>
        <button type="button" disabled={future === 0} onClick={redo}>
          Do again
        </button>
      </div>
      <span className="saved" role="status">
        {saved === 'failed' ? 'Not kept in this browser' : saved === 'saving' ? 'Keeping…' : 'Kept in this browser'}
      </span>
    </header>
  )
}

function Looks() {
  const now = useStore(({ view }) => view.look)
  const marks = useStore(({ view }) => view.marks)
  return (
    <fieldset className="looks">
      <legend className="unseen">How to look at it</legend>
      {LOOKS.map(([one, name]) => (
        <button key={one} type="button" aria-pressed={now === one} onClick={() => look({ look: one })}>
          {name}
        </button>
      ))}
      <button type="button" aria-pressed={marks} onClick={() => look({ marks: !marks })}>
        Numbers and marks
      </button>
      <button type="button" onClick={() => look({ zoom: 1, pan: [0, 0] })}>
        Fit
      </button>
    </fieldset>
  )
}

function Notice() {
  const notice = useStore(({ view }) => view.notice)
  return (
    <p className="notice" role="status" aria-live="polite">
      {notice}
    </p>
  )
}

function Keys() {
  return (
    <details className="keys">
      <summary>Keys on the board</summary>
      <dl id="keys">
        {KEYS.map(([key, what]) => (
          <div key={key}>
            <dt>{key}</dt>
            <dd>{what}</dd>
          </div>
        ))}
      </dl>
    </details>
  )
}

/** What is carried between the tray or the fabrics and the board. */
function Carried() {
  const held = useHeld()
  const block = useStore(({ history }) => history.block)
  if (held === null) return null
  const colour = held.sort === 'fabric' ? block.fabrics.find(({ id }) => id === held.fabric)?.colour : undefined
  return (
    <div className="carried" aria-hidden="true" style={{ left: held.x, top: held.y, background: colour }}>
      {held.sort === 'unit' && <Picture block={block} kind={held.kind} />}
    </div>
  )
}
