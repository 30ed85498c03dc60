/**
 * Numbers of seams and marks of meetings, on a sheet of their own: those in sight, where they can be told apart.
 *
 * In      the findings and where the board looks.
 * Out     what is drawn. From far away only clashes are marked, from farther still as dots.
 */
import type { Findings, Meeting } from '../../../geometry/index.ts'
import { type Buckets, bucketsOf } from '../spatialIndex.ts'
import { sightOf } from './fabricLayer.ts'
import { MARKS } from '../../drawing/marks.ts'
import type { Frame } from '../viewport.ts'
import { type SeamLine, seamLines, type Point, pointOf } from '../../document/shapes.ts'
import type { Pen } from './stage.ts'
import { trace } from './overlays.ts'
import type { Outline } from './useOutlines.ts'

interface Inks {
  readonly ink: string
  readonly paper: string
}

interface Placed<T> {
  readonly at: Point
  readonly item: T
}

const lineIndexes = new WeakMap<Findings['joins'], Buckets<SeamLine>>()
const meetingIndexes = new WeakMap<Findings['meetings'], Buckets<Placed<Meeting>>>()

function linesIndex(report: Findings): Buckets<SeamLine> {
  const index = lineIndexes.get(report.joins) ?? bucketsOf(seamLines(report), ({ middle }) => ({ at: middle, size: [0, 0] }))
  lineIndexes.set(report.joins, index)
  return index
}

export function meetingsIndex(report: Findings): Buckets<Placed<Meeting>> {
  const placed = (): Placed<Meeting>[] => clashesLast(report.meetings).map((item) => ({ at: pointOf(item.at), item }))
  const index = meetingIndexes.get(report.meetings) ?? bucketsOf(placed(), ({ at }) => ({ at, size: [0, 0] }))
  meetingIndexes.set(report.meetings, index)
  return index
}

/** Two pairs may meet at one point: the one that clashes is the one to see. */
const clashesLast = (meetings: readonly Meeting[]): readonly Meeting[] =>
  [...meetings].sort((a, b) => Number(a.verdict === 'clashes') - Number(b.verdict === 'clashes'))

/** Pixels between numbers, and between marks, that leave each to be read; under the last only dots are drawn. */
const ROOM_FOR_NUMBERS = 40
const ROOM_FOR_MARKS = 17
/** Cells in pixels under which no number is sought. */
const LEAST_CELL = 12

/** Round a mark, by day and by night: the cloth under it may be of any colour. */
const PALE = '#fffaf2'

export interface Shown {
  /** The seams' numbers are shown. */
  readonly numbers: boolean
  readonly meetings: boolean
}

export function drawMarks(
  pen: Pen,
  report: Findings | null,
  shown: Shown,
  faults: readonly Outline[],
  ring: readonly (readonly Point[])[],
  frame: Frame,
  size: Point,
  inks: Inks,
): void {
  drawFaults(pen, faults, frame)
  drawSeamNumbers(pen, report, shown, frame, size, inks)
  drawRing(pen, ring, frame)
  if (report !== null && shown.meetings) drawMeetings(pen, report, frame, size)
}

/** Takes numbers and marks out of what lies on the sheet above them, so that an outline there runs under them. */
export function clearMarks(pen: Pen, report: Findings | null, shown: Shown, frame: Frame, size: Point, inks: Inks): void {
  pen.save()
  pen.globalCompositeOperation = 'destination-out'
  drawSeamNumbers(pen, report, shown, frame, size, inks)
  if (report !== null && shown.meetings) drawMeetings(pen, report, frame, size)
  pen.restore()
}

function drawSeamNumbers(pen: Pen, report: Findings | null, shown: Shown, frame: Frame, size: Point, inks: Inks): void {
  if (report !== null && shown.numbers && frame.scale >= LEAST_CELL) {
    const { low, high } = sightOf(frame, size)
    const lines = linesIndex(report).touching(low, high)
    if (roomOf(lines.length, frame, low, high) >= ROOM_FOR_NUMBERS) drawNumbers(pen, lines, frame, inks)
  }
}

/** Pixels that each of so many things has to itself, across. */
const roomOf = (count: number, { scale }: Frame, low: Point, high: Point): number =>
  Math.sqrt(((high[0] - low[0]) * (high[1] - low[1])) / Math.max(1, count)) * scale

