/** For every maker: on a phone, at twice the size, in another language, in the sun and at night. */
import { barriers, expect, findings, openApp, openSheet, type Page, pixels, test, BOTH_ENGINES } from './maker.ts'

const SHEETS = ['Block', 'Seam check', 'Colour', 'Cutting', 'Quilting', 'Setting', 'Booklet'] as const
const LOOKS = ['Fabric', 'Value', 'Wrong side', 'Layers', 'Sewing order', 'Quilting line', 'Repeated blocks'] as const

/** Pixels by which the page is wider than the screen. */
const overhang = (page: Page): Promise<number> => page.evaluate(() => document.documentElement.scrollWidth - window.innerWidth)

for (const [name, width, height] of [
  ['a phone of 360 pixels', 360, 740],
  ['a desk at twice the size', 720, 450],
] as const) {
  test(`nothing lies beyond the edge on ${name}`, async ({ page }) => {
    await page.setViewportSize({ width, height })
    await openApp(page)
    for (const sheet of SHEETS) {
      await openSheet(page, sheet)
      await expect(page.getByRole('tabpanel').getByRole('heading').first()).toBeVisible()
      expect(await overhang(page), sheet).toBeLessThanOrEqual(0)
    }
    for (const look of LOOKS) {
      // A phone has a list of them.
      if (width < 641) await page.locator('.view-list select').selectOption({ label: look })
      else {
        await page.getByRole('button', { name: look, exact: true }).click()
        await expect(page.getByRole('button', { name: look, exact: true })).toHaveAttribute('aria-pressed', 'true')
      }
      expect(await overhang(page), look).toBeLessThanOrEqual(0)
    }
  })
}

test('the page speaks German when asked, and again on the next visit', BOTH_ENGINES, async ({ page }) => {
  await openApp(page)
  await page.getByText('Display', { exact: true }).click()
  await page.getByLabel('Language').selectOption('de')
  await expect(page.getByRole('tab', { name: 'Zuschnitt' })).toBeVisible()
  await expect(page.locator('html')).toHaveAttribute('lang', 'de')
  await page.reload()
  await page.getByRole('tab', { name: 'Zuschnitt' }).click()
  await expect(page.getByRole('tabpanel')).toContainText('So schneidest du')
  await page.getByRole('tab', { name: 'Nahtprüfung' }).click()
  await expect(page.getByRole('tabpanel')).toContainText('Alle 4 Nahtkreuzungen greifen ineinander.')
  await page.getByText('Anzeige', { exact: true }).click()
  await page.getByLabel('Sprache').selectOption('en')
  await expect(page.getByRole('tab', { name: 'Cutting' })).toBeVisible()
})

for (const [light, name] of [
  ['sun', 'High contrast'],
  ['night', 'Dark'],
] as const) {
  // Colours and contrasts are the page's own, not an engine's.
  test(`the page can be read ${name}, with no known barrier`, async ({ page }) => {
    await openApp(page)
    await page.getByText('Display', { exact: true }).click()
    await page.getByLabel('Theme').selectOption(light)
    await page.getByText('Display', { exact: true }).click()
    for (const sheet of ['Seam check', 'Colour', 'Cutting'] as const) {
      await openSheet(page, sheet)
      await expect(page.getByRole('tabpanel').getByRole('heading').first()).toBeVisible()
      expect(await barriers(page, undefined, 'contrast'), sheet).toEqual([])
    }
  })
}

test('a part of the page that does not load says so in its place, and the board goes on', BOTH_ENGINES, async ({ page, errors }) => {
  await openApp(page)
  // What the first visit loads by itself has come.
  await expect(page.getByText('Hint 1 of 3')).toBeVisible()
  await expect(findings(page)).toContainText('Bulkiest spot')
  // The sheet is fetched when it is opened first; chunks have no names by which to keep back just one.
  const scripts = /\.js$/
  await page.route(scripts, (route) => route.abort())
  await openSheet(page, 'Quilting')
  await expect(page.getByRole('alert')).toContainText('This part of the page didn’t load.')
  await expect(page.getByRole('button', { name: 'Reload the page' })).toBeVisible()
  await page.unroute(scripts)
  const { x, y } = await pixels(page, [1.3, 1.3])
  await page.mouse.click(x, y)
  await openSheet(page, 'Seam check')
  await page.getByRole('button', { name: 'Delete', exact: true }).click()
  await expect(page.getByRole('button', { name: 'Undo', exact: true })).toBeEnabled()
  // The browser says on the console what was kept from it.
  errors.length = 0
})

test('the side panel is made wider by keys and by dragging, and the next visit remembers it', async ({ page }) => {
  await page.setViewportSize({ width: 1440, height: 900 })
  await openApp(page)
  const edge = page.getByRole('separator', { name: 'Width of the side panel' })
  await expect(edge).toHaveAttribute('aria-valuenow', '428')
  await edge.focus()
  await page.keyboard.press('ArrowLeft')
  await expect(edge).toHaveAttribute('aria-valuenow', '452')
  await page.keyboard.press('End')
  await expect(edge, 'half the window').toHaveAttribute('aria-valuenow', '720')
  await page.keyboard.press('Enter')
  await expect(edge).toHaveAttribute('aria-valuenow', '428')
  const box = (await edge.boundingBox()) as { x: number; y: number; width: number; height: number }
  await page.mouse.move(box.x + box.width / 2, box.y + box.height / 2)
  await page.mouse.down()
  await page.mouse.move(box.x - 100, box.y + box.height / 2, { steps: 4 })
  await page.mouse.up()
  const width = Number(await edge.getAttribute('aria-valuenow'))
  expect(width).toBeGreaterThan(500)
  await page.reload()
  await expect(edge).toHaveAttribute('aria-valuenow', String(width))
})

test('the log has what was said before, the newest first', async ({ page }) => {
  await openApp(page)
  await page.getByRole('button', { name: 'Colour with Moss' }).click()
  await page.getByRole('button', { name: 'Done' }).click()
  await page.keyboard.press('Control+z')
  await expect(page.locator('.notice')).toHaveText('There’s nothing to undo.')
  await page.locator('summary', { hasText: 'Log' }).click()
  await expect(page.locator('.log li')).toContainText(['Finished colouring.', 'Now click patches to colour them.'])
})
