import { describe, expect, it } from 'vitest'
import { checkBlock } from '../../../geometry/index.ts'
import { measuredHere, usualPaperHere, usualUnit } from '../../../web/document/region.ts'
import { emptyGrid } from '../../../web/document/starters/emptyGrid.ts'
import { eveningStar } from '../../../web/document/starters/eveningStar.ts'
import { lantern } from '../../../web/document/starters/lantern.ts'

describe('what is usual in the browser’s region', () => {
  // Inches wherever English is spoken: common practice, no source. Letter in North America and parts of Latin America: Unicode CLDR, from memory.
  it.each([
    ['en-US', 'in', 'letter'],
    ['en', 'in', 'letter'],
    ['en-CA', 'in', 'letter'],
    ['fr-CA', 'in', 'letter'],
    ['es-MX', 'cm', 'letter'],
    ['en-GB', 'in', 'a4'],
    ['en-AU', 'in', 'a4'],
    ['de', 'cm', 'a4'],
    ['de-AT', 'cm', 'a4'],
    ['fr-FR', 'cm', 'a4'],
    ['ja', 'cm', 'a4'],
    ['no such language', 'in', 'letter'],
  ] as const)('%s: %s and %s', (tag, unit, paper) => {
    expect([usualUnit(tag), usualPaperHere(tag)]).toEqual([unit, paper])
  })

  it('measures the blocks to start from, and they stay good files', () => {
    for (const block of [eveningStar, lantern, emptyGrid]) {
      expect(measuredHere(block, 'en-GB')).toBe(block)
      const metric = measuredHere(block, 'de-DE')
      expect(metric.measure.unit).toBe('cm')
      expect(checkBlock(metric)).toMatchObject({ ok: true })
    }
    expect(measuredHere(eveningStar, 'de-DE')).toMatchObject({ measure: { unit: 'cm' }, grid: { cell: 7.5 } })
  })
})
