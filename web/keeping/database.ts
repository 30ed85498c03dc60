/**
 * The browser's database: every block and quilt a maker has, each with its own history and versions. What is said of blocks here goes for quilts too.
 *
 * Stored  a card for each block (what a list shows of it, and where its history stands); the block as it was at one place of its history (its base);
 *         each step in a record of its own. An edit writes its step and the card in one transaction, so it is saved completely or not at all, and costs
 *         no more for a block of thousands of units than for one of four. The present block is the base with the steps applied.
 * Leases  two tabs never overwrite each other. A page that opens a block to change it takes the next lease, and puts a mark on the lease before. Every write
 *         adds and deletes the mark of its own lease: where a mark is there already, the database refuses the whole write. Nothing has to be read first,
 *         so a write is sent off completely before the page does anything else. (In the database a lease is called a turn.)
 */
import { type IDBPTransaction, openDB } from 'idb'
import { checkBlock } from '../../geometry/index.ts'
import type { Doc } from '../document/document.ts'
import type { FiledBlock } from './blocksFile.ts'
import { type History, applyPacked, type Step } from '../document/history.ts'
import { sendOff, tryCommit } from './commit.ts'
import { type Base, type Card, cardOf, newId, type Schema, type Version, type WholeVersion } from './schema.ts'
import { upgradeDatabase } from './upgradeDatabase.ts'

export interface DatabaseEvents {
  /** An older page holds the database open. */
  readonly blocked?: () => void
  /** A newer page wanted it closed. */
  readonly closed?: () => void
  /** The browser has closed or deleted it. */
  readonly lost?: () => void
}

export async function openBase(name = 'nestwright', { blocked, closed, lost }: DatabaseEvents = {}): Promise<Base> {
  const db = await openDB<Schema>(name, 3, {
    upgrade: (db, from, _, work) => upgradeDatabase(db, from, work),
    blocked,
    blocking(_old, next, event) {
      ;(event.target as IDBDatabase).close()
      // Without a next version the database is being deleted, not upgraded.
      if (next === null) lost?.()
      else closed?.()
    },
    terminated: lost,
  })
  void tryCommit(db)
  return db
}

/** What a page needs to write to a block: which block, under which lease, and where its base is. */
export interface WriteCursor {
  readonly id: string
  readonly made: number
  readonly lease: number
  /** How many steps the base has behind it. */
  readonly base: number
}

export const firstCursor = (id = newId(), made = Date.now()): WriteCursor => ({ id, made, lease: 1, base: 0 })

const editsOf = (id: string, from = 0): IDBKeyRange => IDBKeyRange.bound([id, from], [id, []])

/** Steps between the base and the present after which a new base is written. */
const MOST_STEPS_FROM_BASE = 400

const OF_A_BLOCK = ['cards', 'bases', 'edits', 'turns'] as const
const OF_VERSIONS = ['versions', 'versionBlocks'] as const
const ALL = [...OF_A_BLOCK, ...OF_VERSIONS] as const

/**
 * Writes what differs between the history that is certainly saved (null: nothing) and the present one; all of it is sent off before this returns.
 * A write that starts before the one ahead of it has succeeded still starts from what is certainly saved, so a failed write leaves no gap.
 */
export async function write(
  db: Base,
  cursor: WriteCursor,
  kept: History<Doc> | null,
  present: History<Doc>,
  changed: number,
  writesBase = needsNewBase(cursor, kept, present),
): Promise<WriteCursor> {
  const steps = [...present.past, ...present.future]
  const past = present.past.length
  const work = db.transaction(OF_A_BLOCK, 'readwrite', { durability: 'relaxed' })
  await commitAll(work, (send) => {
    send(work.objectStore('turns').add(changed, [cursor.id, cursor.lease]))
    send(work.objectStore('turns').delete([cursor.id, cursor.lease]))
    send(work.objectStore('cards').put(cardOf(cursor, present.block, past, changed)))
    send(work.objectStore('edits').delete(editsOf(cursor.id, steps.length)))
    for (let place = firstDifference(kept, steps); place < steps.length; place++)
      send(work.objectStore('edits').put(steps[place] as Step, [cursor.id, place]))
    if (writesBase) send(work.objectStore('bases').put({ past, block: present.block }, cursor.id))
    sendOff(work)
  })
  return writesBase ? { ...cursor, base: past } : cursor
}

