/**
 * The order and kinds of what is on the pages, for those who have them read aloud.
 *
 * Source  ISO 14289-1 (PDF/UA-1), from memory: every picture has words, headings skip no level, list items and contents have their parts, each link
 *         lies in a Link element, the title is shown and told in the metadata. No validator: pdfjs reads the pages back.
 */
import { beforeAll, describe, expect, it } from 'vitest'
import { BLOCKS } from '../writing/blocks.ts'
import type { ReadPage, ReadPdf } from './pdf.ts'
import { printed } from './tools.ts'

const NAME = 'Moss & <rust> star'

describe('the structure of a booklet', () => {
  let pdf: ReadPdf
  beforeAll(async () => {
    pdf = await printed({ ...BLOCKS.framed, name: NAME, booklet: { by: 'A. Maker & friends' } })
  })
  const all = (): string[] => pdf.pages.flatMap(({ elements }) => [...elements])

  it('tells title and author as they are written, in the metadata too', () => {
    expect([pdf.title, pdf.author, pdf.metadata.title, pdf.metadata.creator]).toEqual([NAME, 'A. Maker & friends', NAME, 'A. Maker & friends'])
  })

  it('leads from each line of the contents to the page that it names', () => {
    const first = pdf.pages[0] as ReadPage
    const numbers = first.words.filter(({ text, y }) => /^\d+$/.test(text) && y > contentsTop(first)).map(({ text }) => Number(text))
    expect(first.links.length).toBeGreaterThan(5)
    expect(first.links).toEqual(numbers)
  })

  it('lists in its key the marks that its pictures use, pressing first, and no other', () => {
    const text = pdf.pages
      .map((page) => page.text)
      .join('\n')
      .replaceAll('\n', ' ')
    const key = text.slice(text.indexOf('What the pictures show'))
    expect(key).toMatch(/^What the pictures show\s+press the seam this way/)
    for (const used of ['the wrong side of the fabric', 'the quilting line and its stops']) expect(key).toContain(used)
    for (const unused of ['one seam is pressed open', 'the straight grain']) expect(key).not.toContain(unused)
  })

  it('has words for each picture', () => {
    const pictures = pdf.pages.flatMap((page) => [...page.pictures])
    expect(pictures.length).toBeGreaterThan(10)
    for (const words of pictures) expect(words).not.toBe('')
  })

  it('skips no level of headings', () => {
    const levels = all().flatMap((path) => /H(\d)$/.exec(path)?.[1] ?? [])
    expect(levels[0]).toBe('1')
    levels.forEach((level, at) => {
      expect(Number(level) - Number(levels[at - 1] ?? 0)).toBeLessThanOrEqual(1)
    })
  })

  it('keeps list items, rows, cells and links where they belong', () => {
    const parents: Readonly<Record<string, readonly string[]>> = {
      LI: ['L'],
      LBody: ['LI'],
      Lbl: ['LI'],
      TR: ['Table'],
      TH: ['TR'],
      TD: ['TR'],
      TOCI: ['TOC'],
      Reference: ['TOCI'],
      Link: ['Reference'],
      Caption: ['TOC', 'Table', 'Figure'],
    }
    for (const path of all()) {
      const [kind = '', parent = ''] = path.split('/').reverse()
      if (kind in parents) expect(parents[kind], path).toContain(parent)
    }
    expect(all().filter((path) => path.endsWith('/Link')).length).toBe(pdf.pages[0]?.links.length)
  })
})

it('has the size of the block’s own units in its chart, whatever it is', async () => {
  // Cells of 2 3/8 cm: geese of 4.75 by 2.375 cm, which no chart by whole centimetres lists.
  const odd = { ...BLOCKS.framed, grid: { ...BLOCKS.framed.grid, cell: '19/8' } }
  const { pages } = await printed(odd, 'a4', 'chart')
  expect(pages.map(({ text }) => text).join(' ')).toMatch(/4\.75 × about 2\.4[\s\S]*Shaded/)
})

const contentsTop = ({ words }: ReadPage): number => words.find(({ text }) => text.startsWith('In this booklet'))?.y ?? Number.POSITIVE_INFINITY
