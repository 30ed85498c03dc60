/**
 * The topmost layer: outlines of what is selected, images of what is dragged, the box or loop being drawn, the free patch so far, the keyboard's cursor,
 * and the handles.
 */
import { type Block, cellOf, toNumber } from '../../../geometry/index.ts'
import type { Point, Rect } from '../../document/shapes.ts'
import { UNKNOWN_COLOUR } from '../../drawing/fabricParts.ts'
import { canvasFill } from '../../drawing/fabricPattern.ts'
import { tracePolygon } from '../../drawing/tiles.ts'
import type { Handles } from '../hand/handles.ts'
import type { Guide } from '../hand/snapping.ts'
import type { Frame } from '../viewport.ts'
import type { DragImage } from './dragImages.ts'
import type { PatchPaths } from './patchPaths.ts'
import type { CanvasPen } from './stage.ts'

export interface DragOverlay {
  readonly block: Block
  /** Boxes of the selected units, in cells. */
  readonly selected: readonly Rect[]
  readonly handles: Handles | null
  readonly images: readonly DragImage[]
  /** Where what is dragged came from: covered with paper while it is away. */
  readonly left: readonly PatchPaths[]
  readonly guides: readonly Guide[]
  /** The box being drawn, and the loop; in pixels. */
  readonly box: { readonly from: Point; readonly to: Point } | null
  readonly loop: readonly Point[]
  /** The free patch so far, and where its next corner would lie; in cells. */
  readonly corners: readonly Point[]
  readonly nextCorner: Point | null
  /** The cell of the keyboard's cursor. */
  readonly cursor: Point | null
  /** The outline of the selected patch, in cells. */
  readonly patch: readonly Point[] | null
  /** What the findings point at, in cells. */
  readonly finding: Point | null
  /** Clears what is drawn so far wherever a number or mark lies on the layer below. */
  readonly clearMarks: ((pen: CanvasPen) => void) | null
  /** Lines around which edits are repeated, in cells. */
  readonly symmetry: readonly (readonly [Point, Point])[]
  readonly ink: string
  readonly paper: string
  readonly accent: string
}

const GOOD = '#2f7d6b'
const BAD = '#c22f3d'

export function drawDragOverlay(pen: CanvasPen, overlay: DragOverlay, frame: Frame): void {
  const { ink, paper, accent } = overlay
  for (const [from, to] of overlay.symmetry) drawLine(pen, frame, from, to, accent, 1.5, [12, 6, 2, 6], 0.75)
  drawLeft(pen, overlay, frame)
  strokeRects(pen, overlay.selected, frame, paper, 5, [])
  strokeRects(pen, overlay.selected, frame, ink, 2.5, [9, 4])
  if (overlay.patch !== null) {
    strokeShapes(pen, [overlay.patch], frame, paper, 5, [])
    strokeShapes(pen, [overlay.patch], frame, ink, 2.5, [])
  }
  if (overlay.cursor !== null) {
    // The keyboard's cursor: it must be seen on dark fabric as on light.
    strokeRects(pen, [{ at: overlay.cursor, size: [1, 1] }], frame, paper, 6, [])
    strokeRects(pen, [{ at: overlay.cursor, size: [1, 1] }], frame, ink, 3, [2, 5])
  }
  overlay.clearMarks?.(pen)
  for (const image of overlay.images) drawImage(pen, image, overlay.block, frame)
  for (const guide of overlay.guides) drawGuide(pen, guide, frame, accent)
  if (overlay.box !== null) drawBox(pen, overlay.box, ink)
  if (overlay.loop.length > 1) drawLoop(pen, overlay.loop, overlay)
  drawFreePatch(pen, overlay, frame)
  if (overlay.finding !== null) drawCircle(pen, frame.toPixels(...overlay.finding), 20, ink)
  if (overlay.handles !== null) drawHandles(pen, overlay.handles, ink, paper)
}

