/** The ink and paper of the page, for what is drawn on the canvas: they follow the light. */
import { useDark, useLight } from '../state/light.ts'

const INKS = {
  day: { ink: '#2b2320', paper: '#fffaf2' },
  sun: { ink: '#000000', paper: '#ffffff' },
  night: { ink: '#f3e9dc', paper: '#241e1b' },
} as const

export function useInk(): { readonly ink: string; readonly paper: string } {
  const light = useLight()
  const dark = useDark()
  return dark ? INKS.night : light === 'sun' ? INKS.sun : INKS.day
}
