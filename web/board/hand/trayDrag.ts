/**
 * Dragging a unit off the tray, or a fabric off the list, to the board: one item at a time, by pointer events, so that mouse, pen and finger work alike.
 *
 * What one event does to the drag is `stepTrayDrag`, which has no screen; the rest listens to the window and tells who draws the item.
 */
import { create } from 'zustand'
import { setView, getState } from '../../document/store.ts'
import { t } from '../../words/words.ts'
import type { Point } from '../../document/shapes.ts'
import type { TrayKind } from '../newUnit.ts'
import { DRAG_START } from './dragStart.ts'
import type { TrayItem } from './values.ts'

/** An item under the pointer; x and y in pixels of the window. */
type TrayDrag = TrayItem & { readonly x: number; readonly y: number }
/** False where the item is not over the board. */
type DropListener = (drag: TrayDrag) => boolean

let drop: DropListener = () => false

/** The item that is being dragged, or null. */
export const useTrayDrag = create<TrayDrag | null>(() => null)
const setCurrent = (next: TrayDrag | null): void => useTrayDrag.setState(next, true)

/** The board sets what a drop on it does. */
export function onTrayDrop(listener: DropListener): void {
  drop = listener
}

/** A press on an item: by which pointer, where, and whether it has become a drag. */
export interface TrayPress {
  readonly pointer: number
  readonly from: Point
  readonly dragging: boolean
}

export interface TrayPointerEvent {
  readonly type: 'move' | 'up' | 'cancel'
  readonly pointer: number
  readonly at: Point
}

/** The press after an event (null: it is over), and whether the item is dropped. Other pointers change nothing. */
export function stepTrayDrag(
  press: TrayPress,
  { type, pointer, at }: TrayPointerEvent,
): { readonly press: TrayPress | null; readonly dropped: boolean } {
  if (pointer !== press.pointer) return { press, dropped: false }
  if (type !== 'move') return { press: null, dropped: press.dragging && type === 'up' }
  const dragging = press.dragging || Math.hypot(at[0] - press.from[0], at[1] - press.from[1]) >= DRAG_START
  return { press: dragging === press.dragging ? press : { ...press, dragging }, dropped: false }
}

interface PressEvent {
  readonly clientX: number
  readonly clientY: number
  readonly pointerId: number
}

const EVENT_TYPES = { pointermove: 'move', pointerup: 'up', pointercancel: 'cancel' } as const

function startDrag(event: PressEvent, itemAt: (event: PointerEvent) => TrayItem): void {
  let press: TrayPress | null = { pointer: event.pointerId, from: [event.clientX, event.clientY], dragging: false }
  const listening = new AbortController()
  const finish = (): void => {
    setCurrent(null)
    listening.abort()
  }
  const step = (event: PointerEvent): void => {
    if (press === null) return
    const at: Point = [event.clientX, event.clientY]
    const next = stepTrayDrag(press, { type: EVENT_TYPES[event.type as keyof typeof EVENT_TYPES], pointer: event.pointerId, at })
    press = next.press
    if (press === null) finish()
    else if (press.dragging && event.pointerId === press.pointer) setCurrent({ ...itemAt(event), x: at[0], y: at[1] })
    if (next.dropped) dropItem({ ...itemAt(event), x: at[0], y: at[1] })
  }
  const { signal } = listening
  for (const type of Object.keys(EVENT_TYPES) as (keyof typeof EVENT_TYPES)[]) window.addEventListener(type, step, { signal })
  window.addEventListener('keydown', ({ key }) => key === 'Escape' && finish(), { signal })
}

function dropItem(drag: TrayDrag): void {
  const onBoard = drop(drag)
  // What was dragged to the board is placed: the hand is empty again.
  if (drag.type === 'unit') setView({ unitInHand: null, unitTurn: 0, unitMirror: false })
  if (!onBoard) setView({ notice: t('Dropped outside the board: nothing changed.') })
}

/** A unit is pressed in the tray: it may be dragged off, or stay where it is while a finger scrolls. */
export function dragUnitFromTray(kind: TrayKind, event: PressEvent): void {
  startDrag(event, ({ altKey }) => ({ type: 'unit', kind, half: altKey || getState().view.halfCells }))
}

export function dragFabric(fabric: string, event: PressEvent): void {
  startDrag(event, () => ({ type: 'fabric', fabric }))
}

/** Takes a unit in hand, to be placed as often as the maker likes; it stays turned if it was in hand before. */
export function pickUpUnit(kind: TrayKind): void {
  const { unitInHand, unitTurn, unitMirror } = getState().view
  const same = unitInHand === kind
  const notice = kind === 'square' ? t('Click an empty square, or drag for a large one.') : t('Click an empty square, or drag to fill several.')
  setView({ unitInHand: kind, unitTurn: same ? unitTurn : 0, unitMirror: same && unitMirror, fabricInHand: null, tool: 'hand', notice })
}
