/** From units to scissors on the screen: ways to make a unit, stars of one batch, how a fabric is cut, and the whole quilt. */
import { board, button, clothOf, cutList, expect, notice, openApp, openSheet, type Page, saved, SHEET_SCREEN, test, BOTH_ENGINES } from './maker.ts'

async function chooseTopGoose(page: Page): Promise<void> {
  await board(page).focus()
  for (const key of ['ArrowRight', 'Enter']) await page.keyboard.press(key)
  await expect(page.getByRole('heading', { name: 'Top goose' })).toBeVisible()
}

test.describe('from units to scissors', () => {
  test.use(SHEET_SCREEN)

  test('ways to make a goose are compared, and one is taken for all alike', async ({ page }) => {
    await openApp(page)
    await openSheet(page, 'Block')
    await chooseTopGoose(page)
    await page.getByRole('region', { name: 'Top goose' }).getByText('Compare methods and see how to trim').click()
    // Geese that finish 6 by 3 are trimmed with the tip 1/4 in below the top, in the middle of 6 1/2 [S17][S8].
    await expect(page.getByText(/the 45° line on the slanted seam, the point 3 1\/4 in from the right edge and 1\/4 in from the top/)).toBeVisible()
    await page.locator('.more-actions summary').click()
    await button(page, 'Select all like this').click()
    await expect(page.getByRole('heading', { name: '4 units selected' })).toBeVisible()
    await button(page, 'stitch and flip').click()
    await openSheet(page, 'Cutting')
    // Stitch and flip, 6 by 3 [S14].
    await expect(cutList(page)).toContainText('4 rectangles 3 1/2 × 6 1/2 in')
    await expect(cutList(page)).toContainText('8 squares 3 1/2 × 3 1/2 in')
    await button(page, 'Undo').click()
    await expect(cutList(page)).toContainText('1 square 7 1/4 × 7 1/4 in')
  })

  test('a colouring that needs two batches is led back to one, and the stars of one batch are offered', async ({ page }) => {
    await openApp(page)
    await openSheet(page, 'Block')
    await chooseTopGoose(page)
    await page.getByLabel('Left wing').selectOption({ label: 'Moss' })
    await openSheet(page, 'Cutting')
    await expect(cutList(page)).toContainText('Two batches of four make all your geese')
    await button(page, /^Change 1 wing to need only one batch$/).click()
    await expect(cutList(page)).toContainText('One batch of four makes all your geese')
    await button(page, 'Undo').click()
    await expect(cutList(page)).toContainText('Two batches of four make all your geese')
    await cutList(page)
      .getByRole('button', { name: /^Use star 1 of/ })
      .click()
    await expect(cutList(page)).toContainText('One batch of four makes all your geese')
  })

  test('each fabric is drawn as it is cut, and the whole quilt is worked out', async ({ page }) => {
    await openApp(page)
    await openSheet(page, 'Cutting')
    // Each fabric's drawing comes by itself, in any order.
    await clothOf(page, 'Linen white').getByText('How to cut it: 1 strip').click()
    await expect(clothOf(page, 'Linen white').getByRole('img', { name: /^Linen white: a strip 7 1\/4 wide, cut into/ })).toBeVisible()
    await page.getByText('Fabric, binding, backing, batting').click()
    // A quilt joined from quilted blocks has no backing in one piece, so the whole quilt is not offered that way: common practice, no source.
    await expect(page.getByLabel('How you quilt it').getByRole('option')).toHaveText(['on a home machine', 'on a longarm'])
    await page.getByLabel('Blocks across').selectOption('4')
    await page.getByLabel('Blocks down').selectOption('4')
    // 48 by 48 finished; binding of the edge and 10 in more over 42 in, by the rule of the printed patterns [S132].
    await expect(page.getByTestId('quilt')).toContainText('48 1/2 × 48 1/2 in unfinished')
    await expect(page.getByTestId('quilt')).toContainText('5 strips 2 1/2 in wide')
  })
})

