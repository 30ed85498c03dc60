/** Turning and mirroring: what is selected, and the whole block. Each says what it did. */
import { type Edit, mirrorBlock, mirrorUnits, type Turn, turnAboutMiddle, turnBlock, turnEach } from '../../../geometry/index.ts'
import { edit, getState, setView } from '../../document/store.ts'
import { label, t } from '../../words/words.ts'
import { withSelection } from './attempt.ts'

/** About their middle: to whole squares of the grid, or exactly where half squares are asked for. */
const turnEdit = (ids: readonly string[], quarters: Turn): Edit => turnAboutMiddle(ids, quarters, getState().view.halfCells)

const TURNED: Readonly<Record<Turn, string>> = {
  0: label('Nothing changed.'),
  1: label('Turned a quarter clockwise.'),
  2: label('Turned 180°.'),
  3: label('Turned a quarter the other way.'),
}

/** Turns units by so many quarters clockwise. */
function turnBy(ids: readonly string[], quarters: Turn): void {
  if (quarters !== 0) edit(turnEdit(ids, quarters))
  setView({ notice: t(TURNED[quarters]) })
}

export const turnSelection = (): void => withSelection((ids) => turnBy(ids, 1))

export const halfTurnSelection = (): void =>
  withSelection((ids) => {
    turnBy(ids, 2)
  })

/** Each about its own middle, where `turnSelection` turns them together. */
export const turnEachSelected = (quarters: 1 | 2): void =>
  withSelection((ids) => {
    edit(turnEach(ids, quarters, getState().view.halfCells))
    setView({ notice: t(TURNED[quarters]) })
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
