/**
 * Walks a printed quilting line as a reader does: from "Start", along the ink, from each number straight to the next, the way an arrow points.
 *
 * It knows the ink alone: paths and words that a surface received. Seams come from the patches of the report, by a rule of its own: what two patches
 * share is a seam. Nothing of the route is asked.
 */
import type { Drawing, Report } from '../../geometry/index.ts'
import { drawPicture } from '../../geometry/printing/drawPicture.ts'
import { fabricFills } from '../../geometry/printing/fabricFill.ts'
import { INK } from '../../geometry/printing/pageStyle.ts'
import type { PenPath, Surface } from '../../geometry/printing/pen.ts'

export type Spot = readonly [number, number]
type Stretch = readonly [Spot, Spot]

interface Ink {
  readonly paths: readonly { readonly corners: readonly Spot[]; readonly fill: string | undefined; readonly line: string | undefined }[]
  readonly words: readonly { readonly text: string; readonly at: Spot }[]
}

/** All ink of a picture, in points from its top left. */
export function inkOf(drawing: Drawing, scale: number): Ink {
  const paths: { corners: Spot[]; fill: string | undefined; line: string | undefined }[] = []
  const words: { text: string; at: Spot }[] = []
  const path = (way: PenPath, paint: { fill?: string; line?: { colour: string } }): void => {
    const corners: Spot[] = []
    way({ moveTo: (x, y) => corners.push([x, y]), lineTo: (x, y) => corners.push([x, y]), close: () => undefined })
    paths.push({ corners, fill: paint.fill, line: paint.line?.colour })
  }
  const surface: Surface = {
    path,
    within: (_, inside) => inside(),
    words: ({ text, at }) => words.push({ text, at }),
    // About as wide as the printed face.
    width: ({ text, size }) => text.length * size * 0.6,
  }
  drawPicture(surface, drawing, { at: [0, 0], scale, fabricFill: fabricFills([]) })
  return { paths, words }
}

/** Which stretches are sewn, in points, each as often as it is sewn; what a reader would stumble over comes first. */
export interface Walk {
  readonly stumbles: readonly string[]
  readonly sewn: readonly Stretch[]
}

/** How far a line drawn beside its seam may be from it, in points. */
const NEAR = 2.6

/** Walks one picture; `seamCorners` are the places where seams of the block begin, end or cross, in points of the picture. */
export function walkPicture(ink: Ink, seamCorners: readonly Spot[]): Walk {
  const stumbles: string[] = []
  const stops = new Map<number, { at: Spot; starts: boolean; ends: boolean }>()
  const lines = ink.paths.filter(({ line, fill }) => line === INK.accent && fill === undefined).map((path) => path.corners)
  // Where no line of quilting comes by, no number stands.
  const corners = seamCorners.filter((spot) =>
    lines.some((line) => line.some((end, at) => at > 0 && awayFrom(spot, [line[at - 1] as Spot, end]) < NEAR)),
  )
  const boxes = ink.paths
    .filter(({ corners: outline, fill }) => outline.length > 16 && (fill === INK.white || fill === INK.ink))
    .map((one) => boxOf(one.corners))
  for (const { text, at } of ink.words) {
    if (!/^(Start )?\d+( End)?( · |$)/.test(text)) continue
    const box = boxes.find(([left, top, right, foot]) => at[0] > left && at[0] < right && at[1] > top && at[1] < foot)
    const place = box === undefined ? undefined : placeOf(box, corners)
    if (place === undefined || place === null) {
      stumbles.push(`${text} stands at no corner, or at more than one`)
      continue
    }
    for (const said of text.split(' · ')) {
      const number = Number.parseInt(said.replace('Start ', ''), 10)
      if (stops.has(number)) stumbles.push(`${number} stands twice`)
      stops.set(number, { at: place, starts: said.startsWith('Start '), ends: said.endsWith(' End') })
    }
  }
  const arrows = ink.paths.filter((path) => path.corners.length === 4 && path.fill === INK.ink).map((path) => arrowOf(path.corners))
  const sewn: Stretch[] = []
  let stitching = false
  for (let number = 1; stops.has(number); number += 1) {
    const stop = stops.get(number) as { at: Spot; starts: boolean; ends: boolean }
    if (!stitching && !stop.starts) stumbles.push(`${number} follows no start`)
    stitching = !stop.ends
    if (!stitching) continue
    const next = stops.get(number + 1)
    if (next === undefined) {
      stumbles.push(`after ${number} there is no number and no end`)
      break
    }
    const leg: Stretch = [stop.at, next.at]
    if (next.starts) stumbles.push(`${number} runs into a start`)
    if (!lines.some((line) => liesAlong(line, leg))) stumbles.push(`no line runs straight from ${number} to ${number + 1}`)
    const arrow = arrows.findIndex((one) => pointsAlong(one, leg))
    if (arrow < 0) stumbles.push(`no arrow leads from ${number} to ${number + 1}`)
    else arrows.splice(arrow, 1)
    sewn.push(leg)
  }
  if (stitching) stumbles.push('the line has no end')
  if (sewn.length + [...stops.values()].filter(({ ends }) => ends).length !== stops.size) stumbles.push('some numbers are never reached')
  if (arrows.length > 0) stumbles.push(`${arrows.length} arrows belong to no leg`)
  return { stumbles, sewn }
}

