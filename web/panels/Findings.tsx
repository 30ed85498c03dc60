/** The findings: size, what cannot be sewn as it lies, every meeting of seams with its reason and fixes, and the order of sewing. */
import { type Fix, type Join, type Meeting, type Findings as Said, sayLength, type Verdict } from '../../geometry/index.ts'
import { MARKS, VERDICTS } from '../canvas/marks.ts'
import { edit, look, useStore, useTold } from '../state/store.ts'
import { editOf } from './fixes.ts'
import { STAGE_NAMES } from './words.ts'

export function Findings() {
  const { report, trouble } = useTold()
  if (report === null) {
    return (
      <section aria-labelledby="findings-title">
        <h2 id="findings-title">Findings</h2>
        <p className="trouble">{trouble}</p>
      </section>
    )
  }
  return (
    <section aria-labelledby="findings-title">
      <h2 id="findings-title">Findings</h2>
      <Size report={report} />
      <p className="sum" data-testid="sum">
        {summary(report)}
      </p>
      {report.problems.length > 0 && (
        <ul className="problems">
          {report.problems.map(({ code, message, at }, index) => (
            <li key={`${code} ${at.join()} ${message}`}>
              <button
                type="button"
                className="plain"
                onClick={() => look({ finding: `problem ${index}` })}
                onPointerEnter={() => look({ finding: `problem ${index}` })}
                onFocus={() => look({ finding: `problem ${index}` })}
              >
                {message}
              </button>
            </li>
          ))}
        </ul>
      )}
      {VERDICTS.map((verdict) => (
        <Meetings key={verdict} verdict={verdict} report={report} />
      ))}
      {report.joins.length > 0 && <p className="hint">{report.pressing.proof.replaceAll('j:', '')}</p>}
      <Crooked report={report} />
      <Thickest report={report} />
      <Order report={report} />
    </section>
  )
}

function Size({ report }: { readonly report: Said }) {
  const { unit } = report.measure
  const say = ([w, h]: readonly [number, number]): string => `${sayLength(w, unit)} × ${sayLength(h, unit)} ${unit}`
  const { finished, unfinished, withBorders } = report.block
  return (
    <dl className="size">
      <dt>Finished</dt>
      <dd>{say(finished)}</dd>
      <dt>Unfinished</dt>
      <dd>{say(unfinished)}</dd>
      {withBorders[0] !== unfinished[0] && (
        <>
          <dt>With borders</dt>
          <dd>{say(withBorders)}</dd>
        </>
      )}
    </dl>
  )
}

export function summary({ meetings, joins, problems, patches }: Said): string {
  if (patches.length === 0) return 'Nothing is laid yet: drag a unit onto the board.'
  if (joins.length === 0 && problems.length > 0) return 'Not sewn yet: mend the layout first.'
  const count = (verdict: Verdict): number => meetings.filter((meeting) => meeting.verdict === verdict).length
  const clashes = count('clashes')
  const nests = count('nests')
  if (clashes === 0)
    return nests === 0
      ? 'No seams have to nest.'
      : nests === 1
        ? 'The one meeting of seams nests.'
        : nests === 2
          ? 'Both meetings of seams nest.'
          : `All ${nests} meetings of seams nest.`
  return `${clashes} of ${clashes + nests} meetings ${clashes === 1 ? 'clashes' : 'clash'}.`
}

function Meetings({ verdict, report }: { readonly verdict: Verdict; readonly report: Said }) {
  const pointed = useStore(({ view }) => view.finding)
  const own = report.meetings.flatMap((meeting, index) => (meeting.verdict === verdict ? [{ meeting, index }] : []))
  if (own.length === 0) return null
  const { path, fill, label, sentence } = MARKS[verdict]
  const open = verdict === 'clashes' || own.some(({ index }) => pointed === `meeting ${index}`)
  return (
    <details open={open} className="verdict">
      <summary>
        <svg viewBox="-9 -9 18 18" width="18" height="18" aria-hidden="true">
          <path d={path} fill={fill} fillRule="evenodd" />
        </svg>
        {own.length} × {label}
      </summary>
      <p>{sentence}</p>
      <ol>
        {own.map(({ meeting, index }) => (
          <One
            key={`${meeting.join} ${meeting.seams.join()}`}
            meeting={meeting}
            report={report}
            place={`meeting ${index}`}
            pointed={pointed === `meeting ${index}`}
          />
        ))}
      </ol>
    </details>
  )
}

const numberOf = (report: Said, id: string): number => report.joins.findIndex((join) => join.id === id) + 1

