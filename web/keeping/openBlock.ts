/**
 * Opens the maker's blocks and quilts, and has every change to them saved. What is said of blocks here goes for quilts too.
 *
 * In      a block to start or to open; each edit; messages from other tabs.
 * Out     the board and the list are up to date. Nothing is lost: if another tab has changed the same block, both states are kept, one as a copy.
 */
import { useEffect } from 'react'
import { create } from 'zustand'
import { changesBetween } from '../document/difference.ts'
import { applyEdit as applied, type History, newHistory } from '../document/history.ts'
import { copyName, displayName, shortName, thisTabName } from '../document/blockNames.ts'
import { checkBlock, message, setName } from '../../geometry/index.ts'
import { type Doc, isQuilt } from '../document/document.ts'
import type { DocEdit } from '../document/editResult.ts'
import { measuredHere } from '../document/region.ts'
import { emptyGrid } from '../document/starters/emptyGrid.ts'
import { eveningStar } from '../document/starters/eveningStar.ts'
import { lantern } from '../document/starters/lantern.ts'
import { t } from '../words/words.ts'
import {
  cards,
  changeVersions,
  Damaged,
  firstCursor,
  deleteBlock,
  isFull,
  openLast,
  read,
  salvaged,
  rememberOpen,
  settle,
  takeLease,
  versionBlock,
  versionsOf,
} from './database.ts'
import { loadChunk } from './loadChunk.ts'
import { countDay, emptyArchive } from './archive.ts'
import { type Base, type Card, newId, type Version, type VersionWhy, type WholeVersion } from './schema.ts'
import { type Autosaver, autosaver, type SaveEvent } from './autosave.ts'
import { openChannel, blockLock, type TabMessage } from './tabLocks.ts'
import { thinALittle } from './thinVersions.ts'
import {
  openDocument,
  openHistory,
  onHistoryChange,
  renamed,
  setView,
  getState,
  replaceDocument,
  setCurrentBlock,
  setSaved,
  showHistory,
} from '../document/store.ts'

/** The blocks to start from, measured as is usual where the browser is at home. */
export const STARTERS = { star: measuredHere(eveningStar), lantern: measuredHere(lantern), empty: measuredHere(emptyGrid) } as const
/** A version is kept automatically if the last one is this old, in milliseconds. */
const VERSION_PAUSE = 600_000
/** Milliseconds without a change after which everything written is flushed to the disk. */
const DISK_PAUSE = 2000

let base: Base | null = null
export const database = (): Base => {
  if (base === null) throw new DOMException('the database is closed', 'InvalidStateError')
  return base
}

export const autosave: Autosaver = autosaver(database, onSaved)
const lock = blockLock({ onGained: (id) => void lockGained(id), onLost: (id) => void lockLost(id) })
export const broadcast = openChannel(onTabMessage)

/** Starts saving, with the wanted block, else the one opened last, else what is on the board now. */
export async function startSaving(given: Base, wanted: string | null): Promise<void> {
  base = given
  onHistoryChange(keepEdit)
  // On a full disk the day is not counted; the maker's blocks open all the same.
  await countDay(given)
    .then((today) => emptyArchive(given, today))
    .catch(() => undefined)
  const known = (await cards(given)).filter(({ aside }) => aside === null).sort((a, b) => b.changed - a.changed)
  const ids = known.map(({ id }) => id)
  const preferred = [wanted, await openLast(given)].filter((id) => id != null && ids.includes(id)) as string[]
  if (!(await openFirst([...preferred, ...ids]))) await beginBlock(getState().history.block)
  setView({ notice: damageNotice })
  document.addEventListener('visibilitychange', () => document.hidden && flushToDisk())
}

/** Opens the first that can be read: a damaged block must not keep the others off the board. */
async function openFirst(ids: readonly string[]): Promise<boolean> {
  for (const id of new Set(ids)) if (await openBlock(id)) return true
  return false
}

/** The database was closed under the page. */
export const close = (): void => {
  base = null
  autosave.rest()
}

/** The database was deleted while the page was open: the block on the board becomes the first of a new one. */
export async function beginAgain(given: Base): Promise<void> {
  base = given
  setCurrentBlock({ id: null, readOnly: false, trouble: null })
  await enqueue(() => startHistory(openDocument(getState())))
}

