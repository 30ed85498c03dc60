/** Which order is taken: what is laid in rows is sewn in rows, and neither colour nor the maker's own pressing changes a join. Rules of the report. */
import { describe, expect, it } from 'vitest'
import type { Block, Findings, Unit } from '../../geometry/index.ts'
import { findings } from '../../geometry/report/report.ts'
import { blockOf, FABRICS, sequence, square, star } from '../help.ts'
import { oneOf, tiling, unitAtRandom } from '../layouts.ts'
import { leMoyneStar } from '../published/blocks.ts'

/** Everything about the joins but their pressing. */
const sewn = ({ order, joins }: Findings) => ({
  order,
  joins: joins.map(({ id, stage, kind, from, to, sides }) => ({ id, stage, kind, from, to, sides })),
})
const PLAIN = star([
  ['b', 'b'],
  ['b', 'b'],
  ['b', 'b'],
  ['b', 'b'],
])

function recoloured(block: Block, next: () => number): Block {
  const units = block.units.map((unit) => {
    const fabrics = Object.fromEntries(Object.keys(unit.fabrics).map((patch) => [patch, oneOf(next, FABRICS).id]))
    return { ...unit, fabrics } as Unit
  })
  return { ...block, units }
}

/** A block of single units on a grid: rows and columns of squares, triangles and hourglasses. */
function gridOfUnits(next: () => number): Block {
  const [columns, rows] = [2 + Math.floor(next() * 3), 2 + Math.floor(next() * 3)]
  const units = Array.from({ length: columns * rows }, (_, cell) =>
    unitAtRandom(next, `u${cell}`, [cell % columns, Math.floor(cell / columns)], [1, 1]),
  )
  return blockOf(
    columns,
    rows,
    units.map(({ open: _, pressFree: __, ...unit }) => unit),
  )
}

describe('the sewing order', () => {
  it('of a star stays the same whatever its fabrics, fifty ways', () => {
    const next = sequence(50)
    const before = sewn(findings(PLAIN))
    expect(before.order).toBe('rows')
    for (let way = 0; way < 50; way++) expect(sewn(findings(recoloured(PLAIN, next)))).toEqual(before)
  })

  it('of any layout stays the same when it is recoloured', () => {
    const next = sequence(51)
    for (let way = 0; way < 40; way++) {
      const block = blockOf(4, 4, tiling(next, 4, 4))
      expect(sewn(findings(recoloured(block, next)))).toEqual(sewn(findings(block)))
    }
  })

  it('stays the same whichever seam the maker presses her way, and whichever unit she presses open or frees of its rule', () => {
    const next = sequence(52)
    for (let way = 0; way < 40; way++) {
      const block = way % 2 === 0 ? recoloured(PLAIN, next) : blockOf(4, 4, tiling(next, 4, 4))
      const before = findings(block)
      const { from, to } = oneOf(
        next,
        before.joins.filter(({ stage }) => stage !== 'unit'),
      )
      const at = [(Number(from[0]) + Number(to[0])) / 2, (Number(from[1]) + Number(to[1])) / 2 + 1 / 64] as const
      const [chosen, other] = [oneOf(next, block.units).id, oneOf(next, block.units).id]
      const units = block.units.map((unit) =>
        unit.id === chosen ? { ...unit, open: true } : unit.id === other ? { ...unit, pressFree: true } : unit,
      )
      const press = [{ at: [at[0], at[1] - 1 / 64] as const, toward: next() < 0.5 ? ('open' as const) : at }]
      for (const spoken of [
        { ...block, units, press },
        { ...block, units, press, pressAlike: true },
      ])
        expect(sewn(findings(spoken))).toEqual(sewn(before))
    }
  })

  it('is rows for a grid of single units, where columns clash as much', () => {
    const next = sequence(53)
    for (let way = 0; way < 50; way++) {
      const block = gridOfUnits(next)
      const [auto, rows, columns] = (['auto', 'rows', 'columns'] as const).map((order) => findings({ ...block, order })) as [
        Findings,
        Findings,
        Findings,
      ]
      const least = Math.min(rows.pressing.clashes, columns.pressing.clashes)
      expect(auto.pressing.clashes).toBeLessThanOrEqual(least)
      if (rows.pressing.clashes === auto.pressing.clashes) expect(auto.order).toBe('rows')
      else if (columns.pressing.clashes === auto.pressing.clashes) expect(auto.order).toBe('columns')
    }
  })

  it('is columns where only the columns are of single units', () => {
    const block = blockOf(2, 3, [square('a', [0, 0]), square('b', [0, 1], [1, 2]), square('c', [1, 0], [1, 2]), square('d', [1, 2])])
    expect(findings(block).order).toBe('columns')
  })
})

describe('crooked seams', () => {
  it('bend as seldom as they can: eight times in an eight-pointed star, once for each square and triangle round it', () => {
    // Eight diamonds meet in the middle; each of the eight pieces between their points is set into a corner [S104][S105].
    const bent = findings(leMoyneStar()).joins.filter(({ kind }) => kind === 'set-in')
    expect(bent.reduce((sum, { via }) => sum + via.length, 0)).toBe(8)
    expect(Math.max(...bent.map(({ via }) => via.length))).toBeLessThanOrEqual(2)
  })
})
