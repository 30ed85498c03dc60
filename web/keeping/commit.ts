/**
 * Commits a transaction explicitly, where the browser does that correctly.
 *
 * A page may be closed before it hears that a write succeeded, so it is best to call `commit` right after the last request. But some browsers then ignore a
 * request that failed, unless it was the last, and keep the rest (Firefox 153): half an edit on a full disk, or another tab's work overwritten. So this is
 * tested once. If the test fails, transactions are left to commit by themselves once all their requests have been answered, completely or not at all; only
 * what is written while the page is being closed is committed explicitly, because otherwise it would certainly be lost. `commit` only works in the task that
 * makes the requests, so earlier transactions cannot be helped.
 */
import type { Base } from './schema.ts'

let explicitCommitWorks = false
let leaving = false

/** Tests a transaction that is committed explicitly and has to be refused. It changes nothing either way. */
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
    explicitCommitWorks = await end
  } catch {
    // The database was closed meanwhile, so the test says nothing.
  }
}

/** Call this as soon as all requests of a transaction are made, in the same task. */
export function sendOff(work: { readonly commit: () => void }): void {
  if (explicitCommitWorks || leaving) work.commit()
}

// Tests of the database run without a page.
globalThis.addEventListener?.('pagehide', () => {
  leaving = true
})
globalThis.addEventListener?.('pageshow', () => {
  leaving = false
})
