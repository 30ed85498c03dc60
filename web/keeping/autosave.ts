/**
 * Keeps every change of the block on the board, from the moment it is made.
 *
 * In      where the page stands with a block, what of it is surely kept, and each new history.
 * Out     news: all is kept, something waits, it failed, or another page has had the turn after ours.
 * Kept    a change is sent off before anything else is done, without waiting for the one ahead. What failed is tried again, more and more
 *         seldom, and always together with whatever came after it: nothing is passed over.
 */
import type { History } from '../document/history.ts'
import { baseFails, isOvertaken, type WriteCursor, write } from './database.ts'
import type { Base } from './schema.ts'

export type SaveEvent =
  | { readonly sort: 'saving' }
  | { readonly sort: 'saved'; readonly id: string }
  | { readonly sort: 'failed'; readonly error: unknown }
  | { readonly sort: 'overtaken'; readonly history: History }

export interface Autosaver {
  /** From now on the changes are those of another block; `kept` is what of it is kept (null: nothing yet). */
  readonly take: (cursor: WriteCursor, kept: History | null) => void
  /** Keeps nothing any more: another page has the block in hand. */
  readonly rest: () => void
  readonly keep: (history: History) => void
  /** When all that was sent has come to its end, whether everything is kept. */
  readonly settled: () => Promise<boolean>
}

/** Milliseconds until a failed write is tried again, doubled each time. */
const FIRST_PAUSE = 1000
const LONGEST_PAUSE = 30_000

export function autosaver(base: () => Base, tell: (news: SaveEvent) => void): Autosaver {
  let cursor: WriteCursor | null = null
  let kept: History | null = null
  let wanted: History | null = null
  let laying = 0
  let pause = FIRST_PAUSE
  let again: ReturnType<typeof setTimeout> | undefined
  const flying = new Set<Promise<void>>()

  const begin = (next: WriteCursor | null, from: History | null): void => {
    clearTimeout(again)
    cursor = next
    kept = from
    wanted = from
    pause = FIRST_PAUSE
  }

  const send = (): void => {
    clearTimeout(again)
    if (cursor === null || wanted === null) return
    const [to, sent] = [cursor, wanted]
    // While a base is on its way, what follows brings its own: it may have left the way that leads there.
    const lay = laying > 0 || baseFails(to, kept, sent)
    laying += lay ? 1 : 0
    const flight: Promise<void> = writeNow(to, sent, lay)
      .then(
        (next) => landed(next, sent),
        (error) => refused(error, to),
      )
      .finally(() => {
        laying -= lay ? 1 : 0
        flying.delete(flight)
      })
    flying.add(flight)
  }

  const writeNow = async (to: WriteCursor, sent: History, lay: boolean): Promise<WriteCursor> => write(base(), to, kept, sent, Date.now(), lay)
  const stillOurs = ({ id, turn }: WriteCursor): boolean => cursor?.id === id && cursor.turn === turn

  const landed = (next: WriteCursor, sent: History): void => {
    if (!stillOurs(next)) return
    cursor = next
    kept = sent
    pause = FIRST_PAUSE
    if (wanted === sent) tell({ sort: 'saved', id: next.id })
  }

  const refused = (error: unknown, to: WriteCursor): void => {
    if (!stillOurs(to) || wanted === null) return
    if (isOvertaken(error)) {
      const history = wanted
      begin(null, null)
      tell({ sort: 'overtaken', history })
      return
    }
    tell({ sort: 'failed', error })
    clearTimeout(again)
    again = setTimeout(send, pause)
    pause = Math.min(2 * pause, LONGEST_PAUSE)
  }

  return {
    take: begin,
    rest: () => begin(null, null),
    keep: (history) => {
      if (cursor === null) return
      wanted = history
      tell({ sort: 'saving' })
      send()
    },
    settled: async () => {
      while (flying.size > 0) await Promise.all(flying)
      return wanted === kept
    },
  }
}
