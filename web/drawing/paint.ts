/** Paints a drawing on a canvas: what each type of part looks like. Lines and marks have the same size at any zoom; fabric is scaled. */
import type { Point } from '../document/shapes.ts'
import { UNKNOWN_COLOUR } from './fabricParts.ts'
import { MARKS } from './marks.ts'
import { drawPressArrow } from './pressArrow.ts'
import { type ViewDrawing, type DrawingPart, type PathPen, tracePart, type PartType } from './viewDrawing.ts'

export interface PaintContext {
  /** Pixels to a cell. */
  readonly scale: number
  readonly toPixels: (x: number, y: number) => readonly [number, number]
  readonly ink: string
  readonly paper: string
  /** The fill of a print, for paths in cells. Without it a print is painted in one colour. */
  readonly fillOf?: (fabric: string, turn: number) => string | CanvasPattern
}

type Canvas = CanvasRenderingContext2D
type Painter = (pen: Canvas, part: DrawingPart, context: PaintContext) => void

/** Fabric looks the same on a light and on a dark page, so what is painted on it has fixed colours. */
const DARK = '#2b2320'
const PALE = '#fffaf2'
const CLASH = MARKS.clashes.fill
const NEST = MARKS.nests.fill
const WARM = '#8f3a1f'

export function paint(pen: Canvas, drawing: ViewDrawing, context: PaintContext): void {
  for (const part of drawing) {
    pen.save()
    pen.lineJoin = 'round'
    pen.lineCap = 'round'
    PAINTERS[part.type](pen, part, context)
    pen.restore()
  }
}

const PAINTERS: Readonly<Record<PartType, Painter>> = {
  fabric: (pen, part, context) => fill(pen, part, context, part.colour ?? UNKNOWN_COLOUR, part.faint === true ? 0.5 : 1),
  back: (pen, part, context) => layer(pen, part, context, paler(part.colour ?? UNKNOWN_COLOUR)),
  folded: (pen, part, context) => layer(pen, part, context, part.colour ?? UNKNOWN_COLOUR),
  edge: (pen, part, context) => stroke(pen, part, context, DARK, 0.9, 0.65),
  seam: (pen, part, context) => stroke(pen, part, context, DARK, 1.2, 0.7),
  stitches: (pen, part, context) => {
    stroke(pen, part, context, PALE, 1.6, 0.7)
    pen.setLineDash([4, 3])
    stroke(pen, part, context, WARM, 1.3, 0.9)
  },
  round: (pen, part, context) => {
    stroke(pen, part, context, context.paper, 9, 1)
    stroke(pen, part, context, context.ink, 5, 1)
  },
  join: (pen, part, context) => {
    stroke(pen, part, context, PALE, 6, 1)
    stroke(pen, part, context, WARM, 3, 1)
  },
  press: (pen, part, context) => {
    const { open = false, asked = false } = part
    const way = directionOf(part, context)
    each(part, context, (x, y) => drawPressArrow(pen, { at: [x, y], way, open, asked, size: Math.max(8, Math.min(15, context.scale * 0.2)) }))
  },
  number: (pen, part, context) => each(part, context, (x, y) => badge(pen, x, y, part.text ?? '', 11)),
  mark: (pen, part, context) => each(part, context, (x, y) => mark(pen, x, y, part, context)),
  stretch: (pen, part, context) => {
    stroke(pen, part, context, PALE, 8, 1)
    stroke(pen, part, context, CLASH, 4.5, 1)
  },
  between: (pen, part, context) => {
    stroke(pen, part, context, DARK, 2.4, 0.8)
    stroke(pen, part, context, PALE, 1, 1)
  },
  opposite: (pen, part, context) => each(part, context, (x, y) => bar(pen, x, y)),
  lost: (pen, part, context) => each(part, context, (x, y) => ring(pen, x, y, CLASH, true)),
  gained: (pen, part, context) => each(part, context, (x, y) => ring(pen, x, y, NEST, false)),
  changed: (pen, part, context) => {
    stroke(pen, part, context, PALE, 10, 0.9)
    pen.setLineDash([10, 7])
    stroke(pen, part, context, NEST, 5, 1)
  },
}

function fill(pen: Canvas, part: DrawingPart, context: PaintContext, colour: string, alpha = 1): void {
  const { toPixels, fillOf } = context
  pen.globalAlpha = alpha
  if (part.print !== undefined && fillOf !== undefined) return fillPrint(pen, part, context, fillOf(part.print.fabric, part.print.turn))
  pen.beginPath()
  tracePart(pen satisfies PathPen, part, toPixels)
  pen.fillStyle = colour
  pen.fill()
  if (alpha < 1) return
  // A thin outline of the same colour closes the gaps between neighbours.
  pen.strokeStyle = colour
  pen.lineWidth = 0.6
  pen.stroke()
}

