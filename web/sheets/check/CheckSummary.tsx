/** What is found, in one line, with the mark of what matters most; press it to see all findings. */
import type { Findings, Verdict } from '../../../geometry/index.ts'
import { MARKS } from '../../drawing/marks.ts'
import { setView, useStore, useFindings } from '../../document/store.ts'
import { t, tell, tn } from '../../words/words.ts'

export function CheckSummary() {
  const { report, trouble } = useFindings()
  const open = useStore(({ view }) => view.sheet)
  if (open === 'findings') return null
  return (
    <button type="button" className="foundline" onClick={toFindings}>
      {report !== null && hasVerdict(report) && <VerdictMark verdict={worstVerdict(report)} />}
      {report === null ? tell(trouble) : summaryText(report)}
    </button>
  )
}

/** An empty grid is no trouble, and nothing to praise. */
export const hasVerdict = ({ patches, joins, problems }: Findings): boolean => patches.length > 0 && (joins.length > 0 || problems.length > 0)

/** The line gives way to the findings themselves: the focus goes there. */
function toFindings(): void {
  setView({ sheet: 'findings' })
  requestAnimationFrame(() => document.getElementById('findings-sum')?.focus())
}

export function VerdictMark({ verdict }: { readonly verdict: Verdict }) {
  const { path, fill } = MARKS[verdict]
  return (
    <svg viewBox="-9 -9 18 18" width="18" height="18" aria-hidden="true">
      {/* Pale round it, as on the cloth: at night it is seen as well. */}
      <path d={path} fill={fill} fillRule="evenodd" stroke="#fffaf2" strokeWidth="1.8" paintOrder="stroke" />
    </svg>
  )
}

export function worstVerdict({ problems, meetings, joins }: Findings): Verdict {
  if (joins.length === 0 && problems.length > 0) return 'clashes'
  return meetings.some(({ verdict }) => verdict === 'clashes') ? 'clashes' : 'nests'
}

export function summaryText({ meetings, joins, problems, patches }: Findings): string {
  if (patches.length === 0) return t('Nothing is laid yet: drag a unit onto the board.')
  if (joins.length === 0 && problems.length > 0) return t('Not sewn yet: mend the layout first.')
  const count = (verdict: Verdict): number => meetings.filter((meeting) => meeting.verdict === verdict).length
  const [clashes, nests] = [count('clashes'), count('nests')]
  if (clashes === 1 && nests === 0) return t('The one meeting of seams clashes.')
  if (clashes > 0) return tn(clashes, '{n} of {all} meetings clashes.', '{n} of {all} meetings clash.', { all: clashes + nests })
  if (nests === 0) return t('No seams have to nest.')
  return nests === 2 ? t('Both meetings of seams nest.') : tn(nests, 'The one meeting of seams nests.', 'All {n} meetings of seams nest.')
}
