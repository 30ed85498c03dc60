import { defineConfig } from 'vitest/config'

/** Unit tests and published checks, by room. Benchmarks are run apart (`npm run bench`). */
export default defineConfig({
  test: { include: ['test/**/*.test.{ts,tsx}'], passWithNoTests: false, restoreMocks: true },
})
