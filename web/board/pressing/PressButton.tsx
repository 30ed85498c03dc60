/** The arrow of one seam as a button, off the board: a press turns it, a second one presses the seam open, a third leaves it as proposed. */
import type { CSSProperties } from 'react'
import type { Findings, Join } from '../../../geometry/index.ts'
import { t } from '../../words/words.ts'
import { pressSeam } from '../actions/press.ts'
import { nextChoice } from '../hand/nextChoice.ts'
import { ArrowGlyph } from './ArrowGlyph.tsx'
import { angleOf, pressState } from './pressWords.ts'
import './pressing.css'

interface Props {
  readonly report: Findings
  readonly join: Join
  /** What the seam is called, such as `Row 1, seam 2`. */
  readonly name: string
  readonly style?: CSSProperties
  readonly onPoint: () => void
}

export function PressButton({ report, join, name, style, onPoint }: Props) {
  const { toward, rule } = join.press
  const words = t('{seam}: {pressed}', { seam: name, pressed: pressState(report, join) })
  return (
    <button
      type="button"
      className={rule === 'asked' ? 'press-arrow own' : 'press-arrow'}
      style={style}
      aria-label={words}
      title={words}
      onClick={() => pressSeam(join.id, nextChoice(join))}
      onPointerEnter={onPoint}
      onFocus={onPoint}
    >
      <ArrowGlyph angle={angleOf(report, join, toward === 'open' ? 1 : toward)} open={toward === 'open'} />
    </button>
  )
}
