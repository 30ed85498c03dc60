/** What a hand does on the board: each state of a gesture, and where things come to lie. All of it common practice, no source. */
import { describe, expect, it } from 'vitest'
import { boxOf } from '../../../geometry/index.ts'
import type { Block, Unit } from '../../../geometry/index.ts'
import {
  carried,
  chosenBy,
  cursorOver,
  followed,
  type Gesture,
  isCarried,
  landed,
  onHandle,
  pressed,
  resizing,
  type Scene,
  type Touch,
} from '../../../web/board/hand/hand.ts'
import { newUnit, roomOver, runOf } from '../../../web/board/newUnit.ts'
import type { Point } from '../../../web/document/shapes.ts'
import { snapMove } from '../../../web/board/hand/snapping.ts'
import { blockOf, square } from '../../help.ts'

const SCALE = 100

const touch = (cells: Point, more: Partial<Touch> = {}): Touch => ({
  at: [cells[0] * SCALE, cells[1] * SCALE],
  cells,
  half: false,
  add: false,
  by: 'mouse',
  ...more,
})
const sceneOf = (block: Block, more: Partial<Scene> = {}): Scene => ({
  block,
  chosen: [],
  tool: 'hand',
  taking: null,
  turned: 0,
  brush: null,
  scale: SCALE,
  pan: [0, 0],
  ...more,
})

/** A drag from one spot to others, as it stands at the last. */
function drag(scene: Scene, from: Touch, ...way: Touch[]): Gesture {
  const [first, ...rest] = way as [Touch, ...Touch[]]
  const begun = carried(pressed(from, scene) as Extract<Gesture, { sort: 'press' }>, first, scene)
  return rest.reduce((gesture, next) => followed(gesture, next, scene), begun)
}

const goose: Unit = { id: 'g', kind: 'goose', at: [4, 4], size: [2, 1], fabrics: { goose: 'a', leftWing: 'b', rightWing: 'b' } }
const block = blockOf(8, 8, [square('s', [0, 0]), square('t', [3, 0]), square('w', [6, 0], [2, 2]), goose])

describe('moving', () => {
  it('snaps to whole cells, and to halves where the hand asks', () => {
    expect(drag(sceneOf(block), touch([0.5, 0.5]), touch([1.4, 4.2]))).toMatchObject({
      sort: 'move',
      ids: ['s'],
      snapped: { by: [1, 4] },
      fits: true,
    })
    expect(drag(sceneOf(block), touch([0.5, 0.5]), touch([1.9, 6.6], { half: true }))).toMatchObject({ snapped: { by: [1.5, 6] } })
  })

  it('takes all that is chosen along, and only what is pressed where that is not chosen', () => {
    expect(drag(sceneOf(block, { chosen: ['s', 't'] }), touch([0.5, 0.5]), touch([0.5, 2.5]))).toMatchObject({
      ids: ['s', 't'],
      snapped: { by: [0, 2] },
    })
    expect(drag(sceneOf(block, { chosen: ['t'] }), touch([0.5, 0.5]), touch([0.5, 2.5]))).toMatchObject({ ids: ['s'] })
    expect(drag(sceneOf(block, { chosen: ['t'] }), touch([0.5, 0.5], { add: true }), touch([0.5, 2.5]))).toMatchObject({ ids: ['t', 's'] })
  })

  it('does not fit over others or beyond the grid', () => {
    expect(drag(sceneOf(block), touch([4.5, 4.5]), touch([6.5, 1.5]))).toMatchObject({ fits: false, swap: null, inTheWay: 'w' })
    expect(drag(sceneOf(block), touch([0.5, 0.5]), touch([-1, 0.5]))).toMatchObject({ fits: false, swap: null, inTheWay: null })
  })

  it('changes places with a unit of the same size, and with no other', () => {
    expect(drag(sceneOf(block), touch([0.5, 0.5]), touch([3.4, 0.6]))).toMatchObject({ swap: 't', inTheWay: null })
    expect(drag(sceneOf(block), touch([0.5, 0.5]), touch([6.4, 0.6]))).toMatchObject({ swap: null, inTheWay: 'w' })
    expect(drag(sceneOf(block, { chosen: ['s', 'g'] }), touch([0.5, 0.5]), touch([3.4, 0.6])), 'two do not change places with one').toMatchObject({
      swap: null,
    })
  })
})

