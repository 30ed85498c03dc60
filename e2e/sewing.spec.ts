/** Sewing views and findings that follow the hand: a block assembled join by join, fixes tried before they are taken, copies turned by hand. */
import { CLASHING, checker } from './blocks.ts'
import { finger, keyboard, mouse } from './hands.ts'
import {
  barriers,
  board,
  button,
  expect,
  findings,
  notice,
  openApp,
  openMenu,
  openSheet,
  type Page,
  pixels,
  test,
  BOTH_ENGINES,
  bothIf,
} from './maker.ts'

const HANDS = [
  ['with a mouse', mouse],
  ['with a finger', finger],
  ['with the keyboard alone', keyboard],
] as const

/** `npm run test:long` pictures each size in both lights; otherwise each size and each light is seen once or twice. */
const EVERY_PAIR = process.env.NESTWRIGHT_PICTURES === 'all'
const SIZES = [
  { screen: 'on a desk', width: 1440, height: 900, light: 'light' },
  { screen: 'on a tablet', width: 820, height: 1180, light: 'dark' },
  { screen: 'on a phone', width: 360, height: 740, light: 'light' },
] as const

const difference = (page: Page) => page.getByTestId('difference')
const slider = (page: Page) => page.getByRole('slider', { name: 'Step' })
const told = (page: Page) => page.getByTestId('step')
const sum = (page: Page) => page.getByTestId('setting-sum')

async function open(page: Page, block: object): Promise<void> {
  await openApp(page)
  await openMenu(page)
  await page.getByLabel('Block file').setInputFiles({ name: 'block.json', mimeType: 'application/json', buffer: Buffer.from(JSON.stringify(block)) })
  await expect(notice(page)).toContainText('is open')
}

