/** What a press, a drag, a tap, the wheel and a key on the board mean. All of it common practice, no source. */
import { describe, expect, it } from 'vitest'
import { type Block, findings, type Unit } from '../../../geometry/index.ts'
import { gestureOf, handle, IDLE } from '../../../web/board/hand/hand.ts'
import type { HandCommand, HandContext, HandEvent } from '../../../web/board/hand/values.ts'
import { toDecimal, type Point } from '../../../web/document/shapes.ts'
import { eveningStar } from '../../../web/document/starters/eveningStar.ts'
import { blockOf, square } from '../../help.ts'
import { cancel, contextOf, dragged, dropped, key, move, play, press, release, tapped } from './board.ts'

const goose: Unit = { id: 'g', kind: 'goose', at: [4, 4], size: [2, 1], fabrics: { goose: 'a', leftWing: 'b', rightWing: 'b' } }
const block = blockOf(8, 8, [square('s', [0, 0]), square('t', [3, 0]), square('w', [6, 0], [2, 2]), goose])
const board = (more: Partial<HandContext> = {}): HandContext => contextOf(block, more)
const touch = { pointerType: 'touch' } as const
const add = { add: true } as const

describe('a tap', () => {
  it('selects the patch under it', () => {
    expect(tapped(board(), [0.5, 0.5])).toEqual([{ type: 'selectPatch', ids: ['s'], patch: { unit: 's', name: 'patch' }, add: false }])
    expect(tapped(board({ selected: ['t'] }), [5, 4.5])).toEqual([
      { type: 'selectPatch', ids: ['g'], patch: { unit: 'g', name: 'goose' }, add: false },
    ])
  })

  it('adds a unit with Shift or with the button for it, and a second one takes it out again', () => {
    const patch = { unit: 's', name: 'patch' }
    expect(tapped(board({ selected: ['t'] }), [0.5, 0.5], add)).toEqual([{ type: 'selectPatch', ids: ['t', 's'], patch, add: true }])
    expect(tapped(board({ selected: ['t', 's'] }), [0.5, 0.5], add)).toEqual([{ type: 'selectPatch', ids: ['t'], patch, add: true }])
    expect(tapped(board({ selected: ['t'], adding: true }), [0.5, 0.5])).toEqual([{ type: 'selectPatch', ids: ['t', 's'], patch, add: true }])
  })

  it('on an empty cell ends the selection, unless it adds', () => {
    expect(tapped(board({ selected: ['s'] }), [2.5, 6.5])).toEqual([{ type: 'select', ids: [] }])
    expect(tapped(board({ selected: ['s'] }), [2.5, 6.5], add)).toEqual([{ type: 'select', ids: ['s'] }])
  })

  it('places the unit in hand on an empty cell, and still selects a patch', () => {
    expect(tapped(board({ unitInHand: 'goose' }), [2.5, 6.5])).toEqual([{ type: 'placeAround', kind: 'goose', at: [2.5, 6.5] }])
    expect(tapped(board({ unitInHand: 'goose' }), [0.5, 0.5])).toMatchObject([{ type: 'selectPatch', ids: ['s'] }])
  })

  it('recolours with the fabric in hand, and with Shift selects', () => {
    expect(tapped(board({ fabricInHand: 'b' }), [0.5, 0.5])).toEqual([{ type: 'recolourAt', fabric: 'b', at: [0.5, 0.5] }])
    expect(tapped(board({ fabricInHand: 'b' }), [0.5, 0.5], add)).toMatchObject([{ type: 'selectPatch', ids: ['s'] }])
  })

  it('adds a corner of a free patch, snapped', () => {
    expect(tapped(board({ tool: 'patch' }), [2.1, 5.9])).toEqual([{ type: 'addCorner', corner: [2, 6] }])
    expect(tapped(board({ tool: 'patch' }), [2.4, 5.9], { alt: true })).toEqual([{ type: 'addCorner', corner: [2.5, 6] }])
  })

  it('with the right button does nothing', () => {
    expect(play(board(), [press([0.5, 0.5], { button: 2 }), release([0.5, 0.5])]).commands).toEqual([])
  })

  it('ends a preview before it means anything else', () => {
    expect(handle(IDLE, press([0.5, 0.5]), board()).commands).toEqual([{ type: 'endPreview' }])
    expect(handle(IDLE, press([0.5, 0.5], touch), board()).commands, 'a finger puts the keyboard on the board').toEqual([
      { type: 'endPreview' },
      { type: 'focusBoard' },
    ])
  })
})

