/** Placing, replacing, copying and removing units. Each says what it did, or in one sentence why it did nothing. */
import {
  canBecome,
  copyUnits,
  type FilePoint,
  freshId,
  placeUnit,
  placeUnits,
  removeUnits,
  replaceKind,
  type Turn,
  type Unit,
} from '../../../geometry/index.ts'
import { edit, setView, getState } from '../../document/store.ts'
import type { Point } from '../../document/shapes.ts'
import { t, tn } from '../../words/words.ts'
import { unitsById } from '../hitTest.ts'
import { newUnit, roomAround, type TrayKind } from '../newUnit.ts'
import { attempt, withoutImages, withSelection } from './attempt.ts'
import { freePlace } from './freeSpace.ts'

export const removeSelection = (): void =>
  withSelection((ids) => {
    edit(removeUnits(ids))
    setView({ notice: tn(ids.length, 'Unit deleted.', '{n} units deleted.') })
  })

/** Puts a unit of another kind in place of each of these. */
export function replaceWith(kind: TrayKind, ids: readonly string[]): void {
  if (ids.length === 0) return setView({ notice: t('Select a unit first.') })
  const able = unitsById(getState().history.block, ids).filter((unit) => canBecome(unit, kind))
  if (able.length < ids.length)
    return setView({ notice: t('That unit doesn’t fit this space: some units are square, and a goose is twice as long as wide.') })
  edit(replaceKind(ids, kind))
  setView({ selected: ids, patch: null, notice: t('Replaced, in the same fabrics.') })
}

export function replaceSelection(): void {
  const { unitInHand } = getState().view
  if (unitInHand === null) setView({ notice: t('Pick a unit from the list first.') })
  else withSelection((ids) => replaceWith(unitInHand as TrayKind, ids))
}

/** The copies go to the nearest free place. */
export const duplicateSelection = (): void =>
  withSelection((ids) => {
    const place = freePlace(getState().history.block, unitsById(getState().history.block, ids))
    if (place === null) {
      setView({ notice: t('There’s no room for a copy. Make the grid larger or delete a unit.') })
      return
    }
    const taken = new Set<string>()
    const copies = ids.map((id) => {
      const next = freshId(getState().history.block, id.replace(/-\d+$/, ''), taken)
      taken.add(next)
      return next
    })
    if (attempt(copyUnits(ids, place[0], place[1], copies), t('Duplicated.'))) setView({ selected: copies })
  })

/** On whole cells over a point, where there is room; says so where there is none. */
export const placeAround = (kind: TrayKind, at: Point): boolean =>
  placeAt(kind, roomAround(getState().history.block, kind, getState().view.unitTurn, at) ?? [Math.floor(at[0]), Math.floor(at[1])])

interface Placing {
  readonly turn: Turn
  readonly mirror: boolean
  /** Whether it is selected then. */
  readonly select: boolean
}

/** As it lies in the hand. It is not selected: keys go on turning and flipping what is in the hand. */
const asInHand = (): Placing => ({ turn: getState().view.unitTurn, mirror: getState().view.unitMirror, select: false })

/** Places a new unit; `at` is its top left corner, in cells. Gives back whether there was room. */
export function placeAt(kind: TrayKind, at: FilePoint, { turn, mirror, select }: Placing = asInHand()): boolean {
  const unit = newUnit(getState().history.block, kind, at, turn, undefined, mirror)
  const placed = attempt(placeUnit(unit), t('Placed.'), t('It doesn’t fit there: those squares are taken or outside the grid.'))
  if (placed) setView({ selected: select ? [unit.id] : [], patch: null })
  return placed
}

/** All units of one drag over cells, in one edit. */
export function placeMany(run: readonly Unit[]): void {
  const units = withoutImages(run)
  if (units.length === 0) setView({ notice: t('There’s no empty square for it there.') })
  else if (attempt(placeUnits(units), tn(units.length, 'Placed.', '{n} units placed.'))) setView({ selected: [], patch: null })
}