// What is on the board.

/** Whether everything is saved; if not, a notice says so. */
async function allSaved(): Promise<boolean> {
  const kept = await autosave.settled()
  if (!kept) setView({ notice: t('The last changes aren’t saved yet. Save a file first.') })
  return kept
}

/** Does something once everything is saved. */
export async function whenSaved(act: () => void): Promise<void> {
  if (await allSaved()) act()
}

/** Finishes with the block on the board; false where its last changes are not saved yet. */
async function leave(): Promise<boolean> {
  const { id, readOnly: elsewhere } = getState().currentBlock
  if (base === null || id === null || elsewhere) return true
  if (!(await allSaved())) return false
  // Without room for a version, the block is left without one.
  await dropOrKeepVersion(base, id).catch(() => {})
  return true
}

async function dropOrKeepVersion(from: Base, id: string): Promise<void> {
  const history = openDocument(getState())
  if (isUntouched(history) && !hasContent(history.block) && (await isPlain(from, id))) await deleteBlock(from, id)
  else if (lastVersion !== null) await keepVersion(id, history.block, 'leaving')
}

/** Whether a block is not archived and has no versions. */
const isPlain = async (from: Base, id: string): Promise<boolean> =>
  (await from.get('cards', id))?.aside === null && (await versionsOf(from, id)).length === 0

const hasContent = (doc: Doc): boolean => (isQuilt(doc) ? doc.places.length > 0 : doc.units.length > 0)

/** A starter that was never edited: its first edit needs no version before it, and an empty grid that nobody used need not be kept. */
const isUntouched = ({ block, past, future }: History<Doc>): boolean =>
  past.length + future.length === 0 && (isQuilt(block) ? !hasContent(block) : Object.values(STARTERS).some((starter) => isSameBlock(starter, block)))

export const isSameBlock = (a: Doc, b: Doc): boolean => changesBetween(a, b).length === 0

/** Blocks are opened and started one after another, however fast the requests come. */
let queue: Promise<unknown> = Promise.resolve()

function enqueue<T>(act: () => Promise<T>): Promise<T> {
  const next = queue.then(act)
  queue = next.catch(() => {})
  return next
}

/** Starts a block or quilt of the maker's own, from a starter, a file, a link or a copy. */
export const beginBlock = (block: Doc, history: History<Doc> = newHistory(block)): Promise<boolean> =>
  enqueue(async () => {
    if (base === null) beginUnsaved(block)
    else if (!(await leave())) return false
    else await startHistory(history)
    return base !== null || !getState().currentBlock.readOnly
  })

/** Where nothing can be saved, a block takes the place of the last one as a step that can be undone. */
function beginUnsaved(doc: Doc): void {
  if (isQuilt(doc) || getState().quilt !== null) openHistory(newHistory(doc))
  else replaceDocument(doc, message('begin-again'))
}

/** Puts a history that is not saved anywhere yet on the board, under a new id. */
async function startHistory(history: History<Doc>): Promise<void> {
  const cursor = firstCursor()
  await lock.hold(cursor.id)
  autosave.take(cursor, null)
  showOnBoard(cursor.id, false, history)
  autosave.keep(history)
}

/** Opens a block. Returns whether it is on the board now; if not, a notice says why. */
export const openBlock = (id: string): Promise<boolean> =>
  enqueue(() => loadBlock(id)).catch(() => {
    setView({ notice: t('Your browser couldn’t open the block. Reload the page.') })
    return false
  })

/** The notice about the last damaged block. */
let damageNotice = ''

async function loadBlock(id: string): Promise<boolean> {
  const known = await read(database(), id).catch(ifDamaged)
  if (known === null) {
    setView({ notice: t('That block is no longer here.') })
    listChanged()
    return false
  }
  const isSound = await soundnessOf(id)
  if (isSound === null) return false
  if (known === 'damaged' || !isSound(known.block)) return openSalvaged(id, isSound)
  if (!(await leave())) return false
  const ours = await lock.hold(id)
  const taken = ours ? await takeLease(database(), id) : null
  if (taken === null) autosave.rest()
  else autosave.take(taken.cursor, taken.history)
  showOnBoard(id, taken === null, taken?.history ?? known)
  if (taken !== null) broadcast({ type: 'taken', id })
  return true
}

