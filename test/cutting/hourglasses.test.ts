/** Hourglasses of any fabrics made together: what paper gives, and the fewest pairs of squares by trying everything. */
import { describe, expect, it } from 'vitest'
import type { BoxUnit } from '../../geometry/values/block.ts'
import { type HourglassPlan, hourglassPlans } from '../../geometry/cutting/batches/hourglasses.ts'
import { blockOf, sequence } from '../help.ts'
import { crossedTriangles } from './paper.ts'

type Round = readonly [string, string, string, string]

const unit = (id: number, [top, right, bottom, left]: Round, more: Partial<BoxUnit> = {}): BoxUnit => ({
  id: `u${id}`,
  kind: 'hourglass',
  at: [id, 0],
  size: [1, 1],
  fabrics: { top, right, bottom, left },
  ...more,
})
const planOf = (rounds: readonly Round[]): HourglassPlan =>
  hourglassPlans(
    blockOf(
      40,
      1,
      rounds.map((round, id) => unit(id, round)),
    ),
  )[0] as HourglassPlan

const turns = ([a, b, c, d]: Round): string[] =>
  [
    [a, b, c, d],
    [b, c, d, a],
    [c, d, a, b],
    [d, a, b, c],
  ].map((one) => one.join(''))
const same = (one: Round, other: Round): boolean => turns(one).includes(other.join(''))
const mirror = ([a, b, c, d]: Round): Round => [d, c, b, a]
const name = (a: string, b: string): string => [a, b].sort().join('')

/** What the plan's triangles give, and that they are cut from its squares. */
function madeBy({ pairs, layings, runs }: HourglassPlan): Round[] {
  const triangles = new Map<string, number>()
  for (const { fabrics, count } of pairs) triangles.set(name(...fabrics), 2 * count)
  const made: Round[] = []
  for (const { first, second, count } of layings) {
    for (const pair of [first, second]) triangles.set(name(...pair), (triangles.get(name(...pair)) ?? 0) - count)
    const round: Round = [...first, ...second]
    for (let time = 0; time < count; time++) made.push(round, mirror(round))
  }
  expect(Math.min(0, ...triangles.values())).toBe(0)
  expect(runs).toBe(pairs.reduce((sum, { count }) => sum + count, 0))
  return made
}

/** The fewest pairs of squares, by every way to lay triangles until all are there. */
function fewest(rounds: readonly Round[]): number {
  let best = Number.POSITIVE_INFINITY
  const lay = (left: readonly Round[], used: ReadonlyMap<string, number>): void => {
    const [first, ...rest] = left
    if (first === undefined) {
      best = Math.min(
        best,
        [...used.values()].reduce((sum, count) => sum + Math.ceil(count / 2), 0),
      )
      return
    }
    const twin = rest.findIndex((one) => same(one, mirror(first)))
    const others = twin < 0 ? rest : [...rest.slice(0, twin), ...rest.slice(twin + 1)]
    const [a, b, c, d] = first
    for (const pairs of [
      [name(a, b), name(c, d)],
      [name(b, c), name(d, a)],
    ]) {
      const after = new Map(used)
      for (const pair of pairs) after.set(pair, (after.get(pair) ?? 0) + 1)
      lay(others, after)
    }
  }
  lay(rounds, new Map())
  return best
}

describe('two triangles laid on each other', () => {
  it('make one hourglass a b c d, clockwise, and its mirror image: by folding', () => {
    expect(crossedTriangles(6, 0.25)).toEqual(['abcd', 'dcba'])
  })
})

describe('hourglasses together', () => {
  it('of two fabrics take what two at a time takes', () => {
    const rounds: Round[] = Array.from({ length: 5 }, () => ['a', 'b', 'a', 'b'])
    expect(planOf(rounds)).toMatchObject({ runs: 3, alone: 3, singles: 6, proved: true, square: 4.25, unfinished: 3.5 })
  })

  it('of three and four fabrics come out of squares too, each with its mirror image', () => {
    const rounds: Round[] = [
      ['a', 'b', 'c', 'd'],
      ['d', 'c', 'b', 'a'],
    ]
    expect(planOf(rounds)).toMatchObject({ runs: 2, layings: [{ count: 1, makes: ['u0', 'u1'] }] })
  })

  it('share triangles: three looks with one pair of fabrics in common take fewer squares than each by itself', () => {
    const plan = planOf([
      ['a', 'b', 'c', 'd'],
      ['a', 'b', 'c', 'c'],
    ])
    expect([plan.runs, plan.alone]).toEqual([3, 4])
  })

  it('take as few pairs of squares as every way tried, and give every one that is drawn', () => {
    const next = sequence(17)
    let shared = 0
    for (let turn = 0; turn < 60; turn++) {
      const fabrics = 'abcd'.slice(0, 2 + (turn % 3))
      const pick = (): string => fabrics[Math.floor(next() * fabrics.length)] as string
      const looks = Array.from({ length: 3 }, (): Round => [pick(), pick(), pick(), pick()])
      const rounds = Array.from({ length: 1 + Math.floor(next() * 6) }, (): Round => {
        const look = looks[Math.floor(next() * 3)] as Round
        return next() < 0.3 ? mirror(look) : look
      })
      const plan = planOf(rounds)
      const made = madeBy(plan)
      for (const round of rounds) {
        const place = made.findIndex((one) => same(one, round))
        expect(place, `${round} of ${JSON.stringify(rounds)}`).toBeGreaterThanOrEqual(0)
        made.splice(place, 1)
      }
      expect(plan).toMatchObject({ proved: true, runs: fewest(rounds) })
      expect(plan.layings.flatMap(({ makes }) => makes).sort()).toEqual(rounds.map((_, id) => `u${id}`).sort())
      if (plan.runs < plan.alone) shared++
    }
    expect(shared).toBeGreaterThan(5)
  })

  it('of many looks keep to a bound, and say whether they reach it', () => {
    const next = sequence(5)
    const pick = (): string => 'abcd'[Math.floor(next() * 4)] as string
    const rounds = Array.from({ length: 40 }, (): Round => [pick(), pick(), pick(), pick()])
    const plan = planOf(rounds)
    const lays = plan.layings.reduce((sum, { count }) => sum + count, 0)
    expect(plan.runs).toBeGreaterThanOrEqual(lays)
    if (plan.proved) expect(plan.runs).toBe(lays)
    expect(plan.runs).toBeLessThanOrEqual(lays + 2)
  })

  it('leave out those that the maker wants from single triangles; a mirrored one has its sides exchanged', () => {
    const plain = unit(0, ['a', 'b', 'c', 'd'], { method: 'plain' })
    const mirrored = unit(1, ['a', 'b', 'c', 'd'], { mirror: true })
    const [plan] = hourglassPlans(blockOf(3, 1, [plain, unit(2, ['a', 'd', 'c', 'b']), mirrored]))
    // Both show a d c b: laid twice, from one pair of squares for each side of the long seam.
    expect(plan?.runs).toBe(2)
    expect(plan?.layings.flatMap(({ makes }) => makes).sort()).toEqual(['u1', 'u2'])
  })
})
