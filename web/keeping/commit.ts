/**
 * Sending a transaction off whole.
 *
 * A page may be gone before it hears that all went well, so a transaction best carries the word to commit with it. But some browsers, so told, pass over a
 * request that failed, unless it was the last, and keep the rest (Firefox 153): half an edit on a full disk, or another tab's work overwritten. So it is tried
 * once whether the word may be given. Where it may not, a transaction ends by itself as soon as the page has heard of all its requests, whole or not at
 * all; only what is sent off while the page goes is told to commit, for else it would surely be lost. What was sent off before that cannot be told any more:
 * a transaction takes the word only in the task that fills it.
 */
import type { Base } from './schema.ts'

let refusesWhole = false
let leaving = false

/** Tries a transaction that is told to commit and must be refused: it changes nothing either way. */
export async function tryCommit(db: Base): Promise<void> {
  try {
    const work = db.transaction('desk', 'readwrite', { durability: 'relaxed' })
    const end = new Promise<boolean>((resolve) => {
      work.addEventListener('abort', () => resolve(true))
      work.addEventListener('complete', () => resolve(false))
    })
    const sent = [work.store.put('', 'trial'), work.store.add('', 'trial'), work.store.delete('trial')]
    work.commit()
    await Promise.allSettled([work.done, ...sent])
    refusesWhole = await end
  } catch {
    // Closed meanwhile: nothing is known.
  }
}

/** To be called as soon as all requests of a transaction are made, in the same task. */
export function sendOff(work: { readonly commit: () => void }): void {
  if (refusesWhole || leaving) work.commit()
}

// There is no page in the tests of the database alone.
globalThis.addEventListener?.('pagehide', () => {
  leaving = true
})
globalThis.addEventListener?.('pageshow', () => {
  leaving = false
})
