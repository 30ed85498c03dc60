/**
 * Cautions, and which seam allowance to use where.
 *
 * Source  cautions for cutter, iron and needle [S177][S178][S180]; which seam where: common practice, no source, and so the maker's choice; the
 *         strip test [S70][S71].
 */
import type { BookletPhrases } from '../../words/booklet/bookletWords.ts'
import type { BookletContext } from './bookletContext.ts'
import type { Caution } from './values.ts'

const ABOUT = ['first', 'blade', 'iron', 'needle', 'glue'] as const satisfies readonly Caution['about'][]

/** All cautions of a booklet. */
export const cautionsIn = ({ book }: BookletPhrases): Caution[] => ABOUT.map((about) => ({ about, ...book.cautions[about] }))

/** In a step: what the hand must not forget there. */
export const cautionLine = (about: Caution['about'], { book }: BookletPhrases): string =>
  `${book.cautions[about].title}: ${book.cautions[about].sentences[0]}`

/** Which seam allowance where, and how a maker finds her own scant one. */
export function seamAdvice({ unit, seam, seamText, report, one, say }: BookletContext): string[] {
  const words = say.book
  // The three-strip test is printed for strips of 1 1/2 in and a seam of 1/4 in [S70][S71]; other sizes go by the same sum.
  // A broad allowance wants broader strips, so that something of the middle one is left.
  const strip = Math.max(unit === 'in' ? 1.5 : 4, 4 * seam)
  const sewn = 3 * (strip - 2 * seam) + 2 * seam
  return [
    words.allowanceIncluded(seamText),
    words.scantAllowance(
      seamText,
      report.units.some(({ method }) => method === 'geese-4'),
    ),
    words.foldTakesFabric,
    words.findYours({ strip: one(strip), across: one(sewn), middle: one(strip - 2 * seam) }),
  ]
}
