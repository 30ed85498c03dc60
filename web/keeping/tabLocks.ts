/**
 * Several tabs, of which one at a time may change a block.
 *
 * Locks   the browser gives the lock of a block to one tab, and takes it back when the tab ends, however it ends. A tab that waits gets the lock when the
 *         other one releases it, or at once where the maker asks for it.
 * Channel tells the other tabs what this one has saved, so that they can show it.
 * Where a browser has neither, the leases of the database still keep two tabs apart.
 */
interface BlockLock {
  /** Whether the block is ours now; where not, `got` is called once it is. Lets go of the block before. */
  readonly hold: (id: string) => Promise<boolean>
  /** Takes it out of the other tab's hand. */
  readonly seize: (id: string) => Promise<void>
}

interface Calls {
  readonly got: (id: string) => void
  readonly lost: (id: string) => void
}

const nameOf = (id: string): string => `nestwright block ${id}`

/** A page that is just being left may hold its lock a moment longer than its successor likes. */
const TRIES = 4
const PAUSE = 60

export function blockLock({ got, lost }: Calls): BlockLock {
  const locks = (navigator as { locks?: LockManager }).locks
  let letGo = (): void => {}

  /** Holds what was granted until it is let go of. */
  const held = (): Promise<void> =>
    new Promise((resolve) => {
      letGo = resolve
    })

  const ask = (id: string, options: LockOptions): Promise<boolean> =>
    new Promise((answer) => {
      let ours = false
      const request = (locks as LockManager).request(nameOf(id), options, (lock) => {
        ours = lock !== null
        answer(ours)
        return ours ? held() : undefined
      })
      request.catch(() => {
        if (ours) taken(id)
        else answer(false)
      })
    })

  const wait = (id: string): void => {
    const stop = new AbortController()
    letGo = () => stop.abort()
    void ask(id, { signal: stop.signal }).then((ours) => ours && got(id))
  }

  /** Another tab took it: we are the next when that one lets go. */
  const taken = (id: string): void => {
    wait(id)
    lost(id)
  }

  return {
    hold: async (id) => {
      letGo()
      if (locks === undefined) return true
      for (let turn = 0; turn < TRIES; turn++) {
        if (turn > 0) await new Promise((resolve) => setTimeout(resolve, PAUSE))
        if (await ask(id, { ifAvailable: true })) return true
      }
      wait(id)
      return false
    },
    seize: async (id) => {
      letGo()
      if (locks !== undefined) await ask(id, { steal: true })
    },
  }
}

/** Whether any tab has a block in hand, this one included. */
export async function isLocked(id: string): Promise<boolean> {
  const locks = (navigator as { locks?: LockManager }).locks
  const held = (await locks?.query())?.held ?? []
  return held.some(({ name }) => name === nameOf(id))
}

export interface TabMessage {
  /** `kept`: a block was changed; `taken`: a tab has begun to change it; `list`: blocks came, went or were put aside. */
  readonly type: 'kept' | 'taken' | 'list'
  readonly id: string
}

export function openChannel(hear: (word: TabMessage) => void): (word: TabMessage) => void {
  if (typeof BroadcastChannel === 'undefined') return () => {}
  const channel = new BroadcastChannel('nestwright')
  channel.onmessage = ({ data }: MessageEvent<TabMessage>) => hear(data)
  return (word) => channel.postMessage(word)
}
