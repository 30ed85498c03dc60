/** What must hold of the house itself: no folder too full, imports that point one way, and a linter that would see it if they did not. */
import { spawnSync } from 'node:child_process'
import { mkdirSync, mkdtempSync, rmSync, writeFileSync } from 'node:fs'
import { tmpdir } from 'node:os'
import { dirname, join } from 'node:path'
import { fileURLToPath } from 'node:url'
import { afterAll, beforeAll, describe, expect, it } from 'vitest'
import { folderSizes, house, MOST_FILES, MOST_LINES, projectFiles } from '../.tools/house.ts'

const LINTER = fileURLToPath(new URL('../.tools/rooms.mjs', import.meta.url))
const HOME = dirname(dirname(LINTER))

interface Linted {
  readonly status: number | null
  readonly lines: readonly string[]
}

function lint(cwd: string): Linted {
  const { status, stdout, stderr } = spawnSync(process.execPath, [LINTER], { cwd, encoding: 'utf8' })
  return { status, lines: `${stdout}${stderr}`.trim().split('\n') }
}

it(`no folder holds more than ${MOST_FILES} files`, () => {
  const folders = folderSizes(projectFiles())
  expect(folders.length).toBeGreaterThan(20)
  expect(folders.filter(({ files }) => files > MOST_FILES)).toEqual([])
})

describe('of the shipped code', () => {
  const found = house()

  it(`no function has more than ${MOST_LINES.function} lines, and no component more than ${MOST_LINES.component}, without saying why`, () => {
    expect(found.long).toEqual([])
  })
  it('no name is defined in two files', () => expect(found.doubled).toEqual([]))
  it('somebody imports every export', () => expect(found.unused).toEqual([]))
  it('no export is used by tests alone', () => expect(found.onlyTested).toEqual([]))
  it('every exported function of the geometry says what goes in and out', () => expect(found.undocumented).toEqual([]))
})

it('each room reads only the rooms below it, and no imports go round in a ring', () => {
  const { status, lines } = lint(HOME)
  expect(lines.slice(0, -1)).toEqual([])
  expect(lines.at(-1)).toMatch(/^\d{3} files, \d{4} imports, 0 violations$/)
  expect(status).toBe(0)
})

/** A small house that breaks each rule once, by types alone where types are the harder case. */
const PLANTED: Readonly<Record<string, string>> = {
  'geometry/values/length.ts': "import type { Patch } from '../block/patch.ts'\nexport type Length = Patch['width']\n",
  'geometry/block/patch.ts': 'export interface Patch {\n  readonly width: number\n}\n',
  'geometry/block/clock.ts': "import { hrtime } from 'node:process'\nexport const now = (): bigint => hrtime.bigint()\n",
  'web/board/Board.tsx':
    "import type { Tool } from './tools.ts'\nexport interface BoardProps {\n  readonly tool: Tool\n}\nexport const Board = ({ tool }: BoardProps) => <b>{tool.name}</b>\n",
  'web/board/tools.ts':
    "import type { BoardProps } from './Board.tsx'\nexport interface Tool {\n  readonly name: string\n  readonly draw: (props: BoardProps) => void\n}\n",
  'web/board/inner.ts': "import type { Length } from '../../geometry/values/length.ts'\nexport const none: Length = 0\n",
  'test/help.ts': 'export const help = 1\n',
  'web/keeping/sample.ts': "export { help } from '../../test/help.ts'\n",
  'web/keeping/shelf.ts': "import { Board } from '../board/Board.tsx'\nexport const shelf = [Board]\n",
}

describe('a violation that is planted is seen', () => {
  let found: Linted = { status: null, lines: [] }
  const folder = mkdtempSync(join(tmpdir(), 'nestwright-house-'))

  beforeAll(() => {
    for (const [path, text] of Object.entries(PLANTED)) {
      mkdirSync(dirname(join(folder, path)), { recursive: true })
      writeFileSync(join(folder, path), text)
    }
    found = lint(folder)
  })
  afterAll(() => rmSync(folder, { recursive: true, force: true }))

  it.each([
    ['a type imported upward', 'geometry/values/length.ts imports geometry/block/patch.ts: geometry/values reads no other room'],
    [
      'a room of the screen that reads one above it',
      'web/keeping/shelf.ts imports web/board/Board.tsx: web/keeping reads only words, workers, document',
    ],
    ['a ring of types, seen from the file with JSX in it', 'web/board/Board.tsx imports web/board/tools.ts: no circles'],
    ['the geometry past its public face', 'web/board/inner.ts imports geometry/values/length.ts: the screen reads geometry by its public face'],
    ['the clock in the geometry', 'geometry/block/clock.ts imports process: geometry is pure: nothing of Node'],
    ['a test in what is shipped', 'web/keeping/sample.ts imports test/help.ts: nothing shipped reads tests'],
  ])('%s', (_, line) => {
    expect(found.lines).toContain(line)
  })

  it('and the linter says so by its exit status', () => expect(found.status).toBe(1))
})
