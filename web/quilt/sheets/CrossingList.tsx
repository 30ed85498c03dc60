/** The crossings that don't nest, gathered by the two places beside them; an opened one is ringed on the quilt and says what would fix it. */
import { pressPlaces, type Quilt, type QuiltEdit, type QuiltReport, setQuiltOrder, takeTurns, type Turn } from '../../../geometry/index.ts'
import { translateAny } from '../../words/translateAny.ts'
import { t, tn } from '../../words/words.ts'
import { act, cellName } from '../quiltActions.ts'
import { setQuiltView, useQuiltView } from '../quiltView.ts'

/** Pairs of places that are listed at most. */
const MOST_LISTED = 60

interface Props {
  readonly quilt: Quilt
  readonly report: QuiltReport
}
type Meeting = QuiltReport['meetings'][number]

interface Pair {
  readonly words: string
  /** Numbers of its crossings among the report's. */
  readonly meetings: readonly number[]
}

export function CrossingList({ quilt, report }: Props) {
  const pointed = useQuiltView((view) => view.pointed)
  const pairs = pairsOf(quilt, report)
  if (pairs.length === 0) return null
  return (
    <>
      <h3>{t('Crossings that don’t nest')}</h3>
      <ol className="crossings-left">
        {pairs.slice(0, MOST_LISTED).map(({ words, meetings }) => {
          const at = pointed === null ? -1 : meetings.indexOf(pointed)
          return (
            <li key={words}>
              <button
                type="button"
                className="plain"
                aria-expanded={at >= 0}
                onClick={() => setQuiltView({ pointed: meetings[at + 1] ?? null, marks: true })}
              >
                {capitalise(tn(meetings.length, '{words}', '{words} ({n} times)', { words }))}
              </button>
              {at >= 0 && <MeetingFixes quilt={quilt} meeting={report.meetings[meetings[at] as number] as Meeting} />}
            </li>
          )
        })}
      </ol>
      {pairs.length > MOST_LISTED && <p className="hint">{t('And {n} more, marked on the quilt.', { n: pairs.length - MOST_LISTED })}</p>}
    </>
  )
}

const capitalise = (text: string): string => text.charAt(0).toUpperCase() + text.slice(1)

function pairsOf(quilt: Quilt, report: QuiltReport): Pair[] {
  const pairs = new Map<string, number[]>()
  report.meetings.forEach(({ verdict, seams }, index) => {
    if (verdict !== 'clashes') return
    const words = pairWords(quilt, seams)
    pairs.set(words, [...(pairs.get(words) ?? []), index])
  })
  return [...pairs].map(([words, meetings]) => ({ words, meetings }))
}

/** The two places whose seams meet; a seam between blocks is called so. */
function pairWords(quilt: Quilt, seams: readonly string[]): string {
  const names = seams.map((seam) => {
    const place = quilt.places.find(({ id }) => id === seam.split('/')[0])
    return place === undefined ? t('a seam between blocks') : cellName(place.at)
  })
  const [one, other] = [...new Set(names)]
  return other === undefined ? (one ?? '') : t('{one}, and {other}', { one: one ?? '', other })
}

/** What takes this crossing's trouble away and makes no other. */
function MeetingFixes({ quilt, meeting }: { readonly quilt: Quilt; readonly meeting: Meeting }) {
  const fixes = meeting.fix.flatMap((fix) => {
    const edit = editFor(quilt, fix)
    return edit === null ? [] : [{ words: translateAny(fix.message), edit }]
  })
  if (fixes.length === 0) return <p className="hint">{t('No single change takes this one away without making another.')}</p>
  return (
    <div className="buttons">
      {fixes.map(({ words, edit }) => (
        <button key={words} type="button" onClick={() => act(edit, words)}>
          {words}
        </button>
      ))}
    </div>
  )
}

/** Null where the fix is one of a seam inside a block. */
function editFor(quilt: Quilt, { do: what, what: id, turn }: Meeting['fix'][number]): QuiltEdit | null {
  if (what === 'order') return setQuiltOrder(id as 'rows')
  const place = quilt.places.find((one) => one.id === id)
  if (place === undefined) return null
  if (what === 'turn') return turn === undefined ? null : takeTurns([{ id, turn: turn as Turn, press: place.press ?? 'planned' }])
  return pressPlaces([id], place.press === 'opposite' ? 'planned' : 'opposite')
}
