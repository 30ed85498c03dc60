/** The ink and paper of the page, for what is drawn on the canvas: they follow light and dark. */
import { useSyncExternalStore } from 'react'

const dark = window.matchMedia('(prefers-color-scheme: dark)')
const LIGHT = { ink: '#2b2320', paper: '#fffaf2' }
const DARK = { ink: '#f3e9dc', paper: '#241e1b' }

export const useInk = (): { readonly ink: string; readonly paper: string } =>
  useSyncExternalStore(
    (listener) => {
      dark.addEventListener('change', listener)
      return () => dark.removeEventListener('change', listener)
    },
    () => (dark.matches ? DARK : LIGHT),
  )
