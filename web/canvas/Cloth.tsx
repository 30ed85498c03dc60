/** The cloth: one shape that fills a path for each colour, with the grid under it and the seams on it. It listens to nothing. */
import { memo } from 'react'
import { Layer, Shape } from 'react-konva'
import { type Block, type Findings, type Layered, lightnessOf, needleAt, timedPoints } from '../../geometry/index.ts'
import { colourOfLayers } from './layers.ts'
import type { Frame } from './place.ts'
import { bordersAround, type Line, number, type Piece, type Spot, spot as spotOf } from './shapes.ts'
import type { Look, Stitching } from '../state/store.ts'

interface Props {
  readonly block: Block
  readonly report: Findings | null
  readonly pieces: readonly Piece[]
  readonly lines: readonly Line[]
  readonly frame: Frame
  readonly look: Look
  /** What is quilted, up to where the needle is. */
  readonly stitching: Stitching | null
  /** The block by layers of cloth; empty until they are worked out. */
  readonly cells: Layered['cells']
  readonly marks: boolean
  readonly ink: string
  readonly paper: string
}

type Pen = Pick<CanvasRenderingContext2D, 'moveTo' | 'lineTo' | 'closePath'>

export function trace(pen: Pen, corners: readonly Spot[], frame: Frame): void {
  corners.forEach(([x, y], index) => {
    const [px, py] = frame.toPixels(x, y)
    if (index === 0) pen.moveTo(px, py)
    else pen.lineTo(px, py)
  })
  pen.closePath()
}

export const Cloth = memo(function Cloth(props: Props) {
  return (
    <Layer listening={false}>
      <Shape
        perfectDrawEnabled={false}
        sceneFunc={({ _context: pen }) => {
          drawGrid(pen, props)
          drawPieces(pen, props)
          if (props.look === 'layers') drawLayers(pen, props)
          if (props.look === 'wrong') drawAllowances(pen, props)
          drawSeams(pen, props)
          if (props.look === 'wrong') drawFans(pen, props)
          if (props.look === 'layers') drawThickest(pen, props)
          if (props.look === 'quilting') drawStitching(pen, props)
          if (props.marks && props.look !== 'layers' && props.look !== 'quilting') drawNumbers(pen, props)
        }}
      />
    </Layer>
  )
})

function drawGrid(pen: CanvasRenderingContext2D, { block, frame, ink }: Props): void {
  const { columns, rows } = block.grid
  pen.save()
  pen.strokeStyle = ink
  pen.globalAlpha = 0.22
  pen.lineWidth = 1
  pen.beginPath()
  for (let x = 0; x <= columns; x++) line(pen, frame, [x, 0], [x, rows])
  for (let y = 0; y <= rows; y++) line(pen, frame, [0, y], [columns, y])
  pen.stroke()
  pen.restore()
}

function line(pen: CanvasRenderingContext2D, frame: Frame, a: Spot, b: Spot): void {
  pen.moveTo(...frame.toPixels(...a))
  pen.lineTo(...frame.toPixels(...b))
}

function drawPieces(pen: CanvasRenderingContext2D, { block, pieces, frame, look }: Props): void {
  const colours = new Map(block.fabrics.map(({ id, colour }) => [id, seen(colour, look)]))
  const paths = new Map<string, Path2D>()
  for (const { fabric, corners } of pieces) {
    const path = paths.get(fabric) ?? new Path2D()
    trace(path, corners, frame)
    paths.set(fabric, path)
  }
  for (const [fabric, path] of paths) {
    pen.fillStyle = colours.get(fabric) ?? '#888888'
    pen.fill(path)
    // A hair of the same colour closes the seams between fills.
    pen.strokeStyle = pen.fillStyle
    pen.lineWidth = 0.6
    pen.stroke(path)
  }
}

function drawLayers(pen: CanvasRenderingContext2D, { cells, frame }: Props): void {
  const paths = new Map<number, Path2D>()
  for (const { poly, layers } of cells) {
    const path = paths.get(layers) ?? new Path2D()
    const corners: Spot[] = []
    for (let i = 0; i < poly.length; i += 2) corners.push([poly[i] as number, poly[i + 1] as number])
    trace(path, corners, frame)
    paths.set(layers, path)
  }
  for (const [layers, path] of [...paths].sort(([a], [b]) => a - b)) {
    pen.fillStyle = colourOfLayers(layers)
    pen.fill(path)
    pen.strokeStyle = pen.fillStyle
    pen.lineWidth = 0.6
    pen.stroke(path)
  }
}

