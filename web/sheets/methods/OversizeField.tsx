/** How much larger a unit is cut, to be trimmed to size later. */
import { type Block, isTrimmed, methodOf, OVERSIZES, parseRational, setOversize, toNumber, type Unit } from '../../../geometry/index.ts'
import { edit } from '../../document/store.ts'
import { sayOneSize } from '../../words/sizes.ts'
import { t } from '../../words/words.ts'

export interface UnitProps {
  /** One of the units, to show. */
  readonly unit: Unit
  readonly block: Block
  /** All the units that a choice applies to. */
  readonly ids: readonly string[]
}

/** In inches or centimetres, as the block is measured. */
export const oversizeOf = ({ oversize }: Unit): number => (oversize === undefined ? 0 : toNumber(parseRational(oversize) ?? { n: 0n, d: 1n }))

/** Nothing for units that are not trimmed at all. */
export function OversizeField({ unit, block, ids }: UnitProps) {
  const measure = block.measure.unit
  if (!isTrimmed(unit.kind, methodOf(unit)) && unit.oversize === undefined) return null
  const now = oversizeOf(unit)
  const offered = [...new Set([...OVERSIZES[measure], ...(now > 0 ? [now] : [])])].sort((a, b) => a - b)
  return (
    <label>
      {t('Extra for trimming')}
      <select
        value={now}
        onChange={(event) => edit(setOversize(ids, event.target.value === '0' ? null : oversizeForFile(Number(event.target.value))))}
      >
        <option value={0}>{t('none')}</option>
        {offered.map((by) => (
          <option key={by} value={by}>
            {sayOneSize(by, measure)}
          </option>
        ))}
      </select>
    </label>
  )
}

/** As a maker would write it in the file. */
const oversizeForFile = (length: number): number | string => (length === 1 / 8 ? '1/8' : length === 1 / 4 ? '1/4' : length)
