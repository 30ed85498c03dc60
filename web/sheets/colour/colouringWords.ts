/** What the panel says about a colouring, and what happens when one is taken. */
import { type Block, type ColouringPage, colourPatches, coloursOf, type Fabric, type JudgedColouring } from '../../../geometry/index.ts'
import { edit, setView } from '../../document/store.ts'
import { t, tn } from '../../words/words.ts'

/** A colouring with its number in the list, from 1. Number 0 is the block as it was when the list was made. */
export interface NumberedColouring {
  readonly number: number
  readonly colouring: JudgedColouring
}

export const colouringName = ({ number }: NumberedColouring): string => (number === 0 ? t('your colouring') : t('colouring {n}', { n: number }))

/** How many batches and clashes it has, in a word or two each. */
export function colouringResults({ batches, clashes }: JudgedColouring): string[] {
  return [
    ...(batches === 0 ? [] : [tn(batches, '1 batch', '{n} batches')]),
    ...(clashes === null ? [] : [clashes === 0 ? t('all nest') : tn(clashes, '1 doesn’t nest', '{n} don’t nest')]),
  ]
}

/** How many of the patches that may change are of each fabric, in the order of the list. */
function amountWords({ fabrics: taken }: JudgedColouring, fabrics: readonly Fabric[]): string[] {
  return fabrics.flatMap(({ id, name }) => {
    const n = taken.filter((one) => one === id).length
    return n === 0 ? [] : [t('{n} × {name}', { n, name })]
  })
}

/** Everything about a colouring, for a screen reader. */
export function colouringLabel(one: NumberedColouring, { present }: ColouringPage, fabrics: readonly Fabric[]): string {
  const { symmetry } = one.colouring
  const kept = symmetry > 1 ? [t('looks the same after {n} turns or flips', { n: symmetry })] : []
  const which = one.colouring === present ? t('Your colouring') : t('Use colouring {n}', { n: one.number })
  return [which, ...amountWords(one.colouring, fabrics), ...colouringResults(one.colouring), ...kept].join(', ')
}

/** Whether the block on the board has this colouring. */
export function isOnBoard({ slots }: ColouringPage, { fabrics }: JudgedColouring, block: Block): boolean {
  const units = new Map(block.units.map((unit) => [unit.id, unit]))
  return slots.length > 0 && slots.every(({ unit, name }, at) => units.get(unit)?.fabrics[name] === fabrics[at])
}

export function takeColouring(one: NumberedColouring, page: ColouringPage): void {
  edit(colourPatches(coloursOf(page, one.colouring)))
  setView({ notice: one.number === 0 ? t('Your colouring is back on the board.') : t('Colouring {n} is on the board.', { n: one.number }) })
}
