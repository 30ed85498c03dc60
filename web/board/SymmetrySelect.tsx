/** Repeating each edit around the middle of the block. */
import { REPEATS, type Repeat } from '../../geometry/index.ts'
import { useStore } from '../document/store.ts'
import { label, t } from '../words/words.ts'
import { setSymmetry } from './actions/modes.ts'

const REPEAT_NAMES: Readonly<Record<Repeat, string>> = {
  off: label('off'),
  half: label('half turns'),
  quarters: label('quarter turns'),
  leftRight: label('flip left to right'),
  topBottom: label('flip top to bottom'),
}

export function SymmetrySelect() {
  const repeat = useStore(({ view }) => view.repeat)
  return (
    <label className="repeats">
      {t('Symmetry')}
      <select value={repeat} onChange={(event) => setSymmetry(event.target.value as Repeat)}>
        {REPEATS.map((one) => (
          <option key={one} value={one}>
            {t(REPEAT_NAMES[one])}
          </option>
        ))}
      </select>
    </label>
  )
}
