/**
 * A maker's morning, from an empty grid to what is handed out, with each hand; at each step what a screen reader would say of it.
 *
 * The keyboard hand holds besides, after all that it does, that the focus is somewhere, in sight, marked and under nothing else.
 */
import {
  board,
  button,
  cutList,
  expect,
  findings,
  kept,
  type Locator,
  notice,
  openApp,
  type Page,
  SCREENS,
  saved,
  test,
  BOTH_ENGINES,
  bothIf,
} from './maker.ts'
import { finger, focusInSight, type Hand, keyboard, mouse } from './hands.ts'

const cell = (page: Page, column: number, row: number): Locator => page.getByRole('gridcell', { name: new RegExp(`^Column ${column}, row ${row}: `) })
const difference = (page: Page): Locator => page.getByTestId('difference')
const blocks = (page: Page): Locator => page.getByRole('dialog', { name: 'My blocks' })
const about = (page: Page): Locator => blocks(page).getByRole('region', { name: /^About/ })

/** The keyboard finds the same parts on a tablet, in the same order: tried where much is tried. */
const EVERY_HAND = process.env.NESTWRIGHT_HANDS === 'all'

for (const [how, handOf, screen] of [
  ['with the keyboard alone, on a desk', keyboard, SCREENS[0]],
  ...(EVERY_HAND ? [['with the keyboard alone, on a tablet', keyboard, SCREENS[1]] as const] : []),
  ['with a mouse, on a desk', mouse, SCREENS[0]],
  ['with a finger, on a tablet', finger, SCREENS[1]],
] as const)
  test.describe(how, bothIf(handOf === mouse), () => {
    test.use({ viewport: { width: screen.width, height: screen.height }, hasTouch: handOf === finger })

    test('a star is laid, coloured three ways, turned wrongly and repaired, seen among copies, kept and handed out', async ({ page }) => {
      const hand = handOf(page)
      await openApp(page)
      await begin(page, hand, 'Empty grid')
      await expect(cell(page, 1, 1)).toHaveAccessibleName('Column 1, row 1: empty.')
      await test.step('lay a star', () => laysAStar(page, hand))
      await test.step('colour it three ways', () => coloursIt(page, hand))
      await test.step('turn two geese wrongly, and repair them', () => turnsWrongly(page, hand))
      await test.step('see it among copies', () => seesCopies(page, hand))
      await test.step('see how it is sewn', () => seesItSewn(page, hand))
      await test.step('hand it out', () => handsItOut(page, hand))
      await test.step('go back, put aside, bring back', () => goesBack(page, hand))
    })
  })

async function begin(page: Page, hand: Hand, what: string): Promise<void> {
  await hand.press(button(page, 'My blocks'))
  await expect(blocks(page)).toBeVisible()
  await hand.press(blocks(page).getByRole('button', { name: what, exact: true }))
  await expect(blocks(page)).toBeHidden()
  await expect(notice(page)).toContainText('is open.')
}

async function laysAStar(page: Page, hand: Hand): Promise<void> {
  const corners = [
    [0, 0],
    [3, 0],
    [0, 3],
    [3, 3],
  ] as const
  for (const at of corners) {
    await hand.place('Square', at, [1, 1])
    await expect(cell(page, at[0] + 1, at[1] + 1)).toHaveAccessibleName(/Square, Patch in Linen white, selected\.$/)
  }
  await hand.place('Flying goose', [1, 0], [2, 1])
  await hand.more('Turn 180°')
  await expect(cell(page, 2, 1)).toHaveAccessibleName(/half turn/)
  await hand.place('Flying goose', [1, 3], [2, 1])
  // The two at the sides are turned in the open middle, and moved out.
  await hand.place('Flying goose', [1, 1], [2, 1])
  await hand.press(button(page, 'Turn 90°'))
  await expect(notice(page)).toHaveText('Turned a quarter clockwise.')
  await hand.move([1.5, 1.5], [-1, 0])
  await expect(cell(page, 1, 2)).toHaveAccessibleName(/quarter turn/)
  await hand.place('Flying goose', [1, 1], [2, 1])
  await hand.press(button(page, 'Turn 90°'))
  await hand.more('Turn 180°')
  await hand.move([1.5, 1.5], [2, 0])
  await expect(cell(page, 4, 3)).toHaveAccessibleName(/three-quarter turn/)
  await hand.place('Square', [1, 1], [1, 1])
  await hand.grow([1.5, 1.5], [2, 2], [1, 1])
  await expect(notice(page)).toHaveText('Resized.')
  await expect(findings(page)).toContainText('All 4 seam crossings nest.')
}