describe('where a thing comes to lie', () => {
  const around = { grid: block.grid, units: [], half: false, reach: 0.2 }
  const third = { ...square('k', [0, 0]), at: ['4/3', 5] } as Unit

  it('is drawn to another edge within reach, exactly', () => {
    const box = boxOf(square('s', [0, 0]))
    expect(snapMove(box, [1.3, 0], { ...around, units: [third] }).by, 'low edge to low edge').toEqual(['4/3', 0])
    expect(snapMove(box, [2.36, 0], { ...around, units: [third] }).by, 'low edge to high edge').toEqual(['7/3', 0])
    expect(snapMove(box, [0.36, 0], { ...around, units: [third] }).by, 'high edge to low edge').toEqual(['1/3', 0])
    expect(snapMove(box, [1.6, 0], { ...around, units: [third] }).by, 'beyond reach').toEqual([2, 0])
  })

  it('is drawn to the middle of the block, and shows it', () => {
    const { by, guides } = snapMove(boxOf(square('s', [0, 0])), [3.55, 5], around)
    expect(by).toEqual([3.5, 5])
    expect(guides).toEqual([{ axis: 0, at: 4, from: 0, to: 8, sort: 'middle' }])
  })

  it('shows the nearest edge that it is in line with, once', () => {
    const near = square('n', [5, 3])
    const { guides } = snapMove(boxOf(square('s', [0, 0])), [5, 1], { ...around, units: [near, square('f', [5, 7])] })
    expect(guides.filter(({ axis }) => axis === 0)).toEqual([
      { axis: 0, at: 5, from: 1, to: 4, sort: 'edge' },
      { axis: 0, at: 6, from: 1, to: 4, sort: 'edge' },
    ])
  })
})

describe('a unit from the tray', () => {
  it('comes to lie with its middle under the hand, on cells, halves, or in line', () => {
    expect(landed('goose', 0, [3.2, 5.4], false, sceneOf(block)).by).toEqual([2, 5])
    expect(landed('square', 0, [3.2, 6.1], true, sceneOf(block)).by).toEqual([2.5, 5.5])
    expect(landed('square', 0, [3.99, 6.5], false, sceneOf(block)).by, 'the middle of the block is within reach').toEqual([3.5, 6])
    expect(landed('goose', 1, [3.4, 5.1], false, sceneOf(block)).by, 'stood on end').toEqual([3, 4])
  })

  it('is pressed down where it has room over the spot, nearest to it', () => {
    expect(roomOver(block, 'square', 0, [2.5, 0.5])).toEqual([2, 0])
    expect(roomOver(block, 'goose', 0, [2.5, 0.5]), 'the cell to the right is taken').toEqual([1, 0])
    expect(roomOver(block, 'goose', 0, [2, 2.5]), 'pressed on the line between two cells').toEqual([1, 2])
    expect(roomOver(block, 'goose', 0, [2.5, 2.5]), 'its first cell under the hand').toEqual([2, 2])
    expect(roomOver(block, 'goose', 1, [7.5, 2.9]), 'upright').toEqual([7, 2])
    expect(roomOver(block, 'diamond', 0, [0.5, 0.5])).toBeNull()
  })

  it('lies as it was turned in the hand', () => {
    expect(newUnit(block, 'goose', [0, 4], 1)).toMatchObject({ size: [1, 2], turn: 1 })
    expect(newUnit(block, 'goose', [0, 4], 2)).toMatchObject({ size: [2, 1], turn: 2 })
    expect(newUnit(block, 'goose', [0, 4])).not.toHaveProperty('turn')
    expect(runOf(block, 'goose', [0, 2], [1, 5], 3).map((unit) => (unit.kind === 'polygon' ? null : unit.at))).toEqual([
      [0, 2],
      [1, 2],
      [0, 4],
      [1, 4],
    ])
  })
})

