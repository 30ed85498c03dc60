/** The language and the colours of the page. This browser remembers them; they belong to no block. */
import { chooseTheme, type Theme, THEMES, useTheme } from '../drawing/theme.ts'
import { setView } from '../document/store.ts'
import { Popover } from '../controls/Popover.tsx'
import { chooseLanguage, LANGUAGES, type Language, currentLanguage, t } from '../words/words.ts'

export function Display() {
  return (
    <Popover name={t('Display')} className="display-settings">
      <div className="popover-content">
        <DisplayFields />
      </div>
    </Popover>
  )
}

export function DisplayFields() {
  const light = useTheme()
  const names: Readonly<Record<Theme, string>> = {
    device: t('Match my device'),
    day: t('Light'),
    sun: t('High contrast'),
    night: t('Dark'),
  }
  return (
    <>
      <label>
        {t('Theme')}
        <select value={light} onChange={(event) => chooseTheme(event.target.value as Theme)}>
          {THEMES.map((one) => (
            <option key={one} value={one}>
              {names[one]}
            </option>
          ))}
        </select>
      </label>
      <label>
        {t('Language')}
        <select value={currentLanguage()} onChange={(event) => void changeLanguage(event.target.value as Language)}>
          {Object.entries(LANGUAGES).map(([language, name]) => (
            <option key={language} value={language} lang={language}>
              {name}
            </option>
          ))}
        </select>
      </label>
    </>
  )
}

async function changeLanguage(language: Language): Promise<void> {
  await chooseLanguage(language)
  setView({ language })
  // The whole page is rendered again, so the focus has to be put back.
  requestAnimationFrame(() => document.querySelector<HTMLElement>('.display-settings summary')?.focus())
}
