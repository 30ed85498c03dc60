/** The tools: what a drag over the board means. */
import { label } from '../words/words.ts'
import type { DragTool } from '../document/store.ts'

interface ToolWords {
  readonly tool: DragTool
  readonly name: string
  /** Below the icon. */
  readonly caption: string
  readonly hint: string
  /** An SVG path in a box from −10 to 10. */
  readonly icon: string
}

export const TOOLS: readonly ToolWords[] = [
  {
    tool: 'hand',
    name: label('Select and move'),
    caption: label('Select'),
    hint: label('Drag units to move them. Drag over empty squares to select.'),
    // A thimble.
    icon: 'M-5.2 6L-4.2 -3.6A4.3 4.3 0 0 1 4.2 -3.6L5.2 6M-6.5 6H6.5V8.2H-6.5ZM-1.9 -3.4V-3.3M1.9 -3.4V-3.3M0 -0.4V-0.3M-2.2 2.6V2.7M2.2 2.6V2.7',
  },
  {
    tool: 'box',
    name: label('Select with a box'),
    caption: label('Box'),
    hint: label('Drag a box to select every unit it touches. Hold Shift to add.'),
    // A square of running stitches, and a pin through its corner.
    icon: 'M-8 -3V0M-8 3V8H-5M-2 8H1M4 8H5V5M5 2V-1M-8 -5H-6M-3 -5H0M-1 0L6 -7M8 -7.6A1.9 1.9 0 1 0 4.2 -7.6A1.9 1.9 0 1 0 8 -7.6',
  },
  {
    tool: 'loop',
    name: label('Select with a loop'),
    caption: label('Loop'),
    hint: label('Draw a loop to select every unit whose middle is inside. Hold Shift to add.'),
    // A loop of thread, its needle at the end.
    icon: 'M1.5 5C-7 6.5 -9.5 0 -6.5 -4.2C-3 -9 7.5 -8.5 8 -2.2C8.3 1.2 5 3.2 1.8 1.6M1.8 1.6L-4.6 8.6M1.8 1.6L0.9 4.2M1.8 1.6L-0.7 2.8',
  },
  {
    tool: 'patch',
    name: label('Draw a patch'),
    caption: label('Draw'),
    hint: label('Click each corner. To close, click the first one again or press Enter.'),
    // A patch with its seam allowance around it.
    icon: 'M-8.5 8L-5 -8L6.5 -6L8.5 5.5ZM-4.8 4.4L-4.3 2.2M-3.8 0.2L-3.4 -1.8M-2.9 -4.2L-0.8 -3.8M1.4 -3.4L3.6 -3M4 -0.8L4.4 1.2M4.6 3L2.6 3.3M0.4 3.7L-2 4',
  },
]
