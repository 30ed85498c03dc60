import fc from 'fast-check'
import { expect, it } from 'vitest'
import { type Box, spatialIndex } from '../../geometry/plane/spatialIndex.ts'

const side = fc.double({ min: 0, max: 9, noNaN: true })
const box = fc.tuple(side, side, side, side).map(
  ([x, y, w, h]): Box => [
    [x - 3, y],
    [x - 3 + w / 3, y + h],
  ],
)

/** By asking every box: what the index must find, in the same order. */
const asked = (boxes: readonly Box[], [[x0, y0], [x1, y1]]: Box): number[] =>
  boxes.flatMap(([low, high], index) => (low[0] <= x1 && high[0] >= x0 && low[1] <= y1 && high[1] >= y0 ? [index] : []))

it('finds what asking every box finds', () => {
  fc.assert(
    fc.property(fc.array(box, { maxLength: 40 }), box, (boxes, wanted) => {
      const index = spatialIndex(
        boxes.map((_, place) => place),
        (place) => boxes[place] as Box,
      )
      expect(index.touching(...wanted)).toEqual(asked(boxes, wanted))
    }),
  )
})
