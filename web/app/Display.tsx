/** How this screen speaks and in which light: kept for this browser, no part of any block. */
import { chooseLight, type Light, LIGHTS, useLight } from '../drawing/light.ts'
import { look } from '../document/store.ts'
import { Drop } from '../controls/Popover.tsx'
import { chooseLanguage, LANGUAGES, type Language, spoken, t } from '../words/words.ts'

export function ThisScreen() {
  const light = useLight()
  const lights: Readonly<Record<Light, string>> = {
    device: t('as the device says'),
    day: t('by day'),
    sun: t('in the sun'),
    night: t('by night'),
  }
  return (
    <Drop name={t('This screen')} className="thisscreen">
      <div className="dropped">
        <label>
          {t('Light')}
          <select value={light} onChange={(event) => chooseLight(event.target.value as Light)}>
            {LIGHTS.map((one) => (
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
    </Drop>
  )
}

async function takeUp(language: Language): Promise<void> {
  await chooseLanguage(language)
  look({ language })
  // The whole page is made anew: the focus goes back to where this was chosen.
  requestAnimationFrame(() => document.querySelector<HTMLElement>('.thisscreen summary')?.focus())
}
