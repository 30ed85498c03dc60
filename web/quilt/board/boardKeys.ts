/** What a key means on the quilt's board. */
import type { KeyboardEvent } from 'react'
import { placeAtCell, placeSize, type QuiltCell } from '../../../geometry/index.ts'
import { redo, setView, undo } from '../../document/store.ts'
import { t } from '../../words/words.ts'
import { clearChosen, fillSelection, movePlace, openQuilt, pressChosen, putItem, selectAll, stretchChosen, turnChosen } from '../quiltActions.ts'
import { anchorOf, cellsBetween, quiltView, sameCell, setQuiltView } from '../quiltView.ts'

const ARROWS: Readonly<Record<string, QuiltCell>> = { ArrowLeft: [-1, 0], ArrowRight: [1, 0], ArrowUp: [0, -1], ArrowDown: [0, 1] }

const ZOOM_STEP = 1.25
const MOST_ZOOM = 12

/** Zooms so that what lies at a point stays there; the point in pixels from the middle of the board. */
export function zoomAt([x, y]: readonly [number, number], by: number): void {
  const { zoom, pan } = quiltView()
  const next = Math.min(MOST_ZOOM, Math.max(1, zoom * by))
  const ratio = next / zoom
  setQuiltView(next === 1 ? { zoom: 1, pan: [0, 0] } : { zoom: next, pan: [x - (x - pan[0]) * ratio, y - (y - pan[1]) * ratio] })
}

/** Where a range of cells was begun with Shift and the arrow keys. */
let rangeFrom: QuiltCell | null = null

export function onBoardKey(event: KeyboardEvent): void {
  if (keyCommand(event)) event.preventDefault()
}

/** Whether the key means anything here. */
function keyCommand({ key, shiftKey, altKey, ctrlKey, metaKey }: KeyboardEvent): boolean {
  const arrow = ARROWS[key]
  if (arrow !== undefined && !ctrlKey && !metaKey) return onArrow(arrow, shiftKey, altKey)
  if (ctrlKey || metaKey) return onControlKey(key.toLowerCase(), shiftKey)
  const act = ACTIONS[key.length === 1 ? key.toLowerCase() : key]
  act?.(shiftKey)
  return act !== undefined
}

function onControlKey(key: string, shift: boolean): boolean {
  if (key === 'a') selectAll()
  else if (key === 'z') (shift ? redo : undo)()
  else return false
  return true
}

const ACTIONS: Readonly<Record<string, (shift: boolean) => void>> = {
  Enter: (shift) => choose(shift),
  ' ': (shift) => choose(shift),
  t: (shift) => turnChosen(shift ? 3 : 1),
  p: () => pressChosen(),
  f: () => fillSelection(),
  Delete: () => clearChosen(),
  Backspace: () => clearChosen(),
  Escape: () => letGo(),
  '+': () => zoomAt([0, 0], ZOOM_STEP),
  '-': () => zoomAt([0, 0], 1 / ZOOM_STEP),
  '0': () => setQuiltView({ zoom: 1, pan: [0, 0] }),
}

function onArrow([dx, dy]: QuiltCell, shift: boolean, alt: boolean): boolean {
  const quilt = openQuilt()
  if (quilt === null) return false
  if (alt && shift) {
    stretchChosen(dx, dy)
    return true
  }
  const { cursor } = quiltView()
  const here = placeAtCell(quilt.places, cursor)
  const next = beyond(cursor, [dx, dy])
  if (next[0] < 0 || next[1] < 0 || next[0] >= quilt.grid.columns || next[1] >= quilt.grid.rows) return true
  if (alt) {
    if (here !== undefined) movePlace(here, next)
    return true
  }
  rangeFrom = shift ? (rangeFrom ?? cursor) : null
  setQuiltView({ cursor: next, ...(rangeFrom === null ? {} : { selected: anchors(cellsBetween(rangeFrom, next)) }) })
  return true
}

/** The next cell in a direction that is not of the same place. */
function beyond(cursor: QuiltCell, [dx, dy]: QuiltCell): QuiltCell {
  const quilt = openQuilt()
  const place = quilt === null ? undefined : placeAtCell(quilt.places, cursor)
  if (place === undefined) return [cursor[0] + dx, cursor[1] + dy]
  const [wide, high] = placeSize(place)
  const [left, top] = place.at
  return [dx > 0 ? left + wide : dx < 0 ? left - 1 : cursor[0], dy > 0 ? top + high : dy < 0 ? top - 1 : cursor[1]]
}

/** First cells of the places over these cells, each once. */
export function anchors(cells: readonly QuiltCell[]): QuiltCell[] {
  const quilt = openQuilt()
  if (quilt === null) return []
  return [...new Map(cells.map((cell) => [anchorOf(quilt, cell).join(), anchorOf(quilt, cell)])).values()]
}

/** Places what is in hand at the cursor, else selects what is there. */
function choose(add: boolean): void {
  const { inHand, cursor } = quiltView()
  if (inHand !== null) void putItem(inHand, [cursor])
  else selectCell(cursor, add || quiltView().adding)
}

/** Selects the place over a cell, or the empty cell; adds it, or takes it out of the selection again. */
export function selectCell(cell: QuiltCell, add: boolean): void {
  const quilt = openQuilt()
  if (quilt === null) return
  const anchor = anchorOf(quilt, cell)
  const { selected } = quiltView()
  const known = selected.some((one) => sameCell(one, anchor))
  const next = add ? (known ? selected.filter((one) => !sameCell(one, anchor)) : [...selected, anchor]) : [anchor]
  setQuiltView({ selected: next, cursor: cell })
}

/** Puts down what is in hand, else deselects everything. */
export function letGo(): void {
  if (quiltView().inHand !== null) setView({ notice: t('Nothing in hand now.') })
  setQuiltView(quiltView().inHand === null ? { selected: [] } : { inHand: null })
}
