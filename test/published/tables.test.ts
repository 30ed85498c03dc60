/**
 * Printed size charts against the computed sizes. Rows and sources stand in `tables.json`. `exact` rows must agree; `trimDown` rows are cut larger on
 * purpose and trimmed, so ours is never larger; `outlier` rows disagree with their own rule or with the geometry, so ours must differ.
 */
import { describe, expect, it } from 'vitest'
import { eightAtATime, geese, halved, quartered, type Rule, unfinished } from '../../geometry/cutting/size.ts'
import { parseRational, toNumber } from '../../geometry/exact/rational.ts'
import tables from './tables.json' with { type: 'json' }

const RULE: Rule = { seam: 1 / 4, round: 1 / 8 }
const length = (text: string): number => toNumber(parseRational(text) ?? { n: 0n, d: 1n })
const titles: Readonly<Record<string, { title: string; publisher: string }>> = tables.sources
const from = (tag: string): string => `${tag}: ${titles[tag]?.title}, ${titles[tag]?.publisher}`

/** Sizes as [ours, printed]. */
function judge(variant: string, sizes: readonly (readonly [number, number])[], source: string): void {
  const [ours, printed] = [sizes.map(([mine]) => mine), sizes.map(([, its]) => its)]
  if (variant === 'exact') expect(ours, source).toEqual(printed)
  else if (variant === 'trimDown') for (const [mine, its] of sizes) expect(mine, source).toBeLessThanOrEqual(its)
  else expect(ours, source).not.toEqual(printed)
}

describe('printed charts', () => {
  it.each(tables.geese4)('flying geese, four at a time: $finishedWidth by $finishedHeight, $variant, $source', (row) => {
    const { large, small } = geese(length(row.finishedWidth), length(row.finishedHeight), RULE)
    judge(
      row.variant,
      [
        [large, length(row.largeSquare)],
        [small, length(row.smallSquare)],
      ],
      from(row.source),
    )
  })

  it.each(tables.geeseStitchFlip)('flying geese with flipped corners: $finishedWidth by $finishedHeight, $source', (row) => {
    const [high, wide] = row.rectangle.split(' x ').map(length)
    const ours = [
      unfinished(length(row.finishedWidth), RULE),
      unfinished(length(row.finishedHeight), RULE),
      unfinished(length(row.finishedHeight), RULE),
    ]
    expect(ours, from(row.source)).toEqual([wide, high, length(row.square)])
  })

  it.each(tables.hst2)('half-square triangles, two at a time: $finished, $variant, $source', (row) => {
    judge(row.variant, [[halved(length(row.finished), RULE), length(row.cutSquare)]], from(row.source))
  })

  it.each(tables.hst8)('half-square triangles, eight at a time: $finished, $variant, $source', (row) => {
    judge(row.variant, [[eightAtATime(length(row.finished), RULE), length(row.cutSquare)]], from(row.source))
  })

  it.each(tables.qst2)('hourglasses, two at a time: $finished, $variant, $source', (row) => {
    judge(row.variant, [[quartered(length(row.finished), RULE), length(row.cutSquare)]], from(row.source))
  })
})

describe('lightness', () => {
  it('white, black and mid grey: CIE 15 and IEC 61966-2-1, values from memory', async () => {
    const { lightnessOf } = await import('../../geometry/index.ts')
    expect(lightnessOf('#ffffff')).toBeCloseTo(100, 9)
    expect(lightnessOf('#000000')).toBe(0)
    expect(lightnessOf('#777777')).toBeCloseTo(50.03, 1)
  })
})
