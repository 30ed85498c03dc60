/**
 * One line of quilting along the seams.
 *
 * In      seam pieces between dots, already cut at every crossing.
 * Out     a route for each connected set of seams, with the least length stitched twice; lengths in the dots' own unit.
 * How     a line can be drawn in one go when at most two dots have an odd number of seam ends. The others are paired along shortest ways, those ways
 *         stitched twice; a pair of nobodies takes the two dots where the route begins and ends. Then the route is Hierholzer's.
 * Exact   the pairing is the least one (see `leastPairing`), up to `PROVED` odd dots in a set; beyond, near dots are paired and improved.
 * Source  the shortest route over all streets: M.-K. Kwan (1960), J. Edmonds and E. L. Johnson (1973). From memory.
 */
import type { Dot } from '../plane/dots.ts'
import { leastPairing } from './matching.ts'

export interface Routes {
  readonly routes: readonly { readonly points: readonly Dot[]; readonly closed: boolean }[]
  readonly retraced: number
  readonly length: number
  /** Whether the length stitched twice is proved to be the least. */
  readonly proved: boolean
}

/** Odd dots in one set up to which the least pairing is found. */
const PROVED = 600
/** Lengths are paired in this many parts of the longest way. */
const PARTS = 2 ** 36

interface Web {
  readonly dots: readonly Dot[]
  readonly lengths: readonly number[]
  readonly ends: readonly (readonly [number, number])[]
  readonly around: readonly (readonly number[])[]
}

export function ditch(segments: readonly (readonly [Dot, Dot])[]): Routes {
  const web = webOf(segments)
  const routes: { points: Dot[]; closed: boolean }[] = []
  let retraced = 0
  let proved = true
  for (const dots of sets(web)) {
    const odd = dots.filter((dot) => (web.around[dot]?.length ?? 0) % 2 === 1)
    const twice = odd.length <= 2 ? [] : waysTwice(web, odd)
    if (odd.length > PROVED) proved = false
    for (const edge of twice) retraced += web.lengths[edge] as number
    routes.push({ points: walk(web, dots, twice).map((dot) => web.dots[dot] as Dot), closed: odd.length === 0 })
  }
  const once = web.lengths.reduce((sum, length) => sum + length, 0)
  return {
    routes: routes.map((route) => (route.closed ? { ...route, points: route.points.slice(0, -1) } : route)),
    retraced,
    length: once + retraced,
    proved,
  }
}

function webOf(segments: readonly (readonly [Dot, Dot])[]): Web {
  const numbers = new Map<string, number>()
  const dots: Dot[] = []
  const around: number[][] = []
  const numberOf = (dot: Dot): number => {
    const key = `${dot[0]},${dot[1]}`
    const known = numbers.get(key)
    if (known !== undefined) return known
    numbers.set(key, dots.length)
    dots.push(dot)
    around.push([])
    return dots.length - 1
  }
  const ends = segments.map(([from, to], edge): [number, number] => {
    const pair: [number, number] = [numberOf(from), numberOf(to)]
    for (const dot of pair) around[dot]?.push(edge)
    return pair
  })
  return { dots, around, ends, lengths: segments.map(([[x0, y0], [x1, y1]]) => Math.hypot(x1 - x0, y1 - y0)) }
}

const across = ({ ends }: Web, edge: number, dot: number): number => {
  const [a, b] = ends[edge] as readonly [number, number]
  return a === dot ? b : a
}

function sets(web: Web): number[][] {
  const seen = web.dots.map(() => false)
  return web.dots.flatMap((_, first) => {
    if (seen[first]) return []
    seen[first] = true
    const members = [first]
    for (const dot of members)
      for (const edge of web.around[dot] ?? []) {
        const next = across(web, edge, dot)
        if (seen[next]) continue
        seen[next] = true
        members.push(next)
      }
    return [members]
  })
}

/** Edges to stitch twice so that all odd dots but two become even. */
function waysTwice(web: Web, odd: readonly number[]): number[] {
  return odd.length <= PROVED ? leastTwice(web, odd) : nearTwice(web, odd)
}

