/** The picture in the README: what a maker sees at first start. */
import { expect, findings, openApp, test } from './maker.ts'

test.use({ viewport: { width: 1440, height: 900 }, colorScheme: 'light' })

// One engine's picture is enough.
test('the star at first start is pictured for the README', async ({ page }) => {
  await openApp(page)
  await expect(findings(page)).toContainText('seam crossings')
  await page.evaluate(() => document.fonts.ready)
  await page.screenshot({ path: 'e2e/pictures/star.png' })
})
