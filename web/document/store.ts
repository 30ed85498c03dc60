/**
 * The state of the app: the document with its history, and the maker's view of it.
 *
 * The document changes only through `edit`, `undo`, `redo` and `replaceDocument`. The view (the selection, the cursor, the view mode) is not part of the
 * document and is never undone.
 */
import { create } from 'zustand'
import {
  type Block,
  type Edit,
  type EditCode,
  type EditName,
  type FilePoint,
  type Kind,
  type Findings,
  type Layered,
  type Quilt,
  type QuiltEdit,
  type QuiltEditName,
  type Repeat,
  type StitchedLine,
  type Turn,
  message,
  setName,
} from '../../geometry/index.ts'
import { type Doc, isQuilt } from './document.ts'
import { type Hint, hintsToCome } from './hints.ts'
import { measuredHere } from './region.ts'
import { eveningStar } from './starters/eveningStar.ts'
import type { Preview } from './preview.ts'
import type { Point } from './shapes.ts'
import { symmetricEdit } from './symmetricEdit.ts'
import { displayName } from './blockNames.ts'
import { clearFindings, cachedFindings, type FindingsState, keepFindings, knownFindings, type LayeredBlock } from './findingsCache.ts'
import { type Language, t, translate } from '../words/words.ts'
import { applyEdit, type History, type Step, redoStep, replaceBlock, undoStep, newHistory } from './history.ts'

/** What a drag over the board means. */
export type DragTool = 'hand' | 'box' | 'loop' | 'patch'

export type ViewMode = 'cloth' | 'value' | 'pressing' | 'wrong' | 'layers' | 'order' | 'quilting' | 'setting'
/** What is marked on the block: seam crossings, the seams' numbers too, or nothing. */
export type Marks = 'crossings' | 'numbers' | 'none'
/** The sheets beside the board. */
export type SheetName = 'block' | 'findings' | 'colour' | 'cutting' | 'quilting' | 'setting' | 'booklet'

export interface ViewState {
  /** Ids of the selected units. */
  readonly selected: readonly string[]
  readonly patch: { readonly unit: string; readonly name: string } | null
  /** The fabric in hand. */
  readonly fabricInHand: string | null
  /** The kind of unit in hand, to be placed by a press or at the cursor. */
  readonly unitInHand: Kind | null
  /** Quarter turns clockwise of the unit in hand. */
  readonly unitTurn: Turn
  /** Whether the unit in hand is flipped left for right, before it is turned. */
  readonly unitMirror: boolean
  readonly mode: ViewMode
  readonly sheet: SheetName
  /** The language of the page. */
  readonly language: Language
  readonly marks: Marks
  /** The finding that is pointed at, such as `meeting 3`. */
  readonly finding: string | null
  /** Lines on the board that a panel points at, in cells: along seams or around patches. */
  readonly pointedLines: readonly (readonly (readonly [number, number])[])[] | null
  /** A finding that was pressed on the board: the list scrolls to it and focuses it. */
  readonly requestedFinding: string | null
  /** How many joins have been made, where the block is shown being sewn step by step. */
  readonly step: number
  /** The seam that is selected among the pressing arrows, by the id of its join. */
  readonly seam: string | null
  readonly cursor: readonly [number, number]
  readonly tool: DragTool
  /** Whether things snap to half cells too. */
  readonly halfCells: boolean
  /** Whether a press adds to the selection, or takes away from it. */
  readonly adding: boolean
  /** How edits are repeated around the middle of the block. */
  readonly repeat: Repeat
  /** Corners of the free patch that is being drawn. */
  readonly corners: readonly FilePoint[]
  /** Zoom 1 fits the block to the board; pan in pixels. */
  readonly zoom: number
  readonly pan: readonly [number, number]
  /** Hints of a first visit that are still to come. */
  readonly hints: readonly Hint[]
  readonly notice: string
  /** How many notices there have been, so that a repeated sentence is announced again. */
  readonly notices: number
  /** The last notices, the newest first. */
  readonly log: readonly string[]
}

export interface Stitching {
  readonly block: Block
  readonly routes: readonly StitchedLine[]
  readonly fills: readonly StitchedLine[]
  readonly part: number
}

/** Which of the maker's blocks is on the board, and how it is saved. */
interface CurrentBlock {
  /** null until it is known, and if nothing can be saved. */
  readonly id: string | null
  /** Another tab is changing the block, so it is read-only here. */
  readonly readOnly: boolean
  /** Why nothing is saved, or not everything. */
  readonly trouble: StorageProblem | null
}
/** No database (a private window); a full disk; another refusal; held open by an older page; closed for a newer one; written by a newer one. */
export type StorageProblem = 'none' | 'full' | 'failed' | 'older' | 'newer' | 'later'

