/** Copy, cut and paste, for whoever has no keys at hand. */
import { ActionButton } from '../controls/ActionButton.tsx'
import { useStore } from '../document/store.ts'
import { t } from '../words/words.ts'
import { copyByButton, pasteByButton } from './actions/clipboard.ts'

export function ClipboardButtons() {
  const nothing = useStore(({ view }) => view.selected.length === 0)
  return (
    <div className="popover-content menu">
      <ActionButton disabled={nothing} onClick={() => void copyByButton(false)}>
        {t('Copy')}
      </ActionButton>
      <ActionButton disabled={nothing} onClick={() => void copyByButton(true)}>
        {t('Cut')}
      </ActionButton>
      <button type="button" onClick={() => void pasteByButton()}>
        {t('Paste')}
      </button>
    </div>
  )
}
