/**
 * The maker's own blocks: which of them lies on the board, and all that can be done with one.
 *
 * In      what the maker asks for, by a block's id.
 * Out     the board and the list follow; a notice says what was done. Nothing that was made is lost: what is put aside stays for thirty days, going back to a
 *         version is a step like any other, and whatever another tab did meanwhile is kept beside what was done here.
 */
import { useEffect, useSyncExternalStore } from 'react'
import { difference } from './difference.ts'
import { apply as applied, type History, unedited } from './history.ts'
import { type Block, type Edit, setName } from '../../geometry/index.ts'
import { emptyGrid } from '../starters/emptyGrid.ts'
import { eveningStar } from '../starters/eveningStar.ts'
import { lantern } from '../starters/lantern.ts'
import { t } from '../words/words.ts'
import type { Filed, FiledVersion } from './blocksFile.ts'
import {
  type Base,
  bringIn,
  type Card,
  cards,
  changeVersions,
  firstStanding,
  forget,
  isFull,
  newId,
  openLast,
  read,
  setAside,
  setOpen,
  settle,
  takeTurn,
  type Version,
  type VersionWhy,
  versionBlock,
  versionsOf,
  type WholeVersion,
} from './saveBase.ts'
import { keeperOf, type News } from './saveKeeper.ts'
import { channelOf, handOf, inHand, type Word } from './saveTabs.ts'
import { thinned } from './saveThin.ts'
import { bring, keepWith, look, now, replace, setDesk, setSaved, show } from './store.ts'

export const STARTERS = { star: eveningStar, lantern, empty: emptyGrid } as const
const DAY = 86_400_000
/** Days that a block put aside stays. */
export const ASIDE_DAYS = 30
/** A version is kept by itself when so long has passed since the last. */
const REST = 600_000
/** After so much rest what was written is brought to the disk itself. */
const QUIET = 2000

let base: Base | null = null
const opened = (): Base => {
  if (base === null) throw new DOMException('the database is closed', 'InvalidStateError')
  return base
}

const keeper = keeperOf(opened, hear)
const hand = handOf({ got: (id) => void takeUp(id), lost: (id) => void givenUp(id) })
const tell = channelOf(heard)

/** Begins to keep: the block asked for, else the last one on the board, else what lies there now. */
export async function begin(given: Base, asked: string | null): Promise<void> {
  base = given
  keepWith(keepEdit)
  await emptyOld(given)
  const known = (await cards(given)).filter(({ aside }) => aside === null).sort((a, b) => b.changed - a.changed)
  const wished = [asked, await openLast(given), known[0]?.id]
  const last = known.find(({ id }) => id === wished.find((wish) => known.some((card) => card.id === wish)))?.id
  if (last === undefined) await beginBlock(now().history.block)
  else await openBlock(last)
  look({ notice: '' })
  document.addEventListener('visibilitychange', () => document.hidden && bringToDisk())
}

/** The database was closed under the page. */
export const close = (): void => {
  base = null
  keeper.rest()
}

// What is on the board.

/** Whether all is kept; where not, the maker is told. */
async function allKept(): Promise<boolean> {
  const kept = await keeper.settled()
  if (!kept) look({ notice: t('The last changes of this block are not kept yet; save it as a file first.') })
  return kept
}

/** What must not happen in the middle of an edit. */
export async function whenKept(act: () => void): Promise<void> {
  if (await allKept()) act()
}

/** Leaves the block on the board; false where what was done last is not kept yet. */
async function leave(): Promise<boolean> {
  const { id, elsewhere } = now().desk
  if (base === null || id === null || elsewhere) return true
  if (!(await allKept())) return false
  const { history } = now()
  if (isUntouched(history) && (await versionsOf(base, id)).length === 0) await forget(base, id)
  else if (lastVersion !== null) await keepVersion(id, history.block, 'leaving')
  return true
}

/** A starter that nobody has changed need not be kept: it can be begun again. */
const isUntouched = ({ block, past, future }: History): boolean =>
  past.length + future.length === 0 && Object.values(STARTERS).some((starter) => same(starter, block))

