/** The board under a finger, on a tablet held upright: what the hand does, and what is in sight meanwhile. Only the first engine's driver has fingers. */
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
  const found = page.getByRole('button', { name: /^Seams 9 and 11/ })
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

/** From one cell to the next, and on; the last is left at once, as a quick hand does. */
async function draw(page: Page, ...way: readonly Cell[]): Promise<void> {
  const touch = await fingers(page)
  const spots = await Promise.all(way.map((at) => pixels(page, at)))
  await touch('touchStart', spots.slice(0, 1))
  for (const [index, to] of spots.slice(1).entries()) {
    const from = spots[index] as Spot
    for (const part of [0.2, 0.4, 0.6, 0.8, 1]) await touch('touchMove', [{ x: from.x + (to.x - from.x) * part, y: from.y + (to.y - from.y) * part }])
  }
  await touch('touchEnd', [])
}

/** Fingers side by side come down one after the other, and are lifted. */
async function tapWith(page: Page, count: number, at: Cell): Promise<void> {
  const touch = await fingers(page)
  const { x, y } = await pixels(page, at)
  const all = Array.from({ length: count }, (_, index) => ({ x: x + index * 60, y: y + index * 10 }))
  for (let down = 1; down <= count; down++) await touch('touchStart', all.slice(0, down))
  await touch('touchEnd', [])
}

const cell = (page: Page, [x, y]: Cell) => page.locator(`#cell-${x}-${y}`)

test('a star is laid from an empty grid in four presses and a run, and two fingers take steps back', async ({ page }) => {
  await openApp(page)
  await button(page, 'My blocks').tap()
  await button(page, 'Empty grid').tap()
  await expect(page.getByRole('application', { name: /New block/ })).toBeVisible()
  await page.getByRole('combobox', { name: 'Symmetry' }).selectOption('quarters')
  await button(page, 'Square').tap()
  await tap(page, [0.5, 0.5])
  await button(page, 'Flying goose').tap()
  await button(page, 'Turn').tap()
  await button(page, 'Turn').tap()
  // On the line between two cells: it lies over both.
  await tap(page, [2, 0.5])
  await expect(cell(page, [1, 0])).toContainText('goose')
  await expect(cell(page, [2, 0])).toContainText('half turn')
  await expect(cell(page, [3, 2]), 'its image lies on the next side').toContainText('three-quarter turn')
  await button(page, 'Square').tap()
  // Dragged over the four cells in the middle: one large square, its own image.
  await draw(page, [1.5, 1.5], [2.5, 2.5])
  await expect(page.getByTestId('sum')).toContainText('All 4 seam crossings nest.')

  await tapWith(page, 2, [0.6, 1])
  await expect(cell(page, [1, 1])).not.toContainText('Square')
  await tapWith(page, 3, [0.6, 1])
  await expect(cell(page, [2, 2])).toContainText('Square')
})

test('a fabric is drawn over patches in one step; a quick hand is followed by a press at once', async ({ page }) => {
  await openApp(page)
  await button(page, 'Colour with Moss').tap()
  await draw(page, [0.3, 0.5], [3.7, 0.5])
  for (const x of [0, 3]) await expect(cell(page, [x, 0])).toContainText('Patch in Moss')
  await expect(cell(page, [1, 0])).toContainText('Centre triangle in Moss, Left wing in Moss, Right wing in Moss')
  await button(page, 'Undo').tap()
  for (const x of [0, 3]) await expect(cell(page, [x, 0])).toContainText('Patch in Linen white')
  await expect(button(page, 'Undo')).toBeDisabled()
})

test('a handle under a pinch does nothing', async ({ page }) => {
  await openApp(page)
  await tap(page, [2, 0.35])
  await expect(page.getByRole('toolbar', { name: 'Selected units' })).toBeVisible()
  const touch = await fingers(page)
  // A handle stands beside each corner of what is selected.
  const corner = await pixels(page, [3, 1])
  const [down, beside] = [{ x: corner.x + 20, y: corner.y }, await pixels(page, [3.5, 3.5])]
  await touch('touchStart', [down])
  await touch('touchStart', [down, beside])
  await touch('touchMove', [down, { x: beside.x + 40, y: beside.y + 40 }])
  await touch('touchEnd', [])
  await expect(button(page, 'Undo')).toBeDisabled()
})

