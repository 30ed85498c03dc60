/** The largest block within a block, against trying every rectangle of the grid. */
import { expect, it } from 'vitest'
import { innerRectangle, type SizedPart } from '../../geometry/piecing/innerRectangle.ts'

type Box = readonly [number, number, number, number]

const part = ([left, top, right, bottom]: Box): SizedPart => ({
  box: { part: 0, low: [left, top], high: [right, bottom] },
  twice: 2n * BigInt((right - left) * (bottom - top)),
})

/** Two bars and two squares, a large square, and a column beside them. */
const PARTS: readonly Box[] = [
  [0, 0, 2, 1],
  [0, 1, 2, 2],
  [2, 0, 3, 1],
  [2, 1, 3, 2],
  [0, 2, 3, 5],
  [3, 0, 4, 5],
]

it.each([
  ['four parts make the largest rectangle but for all, where five are too many', PARTS, 4, [0, 1, 2, 3]],
  ['five parts make the largest', PARTS, 5, [0, 1, 2, 3, 4]],
  ['three parts make the largest, one of them longer than the others', PARTS, 3, [1, 3, 4]],
  ['of two rectangles as large, the first is taken', PARTS, 2, [0, 1]],
  ['one part alone is no block of its own', PARTS, 1, null],
  ['neither are all parts together', PARTS.slice(0, 2), 2, null],
  [
    'parts that leave a hole fill no rectangle',
    [
      [0, 0, 1, 1],
      [2, 0, 3, 1],
      [0, 2, 4, 3],
    ] as const,
    3,
    null,
  ],
  [
    'a part that reaches over the edge belongs to no rectangle',
    [
      [0, 0, 1, 2],
      [1, 0, 2, 1],
      [0, 2, 2, 4],
      [1, 1, 3, 2],
    ] as const,
    3,
    null,
  ],
] as const)('%s', (_, boxes, most, wanted) => {
  expect(innerRectangle(boxes.map(part), most)).toEqual(wanted)
})

it.each([
  ['top', (box: Box): Box => box],
  ['bottom', ([a, b, c, d]: Box): Box => [a, 6 - d, c, 6 - b]],
  ['left', ([a, b, c, d]: Box): Box => [b, a, d, c]],
  ['right', ([a, b, c, d]: Box): Box => [6 - d, a, 6 - b, c]],
] as const)('a part that reaches out at the %s does not make up for a hole of the same area', (_, turned) => {
  // Three by three squares: the one in a corner is missing, and its neighbour is longer by a square.
  const full: readonly Box[] = [
    [0, 0, 1, 1],
    [1, -1, 2, 1],
    [0, 1, 1, 2],
    [1, 1, 2, 2],
    [2, 1, 3, 2],
    [0, 2, 1, 3],
    [1, 2, 2, 3],
    [2, 2, 3, 3],
    [5, 5, 6, 6],
  ]
  expect(innerRectangle(full.map(turned).map(part), 8)).toEqual([2, 3, 4, 5, 6, 7])
})

it('is as large as the largest found by trying every rectangle of a grid of squares with one of two cells in it', () => {
  for (let seed = 0; seed < 12; seed++) {
    const [wide, high] = [2 + (seed % 3), 2 + (seed % 2)]
    const boxes = [...Array(wide * high).keys()].flatMap((cell): Box[] => {
      const [x, y] = [cell % wide, Math.floor(cell / wide)]
      if (cell === seed % (wide * high) && x + 1 < wide) return [[x, y, x + 2, y + 1]]
      return cell - 1 === seed % (wide * high) && x > 0 ? [] : [[x, y, x + 1, y + 1]]
    })
    for (const most of [2, 3, 4, 5])
      expect(innerRectangle(boxes.map(part), most)?.length ?? 0, `${seed} ${most}`).toBe(mostTried(boxes, wide, high, most))
  }
})

function mostTried(boxes: readonly Box[], wide: number, high: number, most: number): number {
  let best = 0
  for (let left = 0; left < wide; left++)
    for (let right = left + 1; right <= wide; right++)
      for (let top = 0; top < high; top++)
        for (let bottom = top + 1; bottom <= high; bottom++) {
          const inside = boxes.filter(([a, b, c, d]) => a >= left && c <= right && b >= top && d <= bottom)
          const area = inside.reduce((sum, [a, b, c, d]) => sum + (c - a) * (d - b), 0)
          const fits = area === (right - left) * (bottom - top) && inside.length >= 2 && inside.length <= most && inside.length < boxes.length
          if (fits) best = Math.max(best, inside.length)
        }
  return best
}
