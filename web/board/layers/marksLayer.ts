/**
 * The layer of seam numbers and marks of meetings: those in sight, as far as they can be told apart.
 *
 * In      the findings, and the part of the block that the board shows.
 * Out     what is drawn. From far away only clashes are marked, from farther still as dots.
 */
import type { Findings, Verdict } from '../../../geometry/index.ts'
import type { DrawnSeam, Point } from '../../document/shapes.ts'
import { isNearlyFull, isUnfinished } from '../../document/progress.ts'
import { MARKS, marksPerPlace } from '../../drawing/marks.ts'
import { drawPressArrow } from '../../drawing/pressArrow.ts'
import { meetingsIndex, type PlacedMeeting } from '../hitTest.ts'
import { ROOM_FOR_ARROWS, roomForEach, seamsInSight } from '../seamsInSight.ts'
import { type Frame, visibleCells } from '../viewport.ts'
import { tracePath } from './overlays.ts'
import type { CanvasPen } from './stage.ts'
import type { FaultOutline } from './useFaultOutlines.ts'

/** Pixels that a number, and a mark, needs to itself to be read; with less, clashes are drawn as dots. */
const ROOM_FOR_NUMBERS = 40
const ROOM_FOR_MARKS = 17
/** Cells smaller than this many pixels have no numbers. */
const LEAST_CELL = 12

/** Around a mark, in light and dark themes: the fabric under it may be of any colour. */
const PALE = '#fffaf2'

/** What the layer shows, and where. */
export interface MarksScene {
  /** null: not known, so there is nothing to mark. */
  readonly report: Findings | null
  /** The marks of meetings are shown. */
  readonly marks: boolean
  /** The seams' numbers are shown. */
  readonly numbers: boolean
  /** Pressing arrows are shown instead of numbers; the selected seam, by its join's id. */
  readonly pressing: boolean
  readonly seam: string | null
  readonly frame: Frame
  /** Pixels. */
  readonly size: Point
  readonly ink: string
  readonly paper: string
}

/** `faults` are outlines of what is wrong; `tied` are the seams tied to the clash that is pointed at, in cells. */
export function drawMarks(pen: CanvasPen, scene: MarksScene, faults: readonly FaultOutline[], tied: readonly (readonly Point[])[]): void {
  drawFaults(pen, shownFaults(faults, scene.report), scene.frame, scene.report !== null && isUnfinished(scene.report))
  drawSeamNumbers(pen, scene)
  drawArrows(pen, scene)
  drawTiedSeams(pen, tied, scene.frame)
  drawMeetings(pen, scene)
}

/** Clears numbers and marks out of the layer above, so that an outline there seems to run under them. */
export function clearMarks(pen: CanvasPen, scene: MarksScene): void {
  pen.save()
  pen.globalCompositeOperation = 'destination-out'
  drawSeamNumbers(pen, scene)
  drawArrows(pen, scene)
  drawMeetings(pen, scene)
  pen.restore()
}

function drawSeamNumbers(pen: CanvasPen, { report, numbers, pressing, frame, size, ink, paper }: MarksScene): void {
  if (report === null || !numbers || pressing || frame.scale < LEAST_CELL) return
  const height = Math.max(9, Math.min(13, frame.scale * 0.17))
  pen.save()
  pen.font = `600 ${height}px Inter, sans-serif`
  pen.textAlign = 'center'
  pen.textBaseline = 'middle'
  for (const { middle, number } of seamsInSight(report, frame, size, ROOM_FOR_NUMBERS))
    drawNumber(pen, frame.toPixels(...middle), String(number), height, ink, paper)
  pen.restore()
}

function drawMeetings(pen: CanvasPen, { report, marks, frame, size, ink, paper }: MarksScene): void {
  if (report === null || !marks) return
  const { low, high } = visibleCells(frame, size)
  const all = meetingsIndex(report).touching(low, high)
  const clashes = all.filter(({ meeting }) => meeting.verdict === 'clashes')
  const roomy = roomForEach(all.length, frame, low, high) >= ROOM_FOR_MARKS
  if (!roomy && roomForEach(clashes.length, frame, low, high) < ROOM_FOR_MARKS) return drawDots(pen, clashes, frame)
  const placed = marksPerPlace((roomy ? all : clashes).map(({ at, meeting: { verdict } }) => ({ at, verdict })))
  for (const { at, verdict } of placed) drawMark(pen, frame.toPixels(...at), verdict)
  pen.save()
  pen.font = `600 ${COUNT_HEIGHT}px Inter, sans-serif`
  pen.textAlign = 'center'
  pen.textBaseline = 'middle'
  for (const { at, count } of placed) {
    const [x, y] = frame.toPixels(...at)
    if (count > 1) drawNumber(pen, [x + COUNT_AWAY, y - COUNT_AWAY], String(count), COUNT_HEIGHT, ink, paper)
  }
  pen.restore()
}

