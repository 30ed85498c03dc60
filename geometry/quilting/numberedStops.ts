/**
 * A quilting line as somebody follows it: stops where it starts, turns or ends, numbered in the order of stitching, and straight legs from each
 * stop to the next.
 *
 * In      lines.
 * Out     each stop once, with every number it has: a line may come by more than once. A leg holds every point that it passes, and for each
 *         stretch between two of them on which side it is drawn where the seam is stitched twice.
 * Exact   for drawing only: whether a line turns is judged by doubles.
 */
import { type StitchedLine, type StitchPoint, stitchedPoints, stretchesOf } from './stitchedLines.ts'

export interface NumberedStop {
  readonly at: StitchPoint
  /** From 1; numbers run on from line to line. */
  readonly numbers: readonly number[]
  /** Those numbers at which a line starts or ends. */
  readonly starts: readonly number[]
  readonly ends: readonly number[]
}

/** 0: on the seam; 1: to the right of it, as one goes; −1: to the left. */
export type BesideSeam = -1 | 0 | 1

interface QuiltingLeg {
  /** The number of the stop where it begins; it ends at the next. */
  readonly number: number
  readonly points: readonly StitchPoint[]
  /** One for each stretch from point to point. */
  readonly beside: readonly BesideSeam[]
}

/** Stops above which a screen numbers only starts: more would hide the line. */
const MOST_NUMBERED = 90

/** All stops of some lines; with very many, the starts of lines alone, numbered line by line. */
export function numberedStops(lines: readonly StitchedLine[]): NumberedStop[] {
  const stops = stopsOf(lines)
  const numbered = stops.reduce((sum, { numbers }) => sum + numbers.length, 0)
  if (numbered <= MOST_NUMBERED) return stops
  return lines.flatMap(({ points: [at] }, place) => (at === undefined ? [] : [{ at, numbers: [place + 1], starts: [place + 1], ends: [] }]))
}

/** All stops of some lines, however many. */
export function stopsOf(lines: readonly StitchedLine[]): NumberedStop[] {
  const places = new Map<string, { readonly at: StitchPoint; readonly numbers: number[]; readonly starts: number[]; readonly ends: number[] }>()
  let number = 0
  for (const route of lines.map(stopPoints)) {
    route.forEach((at, place) => {
      number += 1
      const stop = places.get(keyOf(at)) ?? { at, numbers: [], starts: [], ends: [] }
      places.set(keyOf(at), stop)
      stop.numbers.push(number)
      if (place === 0) stop.starts.push(number)
      if (place === route.length - 1) stop.ends.push(number)
    })
  }
  return [...places.values()]
}

/** Where a line starts, turns or ends, in order; a closed line ends at its start. */
function stopPoints(line: StitchedLine): StitchPoint[] {
  const points = stitchedPoints(line)
  return points.filter((at, place) => {
    const [before, after] = [points[place - 1], points[place + 1]]
    return before === undefined || after === undefined || turns(before, at, after)
  })
}

/** Sine of the smallest angle that counts as a turn: far below any angle of a block, far above what doubles get wrong. */
const STRAIGHT = 1e-7

function turns([ax, ay]: StitchPoint, [bx, by]: StitchPoint, [cx, cy]: StitchPoint): boolean {
  const [ux, uy, vx, vy] = [bx - ax, by - ay, cx - bx, cy - by]
  return ux * vx + uy * vy < 0 || Math.abs(ux * vy - uy * vx) > STRAIGHT * Math.hypot(ux, uy) * Math.hypot(vx, vy)
}

/** The legs of some lines, in the order of stitching: where a seam is stitched twice, the two lie beside each other. */
export function legsOf(lines: readonly StitchedLine[]): QuiltingLeg[] {
  const passed = new Map<string, string>()
  const total = new Map<string, number>()
  for (const line of lines) for (const [from, to] of stretchesOf(line)) total.set(seamKey(from, to), (total.get(seamKey(from, to)) ?? 0) + 1)
  const beside = (from: StitchPoint, to: StitchPoint): BesideSeam => {
    const key = seamKey(from, to)
    if ((total.get(key) ?? 1) < 2) return 0
    const first = passed.get(key)
    if (first === undefined) passed.set(key, keyOf(from))
    // Two that run the same way lie on either side; two that meet each keep to the right.
    return first === keyOf(from) ? -1 : 1
  }
  let number = 0
  return lines.flatMap((line) => {
    const legs: { number: number; points: StitchPoint[]; beside: BesideSeam[] }[] = []
    for (const [from, to] of stretchesOf(line)) {
      const leg = legs.at(-1)
      const before = leg?.points.at(-2)
      if (leg === undefined || before === undefined || turns(before, from, to)) {
        number += 1
        legs.push({ number, points: [from, to], beside: [beside(from, to)] })
      } else {
        leg.points.push(to)
        leg.beside.push(beside(from, to))
      }
    }
    // The end of a line has a number too.
    if (line.points.length > 0) number += 1
    return legs
  })
}

const keyOf = (at: StitchPoint): string => at.map((value) => (Math.round(value * 1e6) / 1e6 + 0).toString()).join(' ')

const seamKey = (a: StitchPoint, b: StitchPoint): string => [keyOf(a), keyOf(b)].sort().join(' - ')
