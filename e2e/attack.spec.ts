/**
 * What should not come into the app, and what nobody does on purpose: each gets one clear sentence, nothing already made is lost, and the page goes on.
 *
 * A seeded hand that does anything anywhere ends it: after each stretch the block in the database is the block on the board, and undone and done again
 * all the way it comes out the same. In the first engine only: drops and pastes are made up in the page, and so is what the second one does with them.
 */
import { readFileSync } from 'node:fs'
import { CLASHING } from './blocks.ts'
import { board, button, expect, kept, notice, openApp, openSheet, type Page, pixels, test } from './maker.ts'

const nameField = (page: Page) => page.getByRole('textbox', { name: 'Block', exact: true })
const inDialog = (page: Page, name: string | RegExp) => page.getByRole('dialog').getByRole('button', { name, exact: true })
const blockCalled = (name: string) => ({ ...CLASHING, name })

interface Given {
  readonly name: string
  readonly text: string
}

/** As if dropped from a folder of the desk. */
async function dropFiles(page: Page, files: readonly Given[]): Promise<void> {
  await page.evaluate((given) => {
    const carried = new DataTransfer()
    for (const { name, text } of given) carried.items.add(new File([text], name))
    const event = (sort: string) => new DragEvent(sort, { dataTransfer: carried, bubbles: true, cancelable: true })
    const over = event('dragover')
    document.body.dispatchEvent(over)
    if (!over.defaultPrevented) throw new Error('the browser would leave the page for the file')
    document.body.dispatchEvent(event('drop'))
  }, files)
}

async function giveFiles(page: Page, files: readonly (Given & { readonly buffer?: Buffer })[]): Promise<void> {
  const field = page.locator('header input[type=file]')
  await field.setInputFiles(files.map(({ name, text, buffer }) => ({ name, mimeType: 'application/json', buffer: buffer ?? Buffer.from(text) })))
}

test('files are dropped on the page, several at once, and the broken one among them is named', async ({ page }) => {
  await openApp(page)
  await nameField(page).fill('My own work')
  await dropFiles(page, [{ name: 'one.json', text: JSON.stringify(blockCalled('Came by itself')) }])
  await expect(notice(page)).toHaveText('Came by itself is open.')
  await dropFiles(page, [
    { name: 'two.json', text: JSON.stringify(blockCalled('Second')) },
    { name: 'broken.json', text: '{' },
    { name: 'three.json', text: JSON.stringify(blockCalled('Third')) },
  ])
  await expect(notice(page)).toHaveText(
    '2 files opened. broken.json wasn’t opened. file: this isn’t a block file; open a file that Nestwright saved.',
  )
  await expect(nameField(page)).toHaveValue('Third')
  await button(page, 'My blocks').click()
  for (const name of ['My own work', 'Came by itself', 'Second', 'Third']) await expect(inDialog(page, `Open ${name}`)).toBeVisible()
})

test('a file is read by what stands in it, and a name that is none or too long is said in a sentence that can be read', async ({ page }) => {
  await openApp(page)
  const wide = Buffer.from(`\ufeff${JSON.stringify(blockCalled('Sixteen bits'))}`, 'utf16le')
  await giveFiles(page, [{ name: 'wide.json', text: '', buffer: wide }])
  await expect(notice(page)).toHaveText('Sixteen bits is open.')
  await giveFiles(page, [{ name: 'text.pdf', text: JSON.stringify(blockCalled('Not a PDF')) }])
  await expect(notice(page)).toHaveText('Not a PDF is open.')
  await giveFiles(page, [{ name: 'nameless.json', text: JSON.stringify(blockCalled('')) }])
  await expect(notice(page)).toHaveText('Untitled is open.')
  await giveFiles(page, [{ name: 'long.json', text: JSON.stringify(blockCalled('W'.repeat(20_000))) }])
  await expect(notice(page)).toHaveText(`${'W'.repeat(59)}… is open.`)
  await button(page, 'My blocks').click()
  await page.getByRole('dialog').locator('.card.open .about').click()
  await inDialog(page, 'Make a copy').click()
  await expect(page.getByRole('dialog').locator('.blocks-notice')).toContainText('is in My blocks.')
  await page.getByRole('dialog').locator('.card:not(.open) .face').first().click()
  await opensAgain(page)
})

