/** What to fill the patches with, and how far apart the lines are: of the selected units, or of every patch if none is selected. */
import { type Block, FILLS, type Fill, quiltingOf, sayLength, setFill, setFillSpacing } from '../../../geometry/index.ts'
import { edit } from '../../document/store.ts'
import { label, t } from '../../words/words.ts'

const FILL_NAMES: Readonly<Record<Fill, string>> = { none: label('nothing'), echo: label('echo lines'), spiral: label('a spiral') }

/** Distances to choose from, in inches and in centimetres. */
const SPACINGS = { in: [0.25, 0.5, 1, 2], cm: [0.5, 1, 2.5, 5] } as const

interface Props {
  readonly block: Block
  /** Ids of the selected units. */
  readonly selected: readonly string[]
}

export function FillFields({ block, selected }: Props) {
  const { unit } = block.measure
  const { spacing, fillOf } = quiltingOf(block)
  const units = selected.length === 0 ? block.units : block.units.filter(({ id }) => selected.includes(id))
  const fills = new Set(units.map(fillOf))
  const [fill] = fills.size > 1 ? ['mixed'] : fills
  const spacings = [...new Set([...SPACINGS[unit], spacing])].sort((a, b) => a - b)
  return (
    <div className="pairs">
      <label>
        {selected.length > 0 ? t('Fill the selected units with') : t('Fill each patch with')}
        <select value={fill ?? 'none'} onChange={(event) => edit(setFill(selected, event.target.value as Fill))}>
          {fill === 'mixed' && (
            <option value="mixed" disabled>
              {t('different fills')}
            </option>
          )}
          {FILLS.map((value) => (
            <option key={value} value={value}>
              {t(FILL_NAMES[value])}
            </option>
          ))}
        </select>
      </label>
      <label>
        {t('Distance between lines ({unit})', { unit })}
        <select value={spacing} onChange={(event) => edit(setFillSpacing(Number(event.target.value)))}>
          {spacings.map((value) => (
            <option key={value} value={value}>
              {sayLength(value, unit)}
            </option>
          ))}
        </select>
      </label>
    </div>
  )
}
