/**
 * Seams as a web: dots tied by stitched pieces of seam, and the shortest ways along it.
 *
 * In      seam pieces between dots, already cut at every crossing.
 * Out     dots and edges by number; the parts that hang together; from a dot, others in the order in which they are reached.
 * Exact   ways are compared in whole parts of the whole length (`whole`), so that sums do not depend on the order in which they are taken.
 */
import type { Dot } from '../plane/dots.ts'
import { Heap } from './heap.ts'
import type { Nearby } from './matching.ts'

export type Segment = readonly [Dot, Dot]

/** All lengths together are about so many parts: sums of them stay whole in a double. */
const PARTS = 2 ** 49

export class SeamWeb {
  readonly dots: readonly Dot[]
  readonly ends: readonly (readonly [number, number])[]
  /** Edges at each dot. */
  readonly around: readonly (readonly number[])[]
  readonly lengths: readonly number[]
  /** The same in whole parts. */
  readonly whole: readonly number[]
  private readonly reached: Float64Array
  private readonly by: Int32Array
  private readonly visited: Int32Array
  private visit = 0
  private readonly heap = new Heap()

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
    this.visited = new Int32Array(dots.length)
  }

  across(edge: number, dot: number): number {
    const [a, b] = this.ends[edge] as readonly [number, number]
    return a === dot ? b : a
  }

  isOdd(dot: number): boolean {
    return (this.around[dot]?.length ?? 0) % 2 === 1
  }

  /** Dots of each part that hangs together. */
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

  /** Dots with a number in `numbers` (−1: none), nearest first: at least `most`, all that are as near as the last, or all there are. */
  nearby(start: number, numbers: Int32Array, most: number): Nearby {
    const points: number[] = []
    const costs: number[] = []
    let known = Number.POSITIVE_INFINITY
    this.spread(start, (dot, cost) => {
      if (cost > known) return true
      if (dot === start || (numbers[dot] as number) < 0) return false
      points.push(numbers[dot] as number)
      costs.push(cost)
      if (points.length === most) known = cost
      return false
    })
    return { points, costs, known }
  }

  /** Edges of a shortest way. */
  way(from: number, to: number): number[] {
    this.spread(from, (dot) => dot === to)
    const edges: number[] = []
    for (let dot = to; dot !== from; ) {
      const edge = this.by[dot] as number
      edges.push(edge)
      dot = this.across(edge, dot)
    }
    return edges
  }

  /** Dots in the order in which they are reached, until one is said to be enough. Leaves in `by` the edge by which each is reached. */
  private spread(start: number, enough: (dot: number, cost: number) => boolean): void {
    const { heap, reached, by, visited } = this
    const visit = ++this.visit
    heap.clear()
    visited[start] = visit
    reached[start] = 0
    heap.put(0, start)
    while (heap.size > 0) {
      const cost = heap.least
      const dot = heap.take()
      if (cost > (reached[dot] as number)) continue
      if (enough(dot, cost)) return
      for (const edge of this.around[dot] as readonly number[]) {
        const next = this.across(edge, dot)
        const reach = cost + (this.whole[edge] as number)
        if (visited[next] === visit && reach >= (reached[next] as number)) continue
        visited[next] = visit
        reached[next] = reach
        by[next] = edge
        heap.put(reach, next)
      }
    }
  }
}
