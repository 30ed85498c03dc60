/**
 * A quilting line on a picture: legs with an arrow each, two lines side by side where a seam is stitched twice, and numbered stops.
 *
 * In      a drawing, and how places become points.
 * Out     ink. Every arrow lies on its own leg, clear of the stops where there is room; a stop covers its place and as little of the line as it can.
 */
import type { Drawing, QuiltingLegMark, QuiltingStopMark, Spot } from '../../writing/booklet/values.ts'
import { INK } from '../pageStyle.ts'
import { polygon, round, type Surface } from '../pen.ts'

type Put = (spot: Spot) => Spot

/** Left, top, right, foot. */
type Box = readonly [number, number, number, number]

export interface PlacedStop {
  readonly mark: QuiltingStopMark
  /** Its words, in one row or one below the other. */
  readonly rows: readonly string[]
  /** The middle of its box. */
  readonly middle: Spot
  /** Half of the box's sides without its round corners. */
  readonly long: number
  readonly high: number
}

const LETTERS = 7.4
/** Half the height of a stop. */
const HALF = 5.4
/** From row to row of a stop's numbers. */
const ROW = 8.4
/** How far a line lies from a seam that is stitched twice. */
const ASIDE = 1.7
const LINE = 1.3
const ARROW = 8

type Segment = readonly [Spot, Spot]

/** Each stop over its place, or beside it: where it hides least of the line, and neither other stops nor other corners. */
export function placeStops(surface: Surface, { marks, width, height }: Drawing, put: Put, weight: number): PlacedStop[] {
  const stops = marks.flatMap((mark) => (mark.type === 'stop' ? [mark] : []))
  if (stops.length === 0) return []
  const legs = marks.flatMap((mark) => (mark.type === 'leg' ? [mark.points.map(put)] : []))
  const page: Box = [...put([0, 0]), ...put([width, height])]
  const lines = legs.flatMap(segmentsOf)
  const corners = [...new Map(legs.flat().map((spot) => [spot.map((value) => value.toFixed(2)).join(' '), spot])).values()]
  const placed: PlacedStop[] = []
  const half = HALF * weight
  const cost = (one: PlacedStop, place: Spot): number => {
    const box = boxOf(one, weight)
    const hidden = lines.reduce((sum, line) => sum + lengthInside(line, box), 0)
    const others = corners.filter((corner) => liesIn(corner, box) && Math.hypot(corner[0] - place[0], corner[1] - place[1]) > 0.02).length
    const stopped = placed.filter((other) => overlap(box, boxOf(other, weight))).length
    // With an end at its place a stop is plainer than with a side.
    const aside = one.middle[1] === place[1] || one.high > 0 ? 0 : half
    return hidden + aside + 4 * beyond(box, page) + 100 * others + 1000 * stopped
  }
  const tried = stops.map((mark) => ({ place: put(mark.at), tries: triesOf(surface, mark, put(mark.at), weight) }))
  // What has no choice is placed first.
  for (const { place, tries } of tried.sort((a, b) => a.tries.length - b.tries.length)) {
    const costs = tries.map((one) => cost(one, place))
    placed.push(tries[costs.indexOf(Math.min(...costs))] as PlacedStop)
  }
  return placed
}

const FACE = { face: 'strong' } as const

/** A short number lies over its place; more words in a row or in a column, over it or with an end at it. */
function triesOf(surface: Surface, mark: QuiltingStopMark, [x, y]: Spot, weight: number): PlacedStop[] {
  const half = HALF * weight
  const longOf = (text: string): number => Math.max(0, surface.width({ ...FACE, text, size: LETTERS * weight }) / 2 - half * 0.45)
  const long = longOf(mark.text)
  const row = (dx: number, dy: number): PlacedStop => ({ mark, rows: [mark.text], middle: [x + dx, y + dy], long, high: 0 })
  if (long < half) return [row(0, 0)]
  const rows = mark.text.split(' · ')
  const high = ((rows.length - 1) * ROW * weight) / 2
  const narrow = Math.max(...rows.map(longOf))
  const column = (dx: number, dy: number): PlacedStop => ({ mark, rows, middle: [x + dx, y + dy], long: narrow, high })
  return [
    ...[0, long, -long].map((aside) => row(aside, 0)),
    ...(rows.length > 1 ? [0, high, -high].map((down) => column(0, down)) : []),
    ...[0, long, -long].flatMap((aside) => [row(aside, half), row(aside, -half)]),
  ]
}

function boxOf({ middle: [x, y], long, high }: PlacedStop, weight: number): Box {
  const half = HALF * weight
  return [x - long - half, y - high - half, x + long + half, y + high + half]
}

/** How far a box reaches out of the picture. */
const beyond = ([left, top, right, foot]: Box, page: Box): number =>
  Math.max(0, page[0] - left) + Math.max(0, page[1] - top) + Math.max(0, right - page[2]) + Math.max(0, foot - page[3])

const overlap = (a: Box, b: Box): boolean => a[0] < b[2] && b[0] < a[2] && a[1] < b[3] && b[1] < a[3]

/** In a box or at its edge, to a point. */
const liesIn = ([x, y]: Spot, [left, top, right, foot]: Box): boolean => x > left - 1 && x < right + 1 && y > top - 1 && y < foot + 1

const segmentsOf = (points: readonly Spot[]): Segment[] => points.slice(1).map((to, at) => [points[at] as Spot, to] as const)

