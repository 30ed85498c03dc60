/** The workers of the page, and their time limits. */
import type { Block, Findings, Quilt } from '../../geometry/index.ts'
import type { ColourJobs } from './colour.worker.ts'
import type { DeepJobs } from './deep.worker.ts'
import type { ShapeJobs } from './outline.worker.ts'
import type { PrintJobs } from './print.worker.ts'
import type { QuiltJobs } from './quilt.worker.ts'
import { applyDifference, type ValueDifference, valueDifference } from './valueDifference.ts'
import { type WorkerClient, workerClient } from './workerClient.ts'

/** Milliseconds of rest before a job begins, because someone who is still dragging needs no answer yet. */
const REST = 120
/** Milliseconds after which the library that joins shapes is assumed to be in an endless loop. */
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
 * The findings of a block too large to wait for; older states of it are skipped. The worker keeps what it was sent, so only what differs
 * from the previous block is sent, and only what differs from the previous findings comes back.
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

/** Reports of quilts; while one is computed, only the newest state of the quilt waits. Only what differs from the quilt before is sent. */
export function quiltWorker(): WorkerClient<QuiltJobs> {
  let quilt: object = {}
  const start = (): Worker => {
    quilt = {}
    return new Worker(new URL('./quilt.worker.ts', import.meta.url), { type: 'module' })
  }
  return workerClient(start, {
    newest: 'waits',
    encode: ([next]) => {
      const changes = valueDifference(quilt, next as Quilt)
      quilt = next as Quilt
      return [changes]
    },
  })
}
