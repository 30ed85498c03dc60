/**
 * Upgrades the browser's database from any version it has had.
 *
 * In      the database as it is being opened, and the version it was left at (0: it is new).
 * Out     the stores of today, with the maker's blocks in them. A change of the database is one more step here.
 */
import type { DBSchema, IDBPDatabase } from 'idb'
import type { Block } from '../../geometry/index.ts'
import { type LooseStep, packStep } from '../document/history.ts'
import { type Base, cardOf, newId } from './schema.ts'

/** What version 1 of the database held: one block, and its steps by their place. */
interface SchemaOne extends DBSchema {
  now: { key: string; value: { block: Block; past: number } }
  steps: { key: number; value: LooseStep }
}

/**
 * Called by the browser when the database is older than the app, or new. `work`: the transaction of the upgrade.
 *
 * From 2 to 3 nothing moves: quilts lie in the same stores as blocks. But a page that knows only blocks must not open a database with quilts, and would take
 * them for damaged blocks; the number keeps it out.
 */
export async function upgradeDatabase(db: Base, from: number, work: unknown): Promise<void> {
  if (from >= 2) return
  for (const store of ['cards', 'bases', 'edits', 'turns', 'versionBlocks', 'desk'] as const) {
    if (store === 'cards') db.createObjectStore(store, { keyPath: 'id' })
    else db.createObjectStore(store)
  }
  db.createObjectStore('versions', { keyPath: 'id' }).createIndex('of', 'of')
  if (from === 1) await upgradeFromOne(db as unknown as IDBPDatabase<SchemaOne>, work as unknown as Parameters<typeof upgradeFromOne>[1])
}

type Work = {
  objectStore<S extends 'now' | 'steps'>(
    name: S,
  ): { get(key: string): Promise<SchemaOne['now']['value'] | undefined>; getAll(): Promise<LooseStep[]> }
}

/** The one block of version 1 becomes the first of many, with its history. */
async function upgradeFromOne(db: IDBPDatabase<SchemaOne>, work: Work): Promise<void> {
  const present = await work.objectStore('now').get('present')
  const steps = await work.objectStore('steps').getAll()
  if (present !== undefined) {
    const id = newId()
    const stores = work as unknown as { objectStore(name: string): { put(value: unknown, key?: unknown): Promise<unknown> } }
    const card = cardOf({ id, made: Date.now(), lease: 1 }, present.block, present.past, Date.now())
    await stores.objectStore('cards').put(card)
    await stores.objectStore('bases').put(present, id)
    await Promise.all(steps.map((step, place) => stores.objectStore('edits').put(packStep(step), [id, place])))
    await stores.objectStore('desk').put(id, 'open')
  }
  db.deleteObjectStore('now')
  db.deleteObjectStore('steps')
}
