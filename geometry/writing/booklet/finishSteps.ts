/**
 * Laying the block out, and after the sewing the sandwich and the edge.
 *
 * In      the booklet context: report and block, with lengths in the unit of measure (in or cm).
 * Out     one step each, where there is something to do.
 * Source  backing and batting [S145], binding [S139]; the figures are those of `finishing.ts`.
 */
import { bindingFor, layersFor } from '../../cutting/finishing.ts'
import type { Size } from '../../values/block.ts'
import { message } from '../../values/messages.ts'
import { ruleOf } from '../../cutting/oneRun.ts'
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
  return sketch.drawing(context.say.join.pictures.finished(oneLine(context.report.block.name)), Math.max(wide, high) * 0.01)
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
  const words = context.say.book
  const { backing, batting } = layersFor(report.block.withBorders, unit, 'home', report.cloth.usableWidth, ruleOf(block))
  return [
    {
      ...BARE,
      keys: ['sandwich'],
      title: words.layerTitle,
      sentences: [words.stopHere, words.pressTop, words.cutLayers(layersText(backing, batting, context)), words.tapeBacking, words.pinLayers],
      drawings: [layersPicture(context, backing, batting)],
      cautions: ['glue'],
    },
  ]
}

/** `the backing 16 × 16 in and the batting 16 × 16 in`: sizes in the unit of measure. */
export const layersText = (backing: Size, batting: Size, { say, size }: Pick<BookletContext, 'say' | 'size'>): string =>
  say.book.layers(size(backing), size(batting))

/** Trimming, binding and labelling; nothing where no seam is sewn. */
export function finishSteps(context: BookletContext): DraftStep[] {
  const { report, unit } = context
  if (report.joins.length === 0) return []
  const top = report.block.withBorders
  const words = context.say.book
  const { strips, strip, length } = bindingFor(top, unit, report.cloth.usableWidth)
  return [
    {
      ...BARE,
      keys: ['finish'],
      title: words.finishTitle,
      sentences: [
        words.trimLayers,
        words.binding({ strips, width: context.one(strip), length: context.one(Math.floor(length)) }),
        words.sewBinding,
        words.sewLabel,
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
  return sketch.drawing(context.say.book.bindingPicture, context.cell * 0.1)
}