async function coloursIt(page: Page, hand: Hand): Promise<void> {
  await hand.recolour([1.5, 1.5], 'Patch', 'Honey')
  await expect(cell(page, 2, 2)).toHaveAccessibleName(/Patch in Honey/)
  await keepAs(page, hand, 'Brick points')
  await hand.recolour([1.2, 0.8], 'Right wing', 'Moss')
  await hand.sheet('Cutting')
  // Geese come four from one batch only where they are alike: common practice, no source.
  await expect(cutList(page)).toContainText(/batch/)
  await keepAs(page, hand, 'One moss wing')
  await hand.sheet('Colour')
  await hand.press(page.getByRole('checkbox', { name: 'Fewest batches only' }))
  const way = page.getByRole('list', { name: 'Colourings' }).getByRole('button', { name: /^Use colouring 1, .*1 batch/ })
  await hand.press(way)
  await expect(way).toHaveAttribute('aria-pressed', 'true')
  await expect(notice(page)).toHaveText('Colouring 1 is on the board.')
  await keepAs(page, hand, 'One batch')
}

async function keepAs(page: Page, hand: Hand, name: string): Promise<void> {
  await hand.press(button(page, 'My blocks'))
  await hand.press(blocks(page).getByRole('button', { name: 'More about New block', exact: true }))
  await hand.write(about(page).getByLabel('Save this version as'), name)
  await expect(blocks(page).getByText(`Version saved as “${name}”.`)).toBeVisible()
  await expect(about(page).getByRole('button', { name: new RegExp(`^Go back to ${name}, `) })).toBeVisible()
  await hand.press(blocks(page).getByRole('button', { name: 'Close', exact: true }))
  await expect(blocks(page)).toBeHidden()
  if (hand.name === 'keyboard') await expect(button(page, 'My blocks')).toBeFocused()
}

async function turnsWrongly(page: Page, hand: Hand): Promise<void> {
  await hand.sheet('Seam check')
  await hand.choose([1.5, 0.2])
  await hand.more('Turn 180°')
  await expect(difference(page)).toContainText('points to protect: 4 before, 3 now')
  // A quarter turn leaves its cells: what is mended by a turn is offered beside the finding.
  await hand.choose([1.5, 3.5])
  await hand.press(button(page, 'Turn 90°'))
  await expect(difference(page)).toHaveText('The block can’t be sewn like this yet. Fill the gaps and move apart what overlaps.')
  await expect(findings(page).getByText('These pieces overlap.').first()).toBeVisible()
  const turnBack = findings(page)
    .getByRole('button', { name: /^Turn the .*goose 90° to the left$/ })
    .first()
  await hand.press(turnBack)
  if (hand.touch) await hand.press(turnBack)
  await expect(notice(page)).toHaveText('Done: Turn the bottom left goose 90° to the left.')
  // By way of a layout that cannot be sewn: what is told is the difference to the last one that could.
  await hand.choose([1.5, 0.2])
  for (const _ of [1, 2]) await hand.press(button(page, 'Turn 90°'))
  await expect(difference(page)).toContainText('points to protect: 3 before, 4 now')
  await expect(findings(page)).toContainText('All 4 seam crossings nest.')
}

async function seesCopies(page: Page, hand: Hand): Promise<void> {
  await hand.sheet('Setting')
  await hand.pick(page.getByRole('combobox', { name: 'Blocks across' }), '3')
  await hand.pick(page.getByRole('combobox', { name: 'Down' }), '3')
  await expect(page.getByTestId('setting-sum')).toBeVisible()
  await hand.press(button(page, 'Show on the board'))
  const copies = page.getByRole('group', { name: 'Blocks: click one to turn it, use arrow keys to move' })
  await expect(copies.getByRole('button')).toHaveCount(9)
  await hand.press(copies.getByRole('button', { name: 'Block in column 1, row 1: not turned' }))
  await expect(notice(page)).toHaveText('Block turned a quarter.')
  await expect(copies.getByRole('button', { name: 'Block in column 1, row 1: quarter turn' })).toBeVisible()
  await expect(page.getByTestId('setting-sum')).toHaveText(/^\d+ crossings between blocks don’t nest/)
  await hand.press(button(page, 'Find the best nesting'))
  await expect(button(page, 'Find the best nesting')).toBeDisabled()
  // A star is the same however it is turned, and the rule of its geese holds: only lifted they may lie the other way in every other block.
  await hand.press(button(page, 'Press units either way: then everything nests'))
  await expect(page.getByTestId('setting-sum')).toHaveText('No problems between blocks.')
}

