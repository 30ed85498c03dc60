/** Colour on the screen: prints true to scale, light and dark, colourings side by side, colours from a photograph, the list of fabrics. */
import { finger, type Hand, keyboard, mouse } from './hands.ts'
import { barriers, board, button, cutList, expect, type Locator, notice, openApp, openSheet, type Page, test, BOTH_ENGINES, bothIf } from './maker.ts'

const HANDS = [
  ['with a mouse', mouse, 1440, 900],
  ['with a finger', finger, 820, 1180],
  ['with the keyboard alone', keyboard, 1440, 900],
] as const

const cards = (page: Page): Locator => page.getByRole('list', { name: 'Colourings', exact: true }).getByRole('button')
const region = (page: Page, name: string): Locator => page.getByRole('region', { name })

for (const [how, handOf, width, height] of HANDS) {
  // Keys are tried in the second engine by the morning's own block.
  test.describe(how, bothIf(handOf === mouse), () => {
    test.use({ viewport: { width, height }, hasTouch: handOf === finger })

    test('a colouring is found, compared, taken in one step and given back', async ({ page }) => {
      const hand: Hand = handOf(page)
      await openApp(page)
      await hand.sheet('Colour')
      // The block as it was, and eleven others; whole other points first, by Moss before Dusk as on the list.
      await expect(cards(page)).toHaveCount(12)
      await expect(cards(page).first()).toHaveAttribute('aria-pressed', 'true')
      await expect(cards(page).nth(1)).toHaveAccessibleName('Use colouring 1, 8 × Moss, 1 batch, all nest, looks the same after 8 turns or flips')
      await hand.press(cards(page).nth(1))
      await expect(notice(page)).toHaveText('Colouring 1 is on the board.')
      await expect(cards(page).nth(1)).toHaveAttribute('aria-pressed', 'true')
      await expect(
        region(page, 'Fabrics')
          .getByRole('listitem')
          .filter({ has: button(page, 'Colour with Moss') }),
      ).toContainText('8 patches')
      await hand.press(button(page, 'Undo'))
      await expect(cards(page).first()).toHaveAttribute('aria-pressed', 'true')
      await expect(button(page, 'Undo')).toBeDisabled()
    })
  })
}

test('colourings say as many batches as the cut list, also where only the fewest are asked for', async ({ page }) => {
  await openApp(page)
  await openSheet(page, 'Colour')
  // A star whose points alternate takes two batches: no closed walk of four steps takes one way round four times; common practice, no source.
  await page
    .getByRole('button', { name: /^Use colouring \d+, .*2 batches/ })
    .first()
    .click()
  await openSheet(page, 'Cutting')
  await expect(cutList(page)).toContainText('Two batches of four make all your geese')
  await openSheet(page, 'Colour')
  await page.getByLabel('Fewest batches only').check()
  await expect(cards(page).nth(11)).toHaveAccessibleName(/^Use colouring 11, .*1 batch/)
  for (const card of await cards(page).all())
    if (!(await card.getAttribute('aria-label'))?.startsWith('Your colouring')) await expect(card).toHaveAccessibleName(/1 batch/)
  await button(page, 'Next page').click()
  await page.getByRole('button', { name: /^Use colouring 12,/ }).click()
  await openSheet(page, 'Cutting')
  await expect(cutList(page)).toContainText('One batch of four makes all your geese')
})

test('colourings follow the board, which is marked, and their filters survive leaving the sheet', async ({ page }) => {
  await openApp(page)
  await openSheet(page, 'Colour')
  await page.getByLabel('Fewest batches only').check()
  await openSheet(page, 'Cutting')
  await openSheet(page, 'Colour')
  await expect(page.getByLabel('Fewest batches only')).toBeChecked()
  await cards(page).nth(1).click()
  const marked = page.getByRole('list', { name: 'Colourings', exact: true }).getByRole('listitem').filter({ hasText: 'on the board' })
  await expect(marked).toHaveCount(1)
  await expect(marked.getByRole('button')).toHaveAccessibleName(/^Use colouring 1,/)
  await board(page).focus()
  for (const key of ['ArrowRight', 'Enter']) await page.keyboard.press(key)
  await openSheet(page, 'Block')
  await page.getByLabel(/^Left wing/).selectOption({ label: 'Honey' })
  await openSheet(page, 'Colour')
  await expect(marked.getByRole('button')).toHaveAccessibleName(/^Your colouring, .*1 × Honey/)
})

