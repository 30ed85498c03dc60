/**
 * Makes an edit, or says in one sentence why it cannot be made.
 *
 * While symmetry is on, an edit is repeated around the middle of the block; what it makes there are its images.
 */
import { type Block, checkBlock, type Edit, MOST_UNITS, placeUnit, type Unit } from '../../../geometry/index.ts'
import { edit, setView, getState } from '../../document/store.ts'
import { editResult } from '../../document/editResult.ts'
import { rectOf } from '../../document/shapes.ts'
import { symmetricEdit } from '../../document/symmetricEdit.ts'
import { label, t } from '../../words/words.ts'
import { hasRoom, unitById } from '../hitTest.ts'

const NO_ROOM = label('There’s no room there: those squares are taken or outside the grid.')
const NO_ROOM_FOR_IMAGES = label('It fits there, but its symmetrical copy doesn’t. Move what’s in the way, or turn Symmetry off.')
const TOO_MANY = label('A block can have up to {most} units. Delete some first.')
const NOT_EXACT = label('That position doesn’t work with the others. Try one nearer a grid line.')

/** Acts on the selected units, or asks for a selection. */
export function withSelection(act: (ids: readonly string[]) => void): void {
  const { selected } = getState().view
  if (selected.length === 0) setView({ notice: t('Select a unit first.') })
  else act(selected)
}

/** Makes an edit if everything it moves, images too, has room and can be stored exactly; else a notice says why not. Returns whether it was made. */
export function attempt(change: Edit, notice: string, trouble: string = t(NO_ROOM)): boolean {
  const before = getState().history.block
  const alone = editResult(before, change)
  if (alone === before) {
    setView({ notice })
    return false
  }
  const all = editResult(before, symmetricEdit(before, change, getState().view.repeat))
  const reason = whyNot(before, alone, all, trouble)
  if (reason !== null) {
    setView({ notice: reason })
    return false
  }
  edit(change)
  setView({ notice })
  return true
}

/** Why an edit cannot be made, with its images; null where it can. */
function whyNot(before: Block, alone: Block, all: Block, trouble: string): string | null {
  if (all.units.length > Math.max(MOST_UNITS, before.units.length)) return t(TOO_MANY, { most: MOST_UNITS })
  if (!newUnitsFit(before, alone)) return trouble
  if (!newUnitsFit(before, all)) return t(NO_ROOM_FOR_IMAGES)
  return isExact(before, all) ? null : t(NOT_EXACT)
}

const newUnits = (before: Block, after: Block): Unit[] => after.units.filter((unit) => unitById(before, unit.id) !== unit)

const newUnitsFit = (before: Block, after: Block): boolean =>
  newUnits(before, after).every((unit) => hasRoom(after, [rectOf(unit)], new Set([unit.id]), [unit]))

/** Whole cells and halves are always exact; other fractions share a denominator with the rest of the file. */
function isExact(before: Block, after: Block): boolean {
  const round = (unit: Unit): boolean => unit.kind !== 'polygon' && [...unit.at, ...unit.size].every((value) => Number.isInteger(Number(value) * 2))
  return newUnits(before, after).every(round) || checkBlock(after).ok
}

/** More units than this are placed as they are, and it is said if an image has no room. */
const MOST_PAIRED = 400

/** While symmetry is on, units placed in one edit may overlap each other's images, so only the first of each set of images is placed. */
export function withoutImages(units: readonly Unit[]): readonly Unit[] {
  const { history, view } = getState()
  if (view.repeat === 'off' || units.length > MOST_PAIRED) return units
  let all = history.block
  return units.filter((unit) => {
    if (!hasRoom(all, [rectOf(unit)], new Set())) return false
    const next = editResult(all, symmetricEdit(all, placeUnit(unit), view.repeat))
    if (!newUnitsFit(all, next)) return true
    all = next
    return true
  })
}
