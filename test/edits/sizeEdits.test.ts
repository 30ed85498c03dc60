import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import { convertMeasure, finishedSizeOf, fitFinishedSize, fitUnitSize, type GridSize, setFinishedSize } from '../../geometry/edits/sizeEdits.ts'
import { equal, parseRational, type Rational, rational, toFile, toNumber } from '../../geometry/exact/rational.ts'
import type { Block, Length } from '../../geometry/values/block.ts'
import { blockOf, square } from '../help.ts'
import { checkEdit } from './editLaws.ts'

const lengths = (...texts: string[]): [Rational, Rational] => texts.map((text) => parseRational(text) as Rational) as [Rational, Rational]
const grid = (columns: number, rows: number, cell: Length, more: Partial<Block> = {}): Block =>
  blockOf(columns, rows, [square('s', [0, 0])], { grid: { columns, rows, cell }, ...more })
const inWords = ({ columns, rows, cell, size }: GridSize) => `${columns} × ${rows} of ${toFile(cell)}: ${size.map(toFile).join(' × ')}`

/** What comes of a wish: the grid it gives, or what is offered instead. */
function made(block: Block, ...wish: [string, string]): unknown {
  const fit = fitFinishedSize(block, lengths(...wish))
  if (fit.type === 'fits') return checkEdit(block, setFinishedSize(fit.grid)).grid
  return fit.type === 'uneven' ? fit.offers.map(inWords) : fit.type
}

describe('the finished size of a block', () => {
  it('is its squares and the borders on both sides', () => {
    const borders = [
      { finishedWidth: '1/2', fabric: 'a' },
      { finishedWidth: 1, fabric: 'b' },
    ]
    expect(finishedSizeOf(grid(3, 5, '2 1/2')).map(toFile)).toEqual([7.5, 12.5])
    expect(finishedSizeOf(grid(3, 5, '2 1/2', { borders })).map(toFile)).toEqual([10.5, 15.5])
    expect(made(grid(3, 3, 2, { borders }), '12', '12')).toEqual({ columns: 3, rows: 3, cell: 3 })
    expect(made(grid(3, 3, 2, { borders }), '3', '3')).toBe('borders')
  })

  it('scales the squares exactly: thirds stay thirds', () => {
    expect(made(grid(3, 3, 2), '8', '8')).toEqual({ columns: 3, rows: 3, cell: '8/3' })
    expect(made(grid(3, 5, 1), '6', '10')).toEqual({ columns: 3, rows: 5, cell: 2 })
    expect(made(grid(7, 7, 1), '10 1/2', '10.5')).toEqual({ columns: 7, rows: 7, cell: 1.5 })
  })

  it('offers what fits where the squares would not be square, another number of rows first', () => {
    expect(made(grid(4, 4, 2), '6', '10')).toEqual(['3 × 5 of 2: 6 × 10', '4 × 4 of 3/2: 6 × 6', '4 × 4 of 5/2: 10 × 10'].map(halves))
    expect(made(grid(4, 4, 2), '6', '9')).toEqual(['4 × 6 of 3/2: 6 × 9', '4 × 4 of 3/2: 6 × 6', '4 × 4 of 9/4: 9 × 9'].map(halves))
  })

  it('offers no grid that a unit would lie beyond', () => {
    const filled = blockOf(4, 4, [square('s', [3, 3])], { grid: { columns: 4, rows: 4, cell: 2 } })
    expect(made(filled, '6', '10')).toEqual(['4 × 4 of 1.5: 6 × 6', '4 × 4 of 2.5: 10 × 10'])
  })

  it('is what was asked for whenever it fits, and every offer is what it says', () => {
    const count = fc.integer({ min: 1, max: 12 })
    const length = fc.tuple(fc.integer({ min: 1, max: 400 }), fc.constantFrom(1, 2, 3, 8, 16)).map(([n, d]) => rational(n, d))
    fc.assert(
      fc.property(count, count, length, length, length, (columns, rows, cell, width, height) => {
        const block = grid(columns, rows, toFile(cell))
        const fit = fitFinishedSize(block, [width, height])
        if (fit.type === 'borders') throw new Error('there are none')
        for (const one of fit.type === 'fits' ? [fit.grid] : fit.offers) {
          const size = finishedSizeOf(checkEdit(block, setFinishedSize(one)))
          expect(size).toEqual(one.size)
          expect(equal(size[0], width) || equal(size[1], height)).toBe(true)
        }
        if (fit.type === 'fits') expect(fit.grid.size).toEqual([width, height])
      }),
    )
  })
})