const isSoundBlock = (value: unknown): boolean => checkBlock(value).ok

/** What tells a sound document from a damaged one; null where the part that knows quilts could not be loaded. */
async function soundnessOf(id: string): Promise<((value: unknown) => boolean) | null> {
  if ((await database().get('cards', id))?.type !== 'quilt') return isSoundBlock
  return (await loadChunk(() => import('./quiltCheck.ts')))?.isSoundQuilt ?? null
}

function ifDamaged(error: unknown): 'damaged' {
  if (error instanceof Damaged) return 'damaged'
  throw error
}

/** What can be read of a damaged block becomes a copy; the damaged block keeps its versions. */
async function openSalvaged(id: string, isSound: (value: unknown) => boolean): Promise<boolean> {
  const left = await salvaged(database(), id, isSound)
  const name = displayName(left ?? (await cards(database())).find((card) => card.id === id) ?? { name: '' })
  damageNotice =
    left === null
      ? t('{name} is damaged and can’t be read. Start a block from one of its versions, or archive it.', { name })
      : t('{name} is damaged. What could be read is open as a copy.', { name })
  if (left !== null && !(await leave())) return false
  if (left !== null) await startHistory(newHistory({ ...left, name: copyName(left.name) }))
  setView({ notice: damageNotice })
  return left !== null
}

function showOnBoard(id: string, elsewhere: boolean, history: History<Doc>): void {
  setCurrentBlock({ id, readOnly: elsewhere })
  openHistory(history)
  setSaved('saved')
  lastVersion = null
  setView({ notice: t('{name} is open.', { name: displayName(history.block) }) })
  rememberInTab(id)
  listChanged()
}

/** When this tab is reloaded it opens the same block; a new tab opens the block that was opened last. */
function rememberInTab(id: string): void {
  try {
    sessionStorage.setItem('nestwright.block', id)
  } catch {
    // Then the block that was opened last is opened.
  }
  void rememberOpen(database(), id).catch(() => {})
}

export function blockOfTab(): string | null {
  try {
    return sessionStorage.getItem('nestwright.block')
  } catch {
    return null
  }
}

// Saving.

let hasAskedToPersist = false
let lastVersion: number | null = null

function keepEdit(history: History<Doc>): void {
  const { currentBlock } = getState()
  const before = openDocument(getState())
  autosave.keep(history)
  if (!hasAskedToPersist) {
    hasAskedToPersist = true
    void navigator.storage?.persist?.().catch(() => false)
  }
  if (currentBlock.id !== null && (lastVersion === null || Date.now() - lastVersion > VERSION_PAUSE)) {
    lastVersion = Date.now()
    if (!isUntouched(before)) whenIdle(() => keepVersion(currentBlock.id as string, before.block, 'rest'))
  }
}

/** A version can wait until the page is idle. If there is no room for one, the edits are still saved. */
function whenIdle(act: () => Promise<void>): void {
  const run = (): void => void act().catch(() => {})
  if (typeof requestIdleCallback === 'undefined') setTimeout(run, DISK_PAUSE)
  else requestIdleCallback(run, { timeout: DISK_PAUSE })
}

let diskTimer: ReturnType<typeof setTimeout> | undefined

function onSaved(news: SaveEvent): void {
  if (news.type === 'saving') {
    setSaved('saving')
    return
  }
  if (news.type === 'saved') {
    setSaved('saved')
    if (getState().currentBlock.trouble !== null) setCurrentBlock({ trouble: null })
    broadcast({ type: 'kept', id: news.id })
    clearTimeout(diskTimer)
    diskTimer = setTimeout(flushToDisk, DISK_PAUSE)
    listChanged()
    return
  }
  if (news.type === 'overtaken') {
    void continueAs(news.history, thisTabName(news.history.block.name))
    return
  }
  setSaved('failed')
  if (getState().currentBlock.trouble !== 'newer') setCurrentBlock({ trouble: isFull(news.error) ? 'full' : 'failed' })
}

function flushToDisk(): void {
  clearTimeout(diskTimer)
  if (base !== null) void settle(base).catch(() => {})
}

// Other tabs.

let following = false
let behind = false

