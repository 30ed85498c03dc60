/**
 * The findings, a list that follows the hand: pointing at one, or the focus on it, shows its place on the board; a press on a mark of the board comes here.
 *
 * In order: what has to be mended, what wants care at the machine, what lies well. Long lists are shown a part at a time.
 */
import { lazy, type ReactNode, useEffect, useState } from 'react'
import { ERRORS, type Findings, type Meeting, type ReportPoint, sayLength, type Verdict } from '../../../geometry/index.ts'
import { MARKS, VERDICTS } from '../../drawing/marks.ts'
import { backToCloth, setView, useStore, useFindings } from '../../document/store.ts'
import { said, t, tell, tn } from '../../words/words.ts'
import { Fixes, LayoutRepairs } from './Fixes.tsx'
import { hasVerdict, summaryText, VerdictMark, worstVerdict } from './CheckSummary.tsx'
import { LazyPanel } from '../../controls/LazyPanel.tsx'
import { PagedList } from '../../controls/PagedList.tsx'
import './seamCheck.css'

// The list of joins is fetched when it is unfolded.
const SewingList = lazy(async () => ({ default: (await import('./SewingList.tsx')).SewingList }))

/** Problems for which a turn is sought that mends them. */
const MENDED = 3

export function SeamCheck() {
  const { report, trouble } = useFindings()
  const [care, setCare] = useState(false)
  useSought()
  return (
    <section aria-labelledby="findings-title" className="findings" onPointerLeave={leave}>
      <h2 id="findings-title">{t('Findings')}</h2>
      {report === null ? <p className="trouble">{tell(trouble)}</p> : <All report={report} care={care} setCare={setCare} />}
    </section>
  )
}

/** The hand has left the list: the board no longer points, unless the focus is still here. */
function leave({ currentTarget }: { readonly currentTarget: HTMLElement }): void {
  if (!currentTarget.contains(document.activeElement)) setView({ finding: null })
}

function All({ report, care, setCare }: { readonly report: Findings; readonly care: boolean; readonly setCare: (care: boolean) => void }) {
  return (
    <>
      <Size report={report} />
      <p className="sum" data-testid="sum" id="findings-sum" tabIndex={-1}>
        {hasVerdict(report) && <VerdictMark verdict={worstVerdict(report)} />}
        {summaryText(report)}
      </p>
      {report.meetings.length > 0 && (
        <label className="tick">
          <input type="checkbox" checked={care} onChange={(event) => setCare(event.target.checked)} />
          {t('Only what needs care')}
        </label>
      )}
      {report.patches.length > 0 && <Problems report={report} />}
      {VERDICTS.filter((verdict) => !care || verdict !== 'nests').map((verdict) => (
        <Meetings key={verdict} verdict={verdict} report={report} />
      ))}
      {report.joins.length > 0 && !care && <p className="hint">{tell(report.pressing.proof.replaceAll('j:', ''))}</p>}
      <Crooked report={report} />
      <Thickest report={report} />
      {!care && <Order report={report} />}
    </>
  )
}

function Size({ report }: { readonly report: Findings }) {
  const { unit } = report.measure
  const say = ([w, h]: readonly [number, number]): string => `${sayLength(w, unit)} × ${sayLength(h, unit)} ${unit}`
  const { finished, unfinished, withBorders } = report.block
  return (
    <dl className="size">
      <dt>{t('Finished')}</dt>
      <dd>{say(finished)}</dd>
      <dt>{t('Unfinished')}</dt>
      <dd>{say(unfinished)}</dd>
      {withBorders[0] !== unfinished[0] && (
        <>
          <dt>{t('With borders')}</dt>
          <dd>{say(withBorders)}</dd>
        </>
      )}
    </dl>
  )
}

/** What a press on the board asked for is brought into sight, and the focus goes to it. */
function useSought(): void {
  const sought = useStore(({ view }) => view.sought)
  useEffect(() => {
    if (sought === null) return
    const frame = requestAnimationFrame(() => {
      document.getElementById(idOf(sought))?.focus()
      setView({ sought: null })
    })
    return () => cancelAnimationFrame(frame)
  }, [sought])
}

