/** The batch solver runs once for each problem, and again only for a different problem. */
import { describe, expect, it } from 'vitest'
import { cachedCovers } from '../../geometry/cutting/batches/coverCache.ts'
import { cutListCache } from '../../geometry/cutting/cutListCache.ts'
import { type Block, findings, liveFindings } from '../../geometry/index.ts'
import { type Cover, leastCover } from '../../geometry/solvers/closedWalks.ts'
import type { Demand } from '../../geometry/solvers/fractionalCover.ts'
import { star } from '../help.ts'

function counted(): { solve: (demand: Demand, work: number) => Cover; asked: Demand[] } {
  const asked: Demand[] = []
  return {
    asked,
    solve: (demand, work) => {
      asked.push(demand)
      return leastCover(demand, work)
    },
  }
}

const SCRAPS = [
  ['a', 'b'],
  ['c', 'b'],
  ['d', 'c'],
  ['b', 'd'],
] as const

const recoloured = (block: Block, id: string, fabrics: object): Block => ({
  ...block,
  units: block.units.map((unit) => (unit.id === id ? ({ ...unit, fabrics: { ...unit.fabrics, ...fabrics } } as typeof unit) : unit)),
})

describe('a batch solver with a cache', () => {
  it('answers as the solver does', () => {
    const demand = { nodes: 2, steps: Int32Array.of(1, 2, 0, 3) }
    expect(cachedCovers()(demand, 1e6)).toEqual(leastCover(demand, 1e6))
  })

  it('solves again for other steps, another number of fabrics and other work, and only for those', () => {
    const { solve, asked } = counted()
    const covers = cachedCovers(solve)
    const ask = (steps: number[], nodes = 2, work = 1e6): Cover => covers({ nodes, steps: Int32Array.from(steps) }, work)
    ask([1, 0, 0, 2])
    ask([1, 0, 0, 2])
    expect(asked).toHaveLength(1)
    ask([1, 0, 2, 0])
    ask([1, 0, 0, 3])
    ask([1, 0, 0, 2, 0, 0, 0, 0, 0], 3)
    ask([1, 0, 0, 2], 2, 2e6)
    expect(asked).toHaveLength(5)
  })

  it('forgets the least recently used answer', () => {
    const { solve, asked } = counted()
    const covers = cachedCovers(solve, 2)
    const ask = (count: number): Cover => covers({ nodes: 1, steps: Int32Array.of(count) }, 1e6)
    for (const count of [1, 2, 1, 3, 1]) ask(count)
    expect(asked).toHaveLength(3)
    ask(2)
    expect(asked).toHaveLength(4)
  })
})

describe('findings that follow the hand', () => {
  it('do not solve the batches again while the geese stay as they are', () => {
    const { solve, asked } = counted()
    const follow = liveFindings(cutListCache(solve))
    const block = star(SCRAPS)
    follow(block)
    expect(asked).toHaveLength(1)
    const beside = recoloured(block, 'm', { patch: 'b' })
    expect(follow(beside)).toEqual(findings(beside))
    const renamed = { ...beside, fabrics: beside.fabrics.map((fabric) => ({ ...fabric, colour: '#123456' })) }
    expect(follow(renamed)).toEqual(findings(renamed))
    expect(asked).toHaveLength(1)
  })

  it('solve them again once a wing is another fabric', () => {
    const { solve, asked } = counted()
    const follow = liveFindings(cutListCache(solve))
    const block = star(SCRAPS)
    follow(block)
    const after = recoloured(block, 'g0', { leftWing: 'd' })
    expect(follow(after)).toEqual(findings(after))
    expect(asked).toHaveLength(2)
  })
})
