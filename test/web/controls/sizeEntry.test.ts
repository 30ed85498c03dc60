import { describe, expect, it } from 'vitest'
import { toFile } from '../../../geometry/index.ts'
import { readSize, sizeProblem } from '../../../web/controls/sizeEntry.ts'

describe('a finished size that is typed', () => {
  it.each([
    ['6 × 10', [6, 10]],
    ['6x10', [6, 10]],
    ['6 X 10 in', [6, 10]],
    ['6 by 10', [6, 10]],
    ['6 in * 10 in', [6, 10]],
    ['8', [8, 8]],
    [' 8 inches ', [8, 8]],
    ['8"', [8, 8]],
    ['8 1/2 × 11½', [8.5, 11.5]],
    ['2 2/3', ['8/3', '8/3']],
    ['6,5 mal 10', [6.5, 10]],
  ])('%s is taken in inches', (text, size) => {
    expect(sizeProblem(text, 'in')).toBeNull()
    expect(readSize(text).map(toFile)).toEqual(size)
  })

  it('is taken in centimetres where the block is in centimetres', () => {
    expect(sizeProblem('15 × 20 cm', 'cm')).toBeNull()
    expect(readSize('15 × 20 cm').map(toFile)).toEqual([15, 20])
  })

  it.each([
    ['15 cm', 'in', 'This block is in inches. Type inches, or change the unit first.'],
    ['6 in × 10', 'cm', 'This block is in centimetres. Type centimetres, or change the unit first.'],
    ['1 × 2 × 3', 'in', 'Enter width and height, such as 6 × 10; or one length for a square.'],
    ['6 ×', 'in', 'Enter a length above zero, such as 3 or 2 1/2.'],
    ['', 'in', 'Enter a length above zero, such as 3 or 2 1/2.'],
    ['large', 'in', 'Enter a length above zero, such as 3 or 2 1/2.'],
    ['0 × 4', 'in', 'Enter a length above zero, such as 3 or 2 1/2.'],
  ] as const)('"%s" for a block in %s is not', (text, unit, problem) => {
    expect(sizeProblem(text, unit)).toBe(problem)
  })
})
