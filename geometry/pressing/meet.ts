/**
 * What happens at every point where earlier seams run into a join.
 *
 * In      seams in sewing order on the plane of the block.
 * Out     the crossings (pairs that will lie on each other, points to pin, tips not to cut off), the seam ends inside each join side by side,
 *         and the ends that are left on the outline of the block.
 * Exact   directions are whole numbers, so "mirror image" is an equality, never a tolerance.
 * Source  common practice, no source.
 */
import { vectorBetween } from '../piecing/contact.ts'
import type { Seam } from '../piecing/values.ts'
import { crossSign, greatestCommon } from '../plane/points.ts'
import { OUTSIDE, type Plane, type PlaneEdge } from '../plane/subdivide.ts'
import { leanToSide0, mirrored } from './nesting.ts'
import type { Crossing, SeamEnd } from './values.ts'

/** Where the seams of a plan meet. */
export interface MetSeams {
  readonly crossings: readonly Crossing[]
  /** Per seam: seam ends strictly inside it, on its sides 0 and 1. */
  readonly ends: readonly (readonly [number, number])[]
  /** Per seam: which of its sides lies clockwise of its path. */
  readonly clockwise: readonly (0 | 1)[]
  /** Dots where seam ends are still loose once everything is sewn, with those ends. */
  readonly loose: Iterable<readonly [number, readonly SeamEnd[]]>
}

/** What met inside the units: all plans of a block begin with this. */
interface MetInUnits extends MetSeams {
  readonly loose: Loose
}

/** The side of a seam on which a patch lies; −1 where it is in neither piece. */
export type SideOf = (seam: number, patch: number) => -1 | 0 | 1

/** Where the seams of a plan meet. `units`: the result for the first seams, which all plans of a block share. */
export function meet(plane: Plane, seams: readonly Seam[], sideOf: SideOf, units: MetInUnits | null = null): MetInUnits {
  const known = units?.ends.length ?? 0
  const clockwise = seams.map((seam, index) => units?.clockwise[index] ?? clockwiseSide(plane, seam, index, sideOf))
  const ends = seams.map((_, index): [number, number] => (units?.ends[index] ?? [0, 0]) as [number, number])
  const crossings: Crossing[] = [...(units?.crossings ?? [])]
  const loose = new Loose(units?.loose ?? null)
  const finishing = new Map<number, number[]>()
  seams.forEach(({ finishedAfter }, index) => {
    if (finishedAfter !== null) finishing.set(finishedAfter, [...(finishing.get(finishedAfter) ?? []), index])
  })

  const cross = (index: number): void => {
    const seam = seams[index] as Seam
    for (let place = 1; place + 1 < seam.path.length; place++) {
      const dot = seam.path[place] as number
      const there = loose.take(dot)
      if (there === null) continue
      crossings.push(...crossedAt(plane, seam, index, place, there, clockwise[index] as 0 | 1, sideOf, ends[index] as [number, number]))
    }
  }

  seams.forEach((seam, index) => {
    if (index < known) return
    if (seam.finishedAfter === null) cross(index)
    for (const end of endsOf(plane, seam, index, clockwise[index] as 0 | 1)) loose.put(end.dot, end)
    for (const open of finishing.get(index) ?? []) cross(open)
  })
  return { crossings, ends, clockwise, loose }
}

/** Seam ends by dot, on top of those of an earlier stage, which stay unchanged. */
class Loose {
  private readonly before: Loose | null
  private readonly own = new Map<number, readonly SeamEnd[] | null>()

  constructor(before: Loose | null) {
    this.before = before
  }

  private at(dot: number): readonly SeamEnd[] | null {
    const own = this.own.get(dot)
    return own === undefined ? (this.before?.at(dot) ?? null) : own
  }

  put(dot: number, end: SeamEnd): void {
    this.own.set(dot, [...(this.at(dot) ?? []), end])
  }

  take(dot: number): readonly SeamEnd[] | null {
    const there = this.at(dot)
    if (there !== null) this.own.set(dot, null)
    return there
  }

  *[Symbol.iterator](): Generator<readonly [number, readonly SeamEnd[]]> {
    for (const [dot, ends] of this.own) if (ends !== null) yield [dot, ends]
    for (const entry of this.before ?? []) if (!this.own.has(entry[0])) yield entry
  }
}

/** The fields of a seam that say where it runs. */
type SeamPath = Pick<Seam, 'path' | 'bends'>

