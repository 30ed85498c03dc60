/** The booklet printed, and read back by another reader: words, sheets, faces, files, and templates measured from the pen's own way. */
import { beforeAll, describe, expect, it } from 'vitest'
import { type Block, bookletOf, type Paper, printBooklet, report, type SinglePage, writeBlock } from '../../geometry/index.ts'
import { STAR, withGap } from '../writing/star.ts'
import { GREEK, KITE, LONG, manySteps, OTHER, PHOTOGRAPH } from './blocks.ts'
import { type ReadPage, type ReadPdf, readPdf, type Way } from './pdf.ts'
import { TOOLS } from './tools.ts'

const print = (block: Block, paper: Paper = 'letter', only: SinglePage | null = null): Promise<Uint8Array> => {
  const said = report(block)
  const file = new TextEncoder().encode(writeBlock(block))
  return printBooklet({ report: said, block, booklet: bookletOf(said, block), file, paper, only, tools: TOOLS })
}
const printed = async (block: Block, paper?: Paper, only?: SinglePage): Promise<ReadPdf> => readPdf(await print(block, paper, only))
const withTitle = ({ pages }: ReadPdf, title: string): ReadPage => {
  const page = pages.find(({ text }) => text.split('\n').includes(title))
  if (page === undefined) throw new Error(`no page is titled ${title}`)
  return page
}

describe('the booklet of a star', () => {
  let bytes: Uint8Array
  let star: ReadPdf
  beforeAll(async () => {
    bytes = await print(STAR)
    star = await readPdf(bytes)
  })

  it('says on its first page what is made, its sizes, its cloth and what is inside', () => {
    const { text } = star.pages[0] as ReadPage
    for (const words of ['Evening star', '12 1/2 × 12 1/2 in', 'Linen white', 'buy 1/4 yd', 'In this booklet']) expect(text).toContain(words)
  })

  it.each([
    ['Before you begin', 'Close the blade after every cut'],
    // Geese four at a time, finished 6 by 3: large square 7 1/4, small squares 3 7/8: handbook section 1 [S1][S2][S10].
    ['Cut list', 'square 7 1/4 × 7 1/4 in'],
    ['Cut list', 'squares 3 7/8 × 3 7/8 in'],
    ['Make the units', 'Trim each to 6 1/2 × 3 1/2 in'],
    ['If every seam is a little off', '12 1/2 × 12 1/2 in'],
    ['Size chart', '7 1/4'],
    ['Colouring page', 'Moss'],
  ])('has a page %j that says %j', (title, words) => {
    const { text } = withTitle(star, title)
    expect(text.replaceAll('\n', ' ')).toContain(words)
  })

  it('is titled, in English, tagged, with a way to each chapter and step', () => {
    expect([star.title, star.language, star.tagged]).toEqual(['Evening star', 'en', true])
    for (const mark of ['Evening star', 'Cut list', 'Join', 'Colouring page']) expect(star.bookmarks).toContain(mark)
    expect(star.bookmarks.filter((mark) => /^\d+\. /.test(mark)).map((mark) => Number.parseInt(mark, 10))).toEqual(
      Array.from({ length: star.bookmarks.filter((mark) => /^\d+\. /.test(mark)).length }, (_, at) => at + 1),
    )
  })

  it('numbers its pages', () => {
    star.pages.forEach(({ text }, at) => {
      expect(text).toContain(`Page ${at + 1} of ${star.pages.length}`)
    })
  })

  it('carries its faces, and its block file unchanged', () => {
    expect(star.fonts.length).toBeGreaterThan(0)
    for (const { name, missing } of star.fonts) expect([/Inter-(Regular|SemiBold)$/.test(name), missing]).toEqual([true, false])
    expect(new TextDecoder().decode(star.attachments.get('block.json'))).toBe(writeBlock(STAR))
  })

  it('is the same, byte for byte, when it is printed again', async () => {
    expect(Buffer.from(await print(STAR)).equals(Buffer.from(bytes))).toBe(true)
  })

  it('has a test square of one inch: 72 points (ISO 32000-1, 8.3.2.3)', () => {
    const square = squareOn(withTitle(star, 'Before you begin'), 72)
    expect(square).toBeDefined()
  })
})

/** A closed square of a side, to a thousandth of an inch. */
const squareOn = ({ ways }: ReadPage, side: number): Way | undefined =>
  ways.find(({ points, closed }) => closed && points.length === 4 && sidesOf(points).every((length) => Math.abs(length - side) < 0.072))

const sidesOf = (points: Way['points']): number[] =>
  points.map(([x, y], at) => {
    const [px, py] = points.at(at - 1) as readonly [number, number]
    return Math.hypot(x - px, y - py)
  })

