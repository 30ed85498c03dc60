/**
 * The arrow of a pressed seam: one glyph on the board, in the views, in lists and on buttons. It lies across the seam and points to the side that both
 * allowances are pressed to; where they lie open it points both ways. The maker's own choice stands on a pale disc with a ring, so that it can be told
 * from what the app proposes by its shape too.
 */
import type { Point } from '../document/shapes.ts'
import type { PathPen } from './viewDrawing.ts'

/** Outlines in a box from −10 to 10, pointing along x. */
export const ARROW: readonly Point[] = [
  [-9, -1.9],
  [1.5, -1.9],
  [1.5, -6.2],
  [9.5, 0],
  [1.5, 6.2],
  [1.5, 1.9],
  [-9, 1.9],
]
export const OPEN_ARROW: readonly Point[] = [
  [-9.8, 0],
  [-3.2, -5.4],
  [-3.2, -1.9],
  [3.2, -1.9],
  [3.2, -5.4],
  [9.8, 0],
  [3.2, 5.4],
  [3.2, 1.9],
  [-3.2, 1.9],
  [-3.2, 5.4],
]

interface PressArrow {
  /** Pixels. */
  readonly at: Point
  /** The direction it points in, of length one. */
  readonly way: Point
  readonly open: boolean
  /** It is the maker's own choice. */
  readonly asked: boolean
  /** Pixels from its middle to its tip. */
  readonly size: number
}

/** Fabric looks the same on a light and on a dark page, so what is painted on it has fixed colours. */
const INK = '#2b2320'
const PALE = '#fffaf2'
const OWN = '#8f3a1f'

type ArrowPen = PathPen &
  Pick<CanvasRenderingContext2D, 'arc' | 'beginPath' | 'fill' | 'stroke' | 'fillStyle' | 'strokeStyle' | 'lineWidth' | 'lineJoin'>

export function drawPressArrow(pen: ArrowPen, { at: [x, y], way: [nx, ny], open, asked, size }: PressArrow): void {
  pen.lineJoin = 'round'
  const scale = size / 10
  if (asked) {
    pen.beginPath()
    pen.arc(x, y, size * 1.28, 0, Math.PI * 2)
    pen.fillStyle = PALE
    pen.fill()
    pen.strokeStyle = OWN
    pen.lineWidth = Math.max(1.5, size * 0.14)
    pen.stroke()
  }
  pen.beginPath()
  ;(open ? OPEN_ARROW : ARROW).forEach(([px, py], index) => {
    const [dx, dy] = [px * scale, py * scale]
    const place: Point = [x + dx * nx - dy * ny, y + dx * ny + dy * nx]
    if (index === 0) pen.moveTo(...place)
    else pen.lineTo(...place)
  })
  pen.closePath()
  pen.strokeStyle = PALE
  pen.lineWidth = asked ? 0.5 : 3
  pen.stroke()
  pen.fillStyle = asked ? OWN : INK
  pen.fill()
}
