/**
 * The cut shape of a patch: one allowance larger than finished on every side.
 *
 * In      a patch's corners (whole-number steps, clockwise) and the allowance in cells.
 * Out     convex pieces that fill the cut shape without overlapping, in cells. Sharp tips are cut off where they would reach further than
 *         `TIP` allowances: no maker leaves longer ones.
 */
import type { Laid } from '../../block/lay.ts'
import type { Convex } from '../../plane/convex.ts'
import type { Dot } from '../../plane/points.ts'

const TIP = 8

type Point = readonly [number, number]

export function cutShape(laid: Laid, corners: readonly Dot[], allowance: number): Convex[] {
  const points = corners.map((corner) => laid.places.cells(corner))
  const offsets = points.map((_, index) => offsetCorner(points, index, allowance))
  if (points.every((_, index) => turnAt(points, index) >= 0)) return [offsets.flatMap((pair) => pair.flat())]
  return [...triangles(points), ...points.flatMap((_, index) => sideStrip(points, offsets, index))]
}

const at = (points: readonly Point[], index: number): Point => points[(index + points.length) % points.length] as Point

const cross = ([ax, ay]: Point, [bx, by]: Point, [cx, cy]: Point): number => (bx - ax) * (cy - ay) - (by - ay) * (cx - ax)

/** Positive at an outer corner of a clockwise polygon (y down). */
const turnAt = (points: readonly Point[], index: number): number => cross(at(points, index - 1), at(points, index), at(points, index + 1))

/** Where the two sides at a corner meet once moved out by one allowance; two points where the tip is cut off. */
function offsetCorner(points: readonly Point[], index: number, allowance: number): Point[] {
  const [before, here, next] = [at(points, index - 1), at(points, index), at(points, index + 1)]
  const [one, other] = [outward(before, here), outward(here, next)]
  const straight = 1 + one[0] * other[0] + one[1] * other[1]
  const reach = Math.sqrt(2 / Math.max(straight, 1e-12))
  if (reach <= TIP) {
    const k = allowance / straight
    return [[here[0] + (one[0] + other[0]) * k, here[1] + (one[1] + other[1]) * k]]
  }
  // Cut off square to the middle of the tip, `TIP` allowances from its corner.
  const middle = unit([one[0] + other[0], one[1] + other[1]])
  return [one, other].map((normal): Point => {
    const side: Point = normal === one ? [-normal[1], normal[0]] : [normal[1], -normal[0]]
    const k = (TIP - (normal[0] * middle[0] + normal[1] * middle[1])) / (side[0] * middle[0] + side[1] * middle[1])
    return [here[0] + allowance * (normal[0] + side[0] * k), here[1] + allowance * (normal[1] + side[1] * k)]
  })
}

function unit([x, y]: Point): Point {
  const length = Math.hypot(x, y)
  return length < 1e-12 ? [0, 0] : [x / length, y / length]
}

/** Clockwise with y down: outside lies to the left of each side. */
function outward([ax, ay]: Point, [bx, by]: Point): Point {
  const length = Math.hypot(bx - ax, by - ay)
  return [(by - ay) / length, -(bx - ax) / length]
}

/** The allowance along one side; null pieces where an inner corner leaves none. */
function sideStrip(points: readonly Point[], offsets: readonly Point[][], index: number): Convex[] {
  const [a, b] = [at(points, index), at(points, index + 1)]
  const outerA = offsets[index]?.at(-1) as Point
  const [outerB, cut] = offsets[(index + 1) % points.length] as [Point, Point | undefined]
  const strip: Convex[] = [[a[0], a[1], ...outerA, ...outerB, b[0], b[1]]]
  if (cut !== undefined) strip.push([b[0], b[1], ...outerB, ...cut])
  // Between two inner corners closer than their allowances the strip would turn over.
  const forward = (outerB[0] - outerA[0]) * (b[0] - a[0]) + (outerB[1] - outerA[1]) * (b[1] - a[1])
  return forward > 0 ? strip : []
}

/** Ears cut off one by one: simple polygons only, which is what can be read. */
function triangles(points: readonly Point[]): Convex[] {
  const left = points.map((_, index) => index)
  const found: Convex[] = []
  let stuck = 0
  for (let place = 0; left.length > 3 && stuck <= left.length; ) {
    const count = left.length
    const [i, j, k] = [left[(place + count - 1) % count], left[place % count], left[(place + 1) % count]] as [number, number, number]
    const [a, b, c] = [points[i], points[j], points[k]] as [Point, Point, Point]
    const turn = cross(a, b, c)
    const ear = turn > 0 && left.every((other) => other === i || other === j || other === k || !inside(points[other] as Point, a, b, c))
    if (ear || turn === 0) {
      if (ear) found.push([...a, ...b, ...c])
      left.splice(place % count, 1)
      stuck = 0
      place = Math.max(0, (place % count) - 1)
    } else {
      place = (place + 1) % count
      stuck++
    }
  }
  if (left.length === 3) found.push(left.flatMap((index) => [...(points[index] as Point)]))
  return found
}

const inside = (p: Point, a: Point, b: Point, c: Point): boolean => cross(a, b, p) >= 0 && cross(b, c, p) >= 0 && cross(c, a, p) >= 0
