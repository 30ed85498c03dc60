/** What to fill the patches with, and how far apart the lines are. */
import { sayLength } from '../../../geometry/index.ts'
import { t } from '../../words/words.ts'
import { type Fill, FILLS } from './quiltingLines.ts'

/** Distances to choose from, in inches and in centimetres. */
const SPACINGS = { in: [0.25, 0.5, 1, 2], cm: [0.5, 1, 2.5, 5] } as const

interface Props {
  readonly unit: 'in' | 'cm'
  /** Whether only the chosen units are filled. */
  readonly onlySelected: boolean
  readonly fill: Fill
  readonly setFill: (fill: Fill) => void
  readonly spacing: number
  readonly setSpacing: (spacing: number) => void
}

export function FillFields({ unit, onlySelected: onlyChosen, fill, setFill, spacing, setSpacing }: Props) {
  return (
    <div className="pairs">
      <label>
        {onlyChosen ? t('Fill the selected units with') : t('Fill each patch with')}
        <select value={fill} onChange={(event) => setFill(event.target.value as Fill)}>
          {Object.entries(FILLS).map(([value, name]) => (
            <option key={value} value={value}>
              {t(name)}
            </option>
          ))}
        </select>
      </label>
      <label>
        {t('Distance between lines ({unit})', { unit })}
        <select value={spacing} onChange={(event) => setSpacing(Number(event.target.value))}>
          {SPACINGS[unit].map((value) => (
            <option key={value} value={value}>
              {sayLength(value, unit)}
            </option>
          ))}
        </select>
      </label>
    </div>
  )
}
