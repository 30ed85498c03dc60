/** The maker's own blocks: begun, found, renamed, copied, put aside and had back; versions, files and links; two tabs; no room and no database; no network. */
import { appendFileSync, cpSync, mkdtempSync, rmSync } from 'node:fs'
import type { AddressInfo } from 'node:net'
import { tmpdir } from 'node:os'
import { join } from 'node:path'
import { preview } from 'vite'
import { finger, type Hand, keyboard, mouse } from './hands.ts'
import {
  barriers,
  board,
  button,
  expect,
  kept,
  type Locator,
  notice,
  openApp,
  openFile,
  type Page,
  saved,
  test,
  BOTH_ENGINES,
  bothIf,
  openMenu,
} from './maker.ts'

const dialog = (page: Page): Locator => page.getByRole('dialog', { name: 'My blocks' })
const inDialog = (page: Page, name: string | RegExp): Locator => dialog(page).getByRole('button', { name, exact: true })
const told = (page: Page): Locator => dialog(page).locator('.blocks-notice')
const nameField = (page: Page): Locator => page.getByRole('textbox', { name: 'Block', exact: true })
const faces = (page: Page): Locator =>
  dialog(page)
    .getByRole('button', { name: /^Open / })
    .and(page.locator('.face'))
const banner = (page: Page): Locator => page.locator('.save-status')

async function openBlocks(page: Page): Promise<void> {
  await openMenu(page)
  await button(page, 'My blocks').click()
  await expect(dialog(page)).toBeVisible()
}

async function begin(page: Page, starter: string, name: string): Promise<void> {
  await openBlocks(page)
  await inDialog(page, starter).click()
  await expect(dialog(page)).toBeHidden()
  await nameField(page).fill(name)
  await kept(page)
}

const textSaved = async (page: Page, press: () => Promise<void>): Promise<string> => (await saved(page, press)).bytes.toString()

const HANDS: readonly (readonly [string, (page: Page) => Hand, { readonly width: number; readonly height: number }])[] = [
  ['with a mouse', mouse, { width: 1440, height: 900 }],
  ['with a finger', finger, { width: 360, height: 740 }],
  ['with the keyboard alone', keyboard, { width: 820, height: 1180 }],
]

for (const [how, handOf, viewport] of HANDS) {
  // Keys are tried in the second engine by the morning's own block.
  test.describe(how, bothIf(handOf === mouse), () => {
    test.use({ viewport, hasTouch: handOf === finger })

    test('a second block is begun, the first is found and opened with its undo, copied, put aside and had back', async ({ page }) => {
      const hand = handOf(page)
      await openApp(page)
      await nameField(page).fill('Hall star')
      await openMenu(page, hand.press)
      await hand.press(button(page, 'My blocks'))
      await hand.press(inDialog(page, 'Lantern'))
      await expect(nameField(page)).toHaveValue('Harbour lantern (example)')
      await expect(button(page, 'Undo')).toBeDisabled()

      await openMenu(page, hand.press)
      await hand.press(button(page, 'My blocks'))
      await expect(faces(page)).toHaveCount(2)
      await dialog(page).getByRole('searchbox').fill('glow')
      await expect(faces(page)).toHaveText([/Harbour lantern/])
      await dialog(page).getByRole('searchbox').fill('hall STAR')
      await expect(faces(page)).toHaveText([/Hall star/])
      await dialog(page).getByRole('searchbox').fill('zebra')
      await expect(dialog(page)).toContainText('No block or fabric is called “zebra”.')
      await dialog(page).getByRole('searchbox').fill('')
      await hand.press(inDialog(page, 'Open Hall star'))
      await expect(nameField(page)).toHaveValue('Hall star')
      await hand.press(button(page, 'Undo'))
      await expect(nameField(page)).toHaveValue('Evening star (example)')
      await hand.press(button(page, 'Redo'))

      await openMenu(page, hand.press)
      await hand.press(button(page, 'My blocks'))
      await hand.press(inDialog(page, 'More about Hall star'))
      await hand.press(inDialog(page, 'Make a copy'))
      await expect(told(page)).toContainText('Hall star (copy) is in My blocks.')
      await hand.press(inDialog(page, 'Archive'))
      await expect(told(page)).toContainText('Hall star is in the archive.')
      await expect(inDialog(page, 'Archive (1)')).toBeVisible()
      await hand.press(inDialog(page, 'Restore'))
      await expect(inDialog(page, 'Archive (0)')).toBeVisible()
      await expect(inDialog(page, 'Open Hall star')).toBeVisible()
      await hand.press(inDialog(page, 'Close'))
      await expect(dialog(page)).toBeHidden()
    })
  })
}

