/**
 * Blocks that were put aside, and when they go for good.
 *
 * Days    an archived block stays for as many days on which the app was opened. They are counted here, one for each day of the clock that differs from the
 *         last, and never worked out from times: a clock that jumps a year ahead counts as one day.
 */
import { deleteBlock } from './database.ts'
import type { Base } from './schema.ts'

/** Days that an archived block stays. */
export const ARCHIVE_DAYS = 30

/** Counts today in, once; how many days the app was opened on, today with them. */
export async function countDay(db: Base, today = new Date().toDateString()): Promise<number> {
  const work = db.transaction('desk', 'readwrite')
  const [count = 0, last] = daysIn(await work.store.get('days'))
  const days = last === today ? count : count + 1
  if (last !== today) await work.store.put(JSON.stringify([days, today]), 'days')
  await work.done
  return days
}

const daysOpened = async (db: Base): Promise<number> => daysIn(await db.get('desk', 'days'))[0] ?? 0

function daysIn(text: string | undefined): [count?: number, last?: string] {
  try {
    const value: unknown = JSON.parse(text ?? '[]')
    return Array.isArray(value) && Number.isInteger(value[0]) ? (value as [number, string]) : []
  } catch {
    return []
  }
}

/** Takes a block out of the archive (null), or puts it there at a time. */
export async function setArchived(db: Base, id: string, aside: number | null): Promise<void> {
  const asideDay = aside === null ? null : await daysOpened(db)
  const work = db.transaction('cards', 'readwrite')
  const card = await work.store.get(id)
  if (card !== undefined) await work.store.put({ ...card, aside, asideDay })
  await work.done
}

/** Deletes what has been in the archive for longer than it stays. What came there before days were counted begins to count today. */
export async function emptyArchive(db: Base, today: number): Promise<void> {
  for (const { id, aside, asideDay } of await db.getAll('cards')) {
    if (typeof aside !== 'number') continue
    if (typeof asideDay !== 'number') await setArchived(db, id, aside)
    else if (today - asideDay > ARCHIVE_DAYS) await deleteBlock(db, id)
  }
}
