import 'fake-indexeddb/auto'
import { expect, it, vi } from 'vitest'
import { openBase } from '../../../web/keeping/database.ts'
import type { Base } from '../../../web/keeping/schema.ts'

/** A fresh page: what it hears of its own going, and what it sends off. */
async function page() {
  const heard = new EventTarget()
  vi.stubGlobal('addEventListener', heard.addEventListener.bind(heard))
  vi.resetModules()
  return { ...(await import('../../../web/keeping/commit.ts')), leave: () => heard.dispatchEvent(new Event('pagehide')) }
}

const work = () => ({ commit: vi.fn() })

/** A browser that, told to commit, keeps the rest of a transaction of which a request failed. */
function careless(): Base {
  const trial = new EventTarget()
  const failed = Promise.reject(new DOMException('', 'ConstraintError'))
  const store = { put: async () => '', add: () => failed, delete: async () => undefined }
  return {
    transaction: () => Object.assign(trial, { store, done: failed, commit: () => trial.dispatchEvent(new Event('complete')) }),
  } as unknown as Base
}

it('a transaction is told to commit where it is then kept whole or not at all', async () => {
  const { tryCommit, sendOff } = await page()
  const db = await openBase('told to commit')
  await tryCommit(db)
  const sent = work()
  sendOff(sent)
  expect(sent.commit).toHaveBeenCalledOnce()
  expect(await db.getAllKeys('desk')).toEqual([])
  db.close()
})

it('elsewhere it ends by itself, but for what is sent off when the page goes', async () => {
  const { tryCommit, sendOff, leave } = await page()
  await tryCommit(careless())
  const [early, late] = [work(), work()]
  sendOff(early)
  leave()
  sendOff(late)
  expect(early.commit).not.toHaveBeenCalled()
  expect(late.commit).toHaveBeenCalledOnce()
})

it('what was sent off before the page goes takes no word any more, so none is given', async () => {
  const { tryCommit, sendOff, leave } = await page()
  await tryCommit(careless())
  const db = await openBase('on its way')
  const sent = db.transaction('desk', 'readwrite')
  const kept = sent.store.put('there', 'word')
  sendOff(sent)
  await kept.then(() => new Promise((next) => setTimeout(next)))
  expect(() => sent.commit(), 'Indexed Database API 3.0, IDBTransaction.commit: InvalidStateError where it is not active').toThrow()
  leave()
  await sent.done
  expect(await db.get('desk', 'word')).toBe('there')
  db.close()
})