test('pictures are walked over with the arrow keys, and Escape goes back', async ({ page }) => {
  await openApp(page)
  await begin(page, 'Star', 'One')
  await begin(page, 'Lantern', 'Two')
  await begin(page, 'Empty grid', 'Three')
  await openBlocks(page)
  await expect(inDialog(page, 'Open Three')).toBeFocused()
  await page.keyboard.press('ArrowRight')
  await expect(inDialog(page, 'Open Two')).toBeFocused()
  await page.keyboard.press('ArrowRight')
  await page.keyboard.press('Enter')
  await expect(nameField(page)).toHaveValue('One')
  // Again and again it begins at the block that is on the board.
  for (const _ of [1, 2]) {
    await openBlocks(page)
    await expect(inDialog(page, 'Open One')).toBeFocused()
    await page.keyboard.press('Escape')
    await expect(dialog(page)).toBeHidden()
    await expect(button(page, 'My blocks')).toBeFocused()
  }
})

test('a block is renamed on the shelf, and what was there before can be had back', async ({ page }) => {
  await openApp(page)
  await nameField(page).fill('One')
  await begin(page, 'Lantern', 'Two')
  await openBlocks(page)
  await inDialog(page, 'More about One').click()
  await dialog(page).getByRole('textbox', { name: 'Name' }).fill('First of all')
  await page.keyboard.press('Enter')
  await inDialog(page, 'Open First of all').click()
  await expect(nameField(page)).toHaveValue('First of all')
  await button(page, 'Undo').click()
  await expect(nameField(page)).toHaveValue('One')
})

test('what is put aside is taken away for good only after a second word', async ({ page }) => {
  await openApp(page)
  await nameField(page).fill('One')
  await begin(page, 'Lantern', 'Two')
  await openBlocks(page)
  // The block on the board too can be put aside: another one takes its place.
  await inDialog(page, 'More about Two').click()
  await inDialog(page, 'Archive').click()
  await expect(nameField(page)).toHaveValue('One')
  await inDialog(page, 'Archive (1)').click()
  await inDialog(page, 'Delete all').click()
  await inDialog(page, 'Cancel').click()
  await inDialog(page, 'Delete all').click()
  await inDialog(page, 'Yes, delete it').click()
  await expect(dialog(page)).toContainText('The archive is empty.')
  await page.reload()
  await openBlocks(page)
  await expect(faces(page)).toHaveText([/One/])
})

test('one goes back to a version, and from there forward again', async ({ page }) => {
  await openApp(page)
  await nameField(page).fill('As I like it')
  await openBlocks(page)
  await inDialog(page, 'More about As I like it').click()
  await dialog(page).getByRole('textbox', { name: 'Save this version as' }).fill('the quiet one')
  await page.keyboard.press('Enter')
  await expect(told(page)).toContainText('Version saved as “the quiet one”.')
  await inDialog(page, 'Close').click()
  await nameField(page).fill('Another')
  await openBlocks(page)
  await inDialog(page, 'More about Another').click()
  await inDialog(page, /^Go back to the quiet one/).click()
  await expect(nameField(page)).toHaveValue('As I like it')
  await button(page, 'Undo').click()
  await expect(nameField(page)).toHaveValue('Another')
  await openBlocks(page)
  await inDialog(page, 'More about Another').click()
  await expect(dialog(page).locator('.versions')).toContainText('Saved before going back')
  await inDialog(page, /^Start a new block from the quiet one/).click()
  await expect(nameField(page)).toHaveValue('As I like it (copy)')
  await openBlocks(page)
  await inDialog(page, 'More about Another').click()
  await inDialog(page, /^Delete the quiet one/).click()
  await inDialog(page, 'Yes, delete it').click()
  await expect(dialog(page).locator('.versions')).not.toContainText('the quiet one')
})

