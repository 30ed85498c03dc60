/**
 * Judges mutations in a copy of the checkout, which is the folder it is started in: writes one, runs the tests that it is told, puts the file back.
 *
 * In      messages: a mutation, and lists of test files, one to be run after the other until one fails.
 * Out     messages: the mutation's number and the first test that failed, else null. A test counts only where it has passed without the mutation.
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
    testTimeout: 120_000,
    hookTimeout: 120_000,
    restoreMocks: true,
    reporters: [{}],
    sequence: { sequencer: AsGiven as never },
  },
  { resolve: { alias: { pdfkit: resolve('node_modules/pdfkit/js/pdfkit.browser.mjs') } }, server: { watch: null } },
)
const passed = new Map<string, boolean>()

process.on('message', (task: Task) => void judge(task).then((verdict) => process.send?.(verdict)))
process.on('disconnect', () => process.exit(1))
process.send?.('ready')

async function judge({ number, mutation, stages }: Task): Promise<Verdict> {
  for (const stage of stages) {
    for (const file of stage) if (!passed.has(file)) passed.set(file, (await firstFailure([file])) === null)
    const sound = stage.filter((file) => passed.get(file))
    const caughtBy = sound.length === 0 ? null : await withMutation(mutation, () => firstFailure(sound))
    if (caughtBy !== null) return { number, caughtBy }
  }
  return { number, caughtBy: null }
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

async function firstFailure(files: readonly string[]): Promise<string | null> {
  const project = vitest.getRootProject()
  const { testModules, unhandledErrors } = await vitest.runTestSpecifications(files.map((file) => project.createSpecification(resolve(file))))
  return testModules.map(failureIn).find((name) => name !== null) ?? (unhandledErrors.length > 0 ? 'an error outside the tests' : null)
}

function failureIn(module: TestModule): string | null {
  if (module.state() !== 'failed') return null
  for (const test of module.children.allTests('failed')) return `${module.relativeModuleId}: ${test.fullName}`
  return module.relativeModuleId
}
