/**
 * In which light the page is read: as the device says, by day, in the sun (most contrast), or by night.
 *
 * Kept for the next visit. The colours themselves are in style/light.css, under `data-light`; what is drawn on a canvas asks here.
 */
import { useSyncExternalStore } from 'react'

export const THEMES = ['device', 'day', 'sun', 'night'] as const
export type Theme = (typeof THEMES)[number]

const KEPT = 'nestwright.light'
const dark = window.matchMedia('(prefers-color-scheme: dark)')
const listeners = new Set<() => void>()
let chosen: Theme = kept()
apply()

export const useTheme = (): Theme => useSyncExternalStore(subscribe, () => chosen)

/** Whether the page is dark now. */
export const useIsDark = (): boolean => useSyncExternalStore(subscribe, isDark)

export function chooseTheme(light: Theme): void {
  chosen = light
  try {
    localStorage.setItem(KEPT, light)
  } catch {
    // Where nothing can be kept, the choice lasts as long as the page.
  }
  apply()
  for (const listener of listeners) listener()
}

const isDark = (): boolean => chosen === 'night' || (chosen === 'device' && dark.matches)

function apply(): void {
  document.documentElement.dataset.light = chosen
}

function subscribe(listener: () => void): () => void {
  listeners.add(listener)
  dark.addEventListener('change', listener)
  return () => {
    listeners.delete(listener)
    dark.removeEventListener('change', listener)
  }
}

function kept(): Theme {
  try {
    return THEMES.find((light) => light === localStorage.getItem(KEPT)) ?? 'device'
  } catch {
    return 'device'
  }
}
