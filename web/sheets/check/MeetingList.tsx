/** The places where seams meet, of one verdict: which seams, where, why, how many layers lie there, and what would help. */
import { lazy, useEffect, useState } from 'react'
import type { Findings, Meeting, Verdict } from '../../../geometry/index.ts'
import { LazyPanel } from '../../controls/LazyPanel.tsx'
import { PagedList } from '../../controls/PagedList.tsx'
import { useStore } from '../../document/store.ts'
import { MARKS } from '../../drawing/marks.ts'
import { t, tn, translate } from '../../words/words.ts'
import { VerdictMark } from './CheckSummary.tsx'
import { FindingButton, positionWords } from './FindingButton.tsx'

// Loaded when a fix is first offered.
const Fixes = lazy(async () => ({ default: (await import('./Fixes.tsx')).Fixes }))

/** How many crossings have a verdict. */
const COUNTS: Readonly<Record<Verdict, (count: number) => string>> = {
  nests: (count) => tn(count, '1 crossing nests', '{n} crossings nest'),
  clashes: (count) => tn(count, '1 crossing doesn’t nest', '{n} crossings don’t nest'),
  open: (count) => tn(count, '1 crossing pressed open', '{n} crossings pressed open'),
  pin: (count) => tn(count, '1 crossing to pin', '{n} crossings to pin'),
  tip: (count) => tn(count, '1 point to protect', '{n} points to protect'),
}

export function MeetingList({ verdict, report }: { readonly verdict: Verdict; readonly report: Findings }) {
  const pointed = useStore(({ view }) => view.finding)
  const sought = useStore(({ view }) => view.requestedFinding)
  const [open, setOpen] = useState(verdict === 'clashes')
  const meetings = report.meetings.flatMap((meeting, index) => (meeting.verdict === verdict ? [{ meeting, index }] : []))
  /** The place in this list of the meeting that a press on the board asked for. */
  const wanted = meetings.findIndex(({ index }) => sought === `meeting ${index}`)
  useEffect(() => {
    if (wanted >= 0) setOpen(true)
  }, [wanted])
  if (meetings.length === 0) return null
  return (
    <details open={open || wanted >= 0} className="verdict" onToggle={(event) => setOpen(event.currentTarget.open)}>
      <summary>
        <VerdictMark verdict={verdict} />
        {COUNTS[verdict](meetings.length)}
      </summary>
      <p>{t(MARKS[verdict].sentence)}</p>
      {(open || wanted >= 0) && (
        <ol>
          <PagedList
            items={meetings}
            upTo={wanted}
            render={({ meeting, index }) => (
              <MeetingItem key={index} meeting={meeting} report={report} finding={`meeting ${index}`} pointed={pointed === `meeting ${index}`} />
            )}
          />
        </ol>
      )}
    </details>
  )
}

interface ItemProps {
  readonly meeting: Meeting
  readonly report: Findings
  readonly finding: string
  readonly pointed: boolean
}

function MeetingItem({ meeting, report, finding, pointed }: ItemProps) {
  const seams = meeting.seams.map((id) => seamNumber(report, id))
  return (
    <li className={pointed ? 'pointed' : ''}>
      <FindingButton finding={finding}>
        {t('Seams {some} and {last}, at seam {join}', {
          some: seams.slice(0, -1).join(', '),
          last: seams.at(-1) ?? '',
          join: seamNumber(report, meeting.join),
        })}{' '}
        <small>{positionWords(meeting.at)}</small>
      </FindingButton>
      {meeting.verdict === 'clashes' && <Reasons meeting={meeting} report={report} />}
      {meeting.fix.length > 0 && (
        <LazyPanel>
          <Fixes fixes={meeting.fix} report={report} />
        </LazyPanel>
      )}
      {/* Layers are counted a moment later. Below the fixes, they push nothing from under the pointer. */}
      {meeting.layers !== undefined && <p className="hint">{layerWords(meeting.layers)}</p>}
    </li>
  )
}

/** A seam is called by its number in sewing order; a seam inside a unit by the number in its id. */
const seamNumber = (report: Findings, id: string): number => Number(id.split(':')[1] ?? report.joins.findIndex((join) => join.id === id) + 1)

/** Why each of the two seams is pressed the way it is. */
function Reasons({ meeting, report }: { readonly meeting: Meeting; readonly report: Findings }) {
  return (
    <ul className="reasons">
      {meeting.seams.map((id) => (
        <li key={id}>{seamReason(report, seamNumber(report, id))}</li>
      ))}
    </ul>
  )
}

function seamReason({ joins }: Findings, number: number): string {
  const join = joins[number - 1]
  return t('Seam {number}: {why}', { number, why: join === undefined ? '' : translate(join.press.why) })
}

function layerWords({ now, nested, fanned }: NonNullable<Meeting['layers']>): string {
  if (fanned !== undefined) return t('{now} layers here; {fanned} if you fan the seams around the point.', { now, fanned })
  if (nested === undefined) return t('{now} layers here.', { now })
  return now > nested
    ? t('{now} layers here; {nested} if it nested.', { now, nested })
    : t('{now} layers here, and just as many if it nested.', { now })
}