async function seesItSewn(page: Page, hand: Hand): Promise<void> {
  await hand.press(button(page, 'Sewing order'))
  const order = page.getByRole('region', { name: 'Sewing order' })
  await hand.press(order.getByRole('button', { name: 'Next' }))
  await expect(order.getByRole('slider', { name: 'Step' })).toHaveAttribute('aria-valuetext', /^1 of \d+$/)
  await expect(page.getByTestId('step').getByRole('heading')).toHaveText(/^Make 4 geese: /)
  await expect(page.getByTestId('step')).toHaveAttribute('aria-live', 'polite')
  await hand.press(order.getByRole('button', { name: 'Back' }))
  // At the end of its way a button says so, and keeps the focus.
  await expect(order.getByRole('button', { name: 'Back' })).toBeDisabled()
  await hand.press(button(page, 'Wrong side'))
  await expect(button(page, 'Wrong side')).toHaveAttribute('aria-pressed', 'true')
  await hand.sheet('Quilting')
  await hand.press(button(page, 'Show the quilting line'))
  await expect(page.getByTestId('route')).toContainText('1 line')
  await hand.pick(page.getByRole('combobox', { name: 'Start' }), 'top left')
  await expect(page.getByTestId('route')).toContainText('long')
  await hand.press(button(page, 'Fabric'))
}

