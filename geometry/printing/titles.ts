/** Titles of the pages: a rule in the accent colour, the words, a bookmark; never alone at a page's foot. */
import { INK, STYLES } from './pageStyle.ts'
import type { PdfOutline } from './pdfLibrary.ts'
import type { Sheets } from './sheets.ts'

/** The title of a chapter; it begins a sheet where less than `room` is left on this one. */
export function chapter(sheets: Sheets, title: string, room = 260): PdfOutline {
  const lines = sheets.lines(title, STYLES.title)
  sheets.skip(26)
  sheets.need(Math.max(room, 16 + lines.length * STYLES.title.lead))
  const top = sheets.top
  sheets.rule(sheets.left, top, 34, INK.accent, 2.4)
  sheets.tagged('H1', () => sheets.block(lines, STYLES.title, sheets.left, top + 8))
  sheets.top = top + 8 + lines.length * STYLES.title.lead + 8
  sheets.listed(title)
  return sheets.bookmark(title)
}

/** A heading with at least so much room under it. */
export function heading(sheets: Sheets, title: string, room = 48): void {
  const lines = sheets.lines(title, STYLES.heading)
  sheets.skip(12)
  sheets.need(lines.length * STYLES.heading.lead + room)
  const top = sheets.top
  sheets.tagged('H2', () => sheets.block(lines, STYLES.heading, sheets.left, top))
  sheets.top = top + lines.length * STYLES.heading.lead + 3
}
