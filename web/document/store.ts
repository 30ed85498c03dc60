/**
 * What the screen shows: the document with its history, and the maker's view of it.
 *
 * The document changes only through `edit`, `undo`, `redo` and `replace`. The view (what is chosen, where the cursor stands, how the cloth is looked
 * at) is no part of the document: it is never undone.
 */
import { create } from 'zustand'
import type { Block, Edit, EditCode, EditName, FilePoint, Kind, Findings, Layered, Repeat, StitchedLine, Turn } from '../../geometry/index.ts'
import { eveningStar } from './starters/eveningStar.ts'
import type { Preview } from './preview.ts'
import type { Point } from './shapes.ts'
import { symmetricEdit } from './symmetricEdit.ts'
import { displayName } from './blockNames.ts'
import { clearFindings, cachedFindings, type FindingsState, keepFindings, knownFindings, type LayeredBlock } from './findingsCache.ts'
import { type Language, t, translate } from '../words/words.ts'
import { applyEdit, type History, type Step, redoStep, replaceBlock, undoStep, newHistory } from './history.ts'

/** What a drag over the board means. */
export type DragTool = 'hand' | 'box' | 'round' | 'patch'

export type ViewMode = 'cloth' | 'value' | 'wrong' | 'layers' | 'order' | 'quilting' | 'setting'
/** The sheets beside the board. */
export type SheetName = 'block' | 'findings' | 'colour' | 'cutting' | 'quilting' | 'setting' | 'booklet'

export interface ViewState {
  /** Ids of the chosen units. */
  readonly chosen: readonly string[]
  readonly patch: { readonly unit: string; readonly name: string } | null
  /** The fabric in hand. */
  readonly brush: string | null
  /** The kind in hand, to be laid down at the cursor. */
  readonly taking: Kind | null
  /** Quarter turns clockwise of the kind in hand. */
  readonly turned: Turn
  readonly mode: ViewMode
  readonly sheet: SheetName
  /** The language the page is drawn in. */
  readonly language: Language
  /** Numbers, pressing and marks on the cloth. */
  readonly marks: boolean
  /** Which meeting or problem is pointed at. */
  readonly finding: string | null
  /** Lines on the board, in cells, that a panel points at: end to end, or round a patch. */
  readonly shown: readonly (readonly (readonly [number, number])[])[] | null
  /** A finding asked for on the board: the list brings it into sight and takes the focus to it. */
  readonly sought: string | null
  /** Joins made so far where the block is assembled step by step. */
  readonly step: number
  readonly cursor: readonly [number, number]
  /** What a drag over the board means. */
  readonly tool: DragTool
  /** What is moved comes to lie on halves of cells too. */
  readonly halves: boolean
  /** What is pressed is added to what is chosen, or taken from it. */
  readonly adding: boolean
  /** How edits repeat about the middle of the block. */
  readonly repeat: Repeat
  /** Corners of the free patch that is being drawn. */
  readonly corners: readonly FilePoint[]
  /** Zoom 1 fits the block to the board; pan in pixels. */
  readonly zoom: number
  readonly pan: readonly [number, number]
  readonly notice: string
  /** Notices so far: the same sentence twice is said twice. */
  readonly notices: number
}

export interface Stitching {
  readonly block: Block
  readonly routes: readonly StitchedLine[]
  readonly fills: readonly StitchedLine[]
  readonly part: number
}

/** Which of the maker's blocks lies on the board, and how it is kept. */
interface CurrentBlock {
  /** null until it is known, and where nothing can be kept. */
  readonly id: string | null
  /** Another tab has the block in hand: here it is only looked at. */
  readonly readOnly: boolean
  /** Why nothing, or not all, is kept. */
  readonly trouble: StorageProblem | null
}
/** No database (a private window); a full disk; another refusal; held open by an older page; closed for a newer one; written by a newer one. */
export type StorageProblem = 'none' | 'full' | 'failed' | 'older' | 'newer' | 'later'

export interface AppState {
  readonly history: History
  readonly view: ViewState
  readonly saved: 'saved' | 'saving' | 'failed'
  readonly currentBlock: CurrentBlock
  /** The block's layers of cloth, once they are worked out. */
  readonly layers: LayeredBlock | null
  /** What is stitched on the quilt: routes first, then fills, and how much of it so far (0 to 1). */
  readonly stitching: Stitching | null
  /** The block as it was laid out, while it is compared with what was sewn. */
  readonly comparedLayout: Block | null
  /** What a fix would make of the block, while it is tried and not yet taken. */
  readonly preview: Preview | null
  /** The last edit, until the next: the block it made, what was found before it (when it could last be sewn), and where it took each point of the block. */
  readonly edited: { readonly block: Block; readonly before: Findings; readonly moved: (at: Point) => Point; readonly turned: boolean } | null
}

const START: ViewState = {
  chosen: [],
  patch: null,
  brush: null,
  taking: null,
  turned: 0,
  halves: false,
  adding: false,
  mode: 'cloth',
  sheet: 'findings',
  language: 'en',
  marks: true,
  finding: null,
  shown: null,
  sought: null,
  step: 0,
  cursor: [0, 0],
  tool: 'hand',
  repeat: 'off',
  corners: [],
  zoom: 1,
  pan: [0, 0],
  notice: '',
  notices: 0,
}