test('up to four are laid side by side, and one of them is taken', async ({ page }) => {
  await openApp(page)
  await openSheet(page, 'Colour')
  for (const which of ['your colouring', 'colouring 1', 'colouring 4', 'colouring 5'])
    await page.getByLabel(`Compare ${which}`, { exact: true }).check()
  await page.getByLabel('Compare colouring 6', { exact: true }).click()
  await expect(notice(page)).toHaveText('You can compare four at most. Untick one first.')
  await button(page, 'Compare 4').click()
  const dialog = page.getByRole('dialog', { name: 'Compare colourings' })
  await expect(dialog.getByRole('listitem')).toHaveCount(4)
  await dialog.getByRole('listitem').nth(2).getByRole('button', { name: 'Use this one' }).click()
  await expect(dialog).toBeHidden()
  await expect(notice(page)).toHaveText('Colouring 4 is on the board.')
})

async function write(field: Locator, text: string): Promise<void> {
  await field.fill(text)
  await field.press('Enter')
}

/** The colours along a line of cells on the cloth, one for each pixel. */
async function colours(page: Page, y: number, from: number, to: number): Promise<string[]> {
  const scale = Number(await board(page).getAttribute('data-scale'))
  const [left, top] = ((await board(page).getAttribute('data-origin')) ?? '').split(',').map(Number) as [number, number]
  return page
    .locator('.board canvas')
    .first()
    .evaluate(
      (canvas: HTMLCanvasElement, [x0, x1, row]) => {
        const ratio = canvas.width / canvas.clientWidth
        const { data } = (canvas.getContext('2d') as CanvasRenderingContext2D).getImageData(x0 * ratio, row * ratio, Math.round((x1 - x0) * ratio), 1)
        return Array.from({ length: data.length / 4 }, (_, at) => data.slice(at * 4, at * 4 + 3).join())
      },
      [left + from * scale, left + to * scale, top + y * scale] as const,
    )
}

/** How often a line goes from the ground into something darker. */
function stripes(line: readonly string[]): number {
  const light = line.map((colour) => colour.split(',').reduce((sum, channel) => sum + Number(channel), 0))
  const middle = (Math.max(...light) + Math.min(...light)) / 2
  return light.filter((one, at) => at > 0 && one < middle && (light[at - 1] as number) >= middle).length
}

test('a print is drawn true to scale at any zoom, and turns with its unit', BOTH_ENGINES, async ({ page }) => {
  await openApp(page)
  await button(page, 'Edit Linen white').click()
  await page.getByLabel('Pattern of Linen white').selectOption('stripes')
  await expect(page.getByLabel('Print direction')).toHaveValue('two-way')
  await write(page.getByLabel('Pattern repeat (in)'), '1')
  // A cell is 3 in: in the corner square from 0.1 to 0.9 of it lie 2.4 in, so two broad stripes and the two or three thin ones between them.
  await expect.poll(async () => stripes(await colours(page, 0.5, 0.01, 0.99))).toBeGreaterThanOrEqual(5)
  expect(stripes(await colours(page, 0.5, 0.01, 0.99))).toBeLessThanOrEqual(6)
  // The goose at the right is turned a quarter: its stripes lie across, so a line across meets none.
  expect(stripes(await colours(page, 1.95, 3.55, 3.9))).toBe(0)
  const before = await board(page).getAttribute('data-scale')
  await board(page).focus()
  await page.keyboard.press('-')
  await expect(board(page)).not.toHaveAttribute('data-scale', before ?? '')
  await expect.poll(async () => stripes(await colours(page, 0.5, 0.01, 0.99))).toBeGreaterThanOrEqual(5)
  expect(stripes(await colours(page, 0.5, 0.01, 0.99))).toBeLessThanOrEqual(6)
  await page.keyboard.press('0')
  await expect(board(page)).toHaveAttribute('data-scale', before ?? '')
  await write(page.getByLabel('Pattern repeat (in)'), '1/2')
  await expect.poll(async () => stripes(await colours(page, 0.5, 0.01, 0.99))).toBeGreaterThanOrEqual(11)
  expect(stripes(await colours(page, 0.5, 0.01, 0.99))).toBeLessThanOrEqual(12)
  for (let step = 0; step < 3; step++) await button(page, 'Undo').click()
  await expect(page.getByLabel('Pattern of Linen white')).toHaveValue('plain')
})

