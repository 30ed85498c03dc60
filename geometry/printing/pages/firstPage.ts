/** The first page: the block's name and maker, what must be put right first, the picture, its sizes and its fabrics. */
import { boxAt } from '../../writing/booklet/sketch.ts'
import { ERRORS } from '../../values/report.ts'
import type { BookletFabric } from '../../writing/booklet/values.ts'
import { placedErrors } from '../../writing/booklet/notes.ts'
import { lay } from '../fabricFill.ts'
import { INK, STYLES } from '../pageStyle.ts'
import type { Job } from '../printJob.ts'
import { polygon } from '../pen.ts'
import { heading } from '../titles.ts'

export function firstPage(job: Job): void {
  const { sheets, booklet } = job
  sheets.newSheet()
  sheets.bookmark(booklet.title)
  title(job)
  problems(job)
  if (booklet.introduction !== '') sheets.write(booklet.introduction, STYLES.lead, { after: 10 })
  front(job)
  fabrics(job)
  notes(job)
  sheets.skip(16)
  sheets.contents()
}

function title({ sheets, booklet }: Job): void {
  sheets.panel(sheets.left, sheets.top, 46, 3, INK.accent)
  sheets.top += 14
  const style = sheets.lines(booklet.title, STYLES.cover).length > 3 ? STYLES.title : STYLES.cover
  sheets.write(booklet.title, style, { tag: 'H1', after: booklet.by === '' ? 12 : 2 })
  if (booklet.by !== '') sheets.write(`by ${booklet.by}`, { ...STYLES.lead, colour: INK.accent }, { after: 12 })
}

/** What keeps the block from being sewn is said before all else. */
function problems({ sheets, report, booklet }: Job): void {
  const errors = report.problems.filter(({ code }) => ERRORS.has(code))
  if (errors.length === 0) return
  const words = placedErrors(errors)
  const told = words.slice(0, MOST_TOLD)
  const rest = words.length - told.length
  const inner = sheets.width - 24
  const head = sheets.lines(booklet.problems[0] ?? '', STYLES.strong, inner)
  const lines = [...told, ...(rest > 0 ? [`and ${rest} more, which the app shows on the board.`] : [])].map((line) =>
    sheets.lines(`– ${line}`, STYLES.body, inner),
  )
  const height = 22 + head.length * STYLES.strong.lead + lines.flat().length * STYLES.body.lead
  sheets.need(height)
  const top = sheets.top
  sheets.panel(sheets.left, top, sheets.width, height, '#fdf0ef', INK.trouble)
  let y = top + 10
  sheets.tagged('H2', () => sheets.block(head, { ...STYLES.strong, colour: INK.trouble }, sheets.left + 12, y))
  y += head.length * STYLES.strong.lead + 2
  for (const one of lines) {
    sheets.tagged('P', () => sheets.block(one, STYLES.body, sheets.left + 12, y))
    y += one.length * STYLES.body.lead
  }
  sheets.top = top + height + 14
}

const MOST_TOLD = 6
/** Of the width, for the picture. */
const PICTURE = 0.62
const TALLEST = 340

function front({ sheets, booklet, cloth }: Job): void {
  const { front: drawing, facts } = booklet
  const wide = sheets.width * PICTURE
  const scale = Math.min(wide / Math.max(drawing.width, 1e-6), TALLEST / Math.max(drawing.height, 1e-6))
  const [width, height] = drawing.marks.length === 0 ? [0, 0] : [drawing.width * scale, drawing.height * scale]
  const factsLeft = sheets.left + wide + 26
  const factsWidth = sheets.width - wide - 26
  const said = facts.map(({ what, said }) => ({
    what: sheets.lines(what, STYLES.label, factsWidth),
    said: sheets.lines(said, STYLES.strong, factsWidth),
  }))
  const tall = said.reduce((sum, fact) => sum + factHeight(fact), 0)
  sheets.need(Math.max(height, tall))
  const { top } = sheets
  if (width > 0 && height > 0) sheets.picture(drawing, [sheets.left + (wide - width) / 2, top], scale, cloth)
  let y = top
  for (const fact of said) {
    sheets.rule(factsLeft, y, factsWidth)
    sheets.tagged('P', () => {
      sheets.block(spaced(fact.what), STYLES.label, factsLeft, y + 5)
      sheets.block(fact.said, STYLES.strong, factsLeft, y + 5 + fact.what.length * STYLES.label.lead)
    })
    y += factHeight(fact)
  }
  sheets.top = Math.max(top + height, y) + 8
}