const same = (a: Block, b: Block): boolean => difference(a, b).length === 0

/** A block of her own, from a starter, a file, a link or a copy. */
export async function beginBlock(block: Block, history: History = unedited(block)): Promise<boolean> {
  if (base === null) {
    replace(block, t('begin anew'))
    return true
  }
  if (!(await leave())) return false
  const standing = firstStanding()
  await hand.hold(standing.id)
  keeper.take(standing, null)
  settleDown(standing.id, false, history)
  keeper.keep(history)
  return true
}

export async function openBlock(id: string): Promise<boolean> {
  const known = await read(opened(), id)
  if (known === null) {
    look({ notice: t('That block is not here any more.') })
    changedList()
    return false
  }
  if (!(await leave())) return false
  const ours = await hand.hold(id)
  const taken = ours ? await takeTurn(opened(), id) : null
  if (taken === null) keeper.rest()
  else keeper.take(taken.standing, taken.history)
  settleDown(id, taken === null, taken?.history ?? known)
  if (taken !== null) tell({ sort: 'taken', id })
  return true
}

function settleDown(id: string, elsewhere: boolean, history: History): void {
  setDesk({ id, elsewhere })
  bring(history)
  setSaved('saved')
  lastVersion = null
  look({ notice: t('{name} is on the board.', { name: history.block.name }) })
  remember(id)
  changedList()
}

/** This tab opens the same block when it is loaded anew, a new tab the one that was opened last. */
function remember(id: string): void {
  try {
    sessionStorage.setItem('nestwright.block', id)
  } catch {
    // Then the block that was opened last is opened.
  }
  void setOpen(opened(), id).catch(() => {})
}

export function remembered(): string | null {
  try {
    return sessionStorage.getItem('nestwright.block')
  } catch {
    return null
  }
}

// Keeping.

let asked = false
let lastVersion: number | null = null

function keepEdit(history: History): void {
  const { history: before, desk } = now()
  keeper.keep(history)
  if (!asked) {
    asked = true
    void navigator.storage?.persist?.().catch(() => false)
  }
  if (desk.id !== null && (lastVersion === null || Date.now() - lastVersion > REST)) {
    lastVersion = Date.now()
    if (!isUntouched(before)) void keepVersion(desk.id, before.block, 'rest').catch(() => {})
  }
}

let quiet: ReturnType<typeof setTimeout> | undefined

function hear(news: News): void {
  if (news.sort === 'saving') {
    setSaved('saving')
    return
  }
  if (news.sort === 'saved') {
    setSaved('saved')
    if (now().desk.trouble !== null) setDesk({ trouble: null })
    tell({ sort: 'kept', id: news.id })
    clearTimeout(quiet)
    quiet = setTimeout(bringToDisk, QUIET)
    changedList()
    return
  }
  if (news.sort === 'overtaken') {
    void goOn(news.history, t('{name} (this tab)', { name: news.history.block.name }))
    return
  }
  setSaved('failed')
  if (now().desk.trouble !== 'newer') setDesk({ trouble: isFull(news.error) ? 'full' : 'failed' })
}

function bringToDisk(): void {
  clearTimeout(quiet)
  if (base !== null) void settle(base).catch(() => {})
}

// Other tabs.

let following = false

function heard({ sort, id }: Word): void {
  const { desk } = now()
  if (sort === 'taken' && id === desk.id && !desk.elsewhere) void givenUp(id)
  if (sort === 'kept' && id === desk.id && desk.elsewhere) void follow(id)
  changedList(false)
}

/** Another tab has taken the block over: here it is looked at from now on, as it changes there. */
async function givenUp(id: string): Promise<void> {
  if (now().desk.id !== id) return
  await keeper.settled()
  // What could not be kept any more has gone on as a copy by now.
  if (now().desk.id !== id || now().desk.elsewhere) return
  keeper.rest()
  setDesk({ elsewhere: true })
  await follow(id)
}

async function follow(id: string): Promise<void> {
  if (following) return
  following = true
  const history = await read(opened(), id).catch(() => null)
  following = false
  if (history !== null && now().desk.id === id && now().desk.elsewhere) show(history)
}

