/** Where the quilt lies on its board: inches or centimetres to pixels and back, and the cell under a point. */
import type { Quilt, QuiltCell, QuiltLayout } from '../../../geometry/index.ts'
import type { Point } from '../../document/shapes.ts'
import { reachAround } from '../../drawing/quiltPainting.ts'

export interface QuiltFrame {
  /** Pixels to an inch or centimetre. */
  readonly scale: number
  readonly left: number
  readonly top: number
  readonly toPixels: (at: Point) => Point
  /** The cell under a point in pixels; null beside the quilt. A gap belongs to the cell before it. */
  readonly cellAt: (at: Point) => QuiltCell | null
  /** Left, top, width and height of a box of cells, in pixels. */
  readonly boxOf: (at: QuiltCell, size: QuiltCell) => readonly [number, number, number, number]
}

/** Pixels left free around the quilt. */
const MARGIN = 30

/** `size` is the board's, in pixels. At zoom 1 the quilt fits it. */
export function quiltFrame(quilt: Quilt, layout: QuiltLayout, size: Point, zoom: number, pan: Point): QuiltFrame {
  const around = reachAround(quilt, layout)
  const { cell, gap } = layout
  const [wide, high] = layout.size
  const fit = Math.min((size[0] - 2 * MARGIN) / (wide + 2 * around), (size[1] - 2 * MARGIN) / (high + 2 * around))
  const scale = Math.max(0.01, fit) * zoom
  const [left, top] = [size[0] / 2 - (wide * scale) / 2 + pan[0], size[1] / 2 - (high * scale) / 2 + pan[1]]
  const index = (pixel: number, start: number, axis: 0 | 1): number => Math.floor((pixel - start) / scale / (cell[axis] + gap))
  return {
    scale,
    left,
    top,
    toPixels: ([x, y]) => [left + x * scale, top + y * scale],
    cellAt: ([x, y]) => {
      const [column, row] = [index(x, left, 0), index(y, top, 1)]
      return column < 0 || row < 0 || column >= quilt.grid.columns || row >= quilt.grid.rows ? null : [column, row]
    },
    boxOf: ([column, row], [across, down]) => [
      left + column * (cell[0] + gap) * scale,
      top + row * (cell[1] + gap) * scale,
      (across * cell[0] + (across - 1) * gap) * scale,
      (down * cell[1] + (down - 1) * gap) * scale,
    ],
  }
}
