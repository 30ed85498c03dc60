/**
 * A table on a sheet: a head, thin rules, words that wrap inside their columns; a row is never torn, and the head stands again on a new sheet.
 */
import { INK, STYLES, type Style } from './pageStyle.ts'
import type { Sheets } from './sheets.ts'

export interface Column {
  readonly title: string
  /** A share of the table's width. */
  readonly share: number
  readonly align?: 'left' | 'right'
  readonly strong?: boolean
}

const GAP = 12

export interface TableLook {
  /** Rows to be seen first. */
  readonly marked?: ReadonlySet<number>
  readonly style?: Style
  /** Above and below the words of a row. */
  readonly air?: number
}

export function table(
  sheets: Sheets,
  columns: readonly Column[],
  rows: readonly (readonly string[])[],
  { marked, style = STYLES.body, air = 4 }: TableLook = {},
): void {
  const shares = columns.reduce((sum, { share }) => sum + share, 0)
  const widths = columns.map(({ share }) => ((sheets.width - GAP * (columns.length - 1)) * share) / shares)
  const lefts = widths.map((_, at) => sheets.left + widths.slice(0, at).reduce((sum, width) => sum + width + GAP, 0))
  const styleOf = (column: Column): Style => (column.strong ? { ...style, face: 'strong' } : style)
  const cells = (words: readonly string[], styles: readonly Style[]): string[][] =>
    words.map((text, at) => sheets.lines(text, styles[at] as Style, widths[at]))
  const heads = columns.map(() => STYLES.label)
  const headLines = cells(
    columns.map(({ title }) => title),
    heads,
  )
  const headHeight = heightOf(headLines, heads) + air
  const bodies = columns.map(styleOf)

  const row = (lines: readonly string[][], styles: readonly Style[], tag: 'TH' | 'TD'): void => {
    const { top } = sheets
    sheets.group('TR', () => {
      lines.forEach((cell, at) => {
        sheets.tagged(tag, () => put(cell, at, styles[at] as Style, top), tag === 'TH' ? { scope: 'Column' } : {})
      })
    })
  }
  const put = (cell: readonly string[], at: number, style: Style, top: number): void => {
    const column = columns[at] as Column
    cell.forEach((line, place) => {
      const short = column.align === 'right' ? (widths[at] as number) - sheets.measure(style)(line.trimEnd()) : 0
      sheets.block([line], style, (lefts[at] as number) + short, top + place * style.lead)
    })
  }
  const head = (): void => {
    row(headLines, heads, 'TH')
    sheets.top += headHeight
    sheets.rule(sheets.left, sheets.top - air / 2, sheets.width, INK.soft, 0.8)
  }

  sheets.group('Table', () => {
    rows.forEach((words, place) => {
      const lines = cells(words, bodies)
      const height = heightOf(lines, bodies) + 2 * air
      const before = sheets.sheets
      sheets.need(height + (place === 0 ? headHeight : 0))
      if (place === 0 || sheets.sheets !== before) head()
      if (marked?.has(place)) sheets.panel(sheets.left - 5, sheets.top, sheets.width + 10, height, INK.wash)
      sheets.top += air
      row(lines, bodies, 'TD')
      sheets.top += height - air
      sheets.rule(sheets.left, sheets.top, sheets.width)
    })
  })
}

const heightOf = (cells: readonly (readonly string[])[], styles: readonly Style[]): number =>
  Math.max(...cells.map((lines, at) => lines.length * (styles[at] as Style).lead))
