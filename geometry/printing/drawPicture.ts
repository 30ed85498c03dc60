/**
 * A picture of the booklet drawn on a surface.
 *
 * In      a drawing in the measure's unit, where its top left lies, how many points one unit is, and how cloth is shown.
 * Out     its marks in painting order. Lines keep their width whatever the scale; on dark cloth they lie on a pale ground.
 */
import type { Drawing, LineStyle, Mark, Spot } from '../writing/booklet/values.ts'
import { type FabricFill, paintFabric } from './fabricFill.ts'
import { INK } from './pageStyle.ts'
import { SHAPES } from './meetingMarks.ts'
import { polygon, round, type Surface } from './pen.ts'
import { WordPlaces } from './picture/wordPlaces.ts'
import { drawLeg, drawStop, type PlacedStop, placeStops } from './picture/quiltingMarks.ts'

interface Placement {
  readonly at: Spot
  /** Points for one unit of measure. */
  readonly scale: number
  readonly fabricFill: (fabric: string | null) => FabricFill
  /** Times the usual weight of lines and letters. */
  readonly weight?: number
  /** Letters are no smaller, in points. */
  readonly leastLetters?: number
}

export function drawPicture(surface: Surface, drawing: Drawing, place: Placement): void {
  const put = ([x, y]: Spot): Spot => [place.at[0] + x * place.scale, place.at[1] + y * place.scale]
  const weight = place.weight ?? 1
  const stops = placeStops(surface, drawing, put, weight)
  const words = new WordPlaces(drawing.marks, put)
  for (const mark of drawing.marks) DRAW[mark.type](surface, mark as never, { ...place, put, weight, words, stops })
}

interface Put extends Placement {
  readonly put: (spot: Spot) => Spot
  readonly weight: number
  /** Where words find room. */
  readonly words: WordPlaces
  /** Numbers of quilting stops: legs leave them free. */
  readonly stops: readonly PlacedStop[]
}

type Drawn<Type extends Mark['type']> = (surface: Surface, mark: Extract<Mark, { type: Type }>, put: Put) => void

const DRAW: { readonly [Type in Mark['type']]: Drawn<Type> } = {
  area,
  line,
  arrow,
  point,
  text,
  leg: (surface, mark, { put, weight, stops }) => drawLeg(surface, mark, put, weight, stops),
  stop: (surface, mark, { weight, stops }) => drawStop(surface, mark, weight, stops),
}

const EDGES = { cut: 0.75, seam: 0.55, none: 0 } as const

function area(surface: Surface, mark: Extract<Mark, { type: 'area' }>, { fabricFill, put, scale, weight }: Put): void {
  const outline = mark.outline.map(put)
  const laid = fabricFill(mark.fabric)
  paintFabric(surface, outline, laid, mark.side, scale, put([0, 0]))
  const width = EDGES[mark.line] * weight
  if (width > 0) surface.path(polygon(outline), { line: { colour: mark.side === 'wrong' ? '#3c312b' : laid.edge, width } })
}

interface GroundedStroke {
  readonly colour: string
  readonly width: number
  readonly dash?: readonly number[]
  /** It may lie on dark cloth. */
  readonly ground: boolean
}

/** Each line has dashes of its own: they differ in a grey print. */
const STROKES: Readonly<Record<LineStyle, GroundedStroke>> = {
  seam: { colour: '#241c18', width: 0.6, ground: true },
  stitch: { colour: INK.accent, width: 1.1, dash: [3, 1.8], ground: true },
  marked: { colour: '#4a5560', width: 0.8, dash: [0.9, 1.8], ground: true },
  cut: { colour: '#111111', width: 1.1, dash: [7, 2, 1.4, 2], ground: true },
  fold: { colour: '#241c18', width: 0.7, dash: [11, 3.5], ground: true },
  trim: { colour: '#1f5d86', width: 1, dash: [6, 1.6, 0.8, 1.6, 0.8, 1.6], ground: true },
  blade: { colour: '#b3261e', width: 2.2, ground: true },
  thin: { colour: '#665950', width: 0.4, ground: false },
}

function line(surface: Surface, mark: Extract<Mark, { type: 'line' }>, { put, weight }: Put): void {
  const path = polygon(mark.points.map(put), mark.closed ?? false)
  stroke(surface, path, STROKES[mark.style], weight)
}

/** Draws a path in the style of a line, on a pale ground where it may lie on dark fabric. `weight` is times the usual width. */
function stroke(surface: Surface, path: ReturnType<typeof polygon>, { colour, width, dash, ground }: GroundedStroke, weight: number): void {
  if (ground) surface.path(path, { line: { colour: '#fffdf9', width: (width + (dash === undefined ? 0.7 : 1.3)) * weight } })
  surface.path(path, { line: { colour, width: width * weight, ...(dash === undefined ? {} : { dash: dash.map((part) => part * weight) }) } })
}

