/** Turns and mirrors the whole block, which changes how its seams meet those of the blocks beside it. */
import { mirrorWholeBlock, turnWholeBlock } from '../../board/actions/turn.ts'
import { t } from '../../words/words.ts'

export function TurnWholeBlock() {
  return (
    <section aria-labelledby="whole-title">
      <h2 id="whole-title">{t('The whole block')}</h2>
      <div className="buttons">
        <button type="button" onClick={turnWholeBlock}>
          {t('Turn the block 90°')}
        </button>
        <button type="button" onClick={mirrorWholeBlock}>
          {t('Flip the block')}
        </button>
      </div>
    </section>
  )
}
