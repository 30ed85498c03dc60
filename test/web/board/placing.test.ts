/** Where things land on the board: what a drag snaps to, and where a new unit has room. All of it common practice, no source. */
import { describe, expect, it } from 'vitest'
import { boxOf, type Unit } from '../../../geometry/index.ts'
import { snapMove } from '../../../web/board/hand/snapping.ts'
import { fillBetween, newUnit, roomAround, squareOver } from '../../../web/board/newUnit.ts'
import { blockOf, square } from '../../help.ts'

const goose: Unit = { id: 'g', kind: 'goose', at: [4, 4], size: [2, 1], fabrics: { goose: 'a', leftWing: 'b', rightWing: 'b' } }
const block = blockOf(8, 8, [square('s', [0, 0]), square('t', [3, 0]), square('w', [6, 0], [2, 2]), goose])
const cornersOf = (units: readonly Unit[]): unknown[] => units.map((unit) => (unit.kind === 'polygon' ? null : unit.at))

describe('a thing that is dragged', () => {
  const around = { grid: block.grid, units: [], half: true, reach: 0.2 }
  const third = { ...square('k', [0, 0]), at: ['4/3', 5] } as Unit

  it('snaps to whole cells alone, whatever is near, unless halves are asked for', () => {
    const box = boxOf(square('s', [0, 0]))
    const whole = { ...around, half: false, units: [third] }
    for (const by of [1.3, 1.2, 0.6]) expect(snapMove(box, [by, 5.1], whole).by).toEqual([1, 5])
    expect(snapMove(box, [3.55, 5], whole).by, 'not the middle of the block').toEqual([4, 5])
  })

  it('snaps to another edge within reach, exactly', () => {
    const box = boxOf(square('s', [0, 0]))
    expect(snapMove(box, [1.3, 0], { ...around, units: [third] }).by, 'low edge to low edge').toEqual(['4/3', 0])
    expect(snapMove(box, [2.36, 0], { ...around, units: [third] }).by, 'low edge to high edge').toEqual(['7/3', 0])
    expect(snapMove(box, [0.36, 0], { ...around, units: [third] }).by, 'high edge to low edge').toEqual(['1/3', 0])
    expect(snapMove(box, [1.9, 0], { ...around, units: [third] }).by, 'beyond reach').toEqual([2, 0])
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

  it('lies as it was flipped in the hand', () => {
    expect(newUnit(block, 'half-rectangle', [0, 4], 0, 'r', true)).toMatchObject({ size: [1, 2], mirror: true })
    expect(fillBetween(block, 'half-rectangle', [0, 4], [0, 4], 0, true)).toMatchObject([{ at: [0, 4], mirror: true }])
    expect(newUnit(block, 'goose', [0, 4])).not.toHaveProperty('mirror')
  })

  it('is one large square over free cells, from whichever corner it is dragged', () => {
    expect(squareOver(block, [1, 2], [3, 4])).toMatchObject({ kind: 'square', at: [1, 2], size: [3, 3] })
    expect(squareOver(block, [3, 3], [2, 2])).toMatchObject({ at: [2, 2], size: [2, 2] })
    expect(squareOver(block, [1, 2], [4, 4]), 'a goose is in the way').toBeNull()
    expect(squareOver(block, [7, 7], [8, 7]), 'beyond the grid').toBeNull()
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
