/**
 * Commits a transaction explicitly, where the browser does that correctly.
 *
 * A page may be closed before it hears that a write succeeded, so it is best to call `commit` right after the last request. But some browsers then ignore a
 * request that failed, unless it was the last, and keep the rest (Firefox 153): half an edit on a full disk, or another tab's work overwritten. So this is
 * tried once. Where it goes wrong, a transaction is left to commit by itself once the page has heard of all its requests, completely or not at all; only
 * what is written while the page is being closed is committed explicitly, because otherwise it would certainly be lost. `commit` only works in the task that
 * makes the requests, so earlier transactions cannot be helped.
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