/** What meets where a seam passes seam ends; the ends on its two sides are counted in `counts`. */
export function crossedAt(
  plane: Plane,
  seam: SeamPath,
  index: number,
  place: number,
  there: readonly SeamEnd[],
  clockwise: 0 | 1,
  sideOf: SideOf,
  counts: [number, number],
): Crossing[] {
  const sides = there.map((end) => sideAt(plane, seam, index, place, end, clockwise, sideOf))
  for (const side of sides) counts[side]++
  return crossingsAt(plane, seam, index, place, there, sides)
}

/** The side of a seam (0 or 1) that lies clockwise of its path. */
export function clockwiseSide(plane: Plane, seam: SeamPath, index: number, sideOf: SideOf): 0 | 1 {
  for (let place = 0; place + 1 < seam.path.length; place++) {
    const from = seam.path[place] as number
    const edge = plane.edges[edgeBetween(plane, from, seam.path[place + 1] as number)] as PlaneEdge
    const patch = edge.a === from ? edge.plus : edge.minus
    const side = sideOf(index, patch)
    const other = sideOf(index, edge.a === from ? edge.minus : edge.plus)
    if (side !== -1 && other !== -1) return side
  }
  throw new Error('impossible: a seam that touches neither of its pieces')
}

/** The number of the plane's edge between two neighbouring dots of a seam's path. */
export function edgeBetween(plane: Plane, from: number, to: number): number {
  const found = plane.around[from]?.find((edge) => {
    const { a, b } = plane.edges[edge] as PlaneEdge
    return a === to || b === to
  })
  if (found === undefined) throw new Error('impossible: a seam that leaves the outlines of its patches')
  return found
}

/** The two ends of a seam; `clockwise` says on which side of the leaving direction side 1 lies. */
export function endsOf(plane: Plane, seam: SeamPath, index: number, clockwise: 0 | 1): (SeamEnd & { dot: number })[] {
  const { path } = seam
  const first = path[0] as number
  const last = path.at(-1) as number
  if (first === last) return []
  const start = lowest(...vectorBetween(plane, first, path[1] as number))
  const end = lowest(...vectorBetween(plane, last, path.at(-2) as number))
  return [
    { seam: index, dot: first, dx: start[0], dy: start[1], clockwise },
    { seam: index, dot: last, dx: end[0], dy: end[1], clockwise: clockwise === 0 ? 1 : 0 },
  ]
}

function lowest(dx: number, dy: number): [number, number] {
  const common = greatestCommon(dx, dy)
  return [dx / common, dy / common]
}

function sideAt(plane: Plane, seam: SeamPath, index: number, place: number, end: SeamEnd, clockwise: 0 | 1, sideOf: SideOf): 0 | 1 {
  if (!seam.bends.includes(place)) {
    const [ex, ey] = vectorBetween(plane, seam.path[place - 1] as number, seam.path[place] as number)
    return crossSign(ex, ey, end.dx, end.dy) > 0 ? clockwise : clockwise === 0 ? 1 : 0
  }
  const dot = seam.path[place] as number
  for (const edge of plane.around[dot] ?? []) {
    const { a, b, plus, minus } = plane.edges[edge] as PlaneEdge
    const [dx, dy] = lowest(...vectorBetween(plane, dot, a === dot ? b : a))
    if (dx !== end.dx || dy !== end.dy) continue
    const side = sideOf(index, plus === OUTSIDE ? minus : plus)
    if (side !== -1) return side
  }
  throw new Error('impossible: a seam end that lies in neither piece')
}

function crossingsAt(plane: Plane, seam: SeamPath, join: number, place: number, ends: readonly SeamEnd[], sides: readonly (0 | 1)[]): Crossing[] {
  const dot = seam.path[place] as number
  const near = ends.filter((_, index) => sides[index] === 0)
  const far = ends.filter((_, index) => sides[index] === 1)
  if (!seam.bends.includes(place)) {
    const along = lowest(...vectorBetween(plane, seam.path[place - 1] as number, dot))
    const pairs = near.flatMap((a) =>
      far
        .filter((b) => mirrored(along, a, b))
        .map((b): Crossing => ({ dot, join, seams: [a.seam, b.seam], type: 'pair', leans: [leanToSide0(along, a), leanToSide0(along, b)] })),
    )
    if (pairs.length > 0) return pairs
  }
  const seams = [...near, ...far].map((end) => end.seam)
  if (near.length > 0 && far.length > 0) return [{ dot, join, seams, type: 'pin', leans: null }]
  return ends.length > 1 ? [{ dot, join, seams, type: 'tip', leans: null }] : []
}
