/** Carries out what a key means: on the store, with a notice of what it did, or why it did nothing. */
import { sameSize } from '../../../geometry/index.ts'
import { displayName } from '../../document/blockNames.ts'
import type { PatchShape, Point } from '../../document/shapes.ts'
import { edit, setView, getState, redo, undo } from '../../document/store.ts'
import { nameOfUnit, patchName } from '../../words/unitWords.ts'
import { t, tn } from '../../words/words.ts'
import { growSelection, moveSelection, refuseSwap, swapPlaces } from '../actions/arrange.ts'
import { addCorner, closeOutline, removeCorner } from '../actions/drawPatch.ts'
import { flipInHand, halfTurnInHand, selectTool, toggleHalves, turnInHand } from '../actions/modes.ts'
import { recolourEdit } from '../actions/recolour.ts'
import { halfTurnSelection, mirrorSelection, mirrorWholeBlock, turnSelection, turnWholeBlock } from '../actions/turn.ts'
import { duplicateSelection, placeAt, placeMany, removeSelection, replaceSelection } from '../actions/units.ts'
import { patchesInCell } from '../cellPatches.ts'
import { unitById } from '../hitTest.ts'
import { fillBetween, type TrayKind } from '../newUnit.ts'
import { unitsInBox } from '../selectArea.ts'
import type { KeyCommand, StoreKeyCommand } from './values.ts'

/** Where a box that is selected with keys starts, and where keys placed a unit last. */
let boxStart: Point | null = null
let lastPlaced: Point | null = null

type Simple = Exclude<StoreKeyCommand['type'], 'step' | 'useTool' | 'selectAtCursor'>

const ACTIONS: Readonly<Record<Simple, () => void>> = {
  fitToBoard: () => setView({ zoom: 1, pan: [0, 0] }),
  undo,
  redo,
  selectAll: () => setView({ selected: getState().history.block.units.map(({ id }) => id), patch: null, notice: t('All units selected.') }),
  selectBetween,
  turn: turnSelection,
  halfTurn: halfTurnSelection,
  turnInHand,
  halfTurnInHand,
  flipInHand,
  mirror: mirrorSelection,
  turnBlock: turnWholeBlock,
  mirrorBlock: mirrorWholeBlock,
  duplicate: duplicateSelection,
  remove: removeSelection,
  swap: swapSelection,
  replace: replaceSelection,
  toggleHalves,
  placeAtCursor,
  fillToCursor,
  recolourAtCursor,
  addCorner: () => addCorner(getState().view.cursor),
  closeOutline,
  removeCorner,
  letGo,
}

export function runKeyCommand(command: StoreKeyCommand): void {
  if (command.type === 'step') step(command)
  else if (command.type === 'useTool') selectTool(command.tool)
  else if (command.type === 'selectAtCursor') selectAtCursor(command.add)
  else ACTIONS[command.type]()
}

/** Pixels that an arrow pans. */
const PAN_STEP = 40

function step({ by: [dx, dy], onScreen, shift, alt }: Extract<KeyCommand, { type: 'step' }>): void {
  const { view } = getState()
  const length = view.halfCells ? 0.5 : 1
  if (alt && shift) growSelection(dx * length, dy * length)
  else if (alt) moveSelection(dx * length, dy * length)
  else if (shift) setView({ pan: [view.pan[0] - onScreen[0] * PAN_STEP, view.pan[1] - onScreen[1] * PAN_STEP] })
  else moveCursor([dx, dy], length)
}

/** Over cells; while a patch is drawn, over the lines of the grid, the last one too. */
function moveCursor(by: Point, length: number): void {
  const { view, history } = getState()
  const { columns, rows } = history.block.grid
  const drawing = view.tool === 'patch'
  const most = drawing ? [columns, rows] : [columns - 1, rows - 1]
  const from = drawing ? view.cursor : view.cursor.map(Math.floor)
  const along = (axis: 0 | 1): number => Math.min(most[axis] as number, Math.max(0, (from[axis] as number) + by[axis] * (drawing ? length : 1)))
  const cursor: Point = [along(0), along(1)]
  setView(drawing ? { cursor, notice: t('Line {x} from the left, line {y} from the top.', { x: cursor[0], y: cursor[1] }) } : { cursor })
}

