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
import { count, sayOne } from '../../phrases.ts'
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
  const { block, report, unit } = context
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
      title: 'Quilt along the seams',
      sentences: [
        ...plan.sentences,
        'Stitch on the low side of each seam, away from its allowances. Where a seam is pressed open, stitch in the middle of it. A walking foot keeps the layers together.',
        ...(fills.length === 0
          ? []
          : [
              `Then fill the patches as the dashed lines show: ${count(fills.length, 'line')}, ${sayOne(quiltingOf(block).spacing, unit)} apart. Each has its own start.`,
            ]),
        'Secure both ends of every line.',
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

const FOLLOW = 'Go from each number straight to the next, the way the arrows point.'
const TWICE = 'Where two lines run side by side, you stitch that seam twice.'

const lengthWords = (length: number, { unit }: BookletContext): string => sayOne(Math.round(length), unit)

function inOnePicture(context: BookletContext, ditch: Ditch): string[] {
  const { routes, retraced } = ditch
  const twice = retraced === 0 ? 'No seam is stitched twice.' : `${sayOne(retraced, context.unit)} of it is stitched twice.`
  const lines = routes.length === 1 ? 'one line' : count(routes.length, 'line')
  return [
    `Quilt in the ditch, along the seams: ${lengthWords(ditch.length, context)} of quilting in ${lines}. ${twice}`,
    `Begin at “Start 1” and stop at “End”. ${FOLLOW}${retraced === 0 ? '' : ` ${TWICE}`}`,
    ...(routes.length === 1 ? [] : ['At each “End”, cut the threads and begin again at the next “Start”.']),
  ]
}

function partByPart(context: BookletContext, parts: readonly QuiltingPart[]): string[] {
  const sum = (of: (part: QuiltingPart) => number): number => parts.reduce((total, part) => total + of(part), 0)
  return [
    `Quilt in the ditch, along the seams: ${lengthWords(
      sum(({ ditch }) => ditch.length),
      context,
    )} of quilting in ${parts.length} parts. Begin with part 1, in the middle, and work outward.`,
    `In each part, begin at “Start 1” and stop at “End”. ${FOLLOW} ${TWICE}`,
    'Where a part has more than one “Start”, cut the threads at each “End” and begin again at the next.',
  ]
}

const onTheScreen = (context: BookletContext, ditch: Ditch): string[] => [
  `Quilt in the ditch, along the seams: ${lengthWords(ditch.length, context)} of quilting.`,
  'This line has too many turns for paper. On the screen, open Quilting and move the needle along the line to see where it goes next.',
]

/** The whole block with its line. */
function wholePicture(context: BookletContext, ditch: Ditch, fills: readonly StitchedLine[]): Drawing {
  const sketch = new Sketch()
  for (const { corners } of context.patches.values()) sketch.area(corners, null, 'right', 'seam')
  addFills(sketch, context, fills)
  sketch.marksOf(quiltingMarks(routeLines(ditch), cellsToLengths(context)))
  return sketch.drawing('The quilting line along the seams, its stops numbered from start to end.', context.cell * 0.15)
}

function fillsPicture(context: BookletContext, fills: readonly StitchedLine[]): Drawing {
  const sketch = new Sketch()
  for (const { corners } of context.patches.values()) sketch.area(corners, null, 'right', 'seam')
  addFills(sketch, context, fills)
  return sketch.drawing('The lines that fill the patches.', context.cell * 0.15)
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
    place.drawing(`Part ${at + 1} of ${parts.length} in the block.`, context.cell * 0.1),
    picture.drawing(`The quilting line of part ${at + 1}, its stops numbered from start to end.`, context.cell * 0.15),
  ]
}

const middleOf = (corners: readonly Spot[]): Spot => {
  const { left, top, right, bottom } = boundsOf(corners)
  return [(left + right) / 2, (top + bottom) / 2]
}
