/**
 * Archived blocks, and when they are deleted for good.
 *
 * Days    an archived block stays for a number of days on which the app was opened. They are counted here, one for each calendar day that differs from the
 *         last, and never computed from times: a clock that jumps a year ahead counts as one day.
 */
import { deleteBlock } from './database.ts'
import type { Base } from './schema.ts'

/** Days that an archived block stays. */
export const ARCHIVE_DAYS = 30

/** Counts today, once. Returns how many days the app was opened on, including today. */
export async function countDay(db: Base, today = new Date().toDateString()): Promise<number> {
  const work = db.transaction('desk', 'readwrite')
  const [count = 0, last] = daysIn(await work.store.get('days'))
  const days = last === today ? count : count + 1
  await Promise.all([last === today ? null : work.store.put(JSON.stringify([days, today]), 'days'), work.done])
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

/** Archives a block at a time, or restores it (null). In the database the time is called `aside`. */
export async function setArchived(db: Base, id: string, aside: number | null): Promise<void> {
  const asideDay = aside === null ? null : await daysOpened(db)
  const work = db.transaction('cards', 'readwrite')
  const card = await work.store.get(id)
  if (card !== undefined) await work.store.put({ ...card, aside, asideDay })
  await work.done
}

/** Deletes blocks that have been in the archive too long. For blocks archived before days were counted, the count starts today. */
export async function emptyArchive(db: Base, today: number): Promise<void> {
  for (const { id, aside, asideDay } of await db.getAll('cards')) {
    if (typeof aside !== 'number') continue
    if (typeof asideDay !== 'number') await setArchived(db, id, aside)
    else if (today - asideDay > ARCHIVE_DAYS) await deleteBlock(db, id)
  }
}