function onTabMessage({ type: sort, id }: TabMessage): void {
  const { currentBlock } = getState()
  if (sort === 'taken' && id === currentBlock.id && !currentBlock.readOnly) void lockLost(id)
  if (sort === 'kept' && id === currentBlock.id && currentBlock.readOnly) void follow(id)
  listChanged(false)
}

/** Another tab has taken over the block: from now on it is read-only here, and shows what changes there. */
async function lockLost(id: string): Promise<void> {
  if (getState().currentBlock.id !== id) return
  const kept = await autosave.settled()
  // Changes that could not be saved any more are in a copy by now.
  if (getState().currentBlock.id !== id || getState().currentBlock.readOnly) return
  if (!kept) {
    const open = openDocument(getState())
    await continueAs(open, thisTabName(open.block.name))
    return
  }
  autosave.rest()
  setCurrentBlock({ readOnly: true })
  await follow(id)
}

async function follow(id: string): Promise<void> {
  behind = true
  if (following) return
  following = true
  while (behind && base !== null) {
    behind = false
    const history = await read(base, id).catch(() => null)
    if (history !== null && getState().currentBlock.id === id && getState().currentBlock.readOnly) showHistory(history)
  }
  following = false
}

/** The other tab has released the block. */
async function lockGained(id: string): Promise<void> {
  if (getState().currentBlock.id !== id || base === null) return
  const taken = await takeLease(database(), id)
  if (taken === null) return
  autosave.take(taken.cursor, taken.history)
  setCurrentBlock({ readOnly: false })
  showHistory(taken.history)
  broadcast({ type: 'taken', id })
}

export async function takeOver(): Promise<void> {
  const { id } = getState().currentBlock
  if (id === null) return
  await lock.steal(id)
  await lockGained(id)
  setView({ notice: t('You can edit the block here now. The other tab only shows it.') })
}

export async function goOnWithCopy(): Promise<void> {
  const open = openDocument(getState())
  await continueAs(open, copyName(open.block.name))
}

/** A rename is a step of its own; a name typed letter by letter is merged into one. */
export const renaming = <D extends Doc>(doc: D, name: string): DocEdit<D> =>
  ({ ...(isQuilt(doc) ? renamed(name) : setName(name)), merge: undefined }) as unknown as DocEdit<D>

/** Saves the history on the board as a new block under another name. */
async function continueAs(history: History<Doc>, name: string): Promise<void> {
  await enqueue(() => startHistory(applied(history, renaming(history.block, name))))
  setView({ notice: t('This copy is called “{name}”. The other one stays as it is.', { name: shortName(name) }) })
}

// The list.

const useList = create<readonly Card[]>(() => [])
/** How many components show the list now; it is read only for them. */
let watchers = 0

async function refresh(): Promise<void> {
  if (base === null) return
  const list = await cards(base).catch(() => null)
  if (list !== null) useList.setState(list, true)
}

export function listChanged(others = true): void {
  if (watchers > 0) void refresh()
  if (others) broadcast({ type: 'list', id: '' })
}

/** The cards of all blocks, archived ones too, the last changed first. */
export function useCards(): readonly Card[] {
  useEffect(() => {
    watchers++
    void refresh()
    return () => {
      watchers--
    }
  }, [])
  return useList()
}

export const canKeep = (): boolean => base !== null

/** A block or quilt by its id; for the one that is open, its present state. */
export async function documentOf(id: string): Promise<Doc | null> {
  if (id === getState().currentBlock.id) return openDocument(getState()).block
  const known = await read(database(), id).catch(ifDamaged)
  return known === 'damaged' ? salvaged(database(), id, (await soundnessOf(id)) ?? isSoundBlock) : (known?.block ?? null)
}

// Versions.

/** Keeps a version, unless it has no name and the newest one is the same. Also deletes versions that are due, the oldest first. */
export async function keepVersion(of: string, block: Doc, why: VersionWhy, name: string | null = null): Promise<void> {
  const versions = await versionsOf(database(), of)
  const newest = versions.reduce<Version | null>((late, one) => (late === null || one.made >= late.made ? one : late), null)
  const before = newest === null || name !== null ? undefined : await versionBlock(database(), newest.id)
  if (before !== undefined && isSameBlock(before, block)) return
  const version: WholeVersion = { id: newId(), of, made: Date.now(), name, why, block }
  await changeVersions(database(), [version], thinALittle([...versions, version], Date.now()))
  listChanged()
}
