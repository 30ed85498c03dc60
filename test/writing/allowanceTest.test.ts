/** The test of the seam allowance against counting by hand, and against what is printed. */
import { describe, expect, it } from 'vitest'
import { type Block, bookletOf, type AllowanceTest, report } from '../../geometry/index.ts'
import { blockOf, square } from '../help.ts'
import { ninePatch, ohioStar, sawtoothStar } from '../published/blocks.ts'
import { BLOCKS } from './blocks.ts'

const allowanceTest = (block: Block): AllowanceTest => bookletOf(report(block), block).allowanceTest
const strip = (number: number, more: Partial<Block> = {}): Block =>
  blockOf(
    number,
    1,
    Array.from({ length: number }, (_, index) => square(`s${index}`, [index, 0], [1, 1], index % 2 === 0 ? 'a' : 'b')),
    { grid: { columns: number, rows: 1, cell: 2 }, ...more },
  )

describe('seams across', () => {
  it('1/16 lost at each of eight seams makes 1/2 [S76]', () => {
    const row = allowanceTest(strip(9)).rows.at(-1)
    expect(row).toMatchObject({ seams: [8, 0], planned: [18.5, 2.5], wide: [18, 2.5], narrow: [19, 2.5] })
  })

  it.each([
    // block, seams across and down of the whole: counted by hand on the drawing
    [ninePatch(2), [2, 2], 'three squares a line have two seams'],
    [ohioStar(4, 'qst-2'), [2, 2], 'hourglasses are trimmed: one piece each'],
    [sawtoothStar(2, 'geese-4'), [2, 2], 'geese made four at a time are trimmed: corner, goose, corner'],
    [BLOCKS.framed, [6, 6], 'corner, goose, corner and two borders on each side'],
    [BLOCKS.whirl, [2, 2], 'no line crosses more than bar, middle, bar'],
    [BLOCKS.lantern, [5, 4], 'six strips; five rows'],
  ] as const)('%#', (block, seams, why) => {
    expect(allowanceTest(block).rows.at(-1)?.seams, why).toEqual(seams)
  })

  it('a seam at 45° takes the root of two as much along the line', () => {
    // Two triangles sewn as cut, no trimming: two allowances of 1/32 square to the seam are 1/16 × √2 along the edge.
    const [row] = allowanceTest(
      blockOf(1, 1, [{ id: 't', kind: 'hst', at: [0, 0], size: [1, 1], method: 'plain', fabrics: { upper: 'a', lower: 'b' } }]),
    ).rows
    expect(row?.planned).toEqual([3.5, 3.5])
    expect(row?.wide[0]).toBeCloseTo(3.5 - (2 / 32) * Math.SQRT2, 6)
  })

  it('says no size twice where nothing depends on the allowance: corners flipped onto one square', () => {
    const corners = { centre: 'a', topLeft: 'b', topRight: 'b', bottomRight: 'b', bottomLeft: 'b' }
    const { rows, sentences } = allowanceTest(
      blockOf(1, 1, [{ id: 's', kind: 'cornered', at: [0, 0], size: [1, 1], corner: 0.25, fabrics: corners }]),
    )
    expect(rows).toEqual([])
    expect(sentences).toEqual(['There’s nothing to check: all that is sewn here keeps its size, or is trimmed to it.'])
  })

  it('says which rows no longer match', () => {
    const uneven = blockOf(
      4,
      2,
      [
        ...[0, 1, 2, 3].map((x) => square(`t${x}`, [x, 0], [1, 1], x % 2 === 0 ? 'a' : 'b')),
        square('l', [0, 1], [2, 1], 'c'),
        square('r', [2, 1], [2, 1], 'd'),
      ],
      { order: 'rows' },
    )
    expect(allowanceTest(uneven).sentences.join(' ')).toContain(
      'Row 1 has 3 seams across, row 2 has 1. With allowances that wide, row 1 comes out 1/8 in shorter, and they no longer match.',
    )
  })

  it('a block of one patch has no seam to test', () => {
    const one = blockOf(1, 1, [square('s', [0, 0])])
    expect(allowanceTest(one)).toMatchObject({ rows: [], sentences: ['There’s nothing to check: this block has no seams.'] })
  })
})

describe('the strip test', () => {
  it('three strips 1 1/2 wide make 3 1/2 with a middle of exactly 1 [S70][S71]', () => {
    const advice = bookletOf(report(BLOCKS.star), BLOCKS.star).seamAdvice.join(' ')
    expect(advice).toContain('three strips, each 1 1/2 in wide')
    expect(advice).toContain('measure 3 1/2 in across and the middle one exactly 1 in')
    expect(advice).toContain('Whether you sew them full or scant is your choice.')
  })
})