describe('the mark of a meeting', () => {
  const report = findings(eveningStar)
  const first = report.meetings[0]
  if (first === undefined) throw new Error('the star has meetings')
  const at: Point = [toDecimal(first.at[0]), toDecimal(first.at[1])]
  const star = (more: Partial<HandContext> = {}): HandContext => contextOf(eveningStar, { report, showsMeetings: true, ...more })
  const indexOf = ([command]: readonly HandCommand[]): Point | null => {
    const meeting = command?.type === 'showMeeting' ? report.meetings[command.index] : undefined
    return meeting === undefined ? null : [toDecimal(meeting.at[0]), toDecimal(meeting.at[1])]
  }

  it('shows the meeting when it is tapped, a few pixels off too', () => {
    expect(indexOf(tapped(star(), at))).toEqual(at)
    expect(indexOf(tapped(star(), [at[0] + 0.06, at[1] - 0.06]))).toEqual(at)
    expect(tapped(star(), [at[0] + 0.3, at[1] + 0.2])[0]?.type).toBe('selectPatch')
  })

  it('is no target where it cannot be seen, or where a tool or a fabric is in use', () => {
    expect(tapped(star({ showsMeetings: false }), at)[0]?.type).toBe('selectPatch')
    expect(tapped(star({ tool: 'box' }), at)[0]?.type).toBe('selectPatch')
    expect(tapped(star({ fabricInHand: 'night' }), at)[0]?.type).toBe('recolourAt')
  })

  it('lets a drag that starts on it move the unit below', () => {
    expect(dragged(star(), [at[0] + 0.02, at[1] + 0.02], [[at[0] + 1, at[1] + 1]])?.type).toBe('move')
  })
})

describe('a press that moves', () => {
  it('becomes a drag sooner for a mouse than for a finger, which rolls', () => {
    expect(dragged(board(), [0.5, 0.5], [[0.54, 0.5]])?.type).toBe('press')
    expect(dragged(board(), [0.5, 0.5], [[0.57, 0.5]])?.type).toBe('move')
    expect(dragged(board(), [0.5, 0.5], [[0.57, 0.5]], touch)?.type).toBe('press')
    expect(dragged(board(), [0.5, 0.5], [[0.62, 0.5]], touch)?.type).toBe('move')
  })

  it('on empty cells draws a box with a mouse and pans with a finger', () => {
    expect(dragged(board(), [1.5, 5.5], [[2.5, 6.5]])?.type).toBe('box')
    expect(dragged(board(), [1.5, 5.5], [[2.5, 6.5]], touch)?.type).toBe('pan')
    expect(dragged(board({ tool: 'box' }), [1.5, 5.5], [[2.5, 6.5]], touch)?.type, 'but not with the tool for boxes').toBe('box')
  })

  it('pans with the middle button, and with Space held, over units too', () => {
    expect(play(board({ pan: [5, 5] }), [press([0.5, 0.5], { button: 1 }), move([1.5, 1])]).commands).toEqual([
      { type: 'setView', zoom: 1, pan: [105, 55] },
    ])
    const held = play(board(), [key(' ')])
    expect(held.handled).toBe(true)
    expect(play(board(), [press([0.5, 0.5]), move([0.5, 1.5])], held.hand).commands).toEqual([{ type: 'setView', zoom: 1, pan: [0, 100] }])
    const lifted = play(board(), [{ type: 'keyUp', key: ' ' }], held.hand)
    expect(play(board(), [press([0.5, 0.5]), move([0.5, 1.5])], lifted.hand).hand.gesture?.type).toBe('move')
  })
})

