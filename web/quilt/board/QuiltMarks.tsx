/** What lies over the quilt: what is selected, where a drop will land, crossings between blocks, places that don't fit. */
import { memo } from 'react'
import { Layer, Shape } from 'react-konva/lib/ReactKonvaCore.js'
import type { QuiltCell, QuiltLayout, QuiltReport } from '../../../geometry/index.ts'
import { pointOf } from '../../document/shapes.ts'
import { MARKS, marksPerPlace } from '../../drawing/marks.ts'
import { useInk } from '../../drawing/useInk.ts'
import type { QuiltFrame } from './quiltFrame.ts'

export interface PlacedBox {
  readonly at: QuiltCell
  readonly size: QuiltCell
}

interface Props {
  readonly layout: QuiltLayout
  readonly frame: QuiltFrame
  readonly selected: readonly PlacedBox[]
  /** Where a drop will land, or the run that is being filled. */
  readonly target: readonly PlacedBox[]
  /** Where the keys are; null while the board is not worked with keys. */
  readonly cursor: PlacedBox | null
  /** Null while they are not shown, or not known. */
  readonly meetings: QuiltReport['meetings'] | null
  readonly pointed: number | null
}

export const QuiltMarks = memo(function QuiltMarks(props: Props) {
  const { ink, paper, accent } = useInk()
  return (
    <Layer listening={false}>
      <Shape
        listening={false}
        perfectDrawEnabled={false}
        sceneFunc={({ _context }) => draw(_context as CanvasRenderingContext2D, props, { ink, paper, accent })}
      />
    </Layer>
  )
})

type Inks = ReturnType<typeof useInk>

function draw(pen: CanvasRenderingContext2D, props: Props, inks: Inks): void {
  const { layout, frame, selected, target, cursor } = props
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
  if (cursor !== null) {
    pen.setLineDash([4, 3])
    const [x, y, w, h] = frame.boxOf(cursor.at, cursor.size)
    outline(pen, [x + 4, y + 4, w - 8, h - 8], inks.ink, inks.paper, 2)
    pen.setLineDash([])
  }
  drawMeetings(pen, props, inks)
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

/** Below these pixels between neighbouring marks they would cover the fabric: then only those that don't nest are shown. */
const CLOSE = 14

function drawMeetings(pen: CanvasRenderingContext2D, { frame, meetings, pointed }: Props, inks: Inks): void {
  if (meetings === null) return
  const points = meetings.map(({ at, verdict }) => ({ at: pointOf(at), verdict }))
  const placed = marksPerPlace(points)
  const room = Math.sqrt((frame.scale * frame.scale * areaOf(points)) / Math.max(1, placed.length))
  for (const { at, verdict, count } of placed) {
    if (verdict !== 'clashes' && room < CLOSE) continue
    drawMark(pen, frame.toPixels(at), verdict, count, inks)
  }
  const one = pointed === null ? undefined : points[pointed]
  if (one === undefined) return
  const [x, y] = frame.toPixels(one.at)
  pen.beginPath()
  pen.arc(x, y, 17, 0, Math.PI * 2)
  pen.strokeStyle = inks.paper
  pen.lineWidth = 6
  pen.stroke()
  pen.strokeStyle = inks.accent
  pen.lineWidth = 3
  pen.stroke()
}

function areaOf(points: readonly { readonly at: readonly [number, number] }[]): number {
  const [xs, ys] = [points.map(({ at }) => at[0]), points.map(({ at }) => at[1])]
  return (Math.max(0, ...xs) - Math.min(0, ...xs)) * (Math.max(0, ...ys) - Math.min(0, ...ys))
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