test('thousands of blocks come in, and the shelf puts out no more of them than are looked at', async ({ page }) => {
  await openApp(page)
  const blocks = Array.from({ length: 3000 }, (_, index) => ({
    id: `b${index}`,
    made: 1 + index,
    changed: 1 + index,
    versions: [],
    block: blockCalled(`Many ${index}`),
  }))
  await giveFiles(page, [{ name: 'many.json', text: JSON.stringify({ format: 'nestwright.blocks', version: 1, blocks }) }])
  await expect(notice(page)).toHaveText('3000 blocks added.')
  await button(page, 'My blocks').click()
  const cards = page.getByRole('dialog').locator('.card')
  await expect(inDialog(page, 'My blocks (3001)')).toBeVisible()
  const first = await cards.count()
  expect(first).toBeLessThan(500)
  await cards.last().scrollIntoViewIfNeeded()
  await expect.poll(() => cards.count()).toBeGreaterThan(first)
  await page.getByRole('searchbox').fill('many 2999')
  await expect(cards).toHaveCount(1)
  await inDialog(page, 'Open Many 2999').click()
  await expect(nameField(page)).toHaveValue('Many 2999')
})

test('a link that is opened again finds the block that it brought', async ({ page }) => {
  await openApp(page)
  await nameField(page).fill('My own work')
  const link = await page.evaluate(async (block) => {
    const pressed = new Blob([JSON.stringify(block)]).stream().pipeThrough(new CompressionStream('deflate-raw'))
    const bytes = new Uint8Array(await new Response(pressed).arrayBuffer())
    return `#block=1.${btoa(String.fromCharCode(...bytes))
      .replaceAll('+', '-')
      .replaceAll('/', '_')
      .replace(/=+$/, '')}`
  }, blockCalled('Linked'))
  const follow = (hash: string) =>
    page.evaluate((next) => {
      window.location.hash = next
    }, hash)
  await follow(link)
  await expect(notice(page)).toHaveText('Linked was opened from a link and added to your blocks.')
  await follow(link)
  await expect(notice(page)).toHaveText('Linked is already in My blocks.')
  await follow(link.slice(0, -9))
  await expect(notice(page)).toHaveText('This link is broken: there’s no block in it. Ask for it again, or for a file.')
  await button(page, 'My blocks').click()
  await expect(page.getByRole('dialog').locator('.card')).toHaveCount(2)
})

test('what a field takes can be read back, and what it does not take is said', async ({ page }) => {
  await openApp(page)
  await openSheet(page, 'Block')
  const field = page.getByRole('textbox', { name: /^Grid square, finished/ })
  for (const text of ['1e-999', '1e9', '1/0', '-1', '٣', '0'.repeat(300), '0.0000001']) {
    await field.fill(text)
    await field.blur()
    await expect(page.locator('.pairs .trouble')).toHaveText(/^Enter a length (above zero|from 0\.001 to 10000), such as 3 or 2 1\/2\.$/)
  }
  await field.fill('2½')
  await field.blur()
  await expect(field).toHaveValue('2 1/2')
  await field.fill('2,5')
  await field.blur()
  await expect(field).toHaveValue('2 1/2')
  await opensAgain(page)
})

test('units are pasted beside what lies there, and a grid of a hundred million cells does not hold the page up', async ({ page }) => {
  await openApp(page)
  const whole = { id: 'whole', kind: 'square', at: [0, 0], size: [10_000, 9_999], fabrics: { patch: 'a' } }
  const huge = { ...blockCalled('Huge'), grid: { columns: 10_000, rows: 10_000, cell: 1 }, units: [whole], press: [] }
  await giveFiles(page, [{ name: 'huge.json', text: JSON.stringify(huge) }])
  await expect(notice(page)).toHaveText('Huge is open.')
  const one = { id: 'one', kind: 'square', at: [5000, 5000], size: [1, 1], fabrics: { patch: 'a' } }
  const units = { format: 'nestwright.units', version: 1, units: [one], fabrics: CLASHING.fabrics }
  await pasteText(page, JSON.stringify(units))
  await expect(notice(page)).toHaveText('Unit pasted.')
  expect((await boardBlock(page)).units.at(-1)?.at).toEqual([5000, 9999])
  await pasteText(page, JSON.stringify({ ...units, units: [{ ...one, size: [1, 2] }] }))
  await expect(notice(page)).toHaveText('There’s no room to paste. Make the grid larger or delete a unit.')
})

