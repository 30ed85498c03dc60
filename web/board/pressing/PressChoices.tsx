/** The four ways to press a seam, or all seams of a row, as one group of buttons with the arrow's own glyph. */
import type { Findings, Join, PressChoice } from '../../../geometry/index.ts'
import { ARROW, OPEN_ARROW } from '../../drawing/pressArrow.ts'
import { t } from '../../words/words.ts'
import { wayOf, wayWords } from './pressWords.ts'

export interface Choice {
  readonly choice: PressChoice
  readonly words: string
  /** Where its arrow points, in degrees clockwise from the right; null: as proposed, which has no arrow of its own. */
  readonly angle: number | null
  readonly chosen: boolean
}

export function PressChoices({ name, choices, onChoose }: { name: string; choices: readonly Choice[]; onChoose: (choice: Choice) => void }) {
  return (
    <fieldset className="press-choices">
      <legend className="unseen">{name}</legend>
      {choices.map((one) => (
        <button key={one.choice} type="button" aria-pressed={one.chosen} onClick={() => onChoose(one)}>
          {one.angle !== null && <ArrowGlyph angle={one.angle} open={one.choice === 'open'} />}
          {one.words}
        </button>
      ))}
    </fieldset>
  )
}

const pathOf = (points: readonly (readonly [number, number])[]): string => `M${points.map(([x, y]) => `${x} ${y}`).join('L')}Z`
const PATHS = { arrow: pathOf(ARROW), open: pathOf(OPEN_ARROW) }

function ArrowGlyph({ angle, open }: { readonly angle: number; readonly open: boolean }) {
  return (
    <svg viewBox="-11 -11 22 22" width="18" height="18" aria-hidden="true">
      <path d={open ? PATHS.open : PATHS.arrow} fill="currentColor" transform={`rotate(${Math.round(angle)})`} />
    </svg>
  )
}

/** The ways to press one seam. Of its two sides, the one to the left or above comes first, as they lie on the board. */
export function seamChoices(report: Findings, join: Join): readonly Choice[] {
  const { toward, rule } = join.press
  const asked = rule === 'asked'
  const sides = ([0, 1] as const)
    .map((side) => {
      const [x, y] = wayOf(report, join, side)
      return {
        choice: side,
        words: wayWords(report, join, side),
        angle: (Math.atan2(y, x) * 180) / Math.PI,
        chosen: asked && toward === side,
        place: x || y,
      }
    })
    .sort((a, b) => a.place - b.place)
  const across = sides[1]?.angle ?? 0
  return [
    ...sides,
    { choice: 'open', words: t('open'), angle: across, chosen: asked && toward === 'open' },
    { choice: 'proposed', words: t('as proposed'), angle: null, chosen: !asked },
  ]
}
