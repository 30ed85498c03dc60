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
  /** In square steps. */
  readonly area: Rational
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
  readonly top: Slope
  readonly bottom: Slope
}

const HALF = rational(1, 2)

/** `faults`: where the layers of the units jump, with the grid's box taken away once (see `subdivide`). */
export function regions(faults: readonly Fault[], patches: readonly (readonly Dot[])[], width: number, height: number): Region[] {
  const slopes = faults.filter(({ from, to }) => from[0] !== to[0]).map(slopeOf)
  const frame = [slopeOf({ from: [0, 0], to: [width, 0], jump: 0 }), slopeOf({ from: [0, height], to: [width, height], jump: 0 })]
  const all = [...slopes, ...frame]
  const places = slabs(all, faults)
  const found: Trapezoid[] = []
  const bySlab: Trapezoid[][] = []
  for (let slab = 0; slab + 1 < places.length; slab++) {
    bySlab.push(trapezoids(all, places[slab] as Rational, places[slab + 1] as Rational, slab, width, height))
    found.push(...(bySlab.at(-1) as Trapezoid[]))
  }
  return joined(bySlab, found, places).map((members) => regionOf(members, places, patches))
}

function slopeOf({ from, to, jump }: Fault): Slope {
  const rise = rational(to[1] - from[1], to[0] - from[0])
  return { x0: rational(from[0]), x1: rational(to[0]), rise, base: subtract(rational(from[1]), multiply(rise, rational(from[0]))), jump }
}

const heightAt = ({ rise, base }: Slope, x: Rational): Rational => add(multiply(rise, x), base)

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
  const middle = multiply(add(left, right), HALF)
  const inGrid = left.n >= 0n && compare(right, rational(width)) <= 0
  const across = slopes
    .filter(({ x0, x1 }) => compare(x0, left) <= 0 && compare(x1, right) >= 0)
    .map((slope) => ({ slope, y: heightAt(slope, middle) }))
    .sort((a, b) => compare(a.y, b.y))
  const found: Trapezoid[] = []
  // The grid's box was taken away once, so nothing is "one layer too few" inside and "none" outside.
  let extra = 0
  across.slice(0, -1).forEach(({ slope, y }, index) => {
    extra += slope.jump
    const below = across[index + 1] as { slope: Slope; y: Rational }
    if (equal(y, below.y)) return
    const inside = inGrid && y.n >= 0n && compare(below.y, rational(height)) <= 0
    for (const kind of kinds(extra + (inside ? 1 : 0), inside)) found.push({ kind, slab, top: slope, bottom: below.slope })
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

function joined(bySlab: readonly Trapezoid[][], all: readonly Trapezoid[], places: readonly Rational[]): Trapezoid[][] {
  const leader = new Map<Trapezoid, Trapezoid>(all.map((one) => [one, one]))
  const find = (one: Trapezoid): Trapezoid => {
    let top = one
    while (leader.get(top) !== top) top = leader.get(top) as Trapezoid
    leader.set(one, top)
    return top
  }
  bySlab.forEach((slab, index) => {
    for (const one of slab) {
      for (const other of slab) if (other.kind === one.kind && sameLine(other.top, one.bottom)) leader.set(find(other), find(one))
      for (const other of bySlab[index + 1] ?? [])
        if (other.kind === one.kind && share(one, other, places[index + 1] as Rational)) leader.set(find(other), find(one))
    }
  })
  const groups = new Map<Trapezoid, Trapezoid[]>()
  for (const one of all) groups.set(find(one), [...(groups.get(find(one)) ?? []), one])
  return [...groups.values()]
}

const sameLine = (a: Slope, b: Slope): boolean => equal(a.rise, b.rise) && equal(a.base, b.base)

function share(one: Trapezoid, other: Trapezoid, x: Rational): boolean {
  const top = [heightAt(one.top, x), heightAt(other.top, x)].sort(compare)[1] as Rational
  const bottom = [heightAt(one.bottom, x), heightAt(other.bottom, x)].sort(compare)[0] as Rational
  return compare(top, bottom) < 0
}

function regionOf(members: readonly Trapezoid[], places: readonly Rational[], patches: readonly (readonly Dot[])[]): Region {
  let area = ZERO
  const touched = new Set<number>()
  for (const { slab, top, bottom } of members) {
    const left = places[slab] as Rational
    const right = places[slab + 1] as Rational
    const middle = multiply(add(left, right), HALF)
    const tall = subtract(heightAt(bottom, middle), heightAt(top, middle))
    area = add(area, multiply(tall, subtract(right, left)))
    const window = [
      [left, heightAt(top, left)],
      [right, heightAt(top, right)],
      [right, heightAt(bottom, right)],
      [left, heightAt(bottom, left)],
    ].map(([x, y]): Spot => [toNumber(x as Rational), toNumber(y as Rational)])
    patches.forEach((corners, patch) => {
      if (!touched.has(patch) && liesIn(corners, window)) touched.add(patch)
    })
  }
  const first = members[0] as Trapezoid
  const x = multiply(add(places[first.slab] as Rational, places[first.slab + 1] as Rational), HALF)
  const at = multiply(add(heightAt(first.top, x), heightAt(first.bottom, x)), HALF)
  return { kind: (members[0] as Trapezoid).kind, at: [x, at], area, patches: [...touched].sort((a, b) => a - b) }
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
