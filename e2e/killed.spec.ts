/**
 * The browser is killed in the middle of edits, at random moments: no edit older than 100 ms is lost, none is ever half there, and one can still go back step by
 * step. Every other time it is only the page's own process that is killed.
 *
 * What the page ought to show is reckoned here, by a plain list of names with steps back and forward, and compared with what it shows after it is
 * opened again. `NESTWRIGHT_KILLS` says how often (10 unless asked), `NESTWRIGHT_SEED` which moments.
 */
import { type ChildProcess, spawn } from 'node:child_process'
import { mkdtempSync, rmSync } from 'node:fs'
import { tmpdir } from 'node:os'
import { join } from 'node:path'
import { type Browser, chromium, expect, type Page, test } from '@playwright/test'

const KILLS = Number(process.env.NESTWRIGHT_KILLS ?? 10)
const SEED = Number(process.env.NESTWRIGHT_SEED ?? 1)
/** Milliseconds: an edit of this age is kept. */
const AGE = 100
/** So many steps back and forward are looked at after each kill. */
const DEPTH = 6
const FIELDS = 3

// It starts, kills and drives Chromium itself.
test('edits outlive a killed browser', async ({ baseURL }) => {
  test.setTimeout(60_000 + KILLS * 15_000)
  const folder = mkdtempSync(join(tmpdir(), 'nestwright-killed-'))
  const chance = chanceOf(SEED)
  let seat = await sitDown(folder, baseURL as string)
  let state: State = { fields: await fieldsOf(seat.page), past: [], future: [] }
  let oldestLost = 0
  try {
    for (let kill = 0; kill < KILLS; kill++) {
      const states = statesFrom(state, chance, kill)
      const done = await killedAt(seat, states, 60 + chance() * 500, kill % 2 === 0)
      seat = kill % 2 === 0 ? await sitDown(folder, baseURL as string) : await moveUp(seat, baseURL as string)
      const found = await seen(seat.page)
      const place = states.findLastIndex((one) => JSON.stringify(view(one)) === JSON.stringify(found))
      expect(place, `kill ${kill}: the page shows a state that never was: ${JSON.stringify(found)}`).toBeGreaterThanOrEqual(0)
      const lost = done.times.findIndex((_, index) => index > place)
      if (lost > 0) oldestLost = Math.max(oldestLost, done.killed - (done.times[lost] as number))
      const kept = done.times.findLastIndex((time) => time <= done.killed - AGE)
      expect(place, `kill ${kill}: an edit older than ${AGE} ms is lost`).toBeGreaterThanOrEqual(kept)
      state = states[place] as State
    }
    console.log(`killed ${KILLS} times; the oldest edit lost was ${oldestLost} ms old`)
  } finally {
    seat.stop()
    await new Promise((resolve) => setTimeout(resolve, 200))
    rmSync(folder, { recursive: true, force: true, maxRetries: 5 })
  }
})

interface Seat {
  readonly browser: Browser
  readonly page: Page
  /** Ends the browser and all its processes at once. */
  readonly stop: () => void
}

/** A browser of its own, with a profile that outlives it. */
async function sitDown(folder: string, address: string): Promise<Seat> {
  const path = process.env.NESTWRIGHT_BROWSER || chromium.executablePath()
  const flags = ['--headless', '--no-sandbox', '--disable-gpu', '--no-first-run', '--remote-debugging-port=0', `--user-data-dir=${folder}`]
  const child = spawn(path, [...flags, 'about:blank'], { detached: true, stdio: ['ignore', 'ignore', 'pipe'] })
  const browser = await chromium.connectOverCDP(await endpointOf(child))
  const [context] = browser.contexts()
  const page = context?.pages()[0] ?? (await browser.newPage())
  await openApp(page, address)
  return { browser, page, stop: () => process.kill(-(child.pid as number), 'SIGKILL') }
}

function endpointOf(child: ChildProcess): Promise<string> {
  return new Promise((resolve, reject) => {
    let said = ''
    child.once('exit', () => reject(new Error(`the browser ended at once: ${said}`)))
    child.stderr?.on('data', (part: Buffer) => {
      said += String(part)
      const address = /DevTools listening on (ws:\S+)/.exec(said)?.[1]
      if (address !== undefined) resolve(address)
    })
  })
}

async function moveUp(seat: Seat, address: string): Promise<Seat> {
  const page = (await seat.browser.contexts()[0]?.newPage()) as Page
  await openApp(page, address)
  return { ...seat, page }
}

async function openApp(page: Page, address: string): Promise<void> {
  await page.goto(address)
  await expect(page.getByText('Saved in this browser', { exact: true })).toBeVisible()
}

/** Lets the page edit by itself, and kills it while it does; when each edit was made, and when it was killed. */
async function killedAt(seat: Seat, states: readonly State[], after: number, whole: boolean): Promise<{ times: number[]; killed: number }> {
  // The state it begins from was made before.
  const times = [0]
  seat.page.on('console', (message) => {
    const [word, place, time] = message.text().split(' ')
    if (word === 'edited') times[Number(place)] = Number(time)
  })
  const pages = await processesOf(seat)
  const crashed = whole ? null : seat.page.waitForEvent('crash')
  await seat.page.evaluate(work, { acts: states.slice(1).map(({ act, pause }) => ({ ...(act as Act), pause: pause as number })) })
  await new Promise((resolve) => setTimeout(resolve, after))
  const killed = Date.now()
  if (whole) seat.stop()
  else for (const page of pages) process.kill(page, 'SIGKILL')
  await crashed
  // What the page said before it died is still on its way.
  await new Promise((resolve) => setTimeout(resolve, 100))
  return { times, killed }
}

