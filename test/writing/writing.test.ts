/** What the written pages say of a star: sizes and directions that a maker would check with a ruler and an eye. */
import { describe, expect, it } from 'vitest'
import { type Block, report } from '../../geometry/index.ts'
import { csv } from '../../geometry/writing/csv.ts'
import { inEnglish } from '../../geometry/words/english.ts'
import { batchMakes, batchMessage, cutListText, geeseListed, geeseToKeep } from '../../geometry/writing/cutListText.ts'
import { cutListCsv } from '../../geometry/writing/cutListCsv.ts'
import { STAR, withGap } from './star.ts'

const said = report(STAR)
const pages = { text: cutListText(said, STAR), table: cutListCsv(said, STAR) }

describe('cut list', () => {
  it.each([
    ['1 square 7 1/4 × 7 1/4 in', 'large square of geese that finish 6 by 3: common practice, no source'],
    ['2 squares 3 7/8 × 3 7/8 in', 'small squares of one batch, two of each wing fabric: common practice, no source'],
    ['4 squares 3 1/2 × 3 1/2 in', 'corners that finish 3: common practice, no source'],
    ['1 square 6 1/2 × 6 1/2 in', 'middle that finishes 6: common practice, no source'],
    ['The block measures 12 1/2 × 12 1/2 in unfinished.', 'a 12 inch star: common practice, no source'],
    [
      'One batch of four makes all your geese.',
      'half its points in each fabric: two geese alike and two mirrored, one batch: common practice, no source',
    ],
  ])('says "%s"', (words, why) => {
    expect(pages.text, why).toContain(words)
  })

  it('counts two batches and what is left over when all geese are alike in two fabrics', () => {
    const geese = STAR.units.map((unit) =>
      unit.kind === 'goose' ? { ...unit, fabrics: { goose: 'linen', leftWing: 'moss', rightWing: 'plum' } } : unit,
    )
    const row = report({ ...STAR, units: geese }).units.find(({ kind }) => kind === 'goose')
    if (row === undefined) throw new Error('no geese in the report')
    // Corners in two fabrics give at most two geese of one hand: common practice, no source.
    expect(inEnglish(batchMessage(row))).toBe('Two batches of four make all your geese; four geese are spare.')
  })

  it('says which geese a batch makes, seen with the tip up, and which of them to keep', () => {
    const block: Block = {
      ...STAR,
      units: STAR.units.map((unit) => (unit.kind === 'goose' ? { ...unit, fabrics: { goose: 'linen', leftWing: 'moss', rightWing: 'plum' } } : unit)),
    }
    const row = report(block).units.find(({ kind }) => kind === 'goose')
    const [batch] = row?.batches ?? []
    if (row === undefined || batch === undefined) throw new Error('no geese in the report')
    const name = (fabric: string): string => (fabric === 'moss' ? 'Moss' : 'Plum')
    const said = (message: ReturnType<typeof batchMakes>): string => (message === null ? '' : inEnglish(message))
    expect(said(geeseListed(row, block, name))).toBe('four geese with Moss on the left and Plum on the right, tip up')
    // Alternate corners: every other goose is the flip of the one before; by counting.
    expect(said(batchMakes(batch, name)).replace(/^Makes two geese with (Moss|Plum).*/, '$1')).toMatch(/^(Moss|Plum)$/)
    expect(said(geeseToKeep(row, block, name))).toBe('Keep four geese with Moss on the left and Plum on the right, tip up; the rest are spare.')
    expect(cutListText(report(block), block)).toMatch(/Keep four geese with Moss on the left and .* on the right, tip up; the rest are spare\./)
  })

  it('says the nearest sixteenth, the size itself and a cell that would be on the ruler', () => {
    const thirds: Block = { ...STAR, grid: { ...STAR.grid, cell: '10/3' } }
    const text = cutListText(report(thirds), thirds)
    expect(text).toContain('about 3 13/16 × 3 13/16 in (exactly 3.833 × 3.833)')
    expect(text).toContain('A cell of 3 5/16 in would put every piece of the block on the ruler.')
  })

  it('is said for a layout with a gap too', () => {
    const gap = withGap(STAR)
    expect(cutListText(report(gap), gap)).toContain('3 squares 3 1/2 × 3 1/2 in')
  })
})

describe('cut list as a table', () => {
  it('has one line for each piece and keeps a name from being carried out as a formula', () => {
    const lines = pages.table.trimEnd().split('\r\n')
    expect(lines).toHaveLength(said.cut.length + 1)
    expect(lines.some((line) => /^"'=Plum, ""dark""",[A-Z ]+,square,2,3 7\/8,3 7\/8,3\.875,3\.875,in,,,four at a time,/.test(line))).toBe(true)
  })

  // Quoting as in RFC 4180, section 2; formulas: common practice, no source.
  it.each([
    ['a,b', '"a,b"'],
    ['say "so"', '"say ""so"""'],
    ['two\nlines', '"two\nlines"'],
    ['=1+1', "'=1+1"],
    ['  @cmd', "'  @cmd"],
    ['-moss', "'-moss"],
    ['plain moss', 'plain moss'],
  ])('writes %j as %j', (word, written) => {
    expect(csv([[word]])).toBe(`${written}\r\n`)
  })
})
