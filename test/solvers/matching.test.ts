import { describe, expect, it } from 'vitest'
import { type AskNear, leastPairing } from '../../geometry/solvers/matching.ts'
import { sequence } from '../help.ts'

type Cost = (a: number, b: number) => number

/** The least sum over all pairings that leave so many open, one by one. */
function bestOfAll(left: readonly number[], cost: Cost, open: number): number {
  const [first, ...rest] = left
  if (first === undefined) return open === 0 ? 0 : Number.POSITIVE_INFINITY
  const paired = rest.map((other) => {
    const others = rest.filter((one) => one !== other)
    return cost(first, other) + bestOfAll(others, cost, open)
  })
  return Math.min(...paired, ...(open > 0 ? [bestOfAll(rest, cost, open - 1)] : []))
}

/** Neighbours, nearest first, as far as they are asked for. */
function nearOf(count: number, cost: Cost): AskNear {
  return (askers, heights, most) => {
    const others = Array.from({ length: count }, (_, other) => other).filter((other) => !askers.includes(other))
    const best = others.map((to) => {
      const pairs = askers.map((from, place) => ({ from, to, cost: cost(from, to), apart: cost(from, to) - (heights[place] as number) }))
      return pairs.reduce((a, b) => (b.apart < a.apart ? b : a))
    })
    const sorted = best.sort((a, b) => a.apart - b.apart)
    const known = sorted[most - 1]?.apart ?? Number.POSITIVE_INFINITY
    return { pairs: sorted.filter(({ apart }) => apart <= known), known }
  }
}

const KINDS: readonly [string, (next: () => number, count: number) => Cost][] = [
  ['on a small grid, with many ties', (next, count) => onGrid(next, count, 4)],
  ['on a wide grid', (next, count) => onGrid(next, count, 500)],
  ['at random', (next, count) => atRandom(next, count, 1000)],
  ['at random, with many ties', (next, count) => atRandom(next, count, 4)],
]

function onGrid(next: () => number, count: number, wide: number): Cost {
  const places = Array.from({ length: count }, () => [Math.floor(next() * wide), Math.floor(next() * wide)] as const)
  return (a, b) => {
    const [[ax, ay], [bx, by]] = [places[a] as readonly [number, number], places[b] as readonly [number, number]]
    return Math.abs(ax - bx) + Math.abs(ay - by)
  }
}

function atRandom(next: () => number, count: number, most: number): Cost {
  const costs = Array.from({ length: count }, () => Array.from({ length: count }, () => Math.floor(next() * most)))
  return (a, b) => (costs[Math.min(a, b)] as number[])[Math.max(a, b)] as number
}

describe('the least pairing', () => {
  describe.each(KINDS)('%s', (_, costOf) => {
    it.each([0, 1, 2] as const)('equals the best of all pairings that leave %i open', (open) => {
      for (let seed = 1; seed <= 60; seed++) {
        const next = sequence(seed * 7919)
        const count = 2 + 2 * (seed % 4) + (open === 1 ? 1 : 0)
        const cost = costOf(next, count)
        const found = leastPairing(count, nearOf(count, cost), open)
        found.partner.forEach((other, one) => {
          if (other >= 0) expect(found.partner[other]).toBe(one)
        })
        expect(found.partner.filter((other) => other < 0)).toHaveLength(open)
        const sum = found.partner.reduce((total, other, one) => (other > one ? total + cost(one, other) : total), 0)
        const all = found.partner.map((_partner, one) => one)
        expect(sum, `case ${seed}`).toBe(bestOfAll(all, cost, open))
        expect(found.cost).toBe(sum)
      }
    })
  })

  it('proves the sum of hundreds of pairs by prices that add up to it', () => {
    for (let seed = 1; seed <= 8; seed++) {
      const cost = onGrid(sequence(seed), 300, seed % 2 === 0 ? 40 : 4000)
      const { cost: sum, atLeast, partner } = leastPairing(300, nearOf(300, cost), 2)
      expect(atLeast).toBe(sum)
      expect(partner.reduce((total, other, one) => (other > one ? total + cost(one, other) : total), 0)).toBe(sum)
    }
  })

  it('names every point that some least pairing leaves open', () => {
    for (let seed = 1; seed <= 40; seed++) {
      const count = 8
      const cost = onGrid(sequence(seed * 31), count, 6)
      const all = Array.from({ length: count }, (_, point) => point)
      const { cost: least, openable } = leastPairing(count, nearOf(count, cost), 2)
      for (const point of all) {
        const others = all.filter((one) => one !== point)
        if (bestOfAll(others, cost, 1) === least) expect(openable).toContain(point)
      }
    }
  })
})
