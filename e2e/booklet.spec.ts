/** Paper and files: the booklet as the page prints it, opened again; single pages, pictures and tables. */
import { spawnSync } from 'node:child_process'
import { mkdtempSync, readFileSync, rmSync, writeFileSync } from 'node:fs'
import { tmpdir } from 'node:os'
import { join } from 'node:path'
import { barriers, board, button, expect, notice, openApp, openFile, openSheet, saved, test, BOTH_ENGINES } from './maker.ts'

test('the page and the command print the same booklet, and the page opens it again', BOTH_ENGINES, async ({ page }) => {
  await openApp(page)
  await openSheet(page, 'Booklet')
  const printed = await saved(page, () => button(page, 'Save booklet as PDF').click())
  expect(printed.name).toBe('evening-star-example-booklet.pdf')
  const folder = mkdtempSync(join(tmpdir(), 'nestwright-booklet-'))
  try {
    writeFileSync(join(folder, 'package.json'), '{ "type": "module" }')
    writeFileSync(join(folder, 'page.pdf'), printed.bytes)
    expect(spawnSync(process.execPath, ['.tools/bundle.mjs', folder]).status).toBe(0)
    // The block that lies inside is printed once more, on the paper that is usual where this browser is.
    expect(
      spawnSync(process.execPath, [join(folder, 'nestwright.js'), 'booklet', join(folder, 'page.pdf'), join(folder, 'command.pdf'), '--paper', 'a4'])
        .status,
    ).toBe(0)
    expect(printed.bytes.equals(readFileSync(join(folder, 'command.pdf')))).toBe(true)
  } finally {
    rmSync(folder, { recursive: true, force: true })
  }
  await openFile(page, () => button(page, 'Open file').click(), 'star.pdf', printed.bytes)
  await expect(notice(page)).toHaveText('Evening star (example) is open.')
})

test('a PDF that is no booklet is refused in one sentence, and nothing changes', async ({ page }) => {
  await openApp(page)
  const bill = '%PDF-1.4\n1 0 obj\n<<>>\nstream\nhello\nendstream\n'
  await openFile(page, () => button(page, 'Open file').click(), 'bill.pdf', bill)
  await expect(notice(page)).toHaveText('bill.pdf is a PDF without a block inside. Open a block file, or a booklet saved from Nestwright.')
  await expect(board(page)).toBeVisible()
})

test('printing is taken back, and single pages, pictures and tables are saved', async ({ page }) => {
  await openApp(page)
  await openSheet(page, 'Booklet')
  await expect(page.locator('.prints').last()).toBeVisible()
  expect(await barriers(page, '.prints')).toEqual([])
  await button(page, 'Save booklet as PDF').click()
  await button(page, 'Cancel').click()
  await expect(notice(page)).toHaveText('Cancelled. Nothing was saved.')
  await page.getByLabel('A4').check()
  const chart = await saved(page, () => button(page, 'Save size chart as PDF').click())
  await expect(notice(page)).toHaveText('Size chart saved as evening-star-example-chart.pdf.')
  // The star is cut from squares alone: it has no templates.
  await expect(page.locator('.step').first()).toBeVisible()
  await expect(button(page, 'Save templates as PDF')).toHaveCount(0)
  expect([chart.name, chart.bytes.subarray(0, 8).toString()]).toEqual(['evening-star-example-chart.pdf', '%PDF-1.7'])
  await page.locator('.prints select').selectOption({ label: 'with the quilting line' })
  const svg = await saved(page, () => button(page, 'Save as SVG').click())
  expect(svg.bytes.toString()).toMatch(/^<svg [^>]*width="12\.25in" height="12\.25in"/)
  await page.locator('.prints select').selectOption({ label: 'with the number of layers' })
  expect((await saved(page, () => button(page, 'Save as SVG').click())).name).toBe('evening-star-example-layers.svg')
  const png = await saved(page, () => button(page, 'Save as PNG').click())
  // 12 1/4 in at 200 dots an inch. Width and height stand in the PNG's first chunk, IHDR (ISO/IEC 15948, 11.2.2).
  expect([png.bytes.readUInt32BE(16), png.bytes.readUInt32BE(20)]).toEqual([2450, 2450])
  const units = await saved(page, () => button(page, 'Save list of units as CSV').click())
  expect(units.bytes.toString().split('\r\n')[0]).toMatch(/^unit,kind,hand,count,finished_width/)
  const cloth = await saved(page, () => button(page, 'Save shopping list as CSV').click())
  await expect(notice(page)).toHaveText('Shopping list saved as evening-star-example-cloth.csv.')
  expect(cloth.bytes.toString()).toContain('Linen white,#f1e9da')
  await page.screenshot({ path: 'test-results/prints.png' })
})