const idOf = (place: string): string => `finding-${place.replace(' ', '-')}`

/** A finding that shows its place while it is pointed at. */
function Pointing({ place, children }: { readonly place: string; readonly children: ReactNode }) {
  const show = (): void => setView({ finding: place })
  return (
    <button
      type="button"
      className="plain"
      id={idOf(place)}
      onClick={() => {
        show()
        backToCloth()
      }}
      onPointerEnter={show}
      onFocus={show}
    >
      {children}
    </button>
  )
}

function Problems({ report }: { readonly report: Findings }) {
  const all = report.problems.map((problem, index) => ({ problem, index }))
  if (all.length === 0) return null
  return (
    <ul className="problems">
      <PagedList
        items={all}
        upTo={-1}
        render={({ problem: { code, message, at, area, units }, index }) => (
          <li key={index} className={ERRORS.has(code) ? 'mend' : 'know'}>
            <Pointing place={`problem ${index}`}>
              <ProblemMark mend={ERRORS.has(code)} />
              {tell(message)} <small>{placeWords(at)}</small>
            </Pointing>
            {area !== undefined && index < MENDED && <LayoutRepairs units={units} report={report} />}
          </li>
        )}
      />
    </ul>
  )
}

/** A bar across a square on point: it cannot be sewn like that. A ring: good to know. */
function ProblemMark({ mend }: { readonly mend: boolean }) {
  return (
    <svg viewBox="-9 -9 18 18" width="16" height="16" role="img" aria-label={mend ? t('To mend:') : t('To know:')}>
      {mend ? (
        <path d="M0 -8L8 0L0 8L-8 0ZM-4 -1.2H4V1.2H-4Z" fill="currentColor" fillRule="evenodd" />
      ) : (
        <path d="M0 -7A7 7 0 1 1 -0.01 -7ZM-1.2 -1.5V4.5M-1.2 -4.2V-4" fill="none" stroke="currentColor" strokeWidth="1.8" />
      )}
    </svg>
  )
}

/** Where a maker looks for it: cells from the top left corner. */
const placeWords = ([x, y]: ReportPoint): string => t('{x} across, {y} down', { x: rounded(x), y: rounded(y) })
const rounded = (value: number | string): number | string => (typeof value === 'number' ? Math.round(value * 1000) / 1000 : value)

const COUNTED: Readonly<Record<Verdict, string>> = {
  nests: said('{count} × nests'),
  clashes: said('{count} × clashes'),
  open: said('{count} × open'),
  pin: said('{count} × pin'),
  tip: said('{count} × tip'),
}

function Meetings({ verdict, report }: { readonly verdict: Verdict; readonly report: Findings }) {
  const pointed = useStore(({ view }) => view.finding)
  const sought = useStore(({ view }) => view.sought)
  const [opened, setOpened] = useState(verdict === 'clashes')
  const own = report.meetings.flatMap((meeting, index) => (meeting.verdict === verdict ? [{ meeting, index }] : []))
  const wanted = own.findIndex(({ index }) => sought === `meeting ${index}`)
  useEffect(() => {
    if (wanted >= 0) setOpened(true)
  }, [wanted])
  if (own.length === 0) return null
  return (
    <details open={opened || wanted >= 0} className="verdict" onToggle={(event) => setOpened(event.currentTarget.open)}>
      <summary>
        <VerdictMark verdict={verdict} />
        {t(COUNTED[verdict], { count: own.length })}
      </summary>
      <p>{t(MARKS[verdict].sentence)}</p>
      {(opened || wanted >= 0) && (
        <ol>
          <PagedList
            items={own}
            upTo={wanted}
            render={({ meeting, index }) => (
              <One key={index} meeting={meeting} report={report} place={`meeting ${index}`} pointed={pointed === `meeting ${index}`} />
            )}
          />
        </ol>
      )}
    </details>
  )
}

interface Finding {
  readonly meeting: Meeting
  readonly report: Findings
  readonly place: string
  readonly pointed: boolean
}

