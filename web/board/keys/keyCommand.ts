/**
 * What a key means on the board.
 *
 * In      the key with its modifiers, the tool, and what is selected and in hand.
 * Out     a command as a plain value; null where the key means nothing here and is left to the browser.
 */
import type { Point } from '../../document/shapes.ts'
import type { DragTool } from '../../document/store.ts'
import { TOOLS } from '../tools.ts'
import type { KeyCommand, KeyPress } from './values.ts'

interface KeyContext {
  readonly tool: DragTool
  readonly selected: readonly string[]
  readonly unitInHand: string | null
  /** Pressing arrows are shown. */
  readonly pressing: boolean
  /** Only the scale of the wrong side is negative across. */
  readonly frame: { readonly matrix: readonly number[] }
}

const ARROWS: Readonly<Record<string, Point>> = { arrowleft: [-1, 0], arrowright: [1, 0], arrowup: [0, -1], arrowdown: [0, 1] }

/** Keys that mean the same whatever else is pressed. */
const PLAIN: Readonly<Record<string, KeyCommand>> = {
  '+': { type: 'zoom', by: 1.2 },
  '=': { type: 'zoom', by: 1.2 },
  '-': { type: 'zoom', by: 1 / 1.2 },
  '0': { type: 'fitToBoard' },
  m: { type: 'mirror' },
  d: { type: 'duplicate' },
  delete: { type: 'remove' },
  backspace: { type: 'remove' },
  x: { type: 'swap' },
  r: { type: 'replace' },
  c: { type: 'selectBetween' },
  h: { type: 'toggleHalves' },
  f: { type: 'recolourAtCursor' },
  escape: { type: 'letGo' },
  ...Object.fromEntries(TOOLS.map(({ tool }, index) => [String(index + 1), { type: 'useTool', tool }])),
}

/** Keys that mean something else while a free patch is drawn. */
const DRAWING: Readonly<Record<string, KeyCommand>> = {
  ' ': { type: 'addCorner' },
  p: { type: 'addCorner' },
  enter: { type: 'closeOutline' },
  backspace: { type: 'removeCorner' },
}

/** Keys that mean something while pressing arrows are shown; units stay as they are. */
const PRESSING: Readonly<Record<string, KeyCommand>> = {
  enter: { type: 'pressSeam', how: 'next' },
  t: { type: 'pressSeam', how: 'turn' },
  o: { type: 'pressSeam', how: 'open' },
  delete: { type: 'pressSeam', how: 'proposed' },
  backspace: { type: 'pressSeam', how: 'proposed' },
}
const ALWAYS: ReadonlySet<string> = new Set(['+', '=', '-', '0', 'escape'])

export function keyCommand(press: KeyPress, context: KeyContext): KeyCommand | null {
  const { shift, alt, control } = press
  const key = press.key.toLowerCase()
  const arrow = ARROWS[key]
  if (arrow !== undefined && context.pressing && !shift) return alt ? null : { type: 'stepSeam', by: arrow }
  if (arrow !== undefined) {
    const mirrored = (context.frame.matrix[0] ?? 1) < 0
    return { type: 'step', by: [mirrored ? -arrow[0] : arrow[0], arrow[1]], onScreen: arrow, shift, alt }
  }
  if (control) return context.pressing && key === 'a' ? null : withControl(key, shift)
  if (context.pressing) return PRESSING[key] ?? (ALWAYS.has(key) ? (PLAIN[key] ?? null) : null)
  const drawing = context.tool === 'patch' ? DRAWING[key] : undefined
  return drawing ?? withShift(key, shift, context) ?? PLAIN[key] ?? null
}

function withControl(key: string, shift: boolean): KeyCommand | null {
  if (key === 'z') return { type: shift ? 'redo' : 'undo' }
  if (key === 'y') return { type: 'redo' }
  return key === 'a' ? { type: 'selectAll' } : null
}

/** Keys that mean something else with Shift, or while a unit is in the hand. */
function withShift(key: string, shift: boolean, { unitInHand }: KeyContext): KeyCommand | null {
  switch (key) {
    case 't':
      if (unitInHand !== null) return { type: shift ? 'halfTurnInHand' : 'turnInHand' }
      return { type: shift ? 'halfTurn' : 'turn' }
    case 'm':
      return unitInHand === null ? null : { type: 'flipInHand' }
    case 'b':
      return { type: shift ? 'mirrorBlock' : 'turnBlock' }
    case 'p':
      return { type: shift ? 'fillToCursor' : 'placeAtCursor' }
    case 'enter':
      return { type: 'selectAtCursor', add: shift }
    default:
      return null
  }
}
