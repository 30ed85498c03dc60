/** What the engine knows, seen on the screen: layers of cloth, copies side by side, a block that came out otherwise, alike units pressed alike. */
import { CLASHING } from './blocks.ts'
import { board, button, expect, findings, openApp, openSheet, type Page, saved, SHEET_SCREEN, test, BOTH_ENGINES } from './maker.ts'

const neighbours = (page: Page) => page.getByRole('region', { name: 'Blocks side by side' })
const sewn = (page: Page) => page.getByRole('region', { name: 'My block looks different' })

test.describe('what the engine knows', () => {
  test.use(SHEET_SCREEN)

  test('layers of cloth are counted, and a clash says how many it costs', BOTH_ENGINES, async ({ page }) => {
    await openApp(page)
    await page
      .getByLabel('Block file')
      .setInputFiles({ name: 'four.json', mimeType: 'application/json', buffer: Buffer.from(JSON.stringify(CLASHING)) })
    // Four square seams: nine layers where they clash, seven where they nest, by arithmetic.
    await expect(findings(page)).toContainText('9 layers here; 7 if it nested.')
    await expect(findings(page)).toContainText('Bulkiest spot: 9 layers')
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
    await expect(findings(page)).toContainText('Bulkiest spot: 7 layers')
    await findings(page).getByText('1 crossing nests').click()
    await expect(findings(page)).toContainText('7 layers here; 4 if you fan the seams around the point.')
  })

  test('copies are set edge to edge, by mouse and by keyboard', async ({ page }) => {
    await openApp(page)
    await openSheet(page, 'Setting')
    await expect(neighbours(page).getByRole('img', { name: /3 by 3 blocks/ })).toBeVisible()
    await expect(page.getByTestId('setting-sum')).toHaveText(/crossings between blocks don’t nest/)
    await neighbours(page).getByLabel('Blocks across').selectOption('2')
    await neighbours(page).getByLabel('Down').selectOption('1')
    await expect(neighbours(page).getByRole('img', { name: /2 by 1 blocks/ })).toBeVisible()
    const alike = await page.getByTestId('setting-sum').textContent()
    await neighbours(page).getByLabel('Pressing').focus()
    await page.keyboard.press('ArrowDown')
    await expect(page.getByTestId('setting-sum')).not.toHaveText(alike ?? '')
  })

  test('a star that came out otherwise is led back', async ({ page }) => {
    await openApp(page)
    await button(page, 'Save this as the plan').click()
    await expect(page.getByTestId('moves')).toHaveText('It matches the plan.')
    await board(page).focus()
    for (const key of ['ArrowRight', 'Enter', 'Shift+T']) await page.keyboard.press(key)
    await expect(page.getByTestId('moves')).toHaveText('One change fixes it:')
    await expect(sewn(page)).toContainText('Rotate the top goose 180°')
    await button(page, 'Go back to the plan').click()
    await expect(findings(page)).toContainText('All 4 seam crossings nest.')
    await expect(button(page, 'Save this as the plan')).toBeVisible()
  })

  test('the quilting line is shown, begun elsewhere, filled and saved to scale', async ({ page }) => {
    await openApp(page)
    await openSheet(page, 'Quilting')
    await button(page, 'Show the quilting line').click()
    // A star's seams can be drawn in one go: every point of them has an even number of ends but for those at the edge.
    await expect(page.getByTestId('route')).toHaveText(/^1 line, 81 15\/16 in long; nothing stitched twice; 1 start, \d+ turns\.$/)
    await page.getByLabel('Follow the needle').focus()
    await page.keyboard.press('Home')
    await expect(page.getByLabel('Follow the needle')).toHaveValue('0')
    await page
      .getByRole('region', { name: 'Quilting' })
      .getByLabel(/^Start/)
      .selectOption('topLeft')
    await expect(page.getByTestId('route')).toHaveText(/^1 line, /)
    await page.getByLabel(/^Fill/).selectOption('echo')
    await expect(page.getByText(/The widest gap between stitches is 1 in/)).toBeVisible()
    const picture = await saved(page, () => button(page, 'Save quilting line as SVG').click())
    expect(picture.name).toMatch(/-quilting\.svg$/)
  })

  test('alike units are pressed alike when asked, and the wish is undone', async ({ page }) => {
    await openApp(page)
    await openSheet(page, 'Block')
    const tick = page.getByLabel('Press matching units the same way')
    await tick.check()
    await openSheet(page, 'Seam check')
    await expect(findings(page)).toContainText('seam crossings nest')
    await openSheet(page, 'Block')
    await button(page, 'Undo').click()
    await expect(tick).not.toBeChecked()
  })
})
