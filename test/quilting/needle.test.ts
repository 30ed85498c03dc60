/** Where the needle is after so much length, by numbers worked out by hand; and walks over every edge, judged by counting. */
import { describe, expect, it } from 'vitest'
import { walk } from '../../geometry/quilting/eulerWalk.ts'
import { needleAt, timedPoints } from '../../geometry/quilting/needlePosition.ts'
import { SeamGraph, type Segment } from '../../geometry/quilting/seamGraph.ts'
import type { StitchedLine } from '../../geometry/quilting/stitchedLines.ts'
import { sequence } from '../help.ts'

/** Three along, four down; then a square far away that closes. */
const LINES: readonly StitchedLine[] = [
  {
    points: [
      [0, 0],
      [3, 0],
      [3, 4],
    ],
    closed: false,
  },
  {
    points: [
      [10, 10],
      [11, 10],
      [11, 11],
      [10, 11],
    ],
    closed: true,
  },
]

describe('points with the length stitched until there', () => {
  it('grow by each stretch in the unit of a cell, closed lines back to their start; between lines nothing is stitched', () => {
    expect(timedPoints(LINES, 2).map(({ line, at, place }) => [line, at, ...place])).toEqual([
      [0, 0, 0, 0],
      [0, 6, 3, 0],
      [0, 14, 3, 4],
      [1, 14, 10, 10],
      [1, 16, 11, 10],
      [1, 18, 11, 11],
      [1, 20, 10, 11],
      [1, 22, 10, 10],
    ])
    expect(timedPoints(LINES).at(-1)?.at).toBe(11)
    expect(timedPoints([])).toEqual([])
  })
})

describe('the needle', () => {
  it.each([
    // length, line, place, timed point ahead
    [-1, 0, [0, 0], 0],
    [0, 0, [0, 0], 1],
    [3, 0, [1.5, 0], 1],
    [6, 0, [3, 0], 2],
    [8, 0, [3, 1], 2],
    // The thread is cut: at this length the next line begins.
    [14, 1, [10, 10], 4],
    [15, 1, [10.5, 10], 4],
    [21, 1, [10, 10.5], 7],
    [22, 1, [10, 10], 7],
    [99, 1, [10, 10], 7],
  ] as const)('after %d', (length, line, place, toward) => {
    expect(needleAt(timedPoints(LINES, 2), length)).toEqual({ line, place, toward })
  })

  it('is nowhere without lines', () => {
    expect(needleAt([], 1)).toBeNull()
  })
})

/** A net of squares with some edges left out, all in one part. */
function net(next: () => number, size: number): Segment[] {
  const segments: Segment[] = []
  for (let x = 0; x <= size; x++)
    for (let y = 0; y <= size; y++) {
      if (x < size && (y === 0 || next() < 0.6))
        segments.push([
          [x, y],
          [x + 1, y],
        ])
      if (y < size)
        segments.push([
          [x, y],
          [x, y + 1],
        ])
    }
  return segments
}

describe('a walk over every edge', () => {
  it('takes each once, and those that are stitched twice twice, each step from where the last ended; it ends where it must', () => {
    for (let seed = 1; seed <= 40; seed++) {
      const next = sequence(seed)
      const graph = new SeamGraph(net(next, 2 + (seed % 3)))
      const odd = [...graph.dots.keys()].filter((dot) => graph.isOdd(dot))
      // All but two odd dots are paired as they come; where two ways share an edge, it would be walked a third time: it is walked once.
      const twice = new Set<number>()
      for (let place = 2; place < odd.length; place += 2)
        for (const edge of graph.way(odd[place] as number, odd[place + 1] as number)) if (!twice.delete(edge)) twice.add(edge)
      const start = odd[0] ?? 0
      const edges = graph.ends.map((_, edge) => edge)
      // Each edge has a taste of its own, so that the walk often wants what would cut it off from the rest.
      const tastes = edges.map(() => next())
      const path = walk(graph, edges, [...twice], start, (_from, _dot, edge) => tastes[edge] as number)
      expect(path[0]).toBe(start)
      expect(path.at(-1)).toBe(odd[1] ?? start)
      const walked = edges.map(() => 0)
      path.slice(1).forEach((dot, place) => {
        const edge = graph.ends.findIndex(([a, b]) => (a === path[place] && b === dot) || (b === path[place] && a === dot))
        expect(edge).toBeGreaterThanOrEqual(0)
        walked[edge] = (walked[edge] as number) + 1
      })
      expect(walked).toEqual(edges.map((edge) => (twice.has(edge) ? 2 : 1)))
    }
  })

  it('takes the better way where both lead on, and leaves it where the rest would be cut off', () => {
    // A triangle 0-1-2 with a tail 0-3: from 1 nothing falls apart; from 0 the tail must come last.
    const graph = new SeamGraph([
      [
        [0, 0],
        [1, 0],
      ],
      [
        [1, 0],
        [0, 1],
      ],
      [
        [0, 1],
        [0, 0],
      ],
      [
        [0, 0],
        [-1, 0],
      ],
    ])
    const edges = [0, 1, 2, 3]
    const best = (liked: number): number[] => walk(graph, edges, [], 0, (_from, _dot, edge) => (edge === liked ? 0 : 1))
    expect(best(0)).toEqual([0, 1, 2, 0, 3])
    expect(best(2)).toEqual([0, 2, 1, 0, 3])
    expect(best(3)).toEqual([0, 1, 2, 0, 3])
  })
})
