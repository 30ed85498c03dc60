/** What lies over the quilt: what is selected, where a drop will land, crossings between blocks, places that don't fit. */
import { memo, useMemo } from 'react'
import { Layer, Shape } from 'react-konva/lib/ReactKonvaCore.js'
import { type QuiltCell, type QuiltLayout, type QuiltReport, routeLines } from '../../../geometry/index.ts'
import { type Point, pointOf } from '../../document/shapes.ts'
import { MARKS, marksPerPlace, type PlacedMark } from '../../drawing/marks.ts'
import { useInk } from '../../drawing/useInk.ts'
import type { QuiltFrame } from './quiltFrame.ts'

export interface PlacedBox {
  readonly at: QuiltCell
  readonly size: QuiltCell
}

interface OverlayProps {
  readonly layout: QuiltLayout
  readonly frame: QuiltFrame
  readonly selected: readonly PlacedBox[]
  /** Where a drop will land, or the run that is being filled. */
  readonly target: readonly PlacedBox[]
  /** Where the keys are; null while the board is not worked with keys. */
  readonly cursor: PlacedBox | null
}

/** What changes with every move of the hand: drawn apart from all else. */
export const QuiltOverlay = memo(function QuiltOverlay(props: OverlayProps) {
  const inks = useInk()
  return (
    <Shape
      listening={false}
      perfectDrawEnabled={false}
      sceneFunc={({ _context }) => drawOverlay(_context as CanvasRenderingContext2D, props, inks)}
    />
  )
})

interface MarksProps {
  readonly frame: QuiltFrame
  /** Null while they are not shown, or not known. */
  readonly meetings: QuiltReport['meetings'] | null
  readonly pointed: number | null
  /** Places whose quilting line is shown. */
  readonly lines: QuiltReport['places'] | null
  /** The joining seam that is drawn. */
  readonly joint: QuiltReport['joints'][number] | null
}

/** Crossings between blocks, on a layer of their own: a quilt may have thousands. */
export const QuiltMarks = memo(function QuiltMarks({ frame, meetings, pointed, lines, joint }: MarksProps) {
  const inks = useInk()
  const points = useMemo(() => (meetings ?? []).map(({ at, verdict }) => ({ at: pointOf(at), verdict })), [meetings])
  const placed = useMemo(() => marksPerPlace(points), [points])
  return (
    <Layer listening={false}>
      <Shape
        listening={false}
        perfectDrawEnabled={false}
        sceneFunc={({ _context }) => {
          const pen = _context as CanvasRenderingContext2D
          if (lines !== null) drawLines(pen, frame, lines, inks)
          drawMarks(pen, frame, placed, inks)
          if (joint !== null) drawJoint(pen, frame, joint, inks)
          const one = pointed === null ? undefined : points[pointed]
          if (one !== undefined) ring(pen, frame.toPixels(one.at), inks)
        }}
      />
    </Layer>
  )
})

type Inks = ReturnType<typeof useInk>

function drawOverlay(pen: CanvasRenderingContext2D, { layout, frame, selected, target, cursor }: OverlayProps, inks: Inks): void {
  for (const { at, size, fit } of layout.places) {
    if (fit === 'fits') continue
    const [x, y] = frame.toPixels(at)
    const [w, h] = [size[0] * frame.scale, size[1] * frame.scale]
    pen.setLineDash([7, 5])
    outline(pen, [x, y, w, h], MARKS.clashes.fill, inks.paper, 2.5)
    pen.setLineDash([])
    badge(pen, [x + w - 14, y + 14])
  }
  for (const { at, size } of target) {
    const box = frame.boxOf(at, size)
    pen.fillStyle = inks.accent
    pen.globalAlpha = 0.22
    pen.fillRect(...box)
    pen.globalAlpha = 1
    outline(pen, box, inks.accent, inks.paper, 2)
  }
  for (const { at, size } of selected) outline(pen, frame.boxOf(at, size), inks.accent, inks.paper, 3)
  if (cursor === null) return
  pen.setLineDash([4, 3])
  const [x, y, w, h] = frame.boxOf(cursor.at, cursor.size)
  outline(pen, [x + 4, y + 4, w - 8, h - 8], inks.ink, inks.paper, 2)
  pen.setLineDash([])
}

/** A line with a paler one on both sides, so that it can be seen on any fabric. */
function outline(
  pen: CanvasRenderingContext2D,
  [x, y, w, h]: readonly [number, number, number, number],
  colour: string,
  around: string,
  width: number,
): void {
  pen.strokeStyle = around
  pen.lineWidth = width + 3
  pen.strokeRect(x, y, w, h)
  pen.strokeStyle = colour
  pen.lineWidth = width
  pen.strokeRect(x, y, w, h)
}

