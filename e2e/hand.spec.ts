/** What is in the maker's hand, by mouse, finger and keys: one line names it, Escape lets go from anywhere, and keys act on what it names. */
import { finger, keyboard, mouse } from './hands.ts'
import { board, button, type Cell, expect, type Locator, notice, openApp, openSheet, type Page, pixels, SCREENS, test } from './maker.ts'

const PHONE = { name: 'on a phone', width: 390, height: 844 } as const

const line = (page: Page): Locator => page.getByRole('region', { name: 'In hand' })
const cell = (page: Page, [x, y]: Cell): Locator => page.locator(`#cell-${x}-${y}`)

for (const { name, width, height } of [...SCREENS, PHONE]) {
  test(`${name} what is in hand stands above the board, which stays where it is, and Escape lets go from anywhere`, async ({ page }) => {
    await page.setViewportSize({ width, height })
    await openApp(page)
    const place = await board(page).boundingBox()
    const names = async (words: string): Promise<void> => {
      await expect(line(page)).toContainText(words)
      await page.evaluate(() => window.scrollTo(0, 0))
      expect(await board(page).boundingBox()).toEqual(place)
      const box = await line(page).boundingBox()
      expect((box?.y ?? 0) + (box?.height ?? 0)).toBeLessThanOrEqual(place?.y ?? 0)
    }
    for (const number of [1, 2, 3]) {
      await names(`Hint ${number} of 3`)
      await line(page).getByRole('button', { name: 'Got it' }).click()
    }
    await names('Pick a unit to place, or a fabric to colour with.')
    await button(page, 'Flying goose').click()
    await names('Placing: Flying goose')
    await button(page, 'Colour with Moss').click()
    await names('Colouring with: Moss')
    await page.getByLabel('Name of Moss').focus()
    await page.keyboard.press('Escape')
    await names('Pick a unit to place, or a fabric to colour with.')
    await button(page, 'Hourglass').click()
    await page.keyboard.press('Escape')
    await names('Pick a unit')
    await button(page, 'Hourglass').click()
    await line(page).getByRole('button', { name: 'Done' }).click()
    await names('Pick a unit')
    await expect(board(page)).toBeFocused()
  })
}

test('a hint goes once its thing is done, stays away on the next visit, and comes back under Help', async ({ page }) => {
  await openApp(page)
  await expect(line(page)).toContainText('Hint 1 of 3')
  const hand = keyboard(page)
  await hand.press(button(page, 'Colour with Moss'))
  await board(page).focus()
  await page.keyboard.press('f')
  await page.keyboard.press('Escape')
  await expect(line(page)).toContainText('Hint 2 of 3')
  await hand.choose([0.5, 0.5])
  await page.keyboard.press('t')
  await expect(line(page)).toContainText('Hint 3 of 3')
  await hand.press(line(page).getByRole('button', { name: 'Show me' }))
  await expect(line(page)).toContainText('Pick a unit to place')
  await expect(page.locator('#sheet :focus')).toHaveCount(1)
  await page.reload()
  await expect(line(page)).toContainText('Pick a unit to place')
  await hand.press(button(page, 'Help'))
  const help = page.getByRole('dialog', { name: 'Help' })
  await help.getByRole('searchbox').fill('nest')
  await expect(help.getByText('Two seams nest when they’re pressed opposite ways')).toBeVisible()
  await help.getByRole('button', { name: 'Show the hints again' }).click()
  await expect(line(page)).toContainText('Hint 1 of 3')
})

test('keys turn and flip what the line names, also after a unit is placed', async ({ page }) => {
  await openApp(page)
  const hand = keyboard(page)
  await hand.choose([1.5, 1.5])
  await page.keyboard.press('Delete')
  await hand.press(button(page, 'Flying goose'))
  await page.keyboard.press('Escape')
  await hand.place('Flying goose', [1, 1], [2, 1])
  await expect(cell(page, [2, 1])).toContainText('Flying goose')
  await page.keyboard.press('Control+z')
  await page.keyboard.press('t')
  await expect(notice(page)).toHaveText('Turned a quarter clockwise.')
  await page.keyboard.press('p')
  await expect(cell(page, [1, 2])).toContainText('Flying goose, quarter turn')
  await expect(cell(page, [2, 1])).toHaveText(/empty/)
  await page.keyboard.press('m')
  await expect(notice(page)).toHaveText('Flipped left to right.')
  await page.keyboard.press('ArrowRight')
  await page.keyboard.press('p')
  await expect(cell(page, [2, 2])).toContainText('three-quarter turn, flipped')
})

