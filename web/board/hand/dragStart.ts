/** When a press becomes a drag. */
import type { PointerState } from './values.ts'

/** Pixels that a mouse or pen must move before a press becomes a drag. */
export const DRAG_START = 5
/** The same for a finger, which rolls as it presses. */
export const FINGER_DRAG_START = 10

/** Whether a press has moved far enough to be a drag. */
export const isDrag = (from: PointerState, { at }: PointerState): boolean =>
  Math.hypot(at[0] - from.at[0], at[1] - from.at[1]) > (from.pointerType === 'touch' ? FINGER_DRAG_START : DRAG_START)