describe('a fabric in hand', () => {
  const scene = sceneOf(block, { brush: 'b' })

  it('is drawn over patches, each once, also where the hand is quick', () => {
    expect(drag(scene, touch([0.5, 0.5]), touch([6.5, 0.5]), touch([0.5, 0.5]))).toMatchObject({
      sort: 'pour',
      fabric: 'b',
      over: [
        { unit: 's', name: 'patch' },
        { unit: 't', name: 'patch' },
        { unit: 'w', name: 'patch' },
      ],
    })
  })

  it('moves nothing; but Shift still takes units up', () => {
    expect(drag(scene, touch([0.5, 0.5]), touch([0.5, 3])).sort).toBe('pour')
    expect(drag(scene, touch([0.5, 0.5], { add: true }), touch([0.5, 3], { add: true })).sort).toBe('move')
  })
})

describe('the round handles', () => {
  const hold = (does: 'turn' | 'mirror', ...way: Point[]): Gesture =>
    way.reduce(
      (gesture, at) => followed(gesture, touch(at, { by: 'touch' }), sceneOf(block)),
      onHandle(does, touch([5, 3.6], { by: 'touch' }), ['g'], block) as Gesture,
    )

  it('mean one quarter while the finger rests, and as many as it goes round by', () => {
    expect(hold('turn', [5.05, 3.62])).toMatchObject({ off: false })
    expect(hold('turn', [5.9, 4.5])).toMatchObject({ off: true, quarters: 1 })
    expect(hold('turn', [5.9, 4.5], [5, 5.4])).toMatchObject({ quarters: 2 })
    expect(hold('turn', [4.1, 4.5])).toMatchObject({ quarters: 3 })
    expect(hold('turn', [5.9, 4.5], [5, 3.7]), 'back where it was').toMatchObject({ off: true, quarters: 0 })
    expect(hold('turn', [5.9, 4.5], [5.02, 4.52]), 'over the middle nothing spins').toMatchObject({ quarters: 1 })
  })

  it('let the mirror alone once the hand has left it', () => {
    expect(hold('mirror', [5.1, 3.7])).toMatchObject({ off: false })
    expect(hold('mirror', [5.1, 5])).toMatchObject({ off: true })
  })
})

describe('what a mouse shows', () => {
  it('is what a press would do there', () => {
    const over = (unit: string | null, more: Partial<Scene> = {}, on: Parameters<typeof cursorOver>[0] = null): string =>
      cursorOver(on, unit, sceneOf(block, more))
    expect([over('s'), over(null), over(null, { taking: 'goose' }), over('s', { brush: 'a' })]).toEqual(['grab', 'default', 'copy', 'cell'])
    expect(over('s', { tool: 'box' })).toBe('crosshair')
    expect([over('s', {}, 'turn'), over('s', {}, [0, 0]), over('s', {}, [1, 0])]).toEqual(['pointer', 'nwse-resize', 'nesw-resize'])
  })
})

describe('a press that becomes a drag', () => {
  it('goes farther for a finger, which rolls, than for a mouse', () => {
    expect(isCarried(touch([1, 1]), touch([1.07, 1]))).toBe(true)
    expect(isCarried(touch([1, 1], { by: 'touch' }), touch([1.07, 1]))).toBe(false)
    expect(isCarried(touch([1, 1], { by: 'touch' }), touch([1.12, 1]))).toBe(true)
  })
})

