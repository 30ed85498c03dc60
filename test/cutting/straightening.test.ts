/** Enough to straighten an end: half an inch, or a centimetre (common practice, no source), on every fabric bought and every set of strips. */
import { describe, expect, it } from 'vitest'
import { report } from '../../geometry/report/wholeReport.ts'
import type { BoxUnit } from '../../geometry/values/block.ts'
import { blockOf, sequence, square } from '../help.ts'

describe('what is bought', () => {
  it.each([
    // A strip of 4 in finished is 4 1/2 in: an eighth of a yard exactly, with nothing to straighten its end.
    ['in', 4, undefined, 1 / 4],
    // 3 1/2 in finished and half an inch to straighten are an eighth of a yard.
    ['in', 3.5, undefined, 1 / 8],
    // 8 cm finished and seams of 1 cm: a tenth of a metre exactly; 7 cm leave one centimetre.
    ['cm', 8, 1, 0.2],
    ['cm', 7, 1, 0.1],
  ] as const)('leaves the end to be straightened: in %s, strips %f finished', (unit, cell, seam, buy) => {
    const block = blockOf(1, 1, [square('a', [0, 0])], {
      measure: { unit, ...(seam === undefined ? {} : { seam }) },
      grid: { columns: 1, rows: 1, cell },
    })
    expect(report(block).fabric[0]?.buy).toBeCloseTo(buy, 9)
  })
})

describe('strip sets', () => {
  const sets = (columns: number, rows: number, cell: number, width: number) => {
    const units = Array.from({ length: columns * rows }, (_, place): BoxUnit => {
      const at = [place % columns, Math.floor(place / columns)] as const
      return { id: `s${place}`, kind: 'strips', at, size: [1, 1], fabrics: { strip1: 'a', strip2: 'b' }, method: 'strip-set' }
    })
    const { units: rows_, cut } = report(blockOf(columns, rows, units, { grid: { columns, rows, cell }, cloth: { usableWidth: width } }))
    return { spare: rows_[0]?.spare as number, strips: cut.filter(({ method }) => method === 'strip-set') }
  }

  it('are cut as long as their cross-cuts and the straightening: sixteen of 2 1/2 in from one set are 40 1/2 in, with none to spare', () => {
    const { spare, strips } = sets(4, 4, 2, 42)
    expect(spare).toBe(0)
    expect(strips.map(({ size, count }) => [size, count])).toEqual([
      [[40.5, 1.5], 1],
      [[40.5, 1.5], 1],
    ])
  })

  it('say as many spare as their strips, once straightened, give too many, and are as few as the width allows', () => {
    const next = sequence(61)
    for (let way = 0; way < 60; way++) {
      const [columns, rows] = [1 + Math.floor(next() * 6), 1 + Math.floor(next() * 6)]
      const [cell, width] = [1 + Math.floor(next() * 24) / 8, 30 + Math.floor(next() * 13)]
      const { spare, strips } = sets(columns, rows, cell, width)
      const cutting = cell + 0.5
      expect(strips).toHaveLength(2)
      for (const { size, count } of strips) {
        const long = Math.max(...size)
        expect(long).toBeLessThanOrEqual(width)
        // A strip of the whole width is counted on for what the width holds.
        const gives = Math.floor((long === width ? long : long - 0.5) / cutting + 1e-9)
        expect(count * gives).toBe(columns * rows + spare)
        expect((count - 1) * Math.floor(width / cutting)).toBeLessThan(columns * rows)
      }
    }
  })
})
