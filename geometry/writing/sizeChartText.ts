/**
 * A size chart as text and as a table.
 *
 * In      a chart made by the cutting room.
 * Out     columns for people, sizes as a ruler shows them; or comma-separated numbers with the exact sizes.
 */
import type { ChartKind, ChartRow, SizeChart } from '../cutting/sizes/sizeChart.ts'
import { isOnRuler, sayLength } from '../exact/lengths.ts'
import { csv } from './csv.ts'
import { message } from '../values/messages.ts'
import { inEnglish } from '../words/english.ts'
import { METHOD_WORDS } from '../words/englishPhrases.ts'
import { sayExact } from './phrases.ts'

export const CHART_TITLES: Readonly<Record<ChartKind, string>> = {
  geese: 'Flying geese',
  hst: 'Half-square triangles',
  hst4: 'Half-square triangles',
  hst8: 'Half-square triangles',
  hourglass: 'Hourglasses',
  diamond: 'Squares in squares',
  setting: 'Setting triangles of blocks on point',
}

/** A size chart in columns for people. */
export function chartText(chart: SizeChart): string {
  const { unit, rows } = chart
  const head = ['finished', 'trim to', ...pieceNames(rows)]
  const table = [
    head,
    ...rows.map((row) => [sides(row.finished, unit), sides(row.unfinished, unit), ...row.pieces.map(({ size }) => length(size, unit))]),
  ]
  const widths = head.map((_, column) => Math.max(...table.map((row) => (row[column] ?? '').length)))
  const lines = table.map((row) =>
    row
      .map((cell, column) => cell.padEnd(widths[column] ?? 0))
      .join('   ')
      .trimEnd(),
  )
  const method = chart.method === 'plain' ? '' : `, ${METHOD_WORDS[chart.method]}`
  const larger = chart.oversize === 0 ? '' : `, squares cut ${sayExact(chart.oversize, unit)} larger for trimming`
  const title = `${CHART_TITLES[chart.kind]}${method}, seam allowance ${sayExact(chart.seam, unit)}${larger}; all sizes in ${unit === 'in' ? 'inches' : 'centimetres'}`
  const note = table.some((row) => row.some((cell) => cell.startsWith('~')))
    ? ['', `~ rounded to the nearest ${unit === 'in' ? '1/16 in' : '0.1 cm'}`]
    : []
  return `${[title, '', ...lines, ...note].join('\n')}\n`
}

/** A size chart as comma-separated text with the exact sizes. */
export function chartCsv({ unit, rows }: SizeChart): string {
  const head = ['finished_width', 'finished_height', 'unfinished_width', 'unfinished_height', ...pieceNames(rows), 'measure']
  return csv([head, ...rows.map((row) => [...row.finished, ...row.unfinished, ...row.pieces.map(({ size }) => size), unit])])
}

const pieceNames = (rows: readonly ChartRow[]): string[] => rows[0]?.pieces.map(({ piece }) => inEnglish(message('chart-piece', { piece }))) ?? []

const length = (size: number, unit: SizeChart['unit']): string => `${isOnRuler(size, unit) ? '' : '~'}${sayLength(size, unit)}`

const sides = ([width, height]: ChartRow['finished'], unit: SizeChart['unit']): string =>
  width === height ? length(width, unit) : `${length(width, unit)} × ${length(height, unit)}`