describe('moving', () => {
  it('snaps to whole cells, and to halves where the hand or the button asks', () => {
    expect(dropped(board(), [0.5, 0.5], [[1.4, 4.2]])).toEqual([{ type: 'moveUnits', ids: ['s'], by: [1, 4] }])
    expect(dropped(board(), [0.5, 0.5], [[1.9, 6.6]], { alt: true })).toEqual([{ type: 'moveUnits', ids: ['s'], by: [1.5, 6] }])
    expect(dropped(board({ halfCells: true }), [0.5, 0.5], [[1.9, 6.6]])).toEqual([{ type: 'moveUnits', ids: ['s'], by: [1.5, 6] }])
  })

  it('takes the whole selection along, and only the pressed unit where that is not selected', () => {
    const by = [0, 2]
    expect(dropped(board({ selected: ['s', 't'] }), [0.5, 0.5], [[0.5, 2.5]])).toEqual([{ type: 'moveUnits', ids: ['s', 't'], by }])
    expect(dropped(board({ selected: ['t'] }), [0.5, 0.5], [[0.5, 2.5]])).toEqual([{ type: 'moveUnits', ids: ['s'], by }])
    expect(dropped(board({ selected: ['t'] }), [0.5, 0.5], [[0.5, 2.5]], add)).toEqual([{ type: 'moveUnits', ids: ['t', 's'], by }])
  })

  it('selects what it takes along, once, when the drag starts', () => {
    const { commands } = play(board({ selected: ['t'] }), [press([0.5, 0.5]), move([0.5, 2.5]), move([0.5, 3.5])])
    expect(commands).toEqual([{ type: 'select', ids: ['s'] }])
  })

  it('sees where there is no room', () => {
    expect(dragged(board(), [4.5, 4.5], [[6.5, 1.5]])).toMatchObject({ fits: false, swap: null, inTheWay: 'w' })
    expect(dragged(board(), [0.5, 0.5], [[-1, 0.5]])).toMatchObject({ fits: false, swap: null, inTheWay: null })
  })

  it('swaps places with a unit of the same size, and refuses any other', () => {
    expect(dropped(board(), [0.5, 0.5], [[3.4, 0.6]])).toEqual([{ type: 'swapUnits', one: 's', other: 't' }])
    expect(dropped(board(), [0.5, 0.5], [[6.4, 0.6]])).toEqual([{ type: 'refuseSwap' }])
    expect(dragged(board({ selected: ['s', 'g'] }), [0.5, 0.5], [[3.4, 0.6]]), 'two do not swap with one').toMatchObject({ swap: null })
  })

  it('tries its place out where nothing is in the way but the edge of the grid, so that it can be said why not', () => {
    expect(dropped(board(), [0.5, 0.5], [[-1, 0.5]])).toEqual([{ type: 'moveUnits', ids: ['s'], by: [-1, 0] }])
  })
})