/** The other tab has let go. */
async function takeUp(id: string): Promise<void> {
  if (now().desk.id !== id) return
  const taken = await takeTurn(opened(), id)
  if (taken === null) return
  keeper.take(taken.standing, taken.history)
  setDesk({ elsewhere: false })
  show(taken.history)
  tell({ sort: 'taken', id })
}

export async function takeOver(): Promise<void> {
  const { id } = now().desk
  if (id === null) return
  await hand.seize(id)
  await takeUp(id)
  look({ notice: t('The block is in your hand here now; in the other tab it is only looked at.') })
}

export async function goOnWithCopy(): Promise<void> {
  const { history } = now()
  await goOn(history, t('{name} (copy)', { name: history.block.name }))
}

/** A step of its own, unlike a name typed letter by letter. */
const renaming = (name: string): Edit => ({ ...setName(name), merge: undefined })

/** The history on the board goes on under another name, beside the block it came from. */
async function goOn(history: History, name: string): Promise<void> {
  const renamed = applied(history, renaming(name))
  await beginBlock(renamed.block, renamed)
  look({ notice: t('This goes on as “{name}”; the other one is kept too.', { name }) })
}

// The list.

let list: readonly Card[] = []
const listeners = new Set<() => void>()

async function refresh(): Promise<void> {
  if (base === null) return
  list = await cards(base).catch(() => list)
  for (const listener of listeners) listener()
}

function changedList(others = true): void {
  if (listeners.size > 0) void refresh()
  if (others) tell({ sort: 'list', id: '' })
}

/** Cards of all blocks, those put aside too, the one changed last first. */
export function useCards(): readonly Card[] {
  useEffect(() => void refresh(), [])
  return useSyncExternalStore(listen, () => list)
}

function listen(listener: () => void): () => void {
  listeners.add(listener)
  return () => listeners.delete(listener)
}

export const canKeep = (): boolean => base !== null

/** A block by its id: the one on the board as it lies there. */
export async function blockOf(id: string): Promise<Block | null> {
  if (id === now().desk.id) return now().history.block
  return (await read(opened(), id))?.block ?? null
}

export async function copyBlock(id: string): Promise<void> {
  const block = await blockOf(id)
  if (block === null) return
  const name = t('{name} (copy)', { name: block.name })
  await bringIn(opened(), [{ id: newId(), made: Date.now(), changed: Date.now(), block: { ...block, name }, versions: [] }])
  changedList()
  look({ notice: t('{name} is among your blocks.', { name }) })
}

/** Renamed as an edit, so that it can be undone; not while another tab has it in hand. */
export async function renameBlock(id: string, name: string): Promise<'done' | 'in another tab'> {
  if (id === now().desk.id) throw new RangeError('the block on the board is renamed by an edit')
  if (await inHand(id)) return 'in another tab'
  const taken = await takeTurn(opened(), id)
  if (taken === null) return 'done'
  const quietly = keeperOf(opened, () => {})
  quietly.take(taken.standing, taken.history)
  quietly.keep(applied(taken.history, renaming(name)))
  await quietly.settled()
  tell({ sort: 'kept', id })
  changedList()
  return 'done'
}

export async function putAside(id: string): Promise<void> {
  const name = (await blockOf(id))?.name ?? ''
  if (id === now().desk.id) {
    const next = [...(await cards(opened()))].filter((card) => card.aside === null && card.id !== id).sort((a, b) => b.changed - a.changed)[0]
    const left = next === undefined ? await beginBlock(emptyGrid) : await openBlock(next.id)
    if (!left) return
  }
  await setAside(opened(), id, Date.now())
  changedList()
  look({ notice: t('{name} is put aside.', { name }) })
}

export async function bringBack(id: string): Promise<void> {
  await setAside(opened(), id, null)
  changedList()
}

export async function forgetBlocks(ids: readonly string[]): Promise<void> {
  for (const id of ids) await forget(opened(), id)
  changedList()
}

