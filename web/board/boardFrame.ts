/** Where the block lies on the board. */
import type { Block } from '../../geometry/index.ts'
import { bordersAround, type Point } from '../document/shapes.ts'
import type { ViewState } from '../document/store.ts'
import { FINGER_MARGINS, type Frame, frameOf, type Margins } from './viewport.ts'

/** What a device can be touched with does not change while the page is open; what touches it may, and the block must not move then. */
const margins: Margins | undefined = window.matchMedia('(any-pointer: coarse)').matches ? FINGER_MARGINS : undefined

/** `size` is the board's, in pixels. */
export function boardFrame(block: Block, { zoom, pan, mode }: Pick<ViewState, 'zoom' | 'pan' | 'mode'>, size: Point): Frame {
  const extent = { columns: block.grid.columns, rows: block.grid.rows, around: bordersAround(block) }
  return frameOf(extent, size[0], size[1], zoom, pan, mode === 'wrong', margins)
}

/** The whole block in a picture so many pixels along its longer side, and the size of that picture. */
export function wholeFrame(block: Block, { mode }: Pick<ViewState, 'mode'>, pixels: number): { readonly frame: Frame; readonly size: Point } {
  const { columns, rows } = block.grid
  const around = bordersAround(block)
  const [wide, high] = [columns + 2 * around, rows + 2 * around]
  const size: Point = [(pixels * wide) / Math.max(wide, high), (pixels * high) / Math.max(wide, high)]
  return { frame: frameOf({ columns, rows, around }, ...size, 1, [0, 0], mode === 'wrong'), size }
}