/** The number beside a mark where several crossings clash: its height, and how far up and to the right it lies, in pixels. */
const COUNT_HEIGHT = 10
const COUNT_AWAY = 9

const paths = new Map<string, Path2D>()

function drawMark(pen: CanvasPen, [x, y]: Point, verdict: Verdict): void {
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

function drawDots(pen: CanvasPen, clashes: readonly PlacedMeeting[], frame: Frame): void {
  const path = new Path2D()
  for (const { at } of clashes) {
    const [x, y] = frame.toPixels(...at)
    path.rect(x - 1.5, y - 1.5, 3, 3)
  }
  pen.fillStyle = MARKS.clashes.fill
  pen.fill(path)
}

/** While most of the grid is empty, its gaps are only what is still to be laid. */
const shownFaults = (faults: readonly FaultOutline[], report: Findings | null): readonly FaultOutline[] =>
  report === null || isNearlyFull(report) ? faults : faults.filter(({ type }) => type !== 'gap')

/** Red only once the grid is full. */
function drawFaults(pen: CanvasPen, faults: readonly FaultOutline[], frame: Frame, unfinished: boolean): void {
  pen.save()
  pen.fillStyle = unfinished ? 'rgb(106 90 79 / 0.28)' : 'rgb(194 47 61 / 0.28)'
  pen.lineCap = 'round'
  for (const { type, outline } of faults) {
    const path = new Path2D()
    tracePath(path, outline, frame)
    if (type !== 'gap') pen.fill(path)
    pen.setLineDash([])
    pen.strokeStyle = PALE
    pen.lineWidth = 4.5
    pen.stroke(path)
    pen.setLineDash(type === 'gap' ? [2, 6] : [8, 5])
    pen.strokeStyle = unfinished ? '#6a5a4f' : '#c22f3d'
    pen.lineWidth = 2.5
    pen.stroke(path)
  }
  pen.restore()
}

/** Seams that are tied to each other through meetings, shown while one of their clashes is pointed at. */
function drawTiedSeams(pen: CanvasPen, tied: readonly (readonly Point[])[], frame: Frame): void {
  pen.save()
  pen.strokeStyle = '#c22f3d'
  pen.globalAlpha = 0.42
  pen.lineWidth = 14
  pen.lineCap = 'round'
  for (const points of tied) {
    pen.beginPath()
    points.forEach((point, index) => {
      if (index === 0) pen.moveTo(...frame.toPixels(...point))
      else pen.lineTo(...frame.toPixels(...point))
    })
    pen.stroke()
  }
  pen.restore()
}

/** The arrow of each seam; the selected seam is drawn out, so that one sees what is pressed. */
function drawArrows(pen: CanvasPen, { report, pressing, seam, frame, size, ink, paper }: MarksScene): void {
  if (report === null || !pressing) return
  pen.save()
  for (const line of seamsInSight(report, frame, size, ROOM_FOR_ARROWS)) {
    const at = frame.toPixels(...line.middle)
    if (line.join.id === seam) drawSelectedSeam(pen, line, frame, ink, paper)
    const way = directionOf(line.across, frame)
    drawPressArrow(pen, { at, way, open: line.lies === null, asked: line.join.press.rule === 'asked', size: arrowSize(frame) })
  }
  pen.restore()
}

/** Pixels from the middle of an arrow to its tip. */
const arrowSize = ({ scale }: Frame): number => Math.max(9, Math.min(16, scale * 0.16))

function drawSelectedSeam(pen: CanvasPen, { points, middle }: DrawnSeam, frame: Frame, ink: string, paper: string): void {
  const path = new Path2D()
  points.forEach((point, index) => {
    if (index === 0) path.moveTo(...frame.toPixels(...point))
    else path.lineTo(...frame.toPixels(...point))
  })
  const [x, y] = frame.toPixels(...middle)
  const ring = new Path2D()
  ring.arc(x, y, arrowSize(frame) * 1.7, 0, Math.PI * 2)
  for (const [colour, width] of [
    [paper, 7],
    [ink, 3],
  ] as const) {
    pen.strokeStyle = colour
    pen.lineWidth = width
    pen.stroke(path)
    pen.stroke(ring)
  }
}

/** A direction on the block as it points on the screen, one pixel long. */
function directionOf(way: Point, frame: Frame): Point {
  const [ox, oy] = frame.toPixels(0, 0)
  const [x, y] = frame.toPixels(...way)
  const length = Math.hypot(x - ox, y - oy) || 1
  return [(x - ox) / length, (y - oy) / length]
}

/** The seam's place in the sewing order. */
function drawNumber(pen: CanvasPen, [x, y]: Point, text: string, height: number, ink: string, paper: string): void {
  const [half, wide] = [height * 0.82, Math.max(height * 0.82, height * (0.28 * text.length + 0.26))]
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
