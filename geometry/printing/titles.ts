/** Titles of the pages: a rule in the accent colour, the words, a bookmark; never alone at a page's foot. */
import { INK, STYLES } from './pageStyle.ts'
import type { PdfOutline } from './pdfLibrary.ts'
import type { PageWriter } from './pageWriter.ts'

/** The title of a chapter; it begins a page where less than `room` is left on this one. */
export function chapter(pages: PageWriter, title: string, room = 260): PdfOutline {
  const lines = pages.breakLines(title, STYLES.title)
  pages.gap(26)
  pages.ensureRoom(Math.max(room, 16 + lines.length * STYLES.title.lead))
  const top = pages.top
  pages.rule(pages.left, top, 34, INK.accent, 2.4)
  pages.tagged('H1', () => pages.textBlock(lines, STYLES.title, pages.left, top + 8))
  pages.top = top + 8 + lines.length * STYLES.title.lead + 8
  pages.addToContents(title, top)
  return pages.bookmark(title)
}

/** A heading with at least so much room under it. */
export function heading(pages: PageWriter, title: string, room = 48): void {
  const lines = pages.breakLines(title, STYLES.heading)
  pages.gap(12)
  pages.ensureRoom(lines.length * STYLES.heading.lead + room)
  const top = pages.top
  pages.tagged('H2', () => pages.textBlock(lines, STYLES.heading, pages.left, top))
  pages.top = top + lines.length * STYLES.heading.lead + 3
}
