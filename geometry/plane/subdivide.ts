/**
 * The plane of a block: points, and the seam pieces between them with the patch on either side.
 *
 * In      patches as clockwise polygons of whole numbers, and the outline of the whole.
 * Out     every stretch of patch outline, cut at every corner that lies on it, with what lies on its two sides; and whether the patches
 *         cover the outline once everywhere.
 * Exact   the number of layers of cloth jumps across an outline by (patches on one side) − (patches on the other). Where that jump is
 *         nothing on every stretch (the outside counted as one more patch), the number of layers is one everywhere: no gap, no overlap.
 */
import { crossSign, type Dot, greatestCommon } from './dots.ts'

/** The side beyond the outline. */
export const OUTSIDE = -1

export interface Plane {
  readonly dots: readonly Dot[]
  readonly edges: readonly PlaneEdge[]
  /** Numbers of the edges that end at each dot. */
  readonly around: readonly (readonly number[])[]
  /** Stretches where the number of layers jumps; empty where the patches cover the outline once. */
  readonly faults: readonly Fault[]
}

/** From dot `a` to dot `b`, which runs right (or straight down); `plus` is the patch on its clockwise side (below a line that runs right). */
export interface PlaneEdge {
  readonly a: number
  readonly b: number
  readonly plus: number
  readonly minus: number
  /** Edges on one straight line share this number. */
  readonly line: number
}

/** Layers on the clockwise side of `from`→`to` less those on the other. */
export interface Fault {
  readonly from: Dot
  readonly to: Dot
  readonly jump: number
}

interface Stretch {
  readonly start: number
  readonly end: number
  readonly patch: number
  readonly plus: boolean
}

interface Line {
  readonly dx: number
  readonly dy: number
  /** A point on it, from which the rest follow. */
  readonly origin: Dot
  readonly stretches: Stretch[]
}

export function subdivide(patches: readonly (readonly Dot[])[], outline: readonly Dot[]): Plane {
  const lines = new Map<string, Line>()
  patches.forEach((corners, patch) => {
    collect(lines, corners, patch)
  })
  collect(lines, [...outline].reverse(), OUTSIDE)
  const numbers = new Map<string, number>()
  const dots: Dot[] = []
  const edges: PlaneEdge[] = []
  const faults: Fault[] = []
  const numberOf = (x: number, y: number): number => {
    const key = `${x},${y}`
    const known = numbers.get(key)
    if (known !== undefined) return known
    numbers.set(key, dots.length)
    dots.push([x, y])
    return dots.length - 1
  }
  let number = 0
  for (const line of lines.values()) {
    sweep(line, (start, end, plus, minus) => {
      if (plus.length === 1 && minus.length === 1) {
        edges.push({
          a: numberOf(...along(line, start)),
          b: numberOf(...along(line, end)),
          plus: plus[0] as number,
          minus: minus[0] as number,
          line: number,
        })
        return
      }
      if (plus.length !== minus.length) faults.push({ from: along(line, start), to: along(line, end), jump: plus.length - minus.length })
    })
    number++
  }
  const around: number[][] = dots.map(() => [])
  edges.forEach(({ a, b }, edge) => {
    around[a]?.push(edge)
    around[b]?.push(edge)
  })
  return { dots, edges, around, faults }
}

function collect(lines: Map<string, Line>, corners: readonly Dot[], patch: number): void {
  for (let i = 0; i < corners.length; i++) {
    const from = corners[i] as Dot
    const to = corners[(i + 1) % corners.length] as Dot
    const forward = to[0] > from[0] || (to[0] === from[0] && to[1] > from[1])
    const [left, right] = forward ? [from, to] : [to, from]
    const common = greatestCommon(right[0] - left[0], right[1] - left[1])
    const dx = (right[0] - left[0]) / common
    const dy = (right[1] - left[1]) / common
    const key = `${dx},${dy},${offset(dx, dy, left)}`
    let line = lines.get(key)
    if (line === undefined) {
      line = { dx, dy, origin: left, stretches: [] }
      lines.set(key, line)
    }
    const axis = dx === 0 ? 1 : 0
    line.stretches.push({ start: left[axis], end: right[axis], patch, plus: forward })
  }
}

function offset(dx: number, dy: number, [x, y]: Dot): number | bigint {
  const near = Math.max(Math.abs(dx), Math.abs(dy)) * Math.max(Math.abs(x), Math.abs(y)) < 2 ** 51
  return near ? dx * y - dy * x : BigInt(dx) * BigInt(y) - BigInt(dy) * BigInt(x)
}

/** The dot of a line at x (at y on an upright line). Whole, because every stretch begins and ends on dots of that line. */
function along({ dx, dy, origin }: Line, place: number): Dot {
  if (dx === 0) return [origin[0], place]
  return [place, origin[1] + ((place - origin[0]) / dx) * dy]
}

function sweep({ stretches }: Line, each: (start: number, end: number, plus: readonly number[], minus: readonly number[]) => void): void {
  const starts = [...stretches].sort((a, b) => a.start - b.start)
  const ends = [...stretches].sort((a, b) => a.end - b.end)
  const plus: number[] = []
  const minus: number[] = []
  let next = 0
  let place = 0
  for (const ended of ends) {
    while (next < starts.length && (starts[next] as Stretch).start < ended.end) {
      const begun = starts[next] as Stretch
      if (begun.start > place && plus.length + minus.length > 0) each(place, begun.start, plus, minus)
      place = plus.length + minus.length > 0 ? Math.max(place, begun.start) : begun.start
      ;(begun.plus ? plus : minus).push(begun.patch)
      next++
    }
    if (ended.end > place && plus.length + minus.length > 0) each(place, ended.end, plus, minus)
    place = ended.end
    const side = ended.plus ? plus : minus
    side.splice(side.indexOf(ended.patch), 1)
  }
}

/** The direction of an edge as it leaves one of its dots. */
export function leaving(plane: Plane, edge: number, dot: number): Dot {
  const { a, b } = plane.edges[edge] as PlaneEdge
  const from = plane.dots[dot] as Dot
  const to = plane.dots[dot === a ? b : a] as Dot
  return [to[0] - from[0], to[1] - from[1]]
}

export const sameDirection = (u: Dot, v: Dot): boolean =>
  crossSign(u[0], u[1], v[0], v[1]) === 0 && Math.sign(u[0]) === Math.sign(v[0]) && Math.sign(u[1]) === Math.sign(v[1])
