/** Whether a media query holds now, and again each time that changes. */
import { useSyncExternalStore } from 'react'

/** One list for each query, so that subscribing twice costs nothing. */
const lists = new Map<string, MediaQueryList>()

function listOf(query: string): MediaQueryList {
  const list = lists.get(query) ?? window.matchMedia(query)
  lists.set(query, list)
  return list
}

/** The width up to which the stylesheets lay the page out for a phone. */
export const PHONE = '(max-width: 640px)'

export function useMedia(query: string): boolean {
  return useSyncExternalStore(
    (listener) => {
      const list = listOf(query)
      list.addEventListener('change', listener)
      return () => list.removeEventListener('change', listener)
    },
    () => listOf(query).matches,
  )
}
