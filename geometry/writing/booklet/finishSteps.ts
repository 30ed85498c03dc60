/**
 * Laying the block out, and after the sewing the sandwich and the edge.
 *
 * In      the booklet context: report and block, with lengths in the unit of measure (in or cm).
 * Out     one step each, where there is something to do.
 * Source  backing and batting [S145], binding [S139]; the figures are those of `finishing.ts`.
 */
import { bindingFor, layersFor } from '../../cutting/finishing.ts'
import type { MeasureUnit, Size } from '../../values/block.ts'
import { message } from '../../values/messages.ts'
import { ruleOf } from '../../cutting/oneRun.ts'
import { inWords } from '../../words/englishPhrases.ts'
import { sayOne, saySize } from '../phrases.ts'
import { type BookletContext, oneLine } from './bookletContext.ts'
import { type BoundingBox, boundsOf, grownBy } from './pieceDrawing.ts'
import { blocksOf } from './severalBlocks.ts'
import type { DraftStep, SewingDraft } from './draftStep.ts'
import { layOutPicture } from './layout/layOutPicture.ts'
import { layersPicture } from './quilting/layersPicture.ts'
import { boxAt, Sketch } from './sketch.ts'
import type { Drawing, Spot } from './values.ts'

const BARE = { count: 1, joins: [], units: [], cut: [] } as const

/** The whole block as it will lie, its borders on. */
export function frontPicture(context: BookletContext): Drawing {
  const sketch = new Sketch()
  for (const { corners, fabric } of context.patches.values()) sketch.area(corners, fabric)
  const [wide, high] = context.report.block.finished
  const borders = (context.block.borders ?? []).length > 0 ? ' with its borders' : ''
  return sketch.drawing(`${oneLine(context.report.block.name)}, finished${borders}.`, Math.max(wide, high) * 0.01)
}

/** Laying the units out before joining; nothing where there are none. */
export function layOutSteps(context: BookletContext): SewingDraft[] {
  if (context.variants.length === 0) return []
  const [words, blocks] = [context.say.join, blocksOf(context.block)]
  return [
    {
      ...BARE,
      keys: ['lay out'],
      heading: message('step-lay-out'),
      sentences: [...(blocks > 1 ? [words.oneAtATime(blocks)] : []), words.layOut, words.keepLayout],
      drawings: [layOutPicture(context)],
      cautions: [],
    },
  ]
}

/** Layering backing, batting and top; nothing where no seam is sewn. */
export function sandwichSteps(context: BookletContext): DraftStep[] {
  const { report, unit, block } = context
  if (report.joins.length === 0) return []
  const { backing, batting } = layersFor(report.block.withBorders, unit, 'home', report.cloth.usableWidth, ruleOf(block))
  return [
    {
      ...BARE,
      keys: ['sandwich'],
      title: 'Layer the sandwich',
      sentences: [
        'Press the top once more, and snip loose threads so that none show through.',
        `Cut ${layersText(backing, batting, unit)}.`,
        'Tape the backing down, wrong side up, smooth but not stretched. Centre the batting on it, then the top, right side up.',
        'Pin or tack through all three layers, from the middle outward, about a hand’s width apart. Keep pins off the seams you’ll quilt along.',
      ],
      drawings: [layersPicture(context, backing, batting)],
      cautions: ['glue'],
    },
  ]
}

/** `the backing 16 × 16 in and the batting 16 × 16 in`: sizes in the unit of measure. */
export function layersText(backing: Size, batting: Size, unit: MeasureUnit): string {
  const alike = backing.every((side, axis) => side === batting[axis])
  return alike
    ? `backing and batting ${saySize(backing, unit)} each`
    : `the backing ${saySize(backing, unit)} and the batting ${saySize(batting, unit)}`
}

/** Trimming, binding and labelling; nothing where no seam is sewn. */
export function finishSteps(context: BookletContext): DraftStep[] {
  const { report, unit } = context
  if (report.joins.length === 0) return []
  const top = report.block.withBorders
  const { strips, strip, length } = bindingFor(top, unit, report.cloth.usableWidth)
  return [
    {
      ...BARE,
      keys: ['finish'],
      title: 'Finish the edge',
      sentences: [
        'If this block is going into a quilt, join it to its neighbours before you layer and quilt.',
        'Trim the backing and batting level with the top, with square corners.',
        `For the binding, cut ${inWords(strips, 'strip')} ${sayOne(strip, unit)} wide across the fabric.${strips > 1 ? ` Join them with slanting seams to make ${sayOne(Math.floor(length), unit)}.` : ''} Press the ${strips > 1 ? 'long strip' : 'strip'} in half lengthwise, wrong sides together.`,
        'Sew it to the front along the raw edges, with a mitre at each corner. Fold it to the back and stitch it down.',
        'Sew a label on the back: who made it, where and when.',
      ],
      drawings: [edgePicture(context)],
      cautions: ['blade', 'iron'],
    },
  ]
}

/** The binding as it shows on the front: it covers the outer seam allowance, folded to a mitre in each corner. */
function edgePicture(context: BookletContext): Drawing {
  const sketch = new Sketch()
  const inner = boundsOf([...context.patches.values()].flatMap(({ corners }) => corners))
  const outer = grownBy(inner, context.seam)
  const boxOf = ({ left, top, right, bottom }: BoundingBox): Spot[] => boxAt(left, top, right - left, bottom - top)
  sketch.area(boxOf(outer), null, 'right', 'cut')
  for (const { corners, fabric } of context.patches.values()) sketch.area(corners, fabric)
  boxOf(outer).forEach((corner, index) => {
    sketch.line([corner, boxOf(inner)[index] as Spot], 'fold')
  })
  return sketch.drawing('The binding round the edge, a mitre in each corner.', context.cell * 0.1)
}
