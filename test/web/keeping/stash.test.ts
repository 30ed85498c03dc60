/** Two tabs share one stash: neither overwrites what the other has put there, and each sees it. */
import { afterEach, beforeEach, describe, expect, it, vi } from 'vitest'

type Stash = typeof import('../../../web/keeping/stash.ts')
type Heard = (event: { readonly key: string | null }) => void

const STRIP = { name: 'Moss', unit: 'in', size: [2.5, 42], onHand: 1 } as const
const CHARM = { name: 'Plum', unit: 'in', size: [5, 5], onHand: 4 } as const

/** The browser's storage: what one tab writes, the others are told. */
class Storage {
  readonly items = new Map<string, string>()
  readonly tabs: Heard[] = []
  writer = -1
  getItem(key: string): string | null {
    return this.items.get(key) ?? null
  }
  setItem(key: string, text: string): void {
    this.items.set(key, text)
    if (this.told) for (const heard of this.tabs.filter((_, tab) => tab !== this.writer)) heard({ key })
  }
  /** Whether tabs hear of each other at once. */
  told = true
}

let storage: Storage

/** A page of its own, with a copy of the module. */
async function openTab(): Promise<{ readonly act: (what: (stash: Stash) => void) => void; readonly pieces: () => string[] }> {
  const tab = storage.tabs.length
  vi.stubGlobal('addEventListener', (_: string, heard: Heard) => storage.tabs.push(heard))
  vi.resetModules()
  const stash = await import('../../../web/keeping/stash.ts')
  return {
    act: (what) => {
      storage.writer = tab
      what(stash)
    },
    pieces: () => stash.useStash.getState().map(({ id, name, onHand }) => `${id} ${name} ${onHand}`),
  }
}

beforeEach(() => {
  storage = new Storage()
  vi.stubGlobal('localStorage', storage)
})
afterEach(() => {
  vi.unstubAllGlobals()
})

describe('a stash in two tabs', () => {
  it('holds what either has put there, and both see it', async () => {
    const [one, other] = [await openTab(), await openTab()]
    one.act((stash) => stash.addToStash(STRIP))
    other.act((stash) => stash.addToStash(CHARM))
    expect(one.pieces()).toEqual(['s1 Moss 1', 's2 Plum 4'])
    expect(other.pieces()).toEqual(one.pieces())
  })

  it('loses nothing where a tab has not heard of the other yet', async () => {
    const [one, other] = [await openTab(), await openTab()]
    storage.told = false
    one.act((stash) => stash.addToStash(STRIP))
    other.act((stash) => stash.addToStash(CHARM))
    one.act((stash) => stash.addToStash(STRIP))
    expect(one.pieces()).toEqual(['s1 Moss 2', 's2 Plum 4'])
    other.act((stash) => stash.removeFromStash('s1'))
    one.act((stash) => stash.setOnHand('s1', 9))
    expect(one.pieces()).toEqual(['s2 Plum 4'])
    expect((await openTab()).pieces()).toEqual(['s2 Plum 4'])
  })

  it('is empty in every tab once the browser has cleared what it keeps', async () => {
    const [one, other] = [await openTab(), await openTab()]
    one.act((stash) => stash.addToStash(STRIP))
    storage.items.clear()
    for (const heard of storage.tabs) heard({ key: null })
    expect([one.pieces(), other.pieces()]).toEqual([[], []])
  })
})

describe('a stash that cannot be stored', () => {
  it('is there until the page is left', async () => {
    vi.stubGlobal('localStorage', {
      getItem: () => {
        throw new DOMException('no', 'SecurityError')
      },
      setItem: () => {
        throw new DOMException('no', 'SecurityError')
      },
    })
    const one = await openTab()
    one.act((stash) => stash.addToStash(STRIP))
    one.act((stash) => stash.addToStash(CHARM))
    expect(one.pieces()).toEqual(['s1 Moss 1', 's2 Plum 4'])
  })

  it('counts with what could not be written any more: the disk is full', async () => {
    const one = await openTab()
    one.act((stash) => stash.addToStash(STRIP))
    storage.setItem = () => {
      throw new DOMException('full', 'QuotaExceededError')
    }
    one.act((stash) => stash.addToStash(CHARM))
    expect(one.pieces()).toEqual(['s1 Moss 1', 's2 Plum 4'])
    one.act((stash) => stash.addToStash(CHARM))
    expect(one.pieces()).toEqual(['s1 Moss 1', 's2 Plum 8'])
  })
})
