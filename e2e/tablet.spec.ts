/** The board under a finger, on a tablet held upright: what the hand does, and what is in sight meanwhile. */
import { board, button, type Cell, expect, findings, openApp, type Page, pixels, test } from './maker.ts'

const UPRIGHT = { width: 820, height: 1180 }

test.use({ viewport: UPRIGHT, hasTouch: true })

type Spot = { readonly x: number; readonly y: number }
type Fingers = (type: 'touchStart' | 'touchMove' | 'touchEnd', points: readonly Spot[]) => Promise<unknown>

async function fingers(page: Page): Promise<Fingers> {
  const session = await page.context().newCDPSession(page)
  return (type, points) => session.send('Input.dispatchTouchEvent', { type, touchPoints: points.map(({ x, y }, id) => ({ x, y, id })) })
}

async function tap(page: Page, at: Cell): Promise<void> {
  const { x, y } = await pixels(page, at)
  await page.touchscreen.tap(x, y)
}

test('the board and what is found about it are in sight together', async ({ page }) => {
  await openApp(page)
  await tap(page, [1, 1])
  const found = page.getByRole('button', { name: /^Seams 11 and 15/ })
  await expect(found).toBeFocused()
  await expect(found).toBeInViewport()
  await expect(findings(page)).toBeInViewport()
  const [cloth, sheet] = [await board(page).boundingBox(), await page.getByRole('tabpanel').boundingBox()]
  expect(cloth?.y).toBeGreaterThan(0)
  expect((cloth?.y ?? 0) + (cloth?.height ?? 0), 'the sheet begins below the board').toBeLessThan(sheet?.y ?? 0)
  expect(sheet?.y, 'and above the edge of the screen').toBeLessThan(UPRIGHT.height - 200)
  expect(await page.evaluate(() => window.scrollY)).toBe(0)
  await expect(button(page, 'Undo')).toBeInViewport()
})