test('fabrics are named, moved, exchanged, and stay while a patch is cut from them', async ({ page }) => {
  await openApp(page)
  const names = (): Promise<string[]> =>
    page.getByLabel(/^Name of /).evaluateAll((inputs) => inputs.map((input) => (input as HTMLInputElement).value))
  await page.getByLabel('Name of Honey').fill('Corn')
  await button(page, 'Edit Corn').click()
  await button(page, 'Move up').click()
  expect(await names()).toEqual(['Linen white', 'Old brick', 'Moss', 'Corn', 'Dusk blue'])
  await button(page, 'Delete fabric').click()
  await expect(notice(page)).toHaveText('Corn is still in the block. Recolour its patches first.')
  await page.getByLabel('Swap with').selectOption({ label: 'Old brick' })
  await expect(
    region(page, 'Fabrics')
      .getByRole('listitem')
      .filter({ has: button(page, 'Colour with Corn') }),
  ).toContainText('8 patches')
  await page.getByLabel('Use this fabric instead').selectOption({ label: 'Moss' })
  await button(page, 'Delete fabric').click()
  expect(await names()).toEqual(['Linen white', 'Old brick', 'Moss', 'Dusk blue'])
  for (let step = 0; step < 3; step++) await button(page, 'Undo').click()
  await expect(
    region(page, 'Fabrics')
      .getByRole('listitem')
      .filter({ has: button(page, 'Colour with Corn') }),
  ).toContainText('one patch')
})

/** A picture of so many upright bars of one colour each, as a PNG. */
async function picture(page: Page, bars: readonly string[]): Promise<Buffer> {
  const address = await page.evaluate((colours) => {
    const canvas = document.createElement('canvas')
    canvas.width = colours.length * 100
    canvas.height = 300
    const pen = canvas.getContext('2d') as CanvasRenderingContext2D
    colours.forEach((colour, at) => {
      pen.fillStyle = colour
      pen.fillRect(at * 100, 0, 100, 300)
    })
    return canvas.toDataURL('image/png')
  }, bars)
  return Buffer.from(address.split(',')[1] as string, 'base64')
}

