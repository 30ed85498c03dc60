/** Where things land on the board: what a drag snaps to, and where a new unit has room. All of it common practice, no source. */
import { describe, expect, it } from 'vitest'
import { boxOf, type Unit } from '../../../geometry/index.ts'
import { snapMove } from '../../../web/board/hand/snapping.ts'
import { fillBetween, newUnit, roomAround } from '../../../web/board/newUnit.ts'
import { blockOf, square } from '../../help.ts'

const goose: Unit = { id: 'g', kind: 'goose', at: [4, 4], size: [2, 1], fabrics: { goose: 'a', leftWing: 'b', rightWing: 'b' } }
const block = blockOf(8, 8, [square('s', [0, 0]), square('t', [3, 0]), square('w', [6, 0], [2, 2]), goose])
const cornersOf = (units: readonly Unit[]): unknown[] => units.map((unit) => (unit.kind === 'polygon' ? null : unit.at))

describe('a thing that is dragged', () => {
  const around = { grid: block.grid, units: [], half: false, reach: 0.2 }
  const third = { ...square('k', [0, 0]), at: ['4/3', 5] } as Unit

  it('snaps to another edge within reach, exactly', () => {
    const box = boxOf(square('s', [0, 0]))
    expect(snapMove(box, [1.3, 0], { ...around, units: [third] }).by, 'low edge to low edge').toEqual(['4/3', 0])
    expect(snapMove(box, [2.36, 0], { ...around, units: [third] }).by, 'low edge to high edge').toEqual(['7/3', 0])
    expect(snapMove(box, [0.36, 0], { ...around, units: [third] }).by, 'high edge to low edge').toEqual(['1/3', 0])
    expect(snapMove(box, [1.6, 0], { ...around, units: [third] }).by, 'beyond reach').toEqual([2, 0])
  })

  it('snaps to the middle of the block, and shows it', () => {
    const { by, guides } = snapMove(boxOf(square('s', [0, 0])), [3.55, 5], around)
    expect(by).toEqual([3.5, 5])
    expect(guides).toEqual([{ type: 'middle', axis: 0, at: 4, from: 0, to: 8 }])
  })

  it('shows the nearest edge that it is in line with, once', () => {
    const near = square('n', [5, 3])
    const { guides } = snapMove(boxOf(square('s', [0, 0])), [5, 1], { ...around, units: [near, square('f', [5, 7])] })
    expect(guides.filter(({ axis }) => axis === 0)).toEqual([
      { type: 'edge', axis: 0, at: 5, from: 1, to: 4 },
      { type: 'edge', axis: 0, at: 6, from: 1, to: 4 },
    ])
  })
})

describe('a new unit', () => {
  it('has room over a point where nothing is in the way, as near to the point as it can be', () => {
    expect(roomAround(block, 'square', 0, [2.5, 0.5])).toEqual([2, 0])
    expect(roomAround(block, 'goose', 0, [2.5, 0.5]), 'the cell to the right is taken').toEqual([1, 0])
    expect(roomAround(block, 'goose', 0, [2, 2.5]), 'on the line between two cells').toEqual([1, 2])
    expect(roomAround(block, 'goose', 0, [2.5, 2.5]), 'its first cell under the pointer').toEqual([2, 2])
    expect(roomAround(block, 'goose', 1, [7.5, 2.9]), 'upright').toEqual([7, 2])
    expect(roomAround(block, 'diamond', 0, [0.5, 0.5])).toBeNull()
  })

  it('lies as it was turned in the hand', () => {
    expect(newUnit(block, 'goose', [0, 4], 1)).toMatchObject({ size: [1, 2], turn: 1 })
    expect(newUnit(block, 'goose', [0, 4], 2)).toMatchObject({ size: [2, 1], turn: 2 })
    expect(newUnit(block, 'goose', [0, 4])).not.toHaveProperty('turn')
  })

  it('fills the cells between two others, side by side in every direction', () => {
    expect(cornersOf(fillBetween(block, 'goose', [0, 2], [1, 5], 3))).toEqual([
      [0, 2],
      [1, 2],
      [0, 4],
      [1, 4],
    ])
    expect(cornersOf(fillBetween(block, 'goose', [6, 7], [1, 6])), 'to the left and upwards').toEqual([
      [6, 7],
      [4, 7],
      [2, 7],
      [6, 6],
      [4, 6],
      [2, 6],
    ])
  })
})
