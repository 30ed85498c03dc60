/**
 * Which of the maker's blocks each block of a quilt was taken from. Only this browser remembers it; a quilt's file holds whole blocks.
 *
 * In      the ids of a quilt, of one of its blocks, and of the library block it came from, with the time that block was last changed.
 * Out     the same again. A quilt that is deleted leaves a short record behind, which does no harm.
 */
import { database } from './openBlock.ts'

interface Origin {
  /** The id of the library block. */
  readonly card: string
  /** When that block was last changed, as far as the maker has been asked about it. */
  readonly seen: number
}

const keyOf = (quilt: string): string => `origins ${quilt}`

/** Where a quilt's blocks came from, by their ids in the quilt. */
export async function originsOf(quilt: string): Promise<Readonly<Record<string, Origin>>> {
  try {
    const value: unknown = JSON.parse((await database().get('desk', keyOf(quilt))) ?? '{}')
    return typeof value === 'object' && value !== null ? (value as Record<string, Origin>) : {}
  } catch {
    return {}
  }
}

/** Remembers where a block of a quilt came from. On a full disk it is forgotten, and nobody is asked about that block. */
export async function rememberOrigin(quilt: string, block: string, origin: Origin): Promise<void> {
  const known = await originsOf(quilt)
  await database()
    .put('desk', JSON.stringify({ ...known, [block]: origin }), keyOf(quilt))
    .catch(() => undefined)
}
