/** The main job, from an opened app to a cut list, with each hand and on each screen. */
import { button, cutList, expect, findings, kept, notice, openApp, openFile, type Page, saved, SCREENS, test, bothIf } from './maker.ts'
import { finger, type Hand, keyboard, mouse } from './hands.ts'

/** Each hand on the screen that it is used to; the keys have the tablet in the morning. */
const HANDS = [
  ['on a desk, with a mouse', mouse, SCREENS[0]],
  ['on a tablet, with a finger', finger, SCREENS[1]],
  ['on a desk, with the keyboard alone', keyboard, SCREENS[0]],
] as const

for (const [how, handOf, { width, height }] of HANDS) {
  // By keys it takes Firefox's driver minutes; other tasks are done by keys in it.
  test.describe(how, bothIf(handOf === mouse), () => {
    test.use({ viewport: { width, height }, hasTouch: handOf === finger })

    test('a star is recoloured, turned, fixed, cut and kept', async ({ page }) => {
      const hand = handOf(page)
      await openApp(page)
      await expect(findings(page)).toContainText('All 4 seam crossings nest.')

      // The lower left wing of the goose at the top, as the star lies on the board.
      await hand.recolour([1.2, 0.8], 'Right wing', 'Moss')
      await hand.sheet('Cutting')
      await expect(cutList(page).getByRole('heading', { name: /Moss/ })).toBeVisible()
      await hand.sheet('Seam check')

      await turnsAGoose(page, hand)
      await mendsAClash(page, hand)
      await copiesAndSaves(page, hand)
      await keepsAll(page, hand)
    })

    test('a broken file gives one sentence and changes nothing', async ({ page }) => {
      const hand = handOf(page)
      await openApp(page)
      await hand.sheet('Cutting')
      await expect(cutList(page).getByText(/^How to cut it/)).toHaveCount(3)
      const before = await cutList(page).textContent()
      for (const text of ['not a block', '', '{"format":"nestwright.block","version":9}', '[]']) {
        await openFile(page, () => hand.press(button(page, 'Open file')), 'broken.json', text)
        await expect(notice(page)).toHaveText(/^broken\.json wasn’t opened\. [^\n]+\.$/)
      }
      expect(await cutList(page).textContent()).toBe(before)
      await expect(button(page, 'Undo')).toBeDisabled()
    })
  })
}

async function turnsAGoose(page: Page, hand: Hand): Promise<void> {
  await expect(findings(page)).toContainText('4 points to protect')
  await hand.choose([1.5, 0.2])
  await hand.more('Turn 180°')
  // A goose that points outward brings no tip to a join: common practice, no source.
  await expect(findings(page)).toContainText('3 points to protect')
  await hand.press(button(page, 'Undo'))
  await expect(findings(page)).toContainText('4 points to protect')
}

/** Two geese tip to tip, both pressed toward their wings, clash on both sides of the tip: common practice, no source. */
async function mendsAClash(page: Page, hand: Hand): Promise<void> {
  await hand.choose([1.3, 1.3])
  await hand.press(button(page, 'Delete'))
  await expect(findings(page)).toContainText('Keep going: 12 of 16 squares filled.')
  await hand.place('Flying goose', [1, 1], [2, 1])
  await expect(findings(page)).toContainText('Keep going: 14 of 16 squares filled.')
  await hand.more('Turn 180°')
  await expect(notice(page)).toHaveText('Turned 180°.')
  await hand.place('Flying goose', [1, 2], [2, 1])
  await expect(findings(page)).toContainText('2 crossings don’t nest')
  // What takes longer is there too, so that nothing moves under the press.
  for (const late of ['Bulkiest spot', 'layers here', 'Press seams on the board']) await expect(findings(page)).toContainText(late)
  const fix = findings(page)
    .getByRole('button', { name: /^Press / })
    .first()
  await hand.press(fix)
  // A finger's first press shows on the board what the fix would change.
  if (hand.touch) await hand.press(fix)
  await expect(findings(page)).not.toContainText('2 crossings don’t nest')
}

async function copiesAndSaves(page: Page, hand: Hand): Promise<void> {
  await hand.sheet('Cutting')
  await hand.press(button(page, 'Copy as CSV'))
  await expect(notice(page)).toHaveText('Cut list copied as CSV.')
  const copied = await page.evaluate(() => navigator.clipboard.readText())
  expect(copied).toMatch(/^fabric,unit,shape,count,width,length,/)
  // Large squares of geese that finish 6 by 3: common practice, no source.
  expect(copied).toContain('7 1/4,7 1/4,7.25,7.25,in')
  const { name } = await saved(page, () => hand.press(button(page, 'Save file')))
  expect(name).toMatch(/\.json$/)
}

async function keepsAll(page: Page, hand: Hand): Promise<void> {
  await kept(page)
  await hand.sheet('Seam check')
  // Layers are counted beside the page, a little later than the rest.
  await expect(findings(page)).toContainText('Bulkiest spot')
  const found = await findings(page).textContent()
  await hand.sheet('Cutting')
  await expect(cutList(page)).toContainText('How to cut it')
  const before = await cutList(page).textContent()
  await page.reload()
  await hand.sheet('Cutting')
  await expect(cutList(page)).toHaveText(before ?? '', { useInnerText: false })
  await hand.sheet('Seam check')
  await expect(findings(page)).toHaveText(found ?? '', { useInnerText: false })
  await hand.press(button(page, 'Undo'))
  await expect(findings(page)).toContainText('2 crossings don’t nest')
  await hand.press(button(page, 'Redo'))
  await expect(findings(page)).not.toContainText('2 crossings don’t nest')
}
