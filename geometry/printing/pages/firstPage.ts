/** The first page: the block's name and maker, what must be put right first, the picture, its sizes and its fabrics. */
import { boxAt } from '../../writing/booklet/sketch.ts'
import { ERRORS } from '../../values/report.ts'
import type { Booklet, BookletFabric } from '../../writing/booklet/values.ts'
import { placedErrors } from '../../writing/booklet/notes.ts'
import { paintFabric } from '../fabricFill.ts'
import { INK, STYLES } from '../pageStyle.ts'
import type { PrintJob } from '../printJob.ts'
import { polygon } from '../pen.ts'
import { heading } from '../titles.ts'

export function firstPage(job: PrintJob): void {
  const { pages, booklet } = job
  pages.newPage()
  pages.bookmark(booklet.title)
  title(job)
  problems(job)
  if (booklet.introduction !== '') pages.paragraph(booklet.introduction, STYLES.lead, { after: 10 })
  front(job, TALLEST, booklet.facts)
  fabricCells(job)
  notes(job)
  pages.gap(16)
  pages.reserveContents()
}

/** The booklet's title and who it is by. */
export function title({ pages, booklet, say }: PrintJob): void {
  pages.panel(pages.left, pages.top, 46, 3, INK.accent)
  pages.top += 14
  const style = pages.breakLines(booklet.title, STYLES.cover).length > 3 ? STYLES.title : STYLES.cover
  pages.paragraph(booklet.title, style, { tag: 'H1', after: booklet.by === '' ? 12 : 2 })
  if (booklet.by !== '') pages.paragraph(say.pages.by(booklet.by), { ...STYLES.lead, colour: INK.accent }, { after: 12 })
}

/** What keeps the block from being sewn is said before all else. */
export function problems({ pages, report, booklet, say }: PrintJob): void {
  const errors = report.problems.filter(({ code }) => ERRORS.has(code))
  if (errors.length === 0) return
  const words = placedErrors(errors, say)
  const told = words.slice(0, MOST_TOLD)
  const rest = words.length - told.length
  const inner = pages.width - 24
  const head = pages.breakLines(booklet.problems[0] ?? '', STYLES.strong, inner)
  const lines = [...told, ...(rest > 0 ? [say.pages.moreProblems(rest)] : [])].map((line) => pages.breakLines(`– ${line}`, STYLES.body, inner))
  const height = 22 + head.length * STYLES.strong.lead + lines.flat().length * STYLES.body.lead
  pages.ensureRoom(height)
  const top = pages.top
  pages.panel(pages.left, top, pages.width, height, '#fdf0ef', INK.trouble)
  let y = top + 10
  pages.tagged('H2', () => pages.textBlock(head, { ...STYLES.strong, colour: INK.trouble }, pages.left + 12, y))
  y += head.length * STYLES.strong.lead + 2
  for (const one of lines) {
    pages.tagged('P', () => pages.textBlock(one, STYLES.body, pages.left + 12, y))
    y += one.length * STYLES.body.lead
  }
  pages.top = top + height + 14
}

const MOST_TOLD = 6
/** Of the width, for the picture. */
const PICTURE = 0.62
const TALLEST = 340

/** The finished block with some facts beside it, and the fabrics where they are few; `tallest` is how high the picture may be, in points. */
export function front(job: PrintJob, tallest: number, facts: Booklet['facts'], withFabrics = false): void {
  const { pages, booklet, fabricFill } = job
  const { front: drawing } = booklet
  const wide = pages.width * PICTURE
  const scale = Math.min(wide / Math.max(drawing.width, 1e-6), tallest / Math.max(drawing.height, 1e-6))
  const [width, height] = drawing.marks.length === 0 ? [0, 0] : [drawing.width * scale, drawing.height * scale]
  const factsLeft = pages.left + wide + 26
  const factsWidth = pages.width - wide - 26
  const said = facts.map(({ what, said }) => ({
    what: pages.breakLines(what, STYLES.label, factsWidth),
    said: pages.breakLines(said, STYLES.strong, factsWidth),
  }))
  const tall = said.reduce((sum, fact) => sum + factHeight(fact), 0)
  pages.ensureRoom(Math.max(height, tall + (withFabrics ? booklet.fabrics.length * CELL : 0)))
  const { top } = pages
  if (width > 0 && height > 0) pages.picture(drawing, [pages.left + (wide - width) / 2, top], scale, fabricFill)
  let y = top
  for (const fact of said) {
    pages.rule(factsLeft, y, factsWidth)
    pages.tagged('P', () => {
      pages.textBlock(spaced(fact.what), STYLES.label, factsLeft, y + 5)
      pages.textBlock(fact.said, STYLES.strong, factsLeft, y + 5 + fact.what.length * STYLES.label.lead)
    })
    y += factHeight(fact)
  }
  if (withFabrics)
    for (const fabric of booklet.fabrics) {
      fabricCell(job, fabric, pages.breakLines(fabric.name, STYLES.strong, factsWidth - SWATCH - 9), factsLeft, y + 4)
      y += CELL
    }
  pages.top = Math.max(top + height, y) + 8
}

