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
  const area = (square: number): string => t('{area} sq {unit}', { area: square.toFixed(1), unit })
  return [
    `${tn(choice.toCut, 'Cut 1 piece', 'Cut {n} pieces')}, ${tn(choice.makes, 'makes 1 unit', 'makes {n} units')}`,
    t('{cloth} of fabric for each unit, {lost} of it wasted', {
      cloth: area(choice.fabricArea / choice.makes),
      lost: area((choice.wasted - choice.saved) / choice.makes),
    }),
    ...(choice.biasSeams > 0 ? [tn(choice.biasSeams, '1 seam on the bias', '{n} seams on the bias')] : []),
    ...(choice.biasEdges > 0 ? [t('outside edges on the bias')] : []),
    ...bonusWords(choice, unit),
    choice.trimmed ? t('trimmed to size') : t('no trimming'),
  ]
    .join('; ')
    .concat('.')
}

function bonusWords({ bonus }: PossibleChoice, unit: 'in' | 'cm'): string[] {
  return bonus.map(({ finished, count }) =>
    tn(count, '1 bonus half-square triangle, {size} finished', '{n} bonus half-square triangles, {size} finished', {
      size: sayOneSize(finished, unit),
    }),
  )
}