test('a finger that scrolls the tray takes nothing up, and what is let go beside the board is not laid', async ({ page }) => {
  await openApp(page)
  const unit = await button(page, 'Hourglass').boundingBox()
  const from = { x: (unit?.x ?? 0) + 40, y: (unit?.y ?? 0) + 40 }
  const touch = await fingers(page)
  await touch('touchStart', [from])
  for (const far of [20, 60, 100]) await touch('touchMove', [{ x: from.x, y: from.y - far }])
  await touch('touchEnd', [])
  await expect(page.getByText('Done', { exact: true })).toBeHidden()
  await touch('touchStart', [from])
  for (const far of [20, 40, 60]) await touch('touchMove', [{ x: from.x + far, y: from.y }])
  await touch('touchEnd', [])
  await expect(page.locator('.notice')).toHaveText('Dropped outside the board: nothing changed.')
  await expect(button(page, 'Undo')).toBeDisabled()
})

test('a unit is carried off the tray however steep, and where the tray scrolls it scrolls', async ({ page }) => {
  await openApp(page)
  await button(page, 'My blocks').tap()
  await button(page, 'Empty grid').tap()
  await expect(page.getByRole('application', { name: /New block/ })).toBeVisible()
  const unit = await button(page, 'Square').boundingBox()
  const from = { x: (unit?.x ?? 0) + 20, y: (unit?.y ?? 0) + 20 }
  const to = await pixels(page, [0.3, 3.7])
  expect(to.y - from.y).toBeGreaterThan(to.x - from.x)
  const touch = await fingers(page)
  const drag = async (end: { x: number; y: number }): Promise<void> => {
    await touch('touchStart', [from])
    for (const part of [0.05, 0.2, 0.5, 0.8, 1])
      await touch('touchMove', [{ x: from.x + (end.x - from.x) * part, y: from.y + (end.y - from.y) * part }])
    await touch('touchEnd', [])
  }
  await drag(to)
  await expect(page.locator('.notice')).toHaveText('Placed.')
  await expect(cell(page, [0, 3])).toContainText('Square, Patch')

  await page.setViewportSize({ width: 1180, height: 600 })
  await drag({ x: from.x + 10, y: from.y - 150 })
  await expect.poll(() => page.locator('.side.left').evaluate(({ scrollTop }) => scrollTop)).toBeGreaterThan(20)
})

test('units are added to what is chosen, and moved by halves of cells, without a keyboard', async ({ page }) => {
  await openApp(page)
  await button(page, 'Add to selection').tap()
  await tap(page, [0.5, 0.5])
  await tap(page, [3.5, 0.5])
  await button(page, 'Delete').tap()
  await expect(page.locator('.notice')).toHaveText('2 units deleted.')
  await button(page, 'Add to selection').tap()
  await button(page, 'Snap to half squares').tap()
  await draw(page, [2, 0.35], [2.5, 0.35])
  await expect(page.locator('.notice')).toHaveText('Moved.')
  await expect(cell(page, [3, 0])).toContainText('Flying goose')
  await expect(cell(page, [1, 0])).toContainText('Flying goose')
})

test('a corner of a free patch follows the finger until it lies right; the board stays', async ({ page }) => {
  await openApp(page)
  await button(page, 'My blocks').tap()
  await button(page, 'Empty grid').tap()
  await expect(page.getByRole('application', { name: /New block/ })).toBeVisible()
  await button(page, 'Draw a patch').tap()
  const before = await board(page).getAttribute('data-origin')
  await tap(page, [1, 1])
  await draw(page, [2.4, 0.3], [3.05, 0.95])
  await draw(page, [2.6, 2.2], [2.98, 3.03])
  await tap(page, [1, 1])
  await expect(page.locator('.notice')).toHaveText('Patch drawn.')
  await expect(cell(page, [2, 1])).toContainText('Free patch')
  await expect(cell(page, [1, 2])).not.toContainText('Free patch')
  expect(await board(page).getAttribute('data-origin')).toBe(before)
})

