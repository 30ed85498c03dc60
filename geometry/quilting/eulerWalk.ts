/**
 * One walk over every edge of a part of the graph, twice over edges that are stitched twice.
 *
 * In      the graph, the edges to walk, the dot to begin at, and a score for each way on from a dot.
 * Out     dots in order.
 * How     Fleury: at every dot the best edge is taken, unless the remaining edges would then fall apart; at most one edge at each dot does that.
 *         The check searches from both ends of the edge at once, so it costs only as much as the smaller half. Checks have a budget of steps;
 *         when it runs out, the rest of the walk is Hierholzer's, which checks nothing and makes no choices.
 */
import type { SeamGraph } from './seamGraph.ts'

/** A score for the next edge, lower is better; `from` is the edge walked just before, −1 at the beginning. */
export type Taste = (from: number, dot: number, edge: number) => number

const BUDGET = 1_500_000

export function walk(graph: SeamGraph, once: readonly number[], twice: readonly number[], start: number, taste: Taste): number[] {
  return new Walk(graph, once, twice, taste).from(start)
}

class Walk {
  private readonly graph: SeamGraph
  private readonly taste: Taste
  /** How often each edge is still to be walked. */
  private readonly left: Uint8Array
  private readonly sides: readonly [Int32Array, Int32Array]
  private stamp = 0
  private steps = 0
  private edges: number

  constructor(graph: SeamGraph, once: readonly number[], twice: readonly number[], taste: Taste) {
    this.graph = graph
    this.taste = taste
    this.left = new Uint8Array(graph.ends.length)
    for (const edge of once) this.left[edge] = 1
    for (const edge of twice) this.left[edge] = 2
    this.sides = [new Int32Array(graph.dots.length), new Int32Array(graph.dots.length)]
    this.edges = once.length + twice.length
  }

  from(start: number): number[] {
    const path = [start]
    let before = -1
    for (let dot = start; this.edges > 0 && this.steps < BUDGET; ) {
      const edge = this.next(before, dot)
      this.take(edge)
      dot = this.graph.across(edge, dot)
      path.push(dot)
      before = edge
    }
    return this.edges > 0 ? [...path.slice(0, -1), ...this.rest(path.at(-1) as number)] : path
  }

  private take(edge: number): void {
    this.left[edge] = (this.left[edge] as number) - 1
    this.edges--
  }

  private open(dot: number): number[] {
    return (this.graph.around[dot] as readonly number[]).filter((edge) => (this.left[edge] as number) > 0)
  }

  private next(before: number, dot: number): number {
    const [first, second] = this.open(dot)
      .map((edge) => ({ edge, taste: this.taste(before, dot, edge) }))
      .sort((a, b) => a.taste - b.taste)
    if (first === undefined) throw new Error('impossible: a walk that ends before its end')
    if (second === undefined || this.left[first.edge] === 2 || this.holds(first.edge)) return first.edge
    return second.edge
  }

  /** Whether the ends of an edge stay connected without it. */
  private holds(edge: number): boolean {
    const stamp = ++this.stamp
    const fronts = (this.graph.ends[edge] as readonly [number, number]).map((dot, side) => {
      const seen = this.sides[side as 0 | 1]
      seen[dot] = stamp
      return { seen, other: this.sides[(1 - side) as 0 | 1], queue: [dot], head: 0 }
    })
    for (let turn = 0; ; turn = 1 - turn) {
      const front = fronts[turn] as (typeof fronts)[number]
      const dot = front.queue[front.head++]
      if (dot === undefined) return false
      this.steps++
      for (const way of this.graph.around[dot] as readonly number[]) {
        if (way === edge || this.left[way] === 0) continue
        const next = this.graph.across(way, dot)
        if (front.other[next] === stamp) return true
        if (front.seen[next] === stamp) continue
        front.seen[next] = stamp
        front.queue.push(next)
      }
    }
  }

  private rest(start: number): number[] {
    const path: number[] = []
    const stack = [start]
    const ways = new Map<number, number[]>()
    while (stack.length > 0) {
      const dot = stack.at(-1) as number
      const open = ways.get(dot) ?? this.open(dot)
      ways.set(dot, open)
      while (open.length > 0 && this.left[open.at(-1) as number] === 0) open.pop()
      const edge = open.at(-1)
      if (edge === undefined) {
        path.push(stack.pop() as number)
        continue
      }
      this.take(edge)
      stack.push(this.graph.across(edge, dot))
    }
    return path.reverse()
  }
}