export interface AppState {
  /** The block on the board; while a quilt is open, the block that was there before. */
  readonly history: History
  /** The quilt that is open; null while a block is. */
  readonly quilt: History<Quilt> | null
  readonly view: ViewState
  readonly saved: 'saved' | 'saving' | 'failed'
  readonly currentBlock: CurrentBlock
  /** The block's layers of fabric, once they have been computed. */
  readonly layers: LayeredBlock | null
  /** The quilting lines: routes first, then fills, and how much of them is stitched so far (0 to 1). */
  readonly stitching: Stitching | null
  /** The planned layout, while it is compared with what was sewn. */
  readonly comparedLayout: Block | null
  /** The outcome of a fix, while it is shown but not yet taken. */
  readonly preview: Preview | null
  /** The last edit: the block after it, the findings before it (from when the block could last be sewn), and where it moved each point of the block. */
  readonly edited: { readonly block: Block; readonly before: Findings; readonly moved: (at: Point) => Point; readonly turned: boolean } | null
}

const START: ViewState = {
  selected: [],
  patch: null,
  fabricInHand: null,
  unitInHand: null,
  unitTurn: 0,
  unitMirror: false,
  halfCells: false,
  adding: false,
  mode: 'cloth',
  sheet: 'findings',
  language: 'en',
  marks: 'crossings',
  finding: null,
  pointedLines: null,
  requestedFinding: null,
  step: 0,
  seam: null,
  cursor: [0, 0],
  tool: 'hand',
  repeat: 'off',
  corners: [],
  zoom: 1,
  pan: [0, 0],
  hints: hintsToCome(),
  notice: '',
  notices: 0,
  log: [],
}

/** The state as a hook: a selector must give the same object for the same state. */
export const useStore = create<AppState>(() => ({
  history: newHistory(measuredHere(eveningStar)),
  quilt: null,
  view: START,
  saved: 'saved',
  currentBlock: { id: null, readOnly: false, trouble: null },
  layers: null,
  stitching: null,
  comparedLayout: null,
  preview: null,
  edited: null,
}))
export const { getState, subscribe } = useStore
const set = useStore.setState

/** The document that is open, a block or a quilt, with its history. */
export const openDocument = ({ quilt, history }: AppState): History<Doc> => quilt ?? history

let saveHistory: (history: History<Doc>) => void = () => {}

function setHistory(history: History<Doc>): void {
  if (history === openDocument(getState())) return
  if (getState().currentBlock.readOnly) {
    refuse()
    return
  }
  // It is sent to be saved before it is shown.
  saveHistory(history)
  showHistory(history)
}

let isRefusing = false

/** The edit was not made, so the notice that its caller is about to give is replaced. */
function refuse(): void {
  isRefusing = true
  queueMicrotask(() => {
    isRefusing = false
  })
  setView({ notice: '' })
}

/** Shows a new state of the same document: after an edit here, or as another tab has changed it. */
export function showHistory(history: History<Doc>): void {
  if (isQuilt(history.block)) set({ quilt: history as History<Quilt> })
  else showBlockHistory(history as History)
}

function showBlockHistory(history: History): void {
  const ids = new Set(history.block.units.map(({ id }) => id))
  const { view } = getState()
  const selected = view.selected.filter((id) => ids.has(id))
  const patch = view.patch !== null && ids.has(view.patch.unit) ? view.patch : null
  const fabricInHand = fabricStillInHand(history.block)
  set({
    history,
    preview: null,
    edited: null,
    view: { ...view, selected, patch, fabricInHand, finding: null, pointedLines: null, requestedFinding: null },
  })
}

/** The fabric in hand, if the block still has it. */
const fabricStillInHand = ({ fabrics }: Block): string | null => fabrics.find(({ id }) => id === getState().view.fabricInHand)?.id ?? null

/** Opens another document, with its own history. */
export function openHistory(history: History<Doc>): void {
  if (isQuilt(history.block)) set({ quilt: history as History<Quilt>, preview: null })
  else openBlockHistory(history as History)
}

function openBlockHistory(history: History): void {
  clearFindings()
  const view: ViewState = {
    ...getState().view,
    selected: [],
    patch: null,
    fabricInHand: fabricStillInHand(history.block),
    finding: null,
    pointedLines: null,
    requestedFinding: null,
    step: 0,
    seam: null,
    cursor: [0, 0],
    corners: [],
    zoom: 1,
    pan: [0, 0],
  }
  set({ history, quilt: null, view, layers: null, stitching: null, comparedLayout: null, preview: null, edited: null })
}

export function setLayers(block: Block, layered: Layered): void {
  if (getState().history.block === block) set({ layers: { block, layered } })
}

/** Stores findings that a worker has computed. */
export function setFindings(block: Block, findings: FindingsState): void {
  keepFindings(block, findings)
  // Components that show them read the cache again.
  set({})
}

export const showStitching = (stitching: Stitching | null): void => set({ stitching })

