/** The quick way for crowds of loose ends: by counting seam ends, and never shorter than the least. */
import { describe, expect, it } from 'vitest'
import { SeamGraph } from '../../geometry/quilting/seamGraph.ts'
import { byTree } from '../../geometry/quilting/spanningTree.ts'
import { twiceOf } from '../../geometry/quilting/stitchedTwice.ts'
import { sequence } from '../help.ts'
import { partsOf, scattered } from './seams.ts'

describe('stitching again along a tree', () => {
  it('makes every odd dot even, and no dot odd, and is never shorter than the least pairing', () => {
    for (let seed = 1; seed <= 20; seed++) {
      const [segments] = partsOf(scattered(sequence(seed), 5, 5, 0.8))
      if (segments === undefined) throw new Error('no seams')
      const graph = new SeamGraph(segments)
      const set = graph.dots.map((_, dot) => dot)
      const odd = set.filter((dot) => graph.isOdd(dot))
      const edges = byTree(graph, set, odd)
      const times = new Int32Array(graph.dots.length)
      for (const edge of edges) for (const dot of graph.ends[edge] ?? []) times[dot] = (times[dot] as number) + 1
      for (const dot of set) expect((times[dot] as number) % 2 === 1).toBe(graph.isOdd(dot))
      const length = (all: readonly number[]): number => all.reduce((sum, edge) => sum + (graph.lengths[edge] as number), 0)
      expect(length(edges)).toBeGreaterThanOrEqual(length(twiceOf(graph, set, null).edges) - 1e-9)
    }
  })
})
