/**
 * What some views draw over the fabric: its layers, the seam allowances, the quilting thread. In pixels.
 *
 * A new view adds its painter to `OVER_PATCHES`, which is drawn before the seams, or to `OVER_SEAMS`.
 */
import {
  type Block,
  type Findings,
  flatColour,
  type IronedSheet,
  type Layered,
  needleAt,
  numberedStops,
  timedPoints,
} from '../../../geometry/index.ts'
import type { ViewMode, Stitching } from '../../document/store.ts'
import { layerColour } from '../../drawing/layerColours.ts'
import type { Frame } from '../viewport.ts'
import { type Point, pointOf } from '../../document/shapes.ts'
import type { CanvasPen } from './stage.ts'
import { wrongSideDrawing } from '../../views/wrongSide.ts'
import { paint } from '../../drawing/paint.ts'

/** What lies on the board, and how it is shown. */
export interface FabricScene {
  readonly block: Block
  /** null until the findings are known. */
  readonly report: Findings | null
  readonly mode: ViewMode
  /** The quilting lines, and how far they are stitched. */
  readonly stitching: Stitching | null
  /** The block by layers of fabric; empty until they are computed. */
  readonly cells: Layered['cells']
  /** The pieces of fabric as they lie on the wrong side; null until they are computed. */
  readonly wrongSide: readonly IronedSheet[] | null
  readonly ink: string
  readonly paper: string
}

type Overlay = (pen: CanvasPen, scene: FabricScene, frame: Frame) => void

/** Drawn after the patches, under the seams. */
export const OVER_PATCHES: Readonly<Partial<Record<ViewMode, Overlay>>> = { layers: drawLayers, wrong: drawWrongSide }
/** Drawn last. */
export const OVER_SEAMS: Readonly<Partial<Record<ViewMode, Overlay>>> = { layers: drawThickest, wrong: drawFans, quilting: drawStitching }

/** Traces a closed outline, given in cells. */
export function tracePath(pen: Pick<CanvasPen, 'moveTo' | 'lineTo' | 'closePath'>, corners: readonly Point[], frame: Frame): void {
  corners.forEach(([x, y], index) => {
    const [px, py] = frame.toPixels(x, y)
    if (index === 0) pen.moveTo(px, py)
    else pen.lineTo(px, py)
  })
  pen.closePath()
}

function drawLayers(pen: CanvasPen, { cells }: FabricScene, frame: Frame): void {
  const paths = new Map<number, Path2D>()
  for (const { poly, layers } of cells) {
    const path = paths.get(layers) ?? new Path2D()
    const corners: Point[] = []
    for (let i = 0; i < poly.length; i += 2) corners.push([poly[i] as number, poly[i + 1] as number])
    tracePath(path, corners, frame)
    paths.set(layers, path)
  }
  for (const [layers, path] of [...paths].sort(([a], [b]) => a - b)) {
    pen.fillStyle = layerColour(layers)
    pen.fill(path)
    pen.strokeStyle = pen.fillStyle
    pen.lineWidth = 0.6
    pen.stroke(path)
  }
}

/** Every piece of fabric to scale, as it lies on the ironing board; until that is known, nothing over the patches. */
function drawWrongSide(pen: CanvasPen, { block, report, wrongSide, ink, paper }: FabricScene, frame: Frame): void {
  if (report === null || wrongSide === null) return
  const colours = new Map(block.fabrics.map((fabric) => [fabric.id, flatColour(fabric)]))
  paint(pen, wrongSideDrawing(wrongSide, report, colours), { scale: frame.scale, toPixels: frame.toPixels, ink, paper })
}

function drawThickest(pen: CanvasPen, { report, ink, paper }: FabricScene, frame: Frame): void {
  if (report?.bulk == null) return
  const [x, y] = frame.toPixels(...report.bulk.at)
  pen.save()
  pen.strokeStyle = paper
  pen.lineWidth = 5
  pen.beginPath()
  pen.arc(x, y, 15, 0, Math.PI * 2)
  pen.stroke()
  pen.strokeStyle = ink
  pen.lineWidth = 2
  pen.stroke()
  badge(pen, [x + 17, y - 17], String(report.bulk.most), ink, paper)
  pen.restore()
}

/** The thread is drawn on pale fabric in every theme. */
const DARK = '#2b2320'
const PALE = '#fffaf2'

