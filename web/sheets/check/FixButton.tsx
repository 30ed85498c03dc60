/**
 * The button of one fix. It shows on the board what the fix would change before anything is changed.
 *
 * Pointing at the button, or focusing it, shows the outcome; a press takes it. A finger cannot point, so its first tap shows the outcome and the second
 * takes it. Taking a fix is one edit, so one undo.
 */
import { lazy, useEffect, useRef, useState } from 'react'
import type { Edit } from '../../../geometry/index.ts'
import { LazyPanel } from '../../controls/LazyPanel.tsx'
import type { Preview } from '../../document/preview.ts'
import { bordersAround } from '../../document/shapes.ts'
import { showBoard, edit, getState, setView, showPreview, useStore } from '../../document/store.ts'
import { t, tn } from '../../words/words.ts'
import { drawBlockPreview, previewOf } from '../../views/fixPreview.ts'
import { isLarge } from '../../document/blockSize.ts'

// Loaded only when the board is out of view.
const FittedDrawing = lazy(async () => ({ default: (await import('../../drawing/FittedDrawing.tsx')).FittedDrawing }))

export function FixButton({ name, getEdit }: { readonly name: string; readonly getEdit: () => Edit }) {
  const [tried, setTried] = useState<Preview | null>(null)
  const shown = useStore(({ preview }) => preview) === tried && tried !== null
  // For a large block a preview takes a moment to compute, so only a press asks for it.
  const large = useStore(({ history }) => isLarge(history.block))
  const isFirstTap = useRef(false)
  const outcome = useRef<HTMLSpanElement>(null)
  const show = (): void => {
    const preview = tried ?? previewOf(getState().history.block, getEdit())
    setTried(preview)
    showPreview(preview)
    showBoard()
  }
  const hide = (): void => {
    if (getState().preview === tried) showPreview(null)
  }
  // When the fix disappears from the list, so does its preview.
  useEffect(() => () => showPreview(null), [])
  return (
    <>
      <button
        type="button"
        className="fix"
        aria-pressed={shown}
        onPointerEnter={(event) => event.pointerType === 'mouse' && !large && show()}
        onPointerLeave={(event) => event.pointerType === 'mouse' && document.activeElement !== event.currentTarget && hide()}
        onPointerDown={(event) => {
          isFirstTap.current = event.pointerType !== 'mouse' && !shown
        }}
        onFocus={large ? undefined : show}
        onBlur={hide}
        onClick={(event) => {
          if (isFirstTap.current || !shown) {
            isFirstTap.current = false
            event.currentTarget.focus()
            show()
            // On a small screen the outcome, and how to take the fix, may lie below the edge.
            requestAnimationFrame(() => outcome.current?.scrollIntoView({ block: 'nearest' }))
          } else takeFix(name, getEdit())
        }}
      >
        {name}
      </button>
      <span ref={outcome} className="outcome" role="status">
        {shown && tried !== null && outcomeWords(tried)}
      </span>
      {shown && tried !== null && !isBoardInView() && <FixPicture preview={tried} />}
    </>
  )
}

/** What the fix would make of the block. On a small screen the board is out of view above the list, so the picture stands here. */
function FixPicture({ preview }: { readonly preview: Preview }) {
  const { block } = preview
  const border = bordersAround(block)
  return (
    <LazyPanel>
      <FittedDrawing
        className="tried"
        block={block}
        drawing={drawBlockPreview(preview)}
        reach={[-border, -border, block.grid.columns + border, block.grid.rows + border]}
        margin={10}
        label={t('The block with this fix')}
      />
    </LazyPanel>
  )
}

/** Whether more than half of the board is in view. */
function isBoardInView(): boolean {
  const box = document.querySelector('.board')?.getBoundingClientRect()
  if (box === undefined) return false
  return Math.min(box.bottom, window.innerHeight) - Math.max(box.top, 0) > box.height / 2
}

function outcomeWords({ clashes: [before, after], pressed, units, sewn }: Preview): string {
  if (!sewn[1]) return t('Shown on the board: fewer gaps and overlaps. Click again to use it.')
  const clash = after === 0 ? t('everything nests') : tn(after, '1 crossing doesn’t nest', '{n} crossings don’t nest')
  if (!sewn[0]) return t('Shown on the board: it can be sewn, and {clash}. Click again to use it.', { clash })
  const changes = [
    ...(units.length === 0 ? [] : [tn(units.length, '1 unit turned', '{n} units turned')]),
    ...(pressed.length === 0 ? [] : [tn(pressed.length, '1 seam pressed differently', '{n} seams pressed differently')]),
  ]
  return t('Shown on the board: {changes}; {clash} (now {before}). Click again to use it.', {
    changes: changes.length === 0 ? t('a different sewing order') : changes.join(', '),
    clash,
    before,
  })
}

function takeFix(name: string, change: Edit): void {
  edit(change)
  setView({ notice: t('Done: {fix}.', { fix: name }) })
  // The button disappears with its finding, so the focus goes to the new summary.
  requestAnimationFrame(() => document.getElementById('findings-sum')?.focus({ preventScroll: true }))
}
