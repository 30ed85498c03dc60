/** One edit in the app as a maker waits for it: from the key to the painted frame with its findings, in a real browser, the app as built. */
import { chromium } from '@playwright/test'
import { build, preview } from 'vite'
import { findBrowser } from '../../.tools/browser.ts'
import type { Block } from '../../geometry/index.ts'

const EDITS = 25
/** What is done often is compiled; the first edits are not what a maker waits for all morning. */
const FIRST = 5
/** Milliseconds between two edits: the layers of cloth follow the last one in them. */
const REST = 600

/** Middle times in ms over several edits: until the findings are there, and until the frame with them is painted; null without a browser. */
export async function editInBrowser(block: Block): Promise<{ readonly findings: number; readonly frame: number } | null> {
  const found = await findBrowser()
  if (!found.found) return null
  await build({ logLevel: 'error' })
  const server = await preview({ preview: { host: '127.0.0.1', port: 0 }, logLevel: 'error' })
  const browser = await chromium.launch({ executablePath: found.path })
  try {
    const page = await browser.newPage({ viewport: { width: 1440, height: 900 }, serviceWorkers: 'block' })
    await page.goto(server.resolvedUrls?.local[0] ?? '')
    await page
      .getByLabel('Block file')
      .setInputFiles({ name: 'block.json', mimeType: 'application/json', buffer: Buffer.from(JSON.stringify(block)) })
    const board = page.getByRole('application', { name: new RegExp(block.name) })
    await board.focus()
    await board.press('Enter')
    const times: { findings: number; frame: number }[] = []
    for (let edit = 0; edit < FIRST + EDITS; edit += 1) {
      times.push(await board.evaluate(timeOfEdit))
      await page.waitForTimeout(REST)
    }
    times.splice(0, FIRST)
    return { findings: middle(times.map(({ findings }) => findings)), frame: middle(times.map(({ frame }) => frame)) }
  } finally {
    await browser.close()
    await server.close()
  }
}

const middle = (times: number[]): number => times.sort((a, b) => a - b)[Math.floor(times.length / 2)] as number

/** Runs in the page: turns the chosen unit and waits for what is drawn. A key's change is rendered before the event ends. */
async function timeOfEdit(board: Element): Promise<{ findings: number; frame: number }> {
  const start = performance.now()
  board.dispatchEvent(new KeyboardEvent('keydown', { key: 't', bubbles: true, cancelable: true }))
  const findings = performance.now() - start
  await new Promise((resolve) => requestAnimationFrame(() => setTimeout(resolve)))
  return { findings, frame: performance.now() - start }
}
