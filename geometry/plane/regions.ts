/**
 * Gaps, overlaps and fabric beyond the grid, region by region.
 *
 * In      the patches as polygons, and the grid's own box.
 * Out     for each region joined along edges: what it is, a point in it, its area (square steps) and the patches that lie there.
 * How     only patches along whose outline the number of layers jumps are laid over each other, the rest is one ground under them. They are laid
 *         in twos, then pile on pile, and more than two layers count as two: so the inside of a deep pile is dropped at once.
 *         Then faces of one sort that share an edge form one region.
 * Exact   the outlines and their crossings; areas are summed to 256 binary places, so that the result is the nearest double.
 */
import { unionFind } from './unionFind.ts'
import { add, multiply, type Rational, rational, subtract, toNumber } from '../exact/rational.ts'
import { type Overlay, overlay, type Edge, type PatchSide, type Window } from './overlay.ts'
import type { Stretch } from './intersections.ts'
import type { Dot } from './points.ts'
import { Points } from './vertices.ts'
import { type Fault, subdivide } from './subdivide.ts'

export type RegionKind = 'gap' | 'overlap' | 'outside'

export interface Region {
  readonly kind: RegionKind
  /** In steps. */
  readonly at: readonly [Rational, Rational]
  /** In square steps: exact, then the nearest double. */
  readonly area: number
  readonly patches: readonly number[]
}

type Polygon = readonly Dot[]

const KINDS = ['gap', 'overlap', 'outside'] as const

/** More layers than this all count as the same fault. */
const MOST_LAYERS = 2
/** What a point inside the grid has beside its layers, of which the ground and two piles give two each at most. */
const INSIDE = 8

/** `faults`: where the layers of the units jump, with the grid's box taken away once (see `subdivide`). */
export function regions(faults: readonly Fault[], patches: readonly Polygon[], width: number, height: number): Region[] {
  if (faults.length === 0) return []
  const points = new Points()
  const groups = [...layersOf(points, faults, patches, width, height), gridOf(points, width, height, INSIDE)]
  const all = patches.map((corners, patch): Near => ({ patch, corners, box: boxOf(corners) }))
  const near = all.length <= FEW ? all : nearFaults(points, all, found(overlay(points, { groups, windows: true })))
  const named = near.flatMap(({ patch, corners }) => sidesOf(points, corners, patch))
  return found(overlay(points, { groups, sides: named, windows: true })).map((region) => regionOf(points, region, near))
}

/** Up to this many patches, each is tested against each region; with more, only those near a region. */
const FEW = 2000

function nearFaults(points: Points, all: readonly Near[], regions: readonly Found[]): Near[] {
  const boxes = regions.flatMap(({ kind, bounds }) => (kind === 'gap' ? [] : [boxOfBounds(points, bounds)]))
  return all.filter(({ box }) => boxes.some((other) => touch(box, other)))
}

interface Near {
  readonly patch: number
  readonly corners: Polygon
  readonly box: Box
}

/**
 * Outlines across which the number of layers jumps: of the ground, and of the two last piles. The ground's jumps are the faults and the grid's box, less
 * the patches of the piles: so patches far from any fault are not looked at again.
 */
function layersOf(points: Points, faults: readonly Fault[], patches: readonly Polygon[], width: number, height: number): (readonly Stretch[])[] {
  const faulty = onFaults(points, faults, patches)
  const piles = patches
    .filter((_, patch) => faulty.has(patch))
    .map((corners): Pile => ({ middle: middleOf(corners), outline: subdivide([corners], []).faults.map((fault) => stretchOf(points, fault)) }))
  const jumps = [...faults.map((fault) => stretchOf(points, fault)), ...gridOf(points, width, height, 1)]
  const without = piles.flatMap(({ outline }) => outline.map((stretch) => ({ ...stretch, jump: -stretch.jump })))
  const ground = capped(overlay(points, { loose: [...jumps, ...without] }))
  return [ground, ...halves(piles).map((half) => piled(points, half))]
}

/** The patches with a side along a fault. */
function onFaults(points: Points, faults: readonly Fault[], patches: readonly Polygon[]): Set<number> {
  const byLine = new Map<number, [number, number][]>()
  const along = (line: number, a: Dot, b: Dot): [number, number] => {
    const axis = points.isUpright(line) ? 1 : 0
    return [Math.min(a[axis], b[axis]), Math.max(a[axis], b[axis])]
  }
  for (const { from, to } of faults) {
    const line = points.line(from, to)
    const known = byLine.get(line)
    if (known === undefined) byLine.set(line, [along(line, from, to)])
    else known.push(along(line, from, to))
  }
  const found = new Set<number>()
  patches.forEach((corners, patch) => {
    const faulty = corners.some((corner, place) => {
      const next = corners[(place + 1) % corners.length] as Dot
      const line = points.line(...forward(corner, next))
      const [start, end] = along(line, corner, next)
      return byLine.get(line)?.some(([from, to]) => from < end && to > start)
    })
    if (faulty) found.add(patch)
  })
  return found
}

