/** What README.md and DEVELOPERS.md name is there: files, scripts, dependencies. */
import { existsSync, readFileSync } from 'node:fs'
import { join } from 'node:path'
import { fileURLToPath } from 'node:url'
import { describe, expect, it } from 'vitest'
import { german } from '../web/words/german.ts'
import { germanQuilts } from '../web/words/germanQuilts.ts'

const home = fileURLToPath(new URL('..', import.meta.url))
const read = (name: string): string => readFileSync(join(home, name), 'utf8')
const PAGES = ['README.md', 'DEVELOPERS.md'] as const
const manifest = JSON.parse(read('package.json')) as Record<'scripts' | 'dependencies' | 'devDependencies', Record<string, string>>

/** All that stands in backticks in one line. */
const quoted = (page: string): string[] => [...page.matchAll(/`([^`\n]+)`/g)].map(([, text = '']) => text)

/** `geometry/report/report.ts`, `web/views/`, `package.json`: no spaces, and a folder or an ending that files here have. */
const isPath = (text: string): boolean =>
  /^[\w.-]+(\/[\w.-]+)*\/?$/.test(text) && (/\.(tsx?|mjs|json|md|png)$/.test(text) || (text.includes('/') && !(text in PACKAGES)))

const PACKAGES = { ...manifest.dependencies, ...manifest.devDependencies }

describe.each(PAGES)('%s', (name) => {
  const page = read(name)
  const paths = [...quoted(page).filter(isPath), ...[...page.matchAll(/\]\(([^)#]+)\)/g)].map(([, target = '']) => target)].filter(
    (target) => !target.startsWith('http'),
  )

  it('names only files and folders that exist', () => {
    expect(paths.length).toBeGreaterThan(2)
    expect(paths.filter((path) => !existsSync(join(home, path)))).toEqual([])
  })

  it('names only scripts that package.json has', () => {
    const scripts = [...page.matchAll(/npm run ([\w:]+)/g)].map(([, script = '']) => script)
    expect(scripts.filter((script) => !(script in manifest.scripts))).toEqual([])
  })
})

it('DEVELOPERS.md says why each dependency is there, and names no other', () => {
  const [, table = ''] = read('DEVELOPERS.md').split('## Why each dependency')
  const named = [...table.matchAll(/^\| (`.+?`) \|/gm)].flatMap(([, cell = '']) => quoted(cell))
  expect(named.sort()).toEqual(Object.keys(PACKAGES).sort())
})

it('README.md lists every command of the command line', () => {
  const commands = [...read('geometry/cli.ts').matchAll(/'\.\/cli\/commands\/(\w+)\.ts'/g)].map(([, command = '']) => command)
  expect(commands.length).toBeGreaterThan(5)
  const readme = read('README.md')
  expect(commands.filter((command) => !readme.includes(`npx nestwright ${command} `))).toEqual([])
})

it('README.md calls what is on the screen as the screen does', () => {
  const named = [...read('README.md').matchAll(/“([^”]+)”/g)].map(([, label = '']) => label.replaceAll('\n', ' '))
  expect(named.length).toBeGreaterThan(10)
  expect(named.filter((label) => !Object.hasOwn(german, label) && !Object.hasOwn(germanQuilts, label))).toEqual([])
})
