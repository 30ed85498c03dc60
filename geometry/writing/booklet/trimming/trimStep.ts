/**
 * Trimming a unit to size, in words and pictures, for either hand.
 *
 * In      a unit variant whose method trims.
 * Out     sentences from the ruler's own lines, and a picture for each hand.
 * Source  the ruler's lines: `trim.ts` of the cutting room, which names its sources.
 */
import { HANDS, type RulerCut, trimCuts } from '../../../cutting/sizes/trim.ts'
import { listed, saySize } from '../../phrases.ts'
import type { BookletContext, UnitVariant } from '../bookletContext.ts'
import { trimPictures } from './trimPictures.ts'
import { onRuler } from '../unitPictures.ts'
import type { Drawing } from '../values.ts'

/** How the ruler lies, a picture for each cut and each hand; none for units without a slanting seam. */
export const leftAndRight = ({ first }: UnitVariant, { block }: BookletContext): Drawing[] =>
  first.kind === 'polygon' ? [] : HANDS.flatMap((hand) => trimPictures(first, block, hand))

/** How to trim a unit variant to its unfinished size. */
export function trimSentences(variant: UnitVariant, context: BookletContext): string[] {
  const { first } = variant
  const to = `Trim ${variant.row.count === 1 ? 'it' : 'each'} to ${saySize(variant.row.unfinished, context.unit)}`
  const [one, other] = first.kind === 'polygon' ? [] : trimCuts(first, context.block, 'right')
  if (one === undefined) return [`${to}.`]
  const [wide, high] = one.size
  const lines =
    wide === high
      ? `the ${onRuler(wide, context.unit)} lines`
      : `the lines for ${onRuler(wide, context.unit)} across and ${onRuler(high, context.unit)} down`
  return [
    `${to}. Lay it under the ruler as the right-handed picture shows, with ${underRuler(one, context)}. Check that the fabric reaches ${lines}. Cut along the ruler’s right and top edges.`,
    `Rotate it 180° and lay the two cut edges on ${lines}${other === undefined ? '' : `, with ${underRuler(other, context)}`}. Cut the other two edges.`,
    'If you’re left-handed, cut along the ruler’s left and top edges, as the last two pictures show.',
  ]
}

/** `the 45° line on the seam and the point 3 1/4 in from the ruler's right edge, 1/4 in below its top edge`. */
function underRuler(cut: RulerCut, context: BookletContext): string {
  const slanting = cut.seams.filter(({ angle }) => angle % 90 > 1e-9)
  const halfSquare = slanting.filter(({ angle }) => Math.abs(angle - 45) < 1e-6)
  const line = halfSquare.length === 0 ? [] : [`the ruler’s 45° line along ${slanting.length === 1 ? 'the seam' : 'a seam'}`]
  const points = cut.points
    .filter(({ type }) => type !== 'end')
    .map(
      ({ at }) =>
        `the point where the seams meet ${onRuler(at.fromSide, context.unit)} from the right edge and ${onRuler(at.fromTop, context.unit)} below the top edge`,
    )
  const ends =
    line.length + points.length > 0
      ? []
      : cut.points.map(
          ({ at }) =>
            `the end of the seam ${onRuler(at.fromSide, context.unit)} from the right edge and ${onRuler(at.fromTop, context.unit)} below the top edge`,
        )
  return listed([...line, ...points, ...ends])
}
