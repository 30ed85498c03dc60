/** What takes long is worked out in workers, and a sheet that is left takes its workers with it. */
import { button, expect, findings, openApp, openSheet, type Page, pixels, test, BOTH_ENGINES } from './maker.ts'

interface Seen {
  /** Workers that were started and not ended. */
  readonly alive: Set<Worker>
  readonly jobs: string[]
  /** Sends off the repairs that were held back, so that the page can be seen while it waits. */
  release: () => void
}
type Watched = Window & { workersSeen?: Seen }

/** Counts the page's workers, and hears what each is asked for. */
function watchWorkers(): void {
  const seen: Seen = { alive: new Set(), jobs: [], release: () => undefined }
  ;(window as Watched).workersSeen = seen
  const { postMessage, terminate } = Worker.prototype
  const Native = Worker
  window.Worker = class extends Native {
    constructor(url: string | URL, options?: WorkerOptions) {
      super(url, options)
      seen.alive.add(this)
    }
  }
  Worker.prototype.postMessage = function (this: Worker, message: { readonly job?: string }) {
    if (message.job !== undefined) seen.jobs.push(message.job)
    const send = (): void => postMessage.call(this, message)
    if (message.job === 'repairs') seen.release = send
    else send()
  } as Worker['postMessage']
  Worker.prototype.terminate = function () {
    seen.alive.delete(this)
    terminate.call(this)
  }
}

const alive = (page: Page): Promise<number> => page.evaluate(() => (window as Watched).workersSeen?.alive.size ?? -1)
const jobs = (page: Page): Promise<readonly string[]> => page.evaluate(() => (window as Watched).workersSeen?.jobs ?? [])

test.beforeEach(async ({ page }) => {
  await page.addInitScript(watchWorkers)
  await openApp(page)
})

test('a sheet that is left ends its workers', BOTH_ENGINES, async ({ page }) => {
  await expect.poll(() => jobs(page)).toContain('layers')
  const before = await alive(page)
  for (const [sheet, job] of [
    ['Colour', 'page'],
    ['Booklet', 'report'],
    ['Colour', 'page'],
    ['Booklet', 'report'],
  ] as const) {
    const asked = (await jobs(page)).filter((one) => one === job).length
    await openSheet(page, sheet)
    await expect.poll(async () => (await jobs(page)).filter((one) => one === job).length).toBeGreaterThan(asked)
  }
  await openSheet(page, 'Seam check')
  await expect.poll(() => alive(page)).toBe(before)
})

test('turns that repair a layout are tried in a worker, and said to be under way until they are there', async ({ page }) => {
  await openSheet(page, 'Seam check')
  const { x, y } = await pixels(page, [1.5, 3.5])
  await page.mouse.click(x, y)
  await button(page, 'Turn 90°').click()
  await expect(findings(page).getByText('Working…').first()).toBeVisible()
  await expect.poll(() => jobs(page)).toContain('repairs')
  await page.evaluate(() => (window as Watched).workersSeen?.release())
  await expect(
    findings(page)
      .getByRole('button', { name: /^Turn the .*goose 90° to the left$/ })
      .first(),
  ).toBeVisible()
  await expect(findings(page).getByText('Working…')).toHaveCount(0)
})
