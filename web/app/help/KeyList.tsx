/** The list of the board's keys. */
import { KEYS } from '../../board/keys/keyList.ts'
import { t } from '../../words/words.ts'

export function KeyList() {
  return (
    <dl className="help-list">
      {KEYS.map(([key, what]) => (
        <div key={key}>
          <dt>{t(key)}</dt>
          <dd>{t(what)}</dd>
        </div>
      ))}
    </dl>
  )
}
