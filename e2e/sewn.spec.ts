/** What the engine knows, seen on the screen: layers of cloth, copies side by side, a block that came out otherwise, alike units pressed alike. */
import { CLASHING } from './blocks.ts'
import { board, button, expect, findings, openApp, openSheet, type Page, saved, SHEET_SCREEN, test, BOTH_ENGINES } from './maker.ts'

const neighbours = (page: Page) => page.getByRole('region', { name: 'Beside its neighbours' })
const sewn = (page: Page) => page.getByRole('region', { name: 'As it came out' })

test.describe('what the engine knows', () => {
  test.use(SHEET_SCREEN)

  test('layers of cloth are counted, and a clash says how many it costs', BOTH_ENGINES, async ({ page }) => {
    await openApp(page)
    await page
      .getByLabel('Block file')
      .setInputFiles({ name: 'four.json', mimeType: 'application/json', buffer: Buffer.from(JSON.stringify(CLASHING)) })
    // Four square seams: nine layers where they clash, seven where they nest, by arithmetic.
    await expect(findings(page)).toContainText('9 layers lie here; nested there would be 7, 2 fewer.')
    await expect(findings(page)).toContainText('Thickest spot: 9 layers of cloth')
    await button(page, 'Layers').click()
    await expect(page.getByRole('list', { name: 'Layers of fabric by colour' }).getByRole('listitem')).toHaveText([
      /^1 layer /,
      /^3 layers /,
      /^9 layers /,
    ])
    await findings(page)
      .getByRole('button', { name: /Press seam \d the other way/ })
      .first()
      .click()
    await expect(findings(page)).toContainText('Thickest spot: 7 layers of cloth')
    await findings(page).getByText('1 × nests').click()
    await expect(findings(page)).toContainText('7 layers lie here; fanned round the point there are 4.')
  })

  test('copies are set edge to edge, by mouse and by keyboard', async ({ page }) => {
    await openApp(page)
    await openSheet(page, 'Setting')
    await expect(neighbours(page).getByRole('img', { name: /3 by 3 blocks/ })).toBeVisible()
    await expect(page.getByTestId('setting-sum')).toHaveText(/crossings between blocks don’t nest/)
    await neighbours(page).getByLabel('Across').selectOption('2')
    await neighbours(page).getByLabel('Down').selectOption('1')
    await expect(neighbours(page).getByRole('img', { name: /2 by 1 blocks/ })).toBeVisible()
    const alike = await page.getByTestId('setting-sum').textContent()
    await neighbours(page).getByLabel('Pressed').focus()
    await page.keyboard.press('ArrowDown')
    await expect(page.getByTestId('setting-sum')).not.toHaveText(alike ?? '')
  })

  test('a star that came out otherwise is led back', async ({ page }) => {
    await openApp(page)
    await button(page, 'Keep this as laid').click()
    await expect(page.getByTestId('moves')).toHaveText('It is as it was laid.')
    await board(page).focus()
    for (const key of ['ArrowRight', 'Enter', 'Shift+T']) await page.keyboard.press(key)
    await expect(page.getByTestId('moves')).toHaveText('One move leads back:')
    await expect(sewn(page)).toContainText('half round')
    await button(page, 'Back to the layout').click()
    await expect(findings(page)).toContainText('All 4 meetings of seams nest.')
    await expect(button(page, 'Keep this as laid')).toBeVisible()
  })

  test('the quilting line is shown, begun elsewhere, filled and saved to scale', async ({ page }) => {
    await openApp(page)
    await openSheet(page, 'Quilting')
    await button(page, 'Show the quilting line').click()
    // A star's seams can be drawn in one go: every point of them has an even number of ends but for those at the edge.
    await expect(page.getByTestId('route')).toHaveText(/^One line, 81 15\/16 in long; nothing stitched twice; one start, \d+ turns\.$/)
    await page.getByLabel('The needle, from start to end').focus()
    await page.keyboard.press('Home')
    await expect(page.getByLabel('The needle, from start to end')).toHaveValue('0')
    await page
      .getByRole('region', { name: 'Quilting' })
      .getByLabel(/^Begin/)
      .selectOption('topLeft')
    await expect(page.getByTestId('route')).toHaveText(/^One line, /)
    await page.getByLabel(/^Fill/).selectOption('echo')
    await expect(page.getByText(/The widest place without a stitch is 2 in across/)).toBeVisible()
    const picture = await saved(page, () => button(page, 'Save as a picture to scale').click())
    expect(picture.name).toMatch(/-quilting\.svg$/)
  })

  test('alike units are pressed alike when asked, and the wish is undone', async ({ page }) => {
    await openApp(page)
    await openSheet(page, 'Block')
    const tick = page.getByLabel('Press alike units alike')
    await tick.check()
    await openSheet(page, 'Findings')
    await expect(findings(page)).toContainText('meetings of seams nest')
    await openSheet(page, 'Block')
    await button(page, 'Undo').click()
    await expect(tick).not.toBeChecked()
  })
})