async function handsItOut(page: Page, hand: Hand): Promise<void> {
  await hand.sheet('Cutting')
  await expect(cutList(page).getByRole('heading', { level: 3 }).first()).toBeVisible()
  await hand.press(button(page, 'Copy as CSV'))
  await expect(notice(page)).toHaveText('Cut list copied as CSV.')
  await hand.sheet('Booklet')
  await hand.write(page.getByLabel('Title'), 'A star for the class')
  await expect(page.getByRole('heading', { level: 4 }).first()).toBeVisible()
  const { name } = await saved(page, () => hand.press(button(page, 'Save file')))
  expect(name).toMatch(/\.json$/)
  await hand.press(button(page, 'My blocks'))
  await hand.press(blocks(page).getByRole('button', { name: 'More about New block', exact: true }))
  await hand.press(about(page).getByRole('button', { name: 'Copy link' }))
  await expect(blocks(page).getByText('Link copied. It holds the whole block.')).toBeVisible()
  expect(await page.evaluate(() => navigator.clipboard.readText())).toMatch(/^http.*#/)
}

/** The dialog is open on the block that is on the board. */
async function goesBack(page: Page, hand: Hand): Promise<void> {
  const more = (name: string): Locator => blocks(page).getByRole('button', { name: `More about ${name}`, exact: true })
  await hand.press(about(page).getByRole('button', { name: 'Make a copy' }))
  await expect(blocks(page).getByText('New block (copy) is in My blocks.')).toBeVisible()
  await hand.press(more('New block (copy)'))
  await hand.press(about(page).getByRole('button', { name: 'Archive' }))
  await expect(blocks(page).getByText('New block (copy) is in the archive.')).toBeVisible()
  await expect(more('New block (copy)')).toBeHidden()
  if (hand.name === 'keyboard') await expect(button(page, 'Restore')).toBeFocused()
  await hand.press(button(page, 'Restore'))
  await expect(blocks(page).getByText('Restored.')).toBeVisible()
  await expect(more('New block (copy)')).toBeVisible()
  if (hand.name === 'keyboard') await expect(more('New block (copy)')).toBeFocused()
  await hand.press(more('New block'))
  await hand.press(about(page).getByRole('button', { name: /^Go back to One moss wing, / }))
  await expect(blocks(page)).toBeHidden()
  await expect(cell(page, 2, 1)).toHaveAccessibleName(/Right wing in Moss/)
  await kept(page)
  await hand.press(button(page, 'Undo'))
  await expect(cell(page, 2, 1)).toHaveAccessibleName(/Right wing in Old brick/)
}

test.describe('with the keyboard alone', () => {
  test.use({ viewport: { width: 1440, height: 900 } })

  test("a block of one's own is made of the lantern's parts and of patches drawn corner by corner", async ({ page }) => {
    const hand = keyboard(page)
    await openApp(page)
    await begin(page, hand, 'Lantern')
    await expect(cell(page, 1, 3)).toHaveAccessibleName(/^Column 1, row 3: Strips, Strip 1 in Rust, .* Strip 6 in Rust\.$/)
    await hand.choose([0, 1])
    await keys(page, 'Control+c')
    await expect(notice(page)).toHaveText('Unit copied. Paste it here or in another block.')

    await begin(page, hand, 'Empty grid')
    await hand.press(board(page))
    await keys(page, 'Control+v')
    await expect(cell(page, 1, 2)).toHaveAccessibleName(/Half-square triangle, Upper half in Night sky, Lower half in Iron, selected\.$/)
    await keys(page, 'm')
    await expect(notice(page)).toHaveText('Flipped left to right.')
    await expect(cell(page, 1, 2)).toHaveAccessibleName(/, flipped, /)
    await test.step('copy, make larger, change places, align', () => arranges(page, hand))
    await test.step('draw a patch, take a corner back, close it', () => drawsAPatch(page))
    await test.step('take the patch away, and undo that', () => removes(page, hand))
  })

  test(
    'Tab reaches all of the page in its order and comes round; the first stops go past what is before the board',
    BOTH_ENGINES,
    async ({ page }) => {
      await openApp(page)
      await expect(findings(page)).toContainText('All 4 seam crossings nest.')
      await keys(page, 'Tab')
      await expect(button(page, 'To the board')).toBeFocused()
      await focusInSight(page)
      await keys(page, 'Enter')
      await expect(board(page)).toBeFocused()
      await expect(board(page)).toHaveAccessibleDescription('Use the arrow keys to move, and Enter to select. All keys are listed under Help.')
      // Past the list of rarer tools.
      await keys(page, 'Shift+Tab', 'Shift+Tab')
      await expect(button(page, 'Select and move')).toBeFocused()
      await keys(page, 'ArrowDown')
      await expect(button(page, 'Select with a box')).toBeFocused()
      // From the tools, which stand before the board.
      await keys(page, 'F6')
      await expect(board(page)).toBeFocused()
      for (const part of ['under', 'tabs', 'sheet', 'head', 'units', 'fabrics', 'looks', 'board']) {
        await keys(page, 'F6')
        await expect(
          page
            .locator(`[data-part="${part}"]`)
            .filter({ has: page.locator(':focus') })
            .or(page.locator(`[data-part="${part}"]:focus`)),
        ).toHaveCount(1)
        await focusInSight(page)
      }
      await keys(page, 'Shift+F6')
      await expect(button(page, 'Fabric')).toBeFocused()
    },
  )
})

async function keys(page: Page, ...names: readonly string[]): Promise<void> {
  for (const name of names) await page.keyboard.press(name)
}

async function drawsAPatch(page: Page): Promise<void> {
  await keys(page, 'Escape', '4')
  await expect(notice(page)).toHaveText('Click each corner. To close, click the first one again or press Enter.')
  await keys(page, ...Array.from({ length: 5 }, () => 'ArrowLeft'), ...Array.from({ length: 5 }, () => 'ArrowUp'))
  await expect(notice(page)).toHaveText('Line 0 from the left, line 0 from the top.')
  await keys(page, 'ArrowDown', 'ArrowDown', 'ArrowDown')
  await keys(page, ' ')
  await expect(notice(page)).toHaveText('First corner set. Click where the next one goes.')
  await keys(page, 'ArrowRight', 'ArrowRight', ' ', 'ArrowRight', ' ')
  await keys(page, 'Backspace')
  await expect(notice(page)).toHaveText('Last corner undone.')
  await keys(page, 'ArrowLeft', 'ArrowLeft', 'ArrowDown', ' ')
  await expect(notice(page)).toHaveText('3 corners set. Click the first one or press Enter to close the patch.')
  await keys(page, 'Enter')
  await expect(notice(page)).toHaveText('Patch drawn.')
  await keys(page, '1')
  await expect(cell(page, 1, 4)).toHaveAccessibleName(/Free patch, Patch in Linen white, selected\.$/)
}

/** A triangle lies chosen in the first column, second row, of four by four. */
async function arranges(page: Page, hand: Hand): Promise<void> {
  await keys(page, 'd')
  await expect(notice(page)).toHaveText('Duplicated.')
  await keys(page, ...Array.from({ length: 4 }, () => 'Alt+ArrowRight'))
  // At the edge it stays, and says why, each time.
  await expect(notice(page)).toHaveText('There’s no room there: those squares are taken or outside the grid.')
  await keys(page, 't')
  await expect(page.getByRole('gridcell', { name: /Half-square triangle, quarter turn, .*selected/ })).toHaveCount(1)
  await keys(page, 'Control+a')
  await expect(notice(page)).toHaveText('All units selected.')
  await keys(page, 'x')
  await expect(notice(page)).toHaveText('The two units are swapped.')
  await keys(page, 'Control+a')
  await hand.more('Align left')
  await expect(notice(page)).toHaveText('Aligned left.')
  await hand.choose([0, 1])
  await keys(page, 'Alt+Shift+ArrowRight')
  await expect(notice(page)).toHaveText('Resized.')
}

async function removes(page: Page, hand: Hand): Promise<void> {
  await hand.press(button(page, 'Delete'))
  await expect(notice(page)).toHaveText('Unit deleted.')
  await expect(board(page)).toBeFocused()
  await expect(cell(page, 1, 4)).toHaveAccessibleName('Column 1, row 4: empty.')
  await keys(page, 'Control+z')
  await expect(notice(page)).toHaveText('Undone: delete a unit.')
  await expect(cell(page, 1, 4)).toHaveAccessibleName(/Free patch/)
}
