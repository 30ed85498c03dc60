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
      'Where the instructions of a tool or your teacher say otherwise, they come first.',
      'Wear shoes, keep the floor clear of leads and pins, and know where the plug is.',
    ],
  },
  {
    about: 'blade',
    title: 'Rotary cutter',
    sentences: [
      'Close the blade after every cut, before you put it down.',
      'Stand, and cut away from yourself along a ruler on a mat.',
      "Keep your fingers behind the ruler's edge, and no pins on the mat.",
      'Change a dull blade and wrap the old one. Children cut only with a grown-up beside them.',
    ],
  },
  {
    about: 'iron',
    title: 'Iron and steam',
    sentences: [
      'Stand the iron on its heel, out of the reach of children, and unplug it by its plug after use.',
      'Keep your hands dry and out of the steam. Let the cloth cool before you touch a seam.',
    ],
  },
  {
    about: 'needle',
    title: 'Needle and presser foot',
    sentences: [
      'Keep your fingers beside the presser foot, never in front of the needle.',
      'Take pins out before they reach the needle, and keep them in a cushion, not in the mouth.',
      'Switch the machine off before you thread it or change the needle.',
    ],
  },
  {
    about: 'glue',
    title: 'Glue, spray and pins',
    sentences: [
      'Use basting glue or spray with a window open and away from the iron, as its label says; keep it from children.',
      'Count the pins that go in, and count them again when they come out.',
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
  // A broad allowance wants broader strips, so that something of the middle one is left.
  const strip = Math.max(unit === 'in' ? 1.5 : 4, 4 * seam)
  const sewn = 3 * (strip - 2 * seam) + 2 * seam
  return [
    `All sizes here include seam allowances of ${seamText}. Which you sew where is your choice (common practice, no source).`,
    geese
      ? `Many sew a full ${seamText} when making geese four at a time and a scant one, a thread or two less, when joining, so that a full ${seamText} stays above the tip; others sew scant throughout and trim.`
      : `Many sew a scant ${seamText}, a thread or two less, throughout, and trim what is trimmed.`,
    'The reason: thread and the fold of each seam take up a little cloth, so a full allowance makes every piece a little too small.',
    `To find your own: sew three strips, each ${sayOne(strip, unit)} wide, side by side and press. If they measure ${sayOne(sewn, unit)} across and the middle one exactly ${sayOne(strip - 2 * seam, unit)}, your allowance is right; if they measure less, sew a thread narrower (${TEST_SOURCE}).`,
  ]
}

/** [S70][S71]; printed for strips of 1 1/2 in and a seam of 1/4 in, other sizes by the same sum. */
const TEST_SOURCE = 'three-strip test; source: the page “What is a scant 1/4 in seam?”'
