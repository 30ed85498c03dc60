/** A maker's tasks in a real browser, against the built app served on a free port of this machine. */
import { createServer } from 'node:net'
import { defineConfig } from '@playwright/test'
import { findBrowser, secondEngine } from './.tools/browser.ts'

// The runner reads this file again in each worker: what is found once is handed on by the environment.
process.env.NESTWRIGHT_PORT ??= String(await freePort())
process.env.NESTWRIGHT_BROWSER ??= await browserPath()
const firefox = secondEngine()
const url = `http://127.0.0.1:${process.env.NESTWRIGHT_PORT}`

/** What a second engine, where there is one, tries too (`BOTH_ENGINES` in `e2e/maker.ts`). */
const BOTH_ENGINES = /@both/

export default defineConfig({
  testDir: 'e2e',
  outputDir: 'test-results',
  // Two: a page waits about as long as it works, so one core serves it well. Each test has a browser profile, a clipboard and a folder of its own.
  workers: 2,
  retries: 0,
  timeout: 300_000,
  // For a busy machine: it judges nothing.
  expect: { timeout: 20_000 },
  forbidOnly: true,
  reporter: 'list',
  // Only where it is tried does the app keep itself in the browser: elsewhere each test would fetch all of it.
  // Labels are written in British spelling.
  use: { baseURL: url, serviceWorkers: 'block', locale: 'en-GB' },
  projects: [
    {
      name: 'chromium',
      use: { launchOptions: { executablePath: process.env.NESTWRIGHT_BROWSER || undefined }, permissions: ['clipboard-read', 'clipboard-write'] },
    },
    ...(firefox === null
      ? []
      : [
          {
            name: 'firefox',
            grep: BOTH_ENGINES,
            use: {
              browserName: 'firefox' as const,
              channel: 'moz-firefox',
              launchOptions: {
                executablePath: firefox,
                downloadsPath: `test-results/saved-${process.env.TEST_PARALLEL_INDEX ?? 0}`,
                // Nobody is there to let the page read the clipboard, or to close what the browser opens over the page after saving a file.
                firefoxUserPrefs: { 'dom.events.testing.asyncClipboard': true, 'browser.download.alwaysOpenPanel': false },
              },
            },
          },
        ]),
  ],
  webServer: {
    command: `npm run --silent build && npx vite preview --host 127.0.0.1 --strictPort --port ${process.env.NESTWRIGHT_PORT}`,
    url,
    timeout: 120_000,
    reuseExistingServer: false,
  },
})

async function browserPath(): Promise<string> {
  const browser = await findBrowser()
  if (!browser.found) throw new Error(browser.advice)
  return browser.path ?? ''
}

function freePort(): Promise<number> {
  return new Promise((resolve, reject) => {
    const server = createServer()
    server.once('error', reject)
    server.listen(0, '127.0.0.1', () => {
      const address = server.address()
      server.close(() => (typeof address === 'object' && address !== null ? resolve(address.port) : reject(new Error('no free port'))))
    })
  })
}