/** More words follow: a space for who has them read aloud. */
const spaced = (lines: readonly string[]): string[] => lines.map((line) => `${line.trimEnd()} `)

const factHeight = ({ what, said }: { readonly what: readonly string[]; readonly said: readonly string[] }): number =>
  what.length * STYLES.label.lead + said.length * STYLES.strong.lead + 12

const SWATCH = 26
/** A fabric under the facts. */
const CELL = 33

/** Each fabric with how much of it to buy. */
export function fabricCells(job: PrintJob): void {
  const { pages, booklet, say } = job
  if (booklet.fabrics.length === 0) return
  heading(pages, booklet.fabrics.some(({ buy }) => buy !== '') ? say.pages.fabricsToBuy : say.pages.fabrics, 60)
  pages.top += 4
  const columns = columnsFor(job)
  const width = cellWidth(job, columns)
  for (let first = 0; first < booklet.fabrics.length; first += columns) {
    const row = booklet.fabrics.slice(first, first + columns)
    const names = row.map(({ name }) => pages.breakLines(name, STYLES.strong, width - SWATCH - 9))
    const height =
      Math.max(SWATCH, ...names.map((lines, at) => lines.length * STYLES.strong.lead + (row[at]?.buy === '' ? 0 : STYLES.small.lead))) + 10
    pages.ensureRoom(height)
    for (const [at, fabric] of row.entries()) fabricCell(job, fabric, names[at] as string[], pages.left + at * (width + 16))
    pages.top += height
  }
}

const cellWidth = ({ pages }: PrintJob, columns: number): number => (pages.width - (columns - 1) * 16) / columns

/** Three; four where that leaves no fabric alone in its row, and every name stays on one line. */
function columnsFor(job: PrintJob): 3 | 4 {
  const { pages, booklet } = job
  const fit = booklet.fabrics.every(({ name }) => pages.breakLines(name, STYLES.strong, cellWidth(job, 4) - SWATCH - 9).length === 1)
  return booklet.fabrics.length % 3 === 1 && fit ? 4 : 3
}

function fabricCell(
  { pages, fabricFill, say }: PrintJob,
  { id, name, buy }: BookletFabric,
  lines: readonly string[],
  x: number,
  top = pages.top,
): void {
  swatch({ pages, fabricFill }, id, x, top, SWATCH)
  pages.tagged('P', () => {
    pages.textBlock(spaced(name === '' ? [say.pages.noName] : lines), STYLES.strong, x + SWATCH + 9, top)
    if (buy !== '') pages.textBlock([say.pages.buy(buy)], STYLES.small, x + SWATCH + 9, top + Math.max(1, lines.length) * STYLES.strong.lead)
  })
}

/** A little square of a cloth. */
export function swatch({ pages, fabricFill }: Pick<PrintJob, 'pages' | 'fabricFill'>, fabric: string, x: number, y: number, side: number): void {
  const shown = fabricFill(fabric)
  pages.ornament(() => {
    const surface = pages.surface()
    const corners = boxAt(x, y, side, side)
    paintFabric(surface, corners, shown, 'right', side / 1.5, [x, y])
    surface.path(polygon(corners), { line: { colour: '#3c312b', width: 0.6 } })
  })
}

/** What is good to know, and keeps nobody from sewing. */
export function notes({ pages, report, booklet, say }: PrintJob): void {
  const errors = new Set(
    placedErrors(
      report.problems.filter(({ code }) => ERRORS.has(code)),
      say,
    ),
  )
  const known = [...new Set(booklet.problems)].slice(errors.size === 0 ? 0 : 1).filter((message) => !errors.has(message))
  if (known.length === 0) return
  heading(pages, say.pages.goodToKnow)
  for (const message of known) pages.paragraph(message, STYLES.body, { after: 3 })
}
