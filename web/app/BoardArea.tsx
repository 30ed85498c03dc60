/** The middle of the page: the choice of view, the board or what a view shows instead, and below it the notice and the board's buttons. */
import { type ComponentType, lazy } from 'react'
import { Board } from '../board/Board.tsx'
import { InHand } from '../board/InHand.tsx'
import { MarksSelect } from '../board/MarksSelect.tsx'
import { SymmetrySelect } from '../board/SymmetrySelect.tsx'
import { LazyPanel } from '../controls/LazyPanel.tsx'
import { setView, useStore, type ViewMode } from '../document/store.ts'
import { NestingChanges } from '../views/NestingChanges.tsx'
import { t } from '../words/words.ts'
import { Notice, NoticeLog } from '../controls/Notices.tsx'
import { ViewPicker } from './ViewPicker.tsx'

// Loaded when a view is first chosen, so that the page starts at once.
/** Explains the colours of a view, on the board. */
const KEYS_TO_COLOURS: Readonly<Partial<Record<ViewMode, ComponentType>>> = {
  value: lazy(async () => ({ default: (await import('../views/ValueKey.tsx')).ValueKey })),
  layers: lazy(async () => ({ default: (await import('../views/LayersKey.tsx')).LayersKey })),
}

const EmptyGrid = lazy(async () => ({ default: (await import('./EmptyGrid.tsx')).EmptyGrid }))

/** Below the board in a view. */
const UNDER_BOARD: Readonly<Partial<Record<ViewMode, ComponentType>>> = {
  pressing: lazy(async () => ({ default: (await import('../board/pressing/PressingBar.tsx')).PressingBar })),
}

/** Views that show something else than the board: nothing can be arranged there. */
const INSTEAD_OF_BOARD: Readonly<Partial<Record<ViewMode, ComponentType>>> = {
  order: lazy(async () => ({ default: (await import('../views/SewingOrder.tsx')).SewingOrder })),
  setting: lazy(async () => ({ default: (await import('../views/RepeatedBlocks.tsx')).RepeatedBlocks })),
}

export function BoardArea() {
  return (
    <section className="middle" aria-labelledby="board-title">
      <h2 id="board-title" className="unseen">
        {t('Board')}
      </h2>
      <ViewPicker />
      <BoardOrView />
      <div className="below-board" data-part="under">
        <div className="message-space">
          <div className="message">
            <NestingChanges />
            <Notice />
          </div>
        </div>
        <BoardButtons />
      </div>
    </section>
  )
}

function BoardOrView() {
  const mode = useStore(({ view }) => view.mode)
  // Whoever has something in hand, or draws, needs the whole grid.
  const isEmpty = useStore(({ history, view }) => history.block.units.length === 0 && view.unitInHand === null && view.tool === 'hand')
  const [View, ColourKey, Under] = [INSTEAD_OF_BOARD[mode], KEYS_TO_COLOURS[mode], UNDER_BOARD[mode]]
  if (View === undefined)
    return (
      <>
        {mode !== 'pressing' && <InHand />}
        <Board>
          {isEmpty && (
            <LazyPanel>
              <EmptyGrid />
            </LazyPanel>
          )}
          {ColourKey !== undefined && (
            <LazyPanel key={mode}>
              <ColourKey />
            </LazyPanel>
          )}
        </Board>
        {Under !== undefined && (
          <LazyPanel>
            <Under />
          </LazyPanel>
        )}
      </>
    )
  return (
    <LazyPanel key={mode} fallback={<div className="board" />}>
      <View />
    </LazyPanel>
  )
}

/** Symmetric edits, marks, zoom, and what was said before. */
function BoardButtons() {
  const mode = useStore(({ view }) => view.mode)
  return (
    <div className="buttons board-buttons">
      {INSTEAD_OF_BOARD[mode] === undefined && <SymmetrySelect />}
      <MarksSelect />
      <button type="button" onClick={() => setView({ zoom: 1, pan: [0, 0] })}>
        {t('Fit to window')}
      </button>
      <NoticeLog />
    </div>
  )
}
