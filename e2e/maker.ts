/** What every task begins with: a fresh browser, the app open, and an ear for errors that the page only tells the console. */
import { test as base, expect, type Locator, type Page } from '@playwright/test'

export const SCREENS = [
  { name: 'on a desk', width: 1440, height: 900 },
  { name: 'on a tablet', width: 820, height: 1180 },
] as const

export const test = base.extend<{ errors: string[] }>({
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

/** Cells across and down from the block's top left. */
export type Cell = readonly [number, number]

export const board = (page: Page): Locator => page.getByRole('application', { name: /^Board/ })
export const findings = (page: Page): Locator => page.getByRole('region', { name: 'Findings' })
export const cutList = (page: Page): Locator => page.getByRole('region', { name: 'Cut list' })
export const button = (page: Page, name: string | RegExp): Locator => page.getByRole('button', { name, exact: true })
export const notice = (page: Page): Locator => page.locator('.notice')

export async function openApp(page: Page): Promise<void> {
  await page.goto('/')
  await expect(board(page)).toBeVisible()
  await kept(page)
}

/** Opens one of the sheets beside the board. */
export async function openSheet(page: Page, name: string): Promise<void> {
  await page.getByRole('tab', { name, exact: true }).click()
}

/** Every edit made so far is in the browser's database. */
export async function kept(page: Page): Promise<void> {
  await expect(page.getByText('Kept in this browser', { exact: true })).toBeVisible()
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
export async function openFile(page: Page, ask: () => Promise<void>, name: string, text: string): Promise<void> {
  const chooser = page.waitForEvent('filechooser')
  await ask()
  await (await chooser).setFiles({ name, mimeType: 'application/json', buffer: Buffer.from(text) })
}

export { expect, type Locator, type Page }
