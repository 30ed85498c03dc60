import { describe, expect, it } from 'vitest'
import { checkBlock } from '../../../geometry/index.ts'
import { parseLengthEntry, lengthProblem, lengthForFile } from '../../../web/controls/lengthEntry.ts'
import { eveningStar } from '../../../web/document/starters/eveningStar.ts'

const NO_LENGTH = 'Enter a length above zero, such as 3 or 2 1/2.'
const OUT_OF_BOUNDS = 'Enter a length from 0.001 to 10000, such as 3 or 2 1/2.'

describe('a length that is typed', () => {
  it.each([
    ['3', 3, '3'],
    [' 2 1/2 ', 2.5, '2 1/2'],
    ['2½', 2.5, '2 1/2'],
    ['½', 0.5, '1/2'],
    ['2 ⅜', 2.375, '2  3/8'],
    ['2,5', 2.5, '2.5'],
    [',75', 0.75, '.75'],
    ['0.001', 0.001, '0.001'],
    ['10000', 10_000, '10000'],
  ])('%s is taken, and a file holds it', (text, length, file) => {
    expect(lengthProblem(text)).toBeNull()
    expect([parseLengthEntry(text), lengthForFile(text)]).toEqual([length, file])
    expect(checkBlock({ ...eveningStar, grid: { ...eveningStar.grid, cell: lengthForFile(text) } })).toMatchObject({ ok: true })
  })

  it.each([
    '',
    '   ',
    '0',
    '-1',
    '1/0',
    'abc',
    '3"',
    '٣',
    'NaN',
    'Infinity',
    '0x10',
    '1,250',
    '1,2,3',
    '1'.repeat(41),
    `${'0'.repeat(200)}3`,
    `0.${'0'.repeat(150)}1`,
  ])('%s is none', (text) => {
    expect([lengthProblem(text), parseLengthEntry(text)]).toEqual([NO_LENGTH, null])
  })

  it.each(['1e9', '1e400', '1e-9', '1e-40', '1e-999', '10001'])('%s is one that no ruler shows', (text) => {
    expect([lengthProblem(text), parseLengthEntry(text)]).toEqual([OUT_OF_BOUNDS, null])
  })
})
