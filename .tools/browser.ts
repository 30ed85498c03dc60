/**
 * The browser that the tests drive: one that is there already, or one that is fetched.
 *
 * Out     where it is (`undefined` for Playwright's own), or the one line that says what to install.
 * A browser counts only once it has started: a stub on the PATH, or one without its libraries, is passed over.
 */
import { spawnSync } from 'node:child_process'
import { accessSync, constants } from 'node:fs'
import { delimiter, join } from 'node:path'
import { chromium } from '@playwright/test'

export type Browser = { readonly found: true; readonly path: string | undefined } | { readonly found: false; readonly advice: string }

/** Debian's headless shell starts two to three times faster than the whole browser, so it comes first. */
const NAMES = ['chromium-headless-shell', 'chromium', 'chromium-browser', 'google-chrome', 'google-chrome-stable']
const ADVICE =
  'No browser to test with: install Chromium (Debian: `apt-get install chromium-headless-shell fonts-dejavu-core`; else `npx playwright install chromium`).'

export async function findBrowser(): Promise<Browser> {
  return (await present()) ?? (await fetched()) ?? { found: false, advice: ADVICE }
}

/** What is on the machine now; `NESTWRIGHT_BROWSER` goes before all. */
async function present(): Promise<Browser | null> {
  const asked = process.env.NESTWRIGHT_BROWSER
  for (const path of [...(asked ? [asked] : []), ...onPath()]) if (await starts(path)) return { found: true, path }
  return (await starts(undefined)) ? { found: true, path: undefined } : null
}

async function fetched(): Promise<Browser | null> {
  console.log('No browser found; fetching one.')
  run('npx', ['playwright', 'install', 'chromium'])
  const own = await present()
  if (own !== null || process.getuid?.() !== 0) return own
  run('apt-get', ['update'])
  run('apt-get', ['install', '-y', 'chromium-headless-shell', 'fonts-dejavu-core'])
  return present()
}

/** A second engine, where it is installed: its path, else null. It is never fetched. */
export const secondEngine = (): string | null => onPath(['firefox-esr', 'firefox'])[0] ?? null

function onPath(names: readonly string[] = NAMES): string[] {
  const folders = (process.env.PATH ?? '').split(delimiter).filter((folder) => folder !== '')
  return names.flatMap((name) => folders.map((folder) => join(folder, name))).filter(isExecutable)
}

function isExecutable(path: string): boolean {
  try {
    accessSync(path, constants.X_OK)
    return true
  } catch {
    return false
  }
}

async function starts(executablePath: string | undefined): Promise<boolean> {
  try {
    const browser = await chromium.launch({ executablePath, timeout: 20_000 })
    await browser.close()
    return true
  } catch {
    return false
  }
}

function run(command: string, args: readonly string[]): void {
  spawnSync(command, args, { stdio: 'inherit', timeout: 600_000, env: { ...process.env, DEBIAN_FRONTEND: 'noninteractive' } })
}
