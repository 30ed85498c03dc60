/**
 * The colours of the page: as the device is set, light, in bright sunlight (the highest contrast), or dark.
 *
 * The browser remembers the choice. The colours themselves are in style/light.css, under `data-light`; canvas drawings ask here.
 */
import { create } from 'zustand'
import { readSetting, writeSetting } from '../document/browserSettings.ts'

export const THEMES = ['device', 'day', 'sun', 'night'] as const
export type Theme = (typeof THEMES)[number]

const THEME_SETTING = 'nestwright.light'
const deviceIsDark = window.matchMedia('(prefers-color-scheme: dark)')

const useThemeState = create<{ readonly theme: Theme; readonly deviceIsDark: boolean }>(() => ({
  theme: THEMES.find((theme) => theme === readSetting(THEME_SETTING)) ?? 'device',
  deviceIsDark: deviceIsDark.matches,
}))
deviceIsDark.addEventListener('change', ({ matches }) => useThemeState.setState({ deviceIsDark: matches }))
apply()

export const useTheme = (): Theme => useThemeState(({ theme }) => theme)

/** Whether the page is dark now, by choice or because the device is. */
export const useIsDark = (): boolean => useThemeState((state) => state.theme === 'night' || (state.theme === 'device' && state.deviceIsDark))

export function chooseTheme(theme: Theme): void {
  useThemeState.setState({ theme })
  writeSetting(THEME_SETTING, theme)
  apply()
}

function apply(): void {
  document.documentElement.dataset.light = useThemeState.getState().theme
}