function One({
  meeting,
  report,
  place,
  pointed,
}: {
  readonly meeting: Meeting
  readonly report: Said
  readonly place: string
  readonly pointed: boolean
}) {
  const seams = meeting.seams.map((id) => numberOf(report, id))
  return (
    <li className={pointed ? 'pointed' : ''}>
      <button
        type="button"
        className="plain"
        onClick={() => look({ finding: place })}
        onPointerEnter={() => look({ finding: place })}
        onFocus={() => look({ finding: place })}
      >
        Seams {seams.slice(0, -1).join(', ')} and {seams.at(-1)}, across seam {numberOf(report, meeting.join)}
      </button>
      {meeting.fix.length > 0 && (
        <div className="buttons">
          {meeting.fix.map((fix) => (
            <button key={`${fix.do} ${fix.what}`} type="button" onClick={() => take(fix, report)}>
              {fixWords(fix, report)}
            </button>
          ))}
        </div>
      )}
      {meeting.layers !== undefined && <p className="hint">{layersInWords(meeting.layers)}</p>}
    </li>
  )
}

function layersInWords({ now, nested, fanned }: NonNullable<Meeting['layers']>): string {
  if (fanned !== undefined) return `${now} layers lie here; fanned round the point there are ${fanned}.`
  if (nested === undefined) return `${now} layers lie here.`
  const less = now - nested
  return less > 0 ? `${now} layers lie here; nested there would be ${nested}, ${less} fewer.` : `${now} layers lie here, and no fewer if it nested.`
}

/** What is not a straight seam, and whether fewer could do. */
function Crooked({ report: { crooked } }: { readonly report: Said }) {
  const { setIn, partial, proved } = crooked
  if (setIn + partial === 0) return null
  const parts = [
    ...(setIn > 0 ? [setIn === 1 ? 'one set-in seam' : `${setIn} set-in seams`] : []),
    ...(partial > 0 ? [partial === 1 ? 'one partial seam' : `${partial} partial seams`] : []),
  ]
  return (
    <p className="hint">
      This block needs {parts.join(' and ')}. {proved ? 'No way of joining it needs fewer.' : 'That is the fewest found; not every way was tried.'}
    </p>
  )
}

function Thickest({ report: { bulk } }: { readonly report: Said }) {
  if (bulk === null) return null
  return (
    <p className="hint">
      <button
        type="button"
        className="plain"
        onClick={() => look({ finding: 'bulk', look: 'layers' })}
        onPointerEnter={() => look({ finding: 'bulk' })}
        onFocus={() => look({ finding: 'bulk' })}
      >
        Thickest spot: {bulk.most} {bulk.most === 1 ? 'layer' : 'layers'} of cloth
      </button>
    </p>
  )
}

function fixWords(fix: Fix, report: Said): string {
  const number = numberOf(report, fix.what)
  if (fix.do === 'open') return number > 0 ? `Press seam ${number} open` : `Press the seams of ${fix.what} open`
  if (fix.do === 'order') return `Join by ${fix.what}`
  if (fix.do === 'turn') return `Turn ${fix.what}; the picture stays`
  return number > 0 ? `Press seam ${number} the other way` : `Lift the rule of ${fix.what}`
}

function take(fix: Fix, report: Said): void {
  edit(editOf(fix, report))
  look({ notice: `Done: ${fixWords(fix, report)}.` })
}

function Order({ report }: { readonly report: Said }) {
  if (report.joins.length === 0) return null
  return (
    <details className="order">
      <summary>Order of sewing: {report.order}</summary>
      <ol>
        {report.joins.map((join, index) => (
          <li key={join.id}>
            <button
              type="button"
              className="plain"
              onClick={() => look({ finding: `join ${index}` })}
              onFocus={() => look({ finding: `join ${index}` })}
              onPointerEnter={() => look({ finding: `join ${index}` })}
            >
              {inWords(join, report)}
            </button>
          </li>
        ))}
      </ol>
    </details>
  )
}

function inWords({ stage, kind, press, unfinished }: Join, { measure }: Said): string {
  const how = kind === 'straight' ? '' : kind === 'partial' ? ', partial seam' : ', set in'
  const way = press.toward === 'open' ? 'press open' : 'press as the wedge shows'
  const size =
    unfinished === null ? '' : `; then ${sayLength(unfinished[0], measure.unit)} × ${sayLength(unfinished[1], measure.unit)} ${measure.unit}`
  return `${STAGE_NAMES[stage]}${how}: ${way}${size}. ${press.why}`
}
