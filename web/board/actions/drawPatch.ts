/** Drawing a free patch corner by corner: the corners so far are in the view state, and become a unit when the outline closes. */
import { crossesPath, exactPoint, type FilePoint, freshId, outlineTrouble, placeUnit, type Unit } from '../../../geometry/index.ts'
import { setView, getState } from '../../document/store.ts'
import { label, t, tn } from '../../words/words.ts'
import { attempt } from './attempt.ts'
import { toDecimal } from '../../document/shapes.ts'

const CROSSED = label('The outline would cross or touch itself there. Try another corner.')

const same = (a: FilePoint, b: FilePoint): boolean => {
  const [p, q] = [exactPoint(a), exactPoint(b)]
  return p.every(({ n, d }, axis) => n === q[axis]?.n && d === q[axis]?.d)
}

/** Adds a corner, in cells; on the first one it closes the outline. */
export function addCorner(point: FilePoint): void {
  const { corners } = getState().view
  const [first] = corners
  if (crossesPath(corners, point)) return setView({ notice: t(CROSSED) })
  if (first !== undefined && corners.length > 2 && same(first, point)) return closeOutline()
  const { columns, rows } = getState().history.block.grid
  const [x, y] = [toDecimal(point[0]), toDecimal(point[1])]
  if (x < 0 || y < 0 || x > columns || y > rows) return setView({ notice: t('Put corners inside the grid or on its edge.') })
  const next = [...corners, point]
  setView({
    corners: next,
    notice:
      next.length < 3
        ? tn(next.length, 'First corner set. Click where the next one goes.', '{n} corners set. Click where the next one goes.')
        : t('{n} corners set. Click the first one or press Enter to close the patch.', { n: next.length }),
  })
}

/** Makes a unit of the outline; says why where it cannot. */
export function closeOutline(): void {
  const { view, history } = getState()
  const [first] = view.corners
  if (first === undefined) return setView({ notice: t('Click where the first corner goes.') })
  const trouble = outlineTrouble(view.corners)
  if (trouble === 'few') return setView({ notice: t('A patch needs at least three corners.') })
  if (trouble === 'crossed' || crossesPath(view.corners, first)) return setView({ notice: t(CROSSED) })
  const fabric = view.fabricInHand ?? history.block.fabrics[0]?.id
  if (fabric === undefined) return setView({ notice: t('Add a fabric first.') })
  const unit: Unit = { id: freshId(history.block, 'free'), kind: 'polygon', corners: view.corners, fabrics: { patch: fabric } }
  if (attempt(placeUnit(unit), t('Patch drawn.'))) setView({ corners: [], selected: [unit.id], patch: null })
}

export function removeCorner(): void {
  const { corners } = getState().view
  setView({
    corners: corners.slice(0, -1),
    notice: corners.length === 0 ? t('There’s no corner to undo.') : t('Last corner undone.'),
  })
}
