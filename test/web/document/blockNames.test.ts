import { describe, expect, it } from 'vitest'
import { checkBlock, LONGEST_WORDS } from '../../../geometry/index.ts'
import { eveningStar } from '../../../web/document/starters/eveningStar.ts'
import { copyName, displayName, shortName, thisTabName } from '../../../web/document/blockNames.ts'

describe('a name in a sentence', () => {
  it('is never empty', () => {
    expect(['', '  \n', 'Oat'].map((name) => displayName({ name }))).toEqual(['Untitled', 'Untitled', 'Oat'])
  })

  it('is no longer than can be read, and cut between letters', () => {
    expect(shortName('x'.repeat(60))).toBe('x'.repeat(60))
    expect(shortName('x'.repeat(20_000))).toBe(`${'x'.repeat(59)}…`)
    for (const first of ['', 'x'])
      expect([...shortName(`${first}${'🧵'.repeat(200)}`)].every((letter) => [first, '🧵', '…'].includes(letter))).toBe(true)
  })
})

describe('a name made from another', () => {
  it('is no longer than a file may hold', () => {
    const long = 'x'.repeat(LONGEST_WORDS)
    expect(copyName('Star')).toBe('Star (copy)')
    for (const name of [copyName(long), thisTabName(copyName(long))]) expect(checkBlock({ ...eveningStar, name })).toMatchObject({ ok: true })
    for (const first of ['', 'x'])
      expect(() => encodeURIComponent(copyName(`${first}${'🧵'.repeat(LONGEST_WORDS / 2)}`)), 'half a letter has no code').not.toThrow()
  })
})
