/** Turning and mirroring: what is selected, and the whole block. Each says what it did. */
import { type Edit, message, mirrorBlock, mirrorUnits, type Turn, turnBlock, turnUnits } from '../../../geometry/index.ts'
import { edit, setView } from '../../document/store.ts'
import { label, t } from '../../words/words.ts'
import { withSelection } from './attempt.ts'

/** So many quarters clockwise, in one edit: so half a turn of a long unit ends in the cells where it began. */
export const turnEdit = (ids: readonly string[], quarters: Turn): Edit => ({
  name: ids.length > 1 && quarters === 2 ? message('turn-units-half-round') : message('turn-units', { units: ids.length }),
  change: (draft) => {
    for (let quarter = 0; quarter < quarters; quarter++) turnUnits(ids).change(draft)
  },
})

const TURNED: Readonly<Record<Turn, string>> = {
  0: label('Nothing changed.'),
  1: label('Turned a quarter clockwise.'),
  2: label('Turned 180°.'),
  3: label('Turned a quarter the other way.'),
}

/** Turns units by so many quarters clockwise. */
export function turnBy(ids: readonly string[], quarters: Turn): void {
  if (quarters !== 0) edit(turnEdit(ids, quarters))
  setView({ notice: t(TURNED[quarters]) })
}

export const turnSelection = (): void => withSelection((ids) => turnBy(ids, 1))

export const halfTurnSelection = (): void =>
  withSelection((ids) => {
    turnBy(ids, 2)
  })

export const mirrorSelection = (): void =>
  withSelection((ids) => {
    edit(mirrorUnits(ids))
    setView({ notice: t('Flipped left to right.') })
  })

export function turnWholeBlock(): void {
  edit(turnBlock())
  setView({ notice: t('Whole block turned a quarter clockwise.') })
}

export function mirrorWholeBlock(): void {
  edit(mirrorBlock())
  setView({ notice: t('Whole block flipped left to right.') })
}
