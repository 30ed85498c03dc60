/** The problems of the layout: what has to be fixed before the block can be sewn, and what is good to know. */
import { ERRORS, type Findings, forgetPress } from '../../../geometry/index.ts'
import { isNearlyFull, isUnfinished } from '../../document/progress.ts'
import { edit, setView, useStore } from '../../document/store.ts'
import { PagedList } from '../../controls/PagedList.tsx'
import { t, translate } from '../../words/words.ts'
import { deepClient } from '../../workers/clients.ts'
import { canRepair } from '../../workers/layoutRepairs.ts'
import { useWorker } from '../../workers/useWorker.ts'
import { FindingButton, positionWords } from './FindingButton.tsx'
import { LayoutRepairs } from './LayoutRepairs.tsx'

type Problem = Findings['problems'][number]

export function ProblemList({ report }: { readonly report: Findings }) {
  const block = useStore(({ history }) => history.block)
  const repairable = (problem: Problem, index: number): boolean => canRepair(block, problem, index)
  // Trying out turns takes a while: a worker does it.
  const reply = useWorker(deepClient, 'repairs', report.problems.some(repairable) ? [block] : null)
  const unfinished = isUnfinished(report)
  const isWrong = ({ code }: Problem): boolean => !unfinished && ERRORS.has(code)
  // While most of the grid is empty, that it is empty is no news.
  const all = report.problems.map((problem, index) => ({ problem, index })).filter(({ problem }) => problem.code !== 'gap' || isNearlyFull(report))
  if (all.length === 0) return null
  return (
    <ul className={unfinished ? 'problems unfinished' : 'problems'}>
      <PagedList
        items={all}
        upTo={-1}
        render={({ problem, index }) => (
          <li key={index} className={isWrong(problem) ? 'error' : 'remark'}>
            <FindingButton finding={`problem ${index}`}>
              <ProblemMark error={isWrong(problem)} />
              {translate(problem.message)} <small>{positionWords(problem.at)}</small>
            </FindingButton>
            {reply === null && repairable(problem, index) && <p className="hint">{t('Working…')}</p>}
            {problem.message.code === 'press-not-kept' && (
              <button
                className="danger"
                type="button"
                onClick={() => {
                  edit(forgetPress(problem.at))
                  setView({ notice: t('Your request is deleted.') })
                }}
              >
                {t('Delete this request')}
              </button>
            )}
            {reply?.type === 'answer' && <LayoutRepairs repairs={reply.value[index] ?? []} />}
          </li>
        )}
      />
    </ul>
  )
}

/** A square on point with a bar: it cannot be sewn like this. A ring: good to know. */
function ProblemMark({ error }: { readonly error: boolean }) {
  return (
    <svg viewBox="-9 -9 18 18" width="16" height="16" role="img" aria-label={error ? t('To fix:') : t('Good to know:')}>
      {error ? (
        <path d="M0 -8L8 0L0 8L-8 0ZM-4 -1.2H4V1.2H-4Z" fill="currentColor" fillRule="evenodd" />
      ) : (
        <path d="M0 -7A7 7 0 1 1 -0.01 -7ZM-1.2 -1.5V4.5M-1.2 -4.2V-4" fill="none" stroke="currentColor" strokeWidth="1.8" />
      )}
    </svg>
  )
}