for (const size of [UPRIGHT, { width: 1180, height: 820 }]) {
  test(`what is done to units stands beside the block, what is in hand above the board, at ${size.width} pixels`, async ({ page }) => {
    await page.setViewportSize(size)
    await openApp(page)
    await button(page, 'Select with a box').tap()
    await draw(page, [-0.2, -0.2], [3.5, 0.5])
    const edge = (await pixels(page, [0, 0])).y
    const arrange = page.getByRole('toolbar', { name: 'Selected units' })
    await expect(arrange).toBeVisible()
    const bar = await arrange.boundingBox()
    expect((bar?.y ?? 0) + (bar?.height ?? 0), 'above the block').toBeLessThanOrEqual(edge)
    await button(page, 'Square in a square').tap()
    await expect(arrange).toBeHidden()
    const line = await page.getByRole('region', { name: 'In hand' }).boundingBox()
    const top = (await board(page).boundingBox())?.y ?? 0
    expect((line?.y ?? 0) + (line?.height ?? 0), 'above the board').toBeLessThanOrEqual(top)
  })
}

for (const size of [UPRIGHT, { width: 1180, height: 820 }]) {
  test(`two quarters are told as the half turn they are, and the board stays where it is, at ${size.width} pixels`, async ({ page }) => {
    await page.setViewportSize(size)
    await openApp(page)
    const place = await board(page).boundingBox()
    await tap(page, [2, 0.35])
    await button(page, 'Turn 90°').tap()
    await expect(page.getByTestId('difference')).toHaveText('The block can’t be sewn like this yet. Fill the gaps and move apart what overlaps.')
    expect(await board(page).boundingBox()).toEqual(place)
    await button(page, 'Turn 90°').tap()
    await expect(page.getByTestId('difference')).toContainText('points to protect: 4 before, 3 now')
    expect(await board(page).boundingBox()).toEqual(place)
  })
}

test('a fix is tried with the first press, the board and what it would change in sight, and taken with the second', async ({ page }) => {
  await openApp(page)
  await tap(page, [2.5, 2.5])
  await button(page, 'Delete').tap()
  await draw(page, [2, 0.3], [2, 1.3])
  await draw(page, [2, 3.7], [2, 2.7])
  await button(page, 'Square').tap()
  for (const y of [0.5, 3.5]) for (const x of [1.5, 2.5]) await tap(page, [x, y])
  await button(page, 'Done').tap()
  await expect(page.getByTestId('difference')).toContainText('Crossings that don’t nest: 0 before, 2 now')
  await tap(page, [-0.3, 2])
  const fix = button(page, 'Press the bottom goose the other way').first()
  await fix.tap()
  await expect(page.locator('.outcome', { hasText: 'Click again to use it.' })).toBeInViewport({ ratio: 1 })
  await expect(board(page)).toBeInViewport({ ratio: 1 })
  await expect(page.getByTestId('sum')).toContainText('nest')
  await fix.tap()
  await expect(page.getByTestId('sum')).toContainText('All 6 seam crossings nest.')
})

test('the page itself never scrolls away under the hand, however much is unfolded', async ({ page }) => {
  await openApp(page)
  await page.getByRole('tab', { name: 'Colour', exact: true }).tap()
  await button(page, 'Edit Moss').tap()
  await expect(page.getByText('Use a photo', { exact: true })).toBeVisible()
  await expect(page.getByText('Colours from a photo')).toBeAttached()
  expect(await page.evaluate(() => document.documentElement.scrollHeight)).toBe(UPRIGHT.height)
})
