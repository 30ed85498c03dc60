/** A block that came out otherwise: what differs, and the fewest moves back. All by arithmetic. */
import { describe, expect, it } from 'vitest'
import { asSewn, type Block, type BoxUnit, type Move, type Turn, turnBlock, type Unit } from '../../geometry/index.ts'
import { viewOf } from '../../geometry/units/unitPicture.ts'
import { blockOf, sequence, square, star } from '../help.ts'

const plainStar = star([0, 1, 2, 3].map(() => ['b', 'c'] as const))
const changed = (block: Block, id: string, change: Partial<BoxUnit>): Block => ({
  ...block,
  units: block.units.map((unit) => (unit.id === id ? ({ ...unit, ...change } as Unit) : unit)),
})
const counts = (moves: readonly Move[]): Record<string, number> =>
  moves.reduce<Record<string, number>>((sum, move) => {
    sum[move.do] = (sum[move.do] ?? 0) + 1
    return sum
  }, {})

describe('a star that came out differently', () => {
  it('differs in nothing from itself', () => {
    expect(asSewn(plainStar, plainStar)).toEqual({ differences: [], moves: [], proved: true })
  })

  it('has one goose the wrong way up: one turn', () => {
    const { differences, moves } = asSewn(plainStar, changed(plainStar, 'g0', { turn: 0 }))
    expect(differences.map(({ laid, how, at }) => [laid, how, at])).toEqual([['g0', 'turned', [1, 0]]])
    expect(moves.map((move) => [move.do, 'what' in move ? move.what : null])).toEqual([['turn', 'g0']])
  })

  it('is turned as a whole: one move, however many units look otherwise', () => {
    const turned = changed(changed(plainStar, 'c0', { fabrics: { patch: 'd' } }), 'c1', { fabrics: { patch: 'c' } })
    const sewn = structuredClone(turned)
    turnBlock().change(sewn as never)
    const { moves } = asSewn(turned, sewn)
    expect(moves.map(({ do: what }) => what)).toEqual(['turn-block'])
  })

  it('has a goose with its wings exchanged: a mirror image must be sewn again', () => {
    const { differences, moves } = asSewn(plainStar, changed(plainStar, 'g1', { mirror: true }))
    expect(differences.map(({ how }) => how)).toEqual(['mirrored'])
    expect(moves.map(({ do: what }) => what)).toEqual(['sew'])
  })

  it('has a corner and another fabric exchanged: one swap', () => {
    const laid = changed(plainStar, 'c1', { fabrics: { patch: 'c' } })
    const sewn = changed(changed(laid, 'c1', { fabrics: { patch: 'a' } }), 'c2', { fabrics: { patch: 'c' } })
    const { differences, moves } = asSewn(laid, sewn)
    expect(differences.map(({ how }) => how)).toEqual(['swapped', 'swapped'])
    expect(counts(moves)).toEqual({ swap: 1 })
  })

  it('names places with no unit of that size', () => {
    const sewn = { ...plainStar, units: plainStar.units.filter(({ id }) => id !== 'c0') }
    expect(asSewn(plainStar, sewn).differences.map(({ how, sewn: other }) => [how, other])).toEqual([['missing', null]])
  })
})