/** The processes that draw pages: children of the browser that this test started. */
async function processesOf({ browser }: Seat): Promise<number[]> {
  const session = await browser.newBrowserCDPSession()
  const { processInfo } = await session.send('SystemInfo.getProcessInfo')
  await session.detach()
  return processInfo.filter(({ type }) => type === 'renderer').map(({ id }) => id)
}

// What the page does, and what it ought to show.

type Act = { readonly sort: 'write'; readonly field: number; readonly text: string } | { readonly sort: 'undo' } | { readonly sort: 'redo' }
interface Step {
  readonly field: number
  readonly before: string
  readonly after: string
}
interface State {
  readonly fields: readonly string[]
  readonly past: readonly Step[]
  readonly future: readonly Step[]
  /** What led here, and the milliseconds of rest before it. */
  readonly act?: Act
  readonly pause?: number
}

/** More than a page gets done before it is killed. */
const MANY = 150

function statesFrom(from: State, chance: () => number, kill: number): State[] {
  const states = [from]
  for (let place = 1; place <= MANY; place++) {
    const last = states.at(-1) as State
    const act = actAfter(last, chance, `${kill}.${place}`)
    states.push({ ...acted(last, act), act, pause: pauseOf(chance()) })
  }
  return states
}

/** A third at once, most as keys follow each other, some after a rest, in which the last edit must come home by itself. */
const pauseOf = (dice: number): number => (dice < 0.3 ? 0 : dice < 0.8 ? (dice - 0.3) * 80 : 100 + (dice - 0.8) * 1000)

/** Writing in the field of the step before would be one step with it; so another is taken. */
function actAfter({ past, future }: State, chance: () => number, text: string): Act {
  const dice = chance()
  if (dice < 0.15 && past.length > 0) return { sort: 'undo' }
  if (dice < 0.25 && future.length > 0) return { sort: 'redo' }
  const last = past.at(-1)?.field ?? 0
  return { sort: 'write', field: (last + 1 + Math.floor(chance() * (FIELDS - 1))) % FIELDS, text }
}

function acted(state: State, act: Act): State {
  if (act.sort === 'write') {
    const step = { field: act.field, before: state.fields[act.field] as string, after: act.text }
    return { fields: withField(state.fields, act.field, act.text), past: [...state.past, step], future: [] }
  }
  const step = (act.sort === 'undo' ? state.past.at(-1) : state.future[0]) as Step
  const fields = withField(state.fields, step.field, act.sort === 'undo' ? step.before : step.after)
  if (act.sort === 'undo') return { fields, past: state.past.slice(0, -1), future: [step, ...state.future] }
  return { fields, past: [...state.past, step], future: state.future.slice(1) }
}

const withField = (fields: readonly string[], place: number, text: string): string[] => fields.map((one, index) => (index === place ? text : one))

/** The fields now, and as they are after each step back and each step forward. */
type View = readonly (readonly string[])[]

function view(state: State): View {
  const back: (readonly string[])[] = []
  const forth: (readonly string[])[] = []
  for (let at = state; at.past.length > 0 && back.length < DEPTH; back.push(at.fields)) at = acted(at, { sort: 'undo' })
  for (let at = state; at.future.length > 0 && forth.length < DEPTH; forth.push(at.fields)) at = acted(at, { sort: 'redo' })
  return [state.fields, ...back, ['—'], ...forth]
}

const seen = (page: Page): Promise<View> =>
  page.evaluate(async (depth) => {
    const fields = (): string[] =>
      [...document.querySelectorAll<HTMLInputElement>('header .name input, .fabrics .named input')].slice(0, 3).map(({ value }) => value)
    const press = async (name: string): Promise<boolean> => {
      const button = [...document.querySelectorAll('header button')].find(({ textContent }) => textContent === name) as HTMLButtonElement
      if (button.getAttribute('aria-disabled') === 'true') return false
      button.click()
      await new Promise((resolve) => setTimeout(resolve))
      return true
    }
    const walk = async (there: string, home: string): Promise<string[][]> => {
      const passed: string[][] = []
      while (passed.length < depth && (await press(there))) passed.push(fields())
      for (const _ of passed) await press(home)
      return passed
    }
    const now = fields()
    const back = await walk('Undo', 'Redo')
    return [now, ...back, ['—'], ...(await walk('Redo', 'Undo'))]
  }, DEPTH)

const fieldsOf = async (page: Page): Promise<readonly string[]> => (await seen(page))[0] as readonly string[]

/** Runs in the page: begins to edit as a hand would, and says when each edit was made. */
function work({ acts }: { readonly acts: readonly (Act & { readonly pause: number })[] }): void {
  const type = (field: number, text: string): void => {
    const input = [...document.querySelectorAll<HTMLInputElement>('header .name input, .fabrics .named input')][field] as HTMLInputElement
    Object.getOwnPropertyDescriptor(HTMLInputElement.prototype, 'value')?.set?.call(input, text)
    input.dispatchEvent(new Event('input', { bubbles: true }))
  }
  const press = (name: string): void =>
    [...document.querySelectorAll<HTMLElement>('header button')].find(({ textContent }) => textContent === name)?.click()
  const run = async (): Promise<void> => {
    for (const [place, act] of acts.entries()) {
      if (act.pause > 0) await new Promise((resolve) => setTimeout(resolve, act.pause))
      else await Promise.resolve()
      if (act.sort === 'write') type(act.field, act.text)
      else press(act.sort === 'undo' ? 'Undo' : 'Redo')
      console.debug(`edited ${place + 1} ${Date.now()}`)
    }
  }
  void run()
}

/** Numbers from 0 to 1, always the same for the same seed. */
function chanceOf(seed: number): () => number {
  let state = seed >>> 0
  return () => {
    state = (Math.imul(state, 1_664_525) + 1_013_904_223) >>> 0
    return state / 2 ** 32
  }
}