/** An exclamation mark on a place that does not fit. */
function badge(pen: CanvasRenderingContext2D, [x, y]: readonly [number, number]): void {
  pen.fillStyle = MARKS.clashes.fill
  pen.beginPath()
  pen.arc(x, y, 10, 0, Math.PI * 2)
  pen.fill()
  pen.fillStyle = '#ffffff'
  pen.fillRect(x - 1.5, y - 6, 3, 7)
  pen.fillRect(x - 1.5, y + 3, 3, 3)
}

/** Pixels between neighbouring marks: below the first they would cover the fabric, so only those that don't nest are shown; below the second, as dots. */
const CLOSE = 14
const CROWDED = 9

function drawMarks(pen: CanvasRenderingContext2D, frame: QuiltFrame, placed: readonly PlacedMark[], inks: Inks): void {
  const room = roomPerMark(placed) * frame.scale
  for (const { at, verdict, count } of placed) {
    if (verdict !== 'clashes' && room < CLOSE) continue
    if (room < CROWDED) dot(pen, frame.toPixels(at))
    else drawMark(pen, frame.toPixels(at), verdict, count, inks)
  }
}

function dot(pen: CanvasRenderingContext2D, [x, y]: readonly [number, number]): void {
  pen.fillStyle = MARKS.clashes.fill
  pen.fillRect(x - 1.5, y - 1.5, 3, 3)
}

/** Stitches as dashes, light on dark and dark on light. */
function drawLines(pen: CanvasRenderingContext2D, frame: QuiltFrame, places: QuiltReport['places'], inks: Inks): void {
  pen.lineJoin = 'round'
  pen.lineCap = 'round'
  for (const [colour, width, dash] of [
    [inks.paper, 3.5, []],
    [inks.ink, 1.6, [5, 4]],
  ] as const) {
    pen.strokeStyle = colour
    pen.lineWidth = width
    pen.setLineDash([...dash])
    for (const { origin, ditch } of places) {
      const [left, top] = pointOf(origin)
      for (const { points, closed } of routeLines(ditch)) {
        pen.beginPath()
        for (const [x, y] of points) pen.lineTo(...frame.toPixels([left + x, top + y]))
        if (closed) pen.closePath()
        pen.stroke()
      }
    }
  }
  pen.setLineDash([])
}

/** A joining seam as a bold line, with a tick wherever its edges have to come level. */
function drawJoint(pen: CanvasRenderingContext2D, frame: QuiltFrame, { from, to, marks }: QuiltReport['joints'][number], inks: Inks): void {
  const [a, b] = [frame.toPixels(pointOf(from)), frame.toPixels(pointOf(to))]
  const long = Math.hypot(b[0] - a[0], b[1] - a[1]) || 1
  const along: Point = [(b[0] - a[0]) / long, (b[1] - a[1]) / long]
  const ticks = marks.map((mark): Point => [a[0] + along[0] * mark * frame.scale, a[1] + along[1] * mark * frame.scale])
  for (const [colour, width] of [
    [inks.paper, 10],
    [inks.accent, 6],
  ] as const) {
    pen.strokeStyle = colour
    pen.lineWidth = width
    pen.beginPath()
    pen.moveTo(...a)
    pen.lineTo(...b)
    for (const [x, y] of ticks) {
      pen.moveTo(x - along[1] * 12, y + along[0] * 12)
      pen.lineTo(x + along[1] * 12, y - along[0] * 12)
    }
    pen.stroke()
  }
}

function ring(pen: CanvasRenderingContext2D, [x, y]: readonly [number, number], inks: Inks): void {
  for (const [colour, width] of [
    [inks.paper, 6],
    [inks.accent, 3],
  ] as const) {
    pen.beginPath()
    pen.arc(x, y, 17, 0, Math.PI * 2)
    pen.strokeStyle = colour
    pen.lineWidth = width
    pen.stroke()
  }
}

/** The side of the square that each mark has to itself, in inches or centimetres. */
function roomPerMark(placed: readonly PlacedMark[]): number {
  let [right, bottom] = [0, 0]
  for (const { at } of placed) [right, bottom] = [Math.max(right, at[0]), Math.max(bottom, at[1])]
  return Math.sqrt((right * bottom) / Math.max(1, placed.length))
}

const paths = new Map<string, Path2D>()

function drawMark(
  pen: CanvasRenderingContext2D,
  [x, y]: readonly [number, number],
  verdict: keyof typeof MARKS,
  count: number,
  { paper: white }: Inks,
): void {
  const path = paths.get(verdict) ?? new Path2D(MARKS[verdict].path)
  paths.set(verdict, path)
  pen.save()
  pen.translate(x, y)
  pen.strokeStyle = white
  pen.lineWidth = 3
  pen.lineJoin = 'round'
  pen.stroke(path)
  pen.fillStyle = MARKS[verdict].fill
  pen.fill(path, 'evenodd')
  if (count > 1) {
    pen.font = '600 11px Inter, sans-serif'
    pen.lineWidth = 3
    pen.strokeText(`×${count}`, 9, 4)
    pen.fillText(`×${count}`, 9, 4)
  }
  pen.restore()
}