/** More words follow: a space for who has them read aloud. */
const spaced = (lines: readonly string[]): string[] => lines.map((line) => `${line.trimEnd()} `)

const factHeight = ({ what, said }: { readonly what: readonly string[]; readonly said: readonly string[] }): number =>
  what.length * STYLES.label.lead + said.length * STYLES.strong.lead + 12

const SWATCH = 26

function fabrics(job: Job): void {
  const { sheets, booklet } = job
  if (booklet.fabrics.length === 0) return
  heading(sheets, booklet.fabrics.some(({ buy }) => buy !== '') ? 'Fabrics, and how much to buy' : 'Fabrics', 60)
  sheets.top += 4
  const columns = columnsFor(job)
  const width = cellWidth(job, columns)
  for (let first = 0; first < booklet.fabrics.length; first += columns) {
    const row = booklet.fabrics.slice(first, first + columns)
    const names = row.map(({ name }) => sheets.lines(name, STYLES.strong, width - SWATCH - 9))
    const height =
      Math.max(SWATCH, ...names.map((lines, at) => lines.length * STYLES.strong.lead + (row[at]?.buy === '' ? 0 : STYLES.small.lead))) + 10
    sheets.need(height)
    for (const [at, fabric] of row.entries()) fabricCell(job, fabric, names[at] as string[], sheets.left + at * (width + 16))
    sheets.top += height
  }
}

const cellWidth = ({ sheets }: Job, columns: number): number => (sheets.width - (columns - 1) * 16) / columns

/** Three; four where that leaves no fabric alone in its row, and every name stays on one line. */
function columnsFor(job: Job): 3 | 4 {
  const { sheets, booklet } = job
  const fit = booklet.fabrics.every(({ name }) => sheets.lines(name, STYLES.strong, cellWidth(job, 4) - SWATCH - 9).length === 1)
  return booklet.fabrics.length % 3 === 1 && fit ? 4 : 3
}

function fabricCell({ sheets, cloth, unit }: Job, { id, name, buy }: BookletFabric, lines: readonly string[], x: number): void {
  const { top } = sheets
  swatch({ sheets, cloth, unit }, id, x, top, SWATCH)
  sheets.tagged('P', () => {
    sheets.block(spaced(name === '' ? ['(no name)'] : lines), STYLES.strong, x + SWATCH + 9, top)
    if (buy !== '') sheets.block([`buy ${buy}`], STYLES.small, x + SWATCH + 9, top + Math.max(1, lines.length) * STYLES.strong.lead)
  })
}

/** A little square of a cloth. */
export function swatch({ sheets, cloth }: Pick<Job, 'sheets' | 'cloth' | 'unit'>, fabric: string, x: number, y: number, side: number): void {
  const shown = cloth(fabric)
  sheets.ornament(() => {
    const surface = sheets.surface()
    const corners = boxAt(x, y, side, side)
    lay(surface, corners, shown, 'right', side / 1.5, [x, y])
    surface.path(polygon(corners), { line: { colour: '#3c312b', width: 0.6 } })
  })
}

/** What is good to know, and keeps nobody from sewing. */
function notes({ sheets, report, booklet }: Job): void {
  const errors = new Set(placedErrors(report.problems.filter(({ code }) => ERRORS.has(code))))
  const known = [...new Set(booklet.problems)].slice(errors.size === 0 ? 0 : 1).filter((message) => !errors.has(message))
  if (known.length === 0) return
  heading(sheets, 'Good to know')
  for (const message of known) sheets.write(message, STYLES.body, { after: 3 })
}
