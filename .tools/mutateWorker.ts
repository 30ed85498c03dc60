/**
 * Judges mutations in a copy of the checkout, which is the folder it is started in: writes one, runs the tests that it is told, puts the file back.
 *
 * In      messages: a mutation, and lists of test files, one to be run after the other until one fails.
 * Out     messages: the mutation's number and the first test that failed, else null. A test counts only where it passes without the mutation.
 */
import { readFileSync, writeFileSync } from 'node:fs'
import { join, resolve } from 'node:path'
import { createVitest, type TestModule, type Vitest } from 'vitest/node'
import type { Mutation } from './mutations.ts'

export interface Task {
  readonly number: number
  readonly mutation: Mutation
  readonly stages: readonly (readonly string[])[]
}

export interface Verdict {
  readonly number: number
  readonly caughtBy: string | null
}

/** Files in the order in which they are given: those nearest to the mutation come first. */
class AsGiven {
  shard<T>(files: T): T {
    return files
  }
  sort<T>(files: T): T {
    return files
  }
}

const vitest: Vitest = await createVitest(
  'test',
  {
    config: false,
    root: process.cwd(),
    watch: false,
    include: ['test/**/*.test.{ts,tsx}'],
    pool: 'threads',
    isolate: false,
    maxWorkers: 1,
    bail: 1,
    testTimeout: 300_000,
    hookTimeout: 300_000,
    restoreMocks: true,
    reporters: [{}],
    sequence: { sequencer: AsGiven as never },
  },
  { resolve: { alias: { pdfkit: resolve('node_modules/pdfkit/js/pdfkit.browser.mjs') } }, server: { watch: null } },
)
/** Whether a test passes without any mutation: asked only of one that fails with one. */
const sound = new Map<string, boolean>()
/** Milliseconds that a file took when it was last run, or the time it was given up. */
const took = new Map<string, number>()

process.on('message', (task: Task) => void judge(task).then((verdict) => process.send?.(verdict)))
process.on('disconnect', () => process.exit(1))
process.send?.('ready')

async function judge({ number, mutation, stages }: Task): Promise<Verdict> {
  for (const stage of stages) {
    for (let left = quickestFirst(stage); left.length > 0; left = left.filter((file) => sound.get(file) !== false)) {
      const failure = await withMutation(mutation, () => firstFailure(left))
      if (failure === null) break
      if (!sound.has(failure.file)) sound.set(failure.file, (await firstFailure([failure.file])) === null)
      if (sound.get(failure.file)) return { number, caughtBy: failure.name }
    }
  }
  return { number, caughtBy: null }
}

/** Files that have not been run yet come first, the nearest before all. */
function quickestFirst(stage: readonly string[]): string[] {
  return stage.filter((file) => sound.get(file) !== false).sort((a, b) => (took.get(a) ?? 0) - (took.get(b) ?? 0))
}

async function withMutation<T>({ file, start, end, by }: Mutation, run: () => Promise<T>): Promise<T> {
  const path = join(process.cwd(), file)
  const text = readFileSync(path, 'utf8')
  const changed = (words: string): void => {
    writeFileSync(path, words)
    vitest.invalidateFile(path)
  }
  changed(text.slice(0, start) + by + text.slice(end))
  try {
    return await run()
  } finally {
    changed(text)
  }
}

interface Failure {
  readonly file: string
  readonly name: string
}

async function firstFailure(files: readonly string[]): Promise<Failure | null> {
  const project = vitest.getRootProject()
  const { testModules, unhandledErrors } = await vitest.runTestSpecifications(files.map((file) => project.createSpecification(resolve(file))))
  // The list also holds the files of earlier runs, which may have failed for another mutation.
  const own = files.map((file) => [file, testModules.find(({ moduleId }) => moduleId === resolve(file))] as const)
  for (const [file, module] of own) {
    const state = module?.state()
    if (module === undefined || (state !== 'passed' && state !== 'failed')) throw new Error(`${file} was not run: ${state}`)
    took.set(file, module.diagnostic().duration)
    if (state === 'failed') return { file, name: nameOf(module) }
  }
  return unhandledErrors.length > 0 ? { file: files.at(-1) as string, name: 'an error outside the tests' } : null
}

function nameOf(module: TestModule): string {
  for (const test of module.children.allTests('failed')) return `${module.relativeModuleId}: ${test.fullName}`
  return module.relativeModuleId
}
