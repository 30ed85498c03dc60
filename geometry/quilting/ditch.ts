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
  const trees = odd.map((dot) => shortest(web, dot))
  const far = Math.max(...odd.map((_, one) => Math.max(...odd.map((dot) => trees[one]?.distance[dot] as number))))
  const scale = PARTS / far
  // Two nobodies: whoever pairs with them keeps its odd end; they may not pair with each other.
  const count = odd.length + 2
  const cost = (a: number, b: number): number => {
    if (a >= odd.length && b >= odd.length) return PARTS * 4
    if (a >= odd.length || b >= odd.length) return 0
    return Math.round((trees[a]?.distance[odd[b] as number] as number) * scale)
  }
  const partner = odd.length <= PROVED ? leastPairing(count, cost) : nearPairing(count, cost)
  const times = new Map<number, number>()
  partner.forEach((other, one) => {
    if (other <= one || other >= odd.length) return
    for (let dot = odd[other] as number; dot !== odd[one]; ) {
      const edge = trees[one]?.edge[dot] as number
      times.set(edge, (times.get(edge) ?? 0) + 1)
      dot = across(web, edge, dot)
    }
  })
  return [...times].filter(([, count]) => count % 2 === 1).map(([edge]) => edge)
}

/** Nearest first, then pairs of pairs are swapped while that shortens the sum. */
function nearPairing(count: number, cost: (a: number, b: number) => number): number[] {
  const partner: number[] = new Array(count).fill(-1)
  for (let a = 0; a < count; a++) {
    if (partner[a] !== -1) continue
    let best = -1
    for (let b = a + 1; b < count; b++) if (partner[b] === -1 && (best < 0 || cost(a, b) < cost(a, best))) best = b
    partner[a] = best
    partner[best] = a
  }
  for (let improved = true, rounds = 0; improved && rounds < 50; rounds++) {
    improved = false
    for (let a = 0; a < count; a++)
      for (let c = a + 1; c < count; c++) {
        const [b, d] = [partner[a] as number, partner[c] as number]
        if (b === c) continue
        const now = cost(a, b) + cost(c, d)
        const [one, two] = [cost(a, c) + cost(b, d), cost(a, d) + cost(b, c)]
        if (Math.min(one, two) >= now) continue
        const [p, q] = one <= two ? [c, d] : [d, c]
        partner[a] = p
        partner[p] = a
        partner[b] = q
        partner[q] = b
        improved = true
      }
  }
  return partner
}

/** Shortest ways from one dot: the distance to every dot and the edge by which it is reached. */
function shortest(web: Web, start: number): { distance: Float64Array; edge: Int32Array } {
  const distance = new Float64Array(web.dots.length).fill(Number.POSITIVE_INFINITY)
  const edge = new Int32Array(web.dots.length).fill(-1)
  const heap: [number, number][] = [[0, start]]
  distance[start] = 0
  while (heap.length > 0) {
    const [length, dot] = takeLeast(heap)
    if (length > (distance[dot] as number)) continue
    for (const way of web.around[dot] ?? []) {
      const next = across(web, way, dot)
      const reach = length + (web.lengths[way] as number)
      if (reach >= (distance[next] as number)) continue
      distance[next] = reach
      edge[next] = way
      put(heap, [reach, next])
    }
  }
  return { distance, edge }
}

function put(heap: [number, number][], item: [number, number]): void {
  let at = heap.push(item) - 1
  while (at > 0) {
    const above = (at - 1) >> 1
    if ((heap[above] as [number, number])[0] <= item[0]) break
    heap[at] = heap[above] as [number, number]
    at = above
  }
  heap[at] = item
}

function takeLeast(heap: [number, number][]): [number, number] {
  const least = heap[0] as [number, number]
  const last = heap.pop() as [number, number]
  if (heap.length === 0) return least
  let at = 0
  for (;;) {
    let below = 2 * at + 1
    if (below >= heap.length) break
    if (below + 1 < heap.length && (heap[below + 1] as [number, number])[0] < (heap[below] as [number, number])[0]) below++
    if ((heap[below] as [number, number])[0] >= last[0]) break
    heap[at] = heap[below] as [number, number]
    at = below
  }
  heap[at] = last
  return least
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
