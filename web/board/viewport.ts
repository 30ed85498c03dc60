/**
 * Cells to pixels and back.
 *
 * In      the grid with its borders (cells), the size of the board (pixels), zoom and pan, and whether the wrong side is shown.
 * Out     a frame that converts both ways; the wrong side is mirrored left to right, as the block lies on the ironing board.
 */
import type { Point } from '../document/shapes.ts'

export interface Frame {
  /** Pixels to a cell. */
  readonly scale: number
  readonly toPixels: (x: number, y: number) => [number, number]
  readonly toCells: (x: number, y: number) => [number, number]
  /** The same as a canvas matrix: what is drawn in cells lands in pixels. */
  readonly matrix: readonly [number, number, number, number, number, number]
}

interface GridExtent {
  readonly columns: number
  readonly rows: number
  /** The width of the borders, in cells. */
  readonly around: number
}

/** Space left beside the block, and above and below it, in pixels. */
export type Margins = readonly [across: number, down: number]
const MARGINS: Margins = [44, 44]
/** For fingers: their larger handles stand above the block, and the unit in hand is named below it. */
export const FINGER_MARGINS: Margins = [44, 60]
/** Pixels to a cell, at least, however many cells there are. */
const LEAST_FIT = 0.25

/** `width` and `height` are the board's, in pixels; at zoom 1 the block fits it. */
export function frameOf(
  extent: GridExtent,
  width: number,
  height: number,
  zoom: number,
  [panX, panY]: readonly [number, number],
  mirrored: boolean,
  [across, down]: Margins = MARGINS,
): Frame {
  const [wide, high] = [extent.columns + 2 * extent.around, extent.rows + 2 * extent.around]
  const fit = Math.max(LEAST_FIT, Math.min((width - 2 * across) / wide, (height - 2 * down) / high))
  const scale = fit * zoom
  const left = width / 2 + panX - (extent.columns * scale) / 2
  const top = height / 2 + panY - (extent.rows * scale) / 2
  const shown = (x: number): number => (mirrored ? extent.columns - x : x)
  return {
    scale,
    toPixels: (x, y) => [left + shown(x) * scale, top + y * scale],
    toCells: (x, y) => [shown((x - left) / scale), (y - top) / scale],
    matrix: mirrored ? [-scale, 0, 0, scale, left + extent.columns * scale, top] : [scale, 0, 0, scale, left, top],
  }
}

/** The part of the block that is in sight, in cells. */
export function visibleCells(frame: Frame, [width, height]: Point): { readonly low: Point; readonly high: Point } {
  const [a, b] = [frame.toCells(0, 0), frame.toCells(width, height)]
  return { low: [Math.min(a[0], b[0]), Math.min(a[1], b[1])], high: [Math.max(a[0], b[0]), Math.max(a[1], b[1])] }
}