const ARROWS = { press: INK.accent, turn: '#1f5d86', grain: INK.ink } as const

function arrow(surface: Surface, mark: Extract<Mark, { type: 'arrow' }>, { put, weight }: Put): void {
  const [from, to] = [put(mark.from), put(mark.to)]
  const colour = ARROWS[mark.means]
  const thick = (mark.means === 'grain' ? 0.7 : 1.5) * weight
  const heads = mark.means === 'grain' ? [headOf(from, to, weight * 0.9), headOf(to, from, weight * 0.9)] : [headOf(from, to, weight * 1.15)]
  const shaft = polygon([mark.means === 'grain' ? inward(to, from, 3 * weight) : from, inward(from, to, 3 * weight)], false)
  surface.path(shaft, { line: { colour: '#fffdf9', width: thick + 1.8 * weight } })
  for (const head of heads) surface.path(polygon(head), { line: { colour: '#fffdf9', width: 1.8 * weight } })
  surface.path(shaft, { line: { colour, width: thick } })
  for (const head of heads) surface.path(polygon(head), { fill: colour })
}

/** A point on the way from one to the other, so far short of its end; the middle where the way is shorter. */
function inward([ax, ay]: Spot, [bx, by]: Spot, short: number): Spot {
  const long = Math.hypot(bx - ax, by - ay)
  const part = long === 0 ? 0 : Math.max(0.5, (long - short) / long)
  return [ax + (bx - ax) * part, ay + (by - ay) * part]
}

function headOf([ax, ay]: Spot, [bx, by]: Spot, weight: number): Spot[] {
  const long = Math.hypot(bx - ax, by - ay) || 1
  const size = Math.min(5.4 * weight, long * 0.7)
  const [ux, uy] = [(bx - ax) / long, (by - ay) / long]
  const [rootX, rootY] = [bx - ux * size, by - uy * size]
  const half = size * 0.46
  return [
    [bx, by],
    [rootX - uy * half, rootY + ux * half],
    [rootX + uy * half, rootY - ux * half],
  ]
}

/** Half the box of a mark, in points. */
const MARK = 4.2

function point(surface: Surface, mark: Extract<Mark, { type: 'point' }>, { put, weight }: Put): void {
  const at = put(mark.at)
  if (mark.mark === 'number') return number(surface, at, mark.text ?? '', weight)
  drawMark(surface, mark.mark, at, MARK * weight)
}

/** Draws the mark of a meeting; `half` is half its box, in points. */
function drawMark(surface: Surface, mark: keyof typeof SHAPES, [x, y]: Spot, half: number): void {
  const { whole, blank, colour } = SHAPES[mark]
  const sized = (corners: readonly Spot[]): Spot[] => corners.map(([cx, cy]): Spot => [x + (cx * half) / 8, y + (cy * half) / 8])
  surface.path(polygon(sized(whole)), { fill: colour, line: { colour: '#fffdf9', width: half / 5 } })
  if (blank !== undefined) surface.path(polygon(sized(blank)), { fill: INK.white })
}

function number(surface: Surface, [x, y]: Spot, said: string, weight: number): void {
  const half = 5.2 * weight
  // A figure is about half as wide as it is high.
  const more = Math.max(0, said.length - 2) * 1.75 * weight
  const ends = [...round([x + more, y], half).filter(([at]) => at >= x + more), ...round([x - more, y], half).filter(([at]) => at < x - more)]
  const turned = ends.sort((a, b) => angle(a, [x, y]) - angle(b, [x, y]))
  surface.path(polygon(turned), { fill: INK.white, line: { colour: INK.ink, width: 0.6 * weight } })
  surface.words({ text: said, at: [x, y], size: (said.length > 1 ? 6 : 6.6) * weight, align: 'middle', face: 'strong', colour: INK.ink })
}

const angle = ([x, y]: Spot, [cx, cy]: Spot): number => Math.atan2(y - cy, x - cx)

const LETTERS = { small: 6, normal: 7.4 } as const

function text(surface: Surface, mark: Extract<Mark, { type: 'text' }>, { put, weight, words: placed, leastLetters = 0 }: Put): void {
  const size = Math.max(leastLetters, LETTERS[mark.size] * weight)
  const words = { text: mark.text, size, align: mark.align, face: 'text', colour: INK.ink, ground: INK.white } as const
  surface.words({ ...words, at: placed.place(put(mark.at), mark.align, surface.width(words), size) })
}
