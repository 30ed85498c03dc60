/**
 * The worker's side: does each job that the page requests.
 *
 * In      the jobs by name, and those whose code is loaded with the first request for one of them. A job may throw, or be asynchronous.
 * Out     for each request, a message with the answer or with the reason why there is none.
 */
import type { Jobs, WorkerMessage, WorkerRequest } from './messages.ts'

const post = (message: WorkerMessage): void => self.postMessage(message)

export function serveJobs(jobs: Jobs, more?: () => Promise<Jobs>): void {
  self.onmessage = async ({ data: { job, args } }: MessageEvent<WorkerRequest>) => {
    try {
      post({ type: 'answer', value: await (jobs[job] ?? (await more?.())?.[job])?.(...args) })
    } catch (error) {
      post({ type: 'failed', reason: error instanceof Error ? error.message : String(error) })
    }
  }
}

export const postProgress = (value: unknown): void => post({ type: 'progress', value })
