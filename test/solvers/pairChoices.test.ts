/** The least costly choice for a network of pairs: against all choices where they are few, and with a bound that never lies above what is found. */
import { describe, expect, it } from 'vitest'
import { leastChoices, type PairProblem } from '../../geometry/solvers/pairChoices.ts'
import { sequence } from '../help.ts'

/** A grid of nodes with `states` each; costs from 0 to 3 on about half the pairs of states, a little on states other than the first. */
function grid(columns: number, rows: number, states: number, seed: number): PairProblem {
  const random = sequence(seed)
  const nodes = Array.from({ length: columns * rows }, (_, node) => node)
  const ways = Array.from({ length: states }, (_, state) => state)
  const costs = (): number[][] => ways.map(() => ways.map(() => (random() < 0.5 ? 100 * Math.floor(random() * 4) : 0)))
  const pairs = nodes.flatMap((node) => [
    ...(node % columns < columns - 1 ? [{ nodes: [node, node + 1] as const, costs: costs() }] : []),
    ...(node + columns < nodes.length ? [{ nodes: [node, node + columns] as const, costs: costs() }] : []),
  ])
  return {
    own: nodes.map(() => ways.map((state) => (state === 0 ? 0 : 1))),
    pairs,
    orders: [nodes, [...nodes].sort((a, b) => (a % columns) - (b % columns) || a - b)],
  }
}

function costOf({ own, pairs }: PairProblem, states: readonly number[]): number {
  const alone = own.reduce((sum, costs, node) => sum + (costs[states[node] as number] as number), 0)
  return pairs.reduce((sum, { nodes: [a, b], costs }) => sum + ((costs[states[a] as number] as number[])[states[b] as number] as number), alone)
}

function leastOfAll(problem: PairProblem): number {
  const counts = problem.own.map((costs) => costs.length)
  let least = Number.POSITIVE_INFINITY
  for (let number = 0; number < counts.reduce((product, count) => product * count, 1); number++) {
    let left = number
    const states = counts.map((count) => {
      const state = left % count
      left = Math.floor(left / count)
      return state
    })
    least = Math.min(least, costOf(problem, states))
  }
  return least
}

describe('the least costly choice', () => {
  it.each(Array.from({ length: 24 }, (_, seed) => ({ seed, states: 2 + (seed % 2), rows: 2 + (seed % 3 === 0 ? 1 : 0) })))(
    'is the least of all choices of a grid of 3 × $rows with $states states (seed $seed)',
    ({ seed, states, rows }) => {
      const problem = grid(3, rows, states, seed + 1)
      const found = leastChoices(problem)
      expect(costOf(problem, found.states)).toBe(found.cost)
      expect(found.cost).toBe(leastOfAll(problem))
      expect(found.atLeast).toBe(found.cost)
    },
  )

  it('is proved for a grid of 6 × 6 with four states, and no single change makes it better', () => {
    const problem = grid(6, 6, 4, 5)
    const { states, cost, atLeast } = leastChoices(problem)
    expect(atLeast).toBe(cost)
    for (let node = 0; node < states.length; node++)
      for (let state = 0; state < 4; state++)
        expect(
          costOf(
            problem,
            states.map((own, at) => (at === node ? state : own)),
          ),
        ).toBeGreaterThanOrEqual(cost)
  })

  it('is bounded from below where a grid is too wide for tables', () => {
    const problem = grid(14, 14, 4, 9)
    const { states, cost, atLeast } = leastChoices(problem)
    expect(costOf(problem, states)).toBe(cost)
    expect(atLeast).toBeGreaterThan(0)
    expect(atLeast).toBeLessThan(cost)
  })

  it('is found for nodes without pairs, and for a ring', () => {
    expect(
      leastChoices({
        own: [
          [3, 1],
          [0, 5],
        ],
        pairs: [],
        orders: [[0, 1]],
      }),
    ).toEqual({ states: [1, 0], cost: 1, atLeast: 1 })
    const differ = [
      [1, 0],
      [0, 1],
    ]
    const ring = [0, 1, 2].map((node) => ({ nodes: [node, (node + 1) % 3] as const, costs: differ }))
    expect(
      leastChoices({
        own: [
          [0, 0],
          [0, 0],
          [0, 0],
        ],
        pairs: ring,
        orders: [[0, 1, 2]],
      }).cost,
    ).toBe(1)
  })
})
