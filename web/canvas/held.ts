/** What the hand holds, on a sheet of its own: outlines of what is chosen, ghosts, the drawn box, the cursor, the handles. */
import { type Block, cellOf, toNumber } from '../../geometry/index.ts'
import type { Frame } from './place.ts'
import { fillOf, UNKNOWN } from './prints.ts'
import type { Piece, Rect, Spot } from './shapes.ts'
import type { Pen } from './stage.ts'
import { outline } from './tiles.ts'

export interface Handles {
  readonly turn: Spot
  readonly mirror: Spot
}

/** Pixels: the reach of a handle or a mark. */
export const REACH = 16

/** In pixels, above the chosen units. */
export function handlesOf(frame: Frame, box: Rect | null): Handles | null {
  if (box === null) return null
  const [x0, y0] = frame.toPixels(...box.at)
  const [x1] = frame.toPixels(box.at[0] + box.size[0], box.at[1])
  const middle = (x0 + x1) / 2
  const top = Math.max(20, y0 - 24)
  return { turn: [middle - 20, top], mirror: [middle + 20, top] }
}

export interface InHand {
  readonly block: Block
  readonly chosen: readonly Rect[]
  readonly handles: Handles | null
  readonly ghost: { readonly pieces: readonly Piece[]; readonly fits: boolean } | null
  /** Where what is moved came from: covered with paper while it is away. */
  readonly left: readonly Piece[]
  readonly drawn: { readonly from: Spot; readonly to: Spot } | null
  readonly cursor: Spot | null
  readonly patch: readonly Spot[] | null
  readonly finding: Spot | null
  readonly ink: string
  readonly paper: string
}

const GOOD = '#2f7d6b'
const BAD = '#c22f3d'

export function drawHeld(pen: Pen, hand: InHand, frame: Frame): void {
  const { ink, paper } = hand
  drawLeft(pen, hand, frame)
  strokeRects(pen, hand.chosen, frame, paper, 5, [])
  strokeRects(pen, hand.chosen, frame, ink, 2.5, [9, 4])
  if (hand.patch !== null) strokeShapes(pen, [hand.patch], frame, ink, 2.5, [])
  drawGhost(pen, hand, frame)
  if (hand.drawn !== null) drawBox(pen, hand.drawn, ink)
  if (hand.cursor !== null) strokeRects(pen, [{ at: hand.cursor, size: [1, 1] }], frame, ink, 3, [2, 5])
  if (hand.finding !== null) drawRound(pen, frame.toPixels(...hand.finding), 20, ink)
  if (hand.handles !== null) drawHandles(pen, hand.handles, ink, paper)
}

/** Strokes in cells under the frame's matrix, with a width and dashes in pixels. */
function stroke(pen: Pen, path: Path2D, frame: Frame, colour: string, width: number, dash: readonly number[]): void {
  pen.save()
  pen.transform(...frame.matrix)
  pen.strokeStyle = colour
  pen.lineWidth = width / frame.scale
  pen.lineCap = dash.length > 0 ? 'round' : 'butt'
  pen.setLineDash(dash.map((part) => part / frame.scale))
  pen.stroke(path)
  pen.restore()
}

function strokeRects(pen: Pen, rects: readonly Rect[], frame: Frame, colour: string, width: number, dash: readonly number[]): void {
  if (rects.length === 0) return
  const path = new Path2D()
  for (const { at, size } of rects) path.rect(...at, ...size)
  stroke(pen, path, frame, colour, width, dash)
}

function strokeShapes(pen: Pen, shapes: readonly (readonly Spot[])[], frame: Frame, colour: string, width: number, dash: readonly number[]): void {
  const path = new Path2D()
  for (const corners of shapes) outline(path, corners)
  stroke(pen, path, frame, colour, width, dash)
}

function drawLeft(pen: Pen, { left, paper, ink }: InHand, frame: Frame): void {
  if (left.length === 0) return
  const path = new Path2D()
  for (const { corners } of left) outline(path, corners)
  pen.save()
  pen.transform(...frame.matrix)
  pen.fillStyle = paper
  pen.fill(path)
  pen.restore()
  pen.globalAlpha = 0.35
  stroke(pen, path, frame, ink, 1, [2, 4])
  pen.globalAlpha = 1
}

function drawGhost(pen: Pen, { ghost, block }: InHand, frame: Frame): void {
  if (ghost === null) return
  pen.save()
  pen.transform(...frame.matrix)
  pen.globalAlpha = 0.8
  const scale = { cell: toNumber(cellOf(block)), pixels: frame.scale * window.devicePixelRatio }
  for (const { fabric, corners, turn } of ghost.pieces) {
    const known = block.fabrics.find(({ id }) => id === fabric)
    pen.fillStyle = known === undefined ? UNKNOWN : fillOf(known, 'cloth', turn ?? 0, scale)
    pen.beginPath()
    outline(pen, corners)
    pen.fill()
  }
  pen.restore()
  const shapes = ghost.pieces.map(({ corners }) => corners)
  strokeShapes(pen, shapes, frame, ghost.fits ? GOOD : BAD, 3, ghost.fits ? [] : [7, 5])
}

function drawBox(pen: Pen, { from, to }: { readonly from: Spot; readonly to: Spot }, ink: string): void {
  pen.save()
  pen.strokeStyle = ink
  pen.lineWidth = 1.5
  pen.setLineDash([4, 4])
  pen.strokeRect(from[0], from[1], to[0] - from[0], to[1] - from[1])
  pen.restore()
}

function drawRound(pen: Pen, [x, y]: Spot, radius: number, ink: string): void {
  pen.save()
  pen.strokeStyle = ink
  pen.lineWidth = 3
  pen.beginPath()
  pen.arc(x, y, radius, 0, Math.PI * 2)
  pen.stroke()
  pen.restore()
}

const SIGNS = { turn: 'M-6 2A6 6 0 1 1 1 6M1 2L1 10L7 6Z', mirror: 'M0 -8V8M-3 -5L-9 4H-3ZM3 -5L9 4H3Z' } as const

function drawHandles(pen: Pen, handles: Handles, ink: string, paper: string): void {
  for (const name of ['turn', 'mirror'] as const) {
    pen.save()
    pen.translate(...handles[name])
    pen.beginPath()
    pen.arc(0, 0, 15, 0, Math.PI * 2)
    pen.fillStyle = paper
    pen.fill()
    pen.strokeStyle = ink
    pen.lineWidth = 1.7
    pen.stroke()
    pen.stroke(new Path2D(SIGNS[name]))
    pen.restore()
  }
}
