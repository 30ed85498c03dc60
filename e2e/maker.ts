/** What every task begins with: a fresh browser, the app open, and an ear for errors that the page only tells the console. */
import { readdir, readFile, rm } from 'node:fs/promises'
import { extname, join } from 'node:path'
import { AxeBuilder } from '@axe-core/playwright'
import { test as base, type ElementHandle, expect, type Locator, type Page } from '@playwright/test'

export const SCREENS = [
  { name: 'on a desk', width: 1440, height: 900 },
  { name: 'on a tablet', width: 820, height: 1180 },
] as const

/**
 * Where a sheet's tasks are tried: the room is scarcer on a tablet, so the first engine has that; the second has the desk.
 * What lies on the board, and how it is handled there, each hand tries on a screen of its own.
 */
export const SHEET_SCREEN = {
  viewport: async ({ browserName }: { readonly browserName: string }, use: (size: { width: number; height: number }) => Promise<void>) =>
    use(browserName === 'firefox' ? SCREENS[0] : SCREENS[1]),
}

/**
 * Of a task that both engines try. Engines differ in events, focus, fields, pixels, files, storage and workers, not in what our own code makes of them:
 * so the second engine tries a maker's main tasks by mouse and whatever rests on one of these, and the first tries everything.
 */
export const BOTH_ENGINES = { tag: '@both' }
export const bothIf = (needed: boolean) => (needed ? BOTH_ENGINES : {})

export const test = base.extend<{ errors: string[] }>({
  context: async ({ context, browserName }, use) => {
    if (browserName === 'firefox') for (const script of [heardFilling, caughtAsking]) await context.addInitScript(script)
    await use(context)
  },
  errors: [
    async ({ page }, use) => {
      const errors: string[] = []
      page.on('console', (message) => message.type() === 'error' && errors.push(message.text()))
      page.on('pageerror', (error) => errors.push(String(error)))
      await use(errors)
      expect(errors, 'errors on the console').toEqual([])
    },
    { auto: true },
  ],
})

/**
 * Firefox's driver fills a field by setting its value, which React takes for its own doing and does not hear. The browser's own editing is heard as a hand is.
 */
function heardFilling(): void {
  const get = () => (text: string) => void document.execCommand('insertText', false, text)
  Object.defineProperty(window, '__pw_bidiInsertText', { get, set: () => undefined })
}

interface Asking {
  asked?: HTMLInputElement | null
}

/** Firefox's driver answers the first dialog for files alone: a page that asks for a file is heard before the browser opens one. */
function caughtAsking(): void {
  const { click } = HTMLElement.prototype
  HTMLElement.prototype.click = function () {
    if (this instanceof HTMLInputElement && this.type === 'file') (window as Asking).asked = this
    else click.call(this)
  }
}

/** Cells across and down from the block's top left. */
export type Cell = readonly [number, number]

export const board = (page: Page): Locator => page.getByRole('application', { name: /^Board/ })
export const findings = (page: Page): Locator => page.getByRole('region', { name: 'Seam check' })
export const cutList = (page: Page): Locator => page.getByRole('region', { name: 'Cut list' })
/** What is cut from one fabric. */
export const clothOf = (page: Page, fabric: string): Locator =>
  cutList(page)
    .locator('.cloth')
    .filter({ has: page.getByRole('heading', { name: fabric }) })
export const button = (page: Page, name: string | RegExp): Locator => page.getByRole('button', { name, exact: true })
/** On a phone what is done with files stands in a menu. */
export async function openMenu(page: Page, press: (control: Locator) => Promise<void> = (control) => control.click()): Promise<void> {
  const menu = page.locator('header').getByText('Menu', { exact: true })
  if (await menu.isVisible()) await press(menu)
}
export const notice = (page: Page): Locator => page.locator('.notice')

export async function openApp(page: Page): Promise<void> {
  await page.goto('/')
  await expect(board(page)).toBeVisible()
  await kept(page)
}

