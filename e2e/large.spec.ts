/** A block too large to be told while the hand waits: its findings come from beside the page, and follow each edit. */
import { expect, findings, openApp, test } from './maker.ts'

const SIDE = 46

const block = {
  format: 'nestwright.block',
  version: 1,
  name: 'Wide field',
  measure: { unit: 'in' },
  grid: { columns: SIDE, rows: SIDE, cell: 2 },
  fabrics: [
    { id: 'oat', name: 'Oat', colour: '#efe6d2' },
    { id: 'fern', name: 'Fern', colour: '#4f7a4a' },
  ],
  units: Array.from({ length: SIDE * SIDE }, (_, index) => ({
    id: `u${index}`,
    kind: 'strips',
    at: [index % SIDE, Math.floor(index / SIDE)],
    size: [1, 1],
    fabrics: { strip1: 'oat', strip2: 'fern' },
  })),
}

// What works beside the page is tried in the second engine by every task that waits for the layers of cloth; here it only works longer.
test('a large block is worked out beside the page, after an edit and after undoing it', async ({ page }) => {
  test.slow()
  const follows = expect.configure({ timeout: 40_000 })
  await openApp(page)
  await page.getByLabel('Block file').setInputFiles({ name: 'large.json', mimeType: 'application/json', buffer: Buffer.from(JSON.stringify(block)) })
  // Each strip's own seam and each seam between two units run on across every row: 46 and 45 seams meet at each of 45 joins of rows.
  const all = `All ${(SIDE + SIDE - 1) * (SIDE - 1)} seam crossings nest.`
  await follows(findings(page)).toContainText(all)
  const board = page.getByRole('application', { name: new RegExp(block.name) })
  await board.focus()
  await board.press('Enter')
  await board.press('t')
  await follows(findings(page)).not.toContainText(all)
  await board.press('Control+z')
  await follows(findings(page)).toContainText(all)
})
