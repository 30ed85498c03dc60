/** What the browser's database holds: a card for each block, its base, its steps, its versions. */
import type { DBSchema, IDBPDatabase } from 'idb'
import type { Block } from '../../geometry/index.ts'
import type { Step } from '../document/history.ts'

export interface Card {
  readonly id: string
  readonly name: string
  /** Names of its fabrics, to search by. */
  readonly fabrics: readonly string[]
  /** Times in milliseconds. */
  readonly made: number
  readonly changed: number
  /** When it was put aside; null while it is among the others. */
  readonly aside: number | null
  /** Days on which the app had been opened when it was put aside; missing where that was before they were counted. */
  readonly asideDay?: number | null
  /** Steps behind the present. */
  readonly past: number
  readonly turn: number
}

export interface Version {
  readonly id: string
  /** The block it is a version of. */
  readonly of: string
  readonly made: number
  /** The maker's name for it; null where it was kept by itself. Named ones stay until they are taken away by hand. */
  readonly name: string | null
  readonly why: VersionWhy
}
/** A version and what it holds, which is kept apart so that a list of versions costs little. */
export type WholeVersion = Version & { readonly block: Block }
export type VersionWhy = 'asked' | 'rest' | 'leaving' | 'going back' | 'brought'

export interface Schema extends DBSchema {
  cards: { key: string; value: Card }
  bases: { key: string; value: { readonly past: number; readonly block: Block } }
  edits: { key: [block: string, place: number]; value: Step }
  turns: { key: [block: string, turn: number]; value: number }
  versions: { key: string; value: Version; indexes: { of: string } }
  versionBlocks: { key: string; value: Block }
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
  { name, fabrics }: Block,
  past: number,
  changed: number,
): Card => ({
  id,
  name,
  fabrics: fabrics.map((fabric) => fabric.name),
  made,
  changed,
  aside: null,
  past,
  turn: lease,
})
