/** What anybody needs to use the page: no barrier that the checker knows of, on each screen, in light and dark, at rest and at work. */
import { AxeBuilder } from '@axe-core/playwright'
import { CHROMIUM, expect, openApp, openSheet, pixels, SCREENS, test } from './maker.ts'

// What the checker reads is the page's and no engine's; in a second one it takes minutes.
for (const { name, width, height } of SCREENS) {
  for (const colorScheme of ['light', 'dark'] as const) {
    test.describe(`${name}, ${colorScheme}`, () => {
      test.use({ viewport: { width, height }, colorScheme })

      test('the page has no known barrier', CHROMIUM, async ({ page }) => {
        await openApp(page)
        expect(await barriers(page)).toEqual([])
        const { x, y } = await pixels(page, [1.3, 1.3])
        await page.mouse.click(x, y)
        await expect(page.getByRole('heading', { name: /centre/ })).toBeVisible()
        expect(await barriers(page)).toEqual([])
        await page.getByRole('button', { name: 'Layers of cloth', exact: true }).click()
        for (const sheet of ['Block', 'Cutting', 'Quilting', 'Setting']) {
          await openSheet(page, sheet)
          await expect(page.getByRole('tabpanel').getByRole('heading').first()).toBeVisible()
          expect(await barriers(page)).toEqual([])
        }
        await expect(page.getByTestId('setting-sum')).toBeVisible()
        await expect(page.getByRole('list', { name: 'Layers of cloth by colour' })).toBeVisible()
        expect(await barriers(page)).toEqual([])
      })
    })
  }
}

for (const colorScheme of ['light', 'dark'] as const)
  test.describe(`on a desk, ${colorScheme}, cutting`, () => {
    test.use({ viewport: { width: 1440, height: 900 }, colorScheme })

    test('the cutting sheet at work and the size chart have no known barrier', CHROMIUM, async ({ page }) => {
      await openApp(page)
      await openSheet(page, 'Cutting')
      for (const words of ['How to cut it: one strip', 'Compare the ways, and how to trim', 'Cloth, binding, backing, batting'])
        await page.getByText(words).first().click()
      await page.getByRole('button', { name: 'Put by', exact: true }).click()
      await expect(page.getByRole('region', { name: 'From the stash' })).toContainText('nothing to buy')
      expect(await barriers(page)).toEqual([])
      await page.getByRole('button', { name: 'Open the size chart', exact: true }).click()
      await expect(page.getByRole('dialog', { name: 'Size chart' })).toBeVisible()
      expect(await barriers(page)).toEqual([])
    })
  })

async function barriers(page: Parameters<typeof openApp>[0]): Promise<string[]> {
  const { violations } = await new AxeBuilder({ page }).analyze()
  return violations.map(({ id, nodes }) => `${id}: ${nodes.map(({ target }) => target.join(' ')).join(', ')}`)
}
