/** What keys do on the board. */
import type { KeyboardEvent } from 'react'
import { recolourPatch } from '../../../geometry/index.ts'
import { edit, setView, getState, redo, undo } from '../../document/store.ts'
import { patchName } from '../../words/unitWords.ts'
import { said, t } from '../../words/words.ts'
import {
  copyChosen,
  growChosen,
  halfTurnChosen,
  layRun,
  mirrorChosen,
  mirrorWhole,
  moveChosen,
  placeAt,
  removeChosen,
  replaceChosen,
  sayNoSwap,
  stepByHalves,
  swap,
  turnChosen,
  turnInHand,
  turnWhole,
} from '../actions/actions.ts'
import { addCorner, closeOutline, takeCornerBack } from '../actions/drawPatch.ts'
import { piecesIn, unitById } from '../hitTest.ts'
import { inBox } from '../hand/hand.ts'
import { runOf, type TrayKind } from '../newUnit.ts'
import type { PatchShape, Point } from '../../document/shapes.ts'
import { sameSize } from '../../../geometry/index.ts'
import { takeTool, TOOLS } from '../tools.ts'

export const KEYS: readonly (readonly [string, string])[] = [
  [said('Arrows'), said('walk over the cells')],
  [said('Enter'), said('choose at the cursor; again: the next patch of the cell (Shift adds)')],
  [said('C'), said('mark a corner at the cursor; again: choose all between')],
  [said('Alt + arrows'), said('move what is chosen')],
  [said('Alt + Shift + arrows'), said('make what is chosen larger or smaller')],
  [said('H'), said('move by halves of cells, or by whole ones again')],
  [said('T, Shift + T'), said('turn a quarter, half round; with nothing chosen, the unit in hand')],
  [said('M'), said('mirror')],
  [said('X'), said('two chosen units change places')],
  [said('B, Shift + B'), said('turn, mirror the whole block')],
  [said('D, Delete'), said('copy, remove')],
  [said('Ctrl + C, X, V'), said('copy, cut out, paste as text')],
  [said('P, Shift + P'), said('place the unit in hand at the cursor; fill from the last one to the cursor')],
  [said('R'), said('put the unit in hand in place of what is chosen')],
  [said('F'), said('recolour the patch chosen at the cursor with the fabric in hand')],
  [said('1, 2, 3, 4'), said('the hand, choosing by a box, drawing round, drawing a free patch')],
  [said('Space, Enter, Backspace'), said('while drawing a patch: a corner, close, take a corner back')],
  [said('+ − 0'), said('zoom in, out, fit')],
  [said('Shift + arrows'), said('pan')],
  [said('Ctrl + Z, Ctrl + Shift + Z'), said('undo, do again')],
  [said('Two fingers, three fingers'), said('tap the board: undo, do again; drawn apart or along: zoom and pan')],
  [said('Ctrl + A'), said('choose all')],
  [said('F6, Shift + F6'), said('from anywhere: to the next part of the page, to the one before')],
  [said('Escape'), said('forget a drag or a drawing; let go of everything')],
]

interface Ways {
  readonly zoomBy: (by: number) => void
  /** The wrong side is up: right is left. */
  readonly mirrored: boolean
}

type Act = (() => void) | undefined

const ARROWS: Readonly<Record<string, Point>> = { ArrowLeft: [-1, 0], ArrowRight: [1, 0], ArrowUp: [0, -1], ArrowDown: [0, 1] }

/** Where a box that is chosen by keys begins, and where the last unit was laid by keys. */
let marked: Point | null = null
let laid: Point | null = null

export function keyed(event: KeyboardEvent, ways: Ways): Act {
  const arrow = ARROWS[event.key]
  if (arrow !== undefined) return () => walk([ways.mirrored ? -arrow[0] : arrow[0], arrow[1]], arrow, event)
  const name = event.key.toLowerCase()
  if (event.ctrlKey || event.metaKey) return withControl(name, event.shiftKey)
  if (getState().view.tool === 'patch') {
    const drawn = drawingKeys(name)
    if (drawn !== undefined) return drawn
  }
  return zooming(name, ways) ?? handling(name, event.shiftKey) ?? holding(name, event.shiftKey)
}

function withControl(name: string, shift: boolean): Act {
  if (name === 'z') return shift ? redo : undo
  if (name === 'y') return redo
  if (name === 'a')
    return () => setView({ chosen: getState().history.block.units.map(({ id }) => id), patch: null, notice: t('All units are chosen.') })
  return undefined
}

const zooming = (name: string, { zoomBy }: Ways): Act =>
  ({ '+': () => zoomBy(1.2), '=': () => zoomBy(1.2), '-': () => zoomBy(1 / 1.2), '0': () => setView({ zoom: 1, pan: [0, 0] }) })[name]

/** What is done to what is chosen. */
const handling = (name: string, shift: boolean): Act =>
  ({
    t: getState().view.chosen.length === 0 && getState().view.taking !== null ? turnInHand : shift ? halfTurnChosen : turnChosen,
    m: mirrorChosen,
    b: shift ? mirrorWhole : turnWhole,
    d: copyChosen,
    delete: removeChosen,
    backspace: removeChosen,
    x: swapChosen,
    r: replaceChosen,
  })[name]