type Box = readonly [number, number, number, number]

function boxOf(corners: readonly Spot[]): Box {
  const [xs, ys] = [corners.map(([x]) => x), corners.map(([, y]) => y)]
  return [Math.min(...xs), Math.min(...ys), Math.max(...xs), Math.max(...ys)]
}

/** Half the height of one number's box, in points. */
const ROW = 5.4

/** A number stands over its corner: the middle of its box or one of its ends does, or a side of it touches the corner. Null where that is not plain. */
function placeOf([left, top, right, foot]: Box, corners: readonly Spot[]): Spot | null {
  const [x, y] = [(left + right) / 2, (top + foot) / 2]
  const anchors: Spot[] = [left + ROW, x, right - ROW].flatMap((across): Spot[] =>
    [top, top + ROW, y, foot - ROW, foot].map((down) => [across, down]),
  )
  const near = corners.filter(([cx, cy]) => anchors.some(([ax, ay]) => Math.hypot(cx - ax, cy - ay) < 1))
  const places = new Set(near.map((spot) => spot.map((value) => value.toFixed(2)).join()))
  return places.size === 1 ? (near[0] as Spot) : null
}

const between = (a: Spot, b: Spot): number => Math.hypot(b[0] - a[0], b[1] - a[1])

/** A line beside its seam runs from about one end of a leg to about the other. */
const liesAlong = (line: readonly Spot[], [from, to]: Stretch): boolean =>
  between(line[0] as Spot, from) < NEAR && between(line.at(-1) as Spot, to) < NEAR && line.every((spot) => awayFrom(spot, [from, to]) < NEAR)

/** The tip of an arrow, and the middle of its other corners. */
function arrowOf(corners: readonly Spot[]): { readonly tip: Spot; readonly tail: Spot } {
  const [tip, ...others] = corners as [Spot, Spot, Spot, Spot]
  return { tip, tail: [(others[0][0] + others[2][0]) / 2, (others[0][1] + others[2][1]) / 2] }
}

function pointsAlong({ tip, tail }: { tip: Spot; tail: Spot }, leg: Stretch): boolean {
  const [[ax, ay], [bx, by]] = leg
  const along = ((tip[0] - tail[0]) * (bx - ax) + (tip[1] - tail[1]) * (by - ay)) / (between(tail, tip) * between(...leg))
  return along > 0.99 && awayFrom(tip, leg) < NEAR && awayFrom(tail, leg) < NEAR
}