const forward = (a: Dot, b: Dot): [Dot, Dot] => (a[0] < b[0] || (a[0] === b[0] && a[1] < b[1]) ? [a, b] : [b, a])

const stretchOf = (points: Points, { from, to, jump }: Fault): Stretch => ({
  line: points.line(from, to),
  from: points.dot(from),
  to: points.dot(to),
  jump,
})

interface Pile {
  readonly middle: Dot
  readonly outline: readonly Stretch[]
}

function middleOf(corners: Polygon): Dot {
  const { left, right, top, bottom } = boxOf(corners)
  return [left + right, top + bottom]
}

function piled(points: Points, piles: readonly Pile[]): readonly Stretch[] {
  if (piles.length < 2) return piles[0]?.outline ?? []
  return capped(overlay(points, { groups: halves(piles).map((half) => piled(points, half)) }))
}

/** Neighbours stay together, so that a pile has little outline left when it meets the next. */
function halves(piles: readonly Pile[]): (readonly Pile[])[] {
  const { left, right, top, bottom } = boxOf(piles.map(({ middle }) => middle))
  const axis = right - left > bottom - top ? 0 : 1
  const sorted = [...piles].sort((a, b) => a.middle[axis] - b.middle[axis])
  const half = piles.length >> 1
  return [sorted.slice(0, half), sorted.slice(half)]
}

/** The edges that still matter once more than two layers count as two; edges on one line are joined where nothing else ends. */
function capped({ edges, sums }: Overlay): Stretch[] {
  const layers = (face: number): number => Math.min(sums[face] as number, MOST_LAYERS)
  const left = edges
    .map(({ line, from, to, above, below }) => ({ line, from, to, jump: layers(below) - layers(above) }))
    .filter(({ jump }) => jump !== 0)
  const ends = new Map<number, number>()
  for (const { from, to } of left) for (const point of [from, to]) ends.set(point, (ends.get(point) ?? 0) + 1)
  const last = new Map<number, { line: number; from: number; to: number; jump: number }>()
  return left.filter((edge) => {
    const before = ends.get(edge.from) === 2 ? last.get(edge.from) : undefined
    const goesOn = before !== undefined && before.line === edge.line && before.jump === edge.jump
    if (goesOn) before.to = edge.to
    last.set(edge.to, goesOn ? before : edge)
    return !goesOn
  })
}

/** The sides of the grid's box; inside it is so much more than outside. */
function gridOf(points: Points, width: number, height: number, more: number): Stretch[] {
  const sides: Fault[] = [
    { from: [0, 0], to: [width, 0], jump: more },
    { from: [0, height], to: [width, height], jump: -more },
    { from: [0, 0], to: [0, height], jump: -more },
    { from: [width, 0], to: [width, height], jump: more },
  ]
  return sides.map((side) => stretchOf(points, side))
}

/** Fabric lies on the clockwise side of a patch's outline. */
function sidesOf(points: Points, corners: Polygon, patch: number): PatchSide[] {
  return corners.map((corner, place) => {
    const [from, to] = forward(corner, corners[(place + 1) % corners.length] as Dot)
    return { line: points.line(from, to), from: points.dot(from), to: points.dot(to), jump: 0, patch, below: from === corner }
  })
}

interface Found {
  readonly kind: RegionKind
  readonly window: Window
  readonly bounds: Bound[]
  readonly patches: Set<number>
}

/** An edge with the region on one side only. */
interface Bound {
  readonly edge: Edge
  readonly below: boolean
}

/** Which of `KINDS` a face is. */
function isKind(sum: number, kind: number): boolean {
  const [layers, inside] = sum >= INSIDE ? [sum - INSIDE, true] : [sum, false]
  return kind === 0 ? inside && layers === 0 : kind === 1 ? layers >= 2 : !inside && layers >= 1
}

/** The faces of each sort, joined along edges. */
function found({ edges, sums, windows, same, held }: Overlay): Found[] {
  const is = (face: number, kind: number): boolean => isKind(sums[face] as number, kind)
  const one = unionFind(sums.length * KINDS.length)
  const each = (face: number, kind: number): number => one.find(face * KINDS.length + kind)
  KINDS.forEach((_, kind) => {
    for (const [a, b] of same) one.join(each(a, kind), each(b, kind))
    for (const { above, below } of edges) if (is(above, kind) && is(below, kind)) one.join(each(above, kind), each(below, kind))
  })
  const known = new Map<number, Found>()
  windows.forEach((window, face) => {
    KINDS.forEach((name, kind) => {
      if (!is(face, kind) || known.has(each(face, kind))) return
      known.set(each(face, kind), { kind: name, window, bounds: [], patches: new Set() })
    })
  })
  KINDS.forEach((_, kind) => {
    for (const edge of edges) {
      const [above, below] = [is(edge.above, kind), is(edge.below, kind)]
      if (above !== below) known.get(each(below ? edge.below : edge.above, kind))?.bounds.push({ edge, below })
    }
    if (kind > 0) for (const { face, patch } of held) if (is(face, kind)) known.get(each(face, kind))?.patches.add(patch)
  })
  return [...known.values()]
}

