/** What a hand does on the board: each state of a gesture, and where things come to lie. All of it common practice, no source. */
import { describe, expect, it } from 'vitest'
import { boxOf } from '../../geometry/index.ts'
import type { Block, Unit } from '../../geometry/index.ts'
import { carried, chosenBy, followed, type Gesture, landed, pressed, resizing, type Scene, type Touch } from '../../web/canvas/hand.ts'
import { runOf } from '../../web/canvas/newUnit.ts'
import type { Spot } from '../../web/canvas/shapes.ts'
import { snapMove } from '../../web/canvas/snapping.ts'
import { blockOf, square } from '../help.ts'

const SCALE = 100

const touch = (cells: Spot, more: Partial<Touch> = {}): Touch => ({
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
    expect(landed('goose', [3.2, 5.4], false, sceneOf(block)).by).toEqual([2, 5])
    expect(landed('square', [3.2, 6.1], true, sceneOf(block)).by).toEqual([2.5, 5.5])
    expect(landed('square', [3.99, 6.5], false, sceneOf(block)).by, 'the middle of the block is within reach').toEqual([3.5, 6])
  })
})

describe('resizing', () => {
  const resize = (ids: string[], corner: [0 | 1, 0 | 1], to: Touch): Gesture =>
    followed(resizing(ids, corner, block) as Gesture, to, sceneOf(block, { chosen: ids }))

  it('keeps the corner across, and snaps the other to cells', () => {
    expect(resize(['s'], [1, 1], touch([2.2, 2.9]))).toMatchObject({ to: { at: [0, 0], size: [2, 3] }, fits: true })
    expect(resize(['w'], [0, 1], touch([4.8, 2.9]))).toMatchObject({ to: { at: [5, 0], size: [3, 3] }, fits: true })
  })

  it('keeps a goose twice as wide as high, and nothing smaller than a cell', () => {
    expect(resize(['g'], [1, 1], touch([7.9, 5.1]))).toMatchObject({ to: { at: [4, 4], size: [4, 2] } })
    expect(resize(['w'], [1, 1], touch([1, 0]))).toMatchObject({ to: { at: [6, 0], size: [1, 1] } })
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
    const way: Spot[] = [
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