describe('a drag that is interrupted', () => {
  const start = play(board(), [press([0.5, 0.5]), move([0.5, 2.5])])

  it('is forgotten on Escape, and its release does nothing', () => {
    const escaped = play(board(), [key('Escape')], start.hand)
    expect([escaped.hand.gesture, escaped.handled]).toEqual([null, true])
    expect(play(board(), [move([0.5, 3.5]), release([0.5, 3.5])], escaped.hand).commands).toEqual([])
  })

  it('is forgotten when the browser takes the pointer away', () => {
    expect(play(board(), [cancel()], start.hand)).toMatchObject({ hand: { gesture: null }, commands: [] })
  })

  it('ends when its units are changed under it, by undo or from another tab', () => {
    const undone = blockOf(8, 8, [square('t', [3, 0])])
    const context = contextOf(undone)
    expect(gestureOf(start.hand, undone)).toBeNull()
    expect(play(context, [move([0.5, 3.5]), release([0.5, 3.5])], start.hand)).toMatchObject({ hand: { gesture: null }, commands: [] })
    const boxed = play(board(), [press([1.5, 5.5]), move([2.5, 6.5])])
    expect(gestureOf(boxed.hand, undone)?.type, 'a box holds no units').toBe('box')
  })

  it('gives way to two fingers, and their lifting neither drops it nor undoes', () => {
    const dragging = play(board(), [press([0.5, 0.5], touch), move([0.5, 2.5], touch)])
    const two = play(board(), [press([4, 4], { ...touch, id: 2 })], dragging.hand)
    expect(two.hand.gesture).toMatchObject({ type: 'pinch', fingers: 2, since: null })
    expect(play(board(), [release([4, 4], { ...touch, id: 2 }), release([0.5, 2.5], touch)], two.hand).commands).toEqual([])
  })
})

describe('two fingers', () => {
  const down: HandEvent[] = [press([2, 4], { ...touch, id: 1, time: 1000 }), press([6, 4], { ...touch, id: 2, time: 1010 })]
  const lift: HandEvent[] = [release([2, 4], { ...touch, id: 1, time: 1100 }), release([6, 4], { ...touch, id: 2, time: 1110 })]

  it('that tap undo, three redo, four nothing', () => {
    expect(play(board(), [...down, ...lift]).commands).toEqual([{ type: 'undo' }])
    const third = press([4, 6], { ...touch, id: 3, time: 1020 })
    expect(play(board(), [...down, third, ...lift]).commands).toEqual([{ type: 'redo' }])
    expect(play(board(), [...down, third, press([4, 2], { ...touch, id: 4 }), ...lift]).commands).toEqual([])
  })

  it('that move apart zoom around their middle and undo nothing', () => {
    const spread: HandEvent[] = [move([1.5, 4], { ...touch, id: 1 }), move([6.5, 4], { ...touch, id: 2 }), move([1, 4], { ...touch, id: 1 })]
    const { commands } = play(board(), [...down, ...spread, ...lift])
    expect(commands.every(({ type }) => type === 'setView')).toBe(true)
    expect(commands.at(-1)).toMatchObject({ zoom: expect.closeTo(5.5 / 4.5), pan: [expect.anything(), 0] })
  })

  it('on a handle or a patch do what two fingers do, not what the first of them pressed', () => {
    const { commands } = play(board({ selected: ['s'] }), [
      press([0.5, 0.5], { ...touch, time: 1000 }),
      press([4, 4], { ...touch, id: 2, time: 1010 }),
      release([4, 4], { ...touch, id: 2, time: 1100 }),
      release([0.5, 0.5], { ...touch, time: 1110 }),
    ])
    expect(commands).toEqual([{ type: 'undo' }])
  })
})

describe('the wheel and the zoom keys', () => {
  it('keep what lies under the pointer where it is', () => {
    const [command] = play(board({ zoom: 2, pan: [30, 0] }), [{ type: 'wheel', at: [500, 300], delta: -100, fine: false }]).commands
    if (command?.type !== 'setView') throw new Error('the wheel zooms')
    const before = [(500 - 400 - 30) / 2, (300 - 400) / 2]
    expect((500 - 400 - command.pan[0]) / command.zoom).toBeCloseTo(before[0] as number)
    expect((300 - 400 - command.pan[1]) / command.zoom).toBeCloseTo(before[1] as number)
    expect(command.zoom).toBeGreaterThan(2)
  })

  it('stop at the least and the most', () => {
    const wheel = (delta: number): HandEvent => ({ type: 'wheel', at: [400, 400], delta, fine: true })
    expect(play(board(), [wheel(-9999)]).commands).toMatchObject([{ zoom: 24 }])
    expect(play(board(), [wheel(9999)]).commands).toMatchObject([{ zoom: 0.3 }])
  })

  it('zoom around the middle of the board', () => {
    expect(play(board(), [key('+')]).commands).toEqual([{ type: 'setView', zoom: 1.2, pan: [0, 0] }])
    expect(play(board(), [key('-')]).commands).toMatchObject([{ zoom: 1 / 1.2 }])
  })
})

