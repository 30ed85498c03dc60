/**
 * Seams as a graph: dots joined by stitched pieces of seam, and the shortest ways along them.
 *
 * In      seam pieces between dots, already cut at every crossing.
 * Out     dots and edges by number; the connected parts; the other dots in order of distance from one.
 * Exact   ways are compared in whole parts of the whole length (`whole`), so that sums do not depend on the order in which they are taken.
 */
import FlatQueue from 'flatqueue'
import type { Dot } from '../plane/points.ts'
import type { Nearby } from '../solvers/matching.ts'

export type Segment = readonly [Dot, Dot]

/** All lengths together are about this many parts, so sums of them stay whole in a double. */
const PARTS = 2 ** 49

export class SeamGraph {
  readonly dots: readonly Dot[]
  readonly ends: readonly (readonly [number, number])[]
  /** Edges at each dot. */
  readonly around: readonly (readonly number[])[]
  readonly lengths: readonly number[]
  /** The same in whole parts. */
  readonly whole: readonly number[]
  private readonly reached: Float64Array
  private readonly by: Int32Array
  private readonly origin: Int32Array
  private readonly visited: Int32Array
  private readonly started: Int32Array
  private visit = 0
  private readonly queue = new FlatQueue<number>()

  constructor(segments: readonly Segment[]) {
    const numbers = new Map<string, number>()
    const dots: Dot[] = []
    const around: number[][] = []
    const numberOf = (dot: Dot): number => {
      const key = `${dot[0]},${dot[1]}`
      const known = numbers.get(key)
      if (known !== undefined) return known
      numbers.set(key, dots.length)
      around.push([])
      return dots.push(dot) - 1
    }
    this.ends = segments.map(([from, to], edge): [number, number] => {
      const pair: [number, number] = [numberOf(from), numberOf(to)]
      for (const dot of pair) around[dot]?.push(edge)
      return pair
    })
    this.dots = dots
    this.around = around
    this.lengths = segments.map(([[x0, y0], [x1, y1]]) => Math.hypot(x1 - x0, y1 - y0))
    const total = this.lengths.reduce((sum, length) => sum + length, 0)
    this.whole = this.lengths.map((length) => Math.round((length / total) * PARTS))
    this.reached = new Float64Array(dots.length)
    this.by = new Int32Array(dots.length)
    this.origin = new Int32Array(dots.length)
    this.visited = new Int32Array(dots.length)
    this.started = new Int32Array(dots.length)
  }

  across(edge: number, dot: number): number {
    const [a, b] = this.ends[edge] as readonly [number, number]
    return a === dot ? b : a
  }

  isOdd(dot: number): boolean {
    return (this.around[dot]?.length ?? 0) % 2 === 1
  }

  /** The dots of each connected part. */
  sets(): number[][] {
    const seen = this.dots.map(() => false)
    return this.dots.flatMap((_, first) => {
      if (seen[first]) return []
      seen[first] = true
      const members = [first]
      for (const dot of members)
        for (const edge of this.around[dot] ?? []) {
          const next = this.across(edge, dot)
          if (seen[next]) continue
          seen[next] = true
          members.push(next)
        }
      return [members]
    })
  }

  /** The nearby dots that `leastPairing` needs, among the dots to be paired. */
  nearby(paired: readonly number[], numbers: Int32Array, sources: readonly number[], heights: readonly number[], most: number): Nearby {
    const pairs: { from: number; to: number; cost: number }[] = []
    let known = Number.POSITIVE_INFINITY
    const { origin } = this
    this.spread(
      sources.map((source) => paired[source] as number),
      heights,
      (dot, cost) => {
        if (cost > known) return true
        const [place, to] = [origin[dot] as number, numbers[dot] as number]
        if (to < 0 || this.isStart(dot)) return false
        pairs.push({ from: sources[place] as number, to, cost: cost + (heights[place] as number) })
        if (pairs.length === most) known = cost
        return false
      },
    )
    return { pairs, known }
  }

  /** The edges of a shortest way. */
  way(from: number, to: number): number[] {
    this.spread([from], [0], (dot) => dot === to)
    const edges: number[] = []
    for (let dot = to; dot !== from; ) {
      const edge = this.by[dot] as number
      edges.push(edge)
      dot = this.across(edge, dot)
    }
    return edges
  }

  private isStart(dot: number): boolean {
    return this.started[dot] === this.visit
  }

  /**
   * Dots in the order in which they are reached from the nearest start, each start's height counting as distance already covered, until `enough` says stop.
   * Leaves in `by` the edge by which each dot is reached, in `origin` the place of its start among the starts.
   */
  private spread(starts: readonly number[], heights: readonly number[], enough: (dot: number, cost: number) => boolean): void {
    const { queue, reached, by, visited, origin } = this
    const visit = ++this.visit
    queue.clear()
    starts.forEach((start, place) => {
      this.started[start] = visit
      visited[start] = visit
      reached[start] = -(heights[place] as number)
      origin[start] = place
      queue.push(start, reached[start])
    })
    while (queue.length > 0) {
      const cost = queue.peekValue() as number
      const dot = queue.pop() as number
      if (cost > (reached[dot] as number)) continue
      if (enough(dot, cost)) return
      for (const edge of this.around[dot] as readonly number[]) {
        const next = this.across(edge, dot)
        const reach = cost + (this.whole[edge] as number)
        if (visited[next] === visit && reach >= (reached[next] as number)) continue
        visited[next] = visit
        reached[next] = reach
        by[next] = edge
        origin[next] = origin[dot] as number
        queue.push(next, reach)
      }
    }
  }
}
