/** Units under the ruler: a picture for each cut and hand, with the measurements that teachers give. */
import { describe, expect, it } from 'vitest'
import { type Block, type Drawing, trimPictures } from '../../geometry/index.ts'
import type { BoxUnit } from '../../geometry/values/block.ts'
import { blockOf, star } from '../help.ts'

const plain = ['b', 'b'] as const
const STAR = star([plain, plain, plain, plain])
const GOOSE = STAR.units[0] as BoxUnit
const HST: BoxUnit = { id: 'h', kind: 'hst', at: [0, 0], size: [1, 1], fabrics: { upper: 'a', lower: 'b' }, method: 'hst-2' }
const ONE: Block = blockOf(1, 1, [HST])

const textsIn = ({ marks }: Drawing): string[] => marks.flatMap((mark) => (mark.type === 'text' ? [mark.text] : []))
const tipsIn = ({ marks }: Drawing): number => marks.filter((mark) => mark.type === 'point').length

describe('a goose of 6 by 3', () => {
  const [first, second] = trimPictures(GOOSE, STAR, 'right') as [Drawing, Drawing]

  it('has its tip 1/4 in below the top, half its unfinished width from the side: [S17][S8]', () => {
    expect(textsIn(first)).toEqual(expect.arrayContaining(['1/4 in', '3 1/4 in', '45°']))
    expect(tipsIn(first)).toBe(1)
  })

  it('lies with its cut edges on the lines of its unfinished size in the second cut: [S17]', () => {
    expect(textsIn(second)).toContain('6 1/2 in × 3 1/2 in')
    expect(tipsIn(second)).toBe(0)
  })

  it('shows the numbers of the ruler', () => {
    expect(textsIn(first)).toEqual(expect.arrayContaining(['1', '2', '3', '4', '5', '6']))
  })

  it('is cut along a red edge that turns one corner, in each picture once', () => {
    for (const { marks } of [first, second]) {
      const red = marks.filter((mark) => mark.type === 'line' && mark.style === 'blade')
      expect(red.map((mark) => (mark.type === 'line' ? mark.points.length : 0))).toEqual([3])
    }
  })

  it('sticks out past the ruler where it is not cut yet, and nowhere else', () => {
    const bounds = ({ marks }: Drawing) => {
      const fabric = marks.flatMap((mark) => (mark.type === 'area' ? mark.outline : []))
      const red = marks.flatMap((mark) => (mark.type === 'line' && mark.style === 'blade' ? mark.points : []))
      return {
        top: Math.min(...fabric.map(([, y]) => y)) < Math.min(...red.map(([, y]) => y)) - 0.1,
        wide: Math.max(...fabric.map(([x]) => x)) - Math.min(...fabric.map(([x]) => x)),
      }
    }
    expect(bounds(first)).toEqual({ top: true, wide: expect.closeTo(6.5 + 3 / 8) })
    expect(bounds(second)).toEqual({ top: true, wide: expect.closeTo(6.5 + 3 / 16) })
  })

  it('is cut along the other side by the left hand, and says so', () => {
    const left = trimPictures(GOOSE, STAR, 'left')
    expect(left.map(({ title }) => title.split(':')[0])).toEqual(['Left-handed, first cut', 'Left-handed, second cut'])
    expect(first.title).toMatch(/^Right-handed, first cut: .* the ruler’s right and top edges\.$/)
  })
})

describe('a half-square triangle', () => {
  it('needs the 45° line alone: no tip and no distance from the edges (common practice, no source)', () => {
    const [first] = trimPictures(HST, ONE, 'right') as [Drawing]
    expect(tipsIn(first)).toBe(0)
    expect(textsIn(first).filter((text) => text.endsWith('in'))).toEqual([])
    expect(textsIn(first)).toContain('45°')
  })
})
