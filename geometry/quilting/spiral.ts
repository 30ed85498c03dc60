/**
 * A spiral in a patch: its echo lines sewn as one, each left a little before it closes for the next one inside it.
 *
 * In      the corners of any simple polygon, and the distance from one turn of the spiral to the next.
 * Out     open lines. One of them, outermost first, in every patch whose outline bends outwards everywhere; elsewhere another line starts wherever a
 *         narrow place parts the echo lines, or the step inwards would leave the patch.
 * How     a turn ends one distance before it would meet its start; the next begins at its point nearest to that end.
 */
import { sideOf } from '../plane/points.ts'
import { echoRounds } from './echo.ts'
import { distanceBetween, nearestOn, type StitchedLine, type StitchPoint, stitchedPoints, stretchesOf } from './stitchedLines.ts'

export function spiralLines(corners: readonly StitchPoint[], spacing: number): StitchedLine[] {
  const outline = stretchesOf({ points: corners, closed: true })
  const spirals: StitchPoint[][] = []
  let growing: StitchPoint[][] = []
  for (const round of echoRounds(corners, spacing)) {
    const inner: StitchPoint[][] = []
    for (const line of round) {
      const reach = growing.map((spiral) => ({ spiral, to: nearestPlace(line, spiral.at(-1) as StitchPoint) }))
      const inside = reach.filter(({ spiral, to }) => !leaves(outline, [spiral.at(-1) as StitchPoint, to.at]))
      const nearest = inside.reduce<(typeof reach)[number] | null>((best, one) => (best === null || one.to.away < best.to.away ? one : best), null)
      const spiral = nearest?.spiral ?? []
      if (nearest === null) spirals.push(spiral)
      else growing = growing.filter((one) => one !== spiral)
      spiral.push(...turnFrom(line, nearest?.to ?? { stretch: 0, at: line.points[0] as StitchPoint, away: 0 }, spacing))
      inner.push(spiral)
    }
    growing = inner
  }
  return spirals.map((points) => ({ points, closed: false }))
}

/** A place on a line: the number of its stretch, where it is, and how far that is from the point it was sought for. */
interface Place {
  readonly stretch: number
  readonly at: StitchPoint
  readonly away: number
}

/** The place of a line nearest to a point; of a line that stays open, its nearer end. */
function nearestPlace(line: StitchedLine, point: StitchPoint): Place {
  const stretches = stretchesOf(line)
  if (!line.closed) {
    const [first, last] = [line.points[0] as StitchPoint, line.points.at(-1) as StitchPoint]
    const [near, far] = [distanceBetween(first, point), distanceBetween(last, point)]
    return near <= far ? { stretch: 0, at: first, away: near } : { stretch: stretches.length, at: last, away: far }
  }
  const places = stretches.map((stretch, number): Place => {
    const at = nearestOn(stretch, point)
    return { stretch: number, at, away: distanceBetween(at, point) }
  })
  return places.reduce((best, place) => (place.away < best.away ? place : best))
}

/** Round a line from a place on it, up to one distance before the turn would close; along all of a line that is open. */
function turnFrom(line: StitchedLine, { stretch, at }: Place, spacing: number): StitchPoint[] {
  if (!line.closed) return stretch === 0 ? [...line.points] : [...line.points].reverse()
  const points = stitchedPoints(line).slice(1)
  const way = [at, ...points.slice(stretch), ...points.slice(0, stretch), at].filter(
    (point, place, all) => place === 0 || distanceBetween(point, all[place - 1] as StitchPoint) > 0,
  )
  for (let left = spacing; way.length > 2; ) {
    const [before, last] = [way.at(-2) as StitchPoint, way.at(-1) as StitchPoint]
    const length = distanceBetween(before, last)
    if (length > left) {
      const share = left / length
      way[way.length - 1] = [last[0] + (before[0] - last[0]) * share, last[1] + (before[1] - last[1]) * share]
      break
    }
    left -= length
    way.pop()
  }
  return way
}

type Stretch = readonly [StitchPoint, StitchPoint]

/** Whether a step crosses the outline. Both its ends lie inside. */
const leaves = (outline: readonly Stretch[], step: Stretch): boolean => outline.some((side) => crosses(side, step))

const crosses = ([a, b]: Stretch, [c, d]: Stretch): boolean => sideOf(a, b, c) * sideOf(a, b, d) < 0 && sideOf(c, d, a) * sideOf(c, d, b) < 0