/** Whether the steps no longer lead from the base to the present, or there are too many of them. */
export function needsNewBase({ base }: WriteCursor, kept: History<Doc> | null, present: History<Doc>): boolean {
  return (
    kept === null ||
    base > firstDifference(kept, [...present.past, ...present.future]) ||
    Math.abs(present.past.length - base) >= MOST_STEPS_FROM_BASE
  )
}

function firstDifference(kept: History<Doc> | null, steps: readonly Step[]): number {
  const known = kept === null ? [] : [...kept.past, ...kept.future]
  let place = 0
  while (place < known.length && place < steps.length && known[place] === steps[place]) place++
  return place
}

/**
 * Sends off all requests of a transaction, and waits for it to end. Where one request cannot even be sent, none of them is kept. Where the transaction was
 * refused, the request that failed says why. (Where it is refused at its end, some requests never settle.)
 */
async function commitAll(
  work: { readonly done: Promise<void>; abort(): void },
  fill: (send: (request: Promise<unknown>) => void) => void,
): Promise<void> {
  let cause: unknown
  try {
    fill((request) => {
      request.catch((error: unknown) => {
        if (error instanceof DOMException && error.name !== 'AbortError') cause ??= error
      })
    })
  } catch (error) {
    cause = error
    work.abort()
  }
  try {
    await work.done
  } catch (error) {
    throw cause ?? error
  }
}

/** Another page has taken the lease after ours. */
export const isOvertaken = (error: unknown): boolean => error instanceof DOMException && error.name === 'ConstraintError'
export const isFull = (error: unknown): boolean => error instanceof DOMException && error.name === 'QuotaExceededError'

/** A block that can no longer be read: the disk failed, or another program changed it. */
export class Damaged extends Error {}

/** Reads a block without a lease; null where there is none with that id. Throws `Damaged`. */
export async function read(db: Base, id: string): Promise<History<Doc> | null> {
  const work = db.transaction(['cards', 'bases', 'edits'])
  return historyIn(work, id)
}

interface Readable {
  objectStore(name: 'cards'): { get(key: string): Promise<Card | undefined> }
  objectStore(name: 'bases'): { get(key: string): Promise<{ readonly past: number; readonly block: Doc } | undefined> }
  objectStore(name: 'edits'): { getAll(range: IDBKeyRange): Promise<Step[]> }
}

async function historyIn(work: unknown, id: string): Promise<History<Doc> | null> {
  const stores = work as Readable
  const [card, base, steps] = await Promise.all([
    stores.objectStore('cards').get(id),
    stores.objectStore('bases').get(id),
    stores.objectStore('edits').getAll(editsOf(id)),
  ])
  if (card === undefined || base === undefined) return null
  try {
    return { block: movedTo(base, card.past, steps), past: steps.slice(0, card.past), future: steps.slice(card.past) }
  } catch {
    throw new Damaged(id)
  }
}

/** Whether a value can be used as a document; what checks a quilt is given by whoever has loaded it. */
type IsDocument = (value: unknown) => boolean
const isBlock: IsDocument = (value) => checkBlock(value).ok

/** What can still be read of a damaged document: its base with as many steps as still apply; null where not even the base can be read. */
export async function salvaged(db: Base, id: string, isSound: IsDocument = isBlock): Promise<Doc | null> {
  const work = db.transaction(['cards', 'bases', 'edits']) as unknown as Readable
  const [card, base, steps] = await Promise.all([
    work.objectStore('cards').get(id),
    work.objectStore('bases').get(id),
    work.objectStore('edits').getAll(editsOf(id)),
  ])
  let found: Doc | null = null
  try {
    const rest = steps.slice(base?.past, card?.past)
    for (let next = base?.block; isSound(next); next = applyPacked(found as Doc, (rest.shift() as Step).redo)) found = next as Doc
  } catch {
    // This step no longer applies.
  }
  return found
}

function movedTo(base: { readonly past: number; readonly block: Doc }, past: number, steps: readonly Step[]): Doc {
  if (past >= base.past) return steps.slice(base.past, past).reduce((block, { redo }) => applyPacked(block, redo), base.block)
  return steps.slice(past, base.past).reduceRight((block, { undo }) => applyPacked(block, undo), base.block)
}

