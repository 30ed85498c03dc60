/** What makers type and leave unfinished, printed: long names, other scripts, photographs, gaps, nothing at all, more steps than a sheet holds. */
import { describe, expect, it } from 'vitest'
import { type Block, bookletOf, report } from '../../geometry/index.ts'
import { STAR, withGap } from '../writing/star.ts'
import { GREEK, LONG, manySteps, OTHER, PHOTOGRAPH } from './blocks.ts'
import type { ReadPage } from './pdf.ts'
import { printed, withTitle } from './tools.ts'

describe('what makers type', () => {
  const named = (name: string): Block => ({ ...STAR, name, fabrics: STAR.fabrics.map((fabric) => ({ ...fabric, name: `${name} ${fabric.name}` })) })

  it.each(['letter', 'a4'] as const)('keeps long names on the sheet (%s), and no word on another', async (paper) => {
    const { pages } = await printed(named(LONG), paper)
    for (const { size, words } of pages) {
      for (const { x, width, y, text } of words) {
        expect([text, x >= 35, x + width <= size[0] - 35, y >= 30, y <= size[1] - 30]).toEqual([text, true, true, true, true])
      }
      expect(overlapping(words)).toEqual([])
    }
  })

  it('cuts a name off at the foot of a sheet before it is too small to read: it stands whole above', async () => {
    const name = Array.from({ length: 5 }, () => LONG).join(' ')
    const { pages, title } = await printed({ ...STAR, name }, 'a4', 'colouring')
    const { words, size } = pages[0] as ReadPage
    const foot = words.filter(({ y }) => y > size[1] - 50)
    expect(foot.some(({ text }) => text.includes('…'))).toBe(true)
    for (const { text, size: letters } of foot) expect([text, letters >= 7]).toEqual([text, true])
    expect(title).toBe(name)
  })

  it('prints Greek and Cyrillic as they are', async () => {
    const { pages, title } = await printed(named(GREEK), 'a4', 'cutlist')
    expect(title).toBe(GREEK)
    const text = pages.map((page) => page.text).join('')
    expect(text).toContain(GREEK)
    expect(text).not.toContain('□')
    expect(text).not.toContain('Letters shown as boxes')
  })

  it('shows other letters as boxes and lists each; the file inside has them all', async () => {
    const read = await printed(named(OTHER), 'a4')
    expect((read.pages[0] as ReadPage).text).toContain('□ □ □□ star')
    const list = withTitle(read, 'Letters shown as boxes').text
    // The Unicode code charts: U+661F, U+732B, U+1F408 CAT, U+2B1B BLACK LARGE SQUARE.
    for (const code of ['U+661F', 'U+732B', 'U+1F408', 'U+2B1B']) expect(list).toContain(code)
    expect(JSON.parse(new TextDecoder().decode(read.attachments.get('block.json'))).name).toBe(OTHER)
    expect(read.title).toBe(OTHER)
  })

  const [first] = bookletOf(report(STAR), STAR).parts.flatMap(({ steps }) => steps)

  it('shows a photograph beside its step', async () => {
    const block: Block = { ...STAR, booklet: { steps: { [first?.key as string]: { photograph: PHOTOGRAPH } } } }
    const { pages } = await printed(block)
    expect(pages.reduce((sum, { photographs }) => sum + photographs, 0)).toBe(1)
    expect(pages.map(({ text }) => text).join('')).not.toContain('could not be read')
  })

  it('says where a photograph could not be read, and prints the rest', async () => {
    const block: Block = {
      ...STAR,
      booklet: { by: 'A teacher', steps: { [first?.key as string]: { note: 'Use the old ruler.', photograph: 'data:image/jpeg;base64,AAAA' } } },
    }
    const text = (await printed(block)).pages.map((page) => page.text).join('\n')
    expect(text).toContain('A photograph belongs here, but it could not be read.')
    expect(text).toContain('Use the old ruler.')
    expect(text).toContain('by A teacher')
  })
})

/** Pairs of words of one page whose letters lie on each other. */
function overlapping(words: ReadPage['words']): string[] {
  const boxes = words.map(({ text, x, y, width, size }) => ({ text, x0: x + 0.5, x1: x + width - 0.5, y0: y - size * 0.66, y1: y }))
  return boxes.flatMap((a, at) =>
    boxes.slice(at + 1).flatMap((b) => (a.x0 < b.x1 && b.x0 < a.x1 && a.y0 < b.y1 && b.y0 < a.y1 ? [`${a.text} | ${b.text}`] : [])),
  )
}

describe('blocks that are not finished', () => {
  it('says on the first page that a layout with a gap cannot be sewn, and prints what it can', async () => {
    const gap = await printed(withGap(STAR))
    expect((gap.pages[0] as ReadPage).text.replaceAll('\n', ' ')).toContain('This block can’t be sewn yet')
    expect(gap.bookmarks).toContain('Cut list')
  })

  it('prints an empty block', async () => {
    const empty = await printed({ ...STAR, units: [] })
    expect(withTitle(empty, 'Cut list').text).toContain('There is nothing to cut yet.')
    expect((empty.pages[0] as ReadPage).text).toContain('Evening star')
  })
})

describe('many steps', () => {
  it('keeps every step, none of them titled at the foot of a sheet', async () => {
    const block = manySteps()
    const steps = bookletOf(report(block), block).parts.flatMap(({ steps }) => steps)
    const read = await printed(block, 'letter')
    expect(steps.length).toBeGreaterThan(25)
    expect(read.bookmarks.filter((mark) => /^\d+\. /.test(mark)).length).toBe(steps.length)
    for (const { words, size } of read.pages) {
      for (const { text, y, size: letters } of words) if (letters > 11.5) expect([text, y < size[1] - 90]).toEqual([text, true])
      // The words of the foot, and more.
      expect(words.length).toBeGreaterThan(3)
    }
  })
})