/** The part of a segment that lies in a box, from 0 to 1; null where none does. */
function partInside([[ax, ay], [bx, by]]: Segment, [left, top, right, foot]: Box): readonly [number, number] | null {
  let [from, to] = [0, 1]
  for (const [start, way, low, high] of [
    [ax, bx - ax, left, right],
    [ay, by - ay, top, foot],
  ] as const) {
    if (Math.abs(way) < 1e-9) {
      if (start <= low || start >= high) return null
      continue
    }
    const [one, other] = [(low - start) / way, (high - start) / way]
    from = Math.max(from, Math.min(one, other))
    to = Math.min(to, Math.max(one, other))
  }
  return from < to ? [from, to] : null
}

const lengthOf = ([[ax, ay], [bx, by]]: Segment): number => Math.hypot(bx - ax, by - ay)

function lengthInside(segment: Segment, box: Box): number {
  const part = partInside(segment, box)
  return part === null ? 0 : (part[1] - part[0]) * lengthOf(segment)
}

/** One leg: a line along its seams, and an arrow where most room is left. */
export function drawLeg(surface: Surface, mark: QuiltingLegMark, put: Put, weight: number, stops: readonly PlacedStop[]): void {
  const points = mark.points.map(put)
  const segments = segmentsOf(points).map((segment, at) => movedAside(segment, (mark.beside[at] ?? 0) * ASIDE * weight))
  const way = polygon(segments.flat(), false)
  // Between two lines of stitches the seam itself is not drawn.
  segmentsOf(points).forEach((segment, at) => {
    if (mark.beside[at] !== 0) surface.path(polygon(segment, false), { line: { colour: INK.white, width: (2 * ASIDE - LINE) * weight } })
  })
  surface.path(way, { line: { colour: INK.white, width: (LINE + 1) * weight } })
  surface.path(way, { line: { colour: INK.accent, width: LINE * weight } })
  const boxes = stops.map((stop) => boxOf(stop, weight))
  const free = segments.flatMap((segment, at) => freeParts(segment, boxes).map((part) => ({ segment: part, beside: mark.beside[at] ?? 0 })))
  const room = free.reduce((best, one) => (lengthOf(one.segment) > lengthOf(best.segment) + 0.01 ? one : best), free[0] ?? WHOLE(segments, mark))
  // Two that meet each other on one seam have their arrows apart.
  const part = room.beside === 0 ? 0.5 : room.beside === 1 ? 0.34 : 0.66
  const long = Math.min(ARROW * weight, Math.max(3 * weight, lengthOf(room.segment) * (room.beside === 0 ? 0.9 : 0.45)))
  arrowHead(surface, room.segment, part, long, weight)
}

/** Where stops leave no room at all, the arrow lies in the middle of the leg. */
const WHOLE = (segments: readonly Segment[], mark: QuiltingLegMark): { segment: Segment; beside: number } => {
  const at = Math.floor(segments.length / 2)
  return { segment: segments[at] as Segment, beside: mark.beside[at] ?? 0 }
}

/** Right of its way where `far` is above 0: y runs down. */
function movedAside([[ax, ay], [bx, by]]: Segment, far: number): Segment {
  const long = Math.hypot(bx - ax, by - ay) || 1
  const [dx, dy] = [(-(by - ay) / long) * far, ((bx - ax) / long) * far]
  return [
    [ax + dx, ay + dy],
    [bx + dx, by + dy],
  ]
}

/** What boxes leave of a segment. */
function freeParts(segment: Segment, boxes: readonly Box[]): Segment[] {
  let parts: (readonly [number, number])[] = [[0, 1]]
  for (const box of boxes) {
    const inside = partInside(segment, box)
    if (inside === null) continue
    parts = parts.flatMap(([from, to]): (readonly [number, number])[] => {
      if (inside[1] <= from || inside[0] >= to) return [[from, to]]
      return [...(inside[0] > from ? [[from, inside[0]] as const] : []), ...(inside[1] < to ? [[inside[1], to] as const] : [])]
    })
  }
  const [[ax, ay], [bx, by]] = segment
  const at = (part: number): Spot => [ax + (bx - ax) * part, ay + (by - ay) * part]
  return parts.map(([from, to]) => [at(from), at(to)] as const)
}

function arrowHead(surface: Surface, [[ax, ay], [bx, by]]: Segment, part: number, long: number, weight: number): void {
  const length = Math.hypot(bx - ax, by - ay) || 1
  const [ux, uy] = [(bx - ax) / length, (by - ay) / length]
  const [x, y] = [ax + (bx - ax) * part, ay + (by - ay) * part]
  const half = long * 0.42
  const corner = (along: number, aside: number): Spot => [x + ux * along - uy * aside, y + uy * along + ux * aside]
  const head = polygon([corner(long / 2, 0), corner(-long / 2, half), corner(-long * 0.28, 0), corner(-long / 2, -half)])
  surface.path(head, { fill: INK.ink, line: { colour: INK.white, width: 0.5 * weight } })
}

/** The numbers of a stop in a box with round corners; dark where a line starts or ends. */
export function drawStop(surface: Surface, mark: QuiltingStopMark, weight: number, stops: readonly PlacedStop[]): void {
  const stop = stops.find((one) => one.mark === mark)
  if (stop === undefined) return
  const { rows, middle, long, high } = stop
  const [x, y] = middle
  const outline = round([0, 0], HALF * weight, 24).map(([cx, cy]): Spot => [x + cx + Math.sign(tidy(cx)) * long, y + cy + Math.sign(tidy(cy)) * high])
  const [fill, ink] = mark.end ? [INK.ink, INK.white] : [INK.white, INK.ink]
  surface.path(polygon(outline), { fill, line: { colour: mark.end ? INK.white : INK.ink, width: 0.6 * weight } })
  rows.forEach((text, at) => {
    const down = (at - (rows.length - 1) / 2) * ROW * weight
    surface.words({ text, at: [x, y + down], size: LETTERS * weight, align: 'middle', face: 'strong', colour: ink })
  })
}

const tidy = (value: number): number => Math.round(value * 1e6)