test('a photograph gives its colours, and shows a cloth; what is none is said, and nothing changes', BOTH_ENGINES, async ({ page }) => {
  await openApp(page)
  await openSheet(page, 'Colour')
  const sheet = region(page, 'Colours from a photo')
  const file = sheet.locator('input[type=file]')
  await file.setInputFiles({ name: 'notes.txt', mimeType: 'text/plain', buffer: Buffer.from('no picture') })
  await expect(sheet.getByRole('alert')).toHaveText('This browser can’t read notes.txt as a picture. Use a photo such as a JPEG or PNG.')
  await file.setInputFiles({ name: 'bars.png', mimeType: 'image/png', buffer: await picture(page, ['#203050', '#f0e8d0', '#c08040', '#608060']) })
  const chips = sheet.getByRole('list').getByRole('button')
  await expect(chips).toHaveCount(4)
  for (const [place, colour] of ['#f0e8d0', '#c08040', '#608060', '#203050'].entries())
    await expect(chips.nth(place)).toHaveAccessibleName(`${colour}, 25 % of the photo`)
  // Left out, a colour goes to no fabric: of the three left the middle one is the green.
  await chips.nth(1).click()
  await button(page, 'Recolour my fabrics by value').click()
  // Linen is the lightest of the three that are used and brick the darkest.
  await button(page, 'Edit Linen white').click()
  await expect(page.getByLabel('Colour of Linen white')).toHaveValue('#f0e8d0')
  await button(page, 'Edit Old brick').click()
  await expect(page.getByLabel('Colour of Old brick')).toHaveValue('#203050')
  await button(page, 'Edit Honey').click()
  await expect(page.getByLabel('Colour of Honey')).toHaveValue('#608060')
  await button(page, 'Undo').click()
  await button(page, 'Edit Old brick').click()
  await expect(page.getByLabel('Colour of Old brick')).toHaveValue('#a8482f')

  await page
    .getByLabel('Photo of Old brick')
    .setInputFiles({ name: 'cloth.png', mimeType: 'image/png', buffer: await picture(page, ['#203050', '#f0e8d0']) })
  await write(page.getByLabel('Width of fabric in the photo (in)'), '1')
  // A photograph that shows one inch of two bars, in the wing of the top goose: the seam's end to its tip is 3 in.
  await expect.poll(async () => stripes(await colours(page, 0.94, 1.05, 1.9))).toBeGreaterThanOrEqual(2)
  await button(page, 'Undo').click()
  await button(page, 'Undo').click()
  await expect(page.getByLabel('Colour of Old brick')).toHaveValue('#a8482f')
})

test('neighbours that blur are listed, and shown on the board while pointed at', async ({ page }) => {
  await openApp(page)
  await openSheet(page, 'Colour')
  await expect(region(page, 'Light and dark')).toContainText('Neighbouring fabrics stand out.')
  await button(page, 'Edit Honey').click()
  await page.getByLabel('Colour of Honey').fill('#a8502f')
  // The four sides of the centre, each between two wings: 4 times 6 in, of which the tips touch at points alone.
  const pair = page.getByRole('button', {
    name: /^Old brick and Honey: \d\.\d apart, along 24 in of seam$|^Honey and Old brick: \d\.\d apart, along 24 in of seam$/,
  })
  await expect(pair).toBeVisible()
  const marks = page.locator('.board canvas').nth(1)
  const before = await marks.screenshot()
  await pair.focus()
  await expect.poll(async () => (await marks.screenshot()).equals(before)).toBe(false)
  await button(page, 'Value').click()
  await expect(button(page, 'One pair of neighbouring fabrics looks alike.')).toBeVisible()
})

test('alike patches are recoloured together', async ({ page }) => {
  await openApp(page)
  await openSheet(page, 'Colour')
  await page.getByLabel('8 patches: Left wing, Right wing').selectOption({ label: 'Dusk blue' })
  await expect(
    region(page, 'Fabrics')
      .getByRole('listitem')
      .filter({ has: button(page, 'Colour with Dusk blue') }),
  ).toContainText('8 patches')
  await button(page, 'Undo').click()
  await expect(
    region(page, 'Fabrics')
      .getByRole('listitem')
      .filter({ has: button(page, 'Colour with Dusk blue') }),
  ).toContainText('not used')
})

for (const colorScheme of ['light', 'dark'] as const) {
  test.describe(colorScheme, () => {
    test.use({ colorScheme })
    test('the colour sheet and the unfolded fabric have no known barrier', async ({ page }) => {
      await openApp(page)
      await openSheet(page, 'Colour')
      await expect(cards(page)).toHaveCount(12)
      await button(page, 'Edit Moss').click()
      await page.getByLabel('Pattern of Moss').selectOption('sprigs')
      await expect(page.getByLabel('Print direction')).toHaveValue('one-way')
      await expect(page.getByRole('img', { name: 'one-way' })).toBeVisible()
      expect(await barriers(page, '.side', colorScheme === 'dark' ? 'contrast' : 'everything')).toEqual([])
    })
  })
}
