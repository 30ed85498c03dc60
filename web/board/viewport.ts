/**
 * Cells to pixels and back: the only file that knows both.
 *
 * In      the grid with its borders (cells), the board's size (pixels), zoom and pan, and whether the wrong side is up.
 * Out     a frame with both ways; the wrong side is mirrored left for right, as the block lies on the ironing board.
 */
export interface Frame {
  /** Pixels to a cell. */
  readonly scale: number
  readonly toPixels: (x: number, y: number) => [number, number]
  readonly toCells: (x: number, y: number) => [number, number]
  /** The same as a matrix: what is drawn in cells lands in pixels. */
  readonly matrix: readonly [number, number, number, number, number, number]
}

export interface Extent {
  readonly columns: number
  readonly rows: number
  /** Borders in cells, all round. */
  readonly around: number
}

/** Room left beside the block, and above and below it, in pixels. */
type Margins = readonly [across: number, down: number]
const MARGINS: Margins = [44, 44]
/** Where a finger works: handles it can press stand above the block, and what it holds is named below. */
export const FINGER_MARGINS: Margins = [44, 60]
/** Pixels to a cell, however many cells there are. */
const LEAST_FIT = 0.25

export function frameOf(
  extent: Extent,
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
  const seen = (x: number): number => (mirrored ? extent.columns - x : x)
  return {
    scale,
    toPixels: (x, y) => [left + seen(x) * scale, top + y * scale],
    toCells: (x, y) => [seen((x - left) / scale), (y - top) / scale],
    matrix: mirrored ? [-scale, 0, 0, scale, left + extent.columns * scale, top] : [scale, 0, 0, scale, left, top],
  }
}
