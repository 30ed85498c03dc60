/** What keys do on the board: every patch can be reached, and what is said names things as the rest of the page does. Common practice, no source. */
import { beforeEach, describe, expect, it } from 'vitest'
import type { Block, Unit } from '../../../geometry/index.ts'
import { patchesInCell } from '../../../web/board/cellPatches.ts'
import { keyCommand } from '../../../web/board/keys/keyCommand.ts'
import { runKeyCommand } from '../../../web/board/keys/runKeyCommand.ts'
import type { KeyPress } from '../../../web/board/keys/values.ts'
import { newHistory } from '../../../web/document/history.ts'
import { getState, openHistory, setView } from '../../../web/document/store.ts'
import { PATCH_NAMES } from '../../../web/words/unitWords.ts'
import { blockOf, square } from '../../help.ts'
import { contextOf } from './board.ts'

const press = (key: string, more: Partial<KeyPress> = {}): KeyPress => ({ key, shift: false, alt: false, control: false, ...more })

/** As many strips in one cell, upright or level. */
function stripsOf(count: number, turn: 0 | 1): Unit {
  const fabrics = Object.fromEntries(Array.from({ length: count }, (_, index) => [`strip${index + 1}`, 'a']))
  return { id: 'strips', kind: 'strips', at: [1, 1], size: [1, 1], turn, fabrics } as Unit
}

const goose: Unit = { id: 'g', kind: 'goose', at: [0, 0], size: [2, 1], fabrics: { goose: 'a', leftWing: 'a', rightWing: 'a' } }

/** Presses a key on the board as it is. */
function type(key: string, more: Partial<KeyPress> = {}): void {
  const { history, view } = getState()
  const command = keyCommand(press(key, more), contextOf(history.block, { tool: view.tool, selected: view.selected }))
  if (command === null || command.type === 'zoom' || command.type === 'stepSeam' || command.type === 'pressSeam')
    throw new Error(`${key} means nothing here`)
  runKeyCommand(command)
}

const open = (block: Block): void => openHistory(newHistory(block))

describe('the patches of a cell', () => {
  const names = (block: Block, cell: readonly [number, number]): string[] => patchesInCell(block, cell).map(({ name }) => name)

  it.each([2, 5, 12])('are all there, of %i strips, whichever way they run', (count) => {
    for (const turn of [0, 1] as const) {
      const found = names(blockOf(3, 3, [stripsOf(count, turn)]), [1, 1])
      expect([...found].sort()).toEqual(Object.keys(stripsOf(count, turn).fabrics).sort())
    }
  })

  it('begin with the one in the middle and go on row by row', () => {
    expect(names(blockOf(3, 3, [goose]), [0, 0])).toEqual(['leftWing', 'goose'])
    expect(names(blockOf(3, 3, [goose]), [1, 0])).toEqual(['rightWing', 'goose'])
    const level = names(blockOf(3, 3, [stripsOf(12, 0)]), [1, 1])
    const rest = level.slice(1).map((name) => Number(name.replace('strip', '')))
    expect(rest.every((number, index) => index === 0 || number > (rest[index - 1] as number))).toBe(true)
  })

  it('are not those of the next cell, which only touch it', () => {
    expect(names(blockOf(3, 3, [square('a', [0, 1]), square('b', [1, 1]), square('c', [1, 2])]), [1, 1])).toEqual(['patch'])
    expect(patchesInCell(blockOf(3, 3, [square('a', [0, 1])]), [1, 1])).toEqual([])
  })

  it('are found where a free patch with a notch reaches into the cell', () => {
    const corners = [
      [0, 0],
      [3, 0],
      [3, 3],
      ['5/2', 3],
      ['3/2', '1/2'],
      [0, 3],
    ] as const
    const notched = { id: 'f', kind: 'polygon', corners, fabrics: { patch: 'a' } } as unknown as Unit
    expect(names(blockOf(3, 3, [notched]), [0, 0])).toEqual(['patch'])
    expect(names(blockOf(3, 3, [notched]), [2, 2]), 'the notch takes a part of this cell').toEqual(['patch'])
    expect(names(blockOf(3, 3, [notched]), [1, 2]), 'and all of this one').toEqual([])
  })
})

