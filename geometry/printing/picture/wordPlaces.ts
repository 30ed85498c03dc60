/**
 * Where words stand on a picture: never on a line, nor on other words, where there is room near their place.
 *
 * In      the marks of a picture, how places become points, and word by word where it should stand.
 * Out     the nearest place that is free. Words that would have to leave their own patch, or cross a line that they did not stand on, stay.
 */
import type { Mark, Spot } from '../../writing/booklet/values.ts'

type Segment = readonly [Spot, Spot]
/** Left, top, right, foot. */
type Box = readonly [number, number, number, number]
type Align = 'left' | 'middle' | 'right'

/** How far words may move, as times their size, and by which steps. */
const FAR = 3.2
const STEP = 0.4
/** A line counts as under the place of words up to so many points from it. */
const UNDER = 0.8

export class WordPlaces {
  private readonly lines: readonly Segment[]
  private readonly taken: Box[] = []

  constructor(marks: readonly Mark[], put: (spot: Spot) => Spot) {
    this.lines = marks.some(({ type }) => type === 'text') ? marks.flatMap((mark) => linesOf(mark, put)) : []
  }

  /** Where words of a width and size stand: their place or one near it. */
  place(at: Spot, align: Align, width: number, size: number): Spot {
    const reach = width + FAR * size
    const near = this.lines.filter((line) => distanceTo(at, line) < reach)
    const under = new Set(near.filter((line) => distanceTo(at, line) <= UNDER))
    const barriers = near.filter((line) => !under.has(line))
    const free = (spot: Spot): boolean => {
      const box = boxOf(spot, align, width, size)
      if (this.taken.some((other) => overlap(box, other)) || near.some((line) => meets(line, box))) return false
      return !barriers.some((line) => crosses(line, [at, spot]))
    }
    const found = free(at)
      ? at
      : (AROUND.map(([x, y]): Spot => [at[0] + x * size, at[1] + y * size]).find(free) ?? this.apart(at, align, width, size))
    this.taken.push(boxOf(found, align, width, size))
    return found
  }

  /** Where lines leave no room, words at least leave other words free, up or down by lines of text. */
  private apart(at: Spot, align: Align, width: number, size: number): Spot {
    const spots = [0, -1, 1, -2, 2].map((steps): Spot => [at[0], at[1] + steps * size * 1.25])
    return spots.find((spot) => !this.taken.some((other) => overlap(boxOf(spot, align, width, size), other))) ?? at
  }
}

/** Steps round a place, the nearest first. */
const AROUND: readonly Spot[] = Array.from({ length: Math.round(FAR / STEP) }, (_, ring) => ring + 1).flatMap((ring) =>
  Array.from({ length: 16 }, (_, at): Spot => [ring * STEP * Math.cos((Math.PI * at) / 8), ring * STEP * Math.sin((Math.PI * at) / 8)]),
)

function linesOf(mark: Mark, put: (spot: Spot) => Spot): Segment[] {
  const way = (points: readonly Spot[], closed: boolean): Segment[] => {
    const spots = points.map(put)
    return spots.flatMap((to, at): Segment[] => (at === 0 && !closed ? [] : [[spots.at(at - 1) as Spot, to]]))
  }
  if (mark.type === 'area') return mark.line === 'none' ? [] : way(mark.outline, true)
  if (mark.type === 'line') return way(mark.points, mark.closed ?? false)
  if (mark.type === 'arrow') return way([mark.from, mark.to], false)
  if (mark.type === 'leg') return way(mark.points, false)
  if (mark.type === 'text') return []
  // Marks of points are small: a cross of lines stands for one.
  const [x, y] = put(mark.at)
  const half = 4
  return [
    [
      [x - half, y - half],
      [x + half, y + half],
    ],
    [
      [x - half, y + half],
      [x + half, y - half],
    ],
  ]
}

function boxOf([x, y]: Spot, align: Align, width: number, size: number): Box {
  const left = align === 'left' ? x : align === 'right' ? x - width : x - width / 2
  return [left - size * 0.15, y - size * 0.55, left + width + size * 0.15, y + size * 0.55]
}

const overlap = (a: Box, b: Box): boolean => a[0] < b[2] && b[0] < a[2] && a[1] < b[3] && b[1] < a[3]

function distanceTo([px, py]: Spot, [[ax, ay], [bx, by]]: Segment): number {
  const [dx, dy] = [bx - ax, by - ay]
  const part = Math.max(0, Math.min(1, ((px - ax) * dx + (py - ay) * dy) / (dx * dx + dy * dy || 1)))
  return Math.hypot(px - ax - part * dx, py - ay - part * dy)
}

/** Whether some of a line lies in a box. */
function meets([[ax, ay], [bx, by]]: Segment, [left, top, right, foot]: Box): boolean {
  let [from, to] = [0, 1]
  for (const [start, way, low, high] of [
    [ax, bx - ax, left, right],
    [ay, by - ay, top, foot],
  ] as const) {
    if (Math.abs(way) < 1e-9) {
      if (start <= low || start >= high) return false
      continue
    }
    const [one, other] = [(low - start) / way, (high - start) / way]
    from = Math.max(from, Math.min(one, other))
    to = Math.min(to, Math.max(one, other))
  }
  return from < to
}

const side = ([[ax, ay], [bx, by]]: Segment, [x, y]: Spot): number => Math.sign((bx - ax) * (y - ay) - (by - ay) * (x - ax))

const crosses = (a: Segment, b: Segment): boolean => side(a, b[0]) * side(a, b[1]) < 0 && side(b, a[0]) * side(b, a[1]) < 0
