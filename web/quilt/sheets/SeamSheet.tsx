/** The seam check of a quilt: crossings between blocks, what keeps it from being sewn, and how to press or turn for the fewest that don't nest. */
import { useEffect, useState } from 'react'
import { type Quilt, type QuiltReport, takeTurns, type Turn } from '../../../geometry/index.ts'
import { setView } from '../../document/store.ts'
import { MARKS, VERDICTS } from '../../drawing/marks.ts'
import { translateAny } from '../../words/translateAny.ts'
import { t, tn } from '../../words/words.ts'
import { quiltWorker } from '../../workers/clients.ts'
import { useClient } from '../../workers/useWorker.ts'
import { act, cellName } from '../quiltActions.ts'
import { anchorOf, setQuiltView } from '../quiltView.ts'
import { useQuiltReport } from '../useQuiltReport.ts'
import { CrossingList } from './CrossingList.tsx'
import { EveryOtherBlock } from './EveryOtherBlock.tsx'

export function SeamSheet({ quilt }: { readonly quilt: Quilt }) {
  const { report, of, working } = useQuiltReport()
  if (report === null) return <p className="hint">{t('Working…')}</p>
  const current = of === quilt
  return (
    <div className={working ? 'stale' : ''}>
      {report.problems.length > 0 && <Problems quilt={quilt} report={report} />}
      <section aria-labelledby="crossings-title">
        <h2 id="crossings-title">{t('Between blocks')}</h2>
        <p className="sum">{translateAny(report.pressing.proof)}</p>
        <Verdicts report={report} />
        {current && report.pressing.between > 0 && <EveryOtherBlock quilt={quilt} report={report} />}
        {current && report.pressing.between > 0 && <FewestClashes quilt={quilt} report={report} />}
        <CrossingList quilt={quilt} report={report} />
      </section>
      {report.pressing.inside > 0 && (
        <p className="hint">
          {tn(
            report.pressing.inside,
            'Inside the blocks one crossing doesn’t nest. Open the block to see it.',
            'Inside the blocks {n} crossings don’t nest. Open the blocks to see them.',
          )}
        </p>
      )}
    </div>
  )
}

interface Props {
  readonly quilt: Quilt
  readonly report: QuiltReport
}

function Problems({ quilt, report }: Props) {
  return (
    <section aria-labelledby="problems-title">
      <h2 id="problems-title">{t('To look at')}</h2>
      <ul className="crossings-left">
        {report.problems.map(({ code, at, message, units }) => {
          const cell: readonly [number, number] = [Math.floor(Number(at[0])), Math.floor(Number(at[1]))]
          return (
            <li key={`${code} ${at} ${units.join()}`}>
              <button type="button" className="plain" onClick={() => setQuiltView({ selected: [anchorOf(quilt, cell)], cursor: cell })}>
                {cellName(cell)}: {translateAny(message)}
              </button>
            </li>
          )
        })}
      </ul>
    </section>
  )
}

/** How many crossings of each verdict there are. */
function Verdicts({ report }: { readonly report: QuiltReport }) {
  const counts = VERDICTS.map((verdict) => [verdict, report.meetings.filter((meeting) => meeting.verdict === verdict).length] as const)
  return (
    <ul className="verdicts">
      {counts
        .filter(([, count]) => count > 0)
        .map(([verdict, count]) => (
          <li key={verdict}>
            <svg viewBox="-9 -9 18 18" width="16" height="16" aria-hidden="true">
              <path d={MARKS[verdict].path} fill={MARKS[verdict].fill} fillRule="evenodd" />
            </svg>
            {count} × {verdictName(verdict)}
          </li>
        ))}
    </ul>
  )
}

const VERDICT_NAMES = {
  clashes: () => t('doesn’t nest'),
  nests: () => t('nests'),
  pin: () => t('match with a pin'),
  tip: () => t('a point to protect'),
  open: () => t('pressed open'),
} as const
const verdictName = (verdict: keyof typeof VERDICT_NAMES): string => VERDICT_NAMES[verdict]()

/** Turns and pressings are chosen in a worker; the outcome is shown first, and taken with a press. */
function FewestClashes({ quilt, report }: Props) {
  const client = useClient(quiltWorker)
  const [turns, setTurns] = useState<'none' | 'half' | 'quarter'>('quarter')
  const [busy, setBusy] = useState(false)
  const [found, setFound] = useState<Pick<QuiltReport, 'pressing' | 'places'> | null>(null)
  // What was found for another state of the quilt says nothing of this one.
  // biome-ignore lint/correctness/useExhaustiveDependencies: forgotten with each state of the quilt
  useEffect(() => setFound(null), [quilt])
  const search = async (): Promise<void> => {
    setBusy(true)
    const reply = await client.request('nesting', { ...quilt, free: { turn: turns, press: true } })
    setBusy(false)
    if (reply.type === 'answer') setFound(reply.value)
    else if (reply.type === 'failed') setView({ notice: t('That couldn’t be worked out.') })
  }
  const take = (): void => {
    if (found === null) return
    const places = found.places.map(({ id, turn, press }) => ({ id, turn: turn as Turn, press: press as 'planned' | 'opposite' }))
    act(takeTurns(places), t('Turned and pressed for the fewest that don’t nest.'))
  }
  return (
    <div className="fewest">
      <label>
        {t('Blocks may be turned')}
        <select value={turns} onChange={(event) => setTurns(event.target.value as typeof turns)}>
          <option value="none">{t('not at all')}</option>
          <option value="half">{t('half round')}</option>
          <option value="quarter">{t('any way')}</option>
        </select>
      </label>
      <div className="buttons">
        <button type="button" className="main" aria-disabled={busy} onClick={() => !busy && void search()}>
          {busy ? t('Working…') : t('Turn and press for the fewest that don’t nest')}
        </button>
      </div>
      {found !== null && (
        <div role="status">
          <p>{changeWords(quilt, report, found)}</p>
          <p className="hint">{translateAny(found.pressing.proof)}</p>
          {found.pressing.between < report.pressing.between && (
            <div className="buttons">
              <button type="button" onClick={take}>
                {t('Do it')}
              </button>
            </div>
          )}
        </div>
      )}
    </div>
  )
}

function changeWords(quilt: Quilt, report: QuiltReport, found: Pick<QuiltReport, 'pressing' | 'places'>): string {
  const changed = found.places.filter(({ id, turn, press }) => {
    const place = quilt.places.find((one) => one.id === id)
    return (place?.turn ?? 0) !== turn || (place?.press ?? 'planned') !== press
  }).length
  if (found.pressing.between >= report.pressing.between) return t('No turn or pressing does better than this.')
  return tn(changed, 'Change one block: {after} instead of {before} don’t nest.', 'Change {n} blocks: {after} instead of {before} don’t nest.', {
    before: report.pressing.between,
    after: found.pressing.between,
  })
}
