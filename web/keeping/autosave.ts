/**
 * Saves every change of the block on the board as soon as it is made.
 *
 * In      the page's lease on a block, what of the block is certainly saved, and each new history.
 * Out     events: everything is saved, something is being saved, saving failed, or another page has taken the lease.
 * How     each change is sent off at once, without waiting for the one before it. A failed write is tried again, at longer and longer intervals, and
 *         always together with everything that came after it: nothing is skipped.
 */
import type { Doc } from '../document/document.ts'
import type { History } from '../document/history.ts'
import { needsNewBase, isOvertaken, type WriteCursor, write } from './database.ts'
import type { Base } from './schema.ts'

export type SaveEvent =
  | { readonly type: 'saving' }
  | { readonly type: 'saved'; readonly id: string }
  | { readonly type: 'failed'; readonly error: unknown }
  | { readonly type: 'overtaken'; readonly history: History<Doc> }

export interface Autosaver {
  /** From now on the changes belong to another block; `kept` is what is saved of it (null: nothing yet). */
  readonly take: (cursor: WriteCursor, kept: History<Doc> | null) => void
  /** Saves nothing any more: another page has the lease. */
  readonly rest: () => void
  readonly keep: (history: History<Doc>) => void
  /** Waits until every write has ended; whether everything is saved. */
  readonly settled: () => Promise<boolean>
}

/** Milliseconds until a failed write is tried again, doubled each time. */
const FIRST_PAUSE = 1000
const LONGEST_PAUSE = 30_000

/**
 * `base` gives the open database, `report` hears of every event.
 *
 * It is long because all of it turns on one state: what is saved, what is to be saved, and the writes under way.
 */
export function autosaver(base: () => Base, report: (news: SaveEvent) => void): Autosaver {
  let cursor: WriteCursor | null = null
  let kept: History<Doc> | null = null
  let wanted: History<Doc> | null = null
  let laying = 0
  let pause = FIRST_PAUSE
  let again: ReturnType<typeof setTimeout> | undefined
  const flying = new Set<Promise<void>>()

  const begin = (next: WriteCursor | null, from: History<Doc> | null): void => {
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
    // While a base is being written, each later write brings its own: it may no longer lead on from the one before.
    const lay = laying > 0 || needsNewBase(to, kept, sent)
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

  const writeNow = async (to: WriteCursor, sent: History<Doc>, lay: boolean): Promise<WriteCursor> => write(base(), to, kept, sent, Date.now(), lay)
  const stillOurs = ({ id, lease }: WriteCursor): boolean => cursor?.id === id && cursor.lease === lease

  const landed = (next: WriteCursor, sent: History<Doc>): void => {
    if (!stillOurs(next)) return
    cursor = next
    kept = sent
    pause = FIRST_PAUSE
    if (wanted === sent) report({ type: 'saved', id: next.id })
  }

  const refused = (error: unknown, to: WriteCursor): void => {
    if (!stillOurs(to) || wanted === null) return
    if (isOvertaken(error)) {
      const history = wanted
      begin(null, null)
      report({ type: 'overtaken', history })
      return
    }
    report({ type: 'failed', error })
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
      report({ type: 'saving' })
      send()
    },
    settled: async () => {
      while (flying.size > 0) await Promise.all(flying)
      return wanted === kept
    },
  }
}
