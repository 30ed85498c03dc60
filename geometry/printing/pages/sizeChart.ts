/** Size charts: the kinds of unit that the block has, its own sizes marked. */
import { type ChartKind, type SizeChart, sizeChart } from '../../cutting/sizes/sizeChart.ts'
import { cellOf, seamOf } from '../../block/lengthsOf.ts'
import { compare, multiply, parseRational, type Rational, rational } from '../../exact/rational.ts'
import { isOnRuler, sayLength } from '../../exact/lengths.ts'
import { CHART_TITLES } from '../../writing/sizeChartText.ts'
import { message } from '../../values/messages.ts'
import { inEnglish } from '../../words/english.ts'
import { capital, METHOD_WORDS } from '../../words/englishPhrases.ts'
import type { MeasureUnit } from '../../values/block.ts'
import { sayExact } from '../../writing/phrases.ts'
import { STYLES } from '../pageStyle.ts'
import type { PrintJob } from '../printJob.ts'
import { type TableColumn, table } from '../table.ts'
import { chapter, heading } from '../titles.ts'

/** Kinds of unit that have a chart, each with its ways side by side. */
const KIND_CHARTS: Readonly<Record<string, readonly ChartKind[]>> = {
  goose: ['geese'],
  hst: ['hst', 'hst4', 'hst8'],
  hourglass: ['hourglass'],
  diamond: ['diamond'],
}
const RANGE = { in: [1, 12, [1, 2]], cm: [2, 24, [1, 1]] } as const

const usedIn = ({ report }: PrintJob): string[] => Object.keys(KIND_CHARTS).filter((kind) => report.units.some((row) => row.kind === kind))

/** Charts of the block's own kinds; no page where it has none. */
export function ownCharts(job: PrintJob): void {
  const used = usedIn(job)
  if (used.length > 0) charts(job, used)
}

/** The same; for a block that has none of these kinds, all of them. */
export function allCharts(job: PrintJob): void {
  const used = usedIn(job)
  charts(job, used.length > 0 ? used : Object.keys(KIND_CHARTS))
}

function charts(job: PrintJob, kinds: readonly string[]): void {
  const { pages, report, unit } = job
  pages.newPage()
  chapter(pages, 'Size chart', 0)
  pages.paragraph(
    `All sizes in ${unit === 'in' ? 'inches' : 'centimetres'}, for a seam allowance of ${sayExact(report.measure.seam, unit)}. Cut sizes are rounded up to what a ruler shows; trim after sewing.`,
    STYLES.body,
  )
  for (const kind of kinds) chartTable(job, kind)
}

function chartTable(job: PrintJob, kind: string): void {
  const { pages, report, block, unit } = job
  const [from, to, step] = RANGE[unit]
  const asked = { unit, seam: seamOf(block), from: rational(from), to: rational(to), step: rational(step[0], step[1]) }
  const own = new Set(report.units.filter((row) => row.kind === kind).map(({ finished }) => finished.join(' ')))
  const charts = (KIND_CHARTS[kind] as readonly ChartKind[]).map((one) =>
    withOwnSizes(sizeChart({ kind: one, ...asked }), own, ownWidths(job, kind), asked),
  )
  const [first] = charts as [SizeChart, ...SizeChart[]]
  const marked = new Set(first.rows.flatMap(({ finished }, at) => (own.has(finished.join(' ')) ? [at] : [])))
  const method = charts.length > 1 || first.method === 'plain' ? '' : `, ${METHOD_WORDS[first.method]}`
  heading(pages, `${CHART_TITLES[first.kind]}${method}`, 60 + first.rows.length * ROW)
  table(
    pages,
    [
      { title: 'Finished', share: 1, strong: true },
      { title: 'Trim to', share: 1 },
      ...charts.flatMap((chart) => columnsOf(chart, charts.length > 1)),
    ],
    first.rows.map(({ finished, unfinished }, at) => [
      sides(finished, unit),
      sides(unfinished, unit),
      ...charts.flatMap(({ rows }) => rows[at]?.pieces.map(({ size }) => length(size, unit)) ?? []),
    ]),
    { marked, style: STYLES.chart, air: 2 },
  )
  pages.top += 3
  if (marked.size > 0) pages.paragraph('Shaded: the size in this block.', STYLES.small, { after: 2 })
}

/** Widths of the block's own units of a kind, as fractions of the measure's unit: the longer side of a goose. */
function ownWidths({ block }: PrintJob, kind: string): Rational[] {
  const cell = cellOf(block)
  return block.units.flatMap((unit) => {
    if (unit.kind !== kind || unit.kind === 'polygon') return []
    const sides = unit.size.flatMap((side) => parseRational(side) ?? []).map((side) => multiply(side, cell))
    return sides.sort((a, b) => compare(b, a)).slice(0, 1)
  })
}

/** A chart with the sizes of the block's own units among its rows, where the chart has none of them. */
function withOwnSizes(
  chart: SizeChart,
  own: ReadonlySet<string>,
  widths: readonly Rational[],
  asked: Omit<Parameters<typeof sizeChart>[0], 'kind'>,
): SizeChart {
  const rows = new Map(chart.rows.map((row) => [row.finished.join(' '), row]))
  for (const width of widths) {
    const [row] = sizeChart({ ...asked, kind: chart.kind, from: width, to: width }).rows
    // A goose that isn't twice as wide as high has no row in the chart.
    if (row !== undefined && own.has(row.finished.join(' '))) rows.set(row.finished.join(' '), row)
  }
  return { ...chart, rows: [...rows.values()].sort((a, b) => a.finished[0] - b.finished[0]) }
}

/** Points from one row to the next. */
const ROW = STYLES.chart.lead + 4

const columnsOf = ({ rows, method }: SizeChart, several: boolean): TableColumn[] =>
  (rows[0]?.pieces ?? []).map(({ piece }) => {
    const name = inEnglish(message('chart-piece', { piece }))
    return { title: several ? `${capital(METHOD_WORDS[method])}: ${name}` : `Cut ${name}`, share: 1 }
  })

const length = (size: number, unit: MeasureUnit): string => `${isOnRuler(size, unit) ? '' : 'about '}${sayLength(size, unit)}`

const sides = ([width, height]: readonly [number, number], unit: MeasureUnit): string =>
  width === height ? length(width, unit) : `${length(width, unit)} × ${length(height, unit)}`
