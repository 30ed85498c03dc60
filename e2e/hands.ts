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
  /** Presses an entry of what is done to selected units more rarely. */
  more(action: string): Promise<void>
  /** Opens one of the sheets beside the board. */
  sheet(name: string): Promise<void>
  /** Chooses the unit whose patch lies at a point of the board. */
  choose(at: Cell): Promise<void>
  /** Lays a unit with its top left on a cell. */
  place(unit: string, at: Cell, size: Cell): Promise<void>
  /** Chooses the patch at a point, which is called `patch`, and gives it a fabric. */
  recolour(at: Cell, patch: string, fabric: string): Promise<void>
  /** Moves the unit at a point by whole cells. */
  move(at: Cell, by: Cell): Promise<void>
  /** Makes the unit at a point larger by whole cells, to the right and down from its lower right corner. */
  grow(at: Cell, corner: Cell, by: Cell): Promise<void>
  /** Chooses an entry of a list. */
  pick(list: Locator, entry: string): Promise<void>
  write(field: Locator, text: string): Promise<void>
}

export function mouse(page: Page): Hand {
  const drag = async (from: Place, to: Place): Promise<void> => {
    await page.mouse.move(from.x, from.y)
    await page.mouse.down()
    await page.mouse.move((from.x + to.x) / 2, (from.y + to.y) / 2, { steps: 4 })
    await page.mouse.move(to.x, to.y, { steps: 4 })
    await page.mouse.up()
  }
  const choose = async (at: Cell): Promise<void> => {
    const { x, y } = await pixels(page, at)
    await page.mouse.click(x, y)
  }
  return pointing(page, { name: 'mouse', touch: false, press: (control) => control.click(), choose, drag })
}

export function finger(page: Page): Hand {
  const drag = async (from: Place, to: Place): Promise<void> => {
    const session = await page.context().newCDPSession(page)
    const touch = (type: 'touchStart' | 'touchMove' | 'touchEnd', points: Place[]) =>
      session.send('Input.dispatchTouchEvent', { type, touchPoints: points })
    await touch('touchStart', [from])
    for (const part of [0.25, 0.5, 0.75, 1]) await touch('touchMove', [{ x: from.x + (to.x - from.x) * part, y: from.y + (to.y - from.y) * part }])
    // A finger rests before it lets go; a flick would make the browser take the next tap for a stop.
    await page.waitForTimeout(150)
    await touch('touchMove', [to])
    await touch('touchEnd', [])
    await session.detach()
  }
  const choose = async (at: Cell): Promise<void> => {
    const { x, y } = await pixels(page, at)
    await page.touchscreen.tap(x, y)
  }
  return pointing(page, { name: 'finger', touch: true, press: (control) => control.tap(), choose, drag })
}

interface Pointer extends Pick<Hand, 'name' | 'touch' | 'press' | 'choose'> {
  drag(from: Place, to: Place): Promise<void>
}

/** What a mouse and a finger do alike, once each can press, choose and drag. */
function pointing(page: Page, { drag, ...pointer }: Pointer): Hand {
  const { press, choose } = pointer
  return {
    ...pointer,
    sheet: (name) => press(tab(page, name)),
    more: async (action) => {
      await press(moreActions(page))
      await press(button(page, action))
    },
    place: async (unit, at, size) => {
      const { from, to } = await fromTray(page, unit, middleOf(at, size))
      await drag(from, to)
    },
    recolour: async (at, _, fabric) => {
      await choose(at)
      await press(button(page, `Colour with ${fabric}`))
    },
    move: async (at, by) => drag(await pixels(page, at), await pixels(page, plus(at, by))),
    grow: async (at, corner, by) => {
      await choose(at)
      await drag(await pixels(page, corner), await pixels(page, plus(corner, by)))
    },
    pick: async (list, entry) => void (await list.selectOption(entry)),
    write: (field, text) => write(page, field, text),
  }
}

export function keyboard(page: Page): Hand {
  const keys = async (...names: readonly string[]): Promise<void> => {
    for (const name of names) await page.keyboard.press(name)
  }
  const press = async (control: Locator): Promise<void> => {
    await goTo(page, control)
    await keys('Enter')
    await focusInSight(page)
  }
  /** The cursor begins anywhere; the top left corner stops it. */
  const walk = async ([x, y]: Cell): Promise<void> => {
    await goTo(page, board(page))
    for (let step = 0; step < 8; step += 1) await keys('ArrowLeft', 'ArrowUp')
    for (let step = 0; step < Math.floor(x); step += 1) await keys('ArrowRight')
    for (let step = 0; step < Math.floor(y); step += 1) await keys('ArrowDown')
  }
  /** Enter again takes the next patch of the same cell: until the one that is meant is chosen. */
  const choose = async (at: Cell): Promise<void> => {
    await walk(at)
    await keys('Escape', 'Enter')
    await focusInSight(page)
  }
  const sheet = async (name: string): Promise<void> => {
    await goTo(page, page.getByRole('tab', { selected: true }))
    for (let step = 0; step < 12 && (await tab(page, name).getAttribute('aria-selected')) !== 'true'; step += 1) await keys('ArrowDown')
    await focusInSight(page)
  }
  return {
    name: 'keyboard',
    touch: false,
    press,
    more: async (action) => {
      await press(moreActions(page))
      await press(button(page, action))
    },
    sheet,
    choose,
    place: async (unit, at) => {
      await press(button(page, unit))
      await walk(at)
      // The unit stays in the hand for the next place, until Escape lets go of it.
      await keys('p', 'Escape', 'Enter')
    },
    recolour: async (at, patch, fabric) => {
      await choose(at)
      // The fabrics of a unit's patches are listed with the block.
      const open = (await page.getByRole('tab', { selected: true }).textContent()) ?? ''
      await sheet('Block')
      await goTo(page, page.getByRole('combobox', { name: patch, exact: true }))
      await page.keyboard.type(fabric)
      await focusInSight(page)
      await sheet(open)
    },
    move: async (at, by) => {
      await choose(at)
      await keys(...arrows(by).map((arrow) => `Alt+${arrow}`))
    },
    grow: async (at, _, by) => {
      await choose(at)
      await keys(...arrows(by).map((arrow) => `Alt+Shift+${arrow}`))
    },
    pick: async (list, entry) => {
      await goTo(page, list)
      await page.keyboard.type(entry)
      await focusInSight(page)
    },
    write: async (field, text) => {
      await goTo(page, field)
      await keys('Control+a')
      await page.keyboard.type(text)
      await keys('Enter')
      await focusInSight(page)
    },
  }
}

