/** The workers of the page, and how long each is waited for. */
import type { Block, Findings } from '../../geometry/index.ts'
import type { ColourJobs } from './colour.worker.ts'
import type { DeepJobs } from './deep.worker.ts'
import type { ShapeJobs } from './outline.worker.ts'
import type { PrintJobs } from './print.worker.ts'
import { applyDifference, type ValueDifference, valueDifference } from './valueDifference.ts'
import { type WorkerClient, workerClient } from './workerClient.ts'

/** Milliseconds of rest before work begins: a hand that goes on needs no answer yet. */
const REST = 120
/** Milliseconds after which the library that joins shapes is taken to go round without end. */
const SHAPES_LIMIT = 2000

export const deepClient = (): WorkerClient<DeepJobs> =>
  workerClient(() => new Worker(new URL('./deep.worker.ts', import.meta.url), { type: 'module' }), { rest: REST })

const startColour = (): Worker => new Worker(new URL('./colour.worker.ts', import.meta.url), { type: 'module' })
export const colourClient = (): WorkerClient<ColourJobs> => workerClient(startColour)
export const blursClient = (): WorkerClient<ColourJobs> => workerClient(startColour, { rest: REST })

export const shapeClient = (): WorkerClient<ShapeJobs> =>
  workerClient(() => new Worker(new URL('./outline.worker.ts', import.meta.url), { type: 'module' }), { limit: SHAPES_LIMIT })

export const printClient = (): WorkerClient<PrintJobs> =>
  workerClient(() => new Worker(new URL('./print.worker.ts', import.meta.url), { type: 'module' }))

/**
 * The findings of a block too large to wait for, the newest block next and none that is past already. The worker keeps what it was sent, so only what differs
 * from the block before goes there, and only what differs from the findings before comes back.
 */
export function findingsWorker(): WorkerClient<{ readonly findings: (block: Block) => Findings }> {
  let block: object = {}
  let findings: object = {}
  const start = (): Worker => {
    block = {}
    findings = {}
    return new Worker(new URL('./findings.worker.ts', import.meta.url), { type: 'module' })
  }
  return workerClient(start, {
    newest: 'waits',
    encode: ([next]) => {
      const changes = valueDifference(block, next as Block)
      block = next as Block
      return [changes]
    },
    decode: (changes) => {
      findings = applyDifference(findings, changes as ValueDifference)
      return findings
    },
  })
}
