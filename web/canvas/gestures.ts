/**
 * What a hand holds between the tray, the fabrics and the board: one thing at a time, carried by pointer events so that mouse, pen and finger do alike.
 */
import { useSyncExternalStore } from 'react'
import { KIND_NAMES } from '../panels/words.ts'
import { look } from '../state/store.ts'
import { t } from '../words/words.ts'
import type { TrayKind } from './newUnit.ts'

export type Held =
  | { readonly sort: 'unit'; readonly kind: TrayKind; readonly x: number; readonly y: number /** Halves of cells too. */; readonly half: boolean }
  | { readonly sort: 'fabric'; readonly fabric: string; readonly x: number; readonly y: number }
type Dropper = (held: Held) => boolean

let held: Held | null = null
let drop: Dropper = () => false
const listeners = new Set<() => void>()

function hold(next: Held | null): void {
  held = next
  for (const listener of listeners) listener()
}

export const useHeld = (): Held | null =>
  useSyncExternalStore(
    (listener) => {
      listeners.add(listener)
      return () => listeners.delete(listener)
    },
    () => held,
  )

/** The board says what a drop on it does. */
export function dropWith(dropper: Dropper): void {
  drop = dropper
}

/** Pixels before a press becomes a carry. */
export const CARRY = 5

interface Press {
  readonly clientX: number
  readonly clientY: number
  readonly pointerId: number
}

function carry(press: Press, what: (at: PointerEvent) => Held): void {
  let carried = false
  const move = (event: PointerEvent): void => {
    if (event.pointerId !== press.pointerId) return
    if (!carried && Math.hypot(event.clientX - press.clientX, event.clientY - press.clientY) < CARRY) return
    carried = true
    hold(what(event))
  }
  const end = (event: PointerEvent): void => {
    if (event.pointerId !== press.pointerId) return
    finish()
    if (!carried || event.type !== 'pointerup') return
    // What was dragged to the board is laid down: the hand is empty again.
    look({ taking: null })
    drop(what(event))
  }
  const letGo = (event: KeyboardEvent): void => {
    if (event.key === 'Escape') finish()
  }
  const finish = (): void => {
    hold(null)
    window.removeEventListener('pointermove', move)
    window.removeEventListener('pointerup', end)
    window.removeEventListener('pointercancel', end)
    window.removeEventListener('keydown', letGo)
  }
  window.addEventListener('pointermove', move)
  window.addEventListener('pointerup', end)
  window.addEventListener('pointercancel', end)
  window.addEventListener('keydown', letGo)
}

export function startPlacing(kind: TrayKind, press: Press): void {
  look({ taking: kind, notice: t('{unit} is in your hand: press a free cell of the board to lay it.', { unit: t(KIND_NAMES[kind]) }) })
  carry(press, ({ clientX, clientY, altKey }) => ({ sort: 'unit', kind, x: clientX, y: clientY, half: altKey }))
}

export function startPouring(fabric: string, press: Press): void {
  carry(press, ({ clientX, clientY }) => ({ sort: 'fabric', fabric, x: clientX, y: clientY }))
}
