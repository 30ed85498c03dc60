/**
 * What a hand holds between the tray, the fabrics and the board: one thing at a time, carried by pointer events so that mouse, pen and finger do alike.
 */
import { useSyncExternalStore } from 'react'
import { KIND_NAMES } from '../../words/unitWords.ts'
import { setView, getState } from '../../document/store.ts'
import { t } from '../../words/words.ts'
import { CARRY } from './pinch.ts'
import type { TrayKind } from '../newUnit.ts'

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
    const thing = what(event)
    // What was dragged to the board is laid down: the hand is empty again.
    if (thing.sort === 'unit') setView({ taking: null })
    if (!drop(thing)) setView({ notice: t('Let go beside the board: nothing is changed.') })
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

/** A unit is pressed in the tray: it may be dragged off, or stay where it is while a finger scrolls. */
export function startPlacing(kind: TrayKind, press: Press): void {
  carry(press, ({ clientX, clientY, altKey }) => ({ sort: 'unit', kind, x: clientX, y: clientY, half: altKey || getState().view.halves }))
}

/** Taken in hand, to be laid as often as one likes; as it was turned, if it was in hand before. */
export function takeInHand(kind: TrayKind): void {
  const { taking, turned } = getState().view
  const notice = t('{unit} is in your hand: press a free cell of the board, or drag over cells to fill them.', { unit: t(KIND_NAMES[kind]) })
  setView({ taking: kind, turned: taking === kind ? turned : 0, notice })
}

export function startPouring(fabric: string, press: Press): void {
  carry(press, ({ clientX, clientY }) => ({ sort: 'fabric', fabric, x: clientX, y: clientY }))
}
