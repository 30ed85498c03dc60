/** What the hand holds, on a sheet of its own: outlines of what is chosen, ghosts, the drawn box, the cursor, the handles. */
import { type Block, cellOf, toNumber } from '../../../geometry/index.ts'
import type { Frame } from '../viewport.ts'
import { canvasFill, UNKNOWN_COLOUR } from '../../drawing/fabricPattern.ts'
import type { Corner } from '../hand/hand.ts'
import type { PatchShape, Rect, Point } from '../../document/shapes.ts'
import type { Guide } from '../hand/snapping.ts'
import type { Pen } from './stage.ts'
import { tracePolygon } from '../../drawing/tiles.ts'

export interface Handles {
  readonly turn: Point
  readonly mirror: Point
  readonly corners: readonly { readonly at: Point; readonly corner: Corner }[]
  /** Larger under a finger. */
  readonly coarse: boolean
}

/** Pixels: how far from its middle a round handle, and one at a corner, is still pressed; under a mouse, and under a finger. */
export const reachOf = ({ coarse }: { readonly coarse: boolean }): { readonly round: number; readonly corner: number } =>
  coarse ? { round: 23, corner: 22 } : { round: 16, corner: 12 }

/** Pixels: a box smaller than this has one corner to resize it by, the farthest from where it begins. */
const ROOMY = { fine: 44, coarse: 88 }
const CORNERS: readonly Corner[] = [
  [0, 0],
  [1, 0],
  [0, 1],
  [1, 1],
]

/** Above what is chosen to turn and mirror it, at its corners to resize it. */
export function handlesOf(frame: Frame, box: Rect | null, coarse: boolean): Handles | null {
  if (box === null) return null
  const at = (corner: Corner): Point => frame.toPixels(box.at[0] + box.size[0] * corner[0], box.at[1] + box.size[1] * corner[1])
  const [[x0, y0], [x1, y1]] = [at([0, 0]), at([1, 1])]
  const middle = (x0 + x1) / 2
  const apart = coarse ? 26 : 20
  const top = Math.max(coarse ? 26 : 20, y0 - (coarse ? 42 : 30))
  const roomy = Math.min(Math.abs(x1 - x0), y1 - y0) >= (coarse ? ROOMY.coarse : ROOMY.fine)
  const corners = (roomy ? CORNERS : CORNERS.slice(3)).map((corner) => ({ corner, at: at(corner) }))
  return { turn: [middle - apart, top], mirror: [middle + apart, top], corners, coarse }
}

/** What a press at some pixels would take hold of. */
export function handleAt(handles: Handles, [x, y]: Point): 'turn' | 'mirror' | Corner | null {
  const reach = reachOf(handles)
  const near = ([hx, hy]: Point, within: number): boolean => Math.hypot(hx - x, hy - y) <= within
  if (near(handles.turn, reach.round)) return 'turn'
  if (near(handles.mirror, reach.round)) return 'mirror'
  return handles.corners.find(({ at }) => near(at, reach.corner))?.corner ?? null
}

/** Pieces as paths, made once and moved with the hand. */
export interface Carry {
  readonly fills: readonly { readonly fabric: string; readonly turn: number; readonly path: Path2D }[]
  readonly outlines: Path2D
}

/** More than this many patches are carried as their box alone. */
const MOST_CARRIED = 3000

export function carryOf(pieces: readonly PatchShape[]): Carry {
  const fills = new Map<string, Carry['fills'][number]>()
  const outlines = new Path2D()
  for (const { fabric, corners, turn = 0 } of pieces.slice(0, MOST_CARRIED)) {
    const key = `${fabric} ${turn}`
    const fill = fills.get(key) ?? { fabric, turn, path: new Path2D() }
    tracePolygon(fill.path, corners)
    tracePolygon(outlines, corners)
    fills.set(key, fill)
  }
  return { fills: [...fills.values()], outlines }
}

export interface Ghost {
  readonly carry: Carry
  /** Cells. */
  readonly by: Point
  readonly fits: boolean
}

export interface InHand {
  readonly block: Block
  readonly chosen: readonly Rect[]
  readonly handles: Handles | null
  readonly ghosts: readonly Ghost[]
  /** Where what is moved came from: covered with paper while it is away. */
  readonly left: readonly Carry[]
  readonly guides: readonly Guide[]
  /** The box that the hand draws, or the line round what it chooses; in pixels. */
  readonly drawn: { readonly from: Point; readonly to: Point } | null
  readonly round: readonly Point[]
  /** The free patch so far, and where the hand would lay its next corner; in cells. */
  readonly corners: readonly Point[]
  readonly next: Point | null
  readonly cursor: Point | null
  readonly patch: readonly Point[] | null
  readonly finding: Point | null
  /** Takes what lies below out of the outlines of what is chosen. */
  readonly clear: ((pen: Pen) => void) | null
  /** The middle of the block, where edits repeat about it. */
  readonly mirrors: readonly (readonly [Point, Point])[]
  readonly ink: string
  readonly paper: string
  readonly accent: string
}

