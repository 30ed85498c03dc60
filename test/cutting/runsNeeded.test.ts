import { describe, expect, it } from 'vitest'
import { runsNeeded, mixedRuns, mixedMethods } from '../../geometry/cutting/runsNeeded.ts'
import { report } from '../../geometry/report/wholeReport.ts'
import { blockOf } from '../help.ts'

describe('runs of a method that makes several at once', () => {
  it.each([
    // method      triangles  pairs of squares  left over
    ['hst-2', 5, 3, 1],
    ['hst-4', 5, 2, 3],
    ['hst-8', 5, 1, 3],
    ['hst-8', 8, 1, 0],
    ['plain', 5, 5, 0],
  ] as const)('%s: %i triangles take %i: common practice, no source', (method, count, runs, spare) => {
    const units = Array.from({ length: count }, (_, x) => ({
      id: `t${x}`,
      kind: 'hst' as const,
      at: [x, 0] as const,
      size: [1, 1] as const,
      turn: (x % 4) as 0 | 1 | 2 | 3,
      method,
      fabrics: { upper: 'a', lower: 'b' },
    }))
    const [row] = report(blockOf(count, 1, units)).units
    expect(row).toMatchObject({ count, goes: runs, spare })
  })

  it('two pairs of fabrics never share squares: common practice, no source', () => {
    const units = ['b', 'c'].map((lower, x) => ({
      id: `t${x}`,
      kind: 'hst' as const,
      at: [x, 0] as const,
      size: [1, 1] as const,
      fabrics: { upper: 'a', lower },
    }))
    expect(report(blockOf(2, 1, units)).units).toMatchObject([
      { count: 1, goes: 1, spare: 1 },
      { count: 1, goes: 1, spare: 1 },
    ])
  })

  it('by eights, fours and twos together are as few as any that leave least over: by trying all', () => {
    for (let count = 1; count <= 60; count++) {
      const ways: { spare: number; runs: number }[] = []
      for (let byEight = 0; byEight <= 8; byEight++)
        for (let byFour = 0; byFour <= 15; byFour++)
          for (let byTwo = 0; byTwo <= 30; byTwo++) {
            const spare = 8 * byEight + 4 * byFour + 2 * byTwo - count
            if (spare >= 0) ways.push({ spare, runs: byEight + byFour + byTwo })
          }
      const [best] = ways.sort((one, other) => one.spare - other.spare || one.runs - other.runs)
      expect(mixedRuns(count)).toMatchObject(best as object)
    }
  })

  it('by several methods name one for each triangle, and the block then takes as many pairs and leaves as few over', () => {
    for (let count = 1; count <= 19; count++) {
      const methods = mixedMethods(count)
      const units = methods.map((method, x) => ({
        id: `t${x}`,
        kind: 'hst' as const,
        at: [x, 0] as const,
        size: [1, 1] as const,
        method,
        fabrics: { upper: 'a', lower: 'b' },
      }))
      const rows = report(blockOf(count, 1, units)).units
      const { runs, spare } = mixedRuns(count)
      expect([rows.reduce((sum, row) => sum + row.goes, 0), rows.reduce((sum, row) => sum + row.spare, 0)], `${count}`).toEqual([runs, spare])
    }
  })

  it('are the count divided by what one run makes, rounded up', () => {
    expect(runsNeeded(9, 4)).toEqual({ runs: 3, spare: 3 })
    expect(runsNeeded(0, 4)).toEqual({ runs: 0, spare: 0 })
  })
})
