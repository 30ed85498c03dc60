/**
 * All rows of a block on one picture: what a maker lays out, and the way each seam is pressed.
 *
 * In      the booklet context: report and block, with lengths in the unit of measure (in or cm).
 * Out     a drawing of the rows (or columns) apart, right side up, units with their letters, an arrow across each seam, rows numbered; and which
 *         steps of joining sew them. Null where the block is not sewn in rows or columns.
 */
import { type BookletContext, NO_METHOD } from '../bookletContext.ts'
import { isLine, sewingOrder } from '../joinSteps.ts'
import { runSketch } from '../joinPictures.ts'
import { boundsOf, centreOfAll, withRawEdge } from '../pieceDrawing.ts'
import { rowsOrColumns, type RunItem, type SewingRun, sewingRuns } from '../runs.ts'
import { Sketch } from '../sketch.ts'
import type { BookletRows } from '../values.ts'

export function rowsOf(context: BookletContext): BookletRows | null {
  const runs = sewingRuns(context)
  const lines = rowsOrColumns(context, runs)
  const last = runs.find(({ items }) => items.some(({ piece }) => lines?.places.has(piece)))
  if (lines === null || last === undefined) return null
  const groups = sewingOrder(context, runs)
  const names = new Map(groups.flatMap(({ runs: alike, name }) => alike.map(({ final }) => [final.id, name] as const)))
  const across = lines.word === 'row'
  const sketch = new Sketch()
  const gap = context.seam * 4
  last.items.forEach((item, place) => {
    const own = runs.find(({ final }) => final.id === item.piece)
    const line = own === undefined ? pieceSketch(item, context) : lineSketch(own, names, context, gap)
    const number = own?.items.length ?? 1
    // Rows of more and of fewer pieces stand one under the other, all in the middle.
    const [along, beside] = [(-gap * (number - 1)) / 2, place * (gap + context.seam)]
    const { left, right, top, bottom } = boundsOf(item.patches.flatMap(({ corners }) => corners))
    const far = gap * 0.5 * Math.max(0, ...last.items.map((one) => (runs.find(({ final }) => final.id === one.piece)?.items.length ?? 1) - 1))
    sketch.add(line, across ? along : beside, across ? beside : along)
    if (across) sketch.text([left - far - context.seam * 2, (top + bottom) / 2 + beside], String(place + 1), 'normal', 'right')
    else sketch.text([(left + right) / 2 + beside, top - far - context.seam * 3], String(place + 1))
  })
  const drawing = sketch.drawing(context.say.join.pictures.rows(lines.word), context.seam)
  return { drawing, steps: groups.flatMap((group, place) => (isLine(group) ? [place] : [])) }
}

function lineSketch(run: SewingRun, names: ReadonlyMap<string, string>, context: BookletContext, gap: number): Sketch {
  const labels = run.items.map(({ piece, unit }) => (unit === null ? (names.get(piece) ?? '') : (context.variantOf.get(unit)?.label ?? NO_METHOD)))
  return runSketch(run, labels, context, false, gap)
}

function pieceSketch({ patches, unit }: RunItem, context: BookletContext): Sketch {
  const sketch = new Sketch()
  for (const { patch, outline } of withRawEdge(patches, context.seam)) sketch.area(outline, patch.fabric)
  if (unit !== null) sketch.text(centreOfAll(patches), context.variantOf.get(unit)?.label ?? NO_METHOD)
  return sketch
}
