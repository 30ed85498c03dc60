/**
 * Pictures of a run: its items laid out apart, right side up, with what meets along each seam; and the sewn piece from behind, as pressed.
 *
 * In      a run of the bench and the words on its items.
 * Out     drawings to scale.
 */
import type { Join } from '../../values/report.ts'
import { type Bench, joinsIn, patchesIn, spotOf } from './bookletContext.ts'
import { dot, type DrawnSeam, extentOf, lengthOf, middleOf, minus, plus, seamBetween, type Stretch, withRawEdge } from './pieceDrawing.ts'
import { type Run, seamPlace, towardSign } from './runs.ts'
import { boxAt, Sketch } from './sketch.ts'
import type { Drawing, Spot } from './values.ts'
import { longestOf, wrongSide } from './unitPictures.ts'

/** Patches above which the wrong side is not drawn: its seams are too small to be seen. */
const MOST_BEHIND = 160

export function layoutPicture(run: Run, labels: readonly string[], bench: Bench, numbered: boolean, title: string): Drawing {
  const sketch = new Sketch()
  const gap = gapOf(run, bench)
  // A seam that bends lies between its two pieces as a whole.
  const bends = run.joins.some(({ kind }) => kind === 'set-in')
  const shift = (spot: Spot): Spot => plus(spot, run.axis, gap * (bends ? 0.5 : before(run, spot) - 0.5))
  run.items.forEach((item, index) => {
    const moved = (spot: Spot): Spot => plus(spot, run.axis, gap * index)
    for (const { patch, outline } of withRawEdge(item.patches, bench.seam)) sketch.area(outline.map(moved), patch.fabric)
    if (labels[index] !== '') sketch.text(moved(item.centre), labels[index] as string)
  })
  run.joins.forEach((join) => {
    drawSeam(sketch, join, bench, shift)
    for (const { at, verdict } of bench.meetings.get(join.id) ?? []) sketch.point(shift(spotOf(bench, at)), verdict)
    pressArrow(sketch, join, run, bench, shift, gap)
  })
  if (numbered) for (const [index, join] of inOrder(run, bench).entries()) sketch.point(shift(spotOf(bench, join.from)), 'number', String(index + 1))
  return sketch.drawing(title, gap / 3)
}

const gapOf = (run: Run, bench: Bench): number => {
  const { left, right, top, bottom } = extentOf(run.items.flatMap(({ patches }) => patches.flatMap(({ corners }) => corners)))
  return bench.seam * 2 + Math.max(bench.seam * 2, Math.max(right - left, bottom - top) * 0.06)
}

/** Seams from the first item to the last. */
export const inOrder = (run: Run, bench: Bench): Join[] => [...run.joins].sort((a, b) => seamPlace(bench, run, a) - seamPlace(bench, run, b))

/** How many items lie before a place. */
const before = (run: Run, spot: Spot): number => run.items.filter(({ centre }) => dot(centre, run.axis) < dot(spot, run.axis) - 1e-9).length

/** A seam that is not one straight line from end to end shows where it is sewn now and where later. */
function drawSeam(sketch: Sketch, join: Join, bench: Bench, shift: (spot: Spot) => Spot): void {
  if (join.kind === 'straight') return
  for (const stretch of sewnNow(join, bench)) {
    if (join.kind === 'set-in') sketch.line(stretch.map(shift), 'stitch')
    else drawHalf(sketch, stretch, [spotOf(bench, join.from), spotOf(bench, join.to)], shift)
  }
}

/** A partial seam is sewn half of the way at first, from the end of the whole seam that it reaches. */
function drawHalf(sketch: Sketch, stretch: Stretch, ends: Stretch, shift: (spot: Spot) => Spot): void {
  const [a, b] = stretch
  const atFirst = ends.some((end) => lengthOf(minus(end, a)) < 1e-6)
  const middle = middleOf(a, b)
  sketch.line([shift(atFirst ? a : b), shift(middle)], 'stitch')
  sketch.line([shift(middle), shift(atFirst ? b : a)], 'marked')
}

/** Where the two sides of a join lie along each other when it is sewn. */
export const sewnNow = (join: Join, bench: Bench): Stretch[] =>
  seamBetween(patchesIn(bench, join.sides[0]), patchesIn(bench, join.sides[1])).map(({ stretch }) => stretch)

function pressArrow(sketch: Sketch, join: Join, run: Run, bench: Bench, shift: (spot: Spot) => Spot, gap: number): void {
  const ends = join.via.length === 0 ? ([spotOf(bench, join.from), spotOf(bench, join.to)] as const) : longestOf(sewnNow(join, bench))
  if (ends === null) return
  const at = shift(
    freePlace(
      ends,
      (bench.meetings.get(join.id) ?? []).map(({ at: place }) => spotOf(bench, place)),
    ),
  )
  const far = gap * 0.42
  const way = towardSign(join, run, bench)
  for (const sign of way === 0 ? [1, -1] : [way]) sketch.arrow(plus(at, run.axis, way === 0 ? 0 : -sign * far), plus(at, run.axis, sign * far))
}

/** The place along a seam that is farthest from its meetings, the middle if there are none. */
function freePlace([a, b]: Stretch, meetings: readonly Spot[]): Spot {
  const places = [0.5, 0.3, 0.7, 0.2, 0.8, 0.1, 0.9].map((part) => plus(a, minus(b, a), part))
  const away = (spot: Spot): number => Math.min(lengthOf(minus(b, a)) / 6, ...meetings.map((meeting) => lengthOf(minus(spot, meeting))))
  return places.reduce((best, one) => (away(one) > away(best) + 1e-9 ? one : best))
}

/** The block in outline, the pieces of some runs in their cloth. */
export function placePicture(runs: readonly Run[], bench: Bench, title: string): Drawing {
  const own = new Set(runs.flatMap(({ items }) => items.flatMap(({ patches }) => patches.map(({ id }) => id))))
  const sketch = new Sketch()
  const [wide, high] = bench.report.block.finished
  sketch.area(boxAt(0, 0, wide, high), null, 'right', 'cut')
  if (bench.patches.size <= MOST_BEHIND)
    for (const patch of bench.patches.values()) if (patch.unit !== null && !own.has(patch.id)) sketch.area(patch.corners, null, 'right', 'seam')
  for (const patch of bench.patches.values()) if (own.has(patch.id)) sketch.area(patch.corners, patch.fabric, 'right', 'cut')
  return sketch.drawing(title, bench.cell * 0.1)
}

/** The sewn piece from behind, its own new seams with arrows; null where it is too large to show them. */
export function pressedRun(run: Run, bench: Bench, title: string): Drawing | null {
  const patches = patchesIn(bench, run.final.id)
  if (patches.length > MOST_BEHIND) return null
  const seams = new Map(joinsIn(bench, run.final.id).map((join) => [join.id, drawnSeam(join, bench)]))
  const own = run.joins.map(({ id }) => seams.get(id) as DrawnSeam)
  const { left, right, top, bottom } = extentOf(patches.flatMap(({ corners }) => corners))
  return wrongSide(patches, [...seams.values()], bench.seam, own).drawing(title, Math.max(right - left, bottom - top) * 0.04)
}

const drawnSeam = (join: Join, bench: Bench): DrawnSeam => ({
  sides: [patchesIn(bench, join.sides[0]), patchesIn(bench, join.sides[1])],
  toward: join.press.toward,
})