test('the example stays among the blocks when another is started, and an empty grid that nobody used does not', async ({ page }) => {
  await openApp(page)
  await openBlocks(page)
  await inDialog(page, 'Empty grid').click()
  await expect(nameField(page)).toHaveValue('New block')
  await openBlocks(page)
  await expect(faces(page)).toHaveCount(2)
  await inDialog(page, 'Open Evening star (example)').click()
  await expect(nameField(page)).toHaveValue('Evening star (example)')
  await openBlocks(page)
  await expect(faces(page)).toHaveCount(1)
})

test.describe('in a browser set to American English', () => {
  test.use({ locale: 'en-US' })

  test('labels are spelt so, and the maker’s own names are not', async ({ page }) => {
    await openApp(page)
    await page.getByRole('tab', { name: 'Color', exact: true }).click()
    await nameField(page).fill('Grey colours')
    await expect(page.locator('html')).toHaveAttribute('lang', 'en-US')
    await button(page, 'My blocks').click()
    await expect(inDialog(page, 'Open Grey colours')).toBeVisible()
  })
})

test('all blocks go into one file and come back beside those that are there', BOTH_ENGINES, async ({ page }) => {
  await openApp(page)
  await nameField(page).fill('One')
  await begin(page, 'Lantern', 'Two')
  await openBlocks(page)
  const file = await textSaved(page, () => inDialog(page, 'Save all in one file').click())
  expect(JSON.parse(file)).toMatchObject({ format: 'nestwright.blocks', version: 1 })
  await openFile(page, () => inDialog(page, 'Open file').click(), 'all.json', file)
  await expect(told(page)).toContainText('0 blocks added. 2 were already here.')
  await openFile(page, () => inDialog(page, 'Open file').click(), 'all.json', file.replace('"One"', '"One again"'))
  await expect(told(page)).toContainText('One block added. One was already here.')
  await expect(faces(page)).toHaveCount(3)
  await expect(inDialog(page, 'Open One again (copy)')).toBeVisible()
  await expect(inDialog(page, 'Open One')).toBeVisible()
  await openFile(page, () => inDialog(page, 'Open file').click(), 'bad.json', file.replace('"columns": 4', '"columns": 0'))
  await expect(told(page)).toContainText(
    /^0 blocks added\. One was already here\. One couldn’t be read: blocks\[\d\]\.block\.grid\.columns [^\n]+\.$/,
  )
  await expect(faces(page)).toHaveCount(3)
})

test('a block file is opened beside what was on the board', async ({ page }) => {
  await openApp(page)
  await nameField(page).fill('Mine')
  const file = await textSaved(page, () => button(page, 'Save file').click())
  await openFile(page, () => button(page, 'Open file').click(), 'other.json', file.replace('"Mine"', '"From a friend"'))
  await expect(notice(page)).toHaveText('From a friend is open.')
  await openBlocks(page)
  await expect(faces(page)).toHaveCount(2)
})

