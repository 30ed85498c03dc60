/**
 * Where a thing comes to lie while it is dragged: on cells (or halves of cells), at other units' edges, on the middle of the block.
 *
 * In      its box, how far the hand has moved it, the units near, the grid, and the hand's reach; in cells.
 * Out     how far it really moves, exactly, and lines that show what it has come in line with.
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

export interface Guide {
  /** Whether x or y is the same all along it. */
  readonly axis: 0 | 1
  readonly at: number
  readonly from: number
  readonly to: number
  readonly sort: 'edge' | 'middle'
}

export interface Snapped {
  readonly by: readonly [Position, Position]
  readonly guides: readonly Guide[]
}

export interface Around {
  readonly grid: Block['grid']
  readonly units: readonly Unit[]
  /** Halves of cells too. */
  readonly half: boolean
  /** Cells within which another edge or the middle is taken. */
  readonly reach: number
}

interface Place {
  readonly low: Rational
  readonly distance: number
}

const HAIR = 1e-9

export function snapMove(box: ExactBox, by: Point, around: Around): Snapped {
  const boxes = around.units.map(boxOf)
  const lows = ([0, 1] as const).map((axis) => placeAlong(axis, box, by[axis], boxes, around)) as [Rational, Rational]
  const moved = ([0, 1] as const).map((axis) => subtract(lows[axis], box.low[axis])) as [Rational, Rational]
  return { by: [toFile(moved[0]), toFile(moved[1])], guides: guidesOf(box, [toNumber(moved[0]), toNumber(moved[1])], boxes, around.grid) }
}

function placeAlong(axis: 0 | 1, box: ExactBox, by: number, boxes: readonly ExactBox[], { grid, half, reach }: Around): Rational {
  const wanted = toNumber(box.low[axis]) + by
  const size = subtract(box.high[axis], box.low[axis])
  const parts = half ? 2 : 1
  const cells = rational(Math.round(wanted * parts), parts)
  const middle = multiply(rational(1, 2), subtract(rational(axis === 0 ? grid.columns : grid.rows, 1), size))
  const edges = boxes.flatMap(({ low, high }) => [low[axis], high[axis], subtract(low[axis], size), subtract(high[axis], size)])
  const places = [middle, ...edges].map((low): Place => ({ low, distance: Math.abs(toNumber(low) - wanted) }))
  const best = places.reduce<Place>((least, place) => (place.distance + HAIR < least.distance ? place : least), {
    low: cells,
    distance: Math.abs(toNumber(cells) - wanted),
  })
  return best.low === cells || best.distance <= reach ? best.low : cells
}

/** One point, for corners that are dragged: a box without size. */
export function snapPoint(at: Point, around: Around): readonly [Rational, Rational] {
  const zero = rational(0, 1)
  const box: ExactBox = { low: [zero, zero], high: [zero, zero] }
  const boxes = around.units.map(boxOf)
  return ([0, 1] as const).map((axis) => placeAlong(axis, box, at[axis], boxes, around)) as [Rational, Rational]
}

/** Each edge shows the nearest edge that it is in line with, and the middle of the block where the box lies on it. */
function guidesOf(box: ExactBox, by: Point, boxes: readonly ExactBox[], { columns, rows }: Block['grid']): Guide[] {
  const ends = (one: ExactBox): { low: Point; high: Point } => ({ low: numbers(one.low), high: numbers(one.high) })
  const own = ends(box)
  const low: Point = [own.low[0] + by[0], own.low[1] + by[1]]
  const high: Point = [own.high[0] + by[0], own.high[1] + by[1]]
  const others = boxes.map(ends)
  return ([0, 1] as const).flatMap((axis) => {
    const across = axis === 0 ? 1 : 0
    const edges = [low[axis], high[axis]].flatMap((at): Guide[] => {
      const inLine = others.filter((other) => Math.abs(other.low[axis] - at) < HAIR || Math.abs(other.high[axis] - at) < HAIR)
      const apart = (other: { low: Point; high: Point }): number => Math.max(0, other.low[across] - high[across], low[across] - other.high[across])
      const nearest = inLine.sort((a, b) => apart(a) - apart(b))[0]
      if (nearest === undefined) return []
      return [{ axis, at, from: Math.min(low[across], nearest.low[across]), to: Math.max(high[across], nearest.high[across]), sort: 'edge' }]
    })
    const whole = axis === 0 ? columns : rows
    const onMiddle = Math.abs((low[axis] + high[axis]) / 2 - whole / 2) < HAIR
    const middle: Guide[] = onMiddle ? [{ axis, at: whole / 2, from: 0, to: axis === 0 ? rows : columns, sort: 'middle' }] : []
    return [...edges, ...middle]
  })
}

const numbers = ([x, y]: readonly [Rational, Rational]): Point => [toNumber(x), toNumber(y)]
