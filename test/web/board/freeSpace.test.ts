/** Where copies and pasted units come to lie: the nearest free whole cells. Judged by trying every place there is. */
import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import type { Block, Unit } from '../../../geometry/index.ts'
import { hasRoom } from '../../../web/board/hitTest.ts'
import { freePlace } from '../../../web/board/actions/freeSpace.ts'
import { rectOf, type Point } from '../../../web/document/shapes.ts'
import { blockOf, square } from '../../help.ts'

/** Every place, the nearest first. */
function byTrying(block: Block, units: readonly Unit[]): Point | null {
  const places: Point[] = []
  for (let y = -12; y <= 12; y++) for (let x = -12; x <= 12; x++) places.push([x, y])
  places.sort((a, b) => Math.hypot(...a) - Math.hypot(...b))
  const there = ([dx, dy]: Point): boolean => {
    const rects = units.map(rectOf).map(({ at, size }) => ({ at: [at[0] + dx, at[1] + dy] as Point, size }))
    return hasRoom(block, rects, new Set(), units)
  }
  return places.find(there) ?? null
}

const box = (most: number) =>
  fc.record({
    x: fc.integer({ min: 0, max: 2 * most }),
    y: fc.integer({ min: 0, max: 2 * most }),
    w: fc.integer({ min: 1, max: 3 }),
    h: fc.integer({ min: 1, max: 3 }),
  })
const unitsFrom = (name: string, boxes: readonly { x: number; y: number; w: number; h: number }[]): Unit[] =>
  boxes.map(({ x, y, w, h }, index) => square(`${name}${index}`, [x / 2, y / 2], [w, h]))

describe('the nearest free place', () => {
  it('is the one that is found by trying them all', () => {
    fc.assert(
      fc.property(fc.array(box(6), { maxLength: 9 }), fc.array(box(6), { minLength: 1, maxLength: 3 }), (there, come) => {
        const block = blockOf(7, 6, unitsFrom('t', there))
        const units = unitsFrom('c', come)
        expect(freePlace(block, units)).toEqual(byTrying(block, units))
      }),
    )
  })

  it('is looked for by the units that lie there, and not cell by cell', () => {
    const block = blockOf(10_000, 10_000, [square('whole', [0, 0], [10_000, 10_000])])
    expect(freePlace(block, [square('one', [5000, 5000], [1, 1])])).toBeNull()
    const nearly = blockOf(10_000, 10_000, [square('most', [0, 0], [10_000, 9_999])])
    expect(freePlace(nearly, [square('one', [5000, 0], [1, 1])])).toEqual([0, 9_999])
  })

  it('is none for what is larger than the grid', () => {
    expect(freePlace(blockOf(3, 3, []), [square('wide', [0, 0], [4, 1])])).toBeNull()
  })
})
