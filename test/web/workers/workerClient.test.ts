/** One door to a worker: a job at a time, the newest where asked, a reply for every request, and an end to it when nobody uses it. */
import { afterEach, beforeEach, describe, expect, it, vi } from 'vitest'
import { type Block, findings } from '../../../geometry/index.ts'
import { findingsWorker } from '../../../web/workers/clients.ts'
import type { WorkerMessage, WorkerRequest } from '../../../web/workers/messages.ts'
import { applyDifference, type ValueDifference, valueDifference } from '../../../web/workers/valueDifference.ts'
import { type ClientOptions, type Reply, workerClient } from '../../../web/workers/workerClient.ts'
import { blockOf, square } from '../../help.ts'

/** Answers when the test says so. */
class FakeWorker {
  static all: FakeWorker[] = []
  onmessage: ((event: { data: WorkerMessage }) => void) | null = null
  onerror: ((event: { preventDefault: () => void }) => void) | null = null
  ended = false
  posted: WorkerRequest[] = []

  constructor() {
    FakeWorker.all.push(this)
  }
  postMessage(request: WorkerRequest): void {
    this.posted.push(request)
  }
  terminate(): void {
    this.ended = true
  }
  answer(value: unknown): void {
    this.onmessage?.({ data: { type: 'answer', value } })
  }
}

const worker = (place: number): FakeWorker => FakeWorker.all[place] as FakeWorker
const clientOf = (options?: ClientOptions) => workerClient<{ double: (n: number) => number }>(() => new FakeWorker() as unknown as Worker, options)

beforeEach(() => {
  FakeWorker.all = []
  vi.useFakeTimers()
})
afterEach(() => {
  vi.useRealTimers()
  vi.unstubAllGlobals()
})

describe('a worker client', () => {
  it('starts its worker with the first request, and keeps it for the next', async () => {
    const client = clientOf()
    expect(FakeWorker.all).toEqual([])
    for (const n of [1, 2]) {
      const reply = client.request('double', n)
      worker(0).answer(2 * n)
      expect(await reply).toEqual({ type: 'answer', value: 2 * n })
    }
    expect(worker(0).posted).toEqual([
      { job: 'double', args: [1] },
      { job: 'double', args: [2] },
    ])
    expect(FakeWorker.all.length).toBe(1)
  })

  it('ends a job for a newer one, whose answer alone counts', async () => {
    const client = clientOf()
    const replies = [client.request('double', 1), client.request('double', 2)]
    expect(worker(0).ended).toBe(true)
    worker(0).answer(2)
    worker(1).answer(4)
    expect(await Promise.all(replies)).toEqual([{ type: 'dropped' }, { type: 'answer', value: 4 }])
  })

  it('waits for rest before a job begins, and passes over what was asked meanwhile', async () => {
    const client = clientOf({ rest: 100 })
    const replies = [1, 2, 3].map((n) => client.request('double', n))
    expect(FakeWorker.all).toEqual([])
    vi.advanceTimersByTime(100)
    worker(0).answer(6)
    expect((await Promise.all(replies)).map(({ type }) => type)).toEqual(['dropped', 'dropped', 'answer'])
    expect(worker(0).posted).toEqual([{ job: 'double', args: [3] }])
  })

  it('lets a job come to its end where asked, with the newest next', async () => {
    const client = clientOf({ newest: 'waits' })
    const replies = [1, 2, 3].map((n) => client.request('double', n))
    worker(0).answer(2)
    worker(0).answer(6)
    expect(await Promise.all(replies)).toEqual([{ type: 'answer', value: 2 }, { type: 'dropped' }, { type: 'answer', value: 6 }])
    expect(worker(0).ended).toBe(false)
  })

  it('says that a worker could not be loaded, and starts another for the next request', async () => {
    const client = clientOf()
    const first = client.request('double', 1)
    worker(0).onerror?.({ preventDefault: () => undefined })
    expect(await first).toEqual({ type: 'failed', reason: 'it could not be worked out beside the page' })
    expect(worker(0).ended).toBe(true)
    const second = client.request('double', 2)
    worker(1).answer(4)
    expect(await second).toEqual({ type: 'answer', value: 4 })
  })

  it('ends a job that takes longer than its limit, and none that keeps it', async () => {
    const client = clientOf({ limit: 2000 })
    const quick = client.request('double', 1)
    worker(0).answer(2)
    vi.advanceTimersByTime(5000)
    expect(await quick).toEqual({ type: 'answer', value: 2 })
    expect(worker(0).ended).toBe(false)
    const endless = client.request('double', 2)
    vi.advanceTimersByTime(2000)
    expect((await endless).type).toBe('failed')
    expect(worker(0).ended).toBe(true)
  })

  it('passes on how far a job is', async () => {
    const client = clientOf()
    const heard: unknown[] = []
    client.onProgress = (progress) => heard.push(progress)
    const reply = client.request('double', 1)
    worker(0).onmessage?.({ data: { type: 'progress', value: [1, 2] } })
    worker(0).answer(2)
    await reply
    expect(heard).toEqual([[1, 2]])
  })

  it('ends its worker when it is closed, drops what was asked, and can be used again', async () => {
    const client = clientOf({ newest: 'waits' })
    const replies = [client.request('double', 1), client.request('double', 2)]
    client.close()
    expect(worker(0).ended).toBe(true)
    expect(await Promise.all(replies)).toEqual([{ type: 'dropped' }, { type: 'dropped' }])
    const again = client.request('double', 3)
    worker(1).answer(6)
    expect(await again).toEqual({ type: 'answer', value: 6 })
  })

  it('begins nothing after it is closed while it waited for rest', () => {
    const client = clientOf({ rest: 100 })
    void client.request('double', 1)
    client.close()
    vi.advanceTimersByTime(1000)
    expect(FakeWorker.all).toEqual([])
  })

  it('is closed when the last of its users lets go', () => {
    const client = clientOf()
    const release = [client.retain(), client.retain()]
    void client.request('double', 1)
    release[0]?.()
    expect(worker(0).ended).toBe(false)
    release[1]?.()
    expect(worker(0).ended).toBe(true)
  })
})

