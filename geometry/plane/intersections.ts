/**
 * Where stretches of outline meet.
 *
 * In      stretches in groups, those of one group never crossing or touching but at their ends.
 * Out     for each stretch the points strictly inside it where one of another group crosses it, ends on it or begins to lie along it.
 * How     a grid of square fields over the whole: only stretches that run through the same field are compared.
 * Exact   the grid uses doubles with a margin; whether two stretches meet is decided exactly by `Points`.
 */
import type { Points } from './vertices.ts'

/** Runs right, or straight down. */
export interface Stretch {
  readonly line: number
  readonly from: number
  readonly to: number
  /** How much more the clockwise side (below it) has than the other. */
  readonly jump: number
}

export type Cuts = readonly (readonly number[] | undefined)[]

/** `sizes`: how many of the stretches are in the first group, in the second and so on. */
export function cutsOf(points: Points, all: readonly Stretch[], sizes: readonly number[]): Cuts {
  const cuts: (number[] | undefined)[] = new Array(all.length).fill(undefined)
  const net = new Net(points, all)
  let first = 0
  sizes.forEach((size, group) => {
    if (first > 0)
      for (let next = first; next < first + size; next++)
        net.each(next, (other) => {
          cutBoth(points, all, cuts, next, other)
        })
    if (group + 1 < sizes.length) for (let next = first; next < first + size; next++) net.enter(next)
    first += size
  })
  return cuts
}

const MOST_FIELDS = 400

class Net {
  private readonly fields: number
  private readonly left: number
  private readonly top: number
  private readonly wide: number
  private readonly high: number
  /** How much wider a stretch is drawn, to allow for rounding of doubles. */
  private readonly margin: number
  private readonly boxes: Float64Array
  private readonly slopes: Float64Array
  /** Chains of the stretches that run through each field. */
  private readonly heads: Int32Array
  private readonly entries: number[] = []
  private readonly nexts: number[] = []
  private readonly triedWith: Int32Array

  constructor(points: Points, all: readonly Stretch[]) {
    this.boxes = boxesOf(points, all)
    this.slopes = Float64Array.from(all, ({ from, to }) => (points.y(to) - points.y(from)) / (points.x(to) - points.x(from)))
    let [left, right, top, bottom] = [Infinity, -Infinity, Infinity, -Infinity]
    for (let at = 0; at < this.boxes.length; at += 4) {
      left = Math.min(left, this.boxes[at] as number)
      right = Math.max(right, this.boxes[at + 1] as number)
      top = Math.min(top, this.boxes[at + 2] as number)
      bottom = Math.max(bottom, this.boxes[at + 3] as number)
    }
    this.fields = Math.min(MOST_FIELDS, Math.ceil(Math.sqrt(all.length)))
    this.left = left
    this.top = top
    this.wide = (right - left) / this.fields || 1
    this.high = (bottom - top) / this.fields || 1
    this.margin = Math.max(Math.abs(left), Math.abs(right), Math.abs(top), Math.abs(bottom)) * 2 ** -40
    this.heads = new Int32Array(this.fields ** 2).fill(-1)
    this.triedWith = new Int32Array(all.length).fill(-1)
  }

  enter(stretch: number): void {
    this.through(stretch, (field) => {
      this.nexts.push(this.heads[field] as number)
      this.heads[field] = this.entries.push(stretch) - 1
    })
  }

  /** Visits each entered stretch whose box touches this one's, once. */
  each(stretch: number, visit: (other: number) => void): void {
    const { boxes, heads, entries, nexts, triedWith } = this
    const own = stretch * 4
    const [left, right, top, bottom] = [boxes[own] as number, boxes[own + 1] as number, boxes[own + 2] as number, boxes[own + 3] as number]
    this.through(stretch, (field) => {
      for (let entry = heads[field] as number; entry >= 0; entry = nexts[entry] as number) {
        const other = entries[entry] as number
        if (triedWith[other] === stretch) continue
        triedWith[other] = stretch
        const at = other * 4
        if ((boxes[at] as number) > right || (boxes[at + 1] as number) < left) continue
        if ((boxes[at + 2] as number) <= bottom && (boxes[at + 3] as number) >= top) visit(other)
      }
    })
  }

  /** The fields that a stretch runs through, column by column. */
  private through(stretch: number, visit: (field: number) => void): void {
    const at = stretch * 4
    const [left, right, top, bottom] = [0, 1, 2, 3].map((side) => this.boxes[at + side] as number) as [number, number, number, number]
    const slope = this.slopes[stretch] as number
    const [first, last] = [this.place(left - this.left, this.wide), this.place(right - this.left, this.wide)]
    const start = slope < 0 ? bottom : top
    for (let column = first; column <= last; column++) {
      let [high, low] = [top, bottom]
      if (first !== last && Number.isFinite(slope)) {
        const [from, to] = [column * this.wide + this.left - left, (column + 1) * this.wide + this.left - left]
        const reach = this.margin + Math.abs(slope) * this.margin
        high = Math.max(top, start + (slope < 0 ? to : from) * slope - reach)
        low = Math.min(bottom, start + (slope < 0 ? from : to) * slope + reach)
      }
      const end = this.place(low - this.top, this.high)
      for (let row = this.place(high - this.top, this.high); row <= end; row++) visit(column * this.fields + row)
    }
  }

  private place(distance: number, size: number): number {
    return Math.max(0, Math.min(this.fields - 1, Math.floor(distance / size)))
  }
}

/** Left, right, top and bottom of each; a little too large where a point is not exact. */
function boxesOf(points: Points, all: readonly Stretch[]): Float64Array {
  const boxes = new Float64Array(all.length * 4)
  all.forEach(({ from, to }, index) => {
    const slack = Math.max(points.slack(from), points.slack(to))
    const [x0, x1, y0, y1] = [points.x(from), points.x(to), points.y(from), points.y(to)]
    boxes.set([Math.min(x0, x1) - slack, Math.max(x0, x1) + slack, Math.min(y0, y1) - slack, Math.max(y0, y1) + slack], index * 4)
  })
  return boxes
}

function cutBoth(points: Points, all: readonly Stretch[], cuts: (number[] | undefined)[], first: number, second: number): void {
  const [a, b] = [all[first] as Stretch, all[second] as Stretch]
  const cut = (stretch: number, point: number): void => {
    const known = cuts[stretch]
    if (known === undefined) cuts[stretch] = [point]
    else known.push(point)
  }
  if (a.line === b.line) {
    const inside = ({ from, to }: Stretch, point: number): boolean => points.order(from, point) < 0 && points.order(point, to) < 0
    for (const point of [b.from, b.to]) if (inside(a, point)) cut(first, point)
    for (const point of [a.from, a.to]) if (inside(b, point)) cut(second, point)
    return
  }
  const [bFrom, bTo] = [points.side(a.line, b.from), points.side(a.line, b.to)]
  if (bFrom * bTo > 0) return
  const [aFrom, aTo] = [points.side(b.line, a.from), points.side(b.line, a.to)]
  if (aFrom * aTo > 0) return
  const [aPasses, bPasses] = [aFrom * aTo < 0, bFrom * bTo < 0]
  if (aPasses && bPasses) {
    const point = points.crossing(a.line, b.line)
    cut(first, point)
    cut(second, point)
  } else if (aPasses) cut(first, bFrom === 0 ? b.from : b.to)
  else if (bPasses) cut(second, aFrom === 0 ? a.from : a.to)
}
