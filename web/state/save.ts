/**
 * Saving is not a button: every edit goes to the browser's database as it is made.
 *
 * Kept    the present block with the number of steps behind it, and each step in a record of its own, all in one transaction: so an edit is kept
 *         whole or not at all, and a reload brings back the block with its undo history.
 */
import { type DBSchema, type IDBPDatabase, openDB } from 'idb'
import { type Block, readBlock, writeBlock } from '../../geometry/index.ts'
import type { History, Step } from './history.ts'
import { keepWith, look, now, replace, setSaved } from './store.ts'

interface Kept extends DBSchema {
  now: { key: string; value: { block: Block; past: number } }
  steps: { key: number; value: Step }
}

export type Keeping = IDBPDatabase<Kept>

export function openKeeping(name = 'nestwright'): Promise<Keeping> {
  return openDB<Kept>(name, 1, {
    upgrade(db) {
      db.createObjectStore('now')
      db.createObjectStore('steps')
    },
  })
}

/** Write what differs between two histories. */
export async function keepHistory(db: Keeping, before: History | null, after: History): Promise<void> {
  const work = db.transaction(['now', 'steps'], 'readwrite')
  const steps = [...after.past, ...after.future]
  const known = before === null ? [] : [...before.past, ...before.future]
  const writes: Promise<unknown>[] = [work.objectStore('now').put({ block: after.block, past: after.past.length }, 'present')]
  steps.forEach((step, place) => {
    if (known[place] !== step) writes.push(work.objectStore('steps').put(step, place))
  })
  if (known.length > steps.length) writes.push(work.objectStore('steps').delete(IDBKeyRange.lowerBound(steps.length)))
  await Promise.all([...writes, work.done])
}

export async function keptHistory(db: Keeping): Promise<History | null> {
  const work = db.transaction(['now', 'steps'])
  const present = await work.objectStore('now').get('present')
  const steps = await work.objectStore('steps').getAll()
  await work.done
  if (present === undefined) return null
  return { block: present.block, past: steps.slice(0, present.past), future: steps.slice(present.past) }
}

/** Bring back what was kept, and keep every change from now on. */
export async function begin(): Promise<void> {
  let db: Keeping
  let last: History | null = null
  try {
    db = await openKeeping()
    last = await keptHistory(db)
  } catch {
    setSaved('failed')
    look({ notice: 'This browser keeps nothing here (a private window, or a full disk); save the block as a file.' })
    return
  }
  let waiting: Promise<void> = Promise.resolve()
  const keeper = (history: History): void => {
    setSaved('saving')
    const before = last
    last = history
    waiting = waiting
      .then(() => keepHistory(db, before, history))
      .then(() => {
        if (last === history) setSaved('saved')
      })
      .catch(() => {
        // The next change writes everything anew.
        last = null
        setSaved('failed')
        look({ notice: 'The last change could not be kept in this browser; save the block as a file.' })
      })
  }
  keepWith(keeper, last)
  if (last === null) keeper(now().history)
  void navigator.storage?.persist?.()
}

/** Open a block file; a broken one gives one sentence and changes nothing. */
export async function openFile(file: File): Promise<void> {
  let text: string
  try {
    text = await file.text()
  } catch {
    look({ notice: `${file.name} could not be read; choose another file.` })
    return
  }
  const read = readBlock(text)
  if (!read.ok) {
    look({ notice: `${file.name} was not opened. ${read.place}: ${read.message}.` })
    return
  }
  replace(read.value, `open ${file.name}`)
  look({ notice: `${read.value.name} is open.` })
}

export function saveFile(block: Block): void {
  download(`${fileName(block.name)}.json`, writeBlock(block), 'application/json')
}

export const fileName = (name: string): string =>
  name
    .trim()
    .replace(/[^\p{L}\p{N}]+/gu, '-')
    .replace(/^-|-$/g, '')
    .toLowerCase() || 'block'

export function download(name: string, text: string, type: string): void {
  const address = URL.createObjectURL(new Blob([text], { type }))
  const link = document.createElement('a')
  link.href = address
  link.download = name
  link.click()
  setTimeout(() => URL.revokeObjectURL(address), 10_000)
}
