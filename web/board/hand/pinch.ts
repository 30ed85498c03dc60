/**
 * Several fingers on the board at once: two of them pan and zoom, and a tap of two undoes, of three does again.
 *
 * In      where the fingers are, in pixels, and when each event came, in milliseconds of the page.
 * Out     the gesture as it stands, the view it makes, and at its end whether it was a tap. No screen, no clock of its own.
 */
import type { Point } from '../../document/shapes.ts'

export interface Pinch {
  readonly sort: 'pinch'
  readonly fingers: number
  /** When the first finger came down, or null where it had begun something else: then lifting is no tap. */
  readonly since: number | null
  /** Until a finger moves on, the view rests, so that a tap does not shake it. */
  readonly still: boolean
  readonly at: readonly [Point, Point]
  readonly zoom: number
  readonly pan: Point
}

/** Pixels before a press becomes a carry. */
export const CARRY = 5
/** Pixels within which a finger rests: it rolls as it is pressed down. */
export const RESTING = 10
/** Milliseconds: longer than that, the fingers meant to stay. */
const TAP = 350

export const pinchOf = (at: readonly [Point, Point], since: number | null, zoom: number, pan: Point): Pinch => ({
  sort: 'pinch',
  fingers: 2,
  since,
  still: true,
  at,
  zoom,
  pan,
})

export const another = (pinch: Pinch): Pinch => ({ ...pinch, fingers: pinch.fingers + 1 })

/** The first two fingers have moved. A pinch begins where they leave their rest, so nothing jumps. */
export function pinched(pinch: Pinch, at: readonly [Point, Point]): Pinch {
  if (!pinch.still || at.every((spot, index) => distance(spot, pinch.at[index as 0 | 1]) <= RESTING)) return pinch
  return { ...pinch, at, still: false }
}

/** The view as the fingers have it: what lay under their middle stays there. `middle` is that of the board. */
export function viewOf(
  { at: [a, b], zoom: from, pan, still }: Pinch,
  [one, other]: readonly [Point, Point],
  middle: Point,
  [least, most]: readonly [number, number],
): { readonly zoom: number; readonly pan: Point } {
  if (still) return { zoom: from, pan }
  const zoom = Math.min(most, Math.max(least, from * (distance(one, other) / Math.max(1, distance(a, b)))))
  const [was, now] = [between(a, b), between(one, other)]
  const kept = (axis: 0 | 1): number => now[axis] - middle[axis] - (was[axis] - middle[axis] - pan[axis]) * (zoom / from)
  return { zoom, pan: [kept(0), kept(1)] }
}

/** What it means that fingers which have not moved are lifted. */
export function lifted({ fingers, since, still }: Pinch, time: number): 'undo' | 'redo' | null {
  if (!still || since === null || time - since > TAP) return null
  return fingers === 2 ? 'undo' : fingers === 3 ? 'redo' : null
}

const distance = (a: Point, b: Point): number => Math.hypot(a[0] - b[0], a[1] - b[1])
const between = (a: Point, b: Point): Point => [(a[0] + b[0]) / 2, (a[1] + b[1]) / 2]
