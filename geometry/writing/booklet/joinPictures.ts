/**
 * Pictures of a run: its items laid out apart, right side up, with what meets along each seam; and the sewn piece from behind, as pressed.
 *
 * In      a run, and the words on its items.
 * Out     drawings to scale.
 */
import type { Join } from '../../values/report.ts'
import { type BookletContext, type MeasuredPatch, joinsIn, patchesIn, spotOf } from './bookletContext.ts'
import {
  centreOf,
  cross,
  dot,
  type SeamBetweenPatches,
  boundsOf,
  vectorLength,
  midpoint,
  minus,
  outward,
  plus,
  polygonSides,
  seamBetween,
  type LineSegment,
  withRawEdge,
} from './pieceDrawing.ts'
import { dotsOf } from './setInSeam.ts'
import { type RunItem, type SewingRun, seamPlace, towardSign } from './runs.ts'
import { boxAt, Sketch } from './sketch.ts'
import type { Drawing, Spot } from './values.ts'
import { longestOf, wrongSideSketch } from './unitPictures.ts'

/** Patches above which the wrong side is not drawn: its seams are too small to be seen. */
const MOST_BEHIND = 160

/** The items of a run apart, right side up, with their labels, meetings and pressing arrows. */
export function layoutPicture(run: SewingRun, labels: readonly string[], context: BookletContext, numbered: boolean, title: string): Drawing {
  const gap = gapOf(run, context)
  return runSketch(run, labels, context, numbered, gap).drawing(title, gap / 3)
}

/** The items of a run so far apart, from where the first lies in the block. */
export function runSketch(run: SewingRun, labels: readonly string[], context: BookletContext, numbered: boolean, gap: number): Sketch {
  const sketch = new Sketch()
  // A seam that bends lies between its two pieces as a whole.
  const bends = run.joins.some(({ kind }) => kind === 'set-in')
  const shift = (spot: Spot): Spot => plus(spot, run.axis, gap * (bends ? 0.5 : before(run, spot) - 0.5))
  run.items.forEach((item, index) => {
    const moved = (spot: Spot): Spot => plus(spot, run.axis, gap * index)
    for (const { patch, outline } of withRawEdge(item.patches, context.seam)) sketch.area(outline.map(moved), patch.fabric)
  })
  // Over all pieces: a piece that comes later would hide the words of an earlier one.
  run.items.forEach((item, index) => {
    if (labels[index] !== '') sketch.text(plus(labelPlace(item), run.axis, gap * index), labels[index] as string)
  })
  run.joins.forEach((join) => {
    drawSeam(sketch, join, context, shift)
    for (const { at, verdict } of context.meetings.get(join.id) ?? []) sketch.point(shift(spotOf(context, at)), verdict)
    for (const dot of dotsOf(join, context)) sketch.point(shift(dot), 'dot')
    if (join.kind === 'set-in') pressLegs(sketch, join, context, shift, gap)
    else pressArrow(sketch, join, run, context, shift, gap)
  })
  if (numbered)
    for (const [index, join] of inOrder(run, context).entries()) sketch.point(besideRow(run, join, context, shift, gap), 'number', String(index + 1))
  return sketch
}

/** Beyond the end of a seam, so that its number lies on no fabric. */
function besideRow({ axis }: SewingRun, join: Join, context: BookletContext, shift: (spot: Spot) => Spot, gap: number): Spot {
  const [from, to] = [spotOf(context, join.from), spotOf(context, join.to)]
  const out: Spot = [Math.abs(axis[1]), Math.abs(axis[0])]
  const first = dot(from, out) <= dot(to, out) ? from : to
  return plus(shift(first), out, -(context.seam + gap * 0.35))
}

/** The middle of a piece; of its first patch where the piece bends round its own middle. */
function labelPlace({ centre, patches }: RunItem): Spot {
  const inside = patches.some(({ corners }) => centreIsIn(corners, centre))
  return inside ? centre : centreOf((patches[0] as MeasuredPatch).corners)
}

/** Whether a ray to the right crosses an odd number of sides, or the point lies on one. */
const centreIsIn = (corners: readonly Spot[], [x, y]: Spot): boolean =>
  polygonSides(corners).filter(([a, b]) => a[1] > y !== b[1] > y && x < a[0] + ((y - a[1]) / (b[1] - a[1])) * (b[0] - a[0])).length % 2 === 1 ||
  polygonSides(corners).some(([a, b]) => Math.abs(cross(minus(b, a), minus([x, y], a))) < 1e-6 && dot(minus(a, [x, y]), minus(b, [x, y])) <= 0)

const gapOf = (run: SewingRun, context: BookletContext): number => {
  const { left, right, top, bottom } = boundsOf(run.items.flatMap(({ patches }) => patches.flatMap(({ corners }) => corners)))
  return context.seam * 2 + Math.max(context.seam * 2, Math.max(right - left, bottom - top) * 0.06)
}

/** Seams from the first item to the last. */
export const inOrder = (run: SewingRun, context: BookletContext): Join[] =>
  [...run.joins].sort((a, b) => seamPlace(context, run, a) - seamPlace(context, run, b))

/** How many items lie before a place. */
const before = (run: SewingRun, spot: Spot): number => run.items.filter(({ centre }) => dot(centre, run.axis) < dot(spot, run.axis) - 1e-9).length

