/** What is worked out beside the page for the block on the board: no layers for one of too many patches, however few its units. */
import { afterEach, beforeEach, expect, it, vi } from 'vitest'
import type { Unit } from '../../../geometry/index.ts'
import { getState, showHistory } from '../../../web/document/store.ts'
import { startDeriving } from '../../../web/workers/derive.ts'
import type { WorkerRequest } from '../../../web/workers/messages.ts'
import { blockOf } from '../../help.ts'

const posted: WorkerRequest[] = []

class SilentWorker {
  postMessage(request: WorkerRequest): void {
    posted.push(request)
  }
  terminate(): void {}
}

beforeEach(() => {
  posted.length = 0
  vi.useFakeTimers()
  vi.stubGlobal('Worker', SilentWorker)
})
afterEach(() => {
  vi.useRealTimers()
  vi.unstubAllGlobals()
})

const hourglasses = (count: number): Unit[] =>
  Array.from({ length: count }, (_, index) => ({
    id: `u${index}`,
    kind: 'hourglass',
    at: [index % 64, Math.floor(index / 64)],
    size: [1, 1],
    fabrics: { top: 'a', right: 'b', bottom: 'a', left: 'b' },
  }))

it('asks for layers of a thousand hourglasses, and not of four thousand, whose sixteen thousand patches have none', async () => {
  startDeriving()
  const asked = async (count: number): Promise<readonly string[]> => {
    posted.length = 0
    showHistory({ ...getState().history, block: blockOf(64, 64, hourglasses(count)) })
    await vi.advanceTimersByTimeAsync(1000)
    return posted.map(({ job }) => job)
  }
  expect(await asked(1_000)).toContain('layers')
  const large = await asked(4_000)
  expect(large).not.toContain('layers')
  expect(large).toContain('findings')
})
