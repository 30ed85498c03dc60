/** One side of one contest at one size, in a process of its own: `peers.ts` starts it, and is told the middle time and the answer. */
import { contestNamed, type Run, type Side } from './contests.ts'

const RUNS = 9
/** Beyond this no further run is begun, in ms: a slow one is timed once. */
const ENOUGH = 5_000
const WARM = 500

const [name, side, size] = process.argv.slice(2) as [string, Side, string]
const contest = contestNamed(name)

// The engine compiles what it has seen often.
const small = contest.prepare(contest.sizes[0] as number)
for (const begun = performance.now(); performance.now() - begun < WARM; ) small[side]()

const ready = contest.prepare(Number(size))
const times: number[] = []
let answer = ''
for (const begun = performance.now(); times.length < RUNS && performance.now() - begun < ENOUGH; ) {
  const start = performance.now()
  answer = ready[side]()
  times.push(performance.now() - start)
}
const time = times.sort((a, b) => a - b)[Math.floor(times.length / 2)] as number
process.send?.({ size: ready.size, time, answer } satisfies Run, () => process.exit())
