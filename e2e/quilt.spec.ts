/** A sampler of two blocks: laid out by mouse, by keys and by finger, joined, kept, and undone. */
import { barriers, expect, kept, type Locator, notice, openApp, type Page, saved, test } from './maker.ts'

type Place = readonly [column: number, row: number]

const quilt = (page: Page): Locator => page.getByRole('application', { name: /^Quilt/ })
const cell = (page: Page, [column, row]: Place): Locator =>
  quilt(page).getByRole('gridcell', { name: new RegExp(`^Column ${column + 1}, row ${row + 1}:`) })
const inList = (page: Page, name: string): Locator => page.getByRole('region', { name: 'Blocks', exact: true }).getByRole('button', { name }).last()
const summary = (page: Page): Locator => page.locator('.check-summary')

async function startQuilt(page: Page): Promise<void> {
  await openApp(page)
  await page.getByRole('button', { name: 'My blocks', exact: true }).click()
  await page.getByRole('dialog').getByRole('button', { name: 'Lantern', exact: true }).click()
  await expect(page.getByRole('dialog')).toHaveCount(0)
  await page.getByRole('button', { name: 'My blocks', exact: true }).click()
  await page.getByRole('dialog').getByRole('button', { name: 'Start a quilt' }).click()
  await expect(quilt(page)).toBeVisible()
  for (const name of ['Blocks across', 'Blocks down']) await page.getByRole('combobox', { name }).selectOption('2')
  await expect(quilt(page)).toHaveAccessibleName(/2 by 2 positions/)
}

/** The middle of a place, in pixels of the window, once the board stands still. */
async function middle(page: Page, [column, row]: Place): Promise<{ x: number; y: number }> {
  const read = async (name: string): Promise<number[]> => ((await quilt(page).getAttribute(name)) ?? '').split(',').map(Number)
  const [first, next, box] = [await read('data-first'), await read('data-cell'), await quilt(page).boundingBox()]
  const at = (axis: 0 | 1, index: number): number => {
    const [start, step, size] = [first[axis] as number, (next[axis] as number) - (first[axis] as number), first[axis + 2] as number]
    return start + index * step + size / 2
  }
  return { x: (box?.x ?? 0) + at(0, column), y: (box?.y ?? 0) + at(1, row) }
}

async function drag(page: Page, from: { x: number; y: number }, to: { x: number; y: number }): Promise<void> {
  await page.mouse.move(from.x, from.y)
  await page.mouse.down()
  await page.mouse.move(from.x + 12, from.y + 4, { steps: 2 })
  await page.mouse.move(to.x, to.y, { steps: 6 })
  await page.mouse.up()
}

async function dragFromList(page: Page, name: string, to: Place): Promise<void> {
  await inList(page, name).scrollIntoViewIfNeeded()
  const box = await inList(page, name).boundingBox()
  await drag(page, { x: (box?.x ?? 0) + 40, y: (box?.y ?? 0) + 30 }, await middle(page, to))
  await expect(cell(page, to)).toHaveAccessibleName(new RegExp(name))
}

