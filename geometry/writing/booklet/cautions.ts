/**
 * Cautions, and which seam allowance to use where.
 *
 * Source  cautions for cutter, iron and needle [S177][S178][S180]; which seam where: common practice, no source, and so the maker's choice; the
 *         strip test [S70][S71].
 */
import { sayOne } from '../phrases.ts'
import type { BookletContext } from './bookletContext.ts'
import type { Caution } from './values.ts'

export const CAUTIONS: readonly Caution[] = [
  {
    about: 'first',
    title: 'First of all',
    sentences: [
      'If your tool’s instructions or your teacher say otherwise, follow them.',
      'Wear shoes, keep the floor clear of leads and pins, and know where the plug is.',
    ],
  },
  {
    about: 'blade',
    title: 'Rotary cutter',
    sentences: [
      'Close the blade after every cut, before you put it down.',
      'Stand up, and cut away from yourself, along a ruler, on a mat.',
      'Keep your fingers behind the ruler’s edge, and keep pins off the mat.',
      'Change a dull blade, and wrap the old one before you throw it away. Children cut only with a grown-up beside them.',
    ],
  },
  {
    about: 'iron',
    title: 'Iron and steam',
    sentences: [
      'Stand the iron on its heel, out of reach of children. Unplug it after use: pull the plug, not the cord.',
      'Keep your hands dry and out of the steam. Let the fabric cool before you touch a seam.',
    ],
  },
  {
    about: 'needle',
    title: 'Needle and presser foot',
    sentences: [
      'Keep your fingers beside the presser foot, never in front of the needle.',
      'Take pins out before they reach the needle, and keep them in a pincushion, not in your mouth.',
      'Switch the machine off before you thread it or change the needle.',
    ],
  },
  {
    about: 'glue',
    title: 'Glue, spray and pins',
    sentences: [
      'Use basting glue or spray as the label says, with a window open and away from the iron. Keep it away from children.',
      'Count the pins as they go in, and again as they come out.',
    ],
  },
]

/** In a step: what the hand must not forget there. */
export const cautionLine = (about: Caution['about']): string => {
  const caution = CAUTIONS.find((one) => one.about === about) as Caution
  return `${caution.title}: ${caution.sentences[0]}`
}

/** Which seam allowance where, and how a maker finds her own scant one. */
export function seamAdvice({ unit, seam, seamText, report }: BookletContext): string[] {
  const geese = report.units.some(({ method }) => method === 'geese-4')
  // The three-strip test is printed for strips of 1 1/2 in and a seam of 1/4 in [S70][S71]; other sizes go by the same sum.
  // A broad allowance wants broader strips, so that something of the middle one is left.
  const strip = Math.max(unit === 'in' ? 1.5 : 4, 4 * seam)
  const sewn = 3 * (strip - 2 * seam) + 2 * seam
  return [
    `All sizes include seam allowances of ${seamText}. Whether you sew them full or scant is your choice.`,
    geese
      ? `Many sew a full ${seamText} for geese made four at a time, and a scant one, a thread or two less, for joining. That keeps a full ${seamText} above the point. Others sew scant throughout, and trim.`
      : `Many sew a scant ${seamText} throughout: a thread or two less.`,
    'The thread and the fold of each seam take up a little fabric. So with a full allowance every piece comes out a little too small.',
    `To find yours: sew three strips, each ${sayOne(strip, unit)} wide, side by side, and press. If they measure ${sayOne(sewn, unit)} across and the middle one exactly ${sayOne(strip - 2 * seam, unit)}, your allowance is right. If they measure less, sew a thread narrower.`,
  ]
}
