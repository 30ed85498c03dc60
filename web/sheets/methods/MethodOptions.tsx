/** The options of a list to choose a kind's method from. */
import { KIND_FACTS, type Kind } from '../../../geometry/index.ts'
import { METHOD_NAMES } from '../../words/unitWords.ts'
import { t } from '../../words/words.ts'

export const MethodOptions = ({ kind }: { readonly kind: Kind }) =>
  KIND_FACTS[kind].methods.map((method) => (
    <option key={method} value={method}>
      {t(METHOD_NAMES[method])}
    </option>
  ))
