/**
 * `npm test`: types, lint, unit tests (who imports whom is one of them) and published checks, then a maker's tasks in a real browser.
 * `npm run test:long`: what is tried a few times there, tried many times.
 *
 * Everything runs, whatever failed before it; the last line is the true sum over all parts (types and lint count one each).
 * A part that did not run, or found nothing to run, is a failure.
 */
import { spawnSync } from 'node:child_process'
import { mkdtempSync, readFileSync, rmSync } from 'node:fs'
import { tmpdir } from 'node:os'
import { join } from 'node:path'
import { findBrowser } from './browser.ts'

interface Sum {
  readonly passed: number
  readonly failed: number
}

const NOTHING_RAN: Sum = { passed: 0, failed: 1 }
const scratch = mkdtempSync(join(tmpdir(), 'nestwright-test-'))

const long = process.argv.includes('--long')
const sums = long
  ? [
      units(['test/report/liveFindings.test.ts', '--testTimeout=1800000'], { NESTWRIGHT_MORE: '20' }),
      await browser(['e2e/killed.spec.ts', 'e2e/sewing.spec.ts', 'e2e/morning.spec.ts'], {
        NESTWRIGHT_KILLS: '200',
        NESTWRIGHT_PICTURES: 'all',
        NESTWRIGHT_HANDS: 'all',
      }),
    ]
  : [types(), lint(), units(), await browser()]
rmSync(scratch, { recursive: true, force: true })

const passed = sums.reduce((sum, part) => sum + part.passed, 0)
const failed = sums.reduce((sum, part) => sum + part.failed, 0)
console.log(`${passed} passed, ${failed} failed`)
process.exitCode = failed === 0 && passed > 0 ? 0 : 1

function types(): Sum {
  return one(run('Types', ['tsc', '-b']))
}

function lint(): Sum {
  return one(run('Lint', ['biome', 'ci', '--max-diagnostics=50', '.']))
}

function units(files: readonly string[] = [], more: Readonly<Record<string, string>> = {}): Sum {
  const file = join(scratch, 'vitest.json')
  const args = ['vitest', 'run', ...files, '--reporter=default', '--reporter=json', `--outputFile.json=${file}`]
  const status = run('Unit tests and published checks', args, more)
  return checked(status, file, vitestSum)
}

async function browser(files: readonly string[] = [], more: Readonly<Record<string, string>> = {}): Promise<Sum> {
  const found = await findBrowser()
  if (!found.found) {
    console.log(found.advice)
    return NOTHING_RAN
  }
  const file = join(scratch, 'playwright.json')
  const env = { PLAYWRIGHT_JSON_OUTPUT_NAME: file, NESTWRIGHT_BROWSER: found.path ?? '', ...more }
  return checked(run('Browser tests', ['playwright', 'test', ...files, '--reporter=list,json'], env), file, playwrightSum)
}

interface VitestReport {
  readonly numPassedTests: number
  readonly numFailedTests: number
  readonly testResults: readonly { readonly status: string; readonly assertionResults: readonly { readonly status: string }[] }[]
}

/** A file that could not be loaded has failed although none of its tests has. */
function vitestSum(report: VitestReport): Sum {
  const unloaded = report.testResults.filter((file) => file.status === 'failed' && !file.assertionResults.some((test) => test.status === 'failed'))
  return { passed: report.numPassedTests, failed: report.numFailedTests + unloaded.length }
}

interface PlaywrightReport {
  readonly stats: { readonly expected: number; readonly unexpected: number; readonly flaky: number }
  readonly errors: readonly unknown[]
}

function playwrightSum({ stats, errors }: PlaywrightReport): Sum {
  return { passed: stats.expected, failed: stats.unexpected + stats.flaky + errors.length }
}

/** The report's sum; a bad exit that the report knows nothing of counts as one failure, and so does a part where nothing passed or failed. */
function checked<T>(status: number, file: string, sumOf: (report: T) => Sum): Sum {
  const sum = sumIn(file, sumOf)
  const unexplained = sum.failed === 0 && (status !== 0 || sum.passed === 0)
  return unexplained ? { ...sum, failed: 1 } : sum
}

function sumIn<T>(file: string, sumOf: (report: T) => Sum): Sum {
  try {
    return sumOf(JSON.parse(readFileSync(file, 'utf8')) as T)
  } catch {
    return NOTHING_RAN
  }
}

function one(status: number): Sum {
  return status === 0 ? { passed: 1, failed: 0 } : NOTHING_RAN
}

/** Runs a tool of the checkout and returns its exit status. */
function run(title: string, [tool = '', ...args]: readonly string[], env: Readonly<Record<string, string>> = {}): number {
  console.log(`\n${title}`)
  return spawnSync(join('node_modules', '.bin', tool), args, { stdio: 'inherit', env: { ...process.env, ...env } }).status ?? 1
}
