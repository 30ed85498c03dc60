/** Dragging a corner of what is selected. */
import {
  add,
  type Block,
  boxAround,
  divide,
  type ExactBox,
  type FileBox,
  keepsProportion,
  multiply,
  type Rational,
  rational,
  subtract,
  toFile,
  toNumber,
  type Unit,
} from '../../../geometry/index.ts'
import { toDecimal, type Point, type Rect, rectOf } from '../../document/shapes.ts'
import { hasRoom, unitsById } from '../hitTest.ts'
import { isDrag } from './dragStart.ts'
import { snapContext } from './snapContext.ts'
import { snapPoint } from './snapping.ts'
import type { Corner, Gesture, GestureOf, HandContext, PointerState } from './values.ts'

/** Starts on a corner; null where nothing is selected. */
export function startResize(ids: readonly string[], corner: Corner, block: Block, from: PointerState): GestureOf<'resize'> | null {
  const box = boxAround(unitsById(block, ids))
  return box === null ? null : { type: 'resize', from, dragged: false, ids, box, corner, to: fileBox(box.low, box.high), fits: true }
}

/** The corner across stays; the dragged one snaps, and no side becomes shorter than a cell (half a cell where halves are on). */
export function dragCorner(gesture: GestureOf<'resize'>, at: PointerState, context: HandContext): Gesture {
  const { ids, box, corner, from } = gesture
  if (!gesture.dragged && !isDrag(from, at)) return gesture
  const dragged = new Set(ids)
  const point = snapPoint(at.cells, snapContext(context, at.cells, at.cells, dragged, at.half))
  const least = at.half ? rational(1, 2) : rational(1)
  const sides = bothAxes((axis) => {
    const side = corner[axis] === 1 ? subtract(point[axis], box.low[axis]) : subtract(box.high[axis], point[axis])
    return toNumber(side) < toNumber(least) ? least : side
  })
  const units = unitsById(context.block, ids)
  const size = keepsProportion(units) ? inProportion(box, sides) : sides
  const low = bothAxes((axis) => (corner[axis] === 1 ? box.low[axis] : subtract(box.high[axis], size[axis])))
  const to = fileBox(low, [add(low[0], size[0]), add(low[1], size[1])])
  return { ...gesture, dragged: true, to, fits: hasRoom(context.block, scaledRects(units, box, to), dragged, units) }
}

const bothAxes = <T>(along: (axis: 0 | 1) => T): [T, T] => [along(0), along(1)]

/** The larger of the two changes decides; the other side follows. */
function inProportion({ low, high }: ExactBox, [w, h]: readonly [Rational, Rational]): [Rational, Rational] {
  const before = bothAxes((axis) => subtract(high[axis], low[axis]))
  const by = [divide(w, before[0]), divide(h, before[1])] as const
  const part = toNumber(by[0]) >= toNumber(by[1]) ? by[0] : by[1]
  return [multiply(before[0], part), multiply(before[1], part)]
}

const fileBox = (low: readonly [Rational, Rational], high: readonly [Rational, Rational]): FileBox => ({
  at: [toFile(low[0]), toFile(low[1])],
  size: [toFile(subtract(high[0], low[0])), toFile(subtract(high[1], low[1]))],
})

/** Takes points of one box to where they lie in the other: for drawing, and for seeing whether there is room. */
export function scaleBetween(box: ExactBox, to: FileBox): (point: Point) => Point {
  const low: Point = [toNumber(box.low[0]), toNumber(box.low[1])]
  const by = bothAxes((axis) => toDecimal(to.size[axis]) / (toNumber(box.high[axis]) - low[axis]))
  return ([x, y]) => [toDecimal(to.at[0]) + (x - low[0]) * by[0], toDecimal(to.at[1]) + (y - low[1]) * by[1]]
}

function scaledRects(units: readonly Unit[], box: ExactBox, to: FileBox): Rect[] {
  const scaled = scaleBetween(box, to)
  return units.map((unit) => {
    const { at, size } = rectOf(unit)
    const [low, high] = [scaled(at), scaled([at[0] + size[0], at[1] + size[1]])]
    return { at: low, size: [high[0] - low[0], high[1] - low[1]] }
  })
}