describe('paper', () => {
  it.each([
    // ISO 216: 210 by 297 mm; ANSI/ASME Y14.1: 8 1/2 by 11 in.
    ['a4', (210 / 25.4) * 72, (297 / 25.4) * 72],
    ['letter', 8.5 * 72, 11 * 72],
  ] as const)('%s', async (paper, width, height) => {
    const { pages } = await printed(STAR, paper, 'cutlist')
    for (const { size } of pages) expect([size[0], size[1]]).toEqual([expect.closeTo(width, 3), expect.closeTo(height, 3)])
  })

  it('measures 2.5 cm in a block of centimetres', async () => {
    const metric: Block = { ...KITE, measure: { unit: 'cm' }, grid: { ...KITE.grid, cell: 5 } }
    const { pages } = await printed(metric, 'a4', 'templates')
    expect(squareOn(pages[0] as ReadPage, (2.5 / 2.54) * 72)).toBeDefined()
  })
})

describe('templates, measured back', () => {
  const SEAM = 0.25
  /** Finished sides of the kite's patches in inches, by Pythagoras from the corners in the file: cells of 3 in. */
  const FINISHED: Readonly<Record<string, readonly number[]>> = {
    left: [3, Math.hypot(3, 6), 6],
    kite: [9, 6, 12, Math.hypot(3, 6)],
  }

  const templates = async (paper: Paper): Promise<readonly ReadPage[]> => (await printed(KITE, paper, 'templates')).pages

  it.each(['a4', 'letter'] as const)('on %s: the line to sew is the finished patch, to a thousandth of an inch', async (paper) => {
    const ways = (await templates(paper)).flatMap(({ ways }) => ways).filter(({ closed }) => closed)
    for (const sides of Object.values(FINISHED)) {
      const inches = ways.map(({ points }) => sidesOf(points).map((length) => length / 72))
      expect(inches.some((found) => sameSides(found, sides))).toBe(true)
    }
  })

  it.each(['a4', 'letter'] as const)('on %s: the line to cut runs one seam allowance outside it, on every side', async (paper) => {
    let measured = 0
    for (const { ways } of await templates(paper)) {
      const closed = ways.filter(({ closed, points }) => closed && points.length >= 3)
      for (const sides of Object.values(FINISHED)) {
        const sewn = closed.findIndex(({ points }) =>
          sameSides(
            sidesOf(points).map((length) => length / 72),
            sides,
          ),
        )
        if (sewn < 0) continue
        measured += 1
        // The pen draws the line to cut before the line to sew.
        const [outer, inner] = [closed[sewn - 1] as Way, closed[sewn] as Way]
        for (const [from, to] of edgesOf(inner.points)) {
          const apart = edgesOf(outer.points).flatMap((edge) => (parallel(edge, [from, to]) ? [distance(edge[0], from, to) / 72] : []))
          expect(apart.some((inches) => Math.abs(inches - SEAM) < 0.001)).toBe(true)
        }
      }
    }
    expect(measured).toBeGreaterThanOrEqual(Object.keys(FINISHED).length)
  })

  it('draws each sheet of a large template at the same size, and shares a strip between neighbours', async () => {
    const large: Block = { ...KITE, grid: { ...KITE.grid, cell: 5 } }
    const { pages } = await printed(large, 'letter', 'templates')
    const tiles = pages.filter(({ text }) => /Sheet \d+ of \d+/.test(text))
    expect(tiles.length).toBeGreaterThan(2)
    const sizes = new Set(
      tiles.map(({ ways, text }) => {
        const outline = ways.find(({ closed, points, how }) => closed && how === 'stroke' && points.length > 4)
        return `${/Template [^,]+/.exec(text)?.[0]} ${sidesOf(outline?.points ?? [])
          .map((side) => side.toFixed(1))
          .join(' ')}`
      }),
    )
    const names = new Set(tiles.map(({ text }) => /Template [^,]+/.exec(text)?.[0]))
    expect(sizes.size).toBe(names.size)
  })
})

const sameSides = (found: readonly number[], wanted: readonly number[]): boolean => {
  const [a, b] = [found, wanted].map((sides) => [...sides].sort((x, y) => x - y)) as [number[], number[]]
  return a.length === b.length && a.every((side, at) => Math.abs(side - (b[at] as number)) < 0.001)
}

type Edge = readonly [readonly [number, number], readonly [number, number]]
const edgesOf = (points: Way['points']): Edge[] => points.map((spot, at) => [points.at(at - 1) as readonly [number, number], spot])
const parallel = ([a, b]: Edge, [c, d]: Edge): boolean => {
  const cross = (b[0] - a[0]) * (d[1] - c[1]) - (b[1] - a[1]) * (d[0] - c[0])
  return Math.abs(cross) < 0.01 * Math.hypot(b[0] - a[0], b[1] - a[1]) * Math.hypot(d[0] - c[0], d[1] - c[1])
}
const distance = (spot: readonly [number, number], [ax, ay]: readonly [number, number], [bx, by]: readonly [number, number]): number =>
  Math.abs((bx - ax) * (spot[1] - ay) - (by - ay) * (spot[0] - ax)) / Math.hypot(bx - ax, by - ay)

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
    expect((gap.pages[0] as ReadPage).text.replaceAll('\n', ' ')).toContain('This block cannot be sewn as it stands')
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