test('a damaged block keeps nothing else from the board, and what can be read of it goes on', async ({ page }) => {
  await openApp(page)
  await nameField(page).fill('Sound')
  await kept(page)
  await giveFiles(page, [{ name: 'hurt.json', text: JSON.stringify(blockCalled('Hurt')) }])
  await expect(notice(page)).toHaveText('Hurt is open.')
  await nameField(page).fill('Hurt more')
  await kept(page)
  await damage(page, 'edits', 'Hurt more', { name: 'x', redo: 'no step', undo: '' })
  await page.reload()
  await expect(notice(page)).toHaveText('Hurt is damaged. What could be read is open as a copy.')
  await expect(nameField(page)).toHaveValue('Hurt (copy)')
  await kept(page)

  await damage(page, 'bases', 'Hurt (copy)', { past: 0, block: { name: 7 } })
  await page.reload()
  await expect(notice(page)).toContainText(/damaged/)
  await button(page, 'My blocks').click()
  await inDialog(page, 'Open Hurt (copy)').and(page.locator('[aria-current=false]')).click()
  await expect(page.getByRole('dialog').locator('.blocks-notice')).toHaveText(
    'Hurt (copy) is damaged and can’t be read. Start a block from one of its versions, or archive it.',
  )
  await inDialog(page, 'Open Sound').click()
  await expect(nameField(page)).toHaveValue('Sound')
  await nameField(page).fill('Sound and changed')
  await kept(page)
})

test('a database that is cleared under the page starts again with the block on the board', async ({ page }) => {
  await openApp(page)
  await nameField(page).fill('Still here')
  await kept(page)
  await page.evaluate(
    () =>
      new Promise((done, failed) => {
        const request = indexedDB.deleteDatabase('nestwright')
        request.onsuccess = done
        request.onerror = failed
      }),
  )
  await expect(notice(page)).toHaveText('Still here is open.')
  await nameField(page).fill('Here and changed')
  await kept(page)
  await page.reload()
  await expect(nameField(page)).toHaveValue('Here and changed')
})

test('a database of a later Nestwright is left as it is, and said to be one', async ({ page }) => {
  await page.goto('/manifest.webmanifest')
  await page.evaluate(
    () =>
      new Promise<void>((done, failed) => {
        const request = indexedDB.open('nestwright', 99)
        request.onsuccess = () => {
          request.result.close()
          done()
        }
        request.onerror = failed
      }),
  )
  await page.goto('/')
  await expect(page.locator('.save-status')).toContainText('Your blocks were saved by a newer version of Nestwright. Reload this page to see them')
  await nameField(page).fill('Meanwhile')
  await expect(nameField(page)).toHaveValue('Meanwhile')
})

test('what is undone under a drag is no longer in the hand', async ({ page }) => {
  await openApp(page)
  await button(page, 'My blocks').click()
  await inDialog(page, 'Empty grid').click()
  await button(page, 'Square').click()
  const at = async (x: number, y: number) => Object.values(await pixels(page, [x, y])) as [number, number]
  await page.mouse.click(...(await at(0.5, 0.5)))
  await expect(notice(page)).toHaveText('Placed.')
  await page.keyboard.press('Escape')
  await page.mouse.move(...(await at(0.5, 0.5)))
  await page.mouse.down()
  await page.mouse.move(...(await at(2.5, 2.5)), { steps: 4 })
  await page.keyboard.press('Control+z')
  await page.mouse.move(...(await at(1.5, 2.5)), { steps: 2 })
  await page.mouse.up()
  await expect(notice(page)).toHaveText(/^Undone/)
  expect((await boardBlock(page)).units).toEqual([])
})

test('where the page cannot be drawn, a sentence says so and the work goes on', async ({ page, errors }) => {
  await openApp(page)
  await nameField(page).fill('Undrawn')
  await kept(page)
  await button(page, 'Repeated blocks').click()
  await page.evaluate(() => {
    const own = window.matchMedia
    window.matchMedia = (query) => {
      if (document.querySelector('[role=alert]') === null) throw new Error('drawing fails for once')
      return own.call(window, query)
    }
  })
  await button(page, 'Fabric').click()
  await expect(page.getByRole('alert')).toContainText('Something went wrong while drawing this block.')
  await button(page, 'Start with an empty grid').click()
  await expect(board(page)).toBeVisible()
  await button(page, 'My blocks').click()
  await expect(inDialog(page, 'Open Undrawn')).toBeVisible()
  expect(errors.every((error) => error.includes('drawing fails for once') || error.includes('error boundary'))).toBe(true)
  errors.length = 0
})

// A hand that does anything anywhere.

const STRETCHES = 3
const STEPS = 40

