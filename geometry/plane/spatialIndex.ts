/**
 * Finds what lies in a box without looking at everything.
 *
 * In      items with their boxes, in any unit: cells on the board, steps in the plane.
 * Out     the items whose boxes touch a box, in the order in which they were given.
 * How     the block is divided into squares with a few items each; an item is listed in every square that its box touches.
 */
import type { Dot } from './points.ts'

/** The lowest and the highest x and y of an item. */
export type Box = readonly [low: Dot, high: Dot]

export interface SpatialIndex<T> {
  readonly touching: (low: Dot, high: Dot) => T[]
}

/** Items in a square, about. */
const CROWD = 4

interface Sides {
  readonly low: readonly [number, number]
  readonly across: number
  readonly down: number
  readonly side: number
}

export function spatialIndex<T>(items: readonly T[], boxOf: (item: T) => Box): SpatialIndex<T> {
  const boxes = new Float64Array(items.length * 4)
  items.forEach((item, index) => {
    const [low, high] = boxOf(item)
    boxes.set([...low, ...high], index * 4)
  })
  const sides = sidesOf(boxes, items.length)
  const { starts, places } = sorted(boxes, items.length, sides)
  return {
    touching: ([x0, y0], [x1, y1]) => {
      const found = new Set<number>()
      eachSquare(sides, x0, y0, x1, y1, (square) => {
        for (let place = starts[square] as number; place < (starts[square + 1] as number); place++) {
          const index = places[place] as number
          const at = index * 4
          if ((boxes[at] as number) <= x1 && (boxes[at + 2] as number) >= x0 && (boxes[at + 1] as number) <= y1 && (boxes[at + 3] as number) >= y0)
            found.add(index)
        }
      })
      return [...found].sort((a, b) => a - b).map((index) => items[index] as T)
    },
  }
}

function sidesOf(boxes: Float64Array, count: number): Sides {
  let [x0, y0, x1, y1] = [Infinity, Infinity, -Infinity, -Infinity]
  for (let at = 0; at < count * 4; at += 4) {
    x0 = Math.min(x0, boxes[at] as number)
    y0 = Math.min(y0, boxes[at + 1] as number)
    x1 = Math.max(x1, boxes[at + 2] as number)
    y1 = Math.max(y1, boxes[at + 3] as number)
  }
  if (count === 0) return { low: [0, 0], across: 1, down: 1, side: 1 }
  const [width, height] = [Math.max(x1 - x0, 1e-6), Math.max(y1 - y0, 1e-6)]
  const side = Math.max(Math.sqrt((width * height * CROWD) / count), width / 1000, height / 1000)
  return { low: [x0, y0], across: Math.floor(width / side) + 1, down: Math.floor(height / side) + 1, side }
}

function eachSquare({ low, across, down, side }: Sides, x0: number, y0: number, x1: number, y1: number, see: (square: number) => void): void {
  const within = (value: number, most: number): number => Math.min(most - 1, Math.max(0, Math.floor(value / side)))
  const [left, right] = [within(x0 - low[0], across), within(x1 - low[0], across)]
  const [top, bottom] = [within(y0 - low[1], down), within(y1 - low[1], down)]
  for (let row = top; row <= bottom; row++) for (let column = left; column <= right; column++) see(row * across + column)
}

/** A counting sort: the items of square s stand at `places[starts[s]]` and on. */
function sorted(boxes: Float64Array, count: number, sides: Sides): { starts: Uint32Array; places: Uint32Array } {
  const starts = new Uint32Array(sides.across * sides.down + 1)
  const each = (index: number, see: (square: number) => void): void => {
    const at = index * 4
    eachSquare(sides, boxes[at] as number, boxes[at + 1] as number, boxes[at + 2] as number, boxes[at + 3] as number, see)
  }
  for (let index = 0; index < count; index++)
    each(index, (square) => {
      starts[square + 1] = (starts[square + 1] as number) + 1
    })
  for (let square = 1; square < starts.length; square++) starts[square] = (starts[square] as number) + (starts[square - 1] as number)
  const places = new Uint32Array(starts.at(-1) as number)
  const next = starts.slice()
  for (let index = 0; index < count; index++)
    each(index, (square) => {
      places[next[square] as number] = index
      next[square] = (next[square] as number) + 1
    })
  return { starts, places }
}
