/** The buttons and keys that change what the next edit does: the tool, half cells, adding to the selection, symmetry, and the turn of the unit in hand. */
import { canRepeat, type Repeat, type Turn } from '../../../geometry/index.ts'
import { setView, getState, type DragTool } from '../../document/store.ts'
import { t } from '../../words/words.ts'
import { TOOLS } from '../tools.ts'

export function selectTool(tool: DragTool): void {
  const words = TOOLS.find((one) => one.tool === tool)
  const left = tool === 'patch' ? {} : { corners: [], cursor: getState().view.cursor.map(Math.floor) as [number, number] }
  setView({ tool, ...left, notice: words === undefined ? '' : t(words.hint) })
}

export function turnInHand(): void {
  setView({ unitTurn: ((getState().view.unitTurn + 1) % 4) as Turn, notice: t('Turned a quarter clockwise.') })
}

export function halfTurnInHand(): void {
  setView({ unitTurn: ((getState().view.unitTurn + 2) % 4) as Turn, notice: t('Turned 180°.') })
}

/** Left for right as it lies in the hand: a flip after a turn is the flip before the turn the other way. */
export function flipInHand(): void {
  const { unitTurn, unitMirror } = getState().view
  setView({ unitTurn: ((4 - unitTurn) % 4) as Turn, unitMirror: !unitMirror, notice: t('Flipped left to right.') })
}

/** The hand is empty again; what is selected stays so. */
export function emptyHand(): void {
  const { unitInHand } = getState().view
  const notice = unitInHand === null ? t('Finished colouring.') : t('Finished placing.')
  setView({ unitInHand: null, unitTurn: 0, unitMirror: false, fabricInHand: null, notice })
}

export function toggleHalves(): void {
  const halfCells = !getState().view.halfCells
  setView({ halfCells, notice: halfCells ? t('Units now snap to half squares.') : t('Units now snap to whole squares.') })
}

export function toggleAdding(): void {
  const adding = !getState().view.adding
  setView({
    adding,
    notice: adding ? t('Each click adds a unit to the selection. Click it again to leave it out.') : t('Each click selects one unit.'),
  })
}

export function setSymmetry(repeat: Repeat): void {
  if (!canRepeat(getState().history.block, repeat)) setView({ notice: t('Quarter turns need a grid with as many rows as columns.') })
  else setView({ repeat, notice: repeat === 'off' ? t('Symmetry is off.') : t('Symmetry is on: each change is repeated on the matching units.') })
}
