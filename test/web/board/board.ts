/** A board without a screen for the tests of the hand: a hundred pixels to a cell, and events by the cells that they are in. */
import type { Block } from '../../../geometry/index.ts'
import { handle, IDLE } from '../../../web/board/hand/hand.ts'
import type { HandCommand, HandState, HandContext, HandEvent, PointerInput } from '../../../web/board/hand/values.ts'
import type { KeyPress } from '../../../web/board/keys/values.ts'
import type { Point } from '../../../web/document/shapes.ts'

const SCALE = 100

const FRAME: HandContext['frame'] = {
  scale: SCALE,
  toPixels: (x, y) => [x * SCALE, y * SCALE],
  toCells: (x, y) => [x / SCALE, y / SCALE],
  matrix: [SCALE, 0, 0, SCALE, 0, 0],
}

export const contextOf = (block: Block, more: Partial<HandContext> = {}): HandContext => ({
  block,
  document: block,
  report: null,
  showsMeetings: false,
  pressing: false,
  seam: null,
  selected: [],
  tool: 'hand',
  unitInHand: null,
  unitTurn: 0,
  unitMirror: false,
  fabricInHand: null,
  halfCells: false,
  adding: false,
  frame: FRAME,
  size: [800, 800],
  zoom: 1,
  pan: [0, 0],
  ...more,
})

const pointer = (cells: Point, more: Partial<PointerInput>): PointerInput => ({
  id: 1,
  at: [cells[0] * SCALE, cells[1] * SCALE],
  pointerType: 'mouse',
  alt: false,
  add: false,
  ...more,
})

interface More extends Partial<PointerInput> {
  readonly button?: number
  readonly time?: number
}

export const press = (cells: Point, { button = 0, time = 0, ...more }: More = {}): HandEvent => ({
  type: 'press',
  pointer: pointer(cells, more),
  button,
  time,
})
export const move = (cells: Point, more: Partial<PointerInput> = {}): HandEvent => ({ type: 'move', pointer: pointer(cells, more) })
export const release = (cells: Point = [0, 0], { time = 100, ...more }: More = {}): HandEvent => ({
  type: 'release',
  pointer: pointer(cells, more),
  time,
})
export const cancel = (more: Partial<PointerInput> = {}): HandEvent => ({ type: 'cancel', pointer: pointer([0, 0], more) })
export const key = (name: string, more: Partial<KeyPress> = {}): HandEvent => ({
  type: 'keyDown',
  press: { key: name, shift: false, alt: false, control: false, ...more },
})

export interface Played {
  readonly hand: HandState
  /** All commands but those that only show something: the cursor, the end of a preview. */
  readonly commands: readonly HandCommand[]
  /** Of the last event. */
  readonly handled: boolean
}

/** Plays events one after the other, from a hand that rests or from where another play ended. */
export function play(context: HandContext, events: readonly HandEvent[], from: HandState = IDLE): Played {
  let [hand, handled] = [from, true]
  const commands: HandCommand[] = []
  for (const event of events) {
    const result = handle(hand, event, context)
    ;({ hand, handled } = result)
    commands.push(...result.commands.filter(({ type }) => type !== 'showCursor' && type !== 'endPreview' && type !== 'focusBoard'))
  }
  return { hand, commands, handled }
}

/** A press, moves, and the gesture as it stands at the last of them. */
export const dragged = (context: HandContext, from: Point, way: readonly Point[], more: Partial<PointerInput> = {}): HandState['gesture'] =>
  play(context, [press(from, more), ...way.map((cells) => move(cells, more))]).hand.gesture

/** The same drag, let go: what it does. A drag of units selects them first. */
export const dropped = (context: HandContext, from: Point, way: readonly Point[], more: Partial<PointerInput> = {}): readonly HandCommand[] =>
  play(context, [press(from, more), ...way.map((cells) => move(cells, more)), release(way.at(-1), more)]).commands.filter(
    ({ type }) => type !== 'select',
  )

/** What a press without a drag does. */
export const tapped = (context: HandContext, cells: Point, more: Partial<PointerInput> = {}): readonly HandCommand[] =>
  play(context, [press(cells, more), release(cells, more)]).commands