/** The state as a hook: a selector must give the same object for the same state. */
export const useStore = create<AppState>(() => ({
  history: newHistory(eveningStar),
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

let keep: (history: History) => void = () => {}

function setHistory(history: History): void {
  if (history === getState().history) return
  if (getState().currentBlock.readOnly) {
    refuse()
    return
  }
  // First it is sent off to be kept, then it is shown.
  keep(history)
  showHistory(history)
}

let refused = false

/** Whatever an edit is about to say of itself, it was not made. */
function refuse(): void {
  refused = true
  queueMicrotask(() => {
    refused = false
  })
  setView({ notice: '' })
}

/** The same block as another tab has changed it. */
export function showHistory(history: History): void {
  const ids = new Set(history.block.units.map(({ id }) => id))
  const { view } = getState()
  const chosen = view.chosen.filter((id) => ids.has(id))
  const patch = view.patch !== null && ids.has(view.patch.unit) ? view.patch : null
  const brush = brushFor(history.block)
  set({ history, preview: null, edited: null, view: { ...view, chosen, patch, brush, finding: null, shown: null, sought: null } })
}

/** The fabric in hand, if the block has it. */
const brushFor = ({ fabrics }: Block): string | null => fabrics.find(({ id }) => id === getState().view.brush)?.id ?? null

/** Another block, with a history of its own. */
export function openHistory(history: History): void {
  clearFindings()
  const view: ViewState = {
    ...getState().view,
    chosen: [],
    patch: null,
    brush: brushFor(history.block),
    finding: null,
    shown: null,
    sought: null,
    step: 0,
    cursor: [0, 0],
    corners: [],
    zoom: 1,
    pan: [0, 0],
  }
  set({ history, view, layers: null, stitching: null, comparedLayout: null, preview: null, edited: null })
}

export function setLayers(block: Block, layered: Layered): void {
  if (getState().history.block === block) set({ layers: { block, layered } })
}

/** Findings that were worked out beside the page. */
export function setFindings(block: Block, findings: FindingsState): void {
  keepFindings(block, findings)
  // What shows them asks the cache again.
  set({})
}

export const showStitching = (stitching: Stitching | null): void => set({ stitching })

/** Keeps the block as it lies now, to compare with what comes out; null ends it. */
export const setComparedLayout = (laid: Block | null): void => set({ comparedLayout: laid })

/** Edits after which it is said, too, that nothing else changed. */
const TURNING: ReadonlySet<EditCode> = new Set<EditCode>(['turn-units', 'turn-units-half-round', 'mirror-units', 'turn-block', 'mirror-block'])

export function edit(change: Edit): void {
  const { block } = getState().history
  const last = getState().edited
  // Only what was worked out anyway: an edit never waits for a comparison.
  const before = knownFindings(block)
  setHistory(applyEdit(getState().history, symmetricEdit(block, change, getState().view.repeat)))
  if (before === null || getState().history.block === block) return
  // Nothing but the grid is held: what was before the last edit need not stay.
  const { grid } = block
  const moved = (at: Point): Point => change.moved?.(at, grid) ?? at
  const turned = TURNING.has(change.name.code)
  // On the way through a layout that cannot be sewn, as one quarter of a half turn is, what it is compared with stays the last that could.
  const since = before.joins.length === 0 && last?.block === block && last.before.joins.length > 0 ? last : null
  const edited =
    since === null
      ? { block: getState().history.block, before, moved, turned }
      : { block: getState().history.block, before: since.before, moved: (at: Point): Point => moved(since.moved(at)), turned: turned || since.turned }
  set({ edited })
}

/** Where the block does not lie on the board as it is laid, it is brought back, to show something on it. */
export function backToCloth(): void {
  if (getState().view.mode === 'order' || getState().view.mode === 'setting') setView({ mode: 'cloth' })
}

/** What a fix would make of the block is shown on the board; null shows the block itself again. */
export function showPreview(preview: Preview | null): void {
  if (preview !== getState().preview) set({ preview })
}

export const replaceDocument = (block: Block, name: EditName): void => {
  clearFindings()
  setHistory(replaceBlock(getState().history, block, name))
  setView({ chosen: [], patch: null, zoom: 1, pan: [0, 0], notice: t('{name} is on the board.', { name: displayName(block) }) })
}

const stepWords = ({ name }: Step): string => (typeof name === 'string' ? name : translate(name))

export function undo(): void {
  const step = getState().history.past.at(-1)
  setHistory(undoStep(getState().history))
  setView({ notice: step === undefined ? t('There is nothing to undo.') : t('Undone: {step}.', { step: stepWords(step) }) })
}

export function redo(): void {
  const step = getState().history.future[0]
  setHistory(redoStep(getState().history))
  setView({ notice: step === undefined ? t('There is nothing to do again.') : t('Done again: {step}.', { step: stepWords(step) }) })
}

export function setView(change: Partial<ViewState>): void {
  const told = refused && change.notice !== undefined ? { notice: t('Nothing was changed: this block is open in another tab.') } : {}
  const notices = getState().view.notices + (change.notice === undefined ? 0 : 1)
  set({ view: { ...getState().view, ...change, ...told, notices } })
}

export const setSaved = (saved: AppState['saved']): void => {
  if (saved !== getState().saved) set({ saved })
}
export const setCurrentBlock = (change: Partial<CurrentBlock>): void => set({ currentBlock: { ...getState().currentBlock, ...change } })

/** Where every change of the document goes to be kept. */
export const onHistoryChange = (keeper: (history: History) => void): void => {
  keep = keeper
}

export const useFindings = (): FindingsState => useStore(({ history, layers }) => cachedFindings(history.block, layers))
