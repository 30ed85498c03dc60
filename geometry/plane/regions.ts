/**
 * Gaps, overlaps and cloth beyond the grid, region by region.
 *
 * In      the patches as polygons, and the grid's own box.
 * Out     for each region joined along edges: what it is, a point in it, its area (square steps) and the patches that lie there.
 * How     only outlines across which the number of layers jumps matter. They are cut where they cross; the plane between them falls into upright
 *         slabs of trapezoids, each with one number of layers; trapezoids of one sort that share a stretch of edge are one region.
 * Exact   crossing points are rationals of their own.
 */
import { add, compare, divide, equal, multiply, type Rational, rational, subtract, toNumber, ZERO } from '../exact/rational.ts'
import type { Dot } from './dots.ts'
import type { Fault } from './subdivide.ts'

export type RegionKind = 'gap' | 'overlap' | 'outside'

export interface Region {
  readonly kind: RegionKind
  /** In steps. */
  readonly at: readonly [Rational, Rational]
  /** In square steps: exact, then the nearest double; beyond `EXACT_BITS` each part is exact and their sum a double. */
  readonly area: number
  readonly patches: readonly number[]
}

/** A straight stretch that runs right, as y = rise·x + base. */
interface Slope {
  readonly x0: Rational
  readonly x1: Rational
  readonly rise: Rational
  readonly base: Rational
  readonly jump: number
}

interface Trapezoid {
  readonly kind: RegionKind
  readonly slab: number
  /** Heights of the four corners: at the slab's left and right ends. */
  readonly topLeft: Rational
  readonly topRight: Rational
  readonly bottomLeft: Rational
  readonly bottomRight: Rational
}

const HALF = rational(1, 2)

/** `faults`: where the layers of the units jump, with the grid's box taken away once (see `subdivide`). */
export function regions(faults: readonly Fault[], patches: readonly (readonly Dot[])[], width: number, height: number): Region[] {
  const slopes = faults.filter(({ from, to }) => from[0] !== to[0]).map(slopeOf)
  const frame = [slopeOf({ from: [0, 0], to: [width, 0], jump: 0 }), slopeOf({ from: [0, height], to: [width, height], jump: 0 })]
  const all = [...slopes, ...frame]
  const places = slabs(all, faults)
  const bySlab: Trapezoid[][] = []
  for (let slab = 0; slab + 1 < places.length; slab++)
    bySlab.push(trapezoids(all, places[slab] as Rational, places[slab + 1] as Rational, slab, width, height))
  return joined(bySlab).map((members) => regionOf(members, places, patches))
}

function slopeOf({ from, to, jump }: Fault): Slope {
  const rise = rational(to[1] - from[1], to[0] - from[0])
  return { x0: rational(from[0]), x1: rational(to[0]), rise, base: subtract(rational(from[1]), multiply(rise, rational(from[0]))), jump }
}

/** Not in lowest terms: heights are only compared, and finding common divisors would be most of the work. */
function heightAt({ rise, base }: Slope, x: Rational): Rational {
  const over = rise.d * x.d
  return { n: rise.n * x.n * base.d + base.n * over, d: over * base.d }
}

/** Of fractions that need not be in lowest terms. */
const level = (a: Rational, b: Rational): boolean => a.n * b.d === b.n * a.d

function slabs(slopes: readonly Slope[], faults: readonly Fault[]): Rational[] {
  const places: Rational[] = slopes.flatMap(({ x0, x1 }) => [x0, x1])
  for (const { from } of faults) places.push(rational(from[0]))
  slopes.forEach((a, i) => {
    for (const b of slopes.slice(i + 1)) {
      if (equal(a.rise, b.rise)) continue
      const x = divide(subtract(b.base, a.base), subtract(a.rise, b.rise))
      if ([a, b].every(({ x0, x1 }) => compare(x, x0) > 0 && compare(x, x1) < 0)) places.push(x)
    }
  })
  return places.sort(compare).filter((place, index) => index === 0 || !equal(place, places[index - 1] as Rational))
}

function trapezoids(slopes: readonly Slope[], left: Rational, right: Rational, slab: number, width: number, height: number): Trapezoid[] {
  const inGrid = left.n >= 0n && compare(right, rational(width)) <= 0
  const across = slopes
    .filter(({ x0, x1 }) => compare(x0, left) <= 0 && compare(x1, right) >= 0)
    .map((slope) => {
      const [from, to] = [heightAt(slope, left), heightAt(slope, right)]
      return { slope, from, to, y: { n: from.n * to.d + to.n * from.d, d: 2n * from.d * to.d } }
    })
    .sort((a, b) => compare(a.y, b.y))
  const found: Trapezoid[] = []
  // The grid's box was taken away once, so nothing is "one layer too few" inside and "none" outside.
  let extra = 0
  across.slice(0, -1).forEach((above, index) => {
    extra += above.slope.jump
    const below = across[index + 1] as (typeof across)[number]
    if (level(above.y, below.y)) return
    const inside = inGrid && above.y.n >= 0n && compare(below.y, rational(height)) <= 0
    for (const kind of kinds(extra + (inside ? 1 : 0), inside))
      found.push({ kind, slab, topLeft: above.from, topRight: above.to, bottomLeft: below.from, bottomRight: below.to })
  })
  return found
}