function drawLine(pen: CanvasPen, frame: Frame, a: Point, b: Point, colour: string, width: number, dash: readonly number[], alpha: number): void {
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

/** Cells by which a guide reaches beyond what it lines up. */
const BEYOND = 0.3

function drawGuide(pen: CanvasPen, { type, axis, at, from, to }: Guide, frame: Frame, colour: string): void {
  const point = (along: number): Point => (axis === 0 ? [at, along] : [along, at])
  drawLine(pen, frame, point(from - BEYOND), point(to + BEYOND), colour, 1.5, type === 'middle' ? [12, 6, 2, 6] : [], 0.85)
}

/** The loop so far, closed by a dashed line as it would be if the hand let go. */
function drawLoop(pen: CanvasPen, points: readonly Point[], { ink, paper, accent }: DragOverlay): void {
  const path = openPath(points)
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

function openPath(points: readonly Point[]): Path2D {
  const path = new Path2D()
  for (const [index, point] of points.entries()) {
    if (index === 0) path.moveTo(...point)
    else path.lineTo(...point)
  }
  return path
}

function drawFreePatch(pen: CanvasPen, { corners, nextCorner, ink, paper, accent }: DragOverlay, frame: Frame): void {
  const points = corners.map((corner) => frame.toPixels(...corner))
  const [first] = points
  if (first !== undefined) {
    const path = openPath(points)
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
    if (nextCorner !== null) drawLine(pen, frame, corners.at(-1) as Point, nextCorner, ink, 1.75, [5, 5], 0.9)
  }
  for (const [index, point] of points.entries()) dot(pen, point, index === 0 ? 7 : 4.5, index === 0 ? paper : ink, ink)
  if (nextCorner !== null) cross(pen, frame.toPixels(...nextCorner), ink, paper)
}

function dot(pen: CanvasPen, [x, y]: Point, radius: number, fill: string, ink: string): void {
  pen.beginPath()
  pen.arc(x, y, radius, 0, Math.PI * 2)
  pen.fillStyle = fill
  pen.fill()
  pen.strokeStyle = ink
  pen.lineWidth = 2
  pen.stroke()
}

function cross(pen: CanvasPen, [x, y]: Point, ink: string, paper: string): void {
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

/** Strokes a path in cells; width and dashes are in pixels. */
function stroke(pen: CanvasPen, path: Path2D, frame: Frame, colour: string, width: number, dash: readonly number[]): void {
  pen.save()
  pen.transform(...frame.matrix)
  pen.strokeStyle = colour
  pen.lineWidth = width / frame.scale
  pen.lineCap = dash.length > 0 ? 'round' : 'butt'
  pen.setLineDash(dash.map((part) => part / frame.scale))
  pen.stroke(path)
  pen.restore()
}

function strokeRects(pen: CanvasPen, rects: readonly Rect[], frame: Frame, colour: string, width: number, dash: readonly number[]): void {
  if (rects.length === 0) return
  const path = new Path2D()
  for (const { at, size } of rects) path.rect(...at, ...size)
  stroke(pen, path, frame, colour, width, dash)
}

function strokeShapes(
  pen: CanvasPen,
  shapes: readonly (readonly Point[])[],
  frame: Frame,
  colour: string,
  width: number,
  dash: readonly number[],
): void {
  const path = new Path2D()
  for (const corners of shapes) tracePolygon(path, corners)
  stroke(pen, path, frame, colour, width, dash)
}

function drawLeft(pen: CanvasPen, { left, paper, ink }: DragOverlay, frame: Frame): void {
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

function drawImage(pen: CanvasPen, { paths, by, fits }: DragImage, block: Block, frame: Frame): void {
  const scale = { cell: toNumber(cellOf(block)), pixels: frame.scale * window.devicePixelRatio }
  pen.save()
  pen.transform(...frame.matrix)
  pen.translate(...by)
  pen.globalAlpha = 0.82
  for (const { fabric, turn, path } of paths.fills) {
    const known = block.fabrics.find(({ id }) => id === fabric)
    pen.fillStyle = known === undefined ? UNKNOWN_COLOUR : canvasFill(known, 'cloth', turn, scale)
    pen.fill(path)
  }
  pen.globalAlpha = 1
  pen.strokeStyle = fits ? GOOD : BAD
  pen.lineWidth = 3 / frame.scale
  pen.setLineDash(fits ? [] : [7 / frame.scale, 5 / frame.scale])
  pen.stroke(paths.outlines)
  pen.restore()
}

function drawBox(pen: CanvasPen, { from, to }: { readonly from: Point; readonly to: Point }, ink: string): void {
  pen.save()
  pen.strokeStyle = ink
  pen.lineWidth = 1.5
  pen.setLineDash([4, 4])
  pen.strokeRect(from[0], from[1], to[0] - from[0], to[1] - from[1])
  pen.restore()
}

function drawCircle(pen: CanvasPen, [x, y]: Point, radius: number, ink: string): void {
  pen.save()
  pen.strokeStyle = ink
  pen.lineWidth = 3
  pen.beginPath()
  pen.arc(x, y, radius, 0, Math.PI * 2)
  pen.stroke()
  pen.restore()
}

function drawHandles(pen: CanvasPen, handles: Handles, ink: string, paper: string): void {
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
  pen.restore()
}