/** A print is painted in cells, so that it is true to scale wherever the patch lies. */
function fillPrint(pen: Canvas, part: DrawingPart, { toPixels, scale }: PaintContext, print: string | CanvasPattern): void {
  pen.translate(...toPixels(0, 0))
  pen.scale(scale, scale)
  pen.beginPath()
  tracePart(pen, part, (x, y) => [x, y])
  pen.fillStyle = print
  pen.fill()
}

/** Fabric on fabric casts a small shadow. */
function layer(pen: Canvas, part: DrawingPart, { toPixels }: PaintContext, colour: string): void {
  pen.shadowColor = 'rgb(30 20 10 / 0.45)'
  pen.shadowBlur = 5
  pen.beginPath()
  tracePart(pen, part, toPixels)
  pen.fillStyle = colour
  pen.fill()
}

function stroke(pen: Canvas, part: DrawingPart, { toPixels }: PaintContext, colour: string, width: number, alpha: number): void {
  pen.globalAlpha = alpha
  pen.beginPath()
  tracePart(pen, part, toPixels)
  pen.strokeStyle = colour
  pen.lineWidth = width
  pen.stroke()
}

function each({ points = [] }: DrawingPart, { toPixels }: PaintContext, draw: (x: number, y: number) => void): void {
  for (const [x, y] of points) draw(...toPixels(x, y))
}

/** The wrong side of a fabric is paler than its right side. */
function paler(colour: string): string {
  const channels = [1, 3, 5].map((at) => Math.round(Number.parseInt(colour.slice(at, at + 2), 16) * 0.5 + 255 * 0.5))
  return `rgb(${channels.join(' ')})`
}

/** The direction across the seam, in pixels, of length one. */
function directionOf({ toward = [0, 1] }: DrawingPart, { toPixels }: PaintContext): Point {
  const [from, to] = [toPixels(0, 0), toPixels(...toward)]
  const length = Math.hypot(to[0] - from[0], to[1] - from[1]) || 1
  return [(to[0] - from[0]) / length, (to[1] - from[1]) / length]
}

/** `half` is half its height, in pixels. */
function badge(pen: Canvas, x: number, y: number, text: string, half: number): void {
  const wide = Math.max(half, ((3.7 * text.length + 4) * half) / 11)
  pen.beginPath()
  pen.roundRect(x - wide, y - half, wide * 2, half * 2, half)
  outlined(pen, PALE, DARK)
  pen.fillStyle = DARK
  pen.font = `600 ${half + 1}px Inter, sans-serif`
  pen.textAlign = 'center'
  pen.textBaseline = 'middle'
  pen.fillText(text, x, y + 0.5)
}

function mark(pen: Canvas, x: number, y: number, { verdict = 'nests', text }: DrawingPart, { scale }: PaintContext): void {
  const size = Math.max(0.55, Math.min(1, scale / 24)) * (verdict === 'clashes' ? 1 : 0.8)
  pen.save()
  pen.translate(x, y)
  pen.scale(size, size)
  const path = new Path2D(MARKS[verdict].path)
  pen.strokeStyle = PALE
  pen.lineWidth = 3
  pen.stroke(path)
  pen.fillStyle = MARKS[verdict].fill
  pen.fill(path, 'evenodd')
  pen.restore()
  if (text !== undefined) badge(pen, x + 10, y - 10, text, 8)
}

function bar(pen: Canvas, x: number, y: number): void {
  pen.beginPath()
  pen.rect(x - 9, y - 3.5, 18, 7)
  outlined(pen, DARK, PALE)
}

/** A ring around a place; dashed and crossed out if something is lost there. */
function ring(pen: Canvas, x: number, y: number, colour: string, struck: boolean): void {
  for (const [shade, width] of [
    [PALE, 7],
    [colour, 3.2],
  ] as const) {
    pen.strokeStyle = shade
    pen.lineWidth = width
    pen.setLineDash(struck ? [7, 6] : [])
    pen.beginPath()
    pen.arc(x, y, 15, 0, Math.PI * 2)
    pen.stroke()
    if (!struck) continue
    pen.setLineDash([])
    pen.beginPath()
    pen.moveTo(x - 11, y + 11)
    pen.lineTo(x + 11, y - 11)
    pen.stroke()
  }
}

function outlined(pen: Canvas, inside: string, outside = PALE): void {
  pen.strokeStyle = outside
  pen.lineWidth = 2.5
  pen.stroke()
  pen.fillStyle = inside
  pen.fill()
}
