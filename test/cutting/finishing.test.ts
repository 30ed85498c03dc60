import { describe, expect, it } from 'vitest'
import { inEnglish } from '../../geometry/words/english.ts'
import { borderRounds, layersFor, MEASURE_FIRST, panelsFor, roundsOf, stripFor } from '../../geometry/cutting/finishing.ts'
import { report } from '../../geometry/report/wholeReport.ts'
import { star } from '../help.ts'

const RULE = { seam: 1 / 4, round: 1 / 8 }
const WINGS = [
  ['b', 'b'],
  ['b', 'b'],
  ['b', 'b'],
  ['b', 'b'],
] as const

describe('borders of a block', () => {
  const borders = [
    { finishedWidth: 1, fabric: 'b' },
    { finishedWidth: '2 1/2', fabric: 'c' },
  ]
  const block = star(WINGS, { borders })

  it('are the strips and the size that the report gives', () => {
    const said = report(block)
    const rounds = borderRounds([12, 12], roundsOf(block), RULE)
    const strips = rounds.flatMap(({ sides, topAndBottom }) => [sides, topAndBottom])
    const sorted = (rows: readonly { size: readonly [number, number]; fabric: string; count: number }[]) =>
      rows.map(({ fabric, size, count }) => [fabric, ...[...size].sort((a, b) => a - b), count].join(' ')).sort()
    expect(sorted(strips)).toEqual(sorted(said.cut.filter((row) => row.for.length === 0)))
    expect(rounds.at(-1)?.becomes).toEqual(said.block.withBorders)
  })

  it('with corner squares all four strips are as long as the piece before them; the whole comes out as large', () => {
    const [first, second] = borderRounds([12, 12], roundsOf({ ...block, borders: [borders[0], { ...borders[1], corner: 'd' }] as never }), RULE)
    expect(first?.corners).toBeNull()
    expect(second).toMatchObject({
      sides: { size: [3, 14.5] },
      corners: { fabric: 'd', size: [3, 3], count: 4 },
      topAndBottom: { size: [3, 14.5] },
      becomes: [19.5, 19.5],
    })
  })

  it('are measured through the middle, sides first [S128]', () => {
    expect(inEnglish(MEASURE_FIRST)).toMatch(/through its middle.*Sides first/)
  })

  it('the mean of three, to the next eighth; an edge 1/4 in off is eased, one further off is not [S129][S130][S131]', () => {
    expect(stripFor([12.5, 12.4, 12.6], 'in')).toEqual({ length: 12.5, eases: [true, true, true] })
    expect(stripFor([12.5, 12, 12.5], 'in')).toEqual({ length: 12.375, eases: [true, false, true] })
  })
})

describe('backing', () => {
  it('one length of fabric where it is wide enough, else panels the way that takes less: geometry, seams as in section 11 [S144]', () => {
    expect(panelsFor([38, 50], 'in', 42, RULE)).toEqual({ count: 1, length: 50, seams: null, buy: 1.5 })
    // 68 by 88: three lengths of 68 or two of 88.
    expect(panelsFor([68, 88], 'in', 42, RULE)).toEqual({ count: 2, length: 88, seams: 'down', buy: 5 })
    expect(panelsFor([58, 80], 'in', 42, RULE)).toEqual({ count: 2, length: 58, seams: 'across', buy: 3.25 })
  })

  it('a seam between panels takes two allowances: two of 42 reach 83 1/2 and no further', () => {
    expect(panelsFor([83.5, 100], 'in', 42, RULE).count).toBe(2)
    expect(panelsFor([83.6, 100], 'in', 42, RULE).count).toBe(3)
  })

  it('no batting in one piece above 120 in; in cm by the same inches [S147]', () => {
    expect(layersFor([116, 116], 'in', 'longarm', 42, RULE).sold).toBeNull()
    expect(layersFor([95, 130], 'cm', 'longarm', 106, { seam: 0.75, round: 0.5 }).sold?.soldAs).toBe('crib')
  })
})
