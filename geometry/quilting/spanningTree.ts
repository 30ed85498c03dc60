/**
 * Seams to stitch twice so that few dots stay odd, found in one pass: for blocks with too many loose ends for the least pairing.
 *
 * In      the graph, one part of it, and the dots that are to become even.
 * Out     edges; each of those dots has an odd number of them, every other dot an even one.
 * How     the shortest seams that hold the part together are kept as a tree; an edge of it is stitched again where an odd number of the dots lies beyond
 *         it. The result is always valid, but it is not the least.
 */
import { unionFind } from '../plane/unionFind.ts'
import type { SeamGraph } from './seamGraph.ts'

export function byTree(graph: SeamGraph, set: readonly number[], dots: readonly number[]): number[] {
  const tree = treeOf(graph, set)
  const wanted = new Uint8Array(graph.dots.length)
  for (const dot of dots) wanted[dot] = 1
  const [order, toParent] = fromRoot(graph, tree, set[0] as number)
  const edges: number[] = []
  for (const dot of order.reverse()) {
    const edge = toParent.get(dot)
    if (edge === undefined || wanted[dot] === 0) continue
    edges.push(edge)
    const [a, b] = graph.ends[edge] as readonly [number, number]
    const parent = a === dot ? b : a
    wanted[parent] = 1 - (wanted[parent] as number)
  }
  return edges
}

/** The shortest edges that tie all dots together, by dot. */
function treeOf(graph: SeamGraph, set: readonly number[]): Map<number, number[]> {
  const held = unionFind(graph.dots.length)
  const edges = [...new Set(set.flatMap((dot) => graph.around[dot] ?? []))].sort((a, b) => (graph.whole[a] as number) - (graph.whole[b] as number))
  const tree = new Map<number, number[]>(set.map((dot) => [dot, []]))
  for (const edge of edges) {
    const [a, b] = graph.ends[edge] as readonly [number, number]
    if (held.find(a) === held.find(b)) continue
    held.join(a, b)
    tree.get(a)?.push(edge)
    tree.get(b)?.push(edge)
  }
  return tree
}

function fromRoot(graph: SeamGraph, tree: ReadonlyMap<number, readonly number[]>, root: number): [number[], Map<number, number>] {
  const toParent = new Map<number, number>()
  const order = [root]
  for (const dot of order)
    for (const edge of tree.get(dot) ?? []) {
      if (edge === toParent.get(dot)) continue
      const [a, b] = graph.ends[edge] as readonly [number, number]
      const next = a === dot ? b : a
      toParent.set(next, edge)
      order.push(next)
    }
  return [order, toParent]
}
