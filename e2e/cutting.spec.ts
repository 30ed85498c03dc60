/** From units to scissors on the screen: ways to make a unit, stars of one batch, how a fabric is cut, and the whole quilt. */
import { board, button, cutList, expect, openApp, openSheet, type Page, SCREENS, test } from './maker.ts'

async function chooseTopGoose(page: Page): Promise<void> {
  await board(page).focus()
  for (const key of ['ArrowRight', 'Enter']) await page.keyboard.press(key)
  await expect(page.getByRole('heading', { name: /Flying goose/ })).toBeVisible()
}

for (const { name, width, height } of SCREENS) {
  test.describe(name, () => {
    test.use({ viewport: { width, height } })

    test('ways to make a goose are compared, and one is taken for all alike @both', async ({ page }) => {
      await openApp(page)
      await openSheet(page, 'Cutting')
      await chooseTopGoose(page)
      await page.getByText('Ways to make it, and to trim it').click()
      // Geese that finish 6 by 3 are trimmed with the tip 1/4 in below the top, in the middle of 6 1/2: handbook section 1 [S17][S8].
      await expect(page.getByText(/45° line on the slanting seam, tip 3 1\/4 in from the right edge and 1\/4 in from the top/)).toBeVisible()
      await button(page, 'Choose all alike').click()
      await expect(page.getByRole('heading', { name: '4 units' })).toBeVisible()
      await button(page, 'flipped corners').click()
      // Stitch and flip, 6 by 3: handbook section 2 [S14].
      await expect(cutList(page)).toContainText('4 rectangles 6 1/2 × 3 1/2 in')
      await expect(cutList(page)).toContainText('8 squares 3 1/2 × 3 1/2 in')
      await button(page, 'Undo').click()
      await expect(cutList(page)).toContainText('1 square 7 1/4 × 7 1/4 in')
    })

    test('a colouring that needs two batches is led back to one, and the stars of one batch are offered @both', async ({ page }) => {
      await openApp(page)
      await openSheet(page, 'Cutting')
      await chooseTopGoose(page)
      await page.getByLabel('Left wing').selectOption({ label: 'Moss' })
      await expect(cutList(page)).toContainText('Two batches make these geese')
      await button(page, /^Make do with one batch: one wing would change$/).click()
      await expect(cutList(page)).toContainText('One batch makes these geese')
      await button(page, 'Undo').click()
      await expect(cutList(page)).toContainText('Two batches make these geese')
      await cutList(page)
        .getByRole('button', { name: /^Star 1 of/ })
        .click()
      await expect(cutList(page)).toContainText('One batch makes these geese')
    })

    test('each fabric is drawn as it is cut, and the whole quilt is reckoned @both', async ({ page }) => {
      await openApp(page)
      await openSheet(page, 'Cutting')
      await cutList(page).getByText('How to cut it: one strip').first().click()
      await expect(cutList(page).getByRole('img', { name: /^Linen white: a strip 7 1\/4 high, cut into/ })).toBeVisible()
      await page.getByText('Cloth, binding, backing, batting').click()
      await page.getByLabel('Blocks across').selectOption('4')
      await page.getByLabel('Blocks down').selectOption('4')
      // 48 by 48 finished; binding of the edge and 10 in more over 42 in, by the rule of the printed patterns: handbook section 8 [S132].
      await expect(page.getByTestId('quilt')).toContainText('48 1/2 × 48 1/2 in unfinished')
      await expect(page.getByTestId('quilt')).toContainText('5 strips 2 1/2 in wide')
    })
  })
}
