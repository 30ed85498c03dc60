/**
 * `npm run test:mutations [-- --room pressing --count 300 --seed 1]`: whether the tests would see it if the geometry were wrong.
 *
 * In      a room, else all; how many mutations are drawn (300), and by which seed (1); `--workers` (2); `--limit`, seconds that one may take (300);
 *         `--near` asks only the tests of its own room and those that import its file: sooner told, and what they miss others may still see.
 * Out     by room: how many were tried and how many caught; then each that no test has seen. Where the tests do not come to an end in time, that is caught too.
 *
 * Each is made in a copy of the checkout and judged by the tests of its room and those that import its file, then by all others that reach it. The
 * screen's tests are not asked. Mutations that can change no answer (`equivalentMutations.ts`) are not drawn.
 */
import { type ChildProcess, fork } from 'node:child_process'
import { cpSync, mkdirSync, mkdtempSync, rmSync, symlinkSync } from 'node:fs'
import { tmpdir } from 'node:os'
import { dirname, join, resolve } from 'node:path'
import { parseArgs } from 'node:util'
import type { Task, Verdict } from './mutateWorker.ts'
import { type Mutation, mutationsIn } from './mutations.ts'
import { isCode, readSource, sourceFiles } from './source.ts'

const { values } = parseArgs({
  options: {
    room: { type: 'string' },
    count: { type: 'string', default: '300' },
    seed: { type: 'string', default: '1' },
    workers: { type: 'string', default: '2' },
    limit: { type: 'string', default: '300' },
    near: { type: 'boolean', default: false },
  },
})

/** Bundles the command for each run, or reads what is no code; the screen's tests need a world each. */
const NOT_ASKED = /^test\/(web|cli|bench)\/|^test\/house\.test/

const roomOf = (file: string): string => file.split('/')[1] as string

function drawn(): Mutation[] {
  const files = sourceFiles(['geometry']).filter((file) => file.endsWith('.ts') && !file.endsWith('.d.ts') && dirname(file) !== 'geometry')
  const asked = files.filter((file) => roomOf(file) !== 'cli' && (values.room === undefined || roomOf(file) === values.room))
  return shuffled(asked.flatMap(mutationsIn), Number(values.seed)).slice(0, Number(values.count))
}

/** The same for the same seed: a linear congruential generator, Numerical Recipes, chapter 7.1. */
function shuffled<T>(list: readonly T[], seed: number): T[] {
  let state = seed >>> 0
  const next = (): number => {
    state = (Math.imul(state, 1_664_525) + 1_013_904_223) >>> 0
    return state / 2 ** 32
  }
  const keyed = list.map((one) => [next(), one] as const)
  return keyed.sort(([a], [b]) => a - b).map(([, one]) => one)
}

/** How many imports lie between each test and each file that it reads, however far below. */
function testDistances(): Map<string, Map<string, number>> {
  const imports = new Map(
    sourceFiles(['geometry', 'test'])
      .filter(isCode)
      .map((file) => {
        const { imports: read, exports, passesOn } = readSource(file)
        return [file, [...read, ...exports].flatMap(({ from }) => from ?? []).concat(passesOn)] as const
      }),
  )
  const distancesFrom = (test: string): Map<string, number> => {
    const distances = new Map([[test, 0]])
    for (const [file, distance] of distances) for (const next of imports.get(file) ?? []) if (!distances.has(next)) distances.set(next, distance + 1)
    return distances
  }
  return new Map([...imports.keys()].filter((file) => /\.test\.tsx?$/.test(file) && !NOT_ASKED.test(file)).map((test) => [test, distancesFrom(test)]))
}

function stagesFor({ file }: Mutation, tests: ReadonlyMap<string, ReadonlyMap<string, number>>): string[][] {
  const near = [...tests].flatMap(([test, distances]) => (distances.has(file) ? [{ test, distance: distances.get(file) as number }] : []))
  const sorted = near.sort((a, b) => a.distance - b.distance || a.test.localeCompare(b.test)).map(({ test }) => test)
  const own = sorted.filter((test) => roomOf(test) === roomOf(file) || tests.get(test)?.get(file) === 1)
  return [own, values.near ? [] : sorted.filter((test) => !own.includes(test))].filter((stage) => stage.length > 0)
}