test.describe('a link', () => {
  test('holds the whole block, and opens as a new one', BOTH_ENGINES, async ({ page, context }) => {
    await openApp(page)
    await nameField(page).fill('For Überall — ½ & more')
    await openBlocks(page)
    await inDialog(page, /^More about For/).click()
    await inDialog(page, 'Copy link').click()
    await expect(told(page)).toContainText('Link copied. It holds the whole block.')
    const link = await page.evaluate(() => navigator.clipboard.readText())
    expect(link).toMatch(/#block=1\.[A-Za-z0-9_-]+$/)
    await page.close()
    const other = await context.newPage()
    await other.goto(link)
    await expect(notice(other)).toHaveText('For Überall — ½ & more was opened from a link and added to your blocks.')
    expect(other.url()).not.toContain('#')
    await kept(other)
    await openBlocks(other)
    await expect(faces(other)).toHaveCount(2)
    await other.reload()
    await openBlocks(other)
    await expect(faces(other)).toHaveCount(2)
  })

  test('that is broken gives one sentence and changes nothing', async ({ page }) => {
    await openApp(page)
    for (const [fragment, sentence] of [
      ['1.abc', /^This link is broken: [^\n]+\.$/],
      ['', /^This link is broken: [^\n]+\.$/],
      ['1.q1YqSy0qzszPU7JSMlSqBQA', /^This link is broken: [^\n]+\.$/],
      ['2.abc', /^This link was made by a newer version of Nestwright\. [^\n]+\.$/],
    ] as const) {
      await page.goto(`/#block=${fragment}`)
      await expect(notice(page)).toHaveText(sentence)
      await page.goto('/')
    }
    await openBlocks(page)
    await expect(faces(page)).toHaveText([/Evening star/])
  })
})

test.describe('two tabs', () => {
  test('the second looks on, and takes the block over when asked', BOTH_ENGINES, async ({ page, context }) => {
    await openApp(page)
    await nameField(page).fill('Ours')
    await kept(page)
    const second = await context.newPage()
    await second.goto('/')
    await expect(banner(second)).toContainText('This block is open in another tab. Here you can only watch it change.')
    await nameField(page).fill('Ours still')
    await expect(nameField(second)).toHaveValue('Ours still')
    await button(second, 'Undo').click()
    await expect(notice(second)).toHaveText('Nothing changed: this block is open in another tab.')
    await expect(nameField(second)).toHaveValue('Ours still')

    await button(second, 'Edit here instead').click()
    await expect(banner(second)).toBeHidden()
    await expect(banner(page)).toContainText('This block is open in another tab')
    await nameField(second).fill('Now here')
    await expect(nameField(page)).toHaveValue('Now here')

    // The tab that has it ends: the other has it from then on.
    await second.close()
    await expect(banner(page)).toBeHidden()
    await nameField(page).fill('Back')
    await kept(page)
    await page.reload()
    await expect(nameField(page)).toHaveValue('Back')
    await expect(banner(page)).toBeHidden()
  })

  test('the second goes on with a copy', async ({ page, context }) => {
    await openApp(page)
    await nameField(page).fill('Ours')
    await kept(page)
    const second = await context.newPage()
    await second.goto('/')
    await button(second, 'Work on a copy').click()
    await expect(nameField(second)).toHaveValue('Ours (copy)')
    await expect(button(second, 'Undo')).toBeEnabled()
    await nameField(second).fill('Mine alone')
    await expect(nameField(page)).toHaveValue('Ours')
    await expect(banner(page)).toBeHidden()
  })

  /** A browser without locks and channels: the turns of the database hold the two apart. */
  test('both edit with nothing to tell them of each other, and both are kept', BOTH_ENGINES, async ({ page, context }) => {
    await context.addInitScript(() => {
      Object.defineProperty(navigator, 'locks', { value: undefined })
      Object.defineProperty(window, 'BroadcastChannel', { value: undefined })
    })
    await openApp(page)
    await nameField(page).fill('Ours')
    await kept(page)
    const second = await context.newPage()
    await openApp(second)
    await nameField(second).fill('Theirs')
    await kept(second)
    await nameField(page).fill('Mine')
    await expect(notice(page)).toHaveText('This copy is called “Mine (this tab)”. The other one stays as it is.')
    await nameField(page).fill('Mine, and more')
    await kept(page)
    await button(page, 'Undo').click()
    await expect(nameField(page)).toHaveValue('Mine (this tab)')
    await button(page, 'Undo').click()
    await expect(nameField(page)).toHaveValue('Mine')
    await openBlocks(page)
    await expect(inDialog(page, 'Open Theirs')).toBeVisible()
    await expect(faces(page)).toHaveCount(2)
  })
})

const OF_THAT_DAY = {
  format: 'nestwright.block',
  version: 1,
  name: 'From the old days',
  measure: { unit: 'in' },
  grid: { columns: 2, rows: 1, cell: 3 },
  fabrics: [{ id: 'moss', name: 'Moss', colour: '#5b7350' }],
  units: [{ id: 'one', kind: 'square', at: [0, 0], size: [2, 1], fabrics: { patch: 'moss' } }],
}

test('a block kept by the first version of the app comes over, as soon as its last tab is closed', BOTH_ENGINES, async ({ page, context }) => {
  const old = await context.newPage()
  await old.goto('/icons/')
  await old.evaluate(
    (block) =>
      new Promise<void>((resolve) => {
        const opening = indexedDB.open('nestwright', 1)
        opening.onupgradeneeded = () => {
          opening.result.createObjectStore('now').put({ block, past: 1 }, 'present')
          const undo = [{ op: 'replace', path: ['name'], value: 'Before that' }]
          const redo = [{ op: 'replace', path: ['name'], value: block.name }]
          opening.result.createObjectStore('steps').put({ name: 'name the block', undo, redo }, 0)
        }
        opening.onsuccess = () => resolve()
      }),
    OF_THAT_DAY,
  )
  await page.goto('/')
  await expect(banner(page)).toContainText('An older version of Nestwright is open in another tab. Close that tab to get to your blocks.')
  await nameField(page).fill('Meanwhile')
  await old.close()
  await expect(banner(page)).toBeHidden()
  // What was done meanwhile is a block of its own.
  await expect(nameField(page)).toHaveValue('Meanwhile')
  await openBlocks(page)
  await inDialog(page, 'Open From the old days').click()
  await button(page, 'Undo').click()
  await expect(nameField(page)).toHaveValue('Before that')
})

test('with no database the app works, says so, and offers a file', BOTH_ENGINES, async ({ page }) => {
  await page.addInitScript(() => Object.defineProperty(window, 'indexedDB', { value: undefined }))
  await page.goto('/')
  await expect(banner(page)).toContainText('This browser can’t save your blocks (is this a private window?)')
  await nameField(page).fill('Kept by hand')
  expect(await textSaved(page, () => button(page, 'Save as a file').click())).toContain('Kept by hand')
  await openBlocks(page)
  await inDialog(page, 'Lantern').click()
  await expect(nameField(page)).toHaveValue('Harbour lantern (example)')
  await button(page, 'Undo').click()
  await expect(nameField(page)).toHaveValue('Kept by hand')
})

// Only Chromium's protocol can make the disk small.
test('a full disk is announced, a file offered, and all is kept as soon as there is room', async ({ page, context, baseURL }) => {
  const session = await context.newCDPSession(page)
  await session.send('Storage.overrideQuotaForOrigin', { origin: baseURL as string, quotaSize: 1000 })
  await page.goto('/')
  await nameField(page).fill('No room for this')
  await expect(banner(page)).toContainText('Your disk is full, so your last changes aren’t saved')
  await expect(page.getByText('Not saved in this browser')).toBeVisible()
  await nameField(page).fill('Nor for this')
  expect(await textSaved(page, () => button(page, 'Save as a file').click())).toContain('Nor for this')
  await openBlocks(page)
  await inDialog(page, 'Lantern').click()
  await expect(told(page)).toContainText('The last changes aren’t saved yet. Save a file first.')
  await inDialog(page, 'Close').click()
  await session.send('Storage.overrideQuotaForOrigin', { origin: baseURL as string })
  await kept(page)
  await expect(banner(page)).toBeHidden()
  await page.reload()
  await expect(nameField(page)).toHaveValue('Nor for this')
  await button(page, 'Undo').click()
  await expect(nameField(page)).toHaveValue('Evening star (example)')
})

// Only Chromium's protocol can clear a database under an open page.
test('what lies on the board is saved again when the browser has cleared everything under it', async ({ page, context, baseURL }) => {
  await openApp(page)
  await nameField(page).fill('Still here')
  await kept(page)
  const session = await context.newCDPSession(page)
  await session.send('Storage.clearDataForOrigin', { origin: baseURL as string, storageTypes: 'indexeddb' })
  await nameField(page).fill('Still here, and more')
  await kept(page)
  await page.reload()
  await expect(nameField(page)).toHaveValue('Still here, and more')
  await button(page, 'Undo').click()
  await expect(nameField(page)).toHaveValue('Evening star (example)')
})

// Firefox may drop a write that begins while its tab closes.
test('an edit made as the tab is closed is there when it is opened again', async ({ page, context }) => {
  await openApp(page)
  await page.evaluate(() => {
    const field = document.querySelector('header .name input') as HTMLInputElement
    Object.getOwnPropertyDescriptor(HTMLInputElement.prototype, 'value')?.set?.call(field, 'The last moment')
    window.addEventListener('pagehide', () => field.dispatchEvent(new Event('input', { bubbles: true })))
  })
  // The browser does not wait for a page that it asks before closing it.
  const closed = page.waitForEvent('close')
  await page.close({ runBeforeUnload: true })
  await closed
  const again = await context.newPage()
  await again.goto('/')
  await expect(nameField(again)).toHaveValue('The last moment')
})

test('persistence is asked for at the first edit, not before', async ({ page }) => {
  await page.addInitScript(() => {
    const window_ = window as unknown as { asked: number }
    window_.asked = 0
    // An empty page has no storage.
    if (navigator.storage === undefined) return
    navigator.storage.persist = async () => {
      window_.asked++
      return true
    }
  })
  const asked = (): Promise<number> => page.evaluate(() => (window as unknown as { asked: number }).asked)
  await openApp(page)
  expect(await asked()).toBe(0)
  await nameField(page).fill('One')
  await kept(page)
  await nameField(page).fill('Two')
  expect(await asked()).toBe(1)
})

test.describe('without a network', () => {
  test.use({ serviceWorkers: 'allow' })

  const installed = (page: Page): Promise<unknown> => page.evaluate(() => navigator.serviceWorker.ready.then(() => true))

  test('the app opens after the first visit, with every part of it', BOTH_ENGINES, async ({ page, context }) => {
    await openApp(page)
    await nameField(page).fill('On the train')
    await kept(page)
    // The last part that the page loads by itself: a request that the next visit cuts short is an error on Firefox's console.
    await expect(button(page, 'Press seams on the board')).toBeVisible()
    await installed(page)
    await context.setOffline(true)
    await page.reload()
    await expect(nameField(page)).toHaveValue('On the train')
    await openBlocks(page)
    await expect(faces(page)).toHaveText([/On the train/])
    await inDialog(page, 'Close').click()
    await page.getByRole('tab', { name: 'Setting', exact: true }).click()
    await expect(page.getByTestId('setting-sum')).toBeVisible()
    const other = await context.newPage()
    await other.goto('/')
    await expect(nameField(other)).toHaveValue('On the train')
  })

  // Only Chromium's protocol tells what it thinks of installing.
  test('the app can be installed', async ({ page, context }) => {
    await openApp(page)
    await installed(page)
    const session = await context.newCDPSession(page)
    const { errors, data } = await session.send('Page.getAppManifest')
    expect(errors).toEqual([])
    expect(JSON.parse(data as string)).toMatchObject({ name: 'Nestwright', display: 'standalone' })
    const { installabilityErrors } = await session.send('Page.getInstallabilityErrors')
    expect(installabilityErrors.filter(({ errorId }) => errorId !== 'in-incognito')).toEqual([])
  })

  test('a newer version waits until it is asked for', async ({ page }) => {
    // Served from a copy, as the worker is another one in the middle of it.
    const folder = mkdtempSync(join(tmpdir(), 'nestwright-newer-'))
    cpSync('dist/web', folder, { recursive: true })
    const server = await preview({ configFile: false, logLevel: 'silent', build: { outDir: folder }, preview: { host: '127.0.0.1', port: 0 } })
    try {
      const { port } = server.httpServer.address() as AddressInfo
      await page.goto(`http://127.0.0.1:${port}/`)
      await expect(board(page)).toBeVisible()
      await kept(page)
      await installed(page)
      await page.reload()
      await nameField(page).fill('Not in the middle')
      await kept(page)
      // The same app once more, as another version.
      appendFileSync(join(folder, 'offline.js'), '\n// newer')
      await page.evaluate(() => navigator.serviceWorker.getRegistration().then((registration) => registration?.update()))
      await expect(banner(page)).toContainText('A new version of Nestwright is ready.')
      await expect(nameField(page)).toHaveValue('Not in the middle')
      const loaded = page.waitForEvent('load')
      await button(page, 'Update now').click()
      await loaded
      await expect(nameField(page)).toHaveValue('Not in the middle')
      await expect(banner(page)).toBeHidden()
    } finally {
      await server.close()
      rmSync(folder, { recursive: true, force: true })
    }
  })
})

for (const colorScheme of ['light', 'dark'] as const) {
  test.describe(`${colorScheme}, on a phone`, () => {
    test.use({ viewport: { width: 360, height: 740 }, colorScheme, hasTouch: true })

    test('the blocks have no known barrier, and nothing is wider than the screen', async ({ page }) => {
      await openApp(page)
      await begin(
        page,
        'Lantern',
        'A name that is much longer than any picture of a block is wide, and has noverylongwordsthatcannotbebrokenanywhere',
      )
      await openBlocks(page)
      await expect(page.locator('.blockpicture canvas').last()).toBeVisible()
      expect(await barriers(page, '.blocks', colorScheme === 'dark' ? 'contrast' : 'everything')).toEqual([])
      await inDialog(page, /^More about A name/).click()
      expect(await barriers(page, '.blocks', colorScheme === 'dark' ? 'contrast' : 'everything')).toEqual([])
      expect(await page.evaluate(() => document.querySelector('.blocks')?.scrollWidth)).toBeLessThanOrEqual(360)
    })
  })
}