test.describe('on a desk, the cutting sheet', () => {
  test.use({ viewport: { width: 1440, height: 900 } })

  test('units are cut larger and made another way for all alike, and the cut list follows', async ({ page }) => {
    await openApp(page)
    await openSheet(page, 'Cutting')
    const making = page.getByRole('region', { name: 'Making the units' })
    await making.getByLabel('Extra for trimming').selectOption({ label: '1/4 in' })
    // 6 by 3 geese from 7 1/2 and 4 [S9].
    await expect(cutList(page)).toContainText('1 square 7 1/2 × 7 1/2 in')
    await expect(cutList(page)).toContainText('4 squares 4 × 4 in')
    await button(page, 'Undo').click()
    await expect(cutList(page)).toContainText('4 squares 3 7/8 × 3 7/8 in')
    await making.getByLabel('Flying goose: method').selectOption({ label: 'traditional piecing' })
    await expect(cutList(page)).toContainText('4 squares 3 7/8 × 3 7/8 in, cut once from corner to corner')
    // Another fabric on one point makes another look of the same kind: one choice serves both.
    await openSheet(page, 'Block')
    await chooseTopGoose(page)
    await page.getByLabel('Left wing').selectOption({ label: 'Moss' })
    await openSheet(page, 'Cutting')
    await making.getByLabel('Method for all 4: Flying goose').selectOption({ label: 'stitch and flip' })
    await expect(cutList(page)).toContainText('4 rectangles 3 1/2 × 6 1/2 in')
    for (let back = 0; back < 2; back += 1) await button(page, 'Undo').click()
    await cutList(page).getByLabel('Number of blocks').fill('3')
    await page.keyboard.press('Enter')
    await expect(cutList(page)).toContainText('3 squares 7 1/4 × 7 1/4 in, cut twice from corner to corner')
  })

  test('what is on hand is put by, kept, and serves before anything is bought', async ({ page }) => {
    await openApp(page)
    await openSheet(page, 'Cutting')
    const stash = page.getByRole('region', { name: 'Your stash' })
    await stash.getByLabel('Precut or size').selectOption({ label: 'another size' })
    await stash.getByLabel('Width (in)').fill('21 1/4')
    await expect(button(page, 'Add to stash')).toBeDisabled()
    await stash.getByLabel('Length (in)').fill('7 1/4')
    await button(page, 'Add to stash').click()
    await expect(notice(page)).toHaveText('Linen white added to your stash.')
    // A square of 7 1/4 and four of 3 1/2 side by side: 21 1/4 at most; geometry.
    await expect(stash).toContainText('Linen white nothing to buy')
    await expect(stash.locator('.served h3').first()).toHaveCSS('column-gap', /^[1-9]/)
    await page.reload()
    await openSheet(page, 'Cutting')
    await expect(stash).toContainText('Linen white nothing to buy')
    await stash.getByRole('spinbutton').fill('0')
    await expect(stash).not.toContainText('nothing to buy')
    await button(page, 'Delete from your stash: Linen white, 21 1/4 × 7 1/4 in').click()
    await expect(stash.getByRole('list', { name: 'In your stash' }).getByRole('listitem')).toHaveCount(0)
  })

  test('a size chart of any seam and step is shown, and saved as CSV', BOTH_ENGINES, async ({ page }) => {
    await openApp(page)
    await openSheet(page, 'Cutting')
    await button(page, 'Open the size chart').click()
    const chart = page.getByRole('dialog', { name: 'Size chart' })
    await chart.getByLabel(/^Unit/).selectOption({ label: 'Hourglasses, two at a time' })
    // Hourglasses that finish 4 in from 5 1/4 [S197].
    await expect(chart.getByRole('row', { name: /^4 4 1\/2/ })).toContainText('5 1/4')
    await chart.getByLabel('Steps of').fill('0')
    await expect(chart).toContainText('Enter a length above zero')
    await chart.getByLabel('Steps of').fill('3')
    await chart.getByLabel('Finished size from').click()
    await expect(chart.getByRole('row')).toHaveCount(5)
    const { name } = await saved(page, () => chart.getByRole('button', { name: 'Save as CSV' }).click())
    expect(name).toBe('size-chart-hourglass-in.csv')
    await expect(notice(page)).toHaveText('Size chart saved as size-chart-hourglass-in.csv.')
    await page.keyboard.press('Escape')
    await expect(chart).toBeHidden()
  })

  test('a border with corner squares is cut to length, and its strips are measured', async ({ page }) => {
    await openApp(page)
    await openSheet(page, 'Block')
    await button(page, 'Add a border').click()
    await page.getByLabel('Corner squares of border 1').selectOption({ label: 'Honey' })
    await openSheet(page, 'Cutting')
    const quilt = page.getByRole('region', { name: 'The whole quilt' })
    // All four strips are as long as the block: 12 1/2 in; geometry.
    await expect(quilt).toContainText('4 × 1 1/2 × 1 1/2 in, Honey')
    await expect(quilt.getByText('2 × 1 1/2 × 12 1/2 in, Linen white')).toHaveCount(2)
    await quilt.getByLabel('Through the middle').fill('12 1/2')
    await quilt.getByLabel('One edge').fill('12 3/4')
    // The mean, to the next 1/8 [S129].
    await expect(quilt).toContainText('Cut both strips 12 5/8 in long. You can ease the edges to fit.')
  })
})
