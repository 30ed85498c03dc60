/**
 * Echo lines: lines that follow a patch's outline inside it, each at the same distance from the last.
 *
 * In      the corners of any simple polygon, and the distance.
 * Out     closed lines, outermost first; each lies everywhere at its own distance from the outline. A narrow place splits a line in two.
 * How     the line at a distance runs along every side moved inwards, and round every corner that points inwards. Stretches that lie
 *         nearer another part of the outline are left out: this can change only where a stretch is exactly that far from some side's line or corner,
 *         so testing the middle between two such places is enough. The rest is joined end to end.
 * Exact   straight stretches up to rounding of doubles; bends are drawn by chords, off by at most a thousandth of the distance.
 */
import { EPSILON } from '../exact/lengths.ts'
import { distanceBetween, awayFrom, liesIn, type StitchPoint, type StitchedLine } from './stitchedLines.ts'

/** How far a chord may be from its bend, as a share of the bend's radius. */
const SAG = 1e-3
const MOST_LINES = 10_000

/** The lines inside a polygon, outermost first: each lies one `spacing` farther from the outline than the last. */
export const echoLines = (corners: readonly StitchPoint[], spacing: number): StitchedLine[] => echoRounds(corners, spacing).flat()

/** The same lines by their distance from the outline: in each round those that are as far from it. */
export function echoRounds(corners: readonly StitchPoint[], spacing: number): StitchedLine[][] {
  if (!(spacing > 0)) return []
  const outline = outlineOf(corners)
  const rounds: StitchedLine[][] = []
  for (let lines = 0; lines < MOST_LINES; ) {
    const found = linesAt(outline, (rounds.length + 1) * spacing)
    if (found.length === 0) break
    rounds.push(found)
    lines += found.length
  }
  return rounds
}

interface Outline {
  readonly corners: readonly StitchPoint[]
  readonly sides: readonly Side[]
  /** Lengths up to this count as zero. */
  readonly slack: number
}

interface Side {
  readonly from: StitchPoint
  readonly to: StitchPoint
  readonly along: StitchPoint
  /** Points inwards. */
  readonly inwards: StitchPoint
  readonly length: number
}

/** A stretch, with its points given by a number that grows along it. */
interface Piece {
  readonly end: number
  readonly at: (along: number) => StitchPoint
  /** Where it is `distance` from the line of a side, or from a corner. */
  readonly nearSide: (side: Side) => readonly number[]
  readonly nearCorner: (corner: StitchPoint) => readonly number[]
  /** The greatest length of a straight chord between two points. */
  readonly chord: number
}

function outlineOf(given: readonly StitchPoint[]): Outline {
  const distinct = given.filter((corner, place) => distanceBetween(corner, given[(place + 1) % given.length] as StitchPoint) > 0)
  const corners = signedArea(distinct) < 0 ? [...distinct].reverse() : distinct
  const sides = corners.map((from, place): Side => {
    const to = corners[(place + 1) % corners.length] as StitchPoint
    const length = distanceBetween(from, to)
    const along: StitchPoint = [(to[0] - from[0]) / length, (to[1] - from[1]) / length]
    return { from, to, along, inwards: [-along[1], along[0]], length }
  })
  return { corners, sides, slack: EPSILON * sides.reduce((sum, { length }) => sum + length, 0) }
}

/** Positive where the corners run clockwise on the screen. */
function signedArea(corners: readonly StitchPoint[]): number {
  return corners.reduce((sum, [ax, ay], place) => {
    const [bx, by] = corners[(place + 1) % corners.length] as StitchPoint
    return sum + ax * by - ay * bx
  }, 0)
}

function linesAt(outline: Outline, distance: number): StitchedLine[] {
  const kept = outline.sides.flatMap((side, place) => {
    const before = outline.sides[(place + outline.sides.length - 1) % outline.sides.length] as Side
    const bend = bendAt(before, side, distance)
    return [...(bend === null ? [] : keptOf(outline, bend, distance)), ...keptOf(outline, straight(side, distance), distance)]
  })
  // At an almost straight corner, two sides' lines may each run past the other by this much before rounding separates them.
  const near = 3 * Math.sqrt(distance * outline.slack)
  return tied(kept, near).flatMap((points) => lineOf(points, near))
}

function straight({ from, along, inwards, length }: Side, distance: number): Piece {
  const start = moved(from, inwards, distance)
  return {
    end: length,
    chord: Number.POSITIVE_INFINITY,
    at: (way) => moved(start, along, way),
    nearSide: (side) => {
      const rising = dot(along, side.inwards)
      if (Math.abs(rising) < EPSILON) return []
      const height = dot(between(side.from, start), side.inwards)
      return [(distance - height) / rising, (-distance - height) / rising]
    },
    nearCorner: (corner) => {
      const to = between(start, corner)
      const foot = dot(to, along)
      const rest = distance * distance - (dot(to, to) - foot * foot)
      return rest < 0 ? [] : [foot - Math.sqrt(rest), foot + Math.sqrt(rest)]
    },
  }
}

