/** Every source that code or tests cite can be looked up in `SOURCES.md`, and nothing else stands there. */
import { readdirSync, readFileSync } from 'node:fs'
import { join } from 'node:path'
import { fileURLToPath } from 'node:url'
import { describe, expect, it } from 'vitest'
import { SOURCES } from './sources.ts'

const home = fileURLToPath(new URL('../..', import.meta.url))

/** Citations by tag, with the files they stand in: `[S17]` in a comment, `'S17'` or `"S17"` beside a figure. */
const cited = new Map<string, string[]>()
for (const folder of ['geometry', 'web', 'test', 'e2e'])
  for (const name of readdirSync(join(home, folder), { recursive: true, encoding: 'utf8' })) {
    if (!/\.(tsx?|mjs|json)$/.test(name) || name.endsWith('sources.test.ts')) continue
    const file = join(folder, name)
    for (const [tag] of readFileSync(join(home, file), 'utf8').matchAll(/(?<![\w.#/-])S\d{1,3}(?!\w)/g))
      cited.set(tag, [...(cited.get(tag) ?? []), file])
  }

describe('sources', () => {
  it('each one that is cited has its title and address', () => {
    expect(cited.size).toBeGreaterThan(100)
    expect([...cited].filter(([tag]) => !SOURCES.has(tag))).toEqual([])
  })

  it('each entry is cited somewhere', () => {
    expect([...SOURCES.keys()].filter((tag) => !cited.has(tag))).toEqual([])
  })

  it('each entry is one row with an address, and no tag stands twice', () => {
    const rows = readFileSync(new URL('SOURCES.md', import.meta.url), 'utf8')
      .split('\n')
      .filter((line) => /^\| S\d/.test(line))
    expect(rows).toHaveLength(SOURCES.size)
    for (const { address } of SOURCES.values()) expect(() => new URL(address)).not.toThrow()
  })
})
