/**
 * Fixes to try: each is shown on the board before it is taken.
 *
 * Pointing at a fix, or the focus on it, shows what it would change; a press takes what is shown. A finger cannot point, so its first press shows and the
 * second takes. Taking a fix is one edit, so one undo.
 */
import { lazy, useEffect, useRef, useState } from 'react'
import type { Edit, Findings, Fix } from '../../../geometry/index.ts'
import { bordersAround } from '../../document/shapes.ts'
import { drawTried, previewOf } from '../../views/fixPreview.ts'
import type { Preview } from '../../document/preview.ts'
import { backToCloth, edit, setView, getState, showPreview, useStore } from '../../document/store.ts'
import { isLarge } from '../../workers/findingsClient.ts'
import { said, t, tn } from '../../words/words.ts'
import { editForFix } from './editForFix.ts'
import { type LayoutRepair, layoutRepairs } from './layoutRepairs.ts'
import { LazyPanel } from '../../controls/LazyPanel.tsx'

// Only where the board is out of sight is a fix pictured beside it.
const FittedDrawing = lazy(async () => ({ default: (await import('../../drawing/FittedDrawing.tsx')).FittedDrawing }))

export function Fixes({ fixes, report }: { readonly fixes: readonly Fix[]; readonly report: Findings }) {
  return (
    <div className="fixes">
      <span className="try">{t('Try:')}</span>
      {fixes.map((fix) => (
        <Try key={`${fix.do} ${fix.what}`} name={fixWords(fix, report)} editForFix={() => editForFix(fix, report)} />
      ))}
    </div>
  )
}

/** Turns of a unit that mend the layout. */
export function LayoutRepairs({ units, report }: { readonly units: readonly string[]; readonly report: Findings }) {
  const block = useStore(({ history }) => history.block)
  const [found, setFound] = useState<{ readonly report: Findings; readonly mends: readonly LayoutRepair[] } | null>(null)
  useEffect(() => {
    // A hand that goes on needs no advice yet.
    const rest = setTimeout(() => setFound({ report, mends: layoutRepairs(block, report, units) }), REST)
    return () => clearTimeout(rest)
  }, [block, report, units])
  const mends = found?.report === report ? found.mends : []
  if (mends.length === 0) return null
  return (
    <div className="fixes">
      <span className="try">{t('Try:')}</span>
      {mends.map(({ unit, quarters, edit: mend }) => (
        <Try key={`${unit} ${quarters}`} name={t(TURNS[quarters], { unit })} editForFix={() => mend} />
      ))}
    </div>
  )
}

/** Milliseconds. */
const REST = 250

const TURNS: Readonly<Record<1 | 2 | 3, string>> = {
  1: said('Turn {unit} a quarter'),
  2: said('Turn {unit} half round'),
  3: said('Turn {unit} a quarter back'),
}

function Try({ name, editForFix: editFor }: { readonly name: string; readonly editForFix: () => Edit }) {
  const [made, setMade] = useState<Preview | null>(null)
  const shown = useStore(({ preview }) => preview) === made && made !== null
  // What a fix makes of a large block takes longer than a glance: it is worked out when asked for.
  const large = useStore(({ history }) => isLarge(history.block))
  const firstTouch = useRef(false)
  const words = useRef<HTMLSpanElement>(null)
  const show = (): void => {
    const preview = made ?? previewOf(getState().history.block, editFor())
    setMade(preview)
    showPreview(preview)
    backToCloth()
  }
  const hide = (): void => {
    if (getState().preview === made) showPreview(null)
  }
  // A fix that goes from the list takes its preview with it.
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
          firstTouch.current = event.pointerType !== 'mouse' && !shown
        }}
        onFocus={large ? undefined : show}
        onBlur={hide}
        onClick={(event) => {
          if (firstTouch.current || !shown) {
            firstTouch.current = false
            event.currentTarget.focus()
            show()
            // On a low sheet what it would change, and how to take it, stands below the edge.
            requestAnimationFrame(() => words.current?.scrollIntoView({ block: 'nearest' }))
          } else take(name, editFor())
        }}
      >
        {name}
      </button>
      <span ref={words} className="outcome" role="status">
        {shown && made !== null && outcome(made)}
      </span>
      {shown && made !== null && !boardInSight() && <Tried preview={made} />}
    </>
  )
}

/** On a small screen the board lies above the list: then what is tried is pictured here. */
function Tried({ preview }: { readonly preview: Preview }) {
  const { block } = preview
  const out = bordersAround(block)
  return (
    <LazyPanel>
      <FittedDrawing
        className="tried"
        block={block}
        drawing={drawTried(preview)}
        reach={[-out, -out, block.grid.columns + out, block.grid.rows + out]}
        margin={10}
        label={t('The block as it would be')}
      />
    </LazyPanel>
  )
}

/** More than half of the board. */
function boardInSight(): boolean {
  const box = document.querySelector('.board')?.getBoundingClientRect()
  if (box === undefined) return false
  return Math.min(box.bottom, window.innerHeight) - Math.max(box.top, 0) > box.height / 2
}

function outcome({ clashes: [before, after], pressed, units, sewn }: Preview): string {
  if (!sewn[1]) return t('On the board: less is empty, double or beyond the grid. Press it to take it.')
  const clash = after === 0 ? t('nothing clashes then') : tn(after, 'one clash is left then', '{n} clashes are left then')
  if (!sewn[0]) return t('On the board: it can be sewn then; {clash}. Press it to take it.', { clash })
  const changes = [
    ...(units.length === 0 ? [] : [tn(units.length, 'one unit lies turned', '{n} units lie turned')]),
    ...(pressed.length === 0 ? [] : [tn(pressed.length, 'one seam is pressed otherwise', '{n} seams are pressed otherwise')]),
  ]
  return t('On the board: {changes}; {clash} (now {before}). Press it to take it.', {
    changes: changes.length === 0 ? t('the seams are joined otherwise') : changes.join(', '),
    clash,
    before,
  })
}

function take(name: string, change: Edit): void {
  edit(change)
  setView({ notice: t('Done: {fix}.', { fix: name }) })
  // The button is gone with its finding: the focus goes to what is found now.
  requestAnimationFrame(() => document.getElementById('findings-sum')?.focus({ preventScroll: true }))
}

export function fixWords(fix: Fix, report: Findings): string {
  const number = report.joins.findIndex((join) => join.id === fix.what) + 1
  if (fix.do === 'open') return number > 0 ? t('Press seam {number} open', { number }) : t('Press the seams of {unit} open', { unit: fix.what })
  if (fix.do === 'order') return t(ORDERS[fix.what] ?? '{order}', { order: fix.what })
  if (fix.do === 'turn') return t('Turn {unit}; the picture stays', { unit: fix.what })
  return number > 0 ? t('Press seam {number} the other way', { number }) : t('Lift the rule of {unit}', { unit: fix.what })
}

const ORDERS: Readonly<Record<string, string>> = { rows: said('Join by rows'), columns: said('Join by columns'), sections: said('Join by sections') }
