/**
 * A table on a page: a head, thin rules, words that wrap inside their columns; a row is never torn, and the head stands again on a new page.
 */
import { INK, STYLES, type Style } from './pageStyle.ts'
import type { PageWriter } from './pageWriter.ts'

export interface TableColumn {
  readonly title: string
  /** A share of the table's width. */
  readonly share: number
  readonly align?: 'left' | 'right'
  readonly strong?: boolean
}

const GAP = 12

interface TableLook {
  /** Rows to be seen first. */
  readonly marked?: ReadonlySet<number>
  readonly style?: Style
  /** Above and below the words of a row. */
  readonly air?: number
}

export function table(
  pages: PageWriter,
  columns: readonly TableColumn[],
  rows: readonly (readonly string[])[],
  { marked, style = STYLES.body, air = 4 }: TableLook = {},
): void {
  const shares = columns.reduce((sum, { share }) => sum + share, 0)
  const widths = columns.map(({ share }) => ((pages.width - GAP * (columns.length - 1)) * share) / shares)
  const lefts = widths.map((_, at) => pages.left + widths.slice(0, at).reduce((sum, width) => sum + width + GAP, 0))
  const styleOf = (column: TableColumn): Style => (column.strong ? { ...style, face: 'strong' } : style)
  const cells = (words: readonly string[], styles: readonly Style[]): string[][] =>
    words.map((text, at) => pages.breakLines(text, styles[at] as Style, widths[at]))
  const heads = columns.map(() => STYLES.label)
  const headLines = cells(
    columns.map(({ title }) => title),
    heads,
  )
  const headHeight = heightOf(headLines, heads) + air
  const bodies = columns.map(styleOf)

  const row = (lines: readonly string[][], styles: readonly Style[], tag: 'TH' | 'TD'): void => {
    const { top } = pages
    pages.group('TR', () => {
      lines.forEach((cell, at) => {
        pages.tagged(tag, () => put(cell, at, styles[at] as Style, top), tag === 'TH' ? { scope: 'Column' } : {})
      })
    })
  }
  const put = (cell: readonly string[], at: number, style: Style, top: number): void => {
    const column = columns[at] as TableColumn
    cell.forEach((line, place) => {
      const short = column.align === 'right' ? (widths[at] as number) - pages.measure(style)(line.trimEnd()) : 0
      pages.textBlock([line], style, (lefts[at] as number) + short, top + place * style.lead)
    })
  }
  const head = (): void => {
    row(headLines, heads, 'TH')
    pages.top += headHeight
    pages.rule(pages.left, pages.top - air / 2, pages.width, INK.soft, 0.8)
  }

  pages.group('Table', () => {
    rows.forEach((words, place) => {
      const lines = cells(words, bodies)
      const height = heightOf(lines, bodies) + 2 * air
      const before = pages.pageCount
      pages.ensureRoom(height + (place === 0 ? headHeight : 0))
      if (place === 0 || pages.pageCount !== before) head()
      if (marked?.has(place)) pages.panel(pages.left - 5, pages.top, pages.width + 10, height, INK.wash)
      pages.top += air
      row(lines, bodies, 'TD')
      pages.top += height - air
      pages.rule(pages.left, pages.top, pages.width)
    })
  })
}

const heightOf = (cells: readonly (readonly string[])[], styles: readonly Style[]): number =>
  Math.max(...cells.map((lines, at) => lines.length * (styles[at] as Style).lead))