describe('resizing', () => {
  const resize = (unit: string, from: Point, to: Point): readonly HandCommand[] => dropped(board({ selected: [unit] }), from, [to])

  it('keeps the corner across, and snaps the other to cells', () => {
    expect(resize('s', [1, 1], [2.2, 2.9])).toEqual([{ type: 'resizeUnits', ids: ['s'], to: { at: [0, 0], size: [2, 3] } }])
    expect(resize('w', [6, 2], [4.8, 2.9])).toEqual([{ type: 'resizeUnits', ids: ['w'], to: { at: [5, 0], size: [3, 3] } }])
  })

  it('keeps a goose twice as wide as high, and nothing smaller than a cell', () => {
    expect(resize('g', [6, 5], [7.9, 5.1])).toMatchObject([{ to: { at: [4, 4], size: [4, 2] } }])
    expect(resize('w', [8, 2], [1, 0])).toMatchObject([{ to: { at: [6, 0], size: [1, 1] } }])
  })

  it('sees that it has no room', () => {
    expect(dragged(board({ selected: ['s'] }), [1, 1], [[4, 1]])).toMatchObject({ type: 'resize', fits: false })
  })

  it('starts when the corner is dragged; a tap on it selects what lies under it', () => {
    expect(dragged(board({ selected: ['s'] }), [1.02, 1.02], [[1.04, 1.03]])).toMatchObject({ dragged: false })
    expect(tapped(board({ selected: ['s'] }), [0.98, 0.98])).toMatchObject([{ type: 'selectPatch', ids: ['s'] }])
  })
})

describe('a fabric in hand', () => {
  const context = board({ fabricInHand: 'b' })

  it('recolours every patch it is drawn across, each once, however fast', () => {
    expect(
      dropped(
        context,
        [0.5, 0.5],
        [
          [6.5, 0.5],
          [0.5, 0.5],
        ],
      ),
    ).toEqual([
      {
        type: 'recolourPatches',
        fabric: 'b',
        over: [
          { unit: 's', name: 'patch' },
          { unit: 't', name: 'patch' },
          { unit: 'w', name: 'patch' },
        ],
      },
    ])
  })

  it('moves nothing; but with Shift units move', () => {
    expect(dragged(context, [0.5, 0.5], [[0.5, 3]])?.type).toBe('recolour')
    expect(dragged(context, [0.5, 0.5], [[0.5, 3]], add)?.type).toBe('move')
  })
})

describe('a unit in hand', () => {
  const places = (commands: readonly HandCommand[]): unknown =>
    commands.flatMap((command) => (command.type === 'placeUnits' ? command.units.map((unit) => (unit.kind === 'polygon' ? null : unit.at)) : []))

  it('is laid on every free cell of a drag, and passes over taken ones', () => {
    const laid = dropped(board({ unitInHand: 'square' }), [1.5, 0.5], [[4.4, 1.2]])
    expect(places(laid)).toEqual([
      [1, 0],
      [2, 0],
      [4, 0],
      [1, 1],
      [2, 1],
      [3, 1],
      [4, 1],
    ])
    const ids = laid.flatMap((command) => (command.type === 'placeUnits' ? command.units.map(({ id }) => id) : []))
    expect(new Set(ids).size).toBe(7)
  })

  it('is one large square over the cells of a drag that are all free; while the hand adds, many small ones', () => {
    const square = board({ unitInHand: 'square' })
    expect(dropped(square, [1.5, 4.5], [[3.4, 6.2]])).toMatchObject([{ type: 'placeUnits', units: [{ kind: 'square', at: [1, 4], size: [3, 3] }] }])
    expect(dropped(square, [3.5, 6.5], [[2.4, 5.2]]), 'from any corner').toMatchObject([{ units: [{ at: [2, 5], size: [2, 2] }] }])
    expect(places(dropped(square, [1.5, 4.5], [[2.4, 5.2]], { add: true }))).toEqual([
      [1, 4],
      [2, 4],
      [1, 5],
      [2, 5],
    ])
  })

  it('is laid as it was turned and flipped', () => {
    const inHand = board({ unitInHand: 'half-rectangle', unitTurn: 1, unitMirror: true })
    expect(dropped(inHand, [0.5, 6.5], [[1.4, 6.6]])).toMatchObject([{ units: [{ at: [0, 6], size: [2, 1], turn: 1, mirror: true }] }])
  })

  it('does not stop a drag on a unit from moving that', () => {
    expect(dragged(board({ unitInHand: 'square' }), [0.5, 0.5], [[0.5, 3.5]])?.type).toBe('move')
  })
})

