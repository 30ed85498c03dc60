/**
 * The maker's stash: cloth on hand, by the name of its fabric, so that another block with a fabric of that name finds it too.
 *
 * In      pieces with their size and number.
 * Out     the same from the browser's own store; none where it keeps nothing.
 */
import { useSyncExternalStore } from 'react'

export interface StashEntry {
  readonly id: string
  /** The fabric's name. */
  readonly name: string
  readonly unit: 'in' | 'cm'
  /** Across the print, then along it. */
  readonly size: readonly [number, number]
  readonly onHand: number
}

const KEPT = 'nestwright.stash'
const listeners = new Set<() => void>()
let pieces: readonly StashEntry[] = kept()

function kept(): readonly StashEntry[] {
  try {
    const value: unknown = JSON.parse(localStorage.getItem(KEPT) ?? '[]')
    return Array.isArray(value) ? value.filter(isPiece) : []
  } catch {
    return []
  }
}

function isPiece(value: unknown): value is StashEntry {
  const piece = value as Partial<StashEntry> | null
  if (typeof piece !== 'object' || piece === null) return false
  const { id, name, unit, size, onHand } = piece
  const lengths = Array.isArray(size) && size.length === 2 && size.every((length) => typeof length === 'number' && length > 0)
  return typeof id === 'string' && typeof name === 'string' && (unit === 'in' || unit === 'cm') && lengths && Number.isInteger(onHand)
}

function set(next: readonly StashEntry[]): void {
  pieces = next
  try {
    localStorage.setItem(KEPT, JSON.stringify(next))
  } catch {
    // A browser that keeps nothing still reckons with it until the page is left.
  }
  for (const listener of listeners) listener()
}

/** The same again is counted up. */
export function addToStash(piece: Omit<StashEntry, 'id'>): void {
  const like = pieces.find(({ name, unit, size }) => name === piece.name && unit === piece.unit && size.join() === piece.size.join())
  if (like !== undefined) return setOnHand(like.id, like.onHand + piece.onHand)
  const numbers = pieces.map(({ id }) => Number(id.slice(1))).filter(Number.isFinite)
  set([...pieces, { ...piece, id: `s${1 + Math.max(0, ...numbers)}` }])
}

export const setOnHand = (id: string, onHand: number): void => set(pieces.map((piece) => (piece.id === id ? { ...piece, onHand } : piece)))
export const removeFromStash = (id: string): void => set(pieces.filter((piece) => piece.id !== id))

function subscribe(listener: () => void): () => void {
  listeners.add(listener)
  return () => listeners.delete(listener)
}

export const useStash = (): readonly StashEntry[] => useSyncExternalStore(subscribe, () => pieces)
