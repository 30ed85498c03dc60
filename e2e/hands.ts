/**
 * Three ways to do the same task: with a mouse, with a finger, with the keyboard alone.
 *
 * Each hand can press a control, choose a patch on the board, and lay a unit from the tray on a cell. None uses what the others have.
 */
import { board, button, type Cell, expect, type Locator, type Page, pixels, pixelsNow } from './maker.ts'

export interface Hand {
  readonly name: string
  readonly touch: boolean
  press(control: Locator): Promise<void>
  /** Opens one of the sheets beside the board. */
  sheet(name: string): Promise<void>
  /** Chooses the unit whose patch lies at a point of the board. */
  choose(at: Cell): Promise<void>
  /** Lays a unit with its top left on a cell. */
  place(unit: string, at: Cell, size: Cell): Promise<void>
  /** Chooses the patch at a point, which is called `patch`, and gives it a fabric. */
  recolour(at: Cell, patch: string, fabric: string): Promise<void>
}

export function mouse(page: Page): Hand {
  const choose = async (at: Cell): Promise<void> => {
    const { x, y } = await pixels(page, at)
    await page.mouse.click(x, y)
  }
  return {
    name: 'mouse',
    touch: false,
    press: (control) => control.click(),
    sheet: (name) => tab(page, name).click(),
    choose,
    place: async (unit, at, size) => {
      const { from, to } = await fromTray(page, unit, middleOf(at, size))
      await page.mouse.move(from.x, from.y)
      await page.mouse.down()
      await page.mouse.move((from.x + to.x) / 2, (from.y + to.y) / 2, { steps: 4 })
      await page.mouse.move(to.x, to.y, { steps: 4 })
      await page.mouse.up()
    },
    recolour: async (at, _, fabric) => {
      await choose(at)
      await button(page, `Take ${fabric}`).click()
    },
  }
}

export function finger(page: Page): Hand {
  const choose = async (at: Cell): Promise<void> => {
    const { x, y } = await pixels(page, at)
    await page.touchscreen.tap(x, y)
  }
  return {
    name: 'finger',
    touch: true,
    press: (control) => control.tap(),
    sheet: (name) => tab(page, name).tap(),
    choose,
    place: async (unit, at, size) => {
      const { from, to } = await fromTray(page, unit, middleOf(at, size))
      const session = await page.context().newCDPSession(page)
      const touch = (type: 'touchStart' | 'touchMove' | 'touchEnd', points: { x: number; y: number }[]) =>
        session.send('Input.dispatchTouchEvent', { type, touchPoints: points })
      await touch('touchStart', [from])
      for (const part of [0.25, 0.5, 0.75, 1]) await touch('touchMove', [{ x: from.x + (to.x - from.x) * part, y: from.y + (to.y - from.y) * part }])
      // A finger rests before it lets go; a flick would make the browser take the next tap for a stop.
      await page.waitForTimeout(150)
      await touch('touchMove', [to])
      await touch('touchEnd', [])
      await session.detach()
    },
    recolour: async (at, _, fabric) => {
      await choose(at)
      await button(page, `Take ${fabric}`).tap()
    },
  }
}

export function keyboard(page: Page): Hand {
  const press = async (control: Locator): Promise<void> => {
    await tabTo(page, control)
    await page.keyboard.press('Enter')
  }
  /** The cursor begins anywhere; the top left corner stops it. */
  const walk = async ([x, y]: Cell): Promise<void> => {
    await tabTo(page, board(page))
    for (let step = 0; step < 8; step += 1) {
      await page.keyboard.press('ArrowLeft')
      await page.keyboard.press('ArrowUp')
    }
    for (let step = 0; step < Math.floor(x); step += 1) await page.keyboard.press('ArrowRight')
    for (let step = 0; step < Math.floor(y); step += 1) await page.keyboard.press('ArrowDown')
  }
  const choose = async (at: Cell): Promise<void> => {
    await walk(at)
    await page.keyboard.press('Enter')
  }
  return {
    name: 'keyboard',
    touch: false,
    press,
    sheet: async (name) => {
      await tabTo(page, page.getByRole('tab', { selected: true }))
      for (let step = 0; step < 12 && (await tab(page, name).getAttribute('aria-selected')) !== 'true'; step += 1)
        await page.keyboard.press('ArrowDown')
    },
    choose,
    place: async (unit, at) => {
      await press(button(page, unit))
      await walk(at)
      await page.keyboard.press('p')
    },
    recolour: async (at, patch, fabric) => {
      await choose(at)
      const list = page.getByRole('combobox', { name: patch, exact: true })
      await tabTo(page, list)
      await page.keyboard.type(fabric)
    },
  }
}

/** At the top of the page both the tray and the board are in sight. */
async function fromTray(page: Page, unit: string, at: Cell): Promise<{ from: { x: number; y: number }; to: { x: number; y: number } }> {
  await page.evaluate(() => window.scrollTo(0, 0))
  return { from: await centre(button(page, unit)), to: await pixelsNow(page, at) }
}

const tab = (page: Page, name: string): Locator => page.getByRole('tab', { name, exact: true })

const middleOf = ([x, y]: Cell, [width, height]: Cell): Cell => [x + width / 2, y + height / 2]

async function centre(control: Locator): Promise<{ x: number; y: number }> {
  const box = await control.boundingBox()
  if (box === null) throw new Error('the control is not on the screen')
  return { x: box.x + box.width / 2, y: box.y + box.height / 2 }
}

/** More stops than any page of ours has. */
const STOPS = 200

/** By the shorter way: Tab past the page's end leads into the browser's own buttons, from where Firefox's driver does not come back whole. */
async function tabTo(page: Page, control: Locator): Promise<void> {
  await expect(control).toBeVisible()
  for (let stop = 0; stop < STOPS; stop += 1) {
    const way = await control.evaluate((element) => {
      const at = document.activeElement ?? document.body
      if (at === element) return null
      return at.compareDocumentPosition(element) & Node.DOCUMENT_POSITION_PRECEDING ? 'Shift+Tab' : 'Tab'
    })
    if (way === null) return
    await page.keyboard.press(way)
  }
  throw new Error('the control cannot be reached by Tab')
}
