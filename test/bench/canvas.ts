/**
 * The canvas, measured in a real browser: the cloth drawn anew beside a bare canvas and beside one konva node a patch; picking; and in the built app
 * opening, dragging, panning, and how soon the cloth is sharp again.
 */
import { type Browser, chromium, type Page } from '@playwright/test'
import { build as bundle } from 'esbuild'
import { build, preview } from 'vite'
import { findBrowser } from '../../.tools/browser.ts'
import { manyUnits } from './blocks.ts'
import type { Measured } from './canvas/page.ts'

/** Units along a side: about 500, 10,000 and 50,000 patches. */
const SIDES = [14, 63, 141]

export async function canvasInBrowser(): Promise<void> {
  const found = await findBrowser()
  if (!found.found) return console.log('No browser found: the canvas is not measured.')
  const browser = await chromium.launch({ executablePath: found.path })
  try {
    await besideBare(browser)
    await inTheApp(browser)
  } finally {
    await browser.close()
  }
}

async function besideBare(browser: Browser): Promise<void> {
  const { outputFiles } = await bundle({ entryPoints: ['test/bench/canvas/page.ts'], bundle: true, write: false, format: 'iife', target: 'es2022' })
  const page = await browser.newPage()
  await page.addScriptTag({ content: outputFiles[0]?.text ?? '' })
  console.log('\nThe cloth in sight drawn anew, and from the block to the first picture (ms)')
  console.log(
    ' patches    ours    bare  ours/bare  (patches alone)   nodes  nodes/ours   |  opening: ours    bare  ours/bare   |  a press finds its patch: first, middle, longest',
  )
  for (const side of SIDES) {
    const told = await page.evaluate((n) => (window as unknown as { measure: (n: number) => Measured }).measure(n), side)
    const { ours, patchesAlone, bare, nodes, pick } = told
    const cell = (value: number, digits = 1): string => value.toFixed(digits).padStart(8)
    console.log(
      `${String(told.patches).padStart(8)}${cell(ours.redraw)}${cell(bare.redraw)}${cell(ours.redraw / bare.redraw, 2)}  ${cell(patchesAlone / bare.redraw, 2)}   ${cell(nodes.redraw)}${cell(nodes.redraw / ours.redraw)}      |         ${cell(ours.opening)}${cell(bare.opening)}${cell(ours.opening / bare.opening, 2)}     |  ${pick.first.toFixed(2)}, ${pick.middle.toFixed(3)}, ${pick.most.toFixed(2)}`,
    )
  }
  await page.close()
}

async function inTheApp(browser: Browser): Promise<void> {
  await build({ logLevel: 'error' })
  const server = await preview({ preview: { host: '127.0.0.1', port: 0 }, logLevel: 'error' })
  try {
    console.log(
      '\nIn the app: opening to the drawn cloth; a step of a drag, work of the page; frames while panning; sharp again after the last step (ms)',
    )
    for (const side of SIDES) console.log(await oneSize(browser, server.resolvedUrls?.local[0] ?? '', side))
  } finally {
    await server.close()
  }
}

async function oneSize(browser: Browser, url: string, side: number): Promise<string> {
  const page = await browser.newPage({ viewport: { width: 1440, height: 900 }, serviceWorkers: 'block' })
  // The runner names functions by a helper that the page does not have.
  await page.addInitScript({ content: 'globalThis.__name = (named) => named' })
  await page.goto(url)
  const block = manyUnits(side)
  const opening = await opened(page, block.name, JSON.stringify(block))
  const drag = await dragged(page)
  const pan = await page.evaluate(panned)
  await page.close()
  return `${String(side * side).padStart(8)} units: opening ${opening.toFixed(0)}; drag ${drag.toFixed(2)} a step; panning ${pan.frame.toFixed(1)} a frame (longest ${pan.longest.toFixed(0)}); sharp after ${pan.sharp.toFixed(0)}`
}

async function opened(page: Page, name: string, text: string): Promise<number> {
  const start = Date.now()
  await page.getByLabel('Block file').setInputFiles({ name: 'block.json', mimeType: 'application/json', buffer: Buffer.from(text) })
  await page.getByRole('application', { name: new RegExp(name) }).waitFor({ timeout: 120_000 })
  await page.evaluate(() => new Promise((resolve) => requestAnimationFrame(() => setTimeout(resolve))))
  const time = Date.now() - start
  // The findings and layers of a large block come from beside the page: a drag is measured once they are there.
  await page.getByText('are being worked out').first().waitFor({ state: 'hidden', timeout: 300_000 })
  await page.waitForTimeout(10_000)
  return time
}

/** Work of the page for one step of a drag, all of it: events, React, drawing. */
async function dragged(page: Page): Promise<number> {
  const session = await page.context().newCDPSession(page)
  // Time on the processor, so that what else the machine does is not counted.
  await session.send('Performance.enable', { timeDomain: 'threadTicks' })
  const box = await page.getByRole('application').boundingBox()
  // Off the middle, where a mark may lie: a press there is first of all its own.
  const [x, y] = [(box?.x ?? 0) + (box?.width ?? 0) * 0.53, (box?.y ?? 0) + (box?.height ?? 0) * 0.57]
  await page.mouse.move(x, y)
  await page.mouse.down()
  await page.mouse.move(x + 20, y + 10, { steps: 5 })
  const work = async (): Promise<number> => {
    const { metrics } = await session.send('Performance.getMetrics')
    return metrics.find((one) => one.name === 'TaskDuration')?.value ?? 0
  }
  const steps = 60
  const times: number[] = []
  for (const way of [1, -1, 1, -1, 1]) {
    const before = await work()
    await page.mouse.move(x + 20 + 60 * way, y + 10 + 40 * way, { steps })
    times.push((((await work()) - before) / steps) * 1000)
  }
  await page.keyboard.press('Escape')
  await page.mouse.up()
  await session.detach()
  return times.sort((a, b) => a - b)[2] as number
}

/** Runs in the page: pans by the wheel, a step a frame, then waits until the cloth is drawn sharp and really on its canvas. */
async function panned(): Promise<{ frame: number; longest: number; sharp: number }> {
  const board = document.querySelector('[role=application]') as HTMLElement
  const canvas = board.querySelector('canvas') as HTMLCanvasElement
  const { left, top, width, height } = board.getBoundingClientRect()
  const frame = (): Promise<number> => new Promise((resolve) => requestAnimationFrame(resolve))
  const step = (by: number): boolean =>
    board.dispatchEvent(
      new WheelEvent('wheel', { deltaY: by, clientX: left + width / 3, clientY: top + height / 3, bubbles: true, cancelable: true }),
    )
  const frames: number[] = []
  let last = await frame()
  for (let turn = 0; turn < 60; turn += 1) {
    step(turn % 20 < 10 ? -20 : 20)
    const next = await frame()
    frames.push(next - last)
    last = next
  }
  step(-20)
  const start = performance.now()
  await frame()
  while (canvas.dataset.drawn !== 'sharp') await frame()
  canvas.getContext('2d')?.getImageData(0, 0, 1, 1)
  const sharp = performance.now() - start
  frames.sort((a, b) => a - b)
  return { frame: frames[Math.floor(frames.length / 2)] as number, longest: frames.at(-1) as number, sharp }
}
