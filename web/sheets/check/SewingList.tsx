/** The seams in sewing order: what is sewn to what. */
import type { Findings, Join } from '../../../geometry/index.ts'
import { setView } from '../../document/store.ts'
import { PressButton } from '../../board/pressing/PressButton.tsx'
import { joinWords } from '../../words/joinWords.ts'
import { PagedList } from '../../controls/PagedList.tsx'
import { t } from '../../words/words.ts'

/** While the board shows the block being assembled step by step, a press goes to that seam. */
export function SewingList({ report, step }: { readonly report: Findings; readonly step: number | null }) {
  const words = joinWords(report)
  return (
    <ol>
      <PagedList
        items={report.joins.map((_, index) => index)}
        upTo={(step ?? 0) - 1}
        render={(index) => {
          const { sew, then, size } = words(index + 1)
          return (
            <li key={index} className={step === index + 1 ? 'pointed' : ''}>
              <button
                type="button"
                className="plain"
                onClick={() => setView({ finding: `join ${index}`, ...(step === null ? {} : { step: index + 1 }) })}
                onPointerEnter={() => setView({ finding: `join ${index}` })}
                onFocus={() => setView({ finding: `join ${index}` })}
              >
                {sew} {then} {size}
              </button>
              <PressButton
                report={report}
                join={report.joins[index] as Join}
                name={t('Seam {number}', { number: index + 1 })}
                onPoint={() => setView({ finding: `join ${index}` })}
              />
            </li>
          )
        }}
      />
    </ol>
  )
}