for (const seed of [7]) {
  test(`whatever ${STRETCHES * STEPS} things are done, the block is kept as it lies, and comes back (seed ${seed})`, async ({ page }) => {
    const random = randomFrom(seed)
    await openApp(page)
    await page
      .getByRole('button', { name: /^Edit / })
      .first()
      .click()
    for (let stretch = 0; stretch < STRETCHES; stretch += 1) {
      const done: string[] = []
      for (let step = 0; step < STEPS; step += 1) done.push(await anything(page, random))
      await letGo(page)
      await kept(page)
      const here = await boardBlock(page)
      expect(await page.locator('.missing').count(), done.join('; ')).toBe(0)
      const ahead = await pressAll(page, 'Redo')
      const last = await boardBlock(page)
      await pressAll(page, 'Undo')
      await pressAll(page, 'Redo')
      expect(await boardBlock(page), done.join('; ')).toEqual(last)
      await pressAll(page, 'Undo', ahead)
      expect(await boardBlock(page), done.join('; ')).toEqual(here)
      await kept(page)
      await page.reload()
      await expect(board(page)).toBeVisible()
      expect(await boardBlock(page), done.join('; ')).toEqual(here)
    }
    await opensAgain(page)
  })
}

type Random = () => number

/** Small and the same everywhere: mulberry32, which is in the public domain. */
function randomFrom(seed: number): Random {
  let state = seed
  return () => {
    state = (state + 0x6d2b79f5) | 0
    let mixed = Math.imul(state ^ (state >>> 15), 1 | state)
    mixed = (mixed + Math.imul(mixed ^ (mixed >>> 7), 61 | mixed)) ^ mixed
    return ((mixed ^ (mixed >>> 14)) >>> 0) / 4_294_967_296
  }
}

const KEYS =
  'ArrowLeft ArrowRight ArrowUp ArrowDown Enter c Alt+ArrowLeft Alt+ArrowDown Alt+Shift+ArrowRight h t Shift+T m x b Shift+B d Delete p Shift+P r f 1 2 3 4 Space Backspace + - 0 Escape Control+z Control+Shift+z Control+a Control+c Control+x Control+v'.split(
    ' ',
  )
const TYPED = ['', '3', '2 1/2', '1/3', '0', '-1', '6', 'abc', '1e-999', '2,5', '½', '10', 'Another name']
const MIDWAY = ['Control+z', 'Control+Shift+z', 'Escape', 'Delete', 'b', 't', 'd', '4', '2']

async function anything(page: Page, random: Random): Promise<string> {
  const pick = <T>(list: readonly T[]): T => list[Math.floor(random() * list.length)] as T
  const spot = async (): Promise<[number, number] | null> => {
    const box = await board(page).or(page.locator('.board')).first().boundingBox()
    return box === null ? null : [box.x + random() * box.width, box.y + random() * box.height]
  }
  const sort = pick(['key', 'key', 'click', 'drag', 'drag', 'lay', 'press', 'press', 'choose', 'type', 'undo', 'wheel'])
  const [from, to] = [await spot(), await spot()]
  if (sort === 'key') {
    const keys = Array.from({ length: 4 }, () => pick(KEYS))
    if (await board(page).isVisible()) await board(page).focus()
    for (const key of keys) await page.keyboard.press(key)
    return keys.join(' ')
  }
  if (sort === 'press' || sort === 'choose') {
    const [part, place, option] = [
      pick(['header button', '.view-picker button', '[role=tab]', '.bench button', '.side button', 'main button', 'summary']),
      random(),
      random(),
    ]
    return sort === 'press' ? pressSome(page, part, place) : chooseSome(page, place, option)
  }
  if (sort === 'type') {
    const fields = page.locator('main input:not([type]):visible, header label.name input')
    const text = pick(TYPED)
    const field = fields.nth(Math.floor(random() * (await fields.count())))
    await field.fill(text)
    await field.blur()
    return `type “${text}”`
  }
  if (sort === 'undo') {
    for (let step = 0; step < 3; step += 1) await pressAll(page, pick(['Undo', 'Undo', 'Redo']), 1)
    return 'undo'
  }
  if (from === null || to === null) return 'nothing'
  if (sort === 'wheel') {
    await page.mouse.move(...from)
    await page.mouse.wheel(0, random() * 1600 - 800)
    return 'wheel'
  }
  const tray = page.locator('.side.left button:visible')
  const begin = sort === 'lay' ? await middleOf(tray.nth(Math.floor(random() * (await tray.count())))) : from
  await page.mouse.move(...begin)
  await page.mouse.down()
  const midway = random() < 0.4 ? pick(MIDWAY) : null
  if (sort !== 'click') {
    await page.mouse.move((begin[0] + to[0]) / 2, (begin[1] + to[1]) / 2, { steps: 2 })
    if (midway !== null) await page.keyboard.press(midway)
    await page.mouse.move(...to, { steps: 2 })
  }
  await page.mouse.up()
  return `${sort} ${begin.map(Math.round)} ${to.map(Math.round)} ${midway ?? ''}`
}

