/** The ways to press a seam, or all seams of a row, as one group of buttons with the arrow's own glyph. */
import type { Findings, Join, PressChoice } from '../../../geometry/index.ts'
import { t } from '../../words/words.ts'
import { ArrowGlyph } from './ArrowGlyph.tsx'
import { angleOf, wayWords } from './pressWords.ts'

export interface Choice {
  readonly key: PressChoice
  readonly words: string
  /** Where its arrow points, in degrees clockwise from the right; null: as proposed, which has no arrow of its own. */
  readonly angle: number | null
  readonly chosen: boolean
  readonly choose: () => void
}

/** `brief`: where there is an arrow, the words are only read out. */
export function PressChoices({ name, choices, brief = false }: { name: string; choices: readonly Choice[]; brief?: boolean }) {
  return (
    <fieldset className="press-choices">
      <legend className="unseen">{name}</legend>
      {choices.map(({ key, words, angle, chosen, choose }) => (
        <button
          key={key}
          type="button"
          aria-pressed={chosen}
          {...(brief && angle !== null ? { 'aria-label': words, title: words } : {})}
          onClick={choose}
        >
          {angle !== null && <ArrowGlyph angle={angle} open={key === 'open'} />}
          {(!brief || angle === null) && words}
        </button>
      ))}
    </fieldset>
  )
}

/** The ways to press one seam. Of its two sides, the one to the left or above comes first, as they lie on the board. */
export function seamChoices(report: Findings, join: Join, choose: (choice: PressChoice) => void): readonly Choice[] {
  const { toward, rule } = join.press
  const asked = rule === 'asked'
  const make = (key: PressChoice, words: string, angle: number | null, chosen: boolean): Choice => ({
    key,
    words,
    angle,
    chosen,
    choose: () => choose(key),
  })
  const sides = ([0, 1] as const)
    .map((side) => make(side, wayWords(report, join, side), angleOf(report, join, side), asked && toward === side))
    // What points left or up comes first.
    .sort((a, b) => before(a) - before(b))
  return [...sides, make('open', t('open'), sides[1]?.angle ?? 0, asked && toward === 'open'), make('proposed', t('as proposed'), null, !asked)]
}

const before = ({ angle }: Choice): number => {
  const turned = ((angle ?? 0) * Math.PI) / 180
  return Math.cos(turned) + 1.5 * Math.sin(turned)
}
