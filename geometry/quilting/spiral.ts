/**
 * A square spiral set on point in a square: one line from the middles of the square's sides inwards.
 *
 * In      the corners of a square, in any turn, and the distance from one turn of the spiral to the next.
 * Out     one open line, outermost first; null where the corners do not form a square.
 * How     the spiral's outermost round has its corners at the middles of the sides; every round is one distance inside the last, until there is no
 *         room for another stretch as long as that distance.
 */
import { EPSILON } from '../exact/lengths.ts'
import { distanceBetween, type StitchPoint, type StitchedLine } from './stitchedLines.ts'

export function squareSpiral(corners: readonly StitchPoint[], spacing: number): StitchedLine | null {
  if (!isSquare(corners) || !(spacing > 0)) return null
  const [top, right, bottom] = corners.slice(0, 3).map((corner, place) => middle(corner, corners[(place + 1) % 4] as StitchPoint)) as [
    StitchPoint,
    StitchPoint,
    StitchPoint,
  ]
  const centre = middle(corners[0] as StitchPoint, corners[2] as StitchPoint)
  const side = distanceBetween(top, right)
  const across = direction(top, right, side)
  const down = direction(right, bottom, side)
  return {
    points: spiral(side / 2, spacing).map(
      ([x, y]): StitchPoint => [centre[0] + x * across[0] + y * down[0], centre[1] + x * across[1] + y * down[1]],
    ),
    closed: false,
  }
}

/** In the square from −half to half: along the top, down the right, back along the bottom, up the left to one distance below the start. */
function spiral(half: number, spacing: number): StitchPoint[] {
  const points: StitchPoint[] = [[-half, -half]]
  for (let inset = 0; half - inset > EPSILON; inset += spacing) {
    const far = half - inset
    const round: StitchPoint[] = [
      [far, -far],
      [far, far],
      [-far, far],
      [-far, -far + spacing],
    ]
    for (const point of round) {
      if (distanceBetween(points.at(-1) as StitchPoint, point) < spacing - EPSILON) return points
      points.push(point)
    }
  }
  return points
}

const middle = ([ax, ay]: StitchPoint, [bx, by]: StitchPoint): StitchPoint => [(ax + bx) / 2, (ay + by) / 2]

const direction = ([ax, ay]: StitchPoint, [bx, by]: StitchPoint, length: number): StitchPoint => [(bx - ax) / length, (by - ay) / length]

function isSquare(corners: readonly StitchPoint[]): boolean {
  if (corners.length !== 4) return false
  const [a, b, c, d] = corners as readonly [StitchPoint, StitchPoint, StitchPoint, StitchPoint]
  const sides = [
    distanceBetween(a, b),
    distanceBetween(b, c),
    distanceBetween(c, d),
    distanceBetween(d, a),
    distanceBetween(a, c) / Math.SQRT2,
    distanceBetween(b, d) / Math.SQRT2,
  ]
  const side = sides[0] as number
  return side > 0 && sides.every((length) => Math.abs(length - side) < EPSILON * side)
}
