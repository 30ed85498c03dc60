/**
 * A unit under the ruler, a picture for each cut: fabric sticking out, the ruler with its numbers, its 45° line, and the edge to cut along in red.
 *
 * In      a box unit and its block, both read; the hand that holds the cutter.
 * Out     two drawings in the measure's unit; none for a unit that is not trimmed. A goose and its like have the point where their seams meet
 *         measured from both cut edges; a half-square triangle needs the 45° line alone. In the second cut the edges already cut lie on the ruler's
 *         lines for the unfinished size.
 * Source  where the ruler lies: `trim.ts` of the cutting room, which names its sources.
 */
import { cellOf } from '../../../block/lengthsOf.ts'
import { ruleOf } from '../../../cutting/oneRun.ts'
import { type Hand, type RulerCut, trimCuts } from '../../../cutting/sizes/trim.ts'
import { toNumber } from '../../../exact/rational.ts'
import { shapeOf } from '../../../units/kinds.ts'
import type { Block, BoxUnit, MeasureUnit } from '../../../values/block.ts'
import { type BoundingBox, clipped, minus, plus, unitVector, withRawEdge } from '../pieceDrawing.ts'
import { onRuler } from '../unitPictures.ts'
import { Sketch } from '../sketch.ts'
import type { Drawing, Spot } from '../values.ts'

/** How far fabric sticks out of the unfinished size, and how far apart the ruler's numbered lines are. */
const ROUGH = { in: 3 / 16, cm: 0.5 } as const
const STEP = { in: 1, cm: 2 } as const

export function trimPictures(unit: BoxUnit, block: Block, hand: Hand): Drawing[] {
  return trimCuts(unit, block, hand).map((cut, index) => trimPicture(unit, block, cut, index === 0 ? 'first' : 'second'))
}

/** The ruler's place in the picture: its trimming corner is the origin, and the unit lies below and to the side of it. */
interface Place {
  readonly cut: RulerCut
  readonly measure: MeasureUnit
  /** From the ruler's numbers to the picture. */
  readonly spot: (fromSide: number, fromTop: number) => Spot
  readonly reach: readonly [number, number]
  readonly rough: number
}

function trimPicture(unit: BoxUnit, block: Block, cut: RulerCut, which: 'first' | 'second'): Drawing {
  const [hand] = cut.edges
  const measure = block.measure.unit
  const [wide, high] = cut.size
  const out = hand === 'right' ? -1 : 1
  const rough = ROUGH[measure]
  const place: Place = {
    cut,
    measure,
    rough,
    spot: (fromSide, fromTop) => [out * fromSide, fromTop],
    // The ruler reaches past the unit on the two sides that it does not cut.
    reach: [wide + 4 * rough, high + 4 * rough],
  }
  const sketch = new Sketch()
  drawFabric(sketch, unit, block, place, which)
  drawRuler(sketch, place)
  if (which === 'second') drawSizeLines(sketch, place)
  drawSeamLines(sketch, place)
  if (which === 'first') drawMeasures(sketch, place)
  sketch.line([place.spot(place.reach[0], 0), place.spot(0, 0), place.spot(0, place.reach[1])], 'blade')
  return sketch.drawing(titleOf(cut, which, measure), rough)
}

function titleOf({ edges: [hand], size: [wide, high], points, seams }: RulerCut, which: 'first' | 'second', measure: MeasureUnit): string {
  const who = hand === 'right' ? 'Right-handed' : 'Left-handed'
  const along = `cut along the red edges, the ruler’s ${hand} and top edges`
  if (which === 'second')
    return `${who}, second cut: rotate the unit 180° and lay the two cut edges on the ${onRuler(wide, measure)} and ${onRuler(high, measure)} lines. Then ${along}.`
  const marked = points.some(({ type }) => type !== 'end')
  const lines = [
    ...(seams.some(isHalfSquare) ? [`the 45° line on ${marked ? 'a' : 'the'} seam`] : []),
    ...(marked ? ['the point where the seams meet at the two distances shown'] : []),
  ]
  const lay = lines.length === 0 ? 'the seam’s end at the two distances shown' : lines.join(' and ')
  return `${who}, first cut: lay ${lay}, with fabric past the ruler on both sides. Then ${along}.`
}

const isHalfSquare = ({ angle }: RulerCut['seams'][number]): boolean => Math.abs(angle - 45) < 1e-6

