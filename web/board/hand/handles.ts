/**
 * The handles of what is selected: above it to turn and mirror it, at its corners to resize it.
 *
 * In      where the selection lies, and whether a finger or a mouse works here.
 * Out     where the handles are, in pixels, which one a press is on, and what pressing and dragging it does.
 */
import { type Block, boxAround, toNumber, type Turn } from '../../../geometry/index.ts'
import { around, type Point, type Rect, rectOf } from '../../document/shapes.ts'
import { unitsById } from '../hitTest.ts'
import type { Frame } from '../viewport.ts'
import { FINGER_DRAG_START, isDrag } from './dragStart.ts'
import { startResize } from './resize.ts'
import type { Corner, Gesture, GestureOf, HandState, HandContext, PointerState } from './values.ts'

export interface Handles {
  readonly turn: Point
  readonly mirror: Point
  readonly corners: readonly { readonly at: Point; readonly corner: Corner }[]
  /** Larger under a finger. */
  readonly coarse: boolean
}

/** Pixels from the middle of a round handle, and of one at a corner, within which a press is on it: under a mouse, and under a finger. */
const reachOf = (coarse: boolean): { readonly round: number; readonly corner: number } =>
  coarse ? { round: 23, corner: 22 } : { round: 16, corner: 12 }

/** Pixels: a box smaller than this has one corner to resize it by, the one away from its start. */
const ROOM_FOR_CORNERS = { fine: 44, coarse: 88 }
const CORNERS: readonly Corner[] = [
  [0, 0],
  [1, 0],
  [0, 1],
  [1, 1],
]

/** The handles on the board now: none during a gesture, while a fix is tried, or with a tool that has no use for them. */
export function handlesFor(hand: HandState, { block, document, selected, tool, pressing, frame }: HandContext): Handles | null {
  if (hand.gesture !== null || block !== document || tool !== 'hand' || pressing) return null
  return handlesAround(frame, boxOfSelection(block, selected), hand.coarse)
}

/** The last result, because it is needed at every move of the mouse. */
let lastBox: { readonly block: Block; readonly selected: readonly string[]; readonly box: Rect | null } | null = null

function boxOfSelection(block: Block, selected: readonly string[]): Rect | null {
  if (lastBox?.block !== block || lastBox.selected !== selected) lastBox = { block, selected, box: around(unitsById(block, selected).map(rectOf)) }
  return lastBox.box
}

function handlesAround(frame: Frame, box: Rect | null, coarse: boolean): Handles | null {
  if (box === null) return null
  const at = (corner: Corner): Point => frame.toPixels(box.at[0] + box.size[0] * corner[0], box.at[1] + box.size[1] * corner[1])
  const [[x0, y0], [x1, y1]] = [at([0, 0]), at([1, 1])]
  const middle = (x0 + x1) / 2
  const apart = coarse ? 26 : 20
  const top = Math.max(coarse ? 26 : 20, y0 - (coarse ? 42 : 30))
  const roomy = Math.min(Math.abs(x1 - x0), y1 - y0) >= (coarse ? ROOM_FOR_CORNERS.coarse : ROOM_FOR_CORNERS.fine)
  const corners = (roomy ? CORNERS : CORNERS.slice(3)).map((corner) => ({ corner, at: at(corner) }))
  return { turn: [middle - apart, top], mirror: [middle + apart, top], corners, coarse }
}

/** Which handle is at a place, in pixels. */
export function handleAt(handles: Handles, [x, y]: Point): 'turn' | 'mirror' | Corner | null {
  const reach = reachOf(handles.coarse)
  const near = ([hx, hy]: Point, within: number): boolean => Math.hypot(hx - x, hy - y) <= within
  if (near(handles.turn, reach.round)) return 'turn'
  if (near(handles.mirror, reach.round)) return 'mirror'
  return handles.corners.find(({ at }) => near(at, reach.corner))?.corner ?? null
}

/** The gesture that a press on a handle starts; null beside all of them. */
export function pressHandle(handles: Handles, from: PointerState, { block, selected }: HandContext): Gesture | null {
  const on = handleAt(handles, from.at)
  if (on !== 'turn' && on !== 'mirror') return on === null ? null : startResize(selected, on, block, from)
  const box = boxAround(unitsById(block, selected))
  if (box === null) return null
  const middle = [0, 1].map((axis) => (toNumber(box.low[axis as 0 | 1]) + toNumber(box.high[axis as 0 | 1])) / 2) as [number, number]
  return { type: 'handle', handle: on, from, ids: selected, middle, quarters: 0, dragged: false }
}

/** Pixels from the mirror handle at which it is called off. */
const CALLED_OFF = 30

/** A drag on the turn handle turns by as many quarters as the pointer has gone round the middle. */
export function dragHandle(gesture: GestureOf<'handle'>, at: PointerState, { frame }: HandContext): Gesture {
  const { from, middle, handle } = gesture
  const dragged = gesture.dragged || isDrag(from, at)
  if (handle === 'mirror') return { ...gesture, dragged: dragged && Math.hypot(at.at[0] - from.at[0], at.at[1] - from.at[1]) > CALLED_OFF }
  if (!dragged) return gesture
  // So near the middle a tiny move is a quarter turn: what was shown stays.
  if (Math.hypot(at.cells[0] - middle[0], at.cells[1] - middle[1]) * frame.scale < FINGER_DRAG_START) return { ...gesture, dragged }
  const angle = ([x, y]: Point): number => Math.atan2(y - middle[1], x - middle[0])
  const quarters = Math.round((angle(at.cells) - angle(from.cells)) / (Math.PI / 2))
  return { ...gesture, dragged, quarters: (((quarters % 4) + 4) % 4) as Turn }
}

/** The cursor that shows what a press would do there. */
export function cursorOver(on: 'turn' | 'mirror' | Corner | null, unit: string | null, { tool, unitInHand, fabricInHand }: HandContext): string {
  if (on !== null) return typeof on === 'string' ? 'pointer' : on[0] === on[1] ? 'nwse-resize' : 'nesw-resize'
  if (tool !== 'hand') return 'crosshair'
  if (fabricInHand !== null) return unit === null ? 'default' : 'cell'
  if (unit !== null) return 'grab'
  return unitInHand === null ? 'default' : 'copy'
}