/** The thread so far with its numbered stops, and the needle; what is still to be stitched is a faint line under it. */
function drawStitching(pen: CanvasPen, { stitching, ink, paper }: FabricScene, frame: Frame): void {
  if (stitching === null) return
  const timed = timedPoints([...stitching.routes, ...stitching.fills])
  const length = (timed.at(-1)?.at ?? 0) * stitching.part
  const needle = needleAt(timed, length)
  const all = new Path2D()
  const stitched = new Path2D()
  timed.forEach(({ line, place, at }, index) => {
    const begins = index === 0 || timed[index - 1]?.line !== line
    for (const path of at <= length ? [all, stitched] : [all]) {
      if (begins) path.moveTo(...frame.toPixels(...place))
      else path.lineTo(...frame.toPixels(...place))
    }
  })
  if (needle !== null && timed[needle.toward - 1]?.line === needle.line) stitched.lineTo(...frame.toPixels(...needle.place))
  pen.save()
  pen.lineJoin = 'round'
  pen.lineCap = 'round'
  for (const [path, colour, width, dash, alpha] of [
    [all, DARK, 1.5, [], 0.25],
    [stitched, PALE, 5, [], 1],
    [stitched, '#8f3a1f', 2.5, [5, 4], 1],
  ] as const) {
    pen.globalAlpha = alpha
    pen.strokeStyle = colour
    pen.lineWidth = width
    pen.setLineDash([...dash])
    pen.stroke(path)
  }
  pen.setLineDash([])
  for (const { at, numbers } of numberedStops(stitching.routes)) badge(pen, frame.toPixels(...at), numbers.join(' · '), ink, paper)
  if (needle !== null && stitching.part < 1) drawNeedle(pen, frame.toPixels(...needle.place))
  pen.restore()
}

function drawNeedle(pen: CanvasPen, [x, y]: Point): void {
  pen.fillStyle = DARK
  pen.strokeStyle = PALE
  pen.lineWidth = 2
  pen.beginPath()
  pen.moveTo(x, y)
  pen.lineTo(x + 8, y - 26)
  pen.lineTo(x + 13, y - 24)
  pen.closePath()
  pen.stroke()
  pen.fill()
}

/** A number in a small circle, longer for several numbers. */
function badge(pen: CanvasPen, [x, y]: Point, text: string, ink: string, paper: string): void {
  const half = Math.max(11, 3.2 * text.length + 4)
  pen.beginPath()
  pen.roundRect(x - half, y - 11, half * 2, 22, 11)
  pen.fillStyle = paper
  pen.fill()
  pen.strokeStyle = ink
  pen.lineWidth = 2
  pen.stroke()
  pen.fillStyle = ink
  pen.font = '600 12px Inter, sans-serif'
  pen.textAlign = 'center'
  pen.textBaseline = 'middle'
  pen.fillText(text, x, y + 0.5)
}

/** Where seam allowances can be fanned around a point: a ring of four arrows that turn one way. */
function drawFans(pen: CanvasPen, { report, ink, paper }: FabricScene, frame: Frame): void {
  const radius = Math.min(17, Math.max(11, frame.scale * 0.2))
  pen.save()
  for (const { at, spin } of report?.meetings ?? []) {
    if (spin !== true) continue
    const [x, y] = frame.toPixels(...pointOf(at))
    for (const [colour, width] of [
      [paper, 6],
      [ink, 2],
    ] as const) {
      pen.strokeStyle = colour
      pen.fillStyle = colour
      pen.lineWidth = width
      for (let quarter = 0; quarter < 4; quarter++) fanArrow(pen, x, y, radius, (quarter * Math.PI) / 2, width)
    }
  }
  pen.restore()
}

function fanArrow(pen: CanvasPen, x: number, y: number, radius: number, from: number, width: number): void {
  const to = from + Math.PI / 3
  pen.beginPath()
  pen.arc(x, y, radius, from, to)
  pen.stroke()
  const [tx, ty] = [x + Math.cos(to) * radius, y + Math.sin(to) * radius]
  const [fx, fy] = [-Math.sin(to), Math.cos(to)]
  const size = 3 + width * 0.6
  pen.beginPath()
  pen.moveTo(tx + fx * size * 1.5, ty + fy * size * 1.5)
  pen.lineTo(tx - fy * size, ty + fx * size)
  pen.lineTo(tx + fy * size, ty - fx * size)
  pen.closePath()
  pen.fill()
}
