/** A worker that lives as long as a component: it is stopped when the component goes. */
import { useEffect, useMemo, useState } from 'react'
import type { Jobs } from './messages.ts'
import type { Answer, Reply, WorkerClient } from './workerClient.ts'

/** A client of the component's own; while `used`, its worker may run. */
export function useClient<J extends Jobs>(make: () => WorkerClient<J>, used = true): WorkerClient<J> {
  const client = useMemo(make, [make])
  useEffect(() => (used ? client.retain() : undefined), [client, used])
  return client
}

/**
 * The reply to one request.
 *
 * In      what makes a client, a job and its arguments; null for none. The arguments must be the same values from one render to the next.
 * Out     the reply once it has come; null until then, and again when the arguments change.
 */
export function useWorker<J extends Jobs, Name extends keyof J & string>(
  make: () => WorkerClient<J>,
  job: Name,
  args: Parameters<J[Name]> | null,
): Reply<Answer<J[Name]>> | null {
  const client = useClient(make, args !== null)
  const [replied, setReplied] = useState<{ readonly to: readonly unknown[]; readonly reply: Reply<Answer<J[Name]>> } | null>(null)
  const asked: readonly unknown[] = args ?? []
  // biome-ignore lint/correctness/useExhaustiveDependencies: a request changes only with its job and arguments
  useEffect(() => {
    if (args === null) return
    let current = true
    void client.request(job, ...args).then((reply) => {
      if (current) setReplied({ to: args, reply })
    })
    return () => {
      current = false
    }
  }, [client, job, args === null, asked.length, ...asked])
  return args !== null && replied !== null && same(replied.to, args) ? replied.reply : null
}

const same = (one: readonly unknown[], other: readonly unknown[]): boolean =>
  one.length === other.length && one.every((value, place) => Object.is(value, other[place]))
