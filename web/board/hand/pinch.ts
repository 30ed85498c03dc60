/**
 * Several fingers on the board at once: two of them pan and zoom; a tap with two undoes, a tap with three redoes.
 *
 * In      where the fingers are, in pixels, and when each event came, in milliseconds of the page.
 * Out     the gesture so far, the view that it makes, and at its end whether it was a tap.
 */
import type { Point } from '../../document/shapes.ts'
import { FINGER_DRAG_START } from './dragStart.ts'
import type { Pinch } from './values.ts'

/** Milliseconds: fingers that stay longer than this do not tap. */
const TAP = 350

/** Two fingers are down; `since` is null if the first of them had started something else. */
export const startPinch = (at: readonly [Point, Point], since: number | null, zoom: number, pan: Point): Pinch => ({
  type: 'pinch',
  fingers: 2,
  since,
  resting: true,
  at,
  zoom,
  pan,
})

export const addFinger = (pinch: Pinch): Pinch => ({ ...pinch, fingers: pinch.fingers + 1 })

/** The first two fingers have moved. Zooming starts from where they are once they have moved far enough, so the view does not jump. */
export function movePinch(pinch: Pinch, at: readonly [Point, Point]): Pinch {
  if (!pinch.resting || at.every((point, index) => distance(point, pinch.at[index as 0 | 1]) <= FINGER_DRAG_START)) return pinch
  return { ...pinch, at, resting: false }
}

/** The view under the fingers: what lay between them stays between them. `middle` is the middle of the board. */
export function pinchView(
  { at: [a, b], zoom: from, pan, resting }: Pinch,
  [one, other]: readonly [Point, Point],
  middle: Point,
  [least, most]: readonly [number, number],
): { readonly zoom: number; readonly pan: Point } {
  if (resting) return { zoom: from, pan }
  const zoom = Math.min(most, Math.max(least, from * (distance(one, other) / Math.max(1, distance(a, b)))))
  const [before, now] = [between(a, b), between(one, other)]
  const along = (axis: 0 | 1): number => now[axis] - middle[axis] - (before[axis] - middle[axis] - pan[axis]) * (zoom / from)
  return { zoom, pan: [along(0), along(1)] }
}

/** What lifting the fingers means, if none of them has moved. */
export function fingerTap({ fingers, since, resting }: Pinch, time: number): 'undo' | 'redo' | null {
  if (!resting || since === null || time - since > TAP) return null
  return fingers === 2 ? 'undo' : fingers === 3 ? 'redo' : null
}

const distance = (a: Point, b: Point): number => Math.hypot(a[0] - b[0], a[1] - b[1])
const between = (a: Point, b: Point): Point => [(a[0] + b[0]) / 2, (a[1] + b[1]) / 2]
