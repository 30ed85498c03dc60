import { describe, expect, it } from 'vitest'
import { CHART_KINDS, type ChartKind, sizeChart } from '../../geometry/cutting/sizes/sizeChart.ts'
import { type Rational, rational } from '../../geometry/exact/rational.ts'
import { chartCsv, chartText } from '../../geometry/writing/sizeChartText.ts'

const inches = (kind: ChartKind, size: number, more: { oversize?: Rational; seam?: Rational } = {}) =>
  sizeChart({ kind, unit: 'in', seam: rational(1, 4), from: rational(size), to: rational(size), step: rational(1), ...more })
const sizes = (kind: ChartKind, size: number, more: Parameters<typeof inches>[2] = {}): number[] | undefined =>
  inches(kind, size, more).rows[0]?.pieces.map((piece) => piece.size)

describe('size charts', () => {
  it.each([
    ['geese', 6, [7.25, 3.875], '[S1]'],
    ['hst', 3, [3.875], '[S37]'],
    ['hst4', 3, [5.5], '[S32]: 3 1/2 trimmed out of 5 1/2'],
    ['hst8', 3, [7.75], '[S24]'],
    ['hourglass', 4, [5.25], '[S197]'],
    ['diamond', 12, [8.985, 6.875], '[S52]'],
    ['setting', 6, [6 * Math.SQRT2, 9.75, 5.125], '[S60]'],
  ] as const)('%s of %d in', (kind, size, cut, source) => {
    expect(sizes(kind, size), source).toEqual(cut)
  })

  it.each(CHART_KINDS)('%s cut a quarter larger: no finished or trimmed size changes, some square does, and the title says so', (kind) => {
    const [as, larger] = [inches(kind, 6), inches(kind, 6, { oversize: rational(1, 4) })]
    expect(larger.rows.map(({ finished, unfinished }) => [finished, unfinished])).toEqual(
      as.rows.map(({ finished, unfinished }) => [finished, unfinished]),
    )
    expect(sizes(kind, 6, { oversize: rational(1, 4) })).not.toEqual(sizes(kind, 6))
    expect(chartText(larger)).toMatch(/1\/4 in larger/)
    expect(chartText(as)).not.toMatch(/larger/)
  })

  it.each(CHART_KINDS)('%s in cm, at any step and any seam', (kind) => {
    const chart = sizeChart({ kind, unit: 'cm', seam: rational(3, 5), from: rational(5), to: rational(6), step: rational(1, 3) })
    expect(chart.rows.map(({ unfinished }) => Math.round(unfinished[0] * 1000))).toEqual([6200, 6533, 6867, 7200])
    for (const { pieces } of chart.rows) {
      const rounded = pieces.map(({ size }) => size).filter((size) => Number.isInteger(size * 2))
      expect(rounded.length).toBeGreaterThan(0)
    }
    expect(chartCsv(chart).split('\r\n')).toHaveLength(1 + 4 + 1)
  })
})
