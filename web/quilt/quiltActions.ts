/** What a maker does to the places of the quilt that is open: each action edits the quilt and says what was done. */
import {
  bringBlock,
  checkBlock,
  clearPlaces,
  fillRun,
  moveToCell,
  placeAtCell,
  type PlaceContent,
  placeSize,
  pressPlaces,
  putInPlaces,
  type Quilt,
  type QuiltCell,
  type QuiltEdit,
  type QuiltPlace,
  repeatInPlaces,
  resizePlace,
  type Turn,
  turnPlaces,
} from '../../geometry/index.ts'
import { isQuilt } from '../document/document.ts'
import { editQuilt, getState, setView } from '../document/store.ts'
import { beginBlock, documentOf, openBlock } from '../keeping/openBlock.ts'
import { originsOf, rememberOrigin } from '../keeping/quiltOrigins.ts'
import { t, tn } from '../words/words.ts'
import { allCells, anchorOf, type HandItem, quiltView, selectedPlaces, setQuiltView } from './quiltView.ts'

export const openQuilt = (): Quilt | null => getState().quilt?.block ?? null

/** Makes an edit and says what was done; says why not where nothing changed. */
export function act(change: QuiltEdit, notice: string): void {
  const before = openQuilt()
  editQuilt(change)
  if (openQuilt() !== before) setView({ notice })
}

const say = (notice: string): void => setView({ notice })

/** Column and row as one points at them. */
export const cellName = ([column, row]: QuiltCell): string => t('column {column}, row {row}', { column: column + 1, row: row + 1 })

/** Puts what is in hand, or was dragged there, on the places over these cells. */
export async function putItem(item: HandItem, cells: readonly QuiltCell[]): Promise<void> {
  if (cells.length === 0) return
  if (item.type === 'library') return putLibraryBlock(item.card, cells)
  const content: PlaceContent = item.type === 'block' ? { block: item.id } : { plain: item.fabric }
  act(putInPlaces(cells, content), placedWords(cells))
}

async function putLibraryBlock(card: string, cells: readonly QuiltCell[]): Promise<void> {
  const block = await documentOf(card).catch(() => null)
  if (block === null || isQuilt(block) || !checkBlock(block).ok) return say(t('That block can’t be read. Open it from My blocks first.'))
  act(bringBlock(block, cells), placedWords(cells))
  const [quilt, id] = [openQuilt(), getState().currentBlock.id]
  const placed = quilt === null ? undefined : placeAtCell(quilt.places, cells[0] as QuiltCell)?.block
  if (id !== null && placed !== undefined) void rememberOrigin(id, placed, { card, seen: Date.now() })
}

/** Opens the library block that a block of the quilt came from; where there is none, a copy of it becomes one. */
export async function openBlockOf(quilt: Quilt, id: string): Promise<void> {
  const own = quilt.blocks.find((one) => one.id === id)?.block
  const open = getState().currentBlock.id
  if (own === undefined) return
  const card = open === null ? undefined : (await originsOf(open))[id]?.card
  const known = card === undefined ? null : await documentOf(card).catch(() => null)
  if (card !== undefined && known !== null) {
    await openBlock(card)
    return
  }
  const begun = await beginBlock(own)
  const made = getState().currentBlock.id
  if (begun && open !== null && made !== null) await rememberOrigin(open, id, { card: made, seen: Date.now() })
}

const placedWords = (cells: readonly QuiltCell[]): string =>
  cells.length === 1
    ? t('Placed in {cell}.', { cell: cellName(cells[0] as QuiltCell) })
    : tn(cells.length, 'One position filled.', '{n} positions filled.')

export function movePlace(from: QuiltPlace, to: QuiltCell): void {
  const quilt = openQuilt()
  if (quilt === null) return
  const swaps = placeAtCell(quilt.places, to) !== undefined
  act(moveToCell(from.id, to), swaps ? t('Swapped.') : t('Moved to {cell}.', { cell: cellName(to) }))
  setQuiltView({ selected: [anchorOf(openQuilt() as Quilt, to)], cursor: to })
}

