/** How far a PDF has got, and the button to cancel it. */
import { t } from '../../words/words.ts'

interface Props {
  readonly progress: { readonly done: number; readonly of: number }
  readonly cancel: () => void
}

export function PrintingProgress({ progress: { done, of }, cancel }: Props) {
  return (
    <div className="progress">
      <label>
        {t('Making the pages…')}
        <progress value={done} max={of} />
      </label>
      <button type="button" onClick={cancel}>
        {t('Cancel')}
      </button>
    </div>
  )
}
