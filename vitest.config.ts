import { availableParallelism } from 'node:os'
import { fileURLToPath } from 'node:url'
import { defineConfig } from 'vitest/config'

/** These keep state of their own (a store, a language, a database, a global that a test puts another in place of), so each file gets a fresh world. */
const OWN_STATE = 'test/web/**/*.test.{ts,tsx}'

/** Unit tests and published checks, by room. Benchmarks are run apart (`npm run bench`). The time limit is for a busy machine: it judges nothing. */
export default defineConfig({
  test: {
    passWithNoTests: false,
    // All cores: left to itself the runner spares one.
    maxWorkers: availableParallelism(),
    projects: [
      // The geometry is pure: its files share the modules that one of them has loaded, which halves the time they take.
      project('geometry', { include: ['test/**/*.test.{ts,tsx}'], exclude: [OWN_STATE], isolate: false, sequence: { groupOrder: 0 } }),
      project('web', { include: [OWN_STATE], sequence: { groupOrder: 1 } }),
    ],
  },
})

function project(name: string, test: Readonly<Record<string, unknown>>) {
  return {
    // The page's build of the PDF library, as the command has it too.
    resolve: { alias: { pdfkit: fileURLToPath(new URL('node_modules/pdfkit/js/pdfkit.browser.mjs', import.meta.url)) } },
    test: { name, pool: 'threads' as const, restoreMocks: true, testTimeout: 300_000, hookTimeout: 300_000, ...test },
  }
}
