/** Pressing seams the maker's own way, with a mouse, a finger and the keyboard alone; and starting on an empty grid. */
import { board, button, type Cell, expect, notice, openApp, type Page, pixels, test } from './maker.ts'

/** In the example star: the middle of the seam between the top left square and the top goose. */
const SEAM: Cell = [1, 0.5]

const seams = (page: Page) => page.getByRole('listbox', { name: 'Seams' })
const selected = (page: Page) => seams(page).getByRole('option', { selected: true })
const bar = (page: Page) => page.getByRole('region', { name: 'Pressing', exact: true })

async function showArrows(page: Page): Promise<void> {
  // A phone has a list of the views.
  const list = page.locator('.view-list select')
  if (await list.isVisible()) await list.selectOption({ label: 'Pressing' })
  else await button(page, 'Pressing').click()
  await expect(bar(page)).toContainText('An arrow points to the side')
}

/** Three presses: the other way, open, and as it was. */
async function pressesThrice(page: Page, press: () => Promise<void>): Promise<void> {
  await press()
  await expect(notice(page)).toHaveText(/^Pressed to the (left|right): your choice\.$/)
  await expect(selected(page)).toContainText('your choice')
  await press()
  await expect(notice(page)).toHaveText('Pressed open: your choice.')
  await expect(bar(page).getByRole('button', { name: 'open' })).toHaveAttribute('aria-pressed', 'true')
  await press()
  await expect(notice(page)).toHaveText(/^Pressed to the (left|right), as proposed\.$/)
}

test('a mouse presses an arrow the other way, open, and free again', async ({ page }) => {
  await openApp(page)
  await showArrows(page)
  await pressesThrice(page, async () => {
    const { x, y } = await pixels(page, SEAM)
    await page.mouse.click(x, y)
  })
  await bar(page).getByRole('button', { name: 'open' }).click()
  await expect(notice(page)).toHaveText('Pressed open: your choice.')
  await button(page, 'Undo').click()
  await expect(notice(page)).toContainText('press a seam open')
  await expect(selected(page)).toContainText('as proposed')
})

test.describe('with a finger', () => {
  test.use({ viewport: { width: 390, height: 844 }, hasTouch: true })

  test('an arrow has a target of 44 pixels', async ({ page }) => {
    await openApp(page)
    await showArrows(page)
    await pressesThrice(page, async () => {
      const { x, y } = await pixels(page, SEAM)
      // As far from the middle of the arrow as a target of 44 pixels reaches, away from the next arrow.
      await page.touchscreen.tap(x - 21, y)
    })
  })
})

test('keys alone go from seam to seam and press them', async ({ page }) => {
  await openApp(page)
  await showArrows(page)
  await board(page).focus()
  await page.keyboard.press('ArrowRight')
  await expect(selected(page)).toHaveCount(1)
  const first = await board(page).getAttribute('aria-activedescendant')
  await page.keyboard.press('ArrowRight')
  await expect(board(page)).not.toHaveAttribute('aria-activedescendant', first ?? '')
  await page.keyboard.press('o')
  await expect(notice(page)).toHaveText('Pressed open: your choice.')
  await page.keyboard.press('Delete')
  await expect(notice(page)).toContainText('as proposed')
  await page.keyboard.press('t')
  await expect(notice(page)).toContainText('your choice')
  await page.keyboard.press('Escape')
  await expect(selected(page)).toHaveCount(0)
})

test('an empty grid offers its starts, and says how far it is filled without a fault', async ({ page }) => {
  await openApp(page)
  await button(page, 'My blocks').click()
  await button(page, 'Empty grid').click()
  await expect(page.getByRole('region', { name: 'Start your block' })).toBeVisible()
  await button(page, 'Place a square').click()
  const { x, y } = await pixels(page, [0.5, 0.5])
  await page.mouse.click(x, y)
  await expect(page.getByTestId('sum')).toHaveText('Keep going: 1 of 16 squares filled.')
  await expect(page.locator('.problems .error')).toHaveCount(0)
  await button(page, 'Undo').click()
  await button(page, 'Done').click()
  await button(page, 'Start with a star').click()
  await expect(page.getByTestId('sum')).toContainText('nest')
})