/** Halves as files write them. */
const halves = (text: string): string => text.replace('3/2', '1.5').replace('5/2', '2.5').replace('9/4', '2.25')

describe('the finished size of units', () => {
  const block = blockOf(6, 6, [square('s', [1, 2]), square('t', [2, 2])], { grid: { columns: 6, rows: 6, cell: '3/2' } })
  it('is a box of whole squares from where they begin', () => {
    expect(fitUnitSize(block, ['s'], lengths('3', '4 1/2'), false)).toEqual({ type: 'fits', to: { at: [1, 2], size: [2, 3] } })
    expect(fitUnitSize(block, ['s', 't'], lengths('6', '3'), false)).toEqual({ type: 'fits', to: { at: [1, 2], size: [4, 2] } })
    expect(fitUnitSize(block, [], lengths('6', '3'), false)).toBe(null)
  })

  it('may be half squares where those are asked for; else the sizes on either side are offered', () => {
    expect(fitUnitSize(block, ['s'], lengths('2 1/4', '3'), true)).toEqual({ type: 'fits', to: { at: [1, 2], size: [1.5, 2] } })
    const offers = (...sizes: readonly (readonly [number, number])[]) => ({ type: 'uneven', offers: sizes.map((size) => ({ at: [1, 2], size })) })
    expect(fitUnitSize(block, ['s'], lengths('2 1/2', '3'), false)).toEqual(offers([2, 2], [1, 2]))
    expect(fitUnitSize(block, ['s'], lengths('1/2', '1/2'), false)).toEqual(offers([1, 1]))
  })
})

describe('a block in inches becomes one in centimetres', () => {
  // An inch is 2.54 cm by definition. A seam allowance of 0.75 cm beside one of 1/4 in: common practice, no source.
  const cells = (unit: 'in' | 'cm', ...from: Length[]): unknown[] =>
    from.map((cell) => {
      const block = grid(4, 4, cell, { measure: { unit: unit === 'cm' ? 'in' : 'cm' } })
      return checkEdit(block, convertMeasure(unit)).grid.cell
    })

  it('with squares that are easily cut, changed by a twentieth at the most', () => {
    expect(cells('cm', 1, '1 1/2', 2, '2 1/2', 3, 4, '1/2', '8/3')).toEqual([2.5, 4, 5, 6.5, 7.5, 10, 1.3, 7])
    expect(cells('in', 2.5, 4, 5, 6.5, 7.5, 10, 1.3, '20/3')).toEqual([1, 1.5, 2, 2.5, 3, 4, 0.5, 2.5])
    const inch = fc.integer({ min: 8, max: 400 }).map((n) => rational(n, 16))
    fc.assert(
      fc.property(inch, (cell) => {
        const [after] = cells('cm', toFile(cell)) as [Length]
        expect(Math.abs(toNumber(parseRational(after) as Rational) / 2.54 / toNumber(cell) - 1)).toBeLessThanOrEqual(0.05)
      }),
    )
  })

  it('and never with squares of nothing', () => {
    expect([...cells('cm', '1/100'), ...cells('in', 0.01)]).toEqual([0.1, 1 / 16])
  })

  it('with the seam allowance, the width of fabric, the borders and what is cut larger', () => {
    const more = { borders: [{ finishedWidth: 1, fabric: 'a' }], cloth: { usableWidth: 40 } }
    const inches = grid(4, 4, 2, { ...more, measure: { unit: 'in', seam: '1/4', round: '1/16' } })
    const larger: Block = { ...inches, units: inches.units.map((unit) => ({ ...unit, oversize: '1/8' })) }
    const after = checkEdit(larger, convertMeasure('cm'))
    expect(after.measure).toEqual({ unit: 'cm' })
    expect([after.cloth, after.borders?.[0]?.finishedWidth, after.units[0]?.oversize]).toEqual([{ usableWidth: 101 }, 2.5, 0.3])
    const narrow = checkEdit({ ...inches, measure: { unit: 'in', seam: '3/8' } }, convertMeasure('cm'))
    expect(narrow.measure).toEqual({ unit: 'cm', seam: 1 })
    const back = checkEdit(after, convertMeasure('in'))
    expect([back.measure, back.grid, back.borders]).toEqual([{ unit: 'in' }, inches.grid, inches.borders])
    expect(checkEdit(inches, convertMeasure('in'))).toEqual(inches)
  })
})
