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
  setView({ unitTurn: ((getState().view.unitTurn + 1) % 4) as Turn, notice: t('Turned a quarter clockwise in your hand.') })
}

export function toggleHalves(): void {
  const halfCells = !getState().view.halfCells
  setView({ halfCells, notice: halfCells ? t('What is moved goes by half a cell.') : t('What is moved goes by whole cells.') })
}

export function toggleAdding(): void {
  const adding = !getState().view.adding
  setView({ adding, notice: adding ? t('Each unit you press is chosen too; press it again to let it go.') : t('A press chooses one unit.') })
}

export function setSymmetry(repeat: Repeat): void {
  if (!canRepeat(getState().history.block, repeat)) setView({ notice: t('Edits repeat by quarter turns only on a grid as wide as it is high.') })
  else setView({ repeat, notice: repeat === 'off' ? t('Edits do not repeat.') : t('What you do now is done to its images too.') })
}