function awayFrom([px, py]: Spot, [[ax, ay], [bx, by]]: Stretch): number {
  const [dx, dy] = [bx - ax, by - ay]
  const part = Math.max(0, Math.min(1, ((px - ax) * dx + (py - ay) * dy) / (dx * dx + dy * dy || 1)))
  return Math.hypot(px - ax - part * dx, py - ay - part * dy)
}

/** Every seam of a block, cut wherever another begins: what sides of two patches share, in cells; not between two borders. */
export function seamsOf({ patches }: Pick<Report, 'patches'>): Stretch[] {
  const sides = patches.flatMap(({ id, unit, corners }) => {
    const spots = corners.map((corner) => corner.map(inCells) as unknown as Spot)
    return spots.map((to, at) => ({ id, unit, from: spots.at(at - 1) as Spot, to }))
  })
  const corners = sides.map(({ to }) => to)
  const seams = new Map<string, Stretch>()
  for (const one of sides) {
    for (const piece of cutAt([one.from, one.to], corners)) {
      const middle: Spot = [(piece[0][0] + piece[1][0]) / 2, (piece[0][1] + piece[1][1]) / 2]
      const other = sides.some(
        (side) => side.id !== one.id && (side.unit !== null || one.unit !== null) && awayFrom(middle, [side.from, side.to]) < 1e-6,
      )
      if (other)
        seams.set(
          [...piece]
            .map((spot) => spot.map((x) => Math.round(x * 1e5) + 0).join())
            .sort()
            .join(' '),
          piece,
        )
    }
  }
  return [...seams.values()]
}

const inCells = (value: number | string): number => {
  const [part, whole = '1'] = String(value).split('/')
  return Number(part) / Number(whole)
}

function cutAt([a, b]: Stretch, places: readonly Spot[]): Stretch[] {
  const long = between(a, b)
  const cuts = places.filter((spot) => awayFrom(spot, [a, b]) < 1e-6).map((spot) => between(a, spot) / long)
  const parts = [...new Set([0, ...cuts, 1].map((part) => Number(part.toFixed(7))))].sort((x, y) => x - y)
  const at = (part: number): Spot => [a[0] + (b[0] - a[0]) * part, a[1] + (b[1] - a[1]) * part]
  return parts.slice(1).map((part, place) => [at(parts[place] as number), at(part)] as const)
}

/** Where each picture of a quilting step lies: the whole block, or the part that the small picture before it shades. In cells. */
export function picturesOf(
  drawings: readonly Drawing[],
  { patches }: Pick<Report, 'patches'>,
  cell: number,
): { readonly drawing: Drawing; readonly left: number; readonly top: number }[] {
  const boxes = patches.map(({ corners }) => boxOf(corners.map((corner) => corner.map(inCells) as unknown as Spot)))
  const [left, top] = [Math.min(...boxes.map((box) => box[0])), Math.min(...boxes.map((box) => box[1]))]
  return drawings.flatMap((drawing, at) => {
    if (!drawing.marks.some(({ type }) => type === 'stop')) return []
    const [ownLeft, ownTop] = cornerOf(drawing)
    const shown = { left, top }
    const place = drawings[at - 1]
    if (place !== undefined) {
      const areas = place.marks.flatMap((mark) => (mark.type === 'area' ? [mark] : []))
      const shaded = boxOf((areas.find(({ side }) => side === 'wrong') as { outline: readonly Spot[] }).outline)
      const whole = boxOf(areas.flatMap(({ outline }) => outline))
      const box = shaded.map((value, side) => (value - (whole[side % 2] as number)) / cell) as unknown as Box
      // All parts together are the grid, which begins at 0 0.
      shown.left = box[0]
      shown.top = box[1]
    }
    return [{ drawing, left: shown.left - ownLeft / cell, top: shown.top - ownTop / cell }]
  })
}

const cornerOf = ({ marks }: Drawing): Spot => {
  const [left, top] = boxOf(marks.flatMap((mark) => (mark.type === 'area' ? mark.outline : [])))
  return [left, top]
}
