/** The short edition: few pages, none nearly empty, nothing too small to read, pictures that one can follow; templates whole where a sheet holds them. */
import { describe, expect, it } from 'vitest'
import { type Block, bookletOf, PAPERS, report } from '../../geometry/index.ts'
import { blockOf } from '../help.ts'
import { logCabin } from '../published/blocks.ts'
import { BLOCKS } from '../writing/blocks.ts'
import type { ReadPdf } from './pdf.ts'
import { printed } from './tools.ts'

/** Sixteen half-square triangles, turned this way and that. */
const sixteen: Block = blockOf(
  4,
  4,
  Array.from({ length: 16 }, (_, place) => ({
    id: `h${place}`,
    kind: 'hst' as const,
    at: [place % 4, Math.floor(place / 4)] as const,
    size: [1, 1] as const,
    turn: (((place % 4) + Math.floor(place / 4)) % 4) as 0 | 1 | 2 | 3,
    fabrics: { upper: 'a', lower: 'b' },
  })),
  { name: 'Sixteen triangles' },
)

/** A good printed pattern has about as many pages: common practice, no source. */
const PAGES: readonly (readonly [string, Block, number])[] = [
  ['a star in two wing fabrics', BLOCKS.star, 4],
  ['a log cabin', logCabin(), 5],
  ['sixteen half-square triangles', sixteen, 4],
]

const short = (block: Block, paper: (typeof PAPERS)[number]): Promise<ReadPdf> => printed(block, paper, null, 'short')

describe.each(PAPERS)('on %s', (paper) => {
  it.each(PAGES)('%s takes few pages, each well filled, in type of 10 points or more', async (_, block, most) => {
    const { pages } = await short(block, paper)
    expect(pages.length).toBeLessThanOrEqual(most)
    for (const [at, { words, size }] of pages.entries()) {
      for (const word of words) expect(word.size, word.text).toBeGreaterThanOrEqual(10 - 1e-6)
      // The foot stands on every page: what lies above it fills at least a third.
      const lowest = Math.max(...words.map(({ y }) => y).filter((y) => y < size[1] - 40))
      if (at < pages.length - 1) expect(lowest, `page ${at + 1}`).toBeGreaterThan(size[1] / 3)
    }
  })

  it('a template that one sheet holds is whole, on one page', async () => {
    // 9 1/2 by 3 1/2 in with its allowances: it fits the sheet upright only.
    const { pages } = await short(BLOCKS.attic, paper)
    const [template] = bookletOf(report(BLOCKS.attic), BLOCKS.attic).templates
    const [wide, high] = [(template?.width ?? 0) * 72, (template?.height ?? 0) * 72]
    const whole = pages
      .flatMap(({ ways }) => ways)
      .filter(({ points, closed }) => {
        const [xs, ys] = [points.map(([x]) => x), points.map(([, y]) => y)]
        const box = [Math.max(...xs) - Math.min(...xs), Math.max(...ys) - Math.min(...ys)].sort((a, b) => a - b)
        return closed && Math.abs((box[0] as number) - Math.min(wide, high)) < 0.1 && Math.abs((box[1] as number) - Math.max(wide, high)) < 0.1
      })
    expect(whole).toHaveLength(1)
    expect(pages.map(({ text }) => text).join()).not.toContain('tape')
  })
})

describe('a booklet for several blocks', () => {
  it('cuts and makes for all of them, and sews one at a time', () => {
    const block: Block = { ...BLOCKS.star, booklet: { blocks: 3 } }
    const made = bookletOf(report(block), block)
    expect(made.facts[0]?.said).toBe('3 blocks')
    const words = made.parts.flatMap(({ steps }) => steps.flatMap(({ title, sentences }) => [title, ...sentences])).join(' ')
    // Three times four squares 3 1/2 in, three sets of four geese.
    expect(words).toContain('Cut 12 squares 3 1/2 × 3 1/2 in')
    expect(words).toContain('Make 12 geese')
    expect(words).toContain('3 sets of four make all 12 geese')
    expect(words).toContain('You’re making 3 blocks: lay out and sew one at a time.')
  })
})