/** What is chosen, taken up and laid. */
const holding = (name: string, shift: boolean): Act =>
  ({
    enter: () => chooseHere(shift),
    c: chooseBetween,
    h: stepByHalves,
    p: shift ? fillToCursor : placeHere,
    f: recolourHere,
    escape: letGo,
    ...Object.fromEntries(TOOLS.map(({ tool }, index) => [String(index + 1), () => takeTool(tool)])),
  })[name]

const drawingKeys = (name: string): Act =>
  ({ ' ': () => addCorner(getState().view.cursor), p: () => addCorner(getState().view.cursor), enter: closeOutline, backspace: takeCornerBack })[name]

function walk([dx, dy]: Point, seen: Point, event: KeyboardEvent): void {
  const { view, history } = getState()
  const step = view.halves ? 0.5 : 1
  if (event.altKey && event.shiftKey) return growChosen(dx * step, dy * step)
  if (event.altKey) return moveChosen(dx * step, dy * step)
  if (event.shiftKey) return setView({ pan: [view.pan[0] - seen[0] * 40, view.pan[1] - seen[1] * 40] })
  const { columns, rows } = history.block.grid
  // A corner of a patch lies on a line of the grid, the last one too.
  const drawing = view.tool === 'patch'
  const by = drawing ? step : 1
  const [most, low] = [
    drawing ? [columns, rows] : [columns - 1, rows - 1],
    drawing ? view.cursor : [Math.floor(view.cursor[0]), Math.floor(view.cursor[1])],
  ]
  const along = (axis: 0 | 1, way: number): number => Math.min(most[axis] as number, Math.max(0, (low[axis] as number) + way * by))
  const cursor: Point = [along(0, dx), along(1, dy)]
  setView(drawing ? { cursor, notice: t('Column line {x}, row line {y}.', { x: cursor[0], y: cursor[1] }) } : { cursor })
}

const fabricName = (id: string): string => getState().history.block.fabrics.find((fabric) => fabric.id === id)?.name ?? id

function here(): { pieces: readonly PatchShape[]; chosen: number } {
  const { view, history } = getState()
  const pieces = piecesIn(history.block, view.cursor).filter(({ unit }) => unit !== null)
  return { pieces, chosen: pieces.findIndex(({ unit, name }) => unit === view.patch?.unit && name === view.patch?.name) }
}

function chooseHere(add: boolean): void {
  const { pieces, chosen } = here()
  const piece = pieces[(chosen + 1) % pieces.length]
  if (piece?.unit == null) return setView({ chosen: add ? getState().view.chosen : [], patch: null, notice: t('There is no unit at the cursor.') })
  const { unit, name } = piece
  const said = t('{unit}, {patch}: chosen.', { unit, patch: patchName(name) })
  if (add) return setView({ chosen: [...new Set([...getState().view.chosen, unit])], patch: null, notice: said })
  const more = pieces.length > 1 ? ` ${t('Enter again for the next patch in this cell.')}` : ''
  setView({ chosen: [unit], patch: { unit, name }, notice: `${said}${more}` })
}

function chooseBetween(): void {
  const { view, history } = getState()
  if (marked === null) {
    marked = view.cursor
    return setView({ notice: t('One corner is marked; walk to the other and press C again.') })
  }
  const [a, b] = [marked, view.cursor]
  marked = null
  const inner = 0.25
  const found = inBox(
    history.block,
    [Math.min(a[0], b[0]) + inner, Math.min(a[1], b[1]) + inner],
    [Math.max(a[0], b[0]) + 1 - inner, Math.max(a[1], b[1]) + 1 - inner],
  )
  setView({ chosen: found.map(({ id }) => id), patch: null, notice: t('{n} units are chosen.', { n: found.length }) })
}

function swapChosen(): void {
  const { view, history } = getState()
  const [one, other] = view.chosen.map((id) => unitById(history.block, id))
  if (view.chosen.length !== 2 || one === undefined || other === undefined)
    return setView({ notice: t('Choose two units of one size to let them change places.') })
  if (sameSize(one, other)) swap(one.id, other.id)
  else sayNoSwap()
}

function placeHere(): void {
  const { taking, cursor } = getState().view
  if (taking === null) return setView({ notice: t('Take a unit from the tray first.') })
  if (placeAt(taking as TrayKind, cursor)) laid = cursor
}

function fillToCursor(): void {
  const { view, history } = getState()
  if (view.taking === null) return setView({ notice: t('Take a unit from the tray first.') })
  layRun(runOf(history.block, view.taking as TrayKind, laid ?? view.cursor, view.cursor, view.turned))
  laid = view.cursor
}

function recolourHere(): void {
  const { pieces, chosen } = here()
  const { brush } = getState().view
  const piece = pieces[Math.max(0, chosen)]
  if (brush === null) setView({ notice: t('Take a fabric in hand first.') })
  else if (piece?.unit == null) setView({ notice: t('There is no patch at the cursor.') })
  else {
    edit(recolourPatch(piece.unit, piece.name, brush))
    setView({ notice: t('{unit}, {patch}: recoloured to {fabric}.', { unit: piece.unit, patch: piece.name, fabric: fabricName(brush) }) })
  }
}

/** First what is being drawn, then all else. */
function letGo(): void {
  marked = null
  laid = null
  if (getState().view.corners.length > 0) setView({ corners: [], notice: t('The drawing is forgotten.') })
  else
    setView({
      chosen: [],
      patch: null,
      brush: null,
      taking: null,
      turned: 0,
      adding: false,
      finding: null,
      tool: 'hand',
      notice: t('Nothing is held or chosen.'),
    })
}