function copyOfCheckout(): string {
  const folder = mkdtempSync(join(tmpdir(), 'nestwright-mutations-'))
  for (const file of sourceFiles(['.']).filter((one) => one !== 'node_modules')) {
    mkdirSync(dirname(join(folder, file)), { recursive: true })
    cpSync(file, join(folder, file))
  }
  symlinkSync(resolve('node_modules'), join(folder, 'node_modules'))
  return folder
}

/** Takes tasks until there are none. One that takes too long is ended with the process it runs in, and the next begins in a new one. */
async function work(tasks: Iterator<Task>, judged: (task: Task, caughtBy: string | null) => void): Promise<void> {
  let folder = copyOfCheckout()
  let worker = await started(folder)
  for (let next = tasks.next(); next.done !== true; next = tasks.next()) {
    const caughtBy = await verdict(worker, next.value)
    judged(next.value, caughtBy)
    if (caughtBy !== TOO_LONG) continue
    worker.kill('SIGKILL')
    rmSync(folder, { recursive: true, force: true })
    folder = copyOfCheckout()
    worker = await started(folder)
  }
  worker.kill('SIGKILL')
  rmSync(folder, { recursive: true, force: true })
}

function started(cwd: string): Promise<ChildProcess> {
  const worker = fork(resolve('.tools/mutateWorker.ts'), { cwd, execArgv: ['--import', 'tsx'], stdio: ['ignore', 'ignore', 'inherit', 'ipc'] })
  return new Promise((ready, failed) => {
    worker.once('message', () => ready(worker))
    worker.once('exit', (status) => failed(new Error(`a worker ended with status ${status}`)))
  })
}

const TOO_LONG = 'took too long'

function verdict(worker: ChildProcess, task: Task): Promise<string | null> {
  return new Promise((told) => {
    const timer = setTimeout(() => told(TOO_LONG), Number(values.limit) * 1000)
    const end = (caughtBy: string | null): void => {
      clearTimeout(timer)
      worker.removeAllListeners()
      told(caughtBy)
    }
    worker.once('message', (answer) => end((answer as Verdict).caughtBy))
    worker.once('exit', () => end(TOO_LONG))
    worker.send(task)
  })
}

function print(results: ReadonlyMap<Mutation, string | null>): void {
  const rooms = new Map<string, { tried: number; caught: number }>()
  for (const [{ file }, caughtBy] of results) {
    const { tried, caught } = rooms.get(roomOf(file)) ?? { tried: 0, caught: 0 }
    rooms.set(roomOf(file), { tried: tried + 1, caught: caught + (caughtBy === null ? 0 : 1) })
  }
  const row = (room: string, tried: number, caught: number): string =>
    `${room.padEnd(12)} ${String(tried).padStart(6)} ${String(caught).padStart(7)}  ${((caught / tried) * 100).toFixed(0).padStart(4)} %`
  console.log('\nroom          tried  caught   share')
  for (const [room, { tried, caught }] of [...rooms].sort()) console.log(row(room, tried, caught))
  const caught = [...results.values()].filter((by) => by !== null).length
  console.log(row('all', results.size, caught))
  console.log('\nSeen by no test:')
  for (const [{ file, line, says }, caughtBy] of results) if (caughtBy === null) console.log(`  ${file}:${line}  ${says}`)
}

const mutations = drawn()
const tests = testDistances()
const results = new Map<Mutation, string | null>()
const tasks = mutations.map((mutation, number): Task => ({ number, mutation, stages: stagesFor(mutation, tests) })).values()
await Promise.all(
  Array.from({ length: Number(values.workers) }, () =>
    work(tasks, ({ mutation }, caughtBy) => {
      results.set(mutation, caughtBy)
      const { file, line, says } = mutation
      console.log(
        `${String(results.size).padStart(4)} of ${mutations.length}  ${caughtBy === null ? 'NOT SEEN' : 'caught  '}  ${file}:${line}  ${says}${caughtBy === null ? '' : `  (${caughtBy})`}`,
      )
    }),
  ),
)
print(results)
process.exit(0)