describe('selecting an area', () => {
  const loop: Point[] = [
    [0.2, 1.2],
    [-0.3, -0.3],
    [3.6, -0.4],
    [4.2, 1.3],
    [2, 0.9],
  ]

  it('takes the units that a box touches, and adds them where the hand adds', () => {
    const context = board({ selected: ['g'] })
    expect(dropped(context, [1.5, 1.5], [[3.2, 0.8]])).toEqual([{ type: 'selectArea', ids: ['t'] }])
    expect(dropped(context, [1.5, 1.5], [[3.2, 0.8]], add)).toEqual([{ type: 'selectArea', ids: ['g', 't'] }])
  })

  it('takes the units whose middle lies in a loop, even from a press on a unit', () => {
    expect(dropped(board({ tool: 'loop' }), [0.4, 0.6], loop)).toEqual([{ type: 'selectArea', ids: ['s', 't'] }])
    expect(dropped(board({ tool: 'loop', selected: ['g', 't'] }), [0.4, 0.6], loop, add)).toEqual([{ type: 'selectArea', ids: ['g', 't', 's'] }])
  })

  it('starts a box on a unit with the tool for it', () => {
    expect(dropped(board({ tool: 'box' }), [0.5, 0.5], [[3.5, 0.6]])).toEqual([{ type: 'selectArea', ids: ['s', 't'] }])
  })
})

describe('drawing a free patch', () => {
  const drawing = board({ tool: 'patch' })

  it('shows the next corner under a mouse, and none once it has left the board', () => {
    const over = play(drawing, [move([2.1, 3.1])])
    expect(over.hand.hover?.cells).toEqual([2.1, 3.1])
    expect(play(drawing, [{ type: 'leave' }], over.hand).hand.hover).toBeNull()
  })

  it('puts a corner where a finger lifts, and shows none after it', () => {
    const { hand, commands } = play(drawing, [press([1, 1], touch), move([2.1, 5.9], touch), release([2.1, 5.9], touch)])
    expect(commands).toEqual([{ type: 'addCorner', corner: [2, 6] }])
    expect(hand.hover).toBeNull()
  })

  it('pans when a mouse drags', () => {
    expect(dragged(drawing, [1, 1], [[2, 1]])?.type).toBe('pan')
  })

  it('leaves Space to the drawing', () => {
    expect(play(drawing, [key(' ')])).toMatchObject({ hand: { panKey: false }, commands: [{ type: 'key', command: { type: 'addCorner' } }] })
  })
})