const moreActions = (page: Page): Locator => page.locator('.more-actions summary')

/** One arrow for each cell. */
const arrows = ([x, y]: Cell): string[] => [
  ...Array.from({ length: Math.abs(x) }, () => (x < 0 ? 'ArrowLeft' : 'ArrowRight')),
  ...Array.from({ length: Math.abs(y) }, () => (y < 0 ? 'ArrowUp' : 'ArrowDown')),
]

/** Letter by letter, as a hand does. */
async function write(page: Page, field: Locator, text: string): Promise<void> {
  await field.selectText()
  await field.pressSequentially(text)
  await page.keyboard.press('Enter')
}

/** What has the focus is somewhere, is in sight, is marked as having it, and lies under nothing else. */
export async function focusInSight(page: Page): Promise<void> {
  await expect.poll(() => page.evaluate(focusTrouble), { message: 'where the focus is', intervals: [10, 20, 50, 100] }).toBe(null)
}

function focusTrouble(): string | null {
  const on = document.activeElement
  if (on === null || on === document.body) return 'nothing has the focus'
  const { left, top, width, height } = on.getBoundingClientRect()
  // Over the board's upper edge stands what can be done with the selected units; over the middle of an empty one, ways to start.
  const isBoard = on.matches('[role="application"]')
  const middle = [left + width / (isBoard ? 8 : 2), top + (isBoard ? height : Math.min(height, 24)) / 2] as const
  if (middle[0] < 0 || middle[1] < 0 || middle[0] > window.innerWidth || middle[1] > window.innerHeight)
    return `${on.outerHTML.slice(0, 80)} is out of sight`
  const over = document.elementFromPoint(...middle)
  if (over !== null && !on.contains(over) && !over.contains(on)) return `${on.outerHTML.slice(0, 80)} lies under ${over.outerHTML.slice(0, 80)}`
  if (on.matches(':focus-visible') && getComputedStyle(on).outlineStyle === 'none') return `${on.outerHTML.slice(0, 80)} has no ring`
  return null
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

/** More stops than any part of our page has. */
const STOPS = 120

/**
 * By F6 to the part of the page that a control is in, then by Tab, forward or back; in a row of tools by arrows.
 *
 * By the shorter way: Tab past the page's end leads into the browser's own buttons, from where Firefox's driver does not come back whole.
 */
async function goTo(page: Page, control: Locator): Promise<void> {
  await expect(control).toBeVisible()
  for (let stop = 0; stop < STOPS; stop += 1) {
    const key = await control.evaluate(nextKey)
    if (key === null) return
    if (key !== 'F6') {
      await page.keyboard.press(key)
      continue
    }
    const before = await page.evaluate(partInHand)
    await page.keyboard.press(key)
    // What walks over the parts is fetched with the first key.
    await expect.poll(() => page.evaluate(partInHand), { intervals: [10, 20, 50, 100] }).not.toBe(before)
  }
  throw new Error('the control cannot be reached by keys')
}

const partInHand = (): string => document.activeElement?.closest<HTMLElement>('[data-part]')?.dataset.part ?? ''

/** The key that leads nearer to a control from where the focus is; null where it has it. */
function nextKey(control: Element): string | null {
  const on = document.activeElement ?? document.body
  if (on === control) return null
  const partOf = (one: Element): Element | null => one.closest('[data-part]')
  if (document.querySelector('dialog[open]') === null && partOf(control) !== null && partOf(control) !== partOf(on)) return 'F6'
  const row = control.closest('[role="toolbar"]')
  const after = (on.compareDocumentPosition(control) & Node.DOCUMENT_POSITION_FOLLOWING) !== 0
  if (row?.contains(on) === true) return after ? 'ArrowRight' : 'ArrowLeft'
  return after ? 'Tab' : 'Shift+Tab'
}

interface Place {
  readonly x: number
  readonly y: number
}

const plus = ([x, y]: Cell, [dx, dy]: Cell): Cell => [x + dx, y + dy]