test('a goose turned by a quarter lands on whole squares', async ({ page }) => {
  await openApp(page)
  const hand = mouse(page)
  await hand.choose([2, 2])
  await page.keyboard.press('Delete')
  await hand.choose([2, 0.3])
  await page.keyboard.press('t')
  await expect(cell(page, [1, 1])).toContainText('Flying goose')
  await expect(cell(page, [2, 0])).toHaveText(/empty/)
})

for (const handOf of [mouse, finger]) {
  test.describe(`by ${handOf === mouse ? 'mouse' : 'finger'}`, () => {
    test.use({ hasTouch: handOf === finger })
    test('a square in hand, dragged over free squares, is one large square', async ({ page }) => {
      await openApp(page)
      const hand = handOf(page)
      await hand.choose([2, 2])
      await page.keyboard.press('Delete')
      await hand.press(button(page, 'Square'))
      await hand.move([1.5, 1.5], [1, 1])
      await expect(notice(page)).toHaveText('Placed.')
      await hand.press(line(page).getByRole('button', { name: 'Done' }))
      await hand.choose([2.5, 2.5])
      await openSheet(page, 'Block')
      await expect(page.getByRole('textbox', { name: 'Finished size (in)' }).first()).toHaveValue('6 × 6')
    })
  })
}

test('a click on the board shows no frame of the keyboard’s; a key does', async ({ page }) => {
  await openApp(page)
  const frame = () => board(page).evaluate((element) => getComputedStyle(element).outlineStyle)
  const { x, y } = await pixels(page, [2, 2])
  await page.mouse.click(x, y)
  await expect(board(page)).toBeFocused()
  expect(await frame()).toBe('none')
  await page.keyboard.press('ArrowRight')
  await expect.poll(frame).toBe('solid')
  await page.mouse.click(x, y)
  await expect.poll(frame).toBe('none')
})

test('a finished size scales the squares, or what fits is offered; centimetres are said before they are taken; each is one step back', async ({
  page,
}) => {
  await openApp(page)
  await openSheet(page, 'Block')
  const size = page.getByRole('textbox', { name: /^Finished size/ })
  const square = page.getByRole('textbox', { name: /^Grid square/ })
  await mouse(page).write(size, '8 in')
  await expect(square).toHaveValue('2')
  await mouse(page).write(size, '10 2/3')
  await expect(square).toHaveValue('2 2/3')
  await mouse(page).write(size, '6 x 10')
  await expect(page.getByText('4 × 4 equal squares can’t make 6 x 10 in. These sizes work:')).toBeVisible()
  await button(page, '6 × 6 in: 4 × 4 squares of 1 1/2 in').click()
  await expect(size).toHaveValue('6 × 6')
  await mouse(page).write(size, '12')
  await page.getByRole('combobox', { name: 'Unit' }).selectOption('cm')
  await expect(page.getByText('Finished size: 12 × 12 in becomes 30 × 30 cm')).toBeVisible()
  await expect(page.getByText('Seam allowance: 1/4 in becomes 0.75 cm')).toBeVisible()
  await expect(size).toHaveValue('12 × 12')
  await button(page, 'Change to centimetres').click()
  await expect(size).toHaveValue('30 × 30')
  await button(page, 'Undo').click()
  await expect(size).toHaveValue('12 × 12')
})

test('strips are counted, and taken apart for unequal widths', async ({ page }) => {
  await openApp(page)
  const hand = mouse(page)
  await hand.choose([2, 2])
  await page.keyboard.press('Delete')
  await hand.place('Strips', [1, 1], [2, 2])
  await openSheet(page, 'Block')
  await page.getByRole('combobox', { name: 'How many strips' }).selectOption('4')
  await expect(cell(page, [1, 1])).toContainText('Strip 4')
  await button(page, 'Separate for unequal widths').click()
  await expect(cell(page, [1, 1])).toContainText('Square')
  await expect(notice(page)).toContainText('Each strip is a piece of its own now.')
})

test.describe('where centimetres are usual', () => {
  test.use({ locale: 'nl-NL' })
  test('the first block is measured in centimetres, and A4 is printed', async ({ page }) => {
    await openApp(page)
    await openSheet(page, 'Block')
    await expect(page.getByRole('textbox', { name: 'Finished size (cm)' })).toHaveValue('30 × 30')
    await openSheet(page, 'Booklet')
    await expect(page.getByRole('radio', { name: 'A4' })).toBeChecked()
  })
})
