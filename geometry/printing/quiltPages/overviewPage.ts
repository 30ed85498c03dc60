/** The first page of a quilt's booklet: its name, what must be put right, the picture with numbered positions, sizes, fabrics, what is in the booklet. */
import { STYLES } from '../pageStyle.ts'
import { swatch } from '../pages/firstPage.ts'
import { heading } from '../titles.ts'
import type { QuiltJob } from './quiltJob.ts'

export function overviewPage(job: QuiltJob): void {
  const { pages, booklet } = job
  pages.newPage()
  pages.bookmark(booklet.title)
  pages.paragraph(booklet.title, STYLES.cover, { tag: 'H1', after: 2 })
  if (booklet.part !== null) pages.paragraph(`Part ${booklet.part.number} of ${booklet.part.of}: ${booklet.part.title}`, STYLES.lead, { after: 6 })
  for (const problem of booklet.problems) pages.paragraph(problem, STYLES.strong, { after: 3 })
  pages.paragraph(booklet.introduction, STYLES.lead, { after: 8 })
  front(job)
  fabrics(job)
  pages.gap(14)
  pages.reserveContents()
}

/** Of the width, for the picture; and the tallest it may be. */
const PICTURE = 0.6
const TALLEST = 330

function front({ pages, booklet, fabricFill }: QuiltJob): void {
  const { front: drawing, facts } = booklet
  const wide = pages.width * PICTURE
  const scale = Math.min(wide / drawing.width, TALLEST / drawing.height)
  const left = pages.left + wide + 22
  const room = pages.width - wide - 22
  const said = facts.map(({ what, said: words }) => ({
    what: pages.breakLines(what, STYLES.label, room),
    words: pages.breakLines(words, STYLES.strong, room),
  }))
  const heightOf = ({ what, words }: (typeof said)[number]): number => what.length * STYLES.label.lead + words.length * STYLES.strong.lead + 7
  pages.ensureRoom(
    Math.max(
      drawing.height * scale,
      said.reduce((sum, fact) => sum + heightOf(fact), 0),
    ),
  )
  const { top } = pages
  pages.picture(drawing, [pages.left + (wide - drawing.width * scale) / 2, top], scale, fabricFill)
  let y = top
  for (const fact of said) {
    pages.tagged('P', () => {
      pages.textBlock(
        fact.what.map((line) => `${line.trimEnd()} `),
        STYLES.label,
        left,
        y,
      )
      pages.textBlock(fact.words, STYLES.strong, left, y + fact.what.length * STYLES.label.lead)
    })
    y += heightOf(fact)
  }
  pages.top = Math.max(top + drawing.height * scale, y) + 8
}

const SWATCH = 22
const COLUMNS = 3

function fabrics({ pages, booklet, fabricFill }: QuiltJob): void {
  if (booklet.fabrics.length === 0) return
  heading(pages, booklet.part === null ? 'Fabrics, and how much to buy' : 'Fabrics for this part', 50)
  pages.top += 4
  const width = (pages.width - (COLUMNS - 1) * 14) / COLUMNS
  for (let first = 0; first < booklet.fabrics.length; first += COLUMNS) {
    const row = booklet.fabrics.slice(first, first + COLUMNS)
    const names = row.map(({ name }) => pages.breakLines(name, STYLES.strong, width - SWATCH - 8))
    const height = Math.max(SWATCH, ...names.map((lines) => lines.length * STYLES.strong.lead + STYLES.small.lead)) + 8
    pages.ensureRoom(height)
    const { top } = pages
    row.forEach(({ id, buy }, at) => {
      const x = pages.left + at * (width + 14)
      const lines = names[at] as string[]
      swatch({ pages, fabricFill }, id, x, top, SWATCH)
      pages.tagged('P', () => {
        pages.textBlock(
          lines.map((line) => `${line.trimEnd()} `),
          STYLES.strong,
          x + SWATCH + 8,
          top,
        )
        pages.textBlock([buy], STYLES.small, x + SWATCH + 8, top + lines.length * STYLES.strong.lead)
      })
    })
    pages.top += height
  }
}
