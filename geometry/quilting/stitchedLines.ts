/**
 * Stitched lines as screens and pages draw them: both routes and fills, with places in cells as doubles.
 */
import { parseRational, type Rational, toNumber } from '../exact/rational.ts'
import type { Ditch, ReportPoint } from '../values/report.ts'

export type StitchPoint = readonly [number, number]

export interface StitchedLine {
  readonly points: readonly StitchPoint[]
  /** The line ends where it begins; the start is not repeated. */
  readonly closed: boolean
}

/** The routes of a report as lines to draw, in cells. */
export const routeLines = ({ routes }: Ditch): StitchedLine[] => routes.map(({ points, closed }) => ({ points: points.map(stitchPoint), closed }))

/** A position of a report as a place to stitch. */
export const stitchPoint = ([x, y]: ReportPoint): StitchPoint => [numberOf(x), numberOf(y)]

const numberOf = (position: ReportPoint[0]): number => (typeof position === 'number' ? position : toNumber(parseRational(position) as Rational))

/** How long a line is, in cells. */
export const lengthOfLine = (line: StitchedLine): number => stretchesOf(line).reduce((sum, [from, to]) => sum + distanceBetween(from, to), 0)

/** All points in the order in which they are stitched, the start of a closed line once more at its end. */
export const stitchedPoints = ({ points, closed }: StitchedLine): readonly StitchPoint[] =>
  closed && points.length > 0 ? [...points, points[0] as StitchPoint] : points

/** The stretches of a line from point to point. */
export function stretchesOf(line: StitchedLine): (readonly [StitchPoint, StitchPoint])[] {
  const points = stitchedPoints(line)
  return points.slice(1).map((to, place) => [points[place] as StitchPoint, to] as const)
}

/** How far apart two points are, in cells. */
export const distanceBetween = ([ax, ay]: StitchPoint, [bx, by]: StitchPoint): number => Math.hypot(bx - ax, by - ay)

/** How far a point is from a straight stretch. */
export const awayFrom = (point: StitchPoint, stretch: readonly [StitchPoint, StitchPoint]): number =>
  distanceBetween(nearestOn(stretch, point), point)

/** The point of a straight stretch that is nearest to a point. */
export function nearestOn([[ax, ay], [bx, by]]: readonly [StitchPoint, StitchPoint], [px, py]: StitchPoint): StitchPoint {
  const [dx, dy] = [bx - ax, by - ay]
  const square = dx * dx + dy * dy
  const share = square === 0 ? 0 : Math.min(1, Math.max(0, ((px - ax) * dx + (py - ay) * dy) / square))
  return [ax + share * dx, ay + share * dy]
}

/** Whether a point lies in a polygon; on the outline the answer may be either. */
export function liesIn(corners: readonly StitchPoint[], [x, y]: StitchPoint): boolean {
  let inside = false
  corners.forEach(([ax, ay], place) => {
    const [bx, by] = corners[(place + 1) % corners.length] as StitchPoint
    if (ay <= y !== by <= y && x < ax + ((y - ay) / (by - ay)) * (bx - ax)) inside = !inside
  })
  return inside
}