describe('resizing', () => {
  const resize = (ids: string[], corner: [0 | 1, 0 | 1], to: Touch): Gesture =>
    followed(resizing(ids, corner, block, touch([-9, -9])) as Gesture, to, sceneOf(block, { chosen: ids }))

  it('keeps the corner across, and snaps the other to cells', () => {
    expect(resize(['s'], [1, 1], touch([2.2, 2.9]))).toMatchObject({ to: { at: [0, 0], size: [2, 3] }, fits: true })
    expect(resize(['w'], [0, 1], touch([4.8, 2.9]))).toMatchObject({ to: { at: [5, 0], size: [3, 3] }, fits: true })
  })

  it('keeps a goose twice as wide as high, and nothing smaller than a cell', () => {
    expect(resize(['g'], [1, 1], touch([7.9, 5.1]))).toMatchObject({ to: { at: [4, 4], size: [4, 2] } })
    expect(resize(['w'], [1, 1], touch([1, 0]))).toMatchObject({ to: { at: [6, 0], size: [1, 1] } })
  })

  it('begins when the corner is drawn away, not when it is pressed', () => {
    const held = resizing(['s'], [1, 1], block, touch([1.1, 1.1])) as Gesture
    expect(held).toMatchObject({ drawn: false })
    expect(followed(held, touch([1.12, 1.11]), sceneOf(block))).toMatchObject({ drawn: false, to: { size: [1, 1] } })
    expect(followed(held, touch([2.1, 1.1]), sceneOf(block))).toMatchObject({ drawn: true, to: { size: [2, 1] } })
  })

  it('sees that it has no room', () => {
    expect(resize(['s'], [1, 1], touch([4, 1]))).toMatchObject({ fits: false })
  })
})

describe('laying a run', () => {
  it('lays a unit in hand on each free cell from press to pointer, and passes over taken ones', () => {
    const laid = drag(sceneOf(block, { taking: 'square' }), touch([1.5, 0.5]), touch([4.4, 1.2])) as Extract<Gesture, { sort: 'run' }>
    expect(laid.units.map((unit) => (unit.kind === 'polygon' ? null : unit.at))).toEqual([
      [1, 0],
      [2, 0],
      [4, 0],
      [1, 1],
      [2, 1],
      [3, 1],
      [4, 1],
    ])
    expect(new Set(laid.units.map(({ id }) => id)).size).toBe(7)
  })

  it('stands larger units side by side, to the left and upwards too', () => {
    expect(runOf(block, 'goose', [6, 7], [1, 6]).map((unit) => (unit.kind === 'polygon' ? null : unit.at))).toEqual([
      [6, 7],
      [4, 7],
      [2, 7],
      [6, 6],
      [4, 6],
      [2, 6],
    ])
  })
})

describe('choosing', () => {
  it('chooses what a box touches, and adds where the hand adds', () => {
    const scene = sceneOf(block, { chosen: ['g'] })
    const box = drag(scene, touch([1.5, 1.5]), touch([3.2, 0.8])) as Extract<Gesture, { sort: 'box' }>
    expect(chosenBy(box, scene)).toEqual(['t'])
    const more = drag(scene, touch([1.5, 1.5], { add: true }), touch([3.2, 0.8])) as Extract<Gesture, { sort: 'box' }>
    expect(chosenBy(more, scene)).toEqual(['g', 't'])
  })

  it('chooses what lies with its middle in a drawn round, even from a press on a unit', () => {
    const scene = sceneOf(block, { tool: 'round' })
    const way: Point[] = [
      [0.2, 1.2],
      [-0.3, -0.3],
      [3.6, -0.4],
      [4.2, 1.3],
      [2, 0.9],
    ]
    const round = drag(scene, touch([0.4, 0.6]), ...way.map((cells) => touch(cells))) as Extract<Gesture, { sort: 'round' }>
    expect(round.sort).toBe('round')
    expect(chosenBy(round, scene)).toEqual(['s', 't'])
  })

  it('pans with a finger on empty cells, and draws a box there with a mouse', () => {
    expect(drag(sceneOf(block), touch([1.5, 5.5], { by: 'touch' }), touch([2.5, 6.5], { by: 'touch' })).sort).toBe('pan')
    expect(drag(sceneOf(block, { tool: 'box' }), touch([1.5, 5.5], { by: 'touch' }), touch([2.5, 6.5], { by: 'touch' })).sort).toBe('box')
    expect(drag(sceneOf(block), touch([1.5, 5.5]), touch([2.5, 6.5])).sort).toBe('box')
  })
})
