/** Under the board, while its pressing arrows are shown: how the selected seam is pressed and why, and what the arrows mean. */
import { useMemo } from 'react'
import { useFindings, useStore } from '../../document/store.ts'
import { joinWords } from '../../words/joinWords.ts'
import { t, translate } from '../../words/words.ts'
import { pressSeam } from '../actions/press.ts'
import { PressChoices, seamChoices } from './PressChoices.tsx'
import { pressState } from './pressWords.ts'
import '../../views/views.css'
import './pressing.css'

export function PressingBar() {
  const { report } = useFindings()
  const seam = useStore(({ view }) => view.seam)
  const block = useStore(({ history }) => history.block)
  const words = useMemo(() => (report === null ? null : joinWords(report, block)), [report, block])
  const index = report?.joins.findIndex(({ id }) => id === seam) ?? -1
  const join = report?.joins[index]
  return (
    <section className="stepper pressing-bar" aria-label={t('Pressing')}>
      {report === null || words === null || join === undefined ? (
        <p>
          {report !== null && report.joins.length === 0
            ? t('Fill the grid first: then every seam has an arrow here.')
            : t(
                'An arrow points to the side the seam allowances are pressed to. Tap it to turn it, again to press the seam open, again to go back to what is proposed.',
              )}
        </p>
      ) : (
        <>
          <p>
            <strong>{words(index + 1).sew}</strong> {pressState(report, join)} <small>{translate(join.press.why)}</small>
          </p>
          <PressChoices name={t('Press this seam')} choices={seamChoices(report, join, (choice) => pressSeam(join.id, choice))} />
        </>
      )}
    </section>
  )
}
