/** What keys, buttons, handles and drags do alike: each acts on what is chosen and says what it did, or in one sentence why not. */
import {
  alignUnits,
  type Block,
  canBecome,
  canRepeat,
  checkBlock,
  message,
  copyUnits,
  type Edit,
  fileBoxOf,
  type FileBox,
  type FilePoint,
  freshId,
  keepsProportion,
  mirrorBlock,
  mirrorUnits,
  MOST_UNITS,
  moveUnits,
  placeUnit,
  placeUnits,
  recolourPatch,
  removeUnits,
  replaceKind,
  type Repeat,
  resizeUnits,
  type Side,
  spreadUnits,
  swapUnits,
  turnBlock,
  turnUnits,
  type Position,
  type Turn,
  type Unit,
} from '../../../geometry/index.ts'
import { displayName } from '../../document/blockNames.ts'
import { edit, setView, getState } from '../../document/store.ts'
import { editResult } from '../../document/editResult.ts'
import { symmetricEdit } from '../../document/symmetricEdit.ts'
import { said, t, tn } from '../../words/words.ts'
import type { Patch } from '../hand/hand.ts'
import { newUnit, roomOver, type TrayKind } from '../newUnit.ts'
import { fits, pieceAt, unitById, unitsById } from '../hitTest.ts'
import { freePlace } from './freeSpace.ts'
import { rectOf, type Point } from '../../document/shapes.ts'

const block = (): Block => getState().history.block
const chosen = (): readonly string[] => getState().view.chosen

const NO_ROOM = said('There is no room there: the cells are taken, or lie beyond the grid.')
const NO_ROOM_FOR_IMAGES = said('It fits there, but its image does not: the cells are taken. Move what is in the way, or let edits not repeat.')
const TOO_MANY = said('A block holds at most {most} units; remove some first.')
const NOT_EXACT = said('Such fractions of a cell cannot be held exactly beside the others; choose a rounder place.')

function some(act: (ids: readonly string[]) => void): void {
  if (chosen().length === 0) setView({ notice: t('Choose a unit first.') })
  else act(chosen())
}

/** Makes an edit where all that it moves, with its images, has room and can be held exactly; else says why not. */
export function attempt(change: Edit, notice: string, trouble: string = t(NO_ROOM)): boolean {
  const before = block()
  const own = editResult(before, change)
  if (own === before) {
    setView({ notice })
    return false
  }
  const all = editResult(before, symmetricEdit(before, change, getState().view.repeat))
  const reason = whyNot(before, own, all, trouble)
  if (reason !== null) {
    setView({ notice: reason })
    return false
  }
  edit(change)
  setView({ notice })
  return true
}

/** What stands against an edit with its images; null where nothing does. */
function whyNot(before: Block, own: Block, all: Block, trouble: string): string | null {
  if (all.units.length > Math.max(MOST_UNITS, before.units.length)) return t(TOO_MANY, { most: MOST_UNITS })
  if (!hasRoom(before, own)) return trouble
  if (!hasRoom(before, all)) return t(NO_ROOM_FOR_IMAGES)
  return isExact(before, all) ? null : t(NOT_EXACT)
}

const fresh = (before: Block, after: Block): Unit[] => after.units.filter((unit) => unitById(before, unit.id) !== unit)

function hasRoom(before: Block, after: Block): boolean {
  const changed = fresh(before, after)
  return changed.every((unit) => fits(after, [rectOf(unit)], new Set([unit.id]), [unit]))
}

/** Whole cells and halves are always exact; other fractions share a denominator with the rest of the file. */
function isExact(before: Block, after: Block): boolean {
  const round = (unit: Unit): boolean => unit.kind !== 'polygon' && [...unit.at, ...unit.size].every((value) => Number.isInteger(Number(value) * 2))
  return fresh(before, after).every(round) || checkBlock(after).ok
}

/** By quarters clockwise: half a turn keeps a long unit in its cells. */
export const quartersOf = (ids: readonly string[], quarters: Turn): Edit => ({
  name: ids.length > 1 && quarters === 2 ? message('turn-units-half-round') : message('turn-units', { units: ids.length }),
  change: (draft) => {
    for (let quarter = 0; quarter < quarters; quarter++) turnUnits(ids).change(draft)
  },
})

const TURNED: Readonly<Record<Turn, string>> = {
  0: said('It lies as before.'),
  1: said('Turned a quarter clockwise.'),
  2: said('Turned half round.'),
  3: said('Turned a quarter back.'),
}

