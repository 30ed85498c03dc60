/** The methods to make a unit, side by side: what each cuts, wastes and leaves over. */
import { type Block, compareMethods, type MethodChoice, methodOf, type PossibleChoice, setMethod } from '../../../geometry/index.ts'
import { edit } from '../../document/store.ts'
import { sayOneSize } from '../../words/sizes.ts'
import { METHOD_NAMES } from '../../words/unitWords.ts'
import { t, tn, translate } from '../../words/words.ts'
import { oversizeOf, type UnitProps } from './OversizeField.tsx'

export function MethodComparison({ unit, block, ids }: UnitProps) {
  return (
    <ul className="methods">
      {compareMethods(unit, block, oversizeOf(unit)).map((choice) => (
        <li key={choice.method}>
          <button
            type="button"
            aria-pressed={choice.method === methodOf(unit)}
            disabled={!choice.possible}
            onClick={() => edit(setMethod(ids, choice.method))}
          >
            {t(METHOD_NAMES[choice.method])}
          </button>
          <p className="hint">{methodWords(choice, block)}</p>
        </li>
      ))}
    </ul>
  )
}

function methodWords(choice: MethodChoice, block: Block): string {
  if (!choice.possible) return translate(choice.why)
  const { unit } = block.measure
  const area = (square: number): string => `${square.toFixed(1)} sq ${unit}`
  return [
    `${tn(choice.toCut, 'One piece to cut', '{n} pieces to cut')}, ${tn(choice.makes, 'one unit at once', '{n} units at once')}`,
    t('{cloth} of cloth a unit, {lost} of it lost', {
      cloth: area(choice.fabricArea / choice.makes),
      lost: area((choice.wasted - choice.saved) / choice.makes),
    }),
    ...(choice.biasSeams > 0 ? [tn(choice.biasSeams, 'one seam on the bias', '{n} seams on the bias')] : []),
    ...(choice.biasEdges > 0 ? [t('outside edges on the bias')] : []),
    ...bonusWords(choice, unit),
    choice.trimmed ? t('trimmed to size') : t('sewn as cut'),
  ]
    .join('; ')
    .concat('.')
}

function bonusWords({ bonus }: PossibleChoice, unit: 'in' | 'cm'): string[] {
  return bonus.map(({ finished, count }) =>
    tn(count, 'one bonus triangle square, {size} finished', '{n} bonus triangle squares, {size} finished', { size: sayOneSize(finished, unit) }),
  )
}
