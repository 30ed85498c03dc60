/** How this screen speaks and in which light: kept for this browser, no part of any block. */
import { chooseTheme, type Theme, THEMES, useTheme } from '../drawing/theme.ts'
import { setView } from '../document/store.ts'
import { Popover } from '../controls/Popover.tsx'
import { chooseLanguage, LANGUAGES, type Language, spoken, t } from '../words/words.ts'

export function Display() {
  const light = useTheme()
  const lights: Readonly<Record<Theme, string>> = {
    device: t('as the device says'),
    day: t('by day'),
    sun: t('in the sun'),
    night: t('by night'),
  }
  return (
    <Popover name={t('This screen')} className="thisscreen">
      <div className="popover-content">
        <label>
          {t('Light')}
          <select value={light} onChange={(event) => chooseTheme(event.target.value as Theme)}>
            {THEMES.map((one) => (
              <option key={one} value={one}>
                {lights[one]}
              </option>
            ))}
          </select>
        </label>
        <label>
          {t('Language')}
          <select value={spoken()} onChange={(event) => void takeUp(event.target.value as Language)}>
            {Object.entries(LANGUAGES).map(([language, name]) => (
              <option key={language} value={language} lang={language}>
                {name}
              </option>
            ))}
          </select>
        </label>
      </div>
    </Popover>
  )
}

async function takeUp(language: Language): Promise<void> {
  await chooseLanguage(language)
  setView({ language })
  // The whole page is made anew: the focus goes back to where this was chosen.
  requestAnimationFrame(() => document.querySelector<HTMLElement>('.thisscreen summary')?.focus())
}
