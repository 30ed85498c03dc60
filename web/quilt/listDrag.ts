/** Dragging a block or fabric off the list onto the quilt, by pointer events, so that mouse, pen and finger work alike. */
import { create } from 'zustand'
import { stepTrayDrag, type TrayPress } from '../board/hand/trayDrag.ts'
import { setView } from '../document/store.ts'
import { t } from '../words/words.ts'
import { type HandItem, setQuiltView } from './quiltView.ts'

interface ListDrag {
  readonly item: HandItem
  /** Pixels of the window. */
  readonly x: number
  readonly y: number
}
type DropListener = (drag: ListDrag) => boolean

let drop: DropListener = () => false

/** What is being dragged, or null. */
export const useListDrag = create<ListDrag | null>(() => null)

/** The board sets what a drop on it does; false: it is not over a place. */
export function onListDrop(listener: DropListener): () => void {
  drop = listener
  return () => {
    drop = () => false
  }
}

const EVENT_TYPES = { pointermove: 'move', pointerup: 'up', pointercancel: 'cancel' } as const

/** An item of the list is pressed: it may be dragged off, or stay where it is. */
export function dragFromList(item: HandItem, event: { readonly clientX: number; readonly clientY: number; readonly pointerId: number }): void {
  let press: TrayPress | null = { pointer: event.pointerId, from: [event.clientX, event.clientY], dragging: false }
  const listening = new AbortController()
  const finish = (): void => {
    useListDrag.setState(null, true)
    listening.abort()
  }
  const step = (moved: PointerEvent): void => {
    if (press === null) return
    const type = EVENT_TYPES[moved.type as keyof typeof EVENT_TYPES]
    const next = stepTrayDrag(press, { type, pointer: moved.pointerId, at: [moved.clientX, moved.clientY] })
    press = next.press
    const drag: ListDrag = { item, x: moved.clientX, y: moved.clientY }
    if (press === null) finish()
    else if (press.dragging && moved.pointerId === press.pointer) useListDrag.setState(drag, true)
    if (next.dropped) dropItem(drag)
  }
  const { signal } = listening
  for (const type of Object.keys(EVENT_TYPES) as (keyof typeof EVENT_TYPES)[]) window.addEventListener(type, step, { signal })
  window.addEventListener('keydown', ({ key }) => key === 'Escape' && finish(), { signal })
}

function dropItem(drag: ListDrag): void {
  // What was dragged there is placed: the hand is empty again.
  setQuiltView({ inHand: null })
  if (!drop(drag)) setView({ notice: t('Dropped outside the quilt: nothing changed.') })
}
