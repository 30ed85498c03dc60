/** What anybody needs to use the page: no barrier that the checker knows of, on each screen, in light and dark, at rest and at work. */
import { barriers, clothOf, expect, openApp, openSheet, pixels, SCREENS, test } from './maker.ts'

// Colours do not change with the screen, nor the order of the page
// with the light: two screens and two lights are two pairs.
for (const [{ name, width, height }, colorScheme] of [
  [SCREENS[0], 'light'],
  [SCREENS[1], 'dark'],
] as const) {
  test.describe(`${name}, ${colorScheme}`, () => {
    test.use({ viewport: { width, height }, colorScheme })

    test('the page has no known barrier', async ({ page }) => {
      await openApp(page)
      expect(await barriers(page)).toEqual([])
      const { x, y } = await pixels(page, [1.3, 1.3])
      await page.mouse.click(x, y)
      await expect(page.getByRole('toolbar', { name: 'Selected units' })).toBeVisible()
      expect(await barriers(page)).toEqual([])
      await page.getByRole('button', { name: 'Layers', exact: true }).click()
      for (const sheet of ['Block', 'Cutting', 'Quilting', 'Setting']) {
        await openSheet(page, sheet)
        await expect(page.getByRole('tabpanel').getByRole('heading').first()).toBeVisible()
        // What lies around the sheet is as it was.
        expect(await barriers(page, '#sheet')).toEqual([])
      }
      await expect(page.getByTestId('setting-sum')).toBeVisible()
      await expect(page.getByRole('list', { name: 'Layers of fabric by colour' })).toBeVisible()
      expect(await barriers(page)).toEqual([])
    })
  })
}

for (const colorScheme of ['light', 'dark'] as const)
  test.describe(`on a desk, ${colorScheme}, cutting`, () => {
    test.use({ viewport: { width: 1440, height: 900 }, colorScheme })

    test('the cutting sheet at work and the size chart have no known barrier', async ({ page }) => {
      await openApp(page)
      await openSheet(page, 'Cutting')
      await clothOf(page, 'Linen white').getByText('How to cut it: 1 strip').click()
      await page.getByRole('region', { name: 'Making the units' }).getByText('Compare methods and see how to trim').first().click()
      await page.getByText('Fabric, binding, backing, batting').click()
      await page.getByRole('button', { name: 'Add to stash', exact: true }).click()
      await expect(page.getByRole('region', { name: 'Your stash' })).toContainText('nothing to buy')
      expect(await barriers(page, undefined, colorScheme === 'dark' ? 'contrast' : 'everything')).toEqual([])
      await page.getByRole('button', { name: 'Open the size chart', exact: true }).click()
      await expect(page.getByRole('dialog', { name: 'Size chart' })).toBeVisible()
      expect(await barriers(page, undefined, colorScheme === 'dark' ? 'contrast' : 'everything')).toEqual([])
    })
  })