function leastTwice(web: Web, odd: readonly number[]): number[] {
  const trees = odd.map((dot) => shortest(web, dot))
  const far = Math.max(...odd.map((_, one) => Math.max(...odd.map((dot) => trees[one]?.distance[dot] as number))))
  const scale = PARTS / far
  // Two nobodies: whoever pairs with them keeps its odd end; they may not pair with each other.
  const cost = (a: number, b: number): number => {
    if (a >= odd.length && b >= odd.length) return PARTS * 4
    if (a >= odd.length || b >= odd.length) return 0
    return Math.round((trees[a]?.distance[odd[b] as number] as number) * scale)
  }
  const partner = leastPairing(odd.length + 2, cost)
  const pairs = partner.flatMap((other, one) => (other > one && other < odd.length ? [[one, other] as const] : []))
  return walkedOdd(
    web,
    pairs.map(([one, other]) => ({ from: odd[one] as number, to: odd[other] as number, ways: trees[one] as Ways })),
  )
}

/** Edges that an odd number of ways run along: two ways over one edge undo each other. */
function walkedOdd(
  web: Web,
  pairs: readonly { readonly from: number; readonly to: number; readonly ways: { readonly edge: Int32Array | ReadonlyMap<number, number> } }[],
): number[] {
  const twice = new Set<number>()
  for (const { from, to, ways } of pairs) {
    for (let dot = to; dot !== from; ) {
      const edge = (ways.edge instanceof Map ? ways.edge.get(dot) : (ways.edge as Int32Array)[dot]) as number
      if (!twice.delete(edge)) twice.add(edge)
      dot = across(web, edge, dot)
    }
  }
  return [...twice]
}

/** Neighbours that each odd dot looks at. */
const NEAR = 8

interface Near {
  readonly edge: ReadonlyMap<number, number>
  /** Odd dots found, nearest first, with their distance. */
  readonly found: ReadonlyMap<number, number>
}

/** Near odd dots are paired, shortest ways first, then pairs of pairs swapped while that is shorter; whoever is left is paired farther off. */
function nearTwice(web: Web, odd: readonly number[]): number[] {
  const open = new Set(odd)
  const near = new Map(odd.map((dot) => [dot, nearest(web, dot, open, NEAR)]))
  const offers = odd
    .flatMap((dot) => [...(near.get(dot) as Near).found].map(([other, length]) => ({ dot, other, length })))
    .sort((a, b) => a.length - b.length)
  const partner = new Map<number, number>()
  for (const { dot, other } of offers) {
    if (partner.has(dot) || partner.has(other)) continue
    partner.set(dot, other)
    partner.set(other, dot)
  }
  swapPairs(odd, near, partner)
  const left = new Set(odd.filter((dot) => !partner.has(dot)))
  const pairs = odd.flatMap((dot) => {
    const other = partner.get(dot)
    if (other === undefined || other < dot) return []
    const from = near.get(dot) as Near
    return from.found.has(other) ? [{ from: dot, to: other, ways: from }] : [{ from: other, to: dot, ways: near.get(other) as Near }]
  })
  // Two dots stay open: the route begins at one and ends at the other.
  for (const dot of [...left]) {
    if (left.size <= 2 || !left.has(dot)) continue
    left.delete(dot)
    const ways = nearest(web, dot, left, 1)
    const [other] = [...ways.found.keys()] as [number]
    left.delete(other)
    pairs.push({ from: dot, to: other, ways })
  }
  if (left.size === 0) pairs.splice(longest(pairs.map(({ ways, to }) => ways.found.get(to) as number)), 1)
  return walkedOdd(web, pairs)
}

const longest = (lengths: readonly number[]): number =>
  lengths.reduce((best, length, place) => (length > (lengths[best] as number) ? place : best), 0)

function swapPairs(odd: readonly number[], near: ReadonlyMap<number, Near>, partner: Map<number, number>): void {
  const apart = (a: number, b: number): number => near.get(a)?.found.get(b) ?? near.get(b)?.found.get(a) ?? Number.POSITIVE_INFINITY
  for (let round = 0, improved = true; improved && round < 20; round++) {
    improved = false
    for (const a of odd)
      for (const c of (near.get(a) as Near).found.keys()) {
        const [b, d] = [partner.get(a), partner.get(c)]
        if (b === undefined || d === undefined || b === c) continue
        if (apart(a, c) + apart(b, d) >= apart(a, b) + apart(c, d) - 1e-9) continue
        partner.set(a, c)
        partner.set(c, a)
        partner.set(b, d)
        partner.set(d, b)
        improved = true
      }
  }
}

