import { fileURLToPath } from 'node:url'
import { defineConfig } from 'vitest/config'

/** Unit tests and published checks, by room. Benchmarks are run apart (`npm run bench`). The time limit is for a busy machine: it judges nothing. */
export default defineConfig({
  // The page's build of the PDF library, as the command has it too.
  resolve: { alias: { pdfkit: fileURLToPath(new URL('node_modules/pdfkit/js/pdfkit.browser.mjs', import.meta.url)) } },
  test: { include: ['test/**/*.test.{ts,tsx}'], passWithNoTests: false, restoreMocks: true, testTimeout: 60_000, hookTimeout: 60_000 },
})
