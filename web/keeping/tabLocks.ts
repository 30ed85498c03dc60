/**
 * Locks, so that only one tab at a time can change a block.
 *
 * Locks   the browser gives the lock of a block to one tab, and takes it back when the tab ends, however it ends. A tab that waits gets the lock when the
 *         other one releases it, or at once if the maker takes the block over.
 * Channel tells the other tabs what this one has saved, so that they can show it.
 * In a browser with neither, the leases of the database still keep two tabs apart.
 */
interface BlockLock {
  /** Releases the previous block and locks this one. Returns whether it is ours now; if not, `onGained` is called once it is. */
  readonly hold: (id: string) => Promise<boolean>
  /** Takes the lock from the other tab. */
  readonly steal: (id: string) => Promise<void>
}

interface LockEvents {
  readonly onGained: (id: string) => void
  readonly onLost: (id: string) => void
}

const nameOf = (id: string): string => `nestwright block ${id}`

/** A page that is being closed may hold its lock a moment longer, so the next page tries again. Pauses in milliseconds. */
const TRIES = 4
const PAUSE = 60

export function blockLock({ onGained, onLost }: LockEvents): BlockLock {
  const locks = (navigator as { locks?: LockManager }).locks
  let release = (): void => {}

  /** The browser keeps the lock until this promise resolves. */
  const untilReleased = (): Promise<void> =>
    new Promise((resolve) => {
      release = resolve
    })

  const requestLock = (id: string, options: LockOptions): Promise<boolean> =>
    new Promise((answer) => {
      let ours = false
      const request = (locks as LockManager).request(nameOf(id), options, (lock) => {
        ours = lock !== null
        answer(ours)
        return ours ? untilReleased() : undefined
      })
      request.catch(() => {
        if (ours) taken(id)
        else answer(false)
      })
    })

  const wait = (id: string): void => {
    const stop = new AbortController()
    release = () => stop.abort()
    void requestLock(id, { signal: stop.signal }).then((ours) => ours && onGained(id))
  }

  /** Another tab has taken the lock, so we wait until that tab releases it. */
  const taken = (id: string): void => {
    wait(id)
    onLost(id)
  }

  return {
    hold: async (id) => {
      release()
      if (locks === undefined) return true
      for (let turn = 0; turn < TRIES; turn++) {
        if (turn > 0) await new Promise((resolve) => setTimeout(resolve, PAUSE))
        if (await requestLock(id, { ifAvailable: true })) return true
      }
      wait(id)
      return false
    },
    steal: async (id) => {
      release()
      if (locks !== undefined) await requestLock(id, { steal: true })
    },
  }
}

/** Whether any tab holds the lock of a block, this one included. */
export async function isLocked(id: string): Promise<boolean> {
  const locks = (navigator as { locks?: LockManager }).locks
  const held = (await locks?.query())?.held ?? []
  return held.some(({ name }) => name === nameOf(id))
}

export interface TabMessage {
  /** `kept`: a block was saved; `taken`: a tab has started to change it; `list`: blocks were added, deleted or archived. */
  readonly type: 'kept' | 'taken' | 'list'
  readonly id: string
}

export function openChannel(onMessage: (word: TabMessage) => void): (word: TabMessage) => void {
  if (typeof BroadcastChannel === 'undefined') return () => {}
  const channel = new BroadcastChannel('nestwright')
  channel.onmessage = ({ data }: MessageEvent<TabMessage>) => onMessage(data)
  return (word) => channel.postMessage(word)
}
