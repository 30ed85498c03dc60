/** Painting a drawing: how each part looks. Lines and marks keep their size on the screen, cloth follows the frame. */
import type { Point } from '../document/shapes.ts'
import { MARKS } from './marks.ts'
import { type ViewDrawing, type DrawingPart, type PathPen, tracePart, type PartType } from './viewDrawing.ts'

export interface PaintContext {
  /** Pixels to a cell. */
  readonly scale: number
  readonly toPixels: (x: number, y: number) => readonly [number, number]
  readonly ink: string
  readonly paper: string
  /** What a print is filled with, for paths in cells; without it cloth has one colour. */
  readonly fillOf?: (fabric: string, turn: number) => string | CanvasPattern
}

type Canvas = CanvasRenderingContext2D
type Painter = (pen: Canvas, part: DrawingPart, sight: PaintContext) => void

/** Cloth is the same by day and by night: what lies on it keeps one colour. */
const DARK = '#2b2320'
const PALE = '#fffaf2'
const CLASH = MARKS.clashes.fill
const NEST = MARKS.nests.fill
const WARM = '#8f3a1f'

export function paint(pen: Canvas, drawing: ViewDrawing, sight: PaintContext): void {
  for (const part of drawing) {
    pen.save()
    pen.lineJoin = 'round'
    pen.lineCap = 'round'
    PAINTERS[part.what](pen, part, sight)
    pen.restore()
  }
}

const PAINTERS: Readonly<Record<PartType, Painter>> = {
  cloth: (pen, part, sight) => fill(pen, part, sight, part.colour ?? '#888888', part.faint === true ? 0.5 : 1),
  back: (pen, part, sight) => sheet(pen, part, sight, paler(part.colour ?? '#888888')),
  folded: (pen, part, sight) => sheet(pen, part, sight, part.colour ?? '#888888'),
  edge: (pen, part, sight) => stroke(pen, part, sight, DARK, 0.9, 0.65),
  seam: (pen, part, sight) => stroke(pen, part, sight, DARK, 1.2, 0.7),
  stitches: (pen, part, sight) => {
    stroke(pen, part, sight, PALE, 1.6, 0.7)
    pen.setLineDash([4, 3])
    stroke(pen, part, sight, WARM, 1.3, 0.9)
  },
  round: (pen, part, sight) => {
    stroke(pen, part, sight, sight.paper, 9, 1)
    stroke(pen, part, sight, sight.ink, 5, 1)
  },
  join: (pen, part, sight) => {
    stroke(pen, part, sight, PALE, 6, 1)
    stroke(pen, part, sight, WARM, 3, 1)
  },
  wedge: (pen, part, sight) => each(part, sight, (x, y) => wedge(pen, x, y, wayOf(part, sight))),
  bars: (pen, part, sight) => each(part, sight, (x, y) => bars(pen, x, y, wayOf(part, sight))),
  number: (pen, part, sight) => each(part, sight, (x, y) => badge(pen, x, y, part.text ?? '')),
  mark: (pen, part, sight) => each(part, sight, (x, y) => mark(pen, x, y, part, sight)),
  stretch: (pen, part, sight) => {
    stroke(pen, part, sight, PALE, 8, 1)
    stroke(pen, part, sight, CLASH, 4.5, 1)
  },
  between: (pen, part, sight) => {
    stroke(pen, part, sight, DARK, 2.4, 0.8)
    stroke(pen, part, sight, PALE, 1, 1)
  },
  opposite: (pen, part, sight) => each(part, sight, (x, y) => bar(pen, x, y)),
  lost: (pen, part, sight) => each(part, sight, (x, y) => ring(pen, x, y, CLASH, true)),
  gained: (pen, part, sight) => each(part, sight, (x, y) => ring(pen, x, y, NEST, false)),
  changed: (pen, part, sight) => {
    stroke(pen, part, sight, PALE, 10, 0.9)
    pen.setLineDash([10, 7])
    stroke(pen, part, sight, NEST, 5, 1)
  },
}