function kinds(layers: number, inside: boolean): RegionKind[] {
  const kinds: RegionKind[] = []
  if (inside && layers === 0) kinds.push('gap')
  if (layers >= 2) kinds.push('overlap')
  if (!inside && layers >= 1) kinds.push('outside')
  return kinds
}

/** Denominators beyond this would only grow: hundreds of outlines that cross each other at random. */
const EXACT_BITS = 2n ** 192n

const difference = (a: Rational, b: Rational): Rational => ({ n: a.n * b.d - b.n * a.d, d: a.d * b.d })

const KINDS = ['gap', 'overlap', 'outside'] as const

/** Trapezoids of one sort that share a stretch of edge, within a slab or across its side; both are walked from top to bottom once. */
function joined(bySlab: readonly (readonly Trapezoid[])[]): Trapezoid[][] {
  const leader = new Map<Trapezoid, Trapezoid>()
  for (const slab of bySlab) for (const one of slab) leader.set(one, one)
  const find = (one: Trapezoid): Trapezoid => {
    let top = one
    for (let above = leader.get(top) as Trapezoid; above !== top; above = leader.get(top) as Trapezoid) {
      leader.set(top, leader.get(above) as Trapezoid)
      top = above
    }
    return top
  }
  const join = (one: Trapezoid, other: Trapezoid): void => {
    leader.set(find(other), find(one))
  }
  for (const kind of KINDS) {
    let before: Trapezoid[] = []
    for (const slab of bySlab) {
      const own = slab.filter((one) => one.kind === kind)
      own.slice(1).forEach((below, index) => {
        const above = own[index] as Trapezoid
        if (level(above.bottomLeft, below.topLeft) && level(above.bottomRight, below.topRight)) join(above, below)
      })
      beside(before, own, join)
      before = own
    }
  }
  const groups = new Map<Trapezoid, Trapezoid[]>()
  for (const one of leader.keys()) {
    const group = groups.get(find(one))
    if (group === undefined) groups.set(find(one), [one])
    else group.push(one)
  }
  return [...groups.values()]
}

/** Join those on the two sides of an upright line that share more than a point of it. */
function beside(left: readonly Trapezoid[], right: readonly Trapezoid[], join: (one: Trapezoid, other: Trapezoid) => void): void {
  let [i, j] = [0, 0]
  while (i < left.length && j < right.length) {
    const [one, other] = [left[i] as Trapezoid, right[j] as Trapezoid]
    const top = compare(one.topRight, other.topLeft) > 0 ? one.topRight : other.topLeft
    const ends = compare(one.bottomRight, other.bottomLeft)
    if (compare(top, ends < 0 ? one.bottomRight : other.bottomLeft) < 0) join(one, other)
    if (ends <= 0) i++
    if (ends >= 0) j++
  }
}

function regionOf(members: readonly Trapezoid[], places: readonly Rational[], patches: readonly (readonly Dot[])[]): Region {
  const first = members[0] as Trapezoid
  let exact = ZERO
  let rest = 0
  const touched = new Set<number>()
  for (const { slab, kind, topLeft, topRight, bottomLeft, bottomRight } of members) {
    const [left, right] = [places[slab] as Rational, places[slab + 1] as Rational]
    const tall = add(difference(bottomLeft, topLeft), difference(bottomRight, topRight))
    const part = multiply(multiply(tall, HALF), subtract(right, left))
    if (exact.d < EXACT_BITS && part.d < EXACT_BITS) exact = add(exact, part)
    else rest += toNumber(part)
    if (kind === 'gap') continue
    const [x0, x1] = [toNumber(left), toNumber(right)]
    const window: Spot[] = [
      [x0, toNumber(topLeft)],
      [x1, toNumber(topRight)],
      [x1, toNumber(bottomRight)],
      [x0, toNumber(bottomLeft)],
    ]
    patches.forEach((corners, patch) => {
      if (!touched.has(patch) && liesIn(corners, window)) touched.add(patch)
    })
  }
  const x = multiply(add(places[first.slab] as Rational, places[first.slab + 1] as Rational), HALF)
  const at = multiply(add(add(first.topLeft, first.topRight), add(first.bottomLeft, first.bottomRight)), rational(1, 4))
  return { kind: first.kind, at: [x, at], area: toNumber(exact) + rest, patches: [...touched].sort((a, b) => a - b) }
}

type Spot = readonly [number, number]

/** Whether some cloth of a patch lies in a trapezoid: only names the units, so doubles will do. */
function liesIn(corners: readonly Dot[], window: readonly Spot[]): boolean {
  let left: Spot[] = [...corners]
  for (let side = 0; side < 4 && left.length > 0; side++) {
    const [a, b] = [window[side] as Spot, window[(side + 1) % 4] as Spot]
    const beside = ([x, y]: Spot): number => (b[0] - a[0]) * (y - a[1]) - (b[1] - a[1]) * (x - a[0])
    left = left.flatMap((p, place) => {
      const q = left[(place + 1) % left.length] as Spot
      const [u, v] = [beside(p), beside(q)]
      const kept: Spot[] = u >= 0 ? [p] : []
      if (u < 0 !== v < 0) kept.push([p[0] + ((q[0] - p[0]) * u) / (u - v), p[1] + ((q[1] - p[1]) * u) / (u - v)])
      return kept
    })
  }
  const area = left.reduce((sum, [x, y], place) => {
    const [nx, ny] = left[(place + 1) % left.length] as Spot
    return sum + x * ny - nx * y
  }, 0)
  return Math.abs(area) > 1e-6
}
