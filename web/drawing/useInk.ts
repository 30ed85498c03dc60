/** The ink and paper colours of the page, for canvas drawings. Keep them the same as in style/light.css. */
import { useIsDark, useTheme } from './theme.ts'

const INKS = {
  day: { ink: '#2b2320', paper: '#fffaf2', accent: '#8f3a1f' },
  sun: { ink: '#000000', paper: '#ffffff', accent: '#7a2408' },
  night: { ink: '#f3e9dc', paper: '#241e1b', accent: '#f0a57f' },
} as const

export function useInk(): { readonly ink: string; readonly paper: string; readonly accent: string } {
  const light = useTheme()
  const dark = useIsDark()
  return dark ? INKS.night : light === 'sun' ? INKS.sun : INKS.day
}
