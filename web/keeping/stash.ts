/**
 * The maker's stash: pieces of fabric on hand, by the fabric's name, so that every block with a fabric of that name finds them.
 *
 * In      pieces with their size, in inches or centimetres, and number.
 * Out     the same pieces from the browser's local storage, which all tabs share; each tab sees what the others change.
 */
import { create } from 'zustand'

export interface StashEntry {
  readonly id: string
  /** The fabric's name. */
  readonly name: string
  readonly unit: 'in' | 'cm'
  /** Across the print, then along it. */
  readonly size: readonly [number, number]
  readonly onHand: number
}

const KEY = 'nestwright.stash'

export const useStash = create<readonly StashEntry[]>(() => stored() ?? [])

/** Null if the browser stores nothing, or what it stores cannot be read. */
function stored(): readonly StashEntry[] | null {
  try {
    const value: unknown = JSON.parse(localStorage.getItem(KEY) ?? '[]')
    return Array.isArray(value) ? value.filter(isPiece) : []
  } catch {
    return null
  }
}

function isPiece(value: unknown): value is StashEntry {
  const piece = value as Partial<StashEntry> | null
  if (typeof piece !== 'object' || piece === null) return false
  const { id, name, unit, size, onHand } = piece
  const lengths = Array.isArray(size) && size.length === 2 && size.every((length) => typeof length === 'number' && length > 0)
  return typeof id === 'string' && typeof name === 'string' && (unit === 'in' || unit === 'cm') && lengths && Number.isInteger(onHand)
}

// Another tab has changed the stash.
globalThis.addEventListener?.('storage', ({ key }) => {
  if (key === KEY || key === null) useStash.setState(stored() ?? [], true)
})

/** Whether the last change could be written. It cannot on a full disk, or in a browser that stores nothing. */
let written = true

/** Changes what is stored now, not what this tab read last, so that two tabs never overwrite each other's pieces. */
function change(edit: (pieces: readonly StashEntry[]) => readonly StashEntry[]): void {
  const pieces = edit((written ? stored() : null) ?? useStash.getState())
  try {
    localStorage.setItem(KEY, JSON.stringify(pieces))
    written = true
  } catch {
    // The change still counts until the page is closed.
    written = false
  }
  useStash.setState(pieces, true)
}

/** Adds a piece, or raises the count if there is one of the same fabric and size. */
export function addToStash(piece: Omit<StashEntry, 'id'>): void {
  change((pieces) => {
    const like = pieces.find(({ name, unit, size }) => name === piece.name && unit === piece.unit && size.join() === piece.size.join())
    return like === undefined ? [...pieces, { ...piece, id: freeId(pieces) }] : withCount(pieces, like.id, like.onHand + piece.onHand)
  })
}

export const setOnHand = (id: string, onHand: number): void => change((pieces) => withCount(pieces, id, onHand))
export const removeFromStash = (id: string): void => change((pieces) => pieces.filter((piece) => piece.id !== id))

const withCount = (pieces: readonly StashEntry[], id: string, onHand: number): StashEntry[] =>
  pieces.map((piece) => (piece.id === id ? { ...piece, onHand } : piece))

function freeId(pieces: readonly StashEntry[]): string {
  const numbers = pieces.map(({ id }) => Number(id.slice(1))).filter(Number.isFinite)
  return `s${1 + Math.max(0, ...numbers)}`
}
