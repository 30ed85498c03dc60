/**
 * The colours of the page: as the device is set, light, in bright sunlight (the highest contrast), or dark.
 *
 * The browser remembers the choice. The colours themselves are in style/light.css, under `data-light`; canvas drawings ask here.
 */
import { useSyncExternalStore } from 'react'
import { readSetting, writeSetting } from '../document/browserSettings.ts'

export const THEMES = ['device', 'day', 'sun', 'night'] as const
export type Theme = (typeof THEMES)[number]

const THEME_SETTING = 'nestwright.light'
const deviceIsDark = window.matchMedia('(prefers-color-scheme: dark)')
const listeners = new Set<() => void>()
let chosen: Theme = THEMES.find((theme) => theme === readSetting(THEME_SETTING)) ?? 'device'
apply()

export const useTheme = (): Theme => useSyncExternalStore(subscribe, () => chosen)

/** Whether the page is dark now, by choice or because the device is. */
export const useIsDark = (): boolean => useSyncExternalStore(subscribe, isDark)

export function chooseTheme(theme: Theme): void {
  chosen = theme
  writeSetting(THEME_SETTING, theme)
  apply()
  for (const listener of listeners) listener()
}

const isDark = (): boolean => chosen === 'night' || (chosen === 'device' && deviceIsDark.matches)

function apply(): void {
  document.documentElement.dataset.light = chosen
}

function subscribe(listener: () => void): () => void {
  listeners.add(listener)
  deviceIsDark.addEventListener('change', listener)
  return () => {
    listeners.delete(listener)
    deviceIsDark.removeEventListener('change', listener)
  }
}
