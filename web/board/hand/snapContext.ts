/** What attracts a thing that is dragged: the units near it, and how far their edges reach. */
import { type FilePoint, toFile } from '../../../geometry/index.ts'
import { toDecimal, type Point } from '../../document/shapes.ts'
import { unitsIndex } from '../hitTest.ts'
import { type SnapContext, snapPoint } from './snapping.ts'
import type { HandContext, PointerState } from './values.ts'

/** Cells around what is dragged within which edges of other units attract it, and at most so many of those units. */
const NEAR = 3
const MOST_NEAR = 60
/** Pixels within which an edge attracts, and at most so many cells. */
const REACH = 9
const MOST_REACH = 0.3

/** What a box between two points (cells) snaps to; `except` are the units that are dragged themselves. */
export function snapContext({ block, frame }: HandContext, low: Point, high: Point, except: ReadonlySet<string>, half: boolean): SnapContext {
  const units = unitsIndex(block)
    .touching([low[0] - NEAR, low[1] - NEAR], [high[0] + NEAR, high[1] + NEAR])
    .filter(({ id }) => !except.has(id))
    .slice(0, MOST_NEAR)
  return { grid: block.grid, units, half, reach: Math.min(MOST_REACH, REACH / frame.scale) }
}

/** Where a corner of a free patch lands: on the grid, on another edge, or on the middle of the block. */
export function cornerAt({ cells, half }: PointerState, context: HandContext): FilePoint {
  const [x, y] = snapPoint(cells, snapContext(context, cells, cells, new Set(), half))
  return [toFile(x), toFile(y)]
}

/** The corner that a press would add now, in cells; null where the pointer is not over the board. */
export function nextCorner(hover: PointerState | null, context: HandContext): Point | null {
  if (hover === null) return null
  const [x, y] = cornerAt(hover, context)
  return [toDecimal(x), toDecimal(y)]
}