/** The patches of units in the cell of the cursor, and which of them is selected (-1: none). */
function patchesAtCursor(): { readonly patches: readonly PatchShape[]; readonly selected: number } {
  const { view, history } = getState()
  const patches = patchesInCell(history.block, view.cursor)
  return { patches, selected: patches.findIndex(({ unit, name }) => unit === view.patch?.unit && name === view.patch?.name) }
}

function selectAtCursor(add: boolean): void {
  const { patches, selected } = patchesAtCursor()
  const next = patches[(selected + 1) % patches.length]
  if (next?.unit == null) return selectNothing(add)
  const { unit, name } = next
  const notice = t('{unit}, {patch}: selected.', { unit: nameOfUnit(getState().history.block, unit), patch: patchName(name) })
  if (add) return setView({ selected: [...new Set([...getState().view.selected, unit])], patch: null, notice })
  const more = patches.length > 1 ? ` ${t('Press Enter again for the next patch.')}` : ''
  setView({ selected: [unit], patch: { unit, name }, notice: `${notice}${more}` })
}

/** An empty square lets go of what was selected; whoever adds keeps it. */
function selectNothing(add: boolean): void {
  const { selected } = getState().view
  if (add || selected.length === 0) setView({ notice: t('There’s no unit here.') })
  else setView({ selected: [], patch: null, notice: t('Nothing selected.') })
}

/** Cells: units that only touch the selected cells from outside stay out. */
const INSET = 0.25

/** The first time marks a corner; the second selects all units from there to the cursor. */
function selectBetween(): void {
  const { view, history } = getState()
  if (boxStart === null) {
    boxStart = view.cursor
    return setView({ notice: t('Corner marked. Go to the opposite corner and press C again.') })
  }
  const [a, b] = [boxStart, view.cursor]
  boxStart = null
  const units = unitsInBox(
    history.block,
    [Math.min(a[0], b[0]) + INSET, Math.min(a[1], b[1]) + INSET],
    [Math.max(a[0], b[0]) + 1 - INSET, Math.max(a[1], b[1]) + 1 - INSET],
  )
  setView({ selected: units.map(({ id }) => id), patch: null, notice: tn(units.length, 'One unit selected.', '{n} units selected.') })
}

function swapSelection(): void {
  const { view, history } = getState()
  const [one, other] = view.selected.map((id) => unitById(history.block, id))
  if (view.selected.length !== 2 || one === undefined || other === undefined)
    return setView({ notice: t('Select two units of the same size to swap them.') })
  if (sameSize(one, other)) swapPlaces(one.id, other.id)
  else refuseSwap()
}

function placeAtCursor(): void {
  const { unitInHand, cursor } = getState().view
  if (unitInHand === null) return setView({ notice: t('Pick a unit from the list first.') })
  if (placeAt(unitInHand as TrayKind, cursor)) lastPlaced = cursor
}

function fillToCursor(): void {
  const { view, history } = getState()
  if (view.unitInHand === null) return setView({ notice: t('Pick a unit from the list first.') })
  placeMany(fillBetween(history.block, view.unitInHand as TrayKind, lastPlaced ?? view.cursor, view.cursor, view.unitTurn, view.unitMirror))
  lastPlaced = view.cursor
}

function recolourAtCursor(): void {
  const { patches, selected } = patchesAtCursor()
  const { view, history } = getState()
  const patch = patches[Math.max(0, selected)]
  const fabric = history.block.fabrics.find(({ id }) => id === view.fabricInHand)
  if (fabric === undefined) setView({ notice: t('Pick a fabric from the list first.') })
  else if (patch?.unit == null) setView({ notice: t('There’s no patch here.') })
  else {
    const { unit, name } = patch
    edit(recolourEdit(fabric.id, [{ unit, name }]))
    setView({
      notice: t('{unit}, {patch}: recoloured in {fabric}.', {
        unit: nameOfUnit(history.block, unit),
        patch: patchName(name),
        fabric: displayName(fabric),
      }),
    })
  }
}

/** Drops what is being drawn; if there is none, everything that is in hand or selected. */
function letGo(): void {
  boxStart = null
  lastPlaced = null
  if (getState().view.corners.length > 0) return setView({ corners: [], notice: t('Drawing discarded.') })
  setView({
    selected: [],
    patch: null,
    fabricInHand: null,
    unitInHand: null,
    unitTurn: 0,
    unitMirror: false,
    adding: false,
    finding: null,
    seam: null,
    tool: 'hand',
    notice: t('Nothing selected.'),
  })
}