/** A seam that is not one straight line from end to end shows where it is sewn now and where later. */
function drawSeam(sketch: Sketch, join: Join, context: BookletContext, shift: (spot: Spot) => Spot): void {
  if (join.kind === 'straight') return
  for (const stretch of sewnNow(join, context)) {
    if (join.kind === 'set-in') sketch.line(stretch.map(shift), 'stitch')
    else drawHalf(sketch, stretch, [spotOf(context, join.from), spotOf(context, join.to)], shift)
  }
}

/** A partial seam is sewn half of the way at first, from the end of the whole seam that it reaches. */
function drawHalf(sketch: Sketch, stretch: LineSegment, ends: LineSegment, shift: (spot: Spot) => Spot): void {
  const [a, b] = stretch
  const atFirst = ends.some((end) => vectorLength(minus(end, a)) < 1e-6)
  const middle = midpoint(a, b)
  sketch.line([shift(atFirst ? a : b), shift(middle)], 'stitch')
  sketch.line([shift(middle), shift(atFirst ? b : a)], 'marked')
  sketch.point(shift(middle), 'dot')
}

/** Where the two sides of a join lie along each other when it is sewn. */
export const sewnNow = (join: Join, context: BookletContext): LineSegment[] =>
  seamBetween(patchesIn(context, join.sides[0]), patchesIn(context, join.sides[1])).map(({ stretch }) => stretch)

function pressArrow(sketch: Sketch, join: Join, run: SewingRun, context: BookletContext, shift: (spot: Spot) => Spot, gap: number): void {
  const ends = [spotOf(context, join.from), spotOf(context, join.to)] as const
  const at = shift(
    freePlace(
      ends,
      (context.meetings.get(join.id) ?? []).map(({ at: place }) => spotOf(context, place)),
    ),
  )
  const far = gap * 0.42
  const way = towardSign(join, run, context)
  for (const sign of way === 0 ? [1, -1] : [way]) sketch.arrow(plus(at, run.axis, way === 0 ? 0 : -sign * far), plus(at, run.axis, sign * far))
}

/** Across each leg of a seam that bends, square to it, the way its allowances go. */
function pressLegs(sketch: Sketch, join: Join, context: BookletContext, shift: (spot: Spot) => Spot, gap: number): void {
  const { toward } = join.press
  const stretches = sewnNow(join, context)
  const corners = [join.from, ...join.via, join.to].map((at) => spotOf(context, at))
  corners.slice(1).forEach((end, index) => {
    const start = corners[index] as Spot
    const leg = longestOf(stretches.filter(([a, b]) => onLine(a, start, end) && onLine(b, start, end)))
    if (leg === null) return
    const [at, out, far] = [shift(midpoint(...leg)), outward(...leg), gap * 0.42]
    for (const sign of toward === 'open' ? [1, -1] : [toward === 1 ? 1 : -1])
      sketch.arrow(plus(at, out, toward === 'open' ? 0 : -sign * far), plus(at, out, sign * far))
  })
}

const onLine = (spot: Spot, a: Spot, b: Spot): boolean => Math.abs(cross(minus(b, a), minus(spot, a))) < 1e-6

/** The place along a seam that is farthest from its meetings, the middle if there are none. */
function freePlace([a, b]: LineSegment, meetings: readonly Spot[]): Spot {
  const places = [0.5, 0.3, 0.7, 0.2, 0.8, 0.1, 0.9].map((part) => plus(a, minus(b, a), part))
  const away = (spot: Spot): number => Math.min(vectorLength(minus(b, a)) / 6, ...meetings.map((meeting) => vectorLength(minus(spot, meeting))))
  return places.reduce((best, one) => (away(one) > away(best) + 1e-9 ? one : best))
}

/** The block in outline, the pieces of some runs in their cloth. */
export function placePicture(runs: readonly SewingRun[], context: BookletContext, title: string): Drawing {
  const own = new Set(runs.flatMap(({ items }) => items.flatMap(({ patches }) => patches.map(({ id }) => id))))
  const sketch = new Sketch()
  const [wide, high] = context.report.block.finished
  sketch.area(boxAt(0, 0, wide, high), null, 'right', 'cut')
  if (context.patches.size <= MOST_BEHIND)
    for (const patch of context.patches.values()) if (patch.unit !== null && !own.has(patch.id)) sketch.area(patch.corners, null, 'right', 'seam')
  for (const patch of context.patches.values()) if (own.has(patch.id)) sketch.area(patch.corners, patch.fabric, 'right', 'cut')
  return sketch.drawing(title, context.cell * 0.1)
}

/** The sewn piece from behind, its own new seams with arrows; null where it is too large to show them. */
export function pressedRun(run: SewingRun, context: BookletContext, title: string): Drawing | null {
  const patches = patchesIn(context, run.final.id)
  if (patches.length > MOST_BEHIND) return null
  const seams = new Map(joinsIn(context, run.final.id).map((join) => [join.id, drawnSeam(join, context)]))
  const own = run.joins.map(({ id }) => seams.get(id) as SeamBetweenPatches)
  const { left, right, top, bottom } = boundsOf(patches.flatMap(({ corners }) => corners))
  return wrongSideSketch(patches, [...seams.values()], context.seam, own).drawing(title, Math.max(right - left, bottom - top) * 0.04)
}

const drawnSeam = (join: Join, context: BookletContext): SeamBetweenPatches => ({
  sides: [patchesIn(context, join.sides[0]), patchesIn(context, join.sides[1])],
  toward: join.press.toward,
})