/** Opens a block to change it: the next lease is ours, and a page with an earlier one can no longer write. */
export async function takeLease(db: Base, id: string): Promise<{ readonly cursor: WriteCursor; readonly history: History<Doc> } | null> {
  const work = db.transaction(OF_A_BLOCK, 'readwrite')
  const [card, base, history] = await Promise.all([work.objectStore('cards').get(id), work.objectStore('bases').get(id), historyIn(work, id)])
  if (card === undefined || base === undefined || history === null) return null
  const turn = card.turn + 1
  await Promise.all([work.objectStore('turns').put(Date.now(), [id, card.turn]), work.objectStore('cards').put({ ...card, turn }), work.done])
  return { cursor: { id, made: card.made, lease: turn, base: base.past }, history }
}

export const cards = async (db: Base): Promise<Card[]> => (await db.getAll('cards')).map(withDefaults)

/** Fills in what a damaged card lacks, so that it can still be listed. */
function withDefaults(card: Card): Card {
  const time = (value: unknown): number => (typeof value === 'number' ? value : 0)
  const { name, fabrics, made, changed, aside } = card as Partial<Card>
  return {
    ...card,
    name: typeof name === 'string' ? name : '',
    fabrics: Array.isArray(fabrics) ? fabrics : [],
    made: time(made),
    changed: time(changed),
    aside: typeof aside === 'number' ? aside : null,
  }
}

/** Remembers the block on the board, to start with it the next time. */
export async function rememberOpen(db: Base, id: string): Promise<void> {
  await db.put('desk', id, 'open')
}
export const openLast = (db: Base): Promise<string | undefined> => db.get('desk', 'open')

/** When this ends, what has been written so far is on the disk itself, not only in the system's buffers. */
export async function settle(db: Base): Promise<void> {
  const work = db.transaction('desk', 'readwrite', { durability: 'strict' })
  await Promise.all([work.store.put(String(Date.now()), 'settled'), work.done])
}

/** Deletes a block for good. A page that still shows it saves it under a new id at its next edit. */
export async function deleteBlock(db: Base, id: string): Promise<void> {
  const work = db.transaction(ALL, 'readwrite')
  const card = await work.objectStore('cards').get(id)
  const versions = await work.objectStore('versions').index('of').getAllKeys(id)
  await Promise.all([
    ...(card === undefined ? [] : [work.objectStore('turns').put(Date.now(), [id, card.turn])]),
    work.objectStore('cards').delete(id),
    work.objectStore('bases').delete(id),
    work.objectStore('edits').delete(editsOf(id)),
    ...versions.flatMap((version) => OF_VERSIONS.map((store) => work.objectStore(store).delete(version))),
    work.done,
  ])
}

export const versionsOf = (db: Base, id: string): Promise<Version[]> => db.getAllFromIndex('versions', 'of', id)
export const versionBlock = (db: Base, id: string): Promise<Doc | undefined> => db.get('versionBlocks', id)

/** Adds some versions and deletes others, in one transaction. */
export async function changeVersions(db: Base, come: readonly WholeVersion[], go: readonly string[]): Promise<void> {
  const work = db.transaction(OF_VERSIONS, 'readwrite', { durability: 'strict' })
  await commitAll(work, (send) => {
    for (const version of come) putVersion(work, version, send)
    for (const id of go) for (const store of OF_VERSIONS) send(work.objectStore(store).delete(id))
  })
}

type VersionStores = Pick<IDBPTransaction<Schema, typeof OF_VERSIONS, 'readwrite'>, 'objectStore'>

function putVersion(work: unknown, { block, ...version }: WholeVersion, send: (request: Promise<unknown>) => void): void {
  send((work as VersionStores).objectStore('versions').put(version))
  send((work as VersionStores).objectStore('versionBlocks').put(block, version.id))
}

/** Adds complete blocks from a file, under ids that are free: all of them or none. */
export async function importBlocks(db: Base, filed: readonly FiledBlock[]): Promise<void> {
  const work = db.transaction(ALL, 'readwrite', { durability: 'strict' })
  await commitAll(work, (send) => {
    for (const { id, made, changed, block, versions } of filed) {
      send(work.objectStore('cards').add(cardOf({ id, made, lease: 1 }, block, 0, changed)))
      send(work.objectStore('bases').put({ past: 0, block }, id))
      send(work.objectStore('edits').delete(editsOf(id)))
      for (const version of versions)
        putVersion(work, { id: newId(), of: id, made: version.made, name: version.name, why: 'brought', block: version.block }, send)
    }
  })
}
