/** Until the grid is full nothing is wrong: how far it is filled is counted in whole squares. */
import { describe, expect, it } from 'vitest'
import { type Block, findings } from '../../../geometry/index.ts'
import { isNearlyFull, isUnfinished, squaresFilled } from '../../../web/document/progress.ts'
import { blockOf, square } from '../../help.ts'

const filledOf = (block: Block) => squaresFilled(findings(block), block.grid)

describe('progress', () => {
  it('counts the squares that are filled, overlaps once, halves not yet', () => {
    expect(filledOf(blockOf(4, 4, []))).toEqual({ n: 0, all: 16 })
    expect(filledOf(blockOf(4, 4, [square('a', [0, 0], [2, 2]), square('b', [3, 0])]))).toEqual({ n: 5, all: 16 })
    expect(filledOf(blockOf(4, 4, [square('a', [0, 0], [2, 2]), square('b', [1, 1])]))).toEqual({ n: 4, all: 16 })
    expect(filledOf({ ...blockOf(1, 1, []), units: [{ ...square('a', [0, 0]), size: [1, '2/3'] } as Block['units'][number]] })).toEqual({
      n: 0,
      all: 1,
    })
  })

  it('is over when the grid is full', () => {
    const full = blockOf(2, 1, [square('a', [0, 0]), square('b', [1, 0])])
    expect(isUnfinished(findings(full))).toBe(false)
    expect(filledOf(full)).toEqual({ n: 2, all: 2 })
    expect(isUnfinished(findings({ ...full, units: full.units.slice(1) }))).toBe(true)
  })

  it('names the last empty places from three quarters on', () => {
    const of = (columns: number) => findings(blockOf(4, 1, [square('a', [0, 0], [columns, 1])]))
    expect([1, 2, 3].map((columns) => isNearlyFull(of(columns)))).toEqual([false, false, true])
  })
})