export function turnBy(ids: readonly string[], quarters: Turn): void {
  if (quarters !== 0) edit(quartersOf(ids, quarters))
  setView({ notice: t(TURNED[quarters]) })
}

export const turnChosen = (): void => some((ids) => turnBy(ids, 1))

export const halfTurnChosen = (): void =>
  some((ids) => {
    turnBy(ids, 2)
  })

export const mirrorChosen = (): void =>
  some((ids) => {
    edit(mirrorUnits(ids))
    setView({ notice: t('Mirrored left for right.') })
  })

export function turnWhole(): void {
  edit(turnBlock())
  setView({ notice: t('The whole block is turned a quarter clockwise.') })
}

export function mirrorWhole(): void {
  edit(mirrorBlock())
  setView({ notice: t('The whole block is mirrored left for right.') })
}

export const removeChosen = (): void =>
  some((ids) => {
    edit(removeUnits(ids))
    setView({ notice: tn(ids.length, 'Unit removed.', '{n} units removed.') })
  })

export const moveChosen = (dx: Position, dy: Position): void =>
  some((ids) => {
    attempt(moveUnits(ids, dx, dy), t('Moved.'))
  })

export function moveTo(ids: readonly string[], [dx, dy]: readonly [Position, Position]): void {
  if (dx !== 0 || dy !== 0) attempt(moveUnits(ids, dx, dy), t('Moved.'), t('It does not fit there: the cells are taken, or lie beyond the grid.'))
}

export function swap(one: string, other: string): void {
  if (attempt(swapUnits(one, other), t('The two units have changed places.'))) setView({ chosen: [one], patch: null })
}

export const sayNoSwap = (): void => setView({ notice: t('Only a unit of the same size can change places with it.') })

export const resizeTo = (ids: readonly string[], to: FileBox): void => {
  attempt(resizeUnits(ids, to), t('Resized.'), t('It does not fit so large: the cells are taken, or lie beyond the grid.'))
}

/** By keys: the right and lower sides go out or in by some cells; a unit that keeps its proportion grows both ways. */
export const growChosen = (dx: number, dy: number): void =>
  some((ids) => {
    const units = unitsById(block(), ids)
    const box = fileBoxOf(units)
    if (box === null) return
    const size = box.size.map(Number) as [number, number]
    const grown = growth(units, size, dx, dy)
    if (grown === null || grown.some((side) => side <= 0)) setView({ notice: t('It cannot be smaller than that.') })
    else resizeTo(ids, { at: box.at, size: grown })
  })

function growth(units: readonly Unit[], [w, h]: readonly [number, number], dx: number, dy: number): [number, number] | null {
  if (!keepsProportion(units)) return [w + dx, h + dy]
  const by = dx + dy
  // The shorter side goes by whole cells, the longer one by as many times more as it is long.
  const part = (Math.min(w, h) + by) / Math.min(w, h)
  return part <= 0 ? null : [w * part, h * part]
}

const SIDES: Readonly<Record<Side, string>> = {
  left: said('Aligned left.'),
  centre: said('Aligned on one upright line.'),
  right: said('Aligned right.'),
  top: said('Aligned at the top.'),
  middle: said('Aligned on one level line.'),
  bottom: said('Aligned at the bottom.'),
}

const OVER_EACH_OTHER = said('They would lie over each other, or over other units.')

export const alignChosen = (side: Side): void =>
  some((ids) => {
    if (ids.length < 2) setView({ notice: t('Choose two units or more to align them.') })
    else attempt(alignUnits(ids, side), t(SIDES[side]), t(OVER_EACH_OTHER))
  })

export const spreadChosen = (way: 'across' | 'down'): void =>
  some((ids) => {
    if (ids.length < 3) setView({ notice: t('Choose three units or more to spread them evenly.') })
    else attempt(spreadUnits(ids, way), t('Spread with even gaps.'), t(OVER_EACH_OTHER))
  })

/** The kind in hand in place of what is chosen, or of one unit. */
export function replaceWith(kind: TrayKind, ids: readonly string[]): void {
  if (ids.length === 0) return setView({ notice: t('Choose a unit first.') })
  const able = unitsById(block(), ids).filter((unit) => canBecome(unit, kind))
  if (able.length < ids.length)
    return setView({ notice: t('Its box cannot hold that unit: some kinds are square, a goose is twice as long as wide.') })
  edit(replaceKind(ids, kind))
  setView({ chosen: ids, patch: null, notice: t('Another unit is in its place, of the same fabrics.') })
}

export function replaceChosen(): void {
  const { taking } = getState().view
  if (taking === null) setView({ notice: t('Take a unit from the tray first.') })
  else some((ids) => replaceWith(taking as TrayKind, ids))
}

