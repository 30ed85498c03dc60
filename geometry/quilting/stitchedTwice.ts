/**
 * What is stitched twice: the shortest seams that make a part of the graph one that can be drawn in one go.
 *
 * In      the graph, one part of it, and where the route is to begin.
 * Out     the edges to stitch once more, and the dots where the route begins and ends.
 * How     a line can be drawn in one go when at most two dots have an odd number of seam ends, and then it begins and ends there. So all but two odd
 *         dots are paired along shortest ways. To begin at a dot of one's choice, that dot is one of the two: an odd one is left unpaired, an even one
 *         is paired like the odd ones, or left open itself, and then the route returns to it.
 * Exact   the pairing is proved to be the least (see `leastPairing`), except with very many loose ends: those use a spanning tree, and are marked as not proved.
 * Source  the shortest route over all streets: M.-K. Kwan (1960), J. Edmonds and E. L. Johnson (1973). From memory.
 */
import type { Dot } from '../plane/points.ts'
import { leastPairing } from '../solvers/matching.ts'
import type { SeamGraph } from './seamGraph.ts'
import { byTree } from './spanningTree.ts'

/** Where a route begins: at the dot nearest `near` of those where beginning costs nothing, or at the nearest of all whatever it costs. */
export interface Beginning {
  readonly near: Dot
  readonly atAnyCost: boolean
}

export interface Twice {
  readonly edges: readonly number[]
  /** The same dot twice: the route ends where it began. `null`: it is closed and may begin anywhere. */
  readonly ends: readonly [number, number] | null
  readonly proved: boolean
}

/** With more dots than this the least pairing is not computed: no maker stitches that many loose ends. */
const MOST_PAIRED = 20_000

/** How many dots are tried as a start that costs nothing. */
const TRIES = 16

/** The edges of one part of the graph that are stitched twice, and where the route begins and ends. */
export function twiceOf(graph: SeamGraph, set: readonly number[], beginning: Beginning | null): Twice {
  const odd = set.filter((dot) => graph.isOdd(dot))
  if (beginning?.atAnyCost) return begun(graph, set, odd, nearestOf(graph, set, beginning.near)).twice
  if (odd.length === 0) return { edges: [], ends: null, proved: true }
  const free = paired(graph, set, odd, 2)
  if (beginning === null) return free.twice
  const ends = [...free.openable].sort((a, b) => distanceTo(graph, a, beginning.near) - distanceTo(graph, b, beginning.near))
  for (const dot of ends.slice(0, TRIES)) {
    if (free.twice.ends?.includes(dot)) break
    const tried = begun(graph, set, odd, dot)
    if (tried.cost <= free.cost + slackOf(graph)) return tried.twice
  }
  const [from, to] = free.twice.ends as readonly [number, number]
  return distanceTo(graph, from, beginning.near) <= distanceTo(graph, to, beginning.near) ? free.twice : { ...free.twice, ends: [to, from] }
}

/** Every whole length is rounded by half a part at most. */
const slackOf = (graph: SeamGraph): number => graph.whole.length

/** How far a dot of the graph is from a place, in steps of the plane. */
export const distanceTo = (graph: SeamGraph, dot: number, [x, y]: Dot): number => {
  const [dx, dy] = graph.dots[dot] as Dot
  return Math.hypot(dx - x, dy - y)
}

/** The dot of a set that is nearest to a place. */
export const nearestOf = (graph: SeamGraph, set: readonly number[], near: Dot): number =>
  set.reduce((best, dot) => (distanceTo(graph, dot, near) < distanceTo(graph, best, near) ? dot : best), set[0] as number)

function begun(graph: SeamGraph, set: readonly number[], odd: readonly number[], start: number): ReturnType<typeof paired> {
  const others = odd.includes(start) ? odd.filter((dot) => dot !== start) : [...odd, start]
  const found = paired(graph, set, others, 1)
  const [end] = found.twice.ends as readonly [number, number]
  return { ...found, twice: { ...found.twice, ends: [start, end] } }
}

function paired(
  graph: SeamGraph,
  set: readonly number[],
  dots: readonly number[],
  open: 1 | 2,
): { twice: Twice; cost: number; openable: readonly number[] } {
  if (dots.length > MOST_PAIRED) return byTreeOnly(graph, set, dots, open)
  const numbers = new Int32Array(graph.dots.length).fill(-1)
  dots.forEach((dot, place) => {
    numbers[dot] = place
  })
  const least = leastPairing(dots.length, (sources, heights, most) => graph.nearby(dots, numbers, sources, heights, most), open, slackOf(graph))
  // Two ways over one edge would undo each other.
  const edges = new Set<number>()
  least.partner.forEach((other, place) => {
    if (other < place) return
    for (const edge of graph.way(dots[place] as number, dots[other] as number)) if (!edges.delete(edge)) edges.add(edge)
  })
  const ends = dots.filter((_, place) => least.partner[place] === -1)
  return {
    twice: { edges: [...edges], ends: [ends[0] as number, ends.at(-1) as number], proved: least.cost === least.atLeast },
    cost: least.cost,
    openable: least.openable.map((place) => dots[place] as number),
  }
}

/** All but as many dots as stay open are made even. */
function byTreeOnly(graph: SeamGraph, set: readonly number[], dots: readonly number[], open: 1 | 2): ReturnType<typeof paired> {
  const ends = open === 1 ? dots.slice(0, 1) : [dots[0] as number, dots.at(-1) as number]
  const edges = byTree(graph, set, open === 1 ? dots.slice(1) : dots.slice(1, -1))
  const cost = edges.reduce((sum, edge) => sum + (graph.whole[edge] as number), 0)
  return { twice: { edges, ends: [ends[0] as number, ends.at(-1) as number], proved: false }, cost, openable: ends }
}
