/** The booklet printed, and read back by another reader: words, sheets, faces, files, and templates measured from the pen's own way. */
import { beforeAll, describe, expect, it } from 'vitest'
import { type Block, type Paper, writeBlock } from '../../geometry/index.ts'
import { STAR } from '../writing/star.ts'
import { KITE } from './blocks.ts'
import { type ReadPage, type ReadPdf, readPdf, type PenPath } from './pdf.ts'
import { print, printed, withTitle } from './tools.ts'

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
    // Geese four at a time, finished 6 by 3: large square 7 1/4, small squares 3 7/8 [S1][S2][S10].
    ['Cut list', 'square 7 1/4 × 7 1/4 in'],
    ['Cut list', 'squares 3 7/8 × 3 7/8 in'],
    // A top of 12 1/2, batting 2 in larger each side [S145]; the backing no smaller, common practice, no source.
    ['Cut list', 'backing and batting 16 1/2 × 16 1/2 in each'],
    ['Make the units', '1 set of four makes all 4 geese'],
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
    expect(star.pages.filter((page) => squareOn(page, 72) !== undefined).length).toBeGreaterThan(0)
  })
})

/** A closed square of a side, to a thousandth of an inch. */
const squareOn = ({ ways }: ReadPage, side: number): PenPath | undefined =>
  ways.find(({ points, closed }) => closed && points.length === 4 && sidesOf(points).every((length) => Math.abs(length - side) < 0.072))

const sidesOf = (points: PenPath['points']): number[] =>
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
        const [outer, inner] = [closed[sewn - 1] as PenPath, closed[sewn] as PenPath]
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
const edgesOf = (points: PenPath['points']): Edge[] => points.map((spot, at) => [points.at(at - 1) as readonly [number, number], spot])
const parallel = ([a, b]: Edge, [c, d]: Edge): boolean => {
  const cross = (b[0] - a[0]) * (d[1] - c[1]) - (b[1] - a[1]) * (d[0] - c[0])
  return Math.abs(cross) < 0.01 * Math.hypot(b[0] - a[0], b[1] - a[1]) * Math.hypot(d[0] - c[0], d[1] - c[1])
}
const distance = (spot: readonly [number, number], [ax, ay]: readonly [number, number], [bx, by]: readonly [number, number]): number =>
  Math.abs((bx - ax) * (spot[1] - ay) - (by - ay) * (spot[0] - ax)) / Math.hypot(bx - ax, by - ay)