/** Opens one of the sheets beside the board. */
export async function openSheet(page: Page, name: string): Promise<void> {
  await page.getByRole('tab', { name, exact: true }).click()
  // What lay there before is gone: what is looked for next is looked for in this one.
  await expect(page.getByRole('tabpanel', { name, exact: true })).toBeVisible()
}

/**
 * What the checker of barriers finds on the page, or in a part of it. What it reads is the page's own and no engine's; in the second one it takes minutes.
 * In another light only the colours differ: they alone are checked again.
 */
export async function barriers(page: Page, part?: string, only: 'everything' | 'contrast' = 'everything'): Promise<string[]> {
  if (page.context().browser()?.browserType().name() === 'firefox') return []
  // The page has no frames; without looking for any the checker takes half the time.
  const checker = new AxeBuilder({ page }).setLegacyMode()
  if (only === 'contrast') checker.withRules(['color-contrast'])
  const { violations } = await (part === undefined ? checker : checker.include(part)).analyze()
  return violations.map(({ id, nodes }) => `${id}: ${nodes.map(({ target }) => target.join(' ')).join(', ')}`)
}

/** Every edit made so far is in the browser's database. */
export async function kept(page: Page): Promise<void> {
  await expect(page.getByText('Saved in this browser', { exact: true })).toBeVisible()
}

/** Where a cell lies on the screen now. */
export async function pixels(page: Page, at: Cell): Promise<{ x: number; y: number }> {
  await board(page).scrollIntoViewIfNeeded()
  return pixelsNow(page, at)
}

/** The same, without moving the page. */
export async function pixelsNow(page: Page, [x, y]: Cell): Promise<{ x: number; y: number }> {
  const box = await board(page).boundingBox()
  const scale = Number(await board(page).getAttribute('data-scale'))
  const [left, top] = ((await board(page).getAttribute('data-origin')) ?? '').split(',').map(Number)
  return { x: (box?.x ?? 0) + (left ?? 0) + x * scale, y: (box?.y ?? 0) + (top ?? 0) + y * scale }
}

/** Opens a file by the dialog that `ask` brings up. */
export async function openFile(page: Page, ask: () => Promise<void>, name: string, content: string | Buffer): Promise<void> {
  const file = { name, mimeType: TYPES[extname(name)] ?? 'text/plain', buffer: Buffer.from(content) }
  if (page.context().browser()?.browserType().name() === 'chromium') {
    const chooser = page.waitForEvent('filechooser')
    await ask()
    return (await chooser).setFiles(file)
  }
  await page.evaluate(() => {
    ;(window as Asking).asked = null
  })
  await ask()
  const input = await page.waitForFunction(() => (window as Asking).asked)
  await (input as ElementHandle<HTMLInputElement>).setInputFiles(file)
}

const TYPES: Readonly<Record<string, string>> = { '.json': 'application/json', '.pdf': 'application/pdf', '.png': 'image/png' }

export interface Saved {
  readonly name: string
  readonly bytes: Buffer
}

/** The file that the page gives the maker when something is pressed. */
export async function saved(page: Page, press: () => Promise<void>): Promise<Saved> {
  const folder = test.info().project.use.launchOptions?.downloadsPath
  if (folder !== undefined) return savedIn(folder, press)
  const download = page.waitForEvent('download')
  await press()
  const file = await download
  return { name: file.suggestedFilename(), bytes: await readFile(await file.path()) }
}

/** Firefox's driver does not tell of a file that the page made itself; so it is read where Firefox lays it. */
async function savedIn(folder: string, press: () => Promise<void>): Promise<Saved> {
  for (const name of await readdir(folder).catch(() => [])) await rm(join(folder, name))
  await press()
  let name = ''
  let bytes = Buffer.alloc(0)
  await expect(async () => {
    // While it is written, a second file with the ending `part` lies beside it.
    const lying = await readdir(folder)
    expect(lying).toHaveLength(1)
    name = lying[0] as string
    bytes = await readFile(join(folder, name))
    expect(bytes.length).toBeGreaterThan(0)
  }).toPass({ intervals: [20, 50, 100], timeout: 20_000 })
  return { name, bytes }
}

export { expect, type Locator, type Page }