async function middleOf(control: ReturnType<Page['locator']>): Promise<[number, number]> {
  const box = await control.boundingBox()
  return box === null ? [0, 0] : [box.x + box.width / 2, box.y + box.height / 2]
}

/** What would leave the page, or ask for a file, is left alone. */
const LEFT_ALONE = ['Open file', 'Save file', 'Reload', 'Reload the page', 'Print']

const pressSome = (page: Page, part: string, place: number): Promise<string> =>
  page.evaluate(
    ([selector, at, not]) => {
      const all = [...document.querySelectorAll<HTMLButtonElement>(selector)]
      const able = all.filter(
        (one) =>
          one.offsetParent !== null &&
          !one.matches(':disabled, [aria-disabled="true"]') &&
          !/photograph|CSV|PDF|SVG|PNG|text|Save/.test(one.textContent) &&
          !not.includes(one.textContent.trim()),
      )
      const one = able[Math.floor(at * able.length)]
      one?.click()
      return `press ${one?.textContent.slice(0, 40)}`
    },
    [part, place, LEFT_ALONE] as const,
  )

const chooseSome = (page: Page, place: number, option: number): Promise<string> =>
  page.evaluate(
    ([at, which]) => {
      const able = [...document.querySelectorAll<HTMLSelectElement>('main select')].filter((one) => one.offsetParent !== null && !one.disabled)
      const one = able[Math.floor(at * able.length)]
      if (one === undefined) return 'choose nothing'
      one.selectedIndex = Math.floor(which * one.options.length)
      one.dispatchEvent(new Event('change', { bubbles: true }))
      return `choose ${one.value}`
    },
    [place, option] as const,
  )

/** Nothing held, no dialog open, the block itself in sight. */
async function letGo(page: Page): Promise<void> {
  await page.mouse.up()
  for (let turn = 0; turn < 2; turn += 1) await page.keyboard.press('Escape')
}

/** Presses Undo or Do again as often as it can be pressed, or so often; how often it was. */
const pressAll = (page: Page, name: string, most = Number.POSITIVE_INFINITY): Promise<number> =>
  page.evaluate(
    async ([wanted, limit]) => {
      const control = [...document.querySelectorAll<HTMLButtonElement>('header button')].find((one) => one.textContent === wanted)
      let pressed = 0
      for (; control?.getAttribute('aria-disabled') === 'false' && pressed < limit; pressed += 1) {
        control.click()
        await new Promise((resolve) => setTimeout(resolve, 0))
      }
      return pressed
    },
    [name, most] as const,
  )

type Filed = typeof CLASHING

/** The block on the board, by what is saved of it. */
async function boardBlock(page: Page): Promise<Filed> {
  const download = page.waitForEvent('download')
  await page.evaluate(() =>
    [...document.querySelectorAll<HTMLButtonElement>('header button')].find((one) => one.textContent === 'Save file')?.click(),
  )
  return JSON.parse(readFileSync(await (await download).path(), 'utf8')) as Filed
}

/** What is saved of the block on the board can be read back. */
async function opensAgain(page: Page): Promise<void> {
  await giveFiles(page, [{ name: 'again.json', text: JSON.stringify({ ...(await boardBlock(page)), name: 'Read back' }) }])
  await expect(notice(page)).toHaveText('Read back is open.')
}

async function pasteText(page: Page, text: string): Promise<void> {
  await board(page).focus()
  await board(page).evaluate((element, pasted) => {
    const clipboardData = new DataTransfer()
    clipboardData.setData('text/plain', pasted)
    element.dispatchEvent(new ClipboardEvent('paste', { clipboardData, bubbles: true, cancelable: true }))
  }, text)
}

/** Puts something else in place of what one store holds of a block. */
async function damage(page: Page, store: 'edits' | 'bases', name: string, value: unknown): Promise<void> {
  await page.evaluate(
    async ([where, whose, put]) => {
      const ask = <T>(request: IDBRequest<T>): Promise<T> =>
        new Promise((done, failed) => {
          request.onsuccess = () => done(request.result)
          request.onerror = () => failed(request.error)
        })
      const base = await ask(indexedDB.open('nestwright'))
      // The last edit may still be on its way to the database.
      let id: string | undefined
      while (id === undefined) {
        const cards = await ask<{ id: string; name: string }[]>(base.transaction('cards').objectStore('cards').getAll())
        id = cards.find((card) => card.name === whose)?.id
      }
      await ask(
        base
          .transaction(where, 'readwrite')
          .objectStore(where)
          .put(put, where === 'edits' ? [id, 0] : id),
      )
      base.close()
    },
    [store, name, value] as const,
  )
}
