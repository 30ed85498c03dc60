/** The booklet on the screen: the steps with their pictures, the maker's own words, what becomes of them when the block changes, a photograph. */
import { barriers, button, expect, kept, type Locator, openApp, openFile, openSheet, type Page, SHEET_SCREEN, test, BOTH_ENGINES } from './maker.ts'

const booklet = (page: Page): Locator => page.getByRole('region', { name: 'Booklet' })
const step = (page: Page, title: RegExp): Locator => booklet(page).getByRole('listitem', { name: title })

/** A red dot: the smallest photograph. */
const DOT = 'iVBORw0KGgoAAAANSUhEUgAAAAEAAAABCAYAAAAfFcSJAAAADUlEQVR42mP8z8DwHwAFBQIAX8jx0gAAAABJRU5ErkJggg=='

for (const colorScheme of ['light', 'dark'] as const) {
  test.describe(colorScheme, () => {
    test.use({ ...SHEET_SCREEN, colorScheme })

    test('the steps of the star are told and drawn', async ({ page }) => {
      await openApp(page)
      await openSheet(page, 'Booklet')
      await expect(step(page, /Make 4 geese/)).toContainText('Press both seams toward the wings.')
      await expect(step(page, /Join the rows/)).toContainText('nest the seams at 2 points')
      await expect(step(page, /Sew rows 1 and 3/).getByRole('img', { name: /from the wrong side, sewn and pressed/ })).toBeVisible()
      expect(await barriers(page, undefined, colorScheme === 'dark' ? 'contrast' : 'everything')).toEqual([])
    })
  })
}

test("a maker's words are kept, marked when the block moves on, and put back", async ({ page }) => {
  await openApp(page)
  await openSheet(page, 'Booklet')
  await page.getByLabel('Title').fill('A star for the first class')
  await page.getByLabel('By', { exact: true }).fill('An invented maker')
  const row = step(page, /Sew rows 1 and 3/)
  await row.getByRole('button', { name: /^Edit text of step/ }).click()
  await row.getByRole('textbox', { name: /^Text of step/ }).fill('Sew the first row as I show you.')
  await row.getByRole('button', { name: /^Add note/ }).click()
  await row.getByRole('textbox', { name: /^Note for step/ }).fill('Mind the iron.')
  for (const words of ['text of', 'note for']) await row.getByRole('button', { name: new RegExp(`^Done editing the ${words} step`) }).click()
  await expect(row).toContainText('Sew the first row as I show you.')
  await expect(row).toContainText('Mind the iron.')
  await kept(page)
  await page.reload()
  await openSheet(page, 'Booklet')
  await expect(page.getByLabel('Title')).toHaveValue('A star for the first class')
  await expect(row).toContainText('Sew the first row as I show you.')
  await expect(row).not.toContainText('The block has changed')

  await openSheet(page, 'Block')
  await page.getByLabel('Grid square, finished (in)').fill('2')
  await page.keyboard.press('Enter')
  await openSheet(page, 'Booklet')
  await expect(row).toContainText('The block has changed since you wrote this.')
  await row.getByRole('button', { name: /^Restore original text of step/ }).click()
  await expect(row).toContainText('8 1/2 × 2 1/2 in')
  await expect(row).toContainText('Mind the iron.')
  await button(page, 'Undo').click()
  await expect(row).toContainText('Sew the first row as I show you.')
})

test('a photograph is added to a step and taken away', BOTH_ENGINES, async ({ page }) => {
  await openApp(page)
  await openSheet(page, 'Booklet')
  const layout = step(page, /Lay out the block/)
  await openFile(page, () => layout.getByRole('button', { name: /^Add photo/ }).click(), 'dot.png', Buffer.from(DOT, 'base64'))
  await expect(layout.getByRole('img', { name: /^Your photo/ })).toBeVisible()
  await openFile(page, () => layout.getByRole('button', { name: /^Change photo/ }).click(), 'words.txt', 'no picture')
  await expect(page.getByText(/read words.txt as a picture/)).toBeVisible()
  await layout.getByRole('button', { name: /^Delete photo/ }).click()
  await expect(layout.getByRole('img', { name: /^Your photo/ })).toHaveCount(0)
})