test('a sampler is laid out by mouse, pressed to nest, joined with strips, kept and undone', async ({ page }) => {
  await startQuilt(page)
  await dragFromList(page, 'Evening star', [0, 0])
  await dragFromList(page, 'Harbour lantern', [1, 1])
  // Held, it fills as many places as it is dragged over.
  await inList(page, 'Evening star').click()
  await drag(page, await middle(page, [1, 0]), await middle(page, [1, 0]))
  await drag(page, await middle(page, [0, 1]), await middle(page, [0, 1]))
  await page.getByRole('button', { name: 'Done', exact: true }).click()
  await expect(cell(page, [0, 1])).toHaveAccessibleName(/Evening star/)

  // Dragged onto another, they swap; what is selected says how wide its frame is.
  await drag(page, await middle(page, [1, 1]), await middle(page, [0, 0]))
  await expect(cell(page, [0, 0])).toHaveAccessibleName(/Harbour lantern/)
  await expect(cell(page, [1, 1])).toHaveAccessibleName(/Evening star/)
  await expect(page.getByText('1 1/2 in at the sides')).toBeVisible()
  await page.getByRole('tabpanel').getByRole('button', { name: 'Turn 90°', exact: true }).click()
  await expect(cell(page, [0, 0])).toHaveAccessibleName(/quarter turn/)
  await expect(page.getByText('1 1/2 in at top and bottom')).toBeVisible()

  await expect(summary(page)).toHaveText(/crossings between blocks don’t nest/)
  const before = Number.parseInt((await summary(page).textContent()) ?? '', 10)
  await page.getByRole('tab', { name: 'Seam check' }).click()
  await page.getByRole('button', { name: 'Press them' }).click()
  await expect(cell(page, [1, 0])).toHaveAccessibleName(/pressed the other way/)
  await expect.poll(async () => Number.parseInt((await summary(page).textContent()) ?? '', 10) || 0).toBeLessThan(before)

  await page.getByRole('tab', { name: 'Joining' }).click()
  await page.getByRole('radio', { name: /^Narrow strips/ }).check()
  await expect(summary(page)).toHaveText('No seams of two blocks meet')
  expect(await barriers(page)).toEqual([])
  await page.getByRole('tab', { name: 'Cutting' }).click()
  await expect(page.getByRole('region', { name: 'Cut list of the quilt' })).toContainText('joining strips')

  await kept(page)
  const file = await saved(page, () => page.getByRole('button', { name: 'Save file' }).click())
  expect(JSON.parse(file.bytes.toString())).toMatchObject({ format: 'nestwright.quilt', way: { join: 'strips' } })
  await page.reload()
  await expect(cell(page, [0, 0])).toHaveAccessibleName(/Harbour lantern.*quarter turn/)
  await page.getByRole('button', { name: 'Undo', exact: true }).click()
  await expect(notice(page)).toHaveText('Undone: change the way of joining.')
  await page.getByRole('button', { name: 'Undo', exact: true }).click()
  await expect(cell(page, [1, 0])).not.toHaveAccessibleName(/pressed the other way/)
})

test('the same is done with keys alone, and each place says what lies in it', async ({ page }) => {
  await startQuilt(page)
  await inList(page, 'Evening star').focus()
  await page.keyboard.press('Enter')
  await expect(quilt(page)).toBeFocused()
  for (const key of ['Enter', 'ArrowRight', 'Enter', 'ArrowDown', 'Enter', 'Escape']) await page.keyboard.press(key)
  await expect(cell(page, [1, 1])).toHaveAccessibleName(/Evening star/)
  await page.keyboard.press('t')
  await expect(cell(page, [1, 1])).toHaveAccessibleName(/quarter turn/)
  await page.keyboard.press('Alt+ArrowLeft')
  await expect(cell(page, [0, 1])).toHaveAccessibleName(/quarter turn/)
  await expect(cell(page, [1, 1])).toHaveAccessibleName(/empty/)
  await page.keyboard.press('Alt+Shift+ArrowRight')
  await expect(cell(page, [1, 1])).toHaveAccessibleName(/quarter turn.*2 by 1 cells/)
  await page.keyboard.press('Delete')
  await expect(cell(page, [0, 1])).toHaveAccessibleName(/empty/)
  await page.keyboard.press('Control+z')
  await expect(notice(page)).toHaveText('Undone: clear a position.')
  await expect(cell(page, [1, 1])).toHaveAccessibleName(/2 by 1 cells/)
})

test.describe('on a tablet', () => {
  test.use({ viewport: { width: 820, height: 1180 }, hasTouch: true })

  test('a finger taps a block and then its places, and drags one onto another', async ({ page }) => {
    await startQuilt(page)
    const tap = async (place: Place): Promise<void> => {
      const { x, y } = await middle(page, place)
      await page.touchscreen.tap(x, y)
    }
    await inList(page, 'Evening star').tap()
    await tap([0, 0])
    await expect(cell(page, [0, 0])).toHaveAccessibleName(/Evening star/)
    await inList(page, 'Harbour lantern').tap()
    await tap([1, 0])
    await expect(cell(page, [1, 0])).toHaveAccessibleName(/Harbour lantern/)
    await page.getByRole('button', { name: 'Done', exact: true }).tap()
    const session = await page.context().newCDPSession(page)
    const [from, to] = [await middle(page, [0, 0]), await middle(page, [1, 1])]
    const touch = (type: 'touchStart' | 'touchMove' | 'touchEnd', at?: { x: number; y: number }) =>
      session.send('Input.dispatchTouchEvent', { type, touchPoints: at === undefined ? [] : [{ ...at, id: 0 }] })
    await touch('touchStart', from)
    for (const part of [0.2, 0.6, 1]) await touch('touchMove', { x: from.x + (to.x - from.x) * part, y: from.y + (to.y - from.y) * part })
    await touch('touchEnd')
    await expect(cell(page, [1, 1])).toHaveAccessibleName(/Evening star/)
    await expect(cell(page, [0, 0])).toHaveAccessibleName(/empty/)
  })
})
