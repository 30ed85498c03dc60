/** The whole block turned and mirrored: what its seams show the blocks beside it goes round with it. */
import { mirrorWhole, turnWhole } from '../../board/actions/actions.ts'
import { t } from '../../words/words.ts'

export function TurnWholeBlock() {
  return (
    <section aria-labelledby="whole-title">
      <h2 id="whole-title">{t('The whole block')}</h2>
      <div className="buttons">
        <button type="button" onClick={turnWhole}>
          {t('Turn the block a quarter')}
        </button>
        <button type="button" onClick={mirrorWhole}>
          {t('Mirror the block')}
        </button>
      </div>
    </section>
  )
}
