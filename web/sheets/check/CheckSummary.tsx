/** The seam check in one line, with the mark of what matters most. Pressing it opens the seam check. */
import type { Findings, Verdict } from '../../../geometry/index.ts'
import { MARKS } from '../../drawing/marks.ts'
import { isUnfinished, squaresFilled } from '../../document/progress.ts'
import { getState, setView, useStore, useFindings } from '../../document/store.ts'
import { t, tn, translate } from '../../words/words.ts'

export function CheckSummary() {
  const { report, trouble } = useFindings()
  const open = useStore(({ view }) => view.sheet)
  if (open === 'findings') return null
  return (
    <button type="button" className="check-summary" onClick={openSeamCheck}>
      {report !== null && hasVerdict(report) && <VerdictMark verdict={worstVerdict(report)} />}
      {report === null ? translate(trouble) : summaryText(report)}
    </button>
  )
}

/** Whether there is anything to judge: a grid that is not full yet is neither good nor bad. */
export const hasVerdict = (report: Findings): boolean =>
  report.patches.length > 0 && !isUnfinished(report) && (report.joins.length > 0 || report.problems.length > 0)

/** The line disappears when the seam check opens, so the focus goes to the summary there. */
function openSeamCheck(): void {
  setView({ sheet: 'findings' })
  requestAnimationFrame(() => document.getElementById('findings-sum')?.focus())
}

export function VerdictMark({ verdict }: { readonly verdict: Verdict }) {
  const { path, fill } = MARKS[verdict]
  return (
    <svg viewBox="-9 -9 18 18" width="18" height="18" aria-hidden="true">
      {/* A pale outline, as on the fabric, so that the mark shows on a dark page too. */}
      <path d={path} fill={fill} fillRule="evenodd" stroke="#fffaf2" strokeWidth="1.8" paintOrder="stroke" />
    </svg>
  )
}

export function worstVerdict({ problems, meetings, joins }: Findings): Verdict {
  if (joins.length === 0 && problems.length > 0) return 'clashes'
  return meetings.some(({ verdict }) => verdict === 'clashes') ? 'clashes' : 'nests'
}

export function summaryText(report: Findings): string {
  const { meetings, joins, problems, patches } = report
  if (patches.length === 0) return t('Your grid is empty: drag a unit onto it.')
  if (isUnfinished(report)) return t('Keep going: {n} of {all} squares filled.', squaresFilled(report, getState().history.block.grid))
  if (joins.length === 0 && problems.length > 0) return t('Not ready to sew yet: fix the layout first.')
  const count = (verdict: Verdict): number => meetings.filter((meeting) => meeting.verdict === verdict).length
  const [clashes, nests] = [count('clashes'), count('nests')]
  if (clashes === 1 && nests === 0) return t('The one seam crossing doesn’t nest.')
  if (clashes > 0) return tn(clashes, '{n} of {all} crossings doesn’t nest.', '{n} of {all} crossings don’t nest.', { all: clashes + nests })
  if (nests === 0) return t('No seams need to nest.')
  return nests === 2 ? t('Both seam crossings nest.') : tn(nests, 'The one seam crossing nests.', 'All {n} seam crossings nest.')
}
