/**
 * The seam ends that are still loose along the four edges of a sewn block.
 *
 * In      the seam ends left on the outline (see `meet`), and the exact places of the dots.
 * Out     for top, right, bottom, left, going clockwise: each end by its distance from the edge's start in cells, with its direction.
 *         Ends at a corner of the block are seen from both edges that meet there.
 * Exact   directions are whole numbers and distances rationals, so "mirror image" across a shared edge is an equality.
 */
import type { Laid } from '../block/lay.ts'
import { type Rational, subtract } from '../exact/rational.ts'
import type { Dot } from '../plane/points.ts'
import type { Plane } from '../plane/subdivide.ts'
import { leanToSide0 } from '../pressing/nesting.ts'
import type { SeamEnd, Toward } from '../pressing/values.ts'

export interface ShownEnd {
  readonly seam: number
  /** Cells from the edge's start, going clockwise. */
  readonly place: Rational
  /** Whether it lies at the corner where the edge starts, or where it ends. */
  readonly corner: 'start' | 'end' | null
  /** The seam's direction away from the edge: along it clockwise, and inward. */
  readonly along: number
  readonly inward: number
  /** How the allowances lean along the edge, clockwise +1, when the seam is pressed toward its side 0. */
  readonly leanToSide0: -1 | 1
}

export interface ShownEdges {
  /** Top, right, bottom, left. */
  readonly edges: readonly [readonly ShownEnd[], readonly ShownEnd[], readonly ShownEnd[], readonly ShownEnd[]]
  /** Cells. */
  readonly width: Rational
  readonly height: Rational
}

interface Edge {
  readonly clockwise: Dot
  readonly inward: Dot
  readonly holds: (dot: Dot) => boolean
  readonly start: Dot
  readonly end: Dot
  readonly distance: (dot: Dot) => Rational
}

/** The four edges of a laid block with the seams that end there, borders included; places in cells from each edge's start. */
export function shownEdges(laid: Laid, plane: Plane, loose: Iterable<readonly [number, readonly SeamEnd[]]>): ShownEdges {
  const out = laid.borders * laid.den
  const [left, top, right, bottom] = [-out, -out, laid.width + out, laid.height + out]
  const edges: readonly Edge[] = [
    edge([left, top], [right, top], [0, 1], ([x]) => subtract(laid.places.x(x), laid.places.x(left))),
    edge([right, top], [right, bottom], [-1, 0], ([, y]) => subtract(laid.places.y(y), laid.places.y(top))),
    edge([right, bottom], [left, bottom], [0, -1], ([x]) => subtract(laid.places.x(right), laid.places.x(x))),
    edge([left, bottom], [left, top], [1, 0], ([, y]) => subtract(laid.places.y(bottom), laid.places.y(y))),
  ]
  const ends: ShownEnd[][] = [[], [], [], []]
  for (const [number, there] of loose) {
    const dot = plane.dots[number] as Dot
    edges.forEach((one, index) => {
      if (one.holds(dot)) for (const end of there) ends[index]?.push(seen(one, dot, end))
    })
  }
  return {
    edges: ends as unknown as ShownEdges['edges'],
    width: subtract(laid.places.x(right), laid.places.x(left)),
    height: subtract(laid.places.y(bottom), laid.places.y(top)),
  }
}

function edge(start: Dot, end: Dot, inward: Dot, distance: Edge['distance']): Edge {
  const upright = start[0] === end[0]
  return {
    start,
    end,
    inward,
    distance,
    clockwise: [Math.sign(end[0] - start[0]), Math.sign(end[1] - start[1])],
    holds: ([x, y]) => (upright ? x === start[0] : y === start[1]),
  }
}

const same = ([a, b]: Dot, [c, d]: Dot): boolean => a === c && b === d

function seen({ clockwise, inward, start, end: finish, distance }: Edge, dot: Dot, end: SeamEnd): ShownEnd {
  return {
    seam: end.seam,
    place: distance(dot),
    corner: same(dot, start) ? 'start' : same(dot, finish) ? 'end' : null,
    along: clockwise[0] * end.dx + clockwise[1] * end.dy,
    inward: inward[0] * end.dx + inward[1] * end.dy,
    leanToSide0: leanToSide0(clockwise, end),
  }
}

/** +1 where the allowances lie further along clockwise, −1 where they lie back, 0 where they are pressed open. */
export function leanOf({ seam, leanToSide0 }: ShownEnd, toward: readonly Toward[]): -1 | 0 | 1 {
  const way = toward[seam]
  if (way === 'open') return 0
  return way === 0 ? leanToSide0 : leanToSide0 === 1 ? -1 : 1
}
