/** Matching units pressed the same way: the general problem against trying every way, and what a maker sees of it. */
import { describe, expect, it } from 'vitest'
import { type Block, report, type Turn, type Unit } from '../../geometry/index.ts'
import { type Choices, leastWays, costOfWays } from '../../geometry/solvers/elimination.ts'
import { scorePressing } from '../../geometry/pressing/press.ts'
import type { Toward } from '../../geometry/pressing/values.ts'
import { sewBlock } from '../../geometry/report/report.ts'
import { blockOf, sequence } from '../help.ts'

describe('elimination', () => {
  const random = sequence(23)
  const pick = (n: number): number => Math.floor(random() * n)
  const some = (count: number, pairs: number): Choices => ({
    own: Array.from({ length: count }, () => (random() < 0.1 ? [0, Number.POSITIVE_INFINITY] : [pick(3), pick(3)])),
    pairs: Array.from({ length: pairs }, () => ({ a: pick(count), b: pick(count), alike: pick(4) * 10, unlike: pick(4) * 10 })),
  })

  it('finds the same least cost as trying every way, and a true bound where its budget is too small', () => {
    for (let round = 0; round < 300; round++) {
      const count = 1 + pick(10)
      const choices = some(count, pick(25))
      let least = Number.POSITIVE_INFINITY
      for (let code = 0; code < 2 ** count; code++)
        least = Math.min(
          least,
          costOfWays(
            choices,
            choices.own.map((_, member) => ((code >> member) & 1) as 0 | 1),
          ),
        )
      const found = leastWays(choices)
      expect([found.cost, found.atLeast, costOfWays(choices, found.ways)]).toEqual([least, least, least])
      const hurried = leastWays(choices, 4)
      expect(hurried.atLeast).toBeLessThanOrEqual(least)
      expect(hurried.cost).toBeGreaterThanOrEqual(least)
    }
  })

  it('keeps a bound for many choices at odds', () => {
    const choices = some(120, 400)
    const found = leastWays(choices, 1e5)
    expect(found.atLeast).toBeLessThanOrEqual(found.cost)
    expect(found.atLeast).toBeGreaterThan(0)
    expect(costOfWays(choices, found.ways)).toBe(found.cost)
  })
})

/** Half-square triangles and hourglasses of few sorts, turned at random. */
function few(seed: number, columns: number, rows: number): Block {
  const random = sequence(seed)
  const units = Array.from({ length: columns * rows }, (_, index): Unit => {
    const base = { id: `u${index}`, at: [index % columns, Math.floor(index / columns)] as const, size: [1, 1] as const }
    const turn = Math.floor(random() * 4) as Turn
    return random() < 0.5
      ? { ...base, kind: 'hst', turn, fabrics: { upper: 'a', lower: 'b' } }
      : { ...base, kind: 'hourglass', turn, fabrics: { top: 'a', right: 'c', bottom: 'a', left: 'c' } }
  })
  return blockOf(columns, rows, units, { order: 'rows', pressAlike: true })
}

describe('a block with matching units pressed the same way', () => {
  it('has the fewest clashes of all ways its choices may lie', () => {
    for (let seed = 1; seed <= 12; seed++) {
      const { plans } = sewBlock(few(seed, 3, 2), 'quick')
      if (plans === null) throw new Error('not sewn')
      const { met, constraints, matched, pressed } = plans.taken
      const tied = matched?.shared
      if (tied === undefined) throw new Error('not tied')
      const numbers = [...new Set(tied.choiceOf)]
      let least: [number, number] = [Number.POSITIVE_INFINITY, Number.POSITIVE_INFINITY]
      for (let code = 0; code < 2 ** numbers.length; code++) {
        const toward = constraints.map(({ fixed }, seam): Toward => {
          const way = ((code >> numbers.indexOf(tied.choiceOf[seam] as number)) & 1) === 1
          return fixed ?? (way === tied.flipped[seam] ? 0 : 1)
        })
        const { clashes, against } = scorePressing(met.crossings, constraints, toward)
        if (clashes < least[0] || (clashes === least[0] && against < least[1])) least = [clashes, against]
      }
      expect([pressed.clashes, pressed.against, pressed.atLeast]).toEqual([...least, least[0]])
    }
  })

  it('presses every half-square triangle toward the same fabric, and never clashes less than a free block', () => {
    for (let seed = 1; seed <= 8; seed++) {
      const block = few(seed, 4, 4)
      const said = report(block)
      const fabrics = new Map(said.patches.map(({ id, fabric }) => [id, fabric]))
      const hst = new Set(block.units.filter(({ kind }) => kind === 'hst').map(({ id }) => id))
      const inHst = new Set(said.patches.filter(({ unit }) => hst.has(unit ?? '')).map(({ id }) => id))
      const toward = said.joins
        .filter(({ stage, sides }) => stage === 'unit' && inHst.has(sides[0]))
        .map(({ sides, press }) => fabrics.get(sides[press.toward as 0 | 1]))
      expect(new Set(toward).size).toBe(1)
      expect(said.pressing.clashes).toBeGreaterThanOrEqual(report({ ...block, pressAlike: false }).pressing.clashes)
      for (const { verdict, fix } of said.meetings) if (verdict === 'clashes') expect(fix.length).toBeGreaterThan(0)
    }
  })

  it('follows a request on one of them, and names requests that disagree', () => {
    const pair = (press: Block['press']): Block =>
      blockOf(
        2,
        1,
        [0, 1].map((x): Unit => ({ id: `h${x}`, kind: 'hst', at: [x, 0], size: [1, 1], fabrics: { upper: 'a', lower: 'b' } })),
        { pressAlike: true, press: press ?? [] },
      )
    const one = report(pair([{ at: [0.5, 0.5], toward: [0.1, 0.1] }]))
    expect(one.joins.slice(0, 2).map(({ press }) => [press.toward, press.rule])).toEqual([
      [0, 'asked'],
      [0, 'asked'],
    ])
    expect(one.problems).toEqual([])
    const odd = report(
      pair([
        { at: [0.5, 0.5], toward: [0.1, 0.1] },
        { at: [1.5, 0.5], toward: [1.9, 0.9] },
      ]),
    )
    expect(odd.joins.slice(0, 2).map(({ press }) => press.toward)).toEqual([0, 1])
    expect(odd.problems.map(({ code }) => code)).toEqual(['press', 'press'])
  })
})