/** The unit as it was sewn: it sticks out wherever it is not cut yet. */
function drawFabric(sketch: Sketch, unit: BoxUnit, block: Block, { cut, rough, spot }: Place, which: 'first' | 'second'): void {
  const cell = toNumber(cellOf(block))
  const { seam } = ruleOf(block)
  const [wide, high] = cut.size
  const lying: BoxUnit = {
    ...unit,
    at: [0, 0],
    turn: cut.turn,
    size: cut.turn % 2 === (unit.turn ?? 0) % 2 ? unit.size : [unit.size[1], unit.size[0]],
  }
  const patches = shapeOf(lying).patches.map(({ name, corners }) => ({
    id: name,
    unit: unit.id,
    name,
    fabric: unit.fabrics[name] as string,
    corners: corners.map(([x, y]): Spot => [toNumber(x) * cell, toNumber(y) * cell]),
  }))
  const left = Math.min(spot(0, 0)[0], spot(wide, 0)[0])
  const cutAlready = which === 'second' ? 0 : rough
  const [toLeft, toRight] = cut.edges[0] === 'right' ? [cutAlready, rough] : [rough, cutAlready]
  const box: BoundingBox = { left: left - toLeft, right: left + wide + toRight, top: -rough, bottom: high + cutAlready }
  for (const { patch, outline } of withRawEdge(patches, seam + rough)) {
    const lain = outline.map((corner) => plus(corner, [left + seam, seam]))
    sketch.area(clipped(lain, box), patch.fabric, 'right')
  }
}

/** The ruler's outline, its lines at whole numbers, and the numbers along both cutting edges. */
function drawRuler(sketch: Sketch, { spot, reach: [far, down], measure, rough }: Place): void {
  sketch.line([spot(0, 0), spot(far, 0), spot(far, down), spot(0, down)], 'thin', true)
  for (let at: number = STEP[measure]; at < far; at += STEP[measure]) {
    sketch.line([spot(at, 0), spot(at, down)], 'thin')
    // In the ruler's far corner the numbers of its two edges would stand on each other.
    if (at < far - STEP[measure] * 0.7) sketch.text(spot(at, down - rough * 0.8), String(at), 'small')
  }
  for (let at: number = STEP[measure]; at < down; at += STEP[measure]) {
    sketch.line([spot(0, at), spot(far, at)], 'thin')
    if (at < down - STEP[measure] * 0.7) sketch.text(spot(far - rough * 0.8, at), String(at), 'small')
  }
}

/** The ruler's lines that the two cut edges lie on. */
function drawSizeLines(sketch: Sketch, { cut: { size }, spot, reach: [far, down], measure, rough }: Place): void {
  const [wide, high] = size
  sketch.line([spot(wide, 0), spot(wide, down)], 'marked')
  sketch.line([spot(0, high), spot(far, high)], 'marked')
  sketch.text(spot(wide / 2, high + rough * 1.4), `${onRuler(wide, measure)} × ${onRuler(high, measure)}`, 'normal')
}

/** The ruler's line along a slanting seam, right across the ruler; at 45° every ruler has it. */
function drawSeamLines(sketch: Sketch, { cut: { seams }, spot, rough }: Place): void {
  const slanting = seams.filter(({ angle }) => angle % 90 > 1e-9)
  slanting.forEach((seam, index) => {
    const [from, to] = seam.ends
    const [a, b] = [spot(from.fromSide, from.fromTop), spot(to.fromSide, to.fromTop)]
    const along = unitVector(minus(b, a))
    sketch.line([plus(a, along, -rough), plus(b, along, rough)], 'marked')
    if (index === 0 && isHalfSquare(seam)) sketch.text(plus(a, minus(b, a), 0.3), '45°', 'normal')
  })
}

/** The point where seams meet, and how far it must lie from both edges. A seam's end alone is measured only where it meets no 45° line. */
function drawMeasures(sketch: Sketch, { cut: { points, seams }, spot, measure, rough }: Place): void {
  const meeting = points.filter(({ type }) => type !== 'end')
  for (const { at } of meeting.length > 0 ? meeting : seams.some(isHalfSquare) ? [] : points.slice(0, 1)) {
    const point = spot(at.fromSide, at.fromTop)
    const above = -rough * 2.2
    sketch.arrow([point[0], above], spot(0, above), 'turn')
    sketch.arrow(spot(0, above), [point[0], above], 'turn')
    sketch.line([[point[0], above], point], 'thin')
    sketch.text([point[0] / 2, above - rough * 1.1], onRuler(at.fromSide, measure), 'normal')
    const out = Math.sign(spot(1, 0)[0])
    const beside: Spot = [point[0] + out * rough * 1.2, 0]
    sketch.arrow([beside[0], 0], [beside[0], point[1]], 'turn')
    sketch.text(
      [beside[0] + out * rough * 0.6, Math.max(point[1] / 2, rough * 1.2)],
      onRuler(at.fromTop, measure),
      'normal',
      out < 0 ? 'right' : 'left',
    )
    sketch.point(point, 'tip')
  }
}
