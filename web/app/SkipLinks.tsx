/** For the keyboard: buttons that skip everything before the board or the sheet. They can be seen only while one of them has the focus. */
import { t } from '../words/words.ts'
import { loadFocus } from './loadFocus.ts'

export function SkipLinks() {
  return (
    <nav className="skip-links" aria-label={t('Skip to')}>
      <button type="button" onClick={() => void loadFocus().then((focus) => focus?.focusPart('board'))}>
        {t('To the board')}
      </button>
      <button type="button" onClick={() => void loadFocus().then((focus) => focus?.focusPart('sheet'))}>
        {t('To the side panel')}
      </button>
    </nav>
  )
}
