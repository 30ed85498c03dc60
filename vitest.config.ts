import { defineConfig } from 'vitest/config'

/** Unit tests and published checks, by room. Benchmarks are run apart (`npm run bench`). The time limit is for a busy machine: it judges nothing. */
export default defineConfig({
  test: { include: ['test/**/*.test.{ts,tsx}'], passWithNoTests: false, restoreMocks: true, testTimeout: 60_000 },
})