const GOOD = '#2f7d6b'
const BAD = '#c22f3d'

export function drawHeld(pen: Pen, hand: InHand, frame: Frame): void {
  const { ink, paper, accent } = hand
  for (const [from, to] of hand.mirrors) drawLine(pen, frame, from, to, accent, 1.5, [12, 6, 2, 6], 0.75)
  drawLeft(pen, hand, frame)
  strokeRects(pen, hand.chosen, frame, paper, 5, [])
  strokeRects(pen, hand.chosen, frame, ink, 2.5, [9, 4])
  if (hand.patch !== null) {
    strokeShapes(pen, [hand.patch], frame, paper, 5, [])
    strokeShapes(pen, [hand.patch], frame, ink, 2.5, [])
  }
  if (hand.cursor !== null) {
    // The keyboard's own mark: it must be seen on dark cloth as on light.
    strokeRects(pen, [{ at: hand.cursor, size: [1, 1] }], frame, paper, 6, [])
    strokeRects(pen, [{ at: hand.cursor, size: [1, 1] }], frame, ink, 3, [2, 5])
  }
  hand.clear?.(pen)
  for (const ghost of hand.ghosts) drawGhost(pen, ghost, hand.block, frame)
  for (const guide of hand.guides) drawGuide(pen, guide, frame, accent)
  if (hand.drawn !== null) drawBox(pen, hand.drawn, ink)
  if (hand.round.length > 1) drawLoop(pen, hand.round, hand)
  drawOutline(pen, hand, frame)
  if (hand.finding !== null) drawRound(pen, frame.toPixels(...hand.finding), 20, ink)
  if (hand.handles !== null) drawHandles(pen, hand.handles, ink, paper)
}

function drawLine(pen: Pen, frame: Frame, a: Point, b: Point, colour: string, width: number, dash: readonly number[], alpha: number): void {
  pen.save()
  pen.strokeStyle = colour
  pen.globalAlpha = alpha
  pen.lineWidth = width
  pen.setLineDash([...dash])
  pen.beginPath()
  pen.moveTo(...frame.toPixels(...a))
  pen.lineTo(...frame.toPixels(...b))
  pen.stroke()
  pen.restore()
}

/** Cells by which a guide runs on beyond what it lines up. */
const BEYOND = 0.3

function drawGuide(pen: Pen, { axis, at, from, to, sort }: Guide, frame: Frame, colour: string): void {
  const spot = (along: number): Point => (axis === 0 ? [at, along] : [along, at])
  drawLine(pen, frame, spot(from - BEYOND), spot(to + BEYOND), colour, 1.5, sort === 'middle' ? [12, 6, 2, 6] : [], 0.85)
}

/** The line that the hand draws round, closed by a fainter one as it would be if it let go. */
function drawLoop(pen: Pen, points: readonly Point[], { ink, paper, accent }: InHand): void {
  const path = wayOf(points)
  pen.save()
  pen.lineJoin = 'round'
  pen.globalAlpha = 0.14
  pen.fillStyle = accent
  pen.fill(path)
  pen.globalAlpha = 1
  pen.strokeStyle = paper
  pen.lineWidth = 4
  pen.stroke(path)
  pen.strokeStyle = ink
  pen.lineWidth = 1.75
  pen.stroke(path)
  pen.setLineDash([3, 5])
  pen.beginPath()
  pen.moveTo(...(points.at(-1) as Point))
  pen.lineTo(...(points[0] as Point))
  pen.stroke()
  pen.restore()
}

function wayOf(points: readonly Point[]): Path2D {
  const path = new Path2D()
  for (const [index, point] of points.entries()) {
    if (index === 0) path.moveTo(...point)
    else path.lineTo(...point)
  }
  return path
}