function regionOf(points: Points, { kind, window, bounds, patches }: Found, near: readonly Near[]): Region {
  const at = placeIn(points, window)
  if (kind !== 'gap') {
    const spot = spotOf(at)
    for (const { patch, corners, box } of near) if (inBox(box, spot) && !patches.has(patch) && holds(corners, spot)) patches.add(patch)
  }
  return { kind, at, area: areaOf(points, bounds), patches: [...patches].sort((a, b) => a - b) }
}

const PLACES = 256n

function areaOf(points: Points, bounds: readonly Bound[]): number {
  let twice = 0n
  for (const { edge, below } of bounds) {
    const { n, d } = points.sweptArea(edge.line, edge.from, edge.to)
    const part = (n << PLACES) / d
    twice += below ? part : -part
  }
  return Number(twice) / 2 ** Number(PLACES + 1n)
}

function placeIn(points: Points, { top, bottom, left, right }: Window): [Rational, Rational] {
  const across = (point: number): Rational => {
    const { x, over } = points.exact(point)
    return { n: x, d: over }
  }
  const x = middle(across(left), across(right))
  return [x, middle(points.heightAt(top.line, x.n, x.d), points.heightAt(bottom.line, x.n, x.d))]
}

/** Fractions beyond this are too long to read. */
const LONG = 2n ** 32n

/** Halfway, or near it where halfway is a long fraction. */
function middle(low: Rational, high: Rational): Rational {
  const half = multiply(add(low, high), rational(1, 2))
  if (half.d < LONG) return half
  const apart = subtract(high, low)
  let parts = 4n
  while (apart.n * parts < 4n * apart.d) parts *= 2n
  return rational((half.n * parts) / half.d, parts)
}

interface Box {
  readonly left: number
  readonly right: number
  readonly top: number
  readonly bottom: number
}

function boxOf(corners: Polygon): Box {
  let [left, right, top, bottom] = [Infinity, -Infinity, Infinity, -Infinity]
  for (const [x, y] of corners) {
    left = Math.min(left, x)
    right = Math.max(right, x)
    top = Math.min(top, y)
    bottom = Math.max(bottom, y)
  }
  return { left, right, top, bottom }
}

/** The box of the doubles near its points, one step larger all round so that it surely holds them. */
function boxOfBounds(points: Points, bounds: readonly Bound[]): Box {
  const { left, right, top, bottom } = boxOf(
    bounds.flatMap(({ edge }) => [edge.from, edge.to].map((point): Dot => [points.x(point), points.y(point)])),
  )
  return { left: left - 1, right: right + 1, top: top - 1, bottom: bottom + 1 }
}

const touch = (a: Box, b: Box): boolean => a.left <= b.right && b.left <= a.right && a.top <= b.bottom && b.top <= a.bottom

/** A place, with the values that repeated tests need. */
interface Spot {
  readonly at: readonly [Rational, Rational]
  readonly x: number
  readonly y: number
  /** The last whole step at or above it. */
  readonly row: number
}

function spotOf(at: readonly [Rational, Rational]): Spot {
  const { n, d } = at[1]
  return { at, x: toNumber(at[0]), y: toNumber(at[1]), row: Number(n >= 0n ? n / d : -((d - 1n - n) / d)) }
}

const inBox = ({ left, right, top, bottom }: Box, { x, y }: Spot): boolean => left <= x && x <= right && top <= y && y <= bottom

/** Whether a place that is not on its outline lies in a patch. */
function holds(corners: Polygon, spot: Spot): boolean {
  let inside = false
  let a = corners.at(-1) as Dot
  for (const b of corners) {
    if (a[1] <= spot.row !== b[1] <= spot.row && isLeftOf(spot, a[1] < b[1] ? a : b, a[1] < b[1] ? b : a)) inside = !inside
    a = b
  }
  return inside
}

/** Whether a place lies left of a line that runs down. */
function isLeftOf({ at, x, y }: Spot, high: Dot, low: Dot): boolean {
  const [dx, dy] = [low[0] - high[0], low[1] - high[1]]
  const [one, other] = [dx * (y - high[1]), dy * (x - high[0])]
  const doubt = 2 ** -45 * (Math.abs(one) + Math.abs(other) + (Math.abs(dx) + dy) * (Math.abs(high[0]) + Math.abs(high[1])))
  if (Math.abs(one - other) > doubt) return one > other
  const [across, down] = at
  return BigInt(dx) * (down.n - BigInt(high[1]) * down.d) * across.d > BigInt(dy) * (across.n - BigInt(high[0]) * across.d) * down.d
}
