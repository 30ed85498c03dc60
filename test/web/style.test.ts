/** Stylesheets are fetched with the sheet that wants them and stay: what one dresses, no other may, or a sheet would change another's look once it was opened. */
import { describe, expect, it } from 'vitest'
import { readdirSync, readFileSync } from 'node:fs'

/** What begins a rule: `.cards` of `.cards .tick:hover`. Rules of the whole page are in `web/style`. */
function beginnings(css: string): Set<string> {
  const bare = css.replace(/\/\*[\s\S]*?\*\//g, '')
  const selectors = [...bare.matchAll(/([^{}]+)\{/g)].flatMap(([, list = '']) => list.split(',')).map((one) => one.trim())
  return new Set(selectors.filter((one) => !one.startsWith('@')).map((one) => /^[.\w-]+/.exec(one)?.[0] ?? one))
}

describe('what is dressed', () => {
  it('is dressed by one stylesheet of the sheets', () => {
    const files = readdirSync('web', { recursive: true, encoding: 'utf8' }).filter((file) => file.endsWith('.css') && !file.startsWith('style'))
    expect(files.length).toBeGreaterThan(5)
    const dressedBy = new Map<string, string[]>()
    for (const file of files)
      for (const one of beginnings(readFileSync(`web/${file}`, 'utf8'))) dressedBy.set(one, [...(dressedBy.get(one) ?? []), file])
    expect([...dressedBy].filter(([, by]) => by.length > 1)).toEqual([])
  })
})
