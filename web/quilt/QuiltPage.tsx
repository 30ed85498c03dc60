/** The page while a quilt is open: blocks and fabrics at the left, the quilt in the middle, its sheets at the right. */
import './quilt.css'
import { useEffect } from 'react'
import { NoticeLog, Notice } from '../controls/Notices.tsx'
import { Popover } from '../controls/Popover.tsx'
import { onQuiltEditNames, useStore } from '../document/store.ts'
import { translateAny } from '../words/translateAny.ts'
import { t } from '../words/words.ts'
import { BlockShelf, QuiltFabrics } from './BlockShelf.tsx'
import { QuiltBoard } from './board/QuiltBoard.tsx'
import { ChangedBlocks } from './ChangedBlocks.tsx'
import { DraggedFromList } from './DraggedFromList.tsx'
import { QuiltKeys } from './QuiltKeys.tsx'
import { QuiltToolbar } from './QuiltToolbar.tsx'
import { resetQuiltView, setQuiltView, useQuiltView } from './quiltView.ts'
import { QuiltSheets } from './sheets/QuiltSheets.tsx'
import { useReportOf } from './useQuiltReport.ts'

onQuiltEditNames(translateAny)

export function QuiltPage() {
  const quilt = useStore((state) => state.quilt?.block)
  const id = useStore(({ currentBlock }) => currentBlock.id)
  // biome-ignore lint/correctness/useExhaustiveDependencies: another quilt is looked at from the start
  useEffect(resetQuiltView, [id])
  return quilt === undefined ? null : <OpenQuilt />
}

function OpenQuilt() {
  const quilt = useStore((state) => state.quilt?.block) as NonNullable<ReturnType<typeof useStore.getState>['quilt']>['block']
  useReportOf(quilt)
  return (
    <>
      <div className="side left">
        <BlockShelf quilt={quilt} />
        <QuiltFabrics quilt={quilt} />
      </div>
      <section className="middle" aria-labelledby="quilt-title">
        <h2 id="quilt-title" className="unseen">
          {t('Quilt')}
        </h2>
        <ChangedBlocks quilt={quilt} />
        <QuiltToolbar quilt={quilt} />
        <div className="bench">
          <QuiltBoard quilt={quilt} />
        </div>
        <div className="below-board" data-part="under">
          <div className="message-space">
            <div className="message">
              <Notice />
            </div>
          </div>
          <BoardButtons />
        </div>
      </section>
      <QuiltSheets quilt={quilt} />
      <DraggedFromList quilt={quilt} />
    </>
  )
}

function BoardButtons() {
  const { marks, value, line, zoom } = useQuiltView()
  return (
    <div className="buttons board-buttons">
      <button type="button" aria-pressed={marks} onClick={() => setQuiltView({ marks: !marks })}>
        {t('Seam crossings')}
      </button>
      <button type="button" aria-pressed={value} onClick={() => setQuiltView({ value: !value })}>
        {t('Value')}
      </button>
      <button type="button" aria-pressed={line} onClick={() => setQuiltView({ line: !line })}>
        {t('Quilting line')}
      </button>
      {zoom > 1 && (
        <button type="button" onClick={() => setQuiltView({ zoom: 1, pan: [0, 0] })}>
          {t('Fit to window')}
        </button>
      )}
      <NoticeLog />
      <Popover name={t('Shortcuts')} className="upward keys">
        <QuiltKeys />
      </Popover>
    </div>
  )
}