function drawMeetings(pen: Pen, report: Findings, frame: Frame, size: Point): void {
  const { low, high } = sightOf(frame, size)
  const all = meetingsIndex(report).touching(low, high)
  const clashes = all.filter(({ item }) => item.verdict === 'clashes')
  const near = roomOf(all.length, frame, low, high) >= ROOM_FOR_MARKS
  if (!near && roomOf(clashes.length, frame, low, high) < ROOM_FOR_MARKS) return drawDots(pen, clashes, frame)
  for (const { at, item } of near ? all : clashes) drawMark(pen, frame.toPixels(...at), item)
}

const paths = new Map<string, Path2D>()

function drawMark(pen: Pen, [x, y]: Point, { verdict }: Meeting): void {
  const { path, fill } = MARKS[verdict]
  const drawn = paths.get(path) ?? new Path2D(path)
  paths.set(path, drawn)
  pen.save()
  pen.translate(x, y)
  pen.lineWidth = 2.5
  pen.strokeStyle = PALE
  pen.stroke(drawn)
  pen.fillStyle = fill
  pen.fill(drawn)
  pen.restore()
}

function drawDots(pen: Pen, clashes: readonly Placed<Meeting>[], frame: Frame): void {
  const path = new Path2D()
  for (const { at } of clashes) {
    const [x, y] = frame.toPixels(...at)
    path.rect(x - 1.5, y - 1.5, 3, 3)
  }
  pen.fillStyle = MARKS.clashes.fill
  pen.fill(path)
}

function drawFaults(pen: Pen, faults: readonly Outline[], frame: Frame): void {
  pen.save()
  pen.fillStyle = 'rgb(194 47 61 / 0.28)'
  pen.lineCap = 'round'
  for (const { sort, ring } of faults) {
    const path = new Path2D()
    trace(path, ring, frame)
    if (sort !== 'gap') pen.fill(path)
    pen.setLineDash([])
    pen.strokeStyle = PALE
    pen.lineWidth = 4.5
    pen.stroke(path)
    pen.setLineDash(sort === 'gap' ? [2, 6] : [8, 5])
    pen.strokeStyle = '#c22f3d'
    pen.lineWidth = 2.5
    pen.stroke(path)
  }
  pen.restore()
}

/** Seams that decide one another, shown while one of their meetings is pointed at. */
function drawRing(pen: Pen, ring: readonly (readonly Point[])[], frame: Frame): void {
  pen.save()
  pen.strokeStyle = '#c22f3d'
  pen.globalAlpha = 0.42
  pen.lineWidth = 14
  pen.lineCap = 'round'
  for (const points of ring) {
    pen.beginPath()
    points.forEach((point, index) => {
      if (index === 0) pen.moveTo(...frame.toPixels(...point))
      else pen.lineTo(...frame.toPixels(...point))
    })
    pen.stroke()
  }
  pen.restore()
}

/** The number of each seam in sewing order, with a wedge on the side where its allowances lie (two bars where they lie open). */
function drawNumbers(pen: Pen, lines: readonly SeamLine[], frame: Frame, { ink, paper }: Inks): void {
  const size = Math.max(9, Math.min(13, frame.scale * 0.17))
  pen.save()
  pen.font = `600 ${size}px Inter, sans-serif`
  pen.textAlign = 'center'
  pen.textBaseline = 'middle'
  for (const { middle, lies, number: order, points } of lines) {
    const [x, y] = frame.toPixels(...middle)
    const [ox, oy] = frame.toPixels(0, 0)
    const [a, b] = points as readonly [Point, Point]
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
    const text = String(order)
    const [half, wide] = [size * 0.82, Math.max(size * 0.82, size * (0.28 * text.length + 0.26))]
    pen.beginPath()
    pen.roundRect(x - wide, y - half, wide * 2, half * 2, half)
    pen.fillStyle = paper
    pen.fill()
    pen.strokeStyle = ink
    pen.lineWidth = 1
    pen.stroke()
    pen.fillStyle = ink
    pen.fillText(text, x, y + 0.5)
  }
  pen.restore()
}