function One({ meeting, report, place, pointed }: Finding) {
  const seams = meeting.seams.map((id) => numberOf(report, id))
  return (
    <li className={pointed ? 'pointed' : ''}>
      <Pointing place={place}>
        {t('Seams {some} and {last}, across seam {join}', {
          some: seams.slice(0, -1).join(', '),
          last: seams.at(-1) ?? '',
          join: numberOf(report, meeting.join),
        })}{' '}
        <small>{placeWords(meeting.at)}</small>
      </Pointing>
      {meeting.verdict === 'clashes' && <Reasons meeting={meeting} report={report} />}
      {meeting.fix.length > 0 && <Fixes fixes={meeting.fix} report={report} />}
      {/* Layers are counted a moment later: below the fixes they push nothing away from under the hand. */}
      {meeting.layers !== undefined && <p className="hint">{layersInWords(meeting.layers)}</p>}
    </li>
  )
}

const numberOf = (report: Findings, id: string): number => Number(id.split(':')[1] ?? report.joins.findIndex((join) => join.id === id) + 1)

/** Why each of the two seams lies as it does. */
function Reasons({ meeting, report }: { readonly meeting: Meeting; readonly report: Findings }) {
  return (
    <ul className="reasons">
      {meeting.seams.map((id) => (
        <li key={id}>
          {t('Seam {number}: {why}', { number: numberOf(report, id), why: tell(report.joins[numberOf(report, id) - 1]?.press.why ?? '') })}
        </li>
      ))}
    </ul>
  )
}

function layersInWords({ now, nested, fanned }: NonNullable<Meeting['layers']>): string {
  if (fanned !== undefined) return t('{now} layers lie here; fanned round the point there are {fanned}.', { now, fanned })
  if (nested === undefined) return t('{now} layers lie here.', { now })
  const less = now - nested
  return less > 0
    ? t('{now} layers lie here; nested there would be {nested}, {less} fewer.', { now, nested, less })
    : t('{now} layers lie here, and no fewer if it nested.', { now })
}

/** What is not a straight seam, and whether fewer could do. */
function Crooked({ report: { crooked } }: { readonly report: Findings }) {
  const { setIn, partial, proved } = crooked
  if (setIn + partial === 0) return null
  const parts = [
    ...(setIn > 0 ? [tn(setIn, 'one set-in seam', '{n} set-in seams')] : []),
    ...(partial > 0 ? [tn(partial, 'one partial seam', '{n} partial seams')] : []),
  ]
  const seams = parts.length === 2 ? t('{one} and {other}', { one: parts[0] as string, other: parts[1] as string }) : (parts[0] as string)
  return (
    <p className="hint">
      {t('This block needs {seams}.', { seams })}{' '}
      {proved ? t('No way of joining it needs fewer.') : t('That is the fewest found; not every way was tried.')}
    </p>
  )
}

function Thickest({ report: { bulk } }: { readonly report: Findings }) {
  if (bulk === null) return null
  return (
    <p className="hint">
      <button
        type="button"
        className="plain"
        onClick={() => setView({ finding: 'bulk', mode: 'layers' })}
        onPointerEnter={() => setView({ finding: 'bulk' })}
        onFocus={() => setView({ finding: 'bulk' })}
      >
        {tn(bulk.most, 'Thickest spot: one layer of cloth', 'Thickest spot: {n} layers of cloth')}
      </button>
    </p>
  )
}

const ORDERS: Readonly<Record<Findings['order'], string>> = {
  rows: said('Order of sewing: by rows'),
  columns: said('Order of sewing: by columns'),
  sections: said('Order of sewing: by sections'),
}

function Order({ report }: { readonly report: Findings }) {
  const [opened, setOpened] = useState(false)
  const step = useStore(({ view }) => (view.mode === 'order' ? view.step : null))
  if (report.joins.length === 0) return null
  return (
    <details className="order" open={opened} onToggle={(event) => setOpened(event.currentTarget.open)}>
      <summary>{t(ORDERS[report.order])}</summary>
      {opened && (
        <LazyPanel>
          <SewingList report={report} step={step} />
        </LazyPanel>
      )}
    </details>
  )
}