describe('the keyboard', () => {
  beforeEach(() => open(blockOf(3, 3, [goose, stripsOf(12, 0)])))

  it('reaches and recolours each of twelve strips in one cell', () => {
    setView({ cursor: [1, 1], fabricInHand: 'b' })
    for (let strip = 0; strip < 12; strip++) {
      type('Enter')
      type('f')
    }
    const strips = getState().history.block.units.find(({ id }) => id === 'strips')
    expect(Object.values(strips?.fabrics ?? {})).toEqual(Array.from({ length: 12 }, () => 'b'))
  })

  it('names a patch by its name on the page, never by its name in the file', () => {
    setView({ cursor: [0, 0], fabricInHand: 'b' })
    type('Enter')
    type('f')
    const { notice } = getState().view
    expect(notice).toContain(PATCH_NAMES.leftWing)
    expect(notice).not.toContain('leftWing')
    expect(notice).toMatch(/^Flying goose, /)
  })

  it('says that nothing is selected where Enter lets go, and that nothing is there only where it did nothing', () => {
    setView({ cursor: [0, 0] })
    type('Enter')
    setView({ cursor: [2, 2] })
    type('Enter')
    expect(getState().view).toMatchObject({ selected: [], notice: 'Nothing selected.' })
    type('Enter')
    expect(getState().view.notice).toBe('There’s no unit here.')
  })
})

describe('a key', () => {
  const block = blockOf(3, 3, [goose])
  const means = (key: string, more: Partial<KeyPress> = {}, context = {}): unknown => keyCommand(press(key, more), contextOf(block, context))

  it('turns what is selected, half round with Shift, and with nothing selected the unit in hand', () => {
    expect(means('t')).toEqual({ type: 'turn' })
    expect(means('T', { shift: true })).toEqual({ type: 'halfTurn' })
    expect(means('t', {}, { unitInHand: 'goose' })).toEqual({ type: 'turnInHand' })
    expect(means('t', {}, { unitInHand: 'goose', selected: ['g'] }), 'the hand comes before what is selected').toEqual({ type: 'turnInHand' })
    expect(means('T', { shift: true }, { unitInHand: 'goose' })).toEqual({ type: 'halfTurnInHand' })
    expect(means('m', {}, { unitInHand: 'goose', selected: ['g'] })).toEqual({ type: 'flipInHand' })
    expect(means('m', {}, { selected: ['g'] })).toEqual({ type: 'mirror' })
  })

  it('undoes and redoes with Ctrl, and leaves what it does not know to the browser', () => {
    expect([means('z', { control: true }), means('Z', { control: true, shift: true }), means('y', { control: true })]).toEqual([
      { type: 'undo' },
      { type: 'redo' },
      { type: 'redo' },
    ])
    expect([means('r', { control: true }), means('v', { control: true }), means('F6'), means('Tab')]).toEqual([null, null, null, null])
  })

  it('walks as the arrow points on the screen, also over the mirrored wrong side', () => {
    expect(means('ArrowLeft')).toMatchObject({ type: 'step', by: [-1, 0], onScreen: [-1, 0] })
    const frame = { ...contextOf(block).frame, matrix: [-100, 0, 0, 100, 300, 0] }
    expect(means('ArrowLeft', {}, { frame })).toMatchObject({ by: [1, 0], onScreen: [-1, 0] })
  })

  it('draws while a free patch is drawn', () => {
    const drawing = { tool: 'patch' }
    expect([means('Enter', {}, drawing), means('Backspace', {}, drawing), means('p', {}, drawing)]).toEqual([
      { type: 'closeOutline' },
      { type: 'removeCorner' },
      { type: 'addCorner' },
    ])
    expect([means('Enter'), means('Backspace')]).toEqual([{ type: 'selectAtCursor', add: false }, { type: 'remove' }])
  })
})