/** Round a corner that points inwards, from the end of one side's line to the start of the next; null at any other corner. */
function bendAt(before: Side, after: Side, distance: number): Piece | null {
  const turn = before.along[0] * after.along[1] - before.along[1] * after.along[0]
  if (turn >= -EPSILON) return null
  const corner = after.from
  const first = angleOf(before.inwards)
  const upTo = backwards(first, angleOf(after.inwards))
  const ways = (middle: number, cosine: number): number[] => {
    if (Math.abs(cosine) > 1) return []
    return [middle - Math.acos(cosine), middle + Math.acos(cosine)].map((angle) => backwards(first, angle))
  }
  return {
    end: upTo,
    chord: 2 * Math.acos(1 - SAG),
    at: (way) => moved(corner, [Math.cos(first - way), Math.sin(first - way)], distance),
    nearSide: (side) => {
      const height = dot(between(side.from, corner), side.inwards)
      return [distance, -distance].flatMap((reach) => ways(angleOf(side.inwards), (reach - height) / distance))
    },
    nearCorner: (other) => {
      const to = between(corner, other)
      const far = Math.hypot(...to)
      return far === 0 ? [] : ways(angleOf(to), far / (2 * distance))
    },
  }
}

/** The stretches of a piece that are no nearer the outline than the distance, as points. */
function keptOf({ corners, sides, slack }: Outline, piece: Piece, distance: number): StitchPoint[][] {
  const changes = [...sides.flatMap(piece.nearSide), ...corners.flatMap(piece.nearCorner)].filter((way) => way > 0 && way < piece.end)
  const ways = [0, ...changes.sort((a, b) => a - b), piece.end]
  const kept: [number, number][] = []
  ways.slice(1).forEach((end, place) => {
    const start = ways[place] as number
    if (distanceBetween(piece.at(start), piece.at(end)) <= slack && end - start < 1) return
    const middle = piece.at((start + end) / 2)
    if (!liesIn(corners, middle) || sides.some((side) => awayFrom(middle, [side.from, side.to]) < distance - slack)) return
    const last = kept.at(-1)
    if (last !== undefined && last[1] >= start - EPSILON * piece.end) last[1] = end
    else kept.push([start, end])
  })
  return kept.map(([start, end]) => {
    const chords = Math.max(1, Math.ceil((end - start) / piece.chord))
    return Array.from({ length: chords + 1 }, (_, chord) => piece.at(start + ((end - start) * chord) / chords))
  })
}

/** Pieces end to end, each with the nearest that begins where it ends; all run the same way round. */
function tied(pieces: readonly StitchPoint[][], near: number): StitchPoint[][] {
  const left = [...pieces]
  const lines: StitchPoint[][] = []
  for (let line = left.shift(); line !== undefined; line = left.shift()) {
    for (;;) {
      const end = line.at(-1) as StitchPoint
      const starts = left.map((piece) => distanceBetween(piece[0] as StitchPoint, end))
      const least = starts.reduce((a, b) => Math.min(a, b), Number.POSITIVE_INFINITY)
      const closing = line.length > 2 ? distanceBetween(line[0] as StitchPoint, end) : Number.POSITIVE_INFINITY
      if (least > near || closing <= least) break
      line.push(...(left.splice(starts.indexOf(least), 1)[0] as StitchPoint[]).slice(1))
    }
    lines.push(line)
  }
  return lines
}

function lineOf(points: readonly StitchPoint[], near: number): StitchedLine[] {
  const first = points[0] as StitchPoint
  const closed = points.length > 2 && distanceBetween(points.at(-1) as StitchPoint, first) <= near
  const round = closed ? points.slice(0, -1) : points
  if (round.every((point) => distanceBetween(point, first) <= near)) return []
  // Two sides that meet in the middle give one line, there and back: it stays open.
  return [{ points: round, closed: closed && round.length > 2 }]
}

/** Radians from one angle back to another, less than a whole turn; just over a whole turn counts as 0. */
function backwards(from: number, to: number): number {
  const turn = 2 * Math.PI
  const way = (((from - to) % turn) + turn) % turn
  return way > turn - EPSILON ? 0 : way
}

const angleOf = ([x, y]: StitchPoint): number => Math.atan2(y, x)
const dot = ([ax, ay]: StitchPoint, [bx, by]: StitchPoint): number => ax * bx + ay * by
const between = ([ax, ay]: StitchPoint, [bx, by]: StitchPoint): StitchPoint => [bx - ax, by - ay]
const moved = ([x, y]: StitchPoint, [dx, dy]: StitchPoint, by: number): StitchPoint => [x + dx * by, y + dy * by]
