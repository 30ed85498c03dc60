/**
 * Trimming a unit to size, cut by cut, for either hand.
 *
 * In      a unit variant that is trimmed.
 * Out     an action for each cut and each hand, with the ruler's own lines; one without a picture for units without a slanting seam.
 * Source  the ruler's lines: `trim.ts` of the cutting room, which names its sources.
 */
import { type Hand, HANDS, type RulerCut, trimCuts } from '../../../cutting/sizes/trim.ts'
import type { BookletContext, UnitVariant } from '../bookletContext.ts'
import { onRuler } from '../unitPictures.ts'
import type { StepAction } from '../values.ts'
import { trimPictures } from './trimPictures.ts'

/** How to trim a unit variant to its unfinished size. */
export function trimActions({ first, row }: UnitVariant, context: BookletContext): StepAction[] {
  const { say, block } = context
  const to = say.units.trimTo(row.count, context.size(row.unfinished))
  const [asRight] = first.kind === 'polygon' ? [] : trimCuts(first, block, 'right')
  const actions =
    first.kind === 'polygon'
      ? []
      : HANDS.flatMap((hand) => {
          const pictures = trimPictures(first, block, hand)
          return trimCuts(first, block, hand).map(
            (cut, at): StepAction => ({
              sentences: [
                at === 0 && hand === 'left' && asRight !== undefined && isAlike(asRight, cut, context)
                  ? say.units.firstCutAlike
                  : cutSaid(cut, hand, at, context),
              ],
              // Who cannot see the picture hears the same measures.
              drawings: pictures.slice(at, at + 1).map((drawing) => ({ ...drawing, title: cutSaid(cut, hand, at, context) })),
            }),
          )
        })
  const [one, ...others] = actions
  return one === undefined ? [{ sentences: [to], drawings: [] }] : [{ ...one, sentences: [to, ...one.sentences] }, ...others]
}

/** Whether the ruler lies as it does for the right hand, but for the side it is measured from. */
const isAlike = (right: RulerCut, left: RulerCut, context: BookletContext): boolean =>
  underRuler(right, 'right', context) === underRuler(left, 'right', context)

function cutSaid(cut: RulerCut, hand: Hand, at: number, context: BookletContext): string {
  const words = context.say.units
  const [wide, high] = cut.size.map((length) => context.local(onRuler(length, context.unit))) as [string, string]
  if (at === 0) return words.firstCut({ hand, under: underRuler(cut, hand, context) })
  const slanting = cut.seams.filter(({ angle }) => angle % 90 > 1e-9)
  const halfSquare = slanting.some(({ angle }) => Math.abs(angle - 45) < 1e-6)
  return words.secondCut({ hand, lines: words.rulerLines(wide, high), under: halfSquare ? words.halfSquareLine(slanting.length === 1) : null })
}

/** `the ruler's 45° line along a seam and the point where the seams meet 3 1/4 in from the right edge, 1/4 in below the top edge`. */
function underRuler(cut: RulerCut, hand: Hand, context: BookletContext): string {
  const words = context.say.units
  const said = (length: number): string => context.local(onRuler(length, context.unit))
  const slanting = cut.seams.filter(({ angle }) => angle % 90 > 1e-9)
  const halfSquare = slanting.filter(({ angle }) => Math.abs(angle - 45) < 1e-6)
  const line = halfSquare.length === 0 ? [] : [words.halfSquareLine(slanting.length === 1)]
  const points = cut.points.filter(({ type }) => type !== 'end').map(({ at }) => words.seamsMeet(said(at.fromSide), said(at.fromTop), hand))
  const ends = line.length + points.length > 0 ? [] : cut.points.map(({ at }) => words.seamEnds(said(at.fromSide), said(at.fromTop), hand))
  return context.say.list([...line, ...points, ...ends])
}
