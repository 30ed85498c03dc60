import { describe, expect, it } from 'vitest'
import { batchOf, leastBatches, type Wings } from '../../geometry/cutting/batches/geeseBatches.ts'
import { type Budget, fractionalCover, type Walk } from '../../geometry/solvers/fractionalCover.ts'
import { sequence } from '../help.ts'
import { COLOURINGS, demandOfColouring, geeseOf, programOf, solvedCover, tableOf } from './covers.ts'

/** What the batches make less what is needed: nothing may be missing. Then their number. */
function numberOf(wanted: readonly Wings[], { batches }: ReturnType<typeof leastBatches>): number {
  const made = new Map<string, number>()
  for (const batch of batches) {
    expect(batch).toEqual(batchOf(batch.goose, batch.corners))
    for (const wings of batch.makes) made.set(wings.join(), (made.get(wings.join()) ?? 0) + 1)
  }
  for (const wings of wanted) {
    const left = (made.get(wings.join()) ?? 0) - 1
    expect(left, `goose ${wings}`).toBeGreaterThanOrEqual(0)
    made.set(wings.join(), left)
  }
  return batches.length
}

/** Demands from the table, at even intervals. */
function* every(apart: number, { least, demandAt }: ReturnType<typeof tableOf>): Generator<{ demand: Int32Array; least: number }> {
  for (let index = 1; index < least.length; index += apart) yield { demand: demandAt(index), least: least[index] as number }
}

const TWO = tableOf(2, 6)
const THREE = tableOf(3, 2)
const FOUR = tableOf(4, 1)

describe('the least number of batches', () => {
  it.each([
    // fabrics, table, demands apart
    [2, TWO, 1],
    [3, THREE, 13],
    [4, FOUR, 41],
  ])('is that of the table of all covers, for small demands of %i fabrics', (fabrics, table, apart) => {
    for (const { demand, least } of every(apart, table)) {
      const wanted = geeseOf(fabrics, demand)
      const found = leastBatches('goose', wanted)
      expect([numberOf(wanted, found), found.proved, found.atLeast], `${demand}`).toEqual([least, true, least])
    }
  })

  it.each(Object.keys(COLOURINGS))('is that of an integer program, highs, for %s', (name) => {
    const next = sequence(name.length)
    for (const [fabrics, geese] of [
      [3, 30],
      [4, 60],
      [5, 45],
      [6, 24],
      [6, 60],
      [8, 24],
    ] as const) {
      const demand = demandOfColouring(COLOURINGS[name] as never, next, fabrics, geese)
      const wanted = geeseOf(fabrics, demand)
      const found = leastBatches('goose', wanted)
      expect([numberOf(wanted, found), found.proved], `${demand}`).toEqual([solvedCover(programOf(fabrics, demand)).number, true])
    }
  })

  it.each(Object.keys(COLOURINGS))('is proved for 1,000 geese in 8 fabrics, %s', (name) => {
    for (const seed of [1, 2, 3]) {
      const wanted = geeseOf(8, demandOfColouring(COLOURINGS[name] as never, sequence(seed), 8, 1000))
      const found = leastBatches('goose', wanted)
      expect([found.proved, numberOf(wanted, found)]).toEqual([true, found.atLeast])
    }
  })

  it('is that of an integer program, highs, for 1,000 geese in 8 fabrics', () => {
    for (const name of ['wings mostly alike', 'each two fabrics one way round', 'each fabric beside the next', 'fabrics by twos']) {
      const demand = demandOfColouring(COLOURINGS[name] as never, sequence(7), 8, 1000)
      expect(leastBatches('goose', geeseOf(8, demand)).batches.length, name).toBe(solvedCover(programOf(8, demand)).number)
    }
  })

  it('where fabrics stay by twos, each two lose their own remainder: by the integer program too', () => {
    // Steps a→a 14, a→b 85, b→a 21, b→b 9 and c→c 95, c→d 90, d→c 54, d→d 12: 480 steps in balance, yet not 120 batches.
    const demand = Int32Array.from([14, 85, 0, 0, 21, 9, 0, 0, 0, 0, 95, 90, 0, 0, 54, 12])
    expect(leastBatches('goose', geeseOf(4, demand))).toMatchObject({ proved: true, atLeast: 121 })
    expect(solvedCover(programOf(4, demand)).number).toBe(121)
  })

  it.each([0, 10_000, 300_000])('is bounded and covered also where the search stops after %i steps of work', (work) => {
    let open = 0
    for (const { demand, least } of every(97, FOUR)) {
      const wanted = geeseOf(4, demand)
      const found = leastBatches('goose', wanted, work)
      expect(numberOf(wanted, found)).toBeGreaterThanOrEqual(least)
      expect(found.atLeast).toBeLessThanOrEqual(least)
      expect(found.proved).toBe(found.atLeast === found.batches.length)
      if (!found.proved) open++
    }
    if (work === 0) expect(open).toBeGreaterThan(0)
  })

  it('is bounded also for more fabrics than are tried in every way', () => {
    const demand = demandOfColouring(COLOURINGS['any wings'] as never, sequence(5), 20, 60)
    const wanted = geeseOf(20, demand)
    const found = leastBatches('goose', wanted)
    const number = numberOf(wanted, found)
    expect(found.atLeast).toBeGreaterThanOrEqual(15)
    expect(number).toBeGreaterThanOrEqual(found.atLeast)
    expect(number).toBeLessThanOrEqual(60)
  })

  it('of no geese is none', () => {
    expect(leastBatches('goose', [])).toEqual({ batches: [], proved: true, atLeast: 0 })
  })
})

describe('the bound of batches that need not be whole', () => {
  it.each([
    [2, TWO, 3],
    [3, THREE, 19],
  ])('never asks more than the least number, with all its rows for whole ones (%i fabrics)', (fabrics, table, apart) => {
    const all = Array.from({ length: fabrics }, (_, one) => one)
    const walks = all.flatMap((a) => all.flatMap((b) => all.flatMap((c) => all.map((d): Walk => [a, b, c, d]))))
    let tight = 0
    let many = 0
    for (const { demand: steps, least } of every(apart, table)) {
      const budget: Budget = { left: 1e9 }
      const { atLeast, parts } = fractionalCover({ nodes: fabrics, steps }, walks, 'many', Number.POSITIVE_INFINITY, budget)
      expect(atLeast, `${steps}`).toBeLessThanOrEqual(least)
      expect(parts.every(({ times }) => times > 0)).toBe(true)
      many++
      if (atLeast === least) tight++
    }
    // A bound that is hardly ever reached would be of no use.
    expect(tight / many).toBeGreaterThan(0.95)
  })
})