/** Copies go to the nearest room that is free. */
export const copyChosen = (): void =>
  some((ids) => {
    const place = freePlace(block(), unitsById(block(), ids))
    if (place === null) {
      setView({ notice: t('There is no free room for a copy; make the grid larger or remove a unit.') })
      return
    }
    const taken = new Set<string>()
    const made = ids.map((id) => {
      const next = freshId(block(), id.replace(/-\d+$/, ''), taken)
      taken.add(next)
      return next
    })
    if (attempt(copyUnits(ids, place[0], place[1], made), t('Copied.'))) setView({ chosen: made })
  })

/** On whole cells over a spot, where there is room; where there is none it is said. */
export const pressDown = (kind: TrayKind, at: Point): boolean =>
  placeAt(kind, roomOver(block(), kind, getState().view.turned, at) ?? [Math.floor(at[0]), Math.floor(at[1])])

export function turnInHand(): void {
  setView({ turned: ((getState().view.turned + 1) % 4) as Turn, notice: t('Turned a quarter clockwise in your hand.') })
}

export function placeAt(kind: TrayKind, at: FilePoint, turn: Turn = getState().view.turned): boolean {
  const unit = newUnit(block(), kind, at, turn)
  const laid = attempt(placeUnit(unit), t('Placed.'), t('It does not fit there: the cells are taken, or lie beyond the grid.'))
  if (laid) setView({ chosen: [unit.id], patch: null })
  return laid
}

export function layRun(run: readonly Unit[]): void {
  const units = withoutImages(run)
  if (units.length === 0) setView({ notice: t('There is no free cell for it there.') })
  else if (attempt(placeUnits(units), tn(units.length, 'Placed.', '{n} units laid.'))) setView({ chosen: units.map(({ id }) => id), patch: null })
}

/** More units than this are laid as they are, and it is said if an image has no room. */
const MOST_PAIRED = 400

/** While edits repeat, a run may lie over its own images: of each set of images the first is laid, the rest follow from it. */
export function withoutImages(run: readonly Unit[]): readonly Unit[] {
  const { repeat } = getState().view
  if (repeat === 'off' || run.length > MOST_PAIRED) return run
  let all = block()
  return run.filter((unit) => {
    if (!fits(all, [rectOf(unit)], new Set())) return false
    const next = editResult(all, symmetricEdit(all, placeUnit(unit), repeat))
    if (!hasRoom(all, next)) return true
    all = next
    return true
  })
}

export function pourAt(fabric: string, at: Point): void {
  const piece = pieceAt(block(), at)
  if (piece?.unit == null) {
    setView({ notice: t('There is no patch there to recolour.') })
    return
  }
  // Another block may have been opened while the fabric was carried.
  const known = block().fabrics.find(({ id }) => id === fabric)
  if (known === undefined) return setView({ notice: t('This block has no such fabric; take another.') })
  edit(recolourPatch(piece.unit, piece.name, fabric))
  setView({ notice: t('Recoloured to {fabric}.', { fabric: displayName(known) }) })
}

/** All patches that the fabric was drawn over, in one step. */
export const pourOver = (fabric: string, over: readonly Patch[]): Edit => ({
  name: message('recolour-patches', { patches: over.length }),
  change: (draft) => {
    for (const { unit, name } of over) recolourPatch(unit, name, fabric).change(draft)
  },
})

export function layFabric(fabric: string, over: readonly Patch[]): void {
  const known = block().fabrics.find(({ id }) => id === fabric)
  if (known === undefined) return setView({ notice: t('This block has no such fabric; take another.') })
  edit(pourOver(fabric, over))
  setView({ notice: tn(over.length, 'Recoloured to {fabric}.', '{n} patches recoloured to {fabric}.', { fabric: displayName(known) }) })
}

export function stepByHalves(): void {
  const halves = !getState().view.halves
  setView({ halves, notice: halves ? t('What is moved goes by half a cell.') : t('What is moved goes by whole cells.') })
}

export function addToChosen(): void {
  const adding = !getState().view.adding
  setView({ adding, notice: adding ? t('Each unit you press is chosen too; press it again to let it go.') : t('A press chooses one unit.') })
}

export function repeatBy(repeat: Repeat): void {
  if (!canRepeat(block(), repeat)) setView({ notice: t('Edits repeat by quarter turns only on a grid as wide as it is high.') })
  else setView({ repeat, notice: repeat === 'off' ? t('Edits do not repeat.') : t('What you do now is done to its images too.') })
}
