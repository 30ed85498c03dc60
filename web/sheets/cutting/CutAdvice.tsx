/** What to know before cutting. Pressing advice about certain units selects them on the board. */
import type { Advice } from '../../../geometry/index.ts'
import { setView } from '../../document/store.ts'
import { t, tn, translate } from '../../words/words.ts'

export function CutAdvice({ advice }: { readonly advice: readonly Advice[] }) {
  if (advice.length === 0) return null
  return (
    <ul className="advice" aria-label={t('Before you cut')}>
      {advice.map(({ code, units, message }) => (
        <li key={`${code} ${units.join()} ${message.code}`}>
          {units.length === 0 ? (
            <p>{translate(message)}</p>
          ) : (
            <button
              type="button"
              className="plain"
              onClick={() => setView({ selected: units, patch: null, notice: tn(units.length, 'One unit selected.', '{n} units selected.') })}
            >
              {translate(message)}
            </button>
          )}
        </li>
      ))}
    </ul>
  )
}
