/** Border strips in the cut list: their names, and which of them are separate rows. */
import { describe, expect, it } from 'vitest'
import { type Block, report } from '../../geometry/index.ts'
import { cutListText } from '../../geometry/writing/cutListText.ts'
import { blockOf, square } from '../help.ts'

const borderRows = (block: Block) => report(block).cut.filter((row) => row.for.length === 0)

/** Three inches finished and a seam of 1/4 in: strips of 3 1/2 in are as wide as the block is high. */
const narrow = (more: object = {}): Block => blockOf(1, 1, [square('s', [0, 0])], { borders: [{ finishedWidth: 3, fabric: 'b', ...more }] })

describe('border strips', () => {
  it('of equal sides are squares, the others rectangles', () => {
    expect(borderRows(narrow()).map(({ shape, size, count }) => ({ shape, size, count }))).toEqual([
      { shape: 'square', size: [3.5, 3.5], count: 2 },
      { shape: 'rectangle', size: [9.5, 3.5], count: 2 },
    ])
  })

  it('are one row with their corner squares where both are the same piece', () => {
    expect(borderRows(narrow({ corner: 'b' })).map(({ shape, count }) => ({ shape, count }))).toEqual([{ shape: 'square', count: 8 }])
  })

  it('whose sides differ by less than a ruler shows stay rectangles', () => {
    expect(
      borderRows(blockOf(1, 1, [square('s', [0, 0])], { borders: [{ finishedWidth: '49/16', fabric: 'b' }] })).map(({ shape }) => shape),
    ).toEqual(['rectangle', 'rectangle'])
  })

  it('that are squares are not called corners', () => {
    const text = cutListText(report(narrow()), narrow())
    expect(text).toContain('borders')
    expect(text).not.toContain('border corners')
    const cornered = narrow({ corner: 'c' })
    expect(cutListText(report(cornered), cornered)).toContain('border corners')
  })
})