for (const [how, handOf] of HANDS) {
  // Keys are tried in the second engine by the morning's own block.
  test.describe(how, bothIf(handOf === mouse), () => {
    test.use({ viewport: { width: 1440, height: 900 }, hasTouch: handOf === finger })

    test('a star is sewn step by step: its geese first, then its rows', async ({ page }) => {
      const hand = handOf(page)
      await openApp(page)
      await hand.press(button(page, 'Sewing order'))
      await expect(told(page)).toHaveText('17 patches, 16 seams to sew.')
      await hand.press(button(page, 'Next'))
      await expect(told(page).getByRole('heading')).toHaveText(/^Make 4 geese: /)
      // A goose of 6 by 3 is 6 1/2 by 3 1/2 before it is sewn on [S17].
      await expect(told(page)).toContainText('6 1/2 × 3 1/2 in')
      // Geese that are made four at a time are never sewn from single triangles.
      await expect(told(page)).not.toContainText(/goose triangle|(left|right) wing/)
      await expect(page.getByRole('region', { name: 'Pictures of this step' }).getByRole('img').first()).toBeVisible()
      await hand.press(button(page, 'Next'))
      await expect(told(page).getByRole('heading')).toHaveText('Lay out the block')
      await hand.press(button(page, 'Back'))
      await expect(slider(page)).toHaveValue('1')
      const last = Number(await slider(page).getAttribute('max'))
      if (!hand.touch) {
        await slider(page).focus()
        await page.keyboard.press('End')
      } else for (let step = 1; step < last; step++) await hand.press(button(page, 'Next'))
      await expect(told(page)).toContainText('12 1/2 × 12 1/2 in')
      await expect(button(page, 'Next')).toBeDisabled()
      await hand.press(button(page, 'Play'))
      await expect(slider(page)).not.toHaveValue(String(last))
      await hand.press(button(page, 'Pause'))
      await expect(button(page, 'Play')).toBeVisible()
    })

    test('the seam check lists the same steps, and a seam of one is shown on the board', async ({ page }) => {
      const hand = handOf(page)
      await openApp(page)
      await hand.press(findings(page).getByText(/^Order of sewing: |^Sewing order: /))
      const geese = findings(page)
        .getByRole('listitem')
        .filter({ has: page.getByRole('button', { name: /^Make 4 geese: / }) })
      await hand.press(geese.getByText('8 seams in this step'))
      const seam = geese.getByRole('button', { name: /^Top goose: the seam at the left wing\. / })
      await hand.press(seam)
      await expect(seam).toContainText('toward the left wing')
    })

    test('a clash is mended after it was tried on the board, and one undo brings it back', async ({ page }) => {
      const hand = handOf(page)
      await open(page, CLASHING)
      await expect(findings(page)).toContainText('The one seam crossing doesn’t nest.')
      const fix = findings(page).getByRole('button', { name: 'Press seam 1 the other way' })
      if (hand.touch) await hand.press(fix)
      else if (hand.name === 'mouse') await fix.hover()
      else await fix.focus()
      await expect(difference(page)).toHaveText('Just a preview: nothing has changed yet.')
      await expect(findings(page)).toContainText('Shown on the board: 1 seam pressed differently; everything nests (now 1).')
      await expect(findings(page)).toContainText('The one seam crossing doesn’t nest.')
      await hand.press(fix)
      await expect(findings(page)).toContainText('The one seam crossing nests.')
      await expect(difference(page)).toHaveText('One more crossing nests; crossings that don’t nest: 1 before, 0 now.')
      await hand.press(button(page, 'Undo'))
      await expect(findings(page)).toContainText('The one seam crossing doesn’t nest.')
      await expect(difference(page)).toHaveText('')
    })

    test('copies are turned by hand, and then as nests best', async ({ page }) => {
      const hand = handOf(page)
      await openApp(page)
      await hand.sheet('Setting')
      await expect(sum(page)).toHaveText(/^\d+ crossings between blocks don’t nest\.$/)
      await hand.press(button(page, 'Show on the board'))
      const alike = await sum(page).textContent()
      const copy = page.getByRole('button', { name: /^Block in column 1, row 1/ })
      await expect(copy).toHaveAccessibleName('Block in column 1, row 1: not turned')
      await hand.press(copy)
      await expect(copy).toHaveAccessibleName('Block in column 1, row 1: quarter turn')
      if (hand.name === 'keyboard') {
        for (const key of ['ArrowRight', 'ArrowDown', 'ArrowLeft', 'ArrowLeft']) await page.keyboard.press(key)
        await expect(page.getByRole('button', { name: /^Block in column 1, row 2/ })).toBeFocused()
      }
      // A star looks alike from every side, so turning alone helps nothing; its geese clash by their method's rule.
      await expect(sum(page)).toHaveText(alike ?? '')
      await hand.press(button(page, 'Find the best nesting'))
      await expect(sum(page)).toHaveText(/^\d+ crossings between blocks don’t nest, \d+ fewer than before\.$/)
      await hand.press(button(page, 'Press units either way: then everything nests'))
      await expect(sum(page)).toHaveText(/^No problems between blocks/)
      await expect(page.getByLabel('Rotation')).toHaveValue('free')
    })
  })
}

test('a mark on the board leads to its finding, and what one points at is shown', BOTH_ENGINES, async ({ page }) => {
  await open(page, CLASHING)
  await openSheet(page, 'Cutting')
  const { x, y } = await pixels(page, [1, 1])
  await page.mouse.click(x, y)
  await expect(findings(page).getByRole('button', { name: /^Seams 1 and 2, at seam 3/ })).toBeFocused()
})

// A key, and what is our own.
test('the whole block is turned and mirrored with a key, and what nests is said', async ({ page }) => {
  await openApp(page)
  await board(page).focus()
  await page.keyboard.press('b')
  await expect(notice(page)).toHaveText('Whole block turned a quarter clockwise.')
  await expect(difference(page)).toHaveText('The same seams nest as before.')
  await page.keyboard.press('Shift+B')
  await expect(notice(page)).toHaveText('Whole block flipped left to right.')
  await expect(findings(page)).toContainText('All 4 seam crossings nest.')
})

test('a goose turned so that nothing fits is turned back by a fix that is tried first', async ({ page }) => {
  await openApp(page)
  await board(page).focus()
  for (const key of ['ArrowRight', 'Enter', 't']) await page.keyboard.press(key)
  await expect(difference(page)).toHaveText('The block can’t be sewn like this yet. Fill the gaps and move apart what overlaps.')
  // The finding names the unit that lies over others, and offers to turn it back.
  const back = findings(page)
    .getByRole('button', { name: /^Turn .* 90° to the left$/ })
    .first()
  await back.hover()
  await expect(findings(page)).toContainText('Shown on the board: it can be sewn, and everything nests.')
  await back.click()
  await expect(findings(page)).toContainText('All 4 seam crossings nest.')
})