describe('the findings of large blocks', () => {
  const plain = blockOf(1, 1, [square('u', [0, 0], [1, 1], 'a')])
  const named = (name: string): Block => ({ ...plain, name })

  /** Does what the worker of findings does, with what it was sent. */
  class Findings extends FakeWorker {
    private block: object = {}
    private found: object = {}
    next(place: number): void {
      this.block = applyDifference(this.block, this.posted[place]?.args[0] as ValueDifference)
      const now = findings(this.block as Block)
      const changes = valueDifference(this.found, now)
      this.found = now
      this.answer(changes)
    }
  }
  const finder = (place: number): Findings => FakeWorker.all[place] as Findings
  const nameIn = (reply: Reply<ReturnType<typeof findings>>): string => (reply.type === 'answer' ? reply.value.block.name : reply.type)

  beforeEach(() => {
    vi.stubGlobal('Worker', Findings)
  })

  it('come from what differs between one block and the next that is sent', async () => {
    const client = findingsWorker()
    const replies = ['first', 'second', 'third'].map((name) => client.request('findings', named(name)))
    finder(0).next(0)
    finder(0).next(1)
    expect((await Promise.all(replies)).map(nameIn)).toEqual(['first', 'dropped', 'third'])
    const [, second] = finder(0).posted as [WorkerRequest, WorkerRequest]
    expect(Object.keys((second.args[0] as ValueDifference).fields)).toEqual(['name'])
  })

  it('begin from nothing again after a worker failed', async () => {
    const client = findingsWorker()
    const first = client.request('findings', named('first'))
    finder(0).onmessage?.({ data: { type: 'failed', reason: 'too deep' } })
    expect(await first).toEqual({ type: 'failed', reason: 'too deep' })
    const second = client.request('findings', named('second'))
    finder(1).next(0)
    expect(nameIn(await second)).toBe('second')
  })
})
