/** The ways in which a drag over the board can be meant. */
import { look, now } from '../state/store.ts'
import { said, t } from '../words/words.ts'
import type { Tool } from './hand.ts'

interface ToolWords {
  readonly tool: Tool
  readonly name: string
  readonly hint: string
  /** A path in a box from −10 to 10. */
  readonly sign: string
}

export const TOOLS: readonly ToolWords[] = [
  {
    tool: 'hand',
    name: said('Move and choose'),
    hint: said('Drag units to move them; drag over empty cells to choose.'),
    sign: 'M0 -8V8M-8 0H8M0 -8L-2.5 -5M0 -8L2.5 -5M0 8L-2.5 5M0 8L2.5 5M-8 0L-5 -2.5M-8 0L-5 2.5M8 0L5 -2.5M8 0L5 2.5',
  },
  {
    tool: 'box',
    name: said('Choose by a box'),
    hint: said('Drag a box: all units that it touches are chosen. Shift adds.'),
    sign: 'M-7 -6H-3M0 -6H4M7 -6V-3M7 0V3M7 6H3M0 6H-4M-7 6V3M-7 0V-3',
  },
  {
    tool: 'round',
    name: said('Draw round'),
    hint: said('Draw a line round units: those whose middle lies within are chosen. Shift adds.'),
    sign: 'M-6 4C-10 -2 -5 -8 2 -7C9 -6 9 2 3 4C-1 5.5 -4 3 -2 1C0 -0.5 2 2 0 7',
  },
  {
    tool: 'patch',
    name: said('Draw a patch'),
    hint: said('Press where each corner lies; press the first one again, or Enter, to close.'),
    sign: 'M-7 6L-4 -6L5 -4L7 4ZM-8.5 6A1.5 1.5 0 1 0 -5.5 6A1.5 1.5 0 1 0 -8.5 6M-5.5 -6A1.5 1.5 0 1 0 -2.5 -6A1.5 1.5 0 1 0 -5.5 -6M3.5 -4A1.5 1.5 0 1 0 6.5 -4A1.5 1.5 0 1 0 3.5 -4M5.5 4A1.5 1.5 0 1 0 8.5 4A1.5 1.5 0 1 0 5.5 4',
  },
]

export function takeTool(tool: Tool): void {
  const words = TOOLS.find((one) => one.tool === tool)
  const left = tool === 'patch' ? {} : { corners: [], cursor: now().view.cursor.map(Math.floor) as [number, number] }
  look({ tool, ...left, notice: words === undefined ? '' : t(words.hint) })
}
