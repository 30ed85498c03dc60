/** What the browser's database holds: a card for each block and each quilt, its base, its steps, its versions. */
import type { DBSchema, IDBPDatabase } from 'idb'
import { type Doc, isQuilt } from '../document/document.ts'
import type { Step } from '../document/history.ts'

export interface Card {
  readonly id: string
  /** Missing for a block. */
  readonly type?: 'quilt'
  readonly name: string
  /** Names of its fabrics, to search by. */
  readonly fabrics: readonly string[]
  /** Times in milliseconds. */
  readonly made: number
  readonly changed: number
  /** When it was archived; null if it is not. */
  readonly aside: number | null
  /** On how many days the app had been opened when it was archived; missing if that was before days were counted. */
  readonly asideDay?: number | null
  /** How many steps can be undone. */
  readonly past: number
  readonly turn: number
}

export interface Version {
  readonly id: string
  /** The block it is a version of. */
  readonly of: string
  readonly made: number
  /** The maker's name for it; null if it was kept automatically. Named versions stay until the maker deletes them. */
  readonly name: string | null
  readonly why: VersionWhy
}
/** A version with its block, which is stored apart so that listing versions is cheap. */
export type WholeVersion = Version & { readonly block: Doc }
export type VersionWhy = 'asked' | 'rest' | 'leaving' | 'going back' | 'brought'

export interface Schema extends DBSchema {
  cards: { key: string; value: Card }
  bases: { key: string; value: { readonly past: number; readonly block: Doc } }
  edits: { key: [block: string, place: number]; value: Step }
  turns: { key: [block: string, turn: number]; value: number }
  versions: { key: string; value: Version; indexes: { of: string } }
  versionBlocks: { key: string; value: Doc }
  desk: { key: string; value: string }
}
export type Base = IDBPDatabase<Schema>

/** A new id for a block or a version. */
export function newId(): string {
  const random = crypto.getRandomValues(new Uint32Array(3))
  return [...random].map((part) => part.toString(36)).join('')
}

/** What a list of blocks shows of this one. */
export const cardOf = (
  { id, made, lease }: { readonly id: string; readonly made: number; readonly lease: number },
  doc: Doc,
  past: number,
  changed: number,
): Card => ({
  id,
  ...(isQuilt(doc) ? { type: 'quilt' } : {}),
  name: doc.name,
  fabrics: doc.fabrics.map((fabric) => fabric.name),
  made,
  changed,
  aside: null,
  past,
  turn: lease,
})