function drawThickest(pen: CanvasRenderingContext2D, { report, frame, ink, paper }: Props): void {
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

/** Under the thread the cloth is always pale, by day and by night. */
const DARK = '#2b2320'
const PALE = '#fffaf2'

/** The thread so far, the starts numbered, and the needle; what is still to stitch lies under it as a faint line. */
function drawStitching(pen: CanvasRenderingContext2D, { stitching, frame, ink, paper }: Props): void {
  if (stitching === null) return
  const timed = timedPoints([...stitching.routes, ...stitching.fills])
  const length = (timed.at(-1)?.at ?? 0) * stitching.part
  const needle = needleAt(timed, length)
  const whole = new Path2D()
  const sofar = new Path2D()
  timed.forEach(({ line, place, at }, index) => {
    const begins = index === 0 || timed[index - 1]?.line !== line
    for (const path of at <= length ? [whole, sofar] : [whole]) {
      if (begins) path.moveTo(...frame.toPixels(...place))
      else path.lineTo(...frame.toPixels(...place))
    }
  })
  if (needle !== null && timed[needle.toward - 1]?.line === needle.line) sofar.lineTo(...frame.toPixels(...needle.place))
  pen.save()
  pen.lineJoin = 'round'
  pen.lineCap = 'round'
  for (const [path, colour, width, dash, alpha] of [
    [whole, DARK, 1.5, [], 0.25],
    [sofar, PALE, 5, [], 1],
    [sofar, '#8f3a1f', 2.5, [5, 4], 1],
  ] as const) {
    pen.globalAlpha = alpha
    pen.strokeStyle = colour
    pen.lineWidth = width
    pen.setLineDash([...dash])
    pen.stroke(path)
  }
  pen.setLineDash([])
  stitching.routes.forEach(({ points }, index) => {
    if (points[0] !== undefined) badge(pen, frame.toPixels(...points[0]), String(index + 1), ink, paper)
  })
  if (needle !== null && stitching.part < 1) drawNeedle(pen, frame.toPixels(...needle.place))
  pen.restore()
}

function drawNeedle(pen: CanvasRenderingContext2D, [x, y]: Spot): void {
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

function badge(pen: CanvasRenderingContext2D, [x, y]: Spot, text: string, ink: string, paper: string): void {
  pen.beginPath()
  pen.arc(x, y, 11, 0, Math.PI * 2)
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

/** Where allowances can be fanned round a point: a ring of four arrows that turn one way. */
function drawFans(pen: CanvasRenderingContext2D, { report, frame, ink, paper }: Props): void {
  const radius = Math.min(17, Math.max(11, frame.scale * 0.2))
  pen.save()
  for (const { at, spin } of report?.meetings ?? []) {
    if (spin !== true) continue
    const [x, y] = frame.toPixels(...spotOf(at))
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

function fanArrow(pen: CanvasRenderingContext2D, x: number, y: number, radius: number, from: number, width: number): void {
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

/** As it is; in greys of the same lightness; or paler, as the back of a print. */
function seen(colour: string, look: Look): string {
  if (look === 'cloth' || look === 'layers') return colour
  if (look === 'value') return `hsl(0 0% ${Math.round(lightnessOf(colour))}%)`
  const channels = [1, 3, 5].map((at) => Math.round(Number.parseInt(colour.slice(at, at + 2), 16) * 0.55 + 255 * 0.45))
  return `rgb(${channels.join(' ')})`
}

/** Every allowance to scale, folded the way it is pressed: in order of sewing, so later folds lie on earlier ones. */
function drawAllowances(pen: CanvasRenderingContext2D, { block, report, lines, frame }: Props): void {
  if (report === null) return
  const width = report.measure.seam / number(block.grid.cell)
  pen.save()
  for (const { points, lies } of lines) {
    for (let place = 0; place + 1 < points.length; place++) {
      const [a, b] = [points[place] as Spot, points[place + 1] as Spot]
      const along = Math.hypot(b[0] - a[0], b[1] - a[1]) || 1
      const normal: Spot = [-(b[1] - a[1]) / along, (b[0] - a[0]) / along]
      const first = points as readonly [Spot, Spot]
      const same = lies === null ? 0 : lies[0] * normalOf(first)[0] + lies[1] * normalOf(first)[1] > 0 ? 1 : -1
      for (const sign of same === 0 ? [1, -1] : [same]) {
        const out: Spot = [normal[0] * width * sign, normal[1] * width * sign]
        const clip = Math.min(width, along / 2) / along
        const [dx, dy] = [(b[0] - a[0]) * clip, (b[1] - a[1]) * clip]
        pen.beginPath()
        trace(pen, [a, b, [b[0] + out[0] - dx, b[1] + out[1] - dy], [a[0] + out[0] + dx, a[1] + out[1] + dy]], frame)
        pen.fillStyle = same === 0 ? 'rgb(255 255 255 / 0.42)' : 'rgb(255 255 255 / 0.6)'
        pen.fill()
        pen.strokeStyle = 'rgb(40 30 20 / 0.55)'
        pen.lineWidth = 0.8
        pen.setLineDash([3, 2])
        pen.stroke()
        pen.setLineDash([])
      }
    }
  }
  pen.restore()
}

function normalOf([a, b]: readonly [Spot, Spot]): Spot {
  return [-(b[1] - a[1]), b[0] - a[0]]
}

function drawSeams(pen: CanvasRenderingContext2D, { block, pieces, frame, ink }: Props): void {
  pen.save()
  pen.strokeStyle = ink
  pen.lineWidth = 1
  pen.globalAlpha = 0.55
  const path = new Path2D()
  for (const { corners } of pieces) trace(path, corners, frame)
  pen.stroke(path)
  pen.globalAlpha = 0.9
  pen.lineWidth = 1.5
  const around = bordersAround(block)
  const [x0, y0] = frame.toPixels(-around, -around)
  const [x1, y1] = frame.toPixels(block.grid.columns + around, block.grid.rows + around)
  pen.strokeRect(Math.min(x0, x1), y0, Math.abs(x1 - x0), y1 - y0)
  pen.restore()
}

/** The number of each seam in sewing order, with a wedge on the side where its allowances lie (two bars where they lie open). */
function drawNumbers(pen: CanvasRenderingContext2D, { lines, frame, ink, paper }: Props): void {
  const size = Math.max(9, Math.min(13, frame.scale * 0.17))
  if (frame.scale < 26) return
  pen.save()
  pen.font = `600 ${size}px Inter, sans-serif`
  pen.textAlign = 'center'
  pen.textBaseline = 'middle'
  for (const { middle, lies, number: order, points } of lines) {
    const [x, y] = frame.toPixels(...middle)
    const [ox, oy] = frame.toPixels(0, 0)
    const [a, b] = points as readonly [Spot, Spot]
    const [sx, sy] = frame.toPixels(b[0] - a[0], b[1] - a[1])
    const length = Math.hypot(sx - ox, sy - oy) || 1
    const [ux, uy] = [(sx - ox) / length, (sy - oy) / length]
    const reach = size * 1.55
    pen.fillStyle = ink
    pen.strokeStyle = paper
    pen.lineWidth = 2.5
    if (lies === null) {
      for (const sign of [1, -1]) {
        pen.beginPath()
        pen.moveTo(x - ux * 5 - uy * sign * reach, y - uy * 5 + ux * sign * reach)
        pen.lineTo(x + ux * 5 - uy * sign * reach, y + uy * 5 + ux * sign * reach)
        pen.strokeStyle = ink
        pen.lineWidth = 2
        pen.stroke()
      }
    } else {
      const [tx, ty] = frame.toPixels(...lies)
      const far = Math.hypot(tx - ox, ty - oy) || 1
      const [nx, ny] = [(tx - ox) / far, (ty - oy) / far]
      pen.beginPath()
      pen.moveTo(x + nx * reach, y + ny * reach)
      pen.lineTo(x + nx * size * 0.8 + ux * size * 0.55, y + ny * size * 0.8 + uy * size * 0.55)
      pen.lineTo(x + nx * size * 0.8 - ux * size * 0.55, y + ny * size * 0.8 - uy * size * 0.55)
      pen.closePath()
      pen.stroke()
      pen.fill()
    }
    pen.beginPath()
    pen.arc(x, y, size * 0.82, 0, Math.PI * 2)
    pen.fillStyle = paper
    pen.fill()
    pen.strokeStyle = ink
    pen.lineWidth = 1
    pen.stroke()
    pen.fillStyle = ink
    pen.fillText(String(order), x, y + 0.5)
  }
  pen.restore()
}
