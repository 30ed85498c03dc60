/** What is marked on the block: seam crossings and points, the numbers of the seams too, or nothing. */
import { setView, useStore, type Marks } from '../document/store.ts'
import { label, t } from '../words/words.ts'

const MARKS: Readonly<Record<Marks, string>> = {
  crossings: label('crossings'),
  numbers: label('crossings and seam numbers'),
  none: label('nothing'),
}

export function MarksSelect() {
  const marks = useStore(({ view }) => view.marks)
  return (
    <label className="repeats marks">
      {t('Mark')}
      <select value={marks} onChange={(event) => setView({ marks: event.target.value as Marks })}>
        {Object.entries(MARKS).map(([one, name]) => (
          <option key={one} value={one}>
            {t(name)}
          </option>
        ))}
      </select>
    </label>
  )
}