/** Keeps a layout to compare what was sewn with it; null ends the comparison. */
export const setComparedLayout = (layout: Block | null): void => set({ comparedLayout: layout })

/** After these edits the notice also says if nothing else changed. */
const TURNING: ReadonlySet<EditCode> = new Set<EditCode>(['turn-units', 'turn-units-half-round', 'mirror-units', 'turn-block', 'mirror-block'])

export function edit(change: Edit): void {
  const { block } = getState().history
  const last = getState().edited
  // Only findings that are there already: an edit never waits for a comparison.
  const before = knownFindings(block)
  setHistory(applyEdit(getState().history, symmetricEdit(block, change, getState().view.repeat)))
  if (before === null || getState().history.block === block) return
  // The closure holds only the grid, so that the older block can be freed.
  const { grid } = block
  const moved = (at: Point): Point => change.moved?.(at, grid) ?? at
  const turned = TURNING.has(change.name.code)
  // While a layout cannot be sewn, as after the first quarter of a half turn, the comparison stays with the last one that could.
  const since = before.joins.length === 0 && last?.block === block && last.before.joins.length > 0 ? last : null
  const edited =
    since === null
      ? { block: getState().history.block, before, moved, turned }
      : { block: getState().history.block, before: since.before, moved: (at: Point): Point => moved(since.moved(at)), turned: turned || since.turned }
  set({ edited })
}

/** Leaves the views that show something else instead of the board, so that something can be shown on it. */
export function showBoard(): void {
  if (getState().view.mode === 'order' || getState().view.mode === 'setting') setView({ mode: 'cloth' })
}

/** Shows the outcome of a fix on the board; null shows the block itself again. */
export function showPreview(preview: Preview | null): void {
  if (preview !== getState().preview) set({ preview })
}

/** Changes the quilt that is open. */
export function editQuilt(change: QuiltEdit): void {
  const { quilt } = getState()
  if (quilt !== null) setHistory(applyEdit(quilt, change))
}

/** Names the document that is open; letters typed one after another are one step. */
export function renameDocument(name: string): void {
  if (getState().quilt === null) edit(setName(name))
  else editQuilt(renamed(name))
}

/** The name of a quilt is changed as a block's is. */
export const renamed = (name: string): QuiltEdit => ({ ...setName(name), name: message('name-quilt') }) as unknown as QuiltEdit

/** Replaces the open document by another of its kind, as a step that can be undone. */
export const replaceDocument = (doc: Doc, name: EditName): void => {
  if (isQuilt(doc)) {
    const { quilt } = getState()
    if (quilt !== null) setHistory(replaceBlock(quilt, doc, name))
    return
  }
  clearFindings()
  setHistory(replaceBlock(getState().history, doc, name))
  setView({ selected: [], patch: null, zoom: 1, pan: [0, 0], notice: t('{name} is open.', { name: displayName(doc) }) })
}

/** The names of a quilt's edits are loaded with the quilt. */
let sayQuiltEdit: (name: QuiltEditName) => string = (name) => translate(name as EditName)
export const onQuiltEditNames = (say: typeof sayQuiltEdit): void => {
  sayQuiltEdit = say
}

const stepWords = ({ name }: Step): string =>
  typeof name === 'string' ? name : getState().quilt === null ? translate(name as EditName) : sayQuiltEdit(name)

export function undo(): void {
  const open = openDocument(getState())
  const step = open.past.at(-1)
  setHistory(undoStep(open))
  setView({ notice: step === undefined ? t('There’s nothing to undo.') : t('Undone: {step}.', { step: stepWords(step) }) })
}

export function redo(): void {
  const open = openDocument(getState())
  const step = open.future[0]
  setHistory(redoStep(open))
  setView({ notice: step === undefined ? t('There’s nothing to redo.') : t('Redone: {step}.', { step: stepWords(step) }) })
}

export function setView(change: Partial<ViewState>): void {
  const refusal = isRefusing && change.notice !== undefined ? { notice: t('Nothing changed: this block is open in another tab.') } : {}
  const view = { ...getState().view, ...change, ...refusal }
  if (change.notice === undefined) return set({ view })
  const log = view.notice === '' ? view.log : [view.notice, ...view.log].slice(0, LOGGED)
  set({ view: { ...view, notices: view.notices + 1, log } })
}

/** Notices that can be read again. */
const LOGGED = 30

export const setSaved = (saved: AppState['saved']): void => {
  if (saved !== getState().saved) set({ saved })
}
export const setCurrentBlock = (change: Partial<CurrentBlock>): void => set({ currentBlock: { ...getState().currentBlock, ...change } })

/** Sets the function that saves every change of the document. */
export const onHistoryChange = (save: (history: History<Doc>) => void): void => {
  saveHistory = save
}

export const useFindings = (): FindingsState => useStore(({ history, layers }) => cachedFindings(history.block, layers))
