/**
 * Quilting along the seams: one line with numbered stops; a large block part by part, each part with a picture and a line of its own.
 *
 * In      the booklet context.
 * Out     one step; nothing where the report has no route.
 * Source  the ditch [S160], order [S167], ends [S162].
 */
import { quiltingOf } from '../../../block/quiltingOf.ts'
import { fillsOf } from '../../../quilting/fills.ts'
import { legsOf } from '../../../quilting/numberedStops.ts'
import { MOST_LEGS, type QuiltingPart } from '../../../quilting/quiltingParts.ts'
import { routeLines, type StitchedLine } from '../../../quilting/stitchedLines.ts'
import { quiltingByParts, quiltingRoute } from '../../../report/wholeReport.ts'
import type { Ditch } from '../../../values/report.ts'
import type { BookletContext } from '../bookletContext.ts'
import type { DraftStep } from '../draftStep.ts'
import { boundsOf, clipped } from '../pieceDrawing.ts'
import { boxAt, Sketch } from '../sketch.ts'
import type { Drawing, Spot } from '../values.ts'
import { quiltingMarks } from './quiltingMarks.ts'

/** Parts above which the line is not printed: nobody follows so many pictures on paper. */
const MOST_PARTS = 30

/** Quilting along the seams; nothing where the report has no route. */
export function quiltSteps(context: BookletContext): DraftStep[] {
  const { block, report } = context
  // The line as the maker starts it; the report's where she didn't choose.
  const ditch = quiltingOf(block).begin === null ? report.ditch : quiltingRoute(block)
  if (ditch.routes.length === 0) return []
  const fills = fillsOf(block, report.patches).lines
  const plan = planOf(context, ditch, fills)
  return [
    {
      count: 1,
      joins: [],
      units: [],
      cut: [],
      keys: ['quilt'],
      title: context.say.book.quilt.title,
      sentences: [
        ...plan.sentences,
        context.say.book.quilt.low,
        ...(fills.length === 0 ? [] : [context.say.book.quilt.fills(fills.length, context.one(quiltingOf(block).spacing))]),
        context.say.book.quilt.secure,
      ],
      drawings: plan.drawings,
      cautions: ['needle'],
    },
  ]
}

interface QuiltingPlan {
  readonly sentences: readonly string[]
  readonly drawings: readonly Drawing[]
}

function planOf(context: BookletContext, ditch: Ditch, fills: readonly StitchedLine[]): QuiltingPlan {
  const legs = legsOf(routeLines(ditch)).length
  if (legs <= MOST_LEGS) return { sentences: inOnePicture(context, ditch), drawings: [wholePicture(context, ditch, fills)] }
  const parts = legs > (MOST_PARTS * MOST_LEGS) / 2 ? [] : quiltingByParts(context.block)
  const rest = fills.length === 0 ? [] : [fillsPicture(context, fills)]
  if (parts.length === 0 || parts.length > MOST_PARTS) return { sentences: onTheScreen(context, ditch), drawings: rest }
  return { sentences: partByPart(context, parts), drawings: [...parts.flatMap((_, at) => partPictures(context, parts, at)), ...rest] }
}

const lengthWords = (length: number, context: BookletContext): string => context.one(Math.round(length))

function inOnePicture(context: BookletContext, ditch: Ditch): string[] {
  const words = context.say.book.quilt
  const { routes, retraced } = ditch
  return [
    words.along(lengthWords(ditch.length, context), routes.length, retraced === 0 ? null : context.one(retraced)),
    words.begin(retraced > 0),
    ...(routes.length === 1 ? [] : [words.again]),
  ]
}

function partByPart(context: BookletContext, parts: readonly QuiltingPart[]): string[] {
  const words = context.say.book.quilt
  const length = parts.reduce((total, { ditch }) => total + ditch.length, 0)
  return [words.inParts(lengthWords(length, context), parts.length), words.beginParts, words.againInParts]
}

function onTheScreen(context: BookletContext, ditch: Ditch): string[] {
  const words = context.say.book.quilt
  return [words.length(lengthWords(ditch.length, context)), words.onScreen]
}

/** The whole block with its line. */
function wholePicture(context: BookletContext, ditch: Ditch, fills: readonly StitchedLine[]): Drawing {
  const sketch = new Sketch()
  for (const { corners } of context.patches.values()) sketch.area(corners, null, 'right', 'seam')
  addFills(sketch, context, fills)
  sketch.marksOf(quiltingMarks(routeLines(ditch), cellsToLengths(context)))
  return sketch.drawing(context.say.book.quilt.pictures.whole, context.cell * 0.15)
}

function fillsPicture(context: BookletContext, fills: readonly StitchedLine[]): Drawing {
  const sketch = new Sketch()
  for (const { corners } of context.patches.values()) sketch.area(corners, null, 'right', 'seam')
  addFills(sketch, context, fills)
  return sketch.drawing(context.say.book.quilt.pictures.fills, context.cell * 0.15)
}

function addFills(sketch: Sketch, context: BookletContext, fills: readonly StitchedLine[]): void {
  for (const { points, closed } of fills) sketch.line(points.map(cellsToLengths(context)), 'stitch', closed)
}

const cellsToLengths =
  ({ cell }: BookletContext) =>
  ([x, y]: Spot): Spot => [x * cell, y * cell]

/** Where a part lies in the block, and the part with its line. */
function partPictures(context: BookletContext, parts: readonly QuiltingPart[], at: number): Drawing[] {
  const put = cellsToLengths(context)
  const cornersOf = ({ box: [left, top, right, bottom] }: QuiltingPart): Spot[] => boxAt(left, top, right - left, bottom - top).map(put)
  const part = parts[at] as QuiltingPart
  const place = new Sketch()
  for (const one of parts) place.area(cornersOf(one), null, one === part ? 'wrong' : 'right', 'cut')
  place.text(middleOf(cornersOf(part)), `Part ${at + 1}`)
  const picture = new Sketch()
  for (const { corners } of context.patches.values()) picture.area(clipped(corners, boundsOf(cornersOf(part))), null, 'right', 'seam')
  picture.marksOf(quiltingMarks(routeLines(part.ditch), put))
  return [
    place.drawing(context.say.book.quilt.pictures.place(at + 1, parts.length), context.cell * 0.1),
    picture.drawing(context.say.book.quilt.pictures.part(at + 1), context.cell * 0.15),
  ]
}

const middleOf = (corners: readonly Spot[]): Spot => {
  const { left, top, right, bottom } = boundsOf(corners)
  return [(left + right) / 2, (top + bottom) / 2]
}
