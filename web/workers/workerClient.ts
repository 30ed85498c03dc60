/**
 * The page's side of a worker: requests one job at a time, and ends the worker when nobody uses it any more.
 *
 * In      how to start the worker, and what happens to a job when a newer one is requested before it is done.
 * Out     a reply for every request, always: its answer, why it failed, or that it was dropped.
 * Fails   a worker that cannot be loaded, that throws, or that takes longer than `limit` is ended; the next request starts a fresh one. A timer inside the
 *         worker could not do that: a loop without end never lets it run.
 */
import type { Jobs, WorkerMessage, WorkerRequest } from './messages.ts'

export type Reply<Value> =
  | { readonly type: 'answer'; readonly value: Value }
  | { readonly type: 'failed'; readonly reason: string }
  /** A newer request took its place, or the client was closed. */
  | { readonly type: 'dropped' }

export interface ClientOptions {
  /** `interrupts`: a newer request ends the job under way. `waits`: it comes next, and takes the place of any other that waits. */
  readonly newest?: 'interrupts' | 'waits'
  /** Milliseconds of rest before a job begins: someone who is still dragging needs no answer yet. */
  readonly rest?: number
  /** Milliseconds after which a job has failed. */
  readonly limit?: number
  /** What is posted in place of a job's arguments, and what an answer stands for: for a worker that keeps what it was sent before. */
  readonly encode?: (args: readonly unknown[]) => readonly unknown[]
  readonly decode?: (answer: unknown) => unknown
}

/** What a job answers, once it is posted. */
export type Answer<Job extends (...args: never[]) => unknown> = Awaited<ReturnType<Job>>

export interface WorkerClient<J extends Jobs> {
  readonly request: <Name extends keyof J & string>(name: Name, ...args: Parameters<J[Name]>) => Promise<Reply<Answer<J[Name]>>>
  /** Called with whatever the job under way reports before it is done. */
  onProgress: ((progress: unknown) => void) | null
  /** Counts a user in; the function that is returned counts it out, and the last one out closes the client. */
  readonly retain: () => () => void
  /** Ends the worker and drops all requests. A later request starts a new worker. */
  readonly close: () => void
}

interface Pending {
  readonly request: WorkerRequest
  readonly resolve: (reply: Reply<never>) => void
}

/**
 * A client of the worker that `start` starts; it is started with the first request.
 *
 * It is long because all of it turns on one state: the worker, the job it does and the one that waits.
 */
export function workerClient<J extends Jobs>(start: () => Worker, options: ClientOptions = {}): WorkerClient<J> {
  const { newest = 'interrupts', rest = 0, limit, encode = (args) => args, decode = (answer) => answer } = options
  let worker: Worker | null = null
  let running: Pending | null = null
  let waiting: Pending | null = null
  let users = 0
  let resting: ReturnType<typeof setTimeout> | undefined
  let limiting: ReturnType<typeof setTimeout> | undefined

  const endWorker = (): void => {
    clearTimeout(limiting)
    worker?.terminate()
    worker = null
  }
  const drop = (pending: Pending | null): void => pending?.resolve({ type: 'dropped' })
  const settle = (reply: Reply<unknown>): void => {
    clearTimeout(limiting)
    const done = running
    running = null
    if (newest === 'waits') sendNext()
    done?.resolve(reply as Reply<never>)
  }
  const fail = (reason: string): void => {
    endWorker()
    settle({ type: 'failed', reason })
  }
  const started = (): Worker => {
    const made = start()
    made.onmessage = ({ data }: MessageEvent<WorkerMessage>) => {
      if (made !== worker) return
      if (data.type === 'progress') client.onProgress?.(data.value)
      else if (data.type === 'failed') fail(data.reason)
      else settle({ type: 'answer', value: decode(data.value) })
    }
    made.onerror = (event) => {
      event.preventDefault()
      if (made === worker) fail(NO_REASON)
    }
    return made
  }
  const sendNext = (): void => {
    if (waiting === null) return
    running = waiting
    waiting = null
    worker ??= started()
    if (limit !== undefined) limiting = setTimeout(() => fail(NO_REASON), limit)
    worker.postMessage({ ...running.request, args: encode(running.request.args) })
  }
  const interrupt = (): void => {
    if (running !== null) {
      endWorker()
      drop(running)
      running = null
    }
    sendNext()
  }
  const ask = (pending: Pending): void => {
    drop(waiting)
    waiting = pending
    clearTimeout(resting)
    if (newest === 'interrupts') {
      if (rest > 0) resting = setTimeout(interrupt, rest)
      else interrupt()
    } else if (running === null) sendNext()
  }
  const close = (): void => {
    clearTimeout(resting)
    endWorker()
    const asked = [running, waiting]
    running = null
    waiting = null
    asked.forEach(drop)
  }
  const client: WorkerClient<J> = {
    request: (job, ...args) => new Promise((resolve) => ask({ request: { job, args }, resolve: resolve as Pending['resolve'] })),
    onProgress: null,
    retain: () => {
      users++
      return () => {
        users--
        if (users === 0) close()
      }
    },
    close,
  }
  return client
}

/** For a worker that gives no reason of its own. */
const NO_REASON = 'it could not be worked out beside the page'
