/**
 * Where a thing lands while it is dragged: units on whole cells; where halves are asked for, also on half cells, on other units' edges, or on the
 * middle of the block. A single point always snaps to all of these but half cells.
 *
 * In      its box, how far the pointer has moved it, and what can attract it; in cells.
 * Out     how far it really moves, exactly, and lines that show what it is in line with.
 * The nearest place wins; at the same distance, the cells.
 */
import {
  type Block,
  boxOf,
  type ExactBox,
  multiply,
  type Position,
  type Rational,
  rational,
  subtract,
  toFile,
  toNumber,
  type Unit,
} from '../../../geometry/index.ts'
import type { Point } from '../../document/shapes.ts'

/** A line that shows what a dragged thing is in line with; in cells. */
export interface Guide {
  readonly type: 'edge' | 'middle'
  /** 0: an upright line, where x is `at`; 1: a level one, where y is. */
  readonly axis: 0 | 1
  readonly at: number
  readonly from: number
  readonly to: number
}

export interface Snapped {
  readonly by: readonly [Position, Position]
  readonly guides: readonly Guide[]
}

/** What attracts a dragged thing. */
export interface SnapContext {
  readonly grid: Block['grid']
  readonly units: readonly Unit[]
  /** Half cells too. */
  readonly half: boolean
  /** Cells within which an edge or the middle of the block attracts. */
  readonly reach: number
}

interface Candidate {
  readonly low: Rational
  readonly distance: number
}

/** Cells: two places closer than this are one, for thirds and the like are not whole in doubles. */
const EPSILON = 1e-9

/** How far a box moves that the pointer has moved `by` cells. */
export function snapMove(box: ExactBox, by: Point, context: SnapContext): Snapped {
  const boxes = context.units.map(boxOf)
  const near = context.half ? boxes : null
  const lows = ([0, 1] as const).map((axis) => snapAlong(axis, box, by[axis], near, context)) as [Rational, Rational]
  const moved = ([0, 1] as const).map((axis) => subtract(lows[axis], box.low[axis])) as [Rational, Rational]
  return { by: [toFile(moved[0]), toFile(moved[1])], guides: guidesOf(box, [toNumber(moved[0]), toNumber(moved[1])], boxes, context.grid) }
}

/** The low side of the box along one axis, snapped; to cells alone where no boxes are given. */
function snapAlong(axis: 0 | 1, box: ExactBox, by: number, boxes: readonly ExactBox[] | null, { grid, half, reach }: SnapContext): Rational {
  const wanted = toNumber(box.low[axis]) + by
  const size = subtract(box.high[axis], box.low[axis])
  const parts = half ? 2 : 1
  const cells = rational(Math.round(wanted * parts), parts)
  if (boxes === null) return cells
  const middle = multiply(rational(1, 2), subtract(rational(axis === 0 ? grid.columns : grid.rows, 1), size))
  const edges = boxes.flatMap(({ low, high }) => [low[axis], high[axis], subtract(low[axis], size), subtract(high[axis], size)])
  const candidates = [middle, ...edges].map((low): Candidate => ({ low, distance: Math.abs(toNumber(low) - wanted) }))
  const best = candidates.reduce<Candidate>((nearest, one) => (one.distance + EPSILON < nearest.distance ? one : nearest), {
    low: cells,
    distance: Math.abs(toNumber(cells) - wanted),
  })
  return best.low === cells || best.distance <= reach ? best.low : cells
}

/** A single point, such as a corner that is dragged: a box without size. */
export function snapPoint(at: Point, context: SnapContext): readonly [Rational, Rational] {
  const zero = rational(0, 1)
  const box: ExactBox = { low: [zero, zero], high: [zero, zero] }
  const boxes = context.units.map(boxOf)
  return ([0, 1] as const).map((axis) => snapAlong(axis, box, at[axis], boxes, context)) as [Rational, Rational]
}

/** Each edge of the box shows the nearest edge that it is in line with; the box shows the middle of the block where it lies on it. */
function guidesOf(box: ExactBox, by: Point, boxes: readonly ExactBox[], { columns, rows }: Block['grid']): Guide[] {
  const asPoints = (one: ExactBox): { low: Point; high: Point } => ({ low: asPoint(one.low), high: asPoint(one.high) })
  const start = asPoints(box)
  const low: Point = [start.low[0] + by[0], start.low[1] + by[1]]
  const high: Point = [start.high[0] + by[0], start.high[1] + by[1]]
  const others = boxes.map(asPoints)
  return ([0, 1] as const).flatMap((axis) => {
    const across = axis === 0 ? 1 : 0
    const apart = (other: { low: Point; high: Point }): number => Math.max(0, other.low[across] - high[across], low[across] - other.high[across])
    const edges = [low[axis], high[axis]].flatMap((at): Guide[] => {
      const inLine = others.filter((other) => Math.abs(other.low[axis] - at) < EPSILON || Math.abs(other.high[axis] - at) < EPSILON)
      const nearest = inLine.sort((a, b) => apart(a) - apart(b))[0]
      if (nearest === undefined) return []
      return [{ type: 'edge', axis, at, from: Math.min(low[across], nearest.low[across]), to: Math.max(high[across], nearest.high[across]) }]
    })
    const length = axis === 0 ? columns : rows
    const onMiddle = Math.abs((low[axis] + high[axis]) / 2 - length / 2) < EPSILON
    const middle: Guide[] = onMiddle ? [{ type: 'middle', axis, at: length / 2, from: 0, to: axis === 0 ? rows : columns }] : []
    return [...edges, ...middle]
  })
}

const asPoint = ([x, y]: readonly [Rational, Rational]): Point => [toNumber(x), toNumber(y)]
