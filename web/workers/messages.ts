/** The messages between the page and a worker. */

/** The jobs of a worker, by name: functions of values that can be posted. */
// biome-ignore lint/suspicious/noExplicitAny: each worker has jobs of its own types
export type Jobs = Readonly<Record<string, (...args: any[]) => unknown>>

export interface WorkerRequest {
  readonly job: string
  readonly args: readonly unknown[]
}

export type WorkerMessage =
  | { readonly type: 'answer'; readonly value: unknown }
  | { readonly type: 'failed'; readonly reason: string }
  /** Progress of a job, before its answer. */
  | { readonly type: 'progress'; readonly value: unknown }