describe('the fewest moves', () => {
  const rowOf = (fabrics: readonly string[]): Block =>
    blockOf(
      fabrics.length,
      1,
      fabrics.map((patch, index) => square(`s${index}`, [index, 0], [1, 1], patch)),
    )

  it('swap as often as a search over all orders of swapping does', () => {
    const random = sequence(29)
    for (let round = 0; round < 60; round++) {
      const laid = Array.from({ length: 5 }, () => 'abcd'[Math.floor(random() * 4)] as string)
      const sewn = [...laid]
        .map((fabric) => ({ fabric, at: random() }))
        .sort((a, b) => a.at - b.at)
        .map(({ fabric }) => fabric)
      const { moves, proved } = asSewn(rowOf(laid), rowOf(sewn))
      // A row may also be turned half round: one move, then swaps.
      const least = Math.min(swapsBetween(sewn, laid), 1 + swapsBetween([...sewn].reverse(), laid))
      expect([moves.length, proved]).toEqual([least, true])
    }
  })

  it('lead back: each applied in turn leaves the laid block', () => {
    const random = sequence(31)
    for (let round = 0; round < 40; round++) {
      const units = Array.from(
        { length: 9 },
        (_, index): BoxUnit => ({
          id: `h${index}`,
          kind: 'hst',
          at: [index % 3, Math.floor(index / 3)],
          size: [1, 1],
          turn: Math.floor(random() * 4) as Turn,
          fabrics: { upper: 'abc'[Math.floor(random() * 3)] as string, lower: 'd' },
        }),
      )
      const laid = blockOf(3, 3, units)
      const mixed = units.map((unit) => ({ unit, at: random() })).sort((a, b) => a.at - b.at)
      const sewn = units.map((unit, index) => ({
        ...(mixed[index]?.unit as BoxUnit),
        id: unit.id,
        at: unit.at,
        turn: Math.floor(random() * 4) as Turn,
      }))
      const { moves } = asSewn(laid, blockOf(3, 3, sewn))
      expect(moves.some(({ do: what }) => what === 'sew')).toBe(false)
      const after = followed(blockOf(3, 3, sewn), laid, moves)
      expect(after.units.map((unit) => viewOf(unit))).toEqual(laid.units.map((unit) => viewOf(unit)))
    }
  })
})

/** Moves carried out by hand; a swapped unit is turned to fit its new place. */
function followed(sewn: Block, laid: Block, moves: readonly Move[]): Block {
  let block: Block = structuredClone(sewn)
  for (const move of moves) {
    if (move.do === 'turn-block') {
      for (let quarter = 0; quarter < move.quarters; quarter++) turnBlock().change(block as never)
      const placed = laid.units.map((own) => ({
        ...(block.units.find((unit) => unit.kind !== 'polygon' && own.kind !== 'polygon' && unit.at.join() === own.at.join()) as Unit),
        id: own.id,
      }))
      block = { ...block, units: placed }
    }
    if (move.do === 'turn')
      block = changed(block, move.what, {
        turn: ((((block.units.find(({ id }) => id === move.what) as BoxUnit).turn ?? 0) + move.quarters) % 4) as Turn,
      })
    if (move.do === 'swap') {
      const [one, other] = move.what.map((id) => block.units.find((unit) => unit.id === id) as BoxUnit) as [BoxUnit, BoxUnit]
      const put = (unit: BoxUnit, place: BoxUnit): BoxUnit => {
        const wanted = laid.units.find(({ id }) => id === place.id) as Unit
        const moved = ([0, 1, 2, 3] as Turn[]).map((turn) => ({ ...unit, id: place.id, at: place.at, turn }))
        return moved.find((tried) => viewOf(tried) === viewOf(wanted)) ?? { ...unit, id: place.id, at: place.at }
      }
      block = { ...block, units: block.units.map((unit) => (unit.id === one.id ? put(other, one) : unit.id === other.id ? put(one, other) : unit)) }
    }
  }
  return block
}

/** Breadth first over all rows that swaps can make. */
function swapsBetween(from: readonly string[], to: readonly string[]): number {
  const seen = new Map([[from.join(), 0]])
  for (const [row, swaps] of seen) {
    if (row === to.join()) return swaps
    const units = row.split(',')
    for (let i = 0; i < units.length; i++)
      for (let j = i + 1; j < units.length; j++) {
        const next = [...units]
        ;[next[i], next[j]] = [next[j] as string, next[i] as string]
        if (!seen.has(next.join())) seen.set(next.join(), swaps + 1)
      }
  }
  return Number.POSITIVE_INFINITY
}
