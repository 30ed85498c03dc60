/** Words on pictures stand on no line where there is room beside it, and never leave the patch that they name. */
import { describe, expect, it } from 'vitest'
import { bookletOf, type Drawing, report } from '../../geometry/index.ts'
import { WordPlaces } from '../../geometry/printing/picture/wordPlaces.ts'
import { BLOCKS } from '../writing/blocks.ts'

type Spot = readonly [number, number]
type Mark = Drawing['marks'][number]

const area = (...outline: Spot[]): Mark => ({ type: 'area', outline, fabric: null, side: 'right', line: 'seam' })
const words = (at: Spot): Mark => ({ type: 'text', at, text: 'A', size: 'normal', align: 'middle' })
const same = (spot: Spot): Spot => spot

const HALVES = [area([0, 0], [40, 0], [0, 40]), area([40, 0], [40, 40], [0, 40])]

describe('a word', () => {
  it('in the middle of a half-square triangle goes into one of its halves', () => {
    const [x, y] = new WordPlaces([...HALVES, words([20, 20])], same).place([20, 20], 'middle', 6, 7)
    // The seam is where x and y add up to 40; the corner of the word's box that is nearest lies 3 and 3.85 from its middle.
    expect(Math.abs(x + y - 40)).toBeGreaterThan(3 + 0.55 * 7)
    expect(Math.min(x, y, 40 - x, 40 - y)).toBeGreaterThan(3)
  })

  it('that stands free stays where it is', () => {
    expect(new WordPlaces([...HALVES, words([10, 10])], same).place([10, 10], 'middle', 6, 7)).toEqual([10, 10])
  })

  it('stays in its own patch where there is no room beside its line', () => {
    const narrow = [area([0, 0], [8, 0], [8, 40], [0, 40])]
    const [x] = new WordPlaces([...narrow, words([4, 20])], same).place([4, 20], 'middle', 12, 7)
    expect(x > 0 && x < 8).toBe(true)
  })

  it('stands on no other word', () => {
    const places = new WordPlaces([words([10, 10]), words([10, 10])], same)
    const [[ax, ay], [bx, by]] = [places.place([10, 10], 'middle', 6, 7), places.place([10, 10], 'middle', 6, 7)]
    expect(Math.abs(ax - bx) >= 6 || Math.abs(ay - by) >= 7).toBe(true)
  })
})

it.each(['star', 'pinwheel', 'ohioStar', 'dutchmansPuzzle'] as const)('letters in the layout of %s stand on no seam', (name) => {
  const block = BLOCKS[name]
  const [layout] = bookletOf(report(block), block).parts.find(({ key }) => key === 'lay out')?.steps[0]?.drawings ?? []
  if (layout === undefined) throw new Error('no layout')
  // As wide as beside the words of a page.
  const scale = 200 / layout.width
  const put = ([x, y]: Spot): Spot => [x * scale, y * scale]
  const places = new WordPlaces(layout.marks, put)
  const sides = layout.marks.flatMap((mark) =>
    mark.type === 'area' ? mark.outline.map((to, at) => [mark.outline.at(at - 1) as Spot, to].map(put)) : [],
  )
  const letters = layout.marks.flatMap((mark) => (mark.type === 'text' ? [mark] : []))
  expect(letters.length).toBe(block.units.length)
  for (const { at } of letters) {
    const [x, y] = places.place(put(at), 'middle', 5, 7.4)
    for (const [[ax, ay], [bx, by]] of sides as [Spot, Spot][]) {
      const long = Math.hypot(bx - ax, by - ay)
      const part = Math.max(0, Math.min(1, ((x - ax) * (bx - ax) + (y - ay) * (by - ay)) / long ** 2))
      expect(Math.hypot(x - ax - part * (bx - ax), y - ay - part * (by - ay))).toBeGreaterThan(2.5)
    }
  }
})