// A key, and what is our own.
test('a goose turned outward brings a tip less to sew through', async ({ page }) => {
  await openApp(page)
  await board(page).focus()
  for (const key of ['ArrowRight', 'Enter', 'Shift+T']) await page.keyboard.press(key)
  await expect(difference(page)).toHaveText('The same seams nest as before; points to protect: 4 before, 3 now.')
  await page.keyboard.press('Shift+T')
  await expect(difference(page)).toHaveText('The same seams nest as before; points to protect: 3 before, 4 now.')
})

// A list of our own.
test('only what needs care is listed when asked, and a long list comes a part at a time', async ({ page }) => {
  await open(page, checker(12))
  await expect(findings(page)).toContainText('All 121 seam crossings nest.')
  await findings(page).getByText('121 crossings nest').click()
  const shown = findings(page).getByRole('button', { name: /^Seams \d+ and \d+, at/ })
  await expect(shown).toHaveCount(40)
  await button(page, 'Show 40 more of 81').click()
  await expect(shown).toHaveCount(80)
  await page.getByLabel('Show problems only').check()
  await expect(shown).toHaveCount(0)
})

test('a fix that is tried where the board is out of sight is pictured beside it, with no known barrier', async ({ page }) => {
  await page.setViewportSize({ width: 360, height: 740 })
  await open(page, CLASHING)
  await findings(page).getByRole('button', { name: 'Press seam 1 the other way' }).focus()
  await expect(findings(page).getByRole('img', { name: 'The block with this fix' })).toBeVisible()
  expect(await barriers(page)).toEqual([])
})

// Firefox's driver cannot say that the device asks for it.
test('motion is spared where the device asks for it', async ({ page }) => {
  await page.emulateMedia({ reducedMotion: 'reduce' })
  await openApp(page)
  await button(page, 'Sewing order').click()
  await slider(page).focus()
  for (const _ of [1, 2, 3]) await page.keyboard.press('ArrowRight')
  await expect(slider(page)).toHaveValue('3')
  await expect(page.getByRole('img', { name: /^Sewing order, step 3 of / })).toBeVisible()
})

for (const { screen, width, height, light } of SIZES)
  for (const colorScheme of EVERY_PAIR ? (['light', 'dark'] as const) : [light])
    test.describe(`${screen}, ${colorScheme}`, () => {
      test.use({ viewport: { width, height }, colorScheme })

      test('every way of looking is there to be looked at, the sewing views with no known barrier', async ({ page }) => {
        // On a phone the views are a list.
        const list = page.locator('.view-list select')
        const show = async (look: string): Promise<void> => {
          if (await list.isVisible()) await list.selectOption({ label: look })
          else {
            await button(page, look).click()
            await expect(button(page, look)).toHaveAttribute('aria-pressed', 'true')
          }
        }
        const picture = (view: string) => page.screenshot({ path: `test-results/looks/${width}-${colorScheme}-${view}.png` })
        await openApp(page)
        await expect(findings(page)).toContainText('Bulkiest spot')
        await picture('cloth')
        for (const look of ['Value', 'Layers', 'Quilting line']) {
          await show(look)
          await expect(page.getByText('Comparing neighbouring fabrics…')).toBeHidden()
          if (look === 'Quilting line') await expect(page.getByRole('tabpanel')).toContainText('1 line, ')
          await picture(look.split(' ')[0]?.toLowerCase() ?? '')
        }
        await show('Wrong side')
        await expect(board(page)).toHaveAttribute('data-folded', 'true')
        await picture('wrong')
        await show('Sewing order')
        for (const _ of [1, 2, 3]) await button(page, 'Next').click()
        await expect(told(page)).toBeVisible()
        await picture('order')
        if (colorScheme === 'light') expect(await barriers(page)).toEqual([])
        await openSheet(page, 'Setting')
        await button(page, 'Show on the board').click()
        await expect(page.getByRole('group', { name: /^Blocks: click/ })).toBeVisible()
        await picture('setting')
        if (colorScheme === 'dark') expect(await barriers(page, undefined, 'contrast')).toEqual([])
      })
    })