/** The nearest odd dots of a set, going no farther than needed. */
function nearest(web: Web, start: number, among: ReadonlySet<number>, most: number): Near {
  const distance = new Map([[start, 0]])
  const edge = new Map<number, number>()
  const found = new Map<number, number>()
  const heap = new Heap()
  heap.put(0, start)
  while (heap.size > 0 && found.size < most) {
    const length = heap.least
    const dot = heap.take()
    if (length > (distance.get(dot) as number)) continue
    if (dot !== start && among.has(dot)) found.set(dot, length)
    for (const way of web.around[dot] as number[]) {
      const next = across(web, way, dot)
      const reach = length + (web.lengths[way] as number)
      if (reach >= (distance.get(next) ?? Number.POSITIVE_INFINITY)) continue
      distance.set(next, reach)
      edge.set(next, way)
      heap.put(reach, next)
    }
  }
  return { edge, found }
}

interface Ways {
  readonly distance: Float64Array
  readonly edge: Int32Array
}

/** Shortest ways from one dot: the distance to every dot and the edge by which it is reached. */
function shortest(web: Web, start: number): Ways {
  const distance = new Float64Array(web.dots.length).fill(Number.POSITIVE_INFINITY)
  const edge = new Int32Array(web.dots.length).fill(-1)
  const heap = new Heap()
  distance[start] = 0
  heap.put(0, start)
  while (heap.size > 0) {
    const length = heap.least
    const dot = heap.take()
    if (length > (distance[dot] as number)) continue
    for (const way of web.around[dot] as number[]) {
      const next = across(web, way, dot)
      const reach = length + (web.lengths[way] as number)
      if (reach >= (distance[next] as number)) continue
      distance[next] = reach
      edge[next] = way
      heap.put(reach, next)
    }
  }
  return { distance, edge }
}

/** Dots by distance, nearest first. */
class Heap {
  private readonly keys: number[] = []
  private readonly dots: number[] = []

  get size(): number {
    return this.keys.length
  }

  get least(): number {
    return this.keys[0] as number
  }

  put(key: number, dot: number): void {
    let at = this.keys.length
    this.keys.push(key)
    this.dots.push(dot)
    while (at > 0) {
      const above = (at - 1) >> 1
      if ((this.keys[above] as number) <= key) break
      this.keys[at] = this.keys[above] as number
      this.dots[at] = this.dots[above] as number
      at = above
    }
    this.keys[at] = key
    this.dots[at] = dot
  }

  take(): number {
    const first = this.dots[0] as number
    const key = this.keys.pop() as number
    const dot = this.dots.pop() as number
    const size = this.keys.length
    if (size === 0) return first
    let at = 0
    for (;;) {
      let below = 2 * at + 1
      if (below >= size) break
      if (below + 1 < size && (this.keys[below + 1] as number) < (this.keys[below] as number)) below++
      if ((this.keys[below] as number) >= key) break
      this.keys[at] = this.keys[below] as number
      this.dots[at] = this.dots[below] as number
      at = below
    }
    this.keys[at] = key
    this.dots[at] = dot
    return first
  }
}

/** Every edge of a set once, those of `twice` twice more than none: dots in order. */
function walk(web: Web, dots: readonly number[], twice: readonly number[]): number[] {
  const more = new Map<number, number[]>()
  const left = new Map<number, number>()
  for (const dot of dots) for (const edge of web.around[dot] ?? []) left.set(edge, 1)
  for (const edge of twice) {
    left.set(edge, 2)
    for (const dot of web.ends[edge] as readonly [number, number]) more.set(dot, [...(more.get(dot) ?? []), edge])
  }
  const ways = new Map(dots.map((dot) => [dot, [...(web.around[dot] ?? []), ...(more.get(dot) ?? [])]]))
  const start = dots.find((dot) => (ways.get(dot)?.length ?? 0) % 2 === 1) ?? (dots[0] as number)
  const path: number[] = []
  const stack = [start]
  while (stack.length > 0) {
    const dot = stack.at(-1) as number
    const open = ways.get(dot) as number[]
    while (open.length > 0 && left.get(open.at(-1) as number) === 0) open.pop()
    const edge = open.pop()
    if (edge === undefined) {
      path.push(stack.pop() as number)
      continue
    }
    left.set(edge, (left.get(edge) as number) - 1)
    stack.push(across(web, edge, dot))
  }
  return path
}
