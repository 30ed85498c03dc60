/**
 * What a press starts on, which drag it becomes, and how each drag continues.
 *
 * In      the gesture so far, where the pointer is now, and what lies on the board.
 * Out     the gesture after it: what would be moved, resized, placed, recoloured or selected if the pointer were released now.
 */
import { boxAround, type Rational, sameSize, toNumber, type Unit } from '../../../geometry/index.ts'
import { toDecimal, type Point, type Rect, rectOf } from '../../document/shapes.ts'
import { hasRoom, pieceAt, unitById, unitsById } from '../hitTest.ts'
import { fillBetween, squareOver } from '../newUnit.ts'
import { FINGER_DRAG_START } from './dragStart.ts'
import { dragCorner } from './resize.ts'
import { snapContext } from './snapContext.ts'
import { snapMove } from './snapping.ts'
import type { Gesture, GestureOf, HandContext, PatchRef, PointerState } from './values.ts'

/** A press on the topmost patch there, or on none. */
export function pressAt(at: PointerState, { block }: HandContext): GestureOf<'press'> {
  const piece = pieceAt(block, at.cells)
  return { type: 'press', from: at, patch: piece?.unit == null ? null : { unit: piece.unit, name: piece.name } }
}

/** What a press becomes when it is dragged. It depends on the tool, on what is in hand, and on what was pressed. */
export function startDrag({ from, patch }: GestureOf<'press'>, at: PointerState, context: HandContext): Gesture {
  const { block, tool, unitInHand, fabricInHand, selected, pan } = context
  const touch = from.pointerType === 'touch'
  if (context.pressing) return { type: 'pan', from: from.at, pan }
  if (tool === 'box') return { type: 'box', from, to: at }
  if (tool === 'loop') return { type: 'loop', from, points: [from, at] }
  if (tool === 'patch') return touch ? { type: 'corner', to: at } : { type: 'pan', from: from.at, pan }
  if (patch !== null && fabricInHand !== null && !from.add)
    return continueDrag({ type: 'recolour', fabric: fabricInHand, over: [], last: from.cells }, at, context)
  if (patch !== null) {
    const ids = selected.includes(patch.unit) ? selected : from.add ? [...selected, patch.unit] : [patch.unit]
    const box = boxAround(unitsById(block, ids))
    if (box !== null)
      return continueDrag({ type: 'move', from, ids, box, snapped: { by: [0, 0], guides: [] }, fits: true, swap: null, inTheWay: null }, at, context)
  }
  if (unitInHand !== null) return continueDrag({ type: 'fill', kind: unitInHand, from: cellAt(from.cells), units: [] }, at, context)
  return touch ? { type: 'pan', from: from.at, pan } : { type: 'box', from, to: at }
}

/** The drag after the pointer has moved. */
export function continueDrag(gesture: Gesture, at: PointerState, context: HandContext): Gesture {
  switch (gesture.type) {
    case 'move':
      return moveUnits(gesture, at, context)
    case 'resize':
      return dragCorner(gesture, at, context)
    case 'fill':
      return { ...gesture, units: unitsOver(gesture, at, context) }
    case 'recolour':
      return recolour(gesture, at, context)
    case 'box':
    case 'corner':
      return { ...gesture, to: at }
    case 'loop':
      return { ...gesture, points: [...gesture.points, at] }
    default:
      return gesture
  }
}

function unitsOver({ kind, from }: GestureOf<'fill'>, { cells, add }: PointerState, { block, unitTurn, unitMirror }: HandContext): readonly Unit[] {
  const large = kind === 'square' && !add ? squareOver(block, from, cellAt(cells)) : null
  return large === null ? fillBetween(block, kind, from, cellAt(cells), unitTurn, unitMirror) : [large]
}

const cellAt = ([x, y]: Point): Point => [Math.floor(x), Math.floor(y)]

function moveUnits(gesture: GestureOf<'move'>, at: PointerState, context: HandContext): Gesture {
  const { block } = context
  const { from, ids, box } = gesture
  const by: Point = [at.cells[0] - from.cells[0], at.cells[1] - from.cells[1]]
  const dragged = new Set(ids)
  const [low, high] = [asPoint(box.low), asPoint(box.high)]
  const snapped = snapMove(box, by, snapContext(context, [low[0] + by[0], low[1] + by[1]], [high[0] + by[0], high[1] + by[1]], dragged, at.half))
  const shift: Point = [toDecimal(snapped.by[0]), toDecimal(snapped.by[1])]
  const units = unitsById(block, ids)
  const rects = units.map((unit) => shiftRect(rectOf(unit), shift))
  const fits = hasRoom(block, rects, dragged, units)
  const other = fits || units.length !== 1 ? undefined : unitUnder(at, dragged, context)
  const swap = other !== undefined && sameSize(units[0] as Unit, other) ? other.id : null
  return { ...gesture, snapped, fits, swap, inTheWay: swap === null ? (other?.id ?? null) : null }
}

function unitUnder({ cells }: PointerState, except: ReadonlySet<string>, { block }: HandContext): Unit | undefined {
  const id = pieceAt(block, cells)?.unit
  return id == null || except.has(id) ? undefined : unitById(block, id)
}

const shiftRect = ({ at, size }: Rect, by: Point): Rect => ({ at: [at[0] + by[0], at[1] + by[1]], size })
const asPoint = ([x, y]: readonly [Rational, Rational]): Point => [toNumber(x), toNumber(y)]

/** Adds every patch between the last point and this one, each once, however fast the pointer moves. */
function recolour(gesture: GestureOf<'recolour'>, { cells }: PointerState, { block, frame }: HandContext): Gesture {
  const { over, last } = gesture
  const [dx, dy] = [cells[0] - last[0], cells[1] - last[1]]
  const steps = Math.max(1, Math.ceil((Math.hypot(dx, dy) * frame.scale) / FINGER_DRAG_START))
  const patches: PatchRef[] = [...over]
  for (let step = 0; step <= steps; step++) {
    const piece = pieceAt(block, [last[0] + (dx * step) / steps, last[1] + (dy * step) / steps])
    if (piece?.unit == null || patches.some(({ unit, name }) => unit === piece.unit && name === piece.name)) continue
    patches.push({ unit: piece.unit, name: piece.name })
  }
  return { ...gesture, over: patches, last: cells }
}