/** The places that the selection holds, or that the cursor is on. */
function chosenPlaces(): QuiltPlace[] {
  const quilt = openQuilt()
  if (quilt === null) return []
  const { selected, cursor } = quiltView()
  return selectedPlaces(quilt, selected.length > 0 ? selected : [cursor])
}

const chosenCells = (): readonly QuiltCell[] => {
  const { selected, cursor } = quiltView()
  return selected.length > 0 ? selected : [cursor]
}

export function turnChosen(quarters: Turn): void {
  const ids = chosenPlaces().flatMap(({ id, block }) => (block === undefined ? [] : [id]))
  if (ids.length === 0) return say(t('Select a block to turn it.'))
  act(turnPlaces(ids, quarters), tn(ids.length, 'Block turned.', '{n} blocks turned.'))
}

export function clearChosen(): void {
  const ids = chosenPlaces().map(({ id }) => id)
  if (ids.length === 0) return say(t('There’s nothing to clear here.'))
  act(clearPlaces(ids), tn(ids.length, 'One position cleared.', '{n} positions cleared.'))
}

export function pressChosen(): void {
  const places = chosenPlaces().filter(({ block }) => block !== undefined)
  if (places.length === 0) return say(t('Select a block first.'))
  const press = places.every((place) => place.press === 'opposite') ? 'planned' : 'opposite'
  act(
    pressPlaces(
      places.map(({ id }) => id),
      press,
    ),
    press === 'opposite' ? t('Pressed the other way.') : t('Pressed as planned.'),
  )
}

/** Makes the chosen place one cell wider, narrower, higher or lower. */
export function stretchChosen(wider: number, higher: number): void {
  const [place] = chosenPlaces()
  if (place === undefined) return say(t('Put a block or a plain piece here first.'))
  const [wide, high] = placeSize(place)
  act(resizePlace(place.id, [wide + wider, high + higher]), t('This position is now {wide} by {high}.', { wide: wide + wider, high: high + higher }))
}

/** Fills the selection with what lies in the place that was selected first. */
export function fillSelection(): void {
  const quilt = openQuilt()
  const { selected } = quiltView()
  if (quilt === null) return
  const source = selected.map((cell) => placeAtCell(quilt.places, cell)).find((place) => place !== undefined)
  if (source === undefined || selected.length < 2) return say(t('Select a position and the empty ones to fill.'))
  act(fillRun(source.id, selected), tn(selected.length - 1, 'One position filled.', '{n} positions filled.'))
}

/** Puts two things by turns on the selection, or on the whole quilt where less than two cells are selected. */
export function alternate(contents: readonly PlaceContent[]): void {
  const quilt = openQuilt()
  if (quilt === null) return
  const cells = chosenCells().length > 1 ? chosenCells() : allCells(quilt)
  act(repeatInPlaces(cells, contents), tn(cells.length, 'One position filled.', '{n} positions filled.'))
}

/** Selects every other place of the quilt, as on a draughts board. */
export function selectEveryOther(): void {
  const quilt = openQuilt()
  if (quilt === null) return
  const cells = everyOther(quilt).map(({ at }) => at)
  setQuiltView({ selected: cells })
  say(tn(cells.length, 'One position selected.', '{n} positions selected.'))
}

export const everyOther = (quilt: Quilt): QuiltPlace[] => quilt.places.filter(({ at }) => (at[0] + at[1]) % 2 === 1)

export function selectAll(): void {
  const quilt = openQuilt()
  if (quilt === null) return
  const cells = new Map(allCells(quilt).map((cell) => [anchorOf(quilt, cell).join(), anchorOf(quilt, cell)]))
  setQuiltView({ selected: [...cells.values()] })
  say(tn(cells.size, 'One position selected.', '{n} positions selected.'))
}