async function emptyOld(from: Base): Promise<void> {
  const old = (await cards(from)).filter(({ aside }) => aside !== null && Date.now() - aside > ASIDE_DAYS * DAY)
  for (const { id } of old) await forget(from, id)
}

// Versions.

/** Keeps a version unless the newest is the same and no name is given; those that time has thinned out go. */
async function keepVersion(of: string, block: Block, why: VersionWhy, name: string | null = null): Promise<void> {
  const versions = await versionsOf(opened(), of)
  const newest = versions.reduce<Version | null>((late, one) => (late === null || one.made >= late.made ? one : late), null)
  const before = newest === null || name !== null ? undefined : await versionBlock(opened(), newest.id)
  if (before !== undefined && same(before, block)) return
  const version: WholeVersion = { id: newId(), of, made: Date.now(), name, why, block }
  await changeVersions(opened(), [version], thinned([...versions, version], Date.now()))
  changedList()
}

export async function keepThisVersion(id: string, name: string): Promise<void> {
  const block = await blockOf(id)
  if (block !== null) await keepVersion(id, block, 'asked', name)
}

/** Newest first. */
export async function versionsFor(id: string): Promise<Version[]> {
  return (await versionsOf(opened(), id)).sort((a, b) => b.made - a.made)
}

/** Puts the block of a version on the board; what lies there is kept as a version, and going back is a step to undo. */
export async function goBackTo(version: Version): Promise<void> {
  const block = await versionBlock(opened(), version.id)
  if (block === undefined) return
  if (now().desk.id !== version.of && !(await openBlock(version.of))) return
  if (!now().desk.elsewhere) await keepVersion(version.of, now().history.block, 'going back')
  replace(block, t('go back to a version'))
}

export async function forgetVersion(id: string): Promise<void> {
  await changeVersions(opened(), [], [id])
  changedList()
}

export async function versionAsBlock({ id }: Version): Promise<boolean> {
  const block = await versionBlock(opened(), id)
  return block !== undefined && beginBlock({ ...block, name: t('{name} (copy)', { name: block.name }) })
}

export const blockOfVersion = async ({ id }: Version): Promise<Block | null> => (await versionBlock(opened(), id)) ?? null

// Files.

/** Every block that is not put aside, with its versions. */
export async function filedBlocks(): Promise<Filed[]> {
  await keeper.settled()
  const shown = (await cards(opened())).filter(({ aside }) => aside === null)
  const filed = await Promise.all(shown.map((card) => filedOf(card)))
  return filed.filter((one) => one !== null)
}

async function filedOf({ id, made, changed }: Card): Promise<Filed | null> {
  const block = await blockOf(id)
  if (block === null) return null
  const versions = await Promise.all((await versionsOf(opened(), id)).map(filedVersion))
  return { id, made, changed, block, versions: versions.filter((version) => version !== null) }
}

async function filedVersion(version: Version): Promise<FiledVersion | null> {
  const block = await blockOfVersion(version)
  return block === null ? null : { made: version.made, name: version.name, block }
}

export interface BroughtIn {
  readonly came: number
  readonly copies: number
  /** Here already, the very same. */
  readonly known: number
}

/** Brings blocks in beside those that are here: one whose id is taken comes as a copy, unless it is the very same. */
export async function bringBlocksIn(filed: readonly Filed[]): Promise<BroughtIn> {
  await keeper.settled()
  const taken = new Map((await cards(opened())).map((card) => [card.id, card]))
  const come: Filed[] = []
  let copies = 0
  for (const one of filed) {
    const here = taken.has(one.id) ? await blockOf(one.id) : null
    if (here !== null && same(here, one.block) && taken.get(one.id)?.aside === null) continue
    const isCopy = taken.has(one.id) || come.some(({ id }) => id === one.id)
    copies += isCopy ? 1 : 0
    come.push(isCopy ? { ...one, id: newId(), block: { ...one.block, name: t('{name} (copy)', { name: one.block.name }) } } : one)
  }
  await bringIn(opened(), come)
  changedList()
  return { came: come.length, copies, known: filed.length - come.length }
}
