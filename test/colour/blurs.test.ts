import { describe, expect, it } from 'vitest'
import { turnBlock } from '../../geometry/edits/unitEdits.ts'
import type { Block } from '../../geometry/values/block.ts'
import { blurs } from '../../geometry/report/colourReport.ts'
import { blockOf, FABRICS, sequence, square, star } from '../help.ts'

const grid = (seed: number, columns: number, rows: number): { block: Block; at: (x: number, y: number) => string } => {
  const next = sequence(seed)
  const cloths = Array.from({ length: columns * rows }, () => FABRICS[Math.floor(next() * FABRICS.length)]?.id as string)
  const units = cloths.map((cloth, cell) => square(`s${cell}`, [cell % columns, Math.floor(cell / columns)], [1, 1], cloth))
  return { block: blockOf(columns, rows, units), at: (x, y) => cloths[y * columns + x] as string }
}

describe('neighbours that blur', () => {
  it('touch along as many sides of cells as are counted by hand', () => {
    for (let seed = 1; seed <= 20; seed++) {
      const { block, at } = grid(seed, 5, 4)
      const counted = new Map<string, number>()
      const touch = (one: string, other: string): void => {
        const pair = [one, other].sort().join(' ')
        if (one !== other) counted.set(pair, (counted.get(pair) ?? 0) + 3)
      }
      for (let y = 0; y < 4; y++)
        for (let x = 0; x < 5; x++) {
          if (x < 4) touch(at(x, y), at(x + 1, y))
          if (y < 3) touch(at(x, y), at(x, y + 1))
        }
      // Every pair is listed where no difference is enough; a cell is 3 in.
      expect(new Map(blurs(block, 101).map(({ fabrics, length }) => [fabrics.join(' '), length]))).toEqual(counted)
    }
  })

  it('are those less than eight apart, the longest first; borders touch too', () => {
    // L* of #777777 is 50.03 and of #808080 53.59: CIE 15, from memory; a star's points touch each of the four bodies along two slanting seams.
    const fabrics = [
      { id: 'a', name: 'Ash', colour: '#777777' },
      { id: 'b', name: 'Slate', colour: '#808080' },
      { id: 'd', name: 'Snow', colour: '#ffffff' },
    ]
    const wings = Array.from({ length: 4 }, () => ['b', 'b'] as const)
    const [pair, ...others] = blurs(star(wings, { fabrics, borders: [{ finishedWidth: 1, fabric: 'b' }] }))
    expect(others).toEqual([])
    expect(pair?.difference).toBeCloseTo(53.59 - 50.03, 1)
    // Eight slanting seams of √18 in, eight sides of 3 in between corner squares and points; on the border four bodies of 6 in and eight sides of corners of 3 in.
    expect(pair?.length).toBeCloseTo(8 * Math.sqrt(18) + 8 * 3 + 4 * 6 + 8 * 3, 9)
    expect(blurs(star(wings, { fabrics }), 3)).toEqual([])
  })

  it('are the same however the block is turned', () => {
    for (let seed = 1; seed <= 10; seed++) {
      const { block } = grid(seed, 4, 3)
      const turned = JSON.parse(JSON.stringify(block)) as Parameters<ReturnType<typeof turnBlock>['change']>[0]
      turnBlock().change(turned)
      const said = (one: Block): string[] =>
        blurs(one, 40)
          .map(({ fabrics, length }) => `${fabrics} ${length}`)
          .sort()
      expect(said(turned)).toEqual(said(block))
    }
  })
})
