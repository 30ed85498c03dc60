/**
 * The seam check: a list that follows the board. Pointing at a finding, or focusing it, shows its place there; a press on a mark of the board comes here.
 *
 * First what has to be fixed, then what needs care at the machine, then what is fine. Long lists are shown a page at a time.
 */
import { lazy, useState } from 'react'
import type { Findings } from '../../../geometry/index.ts'
import { LazyPanel } from '../../controls/LazyPanel.tsx'
import { isLarge } from '../../document/blockSize.ts'
import { isUnfinished } from '../../document/progress.ts'
import { setView, useFindings, useStore } from '../../document/store.ts'
import { VERDICTS } from '../../drawing/marks.ts'
import { label, t, translate } from '../../words/words.ts'
import { hasVerdict, summaryText, VerdictMark, worstVerdict } from './CheckSummary.tsx'
import { useFocusFinding } from './FindingButton.tsx'
import { MeetingList } from './MeetingList.tsx'
import { BlockSizes, CrookedSeams, ThickestSpot } from './SeamCheckNotes.tsx'
import './seamCheck.css'

// Loaded when there is a problem.
const ProblemList = lazy(async () => ({ default: (await import('./ProblemList.tsx')).ProblemList }))
// Loaded when it is opened.
const RowPressing = lazy(async () => ({ default: (await import('./RowPressing.tsx')).RowPressing }))
const SewingList = lazy(async () => ({ default: (await import('./SewingList.tsx')).SewingList }))

export function SeamCheck() {
  const { report, trouble } = useFindings()
  const [onlyCare, setOnlyCare] = useState(false)
  useFocusFinding()
  return (
    <section aria-labelledby="findings-title" className="findings" onPointerLeave={stopPointing}>
      <h2 id="findings-title">{t('Seam check')}</h2>
      {report === null ? (
        <p className="trouble">{translate(trouble)}</p>
      ) : (
        <FindingLists report={report} onlyCare={onlyCare} setOnlyCare={setOnlyCare} />
      )}
    </section>
  )
}

/** When the pointer leaves the list, the board stops showing a place, unless the focus is still in the list. */
function stopPointing({ currentTarget }: { readonly currentTarget: HTMLElement }): void {
  if (!currentTarget.contains(document.activeElement)) setView({ finding: null })
}

interface ListsProps {
  readonly report: Findings
  readonly onlyCare: boolean
  readonly setOnlyCare: (only: boolean) => void
}

function FindingLists({ report, onlyCare, setOnlyCare }: ListsProps) {
  return (
    <>
      <p className={isUnfinished(report) ? 'sum progress' : 'sum'} data-testid="sum" id="findings-sum" tabIndex={-1}>
        {hasVerdict(report) && <VerdictMark verdict={worstVerdict(report)} />}
        {summaryText(report)}
      </p>
      {report.meetings.length > 0 && (
        <label className="tick">
          <input type="checkbox" checked={onlyCare} onChange={(event) => setOnlyCare(event.target.checked)} />
          {t('Show problems only')}
        </label>
      )}
      {report.patches.length > 0 && report.problems.length > 0 && (
        <LazyPanel>
          <ProblemList report={report} />
        </LazyPanel>
      )}
      {VERDICTS.filter((verdict) => !onlyCare || verdict !== 'nests').map((verdict) => (
        <MeetingList key={verdict} verdict={verdict} report={report} />
      ))}
      {report.joins.length > 0 && !onlyCare && <p className="hint">{translate(report.pressing.proof)}</p>}
      <CrookedSeams report={report} />
      <ThickestSpot report={report} />
      {!onlyCare && <Pressing report={report} />}
      {!onlyCare && <SewingOrder report={report} />}
      <BlockSizes report={report} />
    </>
  )
}

/** Row by row. Open once the maker has changed the block or presses seams, so that a first look at the example needs none of it. */
function Pressing({ report }: { readonly report: Findings }) {
  const isHers = useStore(({ history, view }) => history.past.length > 0 || view.mode === 'pressing')
  const large = useStore(({ history }) => isLarge(history.block))
  const [chosen, setChosen] = useState<boolean | null>(null)
  if (report.joins.length === 0 || large) return null
  const open = chosen ?? isHers
  return (
    <details className="order" open={open} onToggle={({ currentTarget }) => currentTarget.open !== open && setChosen(currentTarget.open)}>
      <summary>{t(PRESSING[report.order])}</summary>
      {open && (
        <LazyPanel>
          <RowPressing report={report} />
        </LazyPanel>
      )}
    </details>
  )
}

const PRESSING: Readonly<Record<Findings['order'], string>> = {
  rows: label('Pressing, row by row'),
  columns: label('Pressing, column by column'),
  sections: label('Pressing'),
}

const ORDERS: Readonly<Record<Findings['order'], string>> = {
  rows: label('Sewing order: by rows'),
  columns: label('Sewing order: by columns'),
  sections: label('Sewing order: by sections'),
}

function SewingOrder({ report }: { readonly report: Findings }) {
  const [open, setOpen] = useState(false)
  const step = useStore(({ view }) => (view.mode === 'order' ? view.step : null))
  if (report.joins.length === 0) return null
  return (
    <details className="order" open={open} onToggle={(event) => setOpen(event.currentTarget.open)}>
      <summary>{t(ORDERS[report.order])}</summary>
      {open && (
        <LazyPanel>
          <SewingList report={report} step={step} />
        </LazyPanel>
      )}
    </details>
  )
}
