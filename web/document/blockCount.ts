/** How many blocks the maker cuts for: a wish of the screen, no part of the document. */
import { useSyncExternalStore } from 'react'

export const MOST_COPIES_CUT = 200
const listeners = new Set<() => void>()
let copies = 1

export function setCopies(count: number): void {
  copies = count
  for (const listener of listeners) listener()
}

function subscribe(listener: () => void): () => void {
  listeners.add(listener)
  return () => listeners.delete(listener)
}

export const useCopies = (): number => useSyncExternalStore(subscribe, () => copies)
