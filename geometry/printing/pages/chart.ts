/** Size charts for the kinds of unit that the block has, its own sizes marked; for a block without any, all of them. */
import { type ChartKind, type SizeChart, sizeChart } from '../../cutting/chart.ts'
import { seamOf } from '../../block/measure.ts'
import { rational } from '../../exact/rational.ts'
import { isOnRuler, sayLength } from '../../exact/lengths.ts'
import { CHART_TITLES } from '../../writing/chart.ts'
import { METHOD_WORDS, type MeasureUnit } from '../../writing/say.ts'
import { STYLES } from '../ink.ts'
import type { Job } from '../job.ts'
import { table } from '../table.ts'
import { chapter, heading } from '../titles.ts'

const KIND_CHARTS: Readonly<Record<string, readonly ChartKind[]>> = {
  goose: ['geese'],
  hst: ['hst', 'hst4', 'hst8'],
  hourglass: ['hourglass'],
  diamond: ['diamond'],
}
const RANGE = { in: [1, 12, [1, 2]], cm: [2, 24, [1, 1]] } as const

export function chartPages(job: Job): void {
  const { sheets, report, block, unit } = job
  const used = [...new Set(report.units.flatMap(({ kind }) => KIND_CHARTS[kind] ?? []))]
  const kinds = used.length > 0 ? used : Object.values(KIND_CHARTS).flat()
  const [from, to, step] = RANGE[unit]
  chapter(sheets, 'Size chart', 320)
  sheets.write(
    `All sizes in ${unit === 'in' ? 'inches' : 'centimetres'}, for a seam allowance of ${sayLength(report.measure.seam, unit)} ${unit}. Cut sizes are rounded up to what a ruler shows, and trimmed after sewing.`,
    STYLES.body,
  )
  for (const kind of kinds) {
    const chart = sizeChart({ kind, unit, seam: seamOf(block), from: rational(from), to: rational(to), step: rational(step[0], step[1]) })
    chartTable(job, chart)
  }
}

function chartTable({ sheets, report, unit }: Job, chart: SizeChart): void {
  const method = chart.method === 'plain' ? '' : `, ${METHOD_WORDS[chart.method]}`
  heading(sheets, `${CHART_TITLES[chart.kind]}${method}`, 90)
  const kind = Object.entries(KIND_CHARTS).find(([, kinds]) => kinds.includes(chart.kind))?.[0]
  const own = report.units
    .filter((row) => row.kind === kind && (row.method === chart.method || chart.method === 'plain'))
    .map(({ finished }) => finished.join(' '))
  const marked = new Set(chart.rows.flatMap(({ finished }, at) => (own.includes(finished.join(' ')) ? [at] : [])))
  const names = chart.rows[0]?.pieces.map(({ name }) => name) ?? []
  table(
    sheets,
    [{ title: 'Finished', share: 1, strong: true }, { title: 'Trim to', share: 1 }, ...names.map((name) => ({ title: `Cut ${name}`, share: 1 }))],
    chart.rows.map(({ finished, unfinished, pieces }) => [
      sides(finished, unit),
      sides(unfinished, unit),
      ...pieces.map(({ size }) => length(size, unit)),
    ]),
    { marked, style: STYLES.chart },
  )
  if (marked.size > 0) sheets.write('Shaded: the size in this block.', STYLES.small, { after: 2 })
}

const length = (size: number, unit: MeasureUnit): string => `${isOnRuler(size, unit) ? '' : 'about '}${sayLength(size, unit)}`

const sides = ([width, height]: readonly [number, number], unit: MeasureUnit): string =>
  width === height ? length(width, unit) : `${length(width, unit)} × ${length(height, unit)}`
