/**
 * The board: the block under the maker's hand.
 *
 * It draws what there is and feeds what happens to the hand: what a press, a drag, a tap or the wheel means is in `hand/`, what a key means in `keys/`.
 * Everything that a pointer does, keys do too.
 */
import { lazy, type ReactNode, useEffect, useMemo, useRef, useState } from 'react'
import { LazyPanel } from '../controls/LazyPanel.tsx'
import { useStore, useFindings } from '../document/store.ts'
import { useInk } from '../drawing/useInk.ts'
import { t } from '../words/words.ts'
import { listenToClipboard } from './actions/clipboard.ts'
import { BoardTools } from './BoardTools.tsx'
import { boardFrame } from './boardFrame.ts'
import { CellGrid, cellId } from './CellGrid.tsx'
import { showsMeetings, useHand } from './hand/useHand.ts'
import { prepareIndexes } from './hitTest.ts'
import type { MarksScene } from './layers/marksLayer.ts'
import { useDragLayer } from './layers/useDragLayer.ts'
import { type ShownBlock, useFabricLayer, useLayers, useMarksLayer } from './layers/useLayers.ts'
import { useElementSize } from './useElementSize.ts'

const SeamOptions = lazy(async () => ({ default: (await import('./pressing/SeamOptions.tsx')).SeamOptions }))

const SelectionBar = lazy(async () => ({ default: (await import('./SelectionBar.tsx')).SelectionBar }))

const seamOptionId = (join: string | null): string | undefined => (join === null ? undefined : `seam-${join}`)

/** Milliseconds of rest before the indexes that a press needs are made. */
const REST = 100

/** Held while a pointer works: not yet the keyboard at work. */
const MODIFIERS: ReadonlySet<string> = new Set(['Shift', 'Control', 'Alt', 'Meta'])

/** `children` lie over its lower edge: what the colours of a view mean. */
export function Board({ children }: { readonly children?: ReactNode }) {
  const board = useRef<HTMLDivElement>(null)
  const canvas = useRef<HTMLDivElement>(null)
  // Whether the board is worked with keys: only then does it show its frame and its cursor.
  const [byKeys, setByKeys] = useState(false)
  const size = useElementSize(board, [640, 560])
  const shown = useShownBlock()
  const { block, report, view } = shown
  const { zoom, pan, mode, cursor, selected, tool, seam } = view
  const pressing = mode === 'pressing'
  const { hand, listeners } = useHand(board, size)
  // Whoever places units or drags one has no use for it.
  const hasBar = selected.length > 0 && !pressing && view.unitInHand === null && (hand.gesture === null || hand.gesture.type === 'press')
  const frame = useMemo(() => boardFrame(block, { zoom, pan, mode }, size), [block, zoom, pan, mode, size])

  const { ink, paper } = useInk()
  const marks = showsMeetings(view)
  const numbers = marks && view.marks === 'numbers'
  const marksScene = useMemo<MarksScene>(
    () => ({ report, marks, numbers, pressing, seam, frame, size, ink, paper }),
    [report, marks, numbers, pressing, seam, frame, size, ink, paper],
  )
  const layers = useLayers(canvas, shown, size)
  const folded = useFabricLayer(layers, shown, frame, size)
  useMarksLayer(layers, shown, marksScene)
  useDragLayer(board, layers, shown, hand, byKeys, marksScene)

  useEffect(() => listenToClipboard(board.current as HTMLDivElement), [])
  useEffect(() => {
    const rest = setTimeout(() => prepareIndexes(block), REST)
    return () => clearTimeout(rest)
  }, [block])

  return (
    <div className="bench">
      {!pressing && <BoardTools />}
      {children}
      <div
        ref={board}
        className={tool === 'patch' ? 'board drawing' : 'board'}
        data-part="board"
        role="application"
        aria-label={t('Board: {block}, {columns} by {rows} squares', { block: block.name, columns: block.grid.columns, rows: block.grid.rows })}
        aria-describedby="board-how"
        aria-activedescendant={pressing ? seamOptionId(seam) : cellId(cursor)}
        // biome-ignore lint/a11y/noNoninteractiveTabindex: the board is worked with the keys listed below it
        tabIndex={0}
        {...listeners}
        onContextMenu={(event) => event.preventDefault()}
        data-keys={byKeys || undefined}
        onFocus={({ currentTarget }) => setByKeys(currentTarget.matches(':focus-visible'))}
        onBlur={() => setByKeys(false)}
        onPointerDownCapture={() => setByKeys(false)}
        onKeyDownCapture={({ key }) => !MODIFIERS.has(key) && setByKeys(true)}
        data-folded={folded}
        data-scale={frame.scale}
        data-origin={frame.toPixels(0, 0).join(',')}
      >
        <div ref={canvas} />
        <p id="board-how" className="unseen">
          {pressing
            ? t('Arrow keys go from seam to seam, Enter presses one the other way, then open, then as proposed.')
            : t('Use the arrow keys to move, and Enter to select. All keys are listed under Help.')}
        </p>
        {pressing ? (
          <LazyPanel>
            <SeamOptions />
          </LazyPanel>
        ) : (
          <CellGrid block={block} cursor={cursor} selected={selected} />
        )}
      </div>
      {hasBar && (
        <LazyPanel>
          <SelectionBar block={block} selected={selected} frame={frame} size={size} />
        </LazyPanel>
      )}
    </div>
  )
}

function useShownBlock(): ShownBlock {
  const block = useStore(({ history }) => history.block)
  const view = useStore((state) => state.view)
  const preview = useStore((state) => state.preview)
  const { report } = useFindings()
  return preview === null ? { block, report, preview, view } : { block: preview.block, report: preview.report, preview, view }
}
