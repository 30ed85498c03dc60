/**
 * The handles of what is selected, at its corners: dragging one resizes it. They stand beside the corners, where they hide no mark.
 *
 * In      where the selection lies, and whether a finger or a mouse works here.
 * Out     where the handles are, in pixels, which one a press is on, and what pressing and dragging it does.
 */
import type { Block } from '../../../geometry/index.ts'
import { around, type Point, type Rect, rectOf } from '../../document/shapes.ts'
import { unitsById } from '../hitTest.ts'
import type { Frame } from '../viewport.ts'
import { startResize } from './resize.ts'
import type { Corner, Gesture, HandState, HandContext, PointerState } from './values.ts'

export interface Handles {
  /** `at` is the middle of the handle, `of` the corner that it stands beside; in pixels. */
  readonly corners: readonly { readonly at: Point; readonly of: Point; readonly corner: Corner }[]
  /** Larger under a finger. */
  readonly coarse: boolean
}

/** Pixels from the middle of a handle, or from its corner, within which a press is on it: under a mouse, and under a finger. */
const REACH = { fine: 12, coarse: 22 }
/** Pixels across by which a handle stands beside its corner: clear of a mark there, and of the bar above or below. */
const BESIDE = { fine: 15, coarse: 20 }

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
  const size = coarse ? 'coarse' : 'fine'
  const pixels = (corner: Corner): Point => frame.toPixels(box.at[0] + box.size[0] * corner[0], box.at[1] + box.size[1] * corner[1])
  const [[x0, y0], [x1, y1]] = [pixels([0, 0]), pixels([1, 1])]
  const roomy = Math.min(Math.abs(x1 - x0), y1 - y0) >= ROOM_FOR_CORNERS[size]
  // On the wrong side the left corner lies at the right.
  const beside = (x1 < x0 ? -1 : 1) * BESIDE[size]
  const corners = (roomy ? CORNERS : CORNERS.slice(3)).map((corner) => {
    const of = pixels(corner)
    return { corner, of, at: [of[0] + (corner[0] === 1 ? beside : -beside), of[1]] as const }
  })
  return { corners, coarse }
}

/** Which handle is at a place, in pixels. */
export function handleAt({ corners, coarse }: Handles, [x, y]: Point): Corner | null {
  const reach = coarse ? REACH.coarse : REACH.fine
  const near = ([hx, hy]: Point): boolean => Math.hypot(hx - x, hy - y) <= reach
  return corners.find(({ at, of }) => near(at) || near(of))?.corner ?? null
}

/** The gesture that a press on a handle starts; null beside all of them. */
export function pressHandle(handles: Handles, from: PointerState, { block, selected }: HandContext): Gesture | null {
  const on = handleAt(handles, from.at)
  return on === null ? null : startResize(selected, on, block, from)
}

/** The cursor that shows what a press would do there. */
export function cursorOver(on: Corner | null, unit: string | null, { tool, unitInHand, fabricInHand }: HandContext): string {
  if (on !== null) return on[0] === on[1] ? 'nwse-resize' : 'nesw-resize'
  if (tool !== 'hand') return 'crosshair'
  if (fabricInHand !== null) return unit === null ? 'default' : 'cell'
  if (unit !== null) return 'grab'
  return unitInHand === null ? 'default' : 'copy'
}