function fill(pen: Canvas, part: DrawingPart, sight: PaintContext, colour: string, alpha = 1): void {
  const { toPixels, fillOf } = sight
  pen.globalAlpha = alpha
  if (part.print !== undefined && fillOf !== undefined) return fillPrint(pen, part, sight, fillOf(part.print.fabric, part.print.turn))
  pen.beginPath()
  tracePart(pen satisfies PathPen, part, toPixels)
  pen.fillStyle = colour
  pen.fill()
  if (alpha < 1) return
  // A hair of the same colour closes the seams between fills.
  pen.strokeStyle = colour
  pen.lineWidth = 0.6
  pen.stroke()
}

/** A print lies in cells, so that it is true to scale wherever the patch lies. */
function fillPrint(pen: Canvas, part: DrawingPart, { toPixels, scale }: PaintContext, print: string | CanvasPattern): void {
  pen.translate(...toPixels(0, 0))
  pen.scale(scale, scale)
  pen.beginPath()
  tracePart(pen, part, (x, y) => [x, y])
  pen.fillStyle = print
  pen.fill()
}

/** Cloth on cloth throws a little shadow. */
function sheet(pen: Canvas, part: DrawingPart, { toPixels }: PaintContext, colour: string): void {
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

function each({ spots = [] }: DrawingPart, { toPixels }: PaintContext, draw: (x: number, y: number) => void): void {
  for (const [x, y] of spots) draw(...toPixels(x, y))
}

/** The back of a print is paler than its right side. */
export function paler(colour: string): string {
  const channels = [1, 3, 5].map((at) => Math.round(Number.parseInt(colour.slice(at, at + 2), 16) * 0.5 + 255 * 0.5))
  return `rgb(${channels.join(' ')})`
}

/** The way across, in pixels of length one. */
function wayOf({ toward = [0, 1] }: DrawingPart, { toPixels }: PaintContext): Point {
  const [from, to] = [toPixels(0, 0), toPixels(...toward)]
  const length = Math.hypot(to[0] - from[0], to[1] - from[1]) || 1
  return [(to[0] - from[0]) / length, (to[1] - from[1]) / length]
}

function wedge(pen: Canvas, x: number, y: number, [nx, ny]: Point): void {
  pen.beginPath()
  pen.moveTo(x + nx * 26, y + ny * 26)
  pen.lineTo(x + nx * 13 - ny * 9, y + ny * 13 + nx * 9)
  pen.lineTo(x + nx * 13 + ny * 9, y + ny * 13 - nx * 9)
  pen.closePath()
  outlined(pen, WARM)
}

function bars(pen: Canvas, x: number, y: number, [nx, ny]: Point): void {
  for (const sign of [1, -1])
    for (const [colour, width] of [
      [PALE, 7],
      [WARM, 3],
    ] as const) {
      pen.beginPath()
      pen.moveTo(x + nx * 17 * sign - ny * 7, y + ny * 17 * sign + nx * 7)
      pen.lineTo(x + nx * 17 * sign + ny * 7, y + ny * 17 * sign - nx * 7)
      pen.strokeStyle = colour
      pen.lineWidth = width
      pen.stroke()
    }
}

function badge(pen: Canvas, x: number, y: number, text: string): void {
  const wide = Math.max(11, 3.7 * text.length + 4)
  pen.beginPath()
  pen.roundRect(x - wide, y - 11, wide * 2, 22, 11)
  outlined(pen, PALE, DARK)
  pen.fillStyle = DARK
  pen.font = '600 12px Inter, sans-serif'
  pen.textAlign = 'center'
  pen.textBaseline = 'middle'
  pen.fillText(text, x, y + 0.5)
}

function mark(pen: Canvas, x: number, y: number, { verdict = 'nests' }: DrawingPart, { scale }: PaintContext): void {
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
}

function bar(pen: Canvas, x: number, y: number): void {
  pen.beginPath()
  pen.rect(x - 9, y - 3.5, 18, 7)
  outlined(pen, DARK, PALE)
}

/** A ring round a place; struck through where something is lost. */
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