describe('a drop from the tray', () => {
  const unit = (kind: 'goose' | 'square', at: Point | null, half = false): HandEvent => ({ type: 'trayDrop', item: { type: 'unit', kind, half }, at })

  it('places a unit with its middle under the pointer, on whole cells unless halves are asked for', () => {
    expect(play(board(), [unit('goose', [320, 540])]).commands).toEqual([{ type: 'placeUnit', kind: 'goose', at: [2, 5], turn: 0, mirror: false }])
    expect(play(board(), [unit('square', [320, 610], true)]).commands).toMatchObject([{ at: [2.5, 5.5] }])
    expect(play(board(), [unit('square', [399, 650])]).commands, 'near the middle of the block').toMatchObject([{ at: [3, 6] }])
    expect(play(board(), [unit('square', [399, 650], true)]).commands, 'on the middle').toMatchObject([{ at: [3.5, 6] }])
  })

  it('keeps the turn of the unit in hand, but not for another unit', () => {
    const turned = board({ unitInHand: 'goose', unitTurn: 1, unitMirror: true })
    expect(play(turned, [unit('goose', [340, 510])]).commands).toMatchObject([{ at: [3, 4], turn: 1, mirror: true }])
    expect(play(turned, [unit('square', [350, 550])]).commands).toMatchObject([{ turn: 0, mirror: false }])
  })

  it('replaces a unit of the same size', () => {
    expect(play(board(), [unit('square', [50, 50])]).commands).toEqual([{ type: 'replaceUnit', kind: 'square', unit: 's' }])
    expect(play(board(), [unit('square', [700, 100])]).commands, 'this one is larger').toMatchObject([{ type: 'placeUnit' }])
  })

  it('recolours the patch under a fabric', () => {
    expect(play(board(), [{ type: 'trayDrop', item: { type: 'fabric', fabric: 'b' }, at: [50, 50] }]).commands).toEqual([
      { type: 'recolourAt', fabric: 'b', at: [0.5, 0.5] },
    ])
  })

  it('off the board does nothing', () => {
    expect(play(board(), [unit('square', null)])).toMatchObject({ commands: [], handled: false })
  })
})

describe('the cursor of a mouse', () => {
  const over = (cells: Point, more: Partial<HandContext> = {}): unknown => handle(IDLE, move(cells), board(more)).commands

  it('shows what a press would do there', () => {
    const shown = (cells: Point, more: Partial<HandContext> = {}): unknown => (over(cells, more) as { cursor: string }[])[0]?.cursor
    expect([shown([0.5, 0.5]), shown([2, 6]), shown([2, 6], { unitInHand: 'goose' }), shown([0.5, 0.5], { fabricInHand: 'a' })]).toEqual([
      'grab',
      'default',
      'copy',
      'cell',
    ])
    expect(shown([0.5, 0.5], { tool: 'box' })).toBe('crosshair')
    const selected = { selected: ['w'] }
    expect([shown([6, 0], selected), shown([8, 0], selected)]).toEqual(['nwse-resize', 'nesw-resize'])
    // The handle itself stands beside the corner, 15 of the 100 pixels of a cell.
    expect([shown([5.77, 0], selected), shown([8.23, 0], selected), shown([6, 0.2], selected)]).toEqual(['nwse-resize', 'nesw-resize', 'grab'])
  })

  it('is not there for a finger', () => {
    expect(handle(IDLE, move([0.5, 0.5], touch), board()).commands).toEqual([])
  })
})

describe('keys', () => {
  it('are passed on as commands, or left to the browser', () => {
    expect(play(board(), [key('t')]).commands).toEqual([{ type: 'key', command: { type: 'turn' } }])
    expect(play(board(), [key('Tab')])).toMatchObject({ commands: [], handled: false })
    expect(play(board(), [key('c', { control: true })]), 'the clipboard is the browser’s').toMatchObject({ handled: false })
  })

  it('let go of everything on Escape where nothing is dragged', () => {
    expect(play(board(), [key('Escape')]).commands).toEqual([{ type: 'key', command: { type: 'letGo' } }])
  })
})

// A block that is not the document's: what a fix would make of it.
const tried: Block = blockOf(8, 8, [square('s', [5, 5])])

it('presses what it sees while a fix is tried', () => {
  expect(tapped(board({ block: tried }), [5.5, 5.5])).toMatchObject([{ type: 'selectPatch', ids: ['s'] }])
})
