/** The ways to make the chosen unit side by side: what each cuts, wastes and leaves; and where the ruler lies when it is trimmed. */
import { useState } from 'react'
import {
  type Block,
  compareMethods,
  HANDS,
  type Hand,
  type MethodChoice,
  methodOf,
  type PossibleChoice,
  sayLength,
  setMethod,
  trimCuts,
  type RulerCut,
  type Unit,
} from '../../geometry/index.ts'
import { edit } from '../state/store.ts'
import { METHOD_NAMES } from './words.ts'

interface Props {
  readonly unit: Unit
  readonly block: Block
  /** All that are chosen: a way is taken for each of them. */
  readonly ids: readonly string[]
}

export function Ways({ unit, block, ids }: Props) {
  return (
    <details className="order">
      <summary>Ways to make it, and to trim it</summary>
      <ul className="ways">
        {compareMethods(unit, block).map((choice) => (
          <li key={choice.method}>
            <button
              type="button"
              aria-pressed={choice.method === methodOf(unit)}
              disabled={!choice.possible}
              onClick={() => edit(setMethod(ids, choice.method))}
            >
              {METHOD_NAMES[choice.method]}
            </button>
            <p className="hint">{inWords(choice, block)}</p>
          </li>
        ))}
      </ul>
      {unit.kind !== 'polygon' && <Trimming unit={unit} block={block} />}
    </details>
  )
}

function inWords(choice: MethodChoice, block: Block): string {
  if (!choice.possible) return choice.why
  const { unit } = block.measure
  const area = (square: number): string => `${square.toFixed(1)} sq ${unit}`
  return [
    `${choice.toCut === 1 ? 'One piece' : `${choice.toCut} pieces`} to cut, ${choice.makes === 1 ? 'one unit' : `${choice.makes} units`} at once`,
    `${area(choice.cloth / choice.makes)} of cloth a unit, ${area((choice.wasted - choice.saved) / choice.makes)} of it lost`,
    ...(choice.biasSeams > 0 ? [`${choice.biasSeams === 1 ? 'one seam' : `${choice.biasSeams} seams`} on the bias`] : []),
    ...(choice.biasEdges > 0 ? ['outside edges on the bias'] : []),
    ...bonusWords(choice, unit),
    choice.trimmed ? 'trimmed to size' : 'sewn as cut',
  ]
    .join('; ')
    .concat('.')
}

function bonusWords({ bonus }: PossibleChoice, unit: 'in' | 'cm'): string[] {
  return bonus.map(
    ({ finished, count }) =>
      `${count === 1 ? 'one bonus triangle square' : `${count} bonus triangle squares`}, ${sayLength(finished, unit)} ${unit} finished`,
  )
}

function Trimming({ unit, block }: { readonly unit: Exclude<Unit, { kind: 'polygon' }>; readonly block: Block }) {
  const [hand, setHand] = useState<Hand>('right')
  const cuts = trimCuts(unit, block, hand)
  if (cuts.length === 0) return null
  return (
    <>
      <label>
        Trimming, with the cutter in the
        <select value={hand} onChange={(event) => setHand(event.target.value as Hand)}>
          {HANDS.map((one) => (
            <option key={one} value={one}>
              {one} hand
            </option>
          ))}
        </select>
      </label>
      <ol className="moves">
        {cuts.map((cut) => (
          <li key={cut.turn}>{cutWords(cut, block.measure.unit)}</li>
        ))}
      </ol>
      <p className="caution">
        Close the cutter after every cut, cut away from yourself, fingers behind the ruler’s edge; its own instructions and your teacher come first.
      </p>
    </>
  )
}

function cutWords({ turn, edges, size, points, seams }: RulerCut, unit: 'in' | 'cm'): string {
  const say = (length: number): string => `${sayLength(length, unit)} ${unit}`
  const lies =
    turn === 0 ? 'Lay it as it is' : `Turn it ${turn === 2 ? 'half round' : turn === 1 ? 'a quarter to the right' : 'a quarter to the left'}`
  const angles = [...new Set(seams.filter(({ angle }) => angle % 90 > 1e-9).map(({ angle }) => `${Math.round(angle)}° line on the slanting seam`))]
  const tips = points
    .filter(({ what }) => what !== 'end')
    .map(({ what, at }) => `${what === 'tip' ? 'tip' : 'crossing'} ${say(at.fromSide)} from the ${edges[0]} edge and ${say(at.fromTop)} from the top`)
  return `${lies}; ${[...angles, ...tips].join(', ')}; cut the ${edges[0]} and the top, with ${say(size[0])} by ${say(size[1])} still under the ruler.`
}
