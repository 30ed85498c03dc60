/**
 * The whole block laid out before its units are joined.
 *
 * In      the booklet context: report and block, with lengths in the measure's unit.
 * Out     a picture with each unit's letter where there is room to read it; of many units, with the numbers of rows and columns at its edges.
 */
import { type BookletContext, NO_METHOD } from '../bookletContext.ts'
import { type BoundingBox, boundsOf, centreOfAll, cornersOf, patchesByUnit } from '../pieceDrawing.ts'
import { rowsOrColumns, sewingRuns } from '../runs.ts'
import { Sketch } from '../sketch.ts'
import type { Drawing } from '../values.ts'

/** Units above which the picture fills a page. */
export const MANY_UNITS = 36
/** How wide such a picture is on a page of A4 or Letter, and how wide a unit must be for its letter, in millimetres. */
const [PAGE, READABLE] = [155, 8] as const

export function layOutPicture(context: BookletContext): Drawing {
  const sketch = new Sketch()
  const patches = [...context.patches.values()].filter(({ unit }) => unit !== null)
  for (const { corners, fabric } of patches) sketch.area(corners, fabric)
  const units = patchesByUnit(patches)
  const [wide, high] = context.report.block.finished
  const many = units.length > MANY_UNITS
  const least = many ? (READABLE / PAGE) * Math.max(wide, high) : 0
  for (const { patches: own, unit } of units) {
    const { left, top, right, bottom } = boundsOf(cornersOf(own))
    if (Math.min(right - left, bottom - top) >= least - 1e-9) sketch.text(centreOfAll(own), context.variantOf.get(unit)?.label ?? NO_METHOD)
  }
  if (many)
    number(
      sketch,
      context,
      units.map(({ patches: own }) => boundsOf(cornersOf(own))),
    )
  return sketch.drawing(context.say.join.pictures.laidOut, Math.max(wide, high) * 0.02)
}

type Side = 'rows' | 'columns'

/** Rows and columns as the steps of joining count them, or as they are seen: stretches that no unit lies across. */
function number(sketch: Sketch, context: BookletContext, boxes: readonly BoundingBox[]): void {
  const [wide, high] = context.report.block.finished
  const away = Math.max(wide, high) * 0.025
  const runs = sewingRuns(context)
  const lines = rowsOrColumns(context, runs)
  const last = runs.find(({ items }) => items.some(({ piece }) => lines?.places.has(piece)))
  const sewn = last?.items.map(({ patches }) => boundsOf(cornersOf(patches))) ?? []
  for (const side of ['rows', 'columns'] as const) {
    const stretches = lines?.word === (side === 'rows' ? 'row' : 'column') ? sewn.map((box) => stretchOf(box, side)) : seenStretches(boxes, side)
    stretches.forEach(([from, to], place) => {
      const middle = (from + to) / 2
      sketch.text(side === 'rows' ? [-away, middle] : [middle, -away], String(place + 1), 'normal', side === 'rows' ? 'right' : 'middle')
    })
  }
}

const stretchOf = (box: BoundingBox, side: Side): readonly [number, number] => (side === 'rows' ? [box.top, box.bottom] : [box.left, box.right])

/** Stretches of units beside each other, where none lies across two; none at all where the whole is one. */
function seenStretches(boxes: readonly BoundingBox[], side: Side): (readonly [number, number])[] {
  const found: [number, number][] = []
  for (const [from, to] of boxes.map((box) => stretchOf(box, side)).sort((a, b) => a[0] - b[0])) {
    const last = found.at(-1)
    if (last === undefined || from >= last[1] - 1e-6) found.push([from, to])
    else last[1] = Math.max(last[1], to)
  }
  return found.length > 1 ? found : []
}
