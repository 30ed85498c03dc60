/** The seams for screen readers, while their pressing arrows are shown: which one is selected, and how it is pressed. */
import { memo, useMemo } from 'react'
import { useFindings, useStore } from '../../document/store.ts'
import { joinWords } from '../../words/joinWords.ts'
import { t } from '../../words/words.ts'
import { pressState } from './pressWords.ts'

/** Seams before and after the selected one: a large block has thousands. */
const REACH = 40

export const SeamOptions = memo(function SeamOptions() {
  const { report } = useFindings()
  const seam = useStore(({ view }) => view.seam)
  const block = useStore(({ history }) => history.block)
  const words = useMemo(() => (report === null ? null : joinWords(report, block)), [report, block])
  if (report === null || words === null) return null
  const at = report.joins.findIndex(({ id }) => id === seam)
  const first = Math.max(0, at - REACH)
  return (
    <div className="unseen" role="listbox" aria-label={t('Seams')}>
      {report.joins.slice(first, Math.max(0, at) + REACH).map((join, index) => (
        // biome-ignore lint/a11y/useFocusableInteractive: the board has the focus and names the seam that is selected
        <div key={join.id} id={`seam-${join.id}`} role="option" aria-selected={join.id === seam}>
          {t('Seam {number}: {sew} {pressed}', { number: first + index + 1, sew: words(first + index + 1).sew, pressed: pressState(report, join) })}
        </div>
      ))}
    </div>
  )
})