function drawOutline(pen: Pen, { corners, next, ink, paper, accent }: InHand, frame: Frame): void {
  const spots = corners.map((corner) => frame.toPixels(...corner))
  const [first] = spots
  if (first !== undefined) {
    const path = wayOf(spots)
    pen.save()
    pen.lineJoin = 'round'
    pen.globalAlpha = 0.16
    pen.fillStyle = accent
    pen.fill(path)
    pen.globalAlpha = 1
    pen.strokeStyle = paper
    pen.lineWidth = 5
    pen.stroke(path)
    pen.strokeStyle = ink
    pen.lineWidth = 2.25
    pen.stroke(path)
    pen.restore()
    if (next !== null) drawLine(pen, frame, corners.at(-1) as Point, next, ink, 1.75, [5, 5], 0.9)
  }
  for (const [index, spot] of spots.entries()) dot(pen, spot, index === 0 ? 7 : 4.5, index === 0 ? paper : ink, ink)
  if (next !== null) cross(pen, frame.toPixels(...next), ink, paper)
}

function dot(pen: Pen, [x, y]: Point, radius: number, fill: string, ink: string): void {
  pen.beginPath()
  pen.arc(x, y, radius, 0, Math.PI * 2)
  pen.fillStyle = fill
  pen.fill()
  pen.strokeStyle = ink
  pen.lineWidth = 2
  pen.stroke()
}

function cross(pen: Pen, [x, y]: Point, ink: string, paper: string): void {
  for (const [colour, width] of [
    [paper, 5],
    [ink, 2],
  ] as const) {
    pen.strokeStyle = colour
    pen.lineWidth = width
    pen.beginPath()
    pen.moveTo(x - 8, y)
    pen.lineTo(x + 8, y)
    pen.moveTo(x, y - 8)
    pen.lineTo(x, y + 8)
    pen.stroke()
  }
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

function strokeShapes(pen: Pen, shapes: readonly (readonly Point[])[], frame: Frame, colour: string, width: number, dash: readonly number[]): void {
  const path = new Path2D()
  for (const corners of shapes) tracePolygon(path, corners)
  stroke(pen, path, frame, colour, width, dash)
}

function drawLeft(pen: Pen, { left, paper, ink }: InHand, frame: Frame): void {
  for (const { outlines } of left) {
    pen.save()
    pen.transform(...frame.matrix)
    pen.fillStyle = paper
    pen.fill(outlines)
    pen.restore()
    pen.globalAlpha = 0.35
    stroke(pen, outlines, frame, ink, 1, [2, 4])
    pen.globalAlpha = 1
  }
}

function drawGhost(pen: Pen, { carry, by, fits }: Ghost, block: Block, frame: Frame): void {
  const scale = { cell: toNumber(cellOf(block)), pixels: frame.scale * window.devicePixelRatio }
  pen.save()
  pen.transform(...frame.matrix)
  pen.translate(...by)
  pen.globalAlpha = 0.82
  for (const { fabric, turn, path } of carry.fills) {
    const known = block.fabrics.find(({ id }) => id === fabric)
    pen.fillStyle = known === undefined ? UNKNOWN_COLOUR : canvasFill(known, 'cloth', turn, scale)
    pen.fill(path)
  }
  pen.globalAlpha = 1
  pen.strokeStyle = fits ? GOOD : BAD
  pen.lineWidth = 3 / frame.scale
  pen.setLineDash(fits ? [] : [7 / frame.scale, 5 / frame.scale])
  pen.stroke(carry.outlines)
  pen.restore()
}

function drawBox(pen: Pen, { from, to }: { readonly from: Point; readonly to: Point }, ink: string): void {
  pen.save()
  pen.strokeStyle = ink
  pen.lineWidth = 1.5
  pen.setLineDash([4, 4])
  pen.strokeRect(from[0], from[1], to[0] - from[0], to[1] - from[1])
  pen.restore()
}

function drawRound(pen: Pen, [x, y]: Point, radius: number, ink: string): void {
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
  const radius = handles.coarse ? 22 : 15
  pen.save()
  pen.fillStyle = paper
  pen.strokeStyle = ink
  pen.lineWidth = 1.8
  for (const { at } of handles.corners) {
    const half = handles.coarse ? 9 : 5.5
    pen.beginPath()
    pen.rect(at[0] - half, at[1] - half, half * 2, half * 2)
    pen.fill()
    pen.stroke()
  }
  for (const name of ['turn', 'mirror'] as const) {
    pen.save()
    pen.translate(...handles[name])
    pen.beginPath()
    pen.arc(0, 0, radius, 0, Math.PI * 2)
    pen.fill()
    pen.stroke()
    if (handles.coarse) pen.scale(1.3, 1.3)
    pen.stroke(new Path2D(SIGNS[name]))
    pen.restore()
  }
  pen.restore()
}
