/** One line above every sheet: how far the quilt is laid out, else how its blocks nest. A press opens the seam check. */
import { isError, placeSize, type Quilt, type QuiltReport } from '../../../geometry/index.ts'
import { MARKS } from '../../drawing/marks.ts'
import { t, tn } from '../../words/words.ts'
import { setQuiltView } from '../quiltView.ts'
import { useQuiltReport } from '../useQuiltReport.ts'

export function QuiltSummary({ quilt }: { readonly quilt: Quilt }) {
  const { report, of, working, trouble } = useQuiltReport()
  const line =
    report === null
      ? { words: trouble === null ? t('Working…') : t('This quilt couldn’t be worked out.'), verdict: null }
      : summaryOf(of ?? quilt, report)
  const mark = line.verdict === null ? null : MARKS[line.verdict]
  return (
    <button type="button" className="check-summary" onClick={() => setQuiltView({ sheet: 'check' })}>
      {mark !== null && (
        <svg viewBox="-9 -9 18 18" width="18" height="18" aria-hidden="true">
          <path d={mark.path} fill={mark.fill} fillRule="evenodd" />
        </svg>
      )}
      <span className={working ? 'stale' : ''}>{line.words}</span>
      {working && report !== null && <span className="working">{t('Working…')}</span>}
    </button>
  )
}

interface Line {
  readonly words: string
  readonly verdict: 'nests' | 'clashes' | null
}

/** Whether each square of the quilt's grid is filled. */
export const isLaidOut = (quilt: Quilt): boolean => filledCells(quilt) >= quilt.grid.columns * quilt.grid.rows

const filledCells = (quilt: Quilt): number =>
  quilt.places.reduce((all, place) => {
    const [wide, high] = placeSize(place)
    return all + wide * high
  }, 0)

function summaryOf(quilt: Quilt, report: QuiltReport): Line {
  const cells = quilt.grid.columns * quilt.grid.rows
  const filled = filledCells(quilt)
  if (filled < cells) return { words: t('{n} of {m} positions filled', { n: filled, m: cells }), verdict: null }
  const errors = report.problems.filter(isError)
  if (errors.length > 0) return { words: tn(errors.length, 'One position needs a look', '{n} positions need a look'), verdict: 'clashes' }
  if (report.gap > 0) return { words: t('No seams of two blocks meet'), verdict: 'nests' }
  const { between } = report.pressing
  return between === 0
    ? { words: t('All crossings between blocks nest'), verdict: 'nests' }
    : { words: tn(between, 'One crossing between blocks doesn’t nest', '{n} crossings between blocks don’t nest'), verdict: 'clashes' }
}
