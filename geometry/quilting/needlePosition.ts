/**
 * Where the needle is after a given length of stitching.
 *
 * In      lines in the order in which they are stitched, and the length of a cell's side.
 * Out     every point with the length stitched so far; from these, the needle's place at any length. Between two lines the thread is cut: the
 *         end of one and the start of the next have the same length.
 */
import { distanceBetween, type StitchPoint, type StitchedLine, stitchedPoints } from './stitchedLines.ts'

interface TimedPoint {
  readonly line: number
  readonly place: StitchPoint
  /** Length stitched so far, in the cell's unit. */
  readonly at: number
}

interface Needle {
  readonly line: number
  readonly place: StitchPoint
  /** The timed point at the end of the stretch being stitched; all before it are stitched. */
  readonly toward: number
}

/** The points of stitched lines, each with the length stitched before it: in cells, or in the unit in which `cell` is given. */
export function timedPoints(lines: readonly StitchedLine[], cell = 1): TimedPoint[] {
  let at = 0
  return lines.flatMap((line, number) => {
    const points = stitchedPoints(line)
    return points.map((place, index): TimedPoint => {
      if (index > 0) at += distanceBetween(points[index - 1] as StitchPoint, place) * cell
      return { line: number, place, at }
    })
  })
}

/** The needle after `length` of stitching; it waits at the start before, and at the end after. Null without lines. */
export function needleAt(timed: readonly TimedPoint[], length: number): Needle | null {
  const toward = firstAfter(timed, length)
  const to = timed[toward]
  if (to === undefined) {
    const last = timed.at(-1)
    return last === undefined ? null : { line: last.line, place: last.place, toward: timed.length - 1 }
  }
  const from = timed[toward - 1]
  if (from === undefined || from.line !== to.line) return { line: to.line, place: to.place, toward }
  const share = (length - from.at) / (to.at - from.at)
  const [[ax, ay], [bx, by]] = [from.place, to.place]
  return { line: to.line, place: [ax + (bx - ax) * share, ay + (by - ay) * share], toward }
}

function firstAfter(timed: readonly TimedPoint[], length: number): number {
  let [low, high] = [0, timed.length]
  while (low < high) {
    const middle = (low + high) >> 1
    if ((timed[middle] as TimedPoint).at > length) high = middle
    else low = middle + 1
  }
  return low
}
