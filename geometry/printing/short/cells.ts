/**
 * Steps as pictures with their words under them, two abreast.
 *
 * In      steps with their actions.
 * Out     cells on the pages: a row of them is never torn; a step's title stays with its first row. A picture is at least 60 mm wide, unless it
 *         would be taller than a third of a page.
 */
import { wordsOf } from '../../writing/booklet/booklet.ts'
import type { BookletStep, Drawing } from '../../writing/booklet/values.ts'
import { photographOf } from '../dataUrl.ts'
import { drawPicture } from '../drawPicture.ts'
import { INK, STYLES } from '../pageStyle.ts'
import { polygon, round } from '../pen.ts'
import type { PrintJob } from '../printJob.ts'
import { POINTS } from '../paper.ts'

interface CellPicture {
  readonly drawing: Drawing
  readonly width: number
  readonly height: number
  readonly scale: number
}

interface Cell {
  /** Stands over the cell where a step is one cell. */
  readonly step: { readonly number: number; readonly title: string } | null
  readonly picture: CellPicture | null
  readonly sentences: readonly string[]
}

export interface StepCells {
  readonly number: number
  readonly step: BookletStep
  readonly cells: readonly Cell[]
}

/** Between the two columns, and between rows. */
const GAP = 20
const BETWEEN = 14
/** What a picture is at least, and how tall the usual and the tallest one are: points. */
const LEAST_WIDTH = 6 * POINTS.cm
const USUAL_HEIGHT = 176
const MOST_HEIGHT = 260
/** Letters on pictures are as large as the text. */
const LETTERS = 10

const columnWidth = ({ pages }: PrintJob): number => (pages.width - GAP) / 2

/** A picture fitted to a column. */
export function fitted(drawing: Drawing, wide: number): CellPicture {
  const usual = Math.min(wide / drawing.width, USUAL_HEIGHT / drawing.height)
  const scale = Math.max(usual, Math.min(LEAST_WIDTH / drawing.width, MOST_HEIGHT / drawing.height))
  return { drawing, scale, width: drawing.width * scale, height: drawing.height * scale }
}

/** A step's cells: one for each action, or one with all its words and its first picture. */
export function stepCells(job: PrintJob, step: BookletStep, number: number): StepCells {
  const wide = columnWidth(job)
  const shown = (drawing: Drawing | undefined): CellPicture | null => (drawing === undefined || drawing.width <= 0 ? null : fitted(drawing, wide))
  const actions = step.actions ?? [{ sentences: step.sentences, drawings: step.drawings.slice(0, 1) }]
  // The maker's own words stand in place of all of them, and the pictures after.
  const told =
    step.edited === undefined ? actions : [{ sentences: wordsOf(step), drawings: [] }, ...actions.map((one) => ({ ...one, sentences: [] }))]
  const cells = told.flatMap(({ sentences, drawings }): Cell[] =>
    drawings.length === 0
      ? [{ step: null, picture: null, sentences }]
      : drawings.map((drawing, at) => ({ step: null, picture: shown(drawing), sentences: at === 0 ? sentences : [] })),
  )
  const [only] = cells
  const alone = cells.length === 1 && only !== undefined && step.note === undefined && step.photograph === undefined
  return { number, step, cells: alone ? [{ ...only, step: { number, title: step.title } }] : cells }
}

/** Steps of one cell stand beside each other; any other step has its title across the page. */
export function cellsOn(job: PrintJob, steps: readonly StepCells[]): void {
  let waiting: Cell[] = []
  const put = (): void => {
    rowsOf(waiting).forEach((row) => {
      rowOn(job, row)
    })
    waiting = []
  }
  for (const { number, step, cells } of steps) {
    if (cells.length === 1 && cells[0]?.step !== null) {
      waiting.push(...cells)
      continue
    }
    put()
    stepOn(job, number, step, cells)
  }
  put()
}

function stepOn(job: PrintJob, number: number, step: BookletStep, cells: readonly Cell[]): void {
  const { pages } = job
  const rows = rowsOf(cells)
  const first = rows[0] === undefined ? 0 : rowHeight(job, rows[0])
  pages.group('Sect', () => {
    titleOn(job, number, step.title, pages.left, pages.width, first)
    for (const row of rows) rowOn(job, row)
    const { note = '' } = step
    if (note !== '') pages.paragraph(note, { ...STYLES.body, colour: INK.accent }, { after: 6 })
    photographOn(job, step)
  })
}

function photographOn({ pages }: PrintJob, { photograph, title }: BookletStep): void {
  const bytes = photograph === undefined ? null : photographOf(photograph)
  if (photograph === undefined || bytes === null) return
  const box = [pages.width / 2, USUAL_HEIGHT] as const
  const size = pages.photographSize(bytes, photograph, box)
  if (size === null) return
  pages.ensureRoom(size.height)
  pages.photograph(bytes, photograph, title, [pages.left, pages.top], box)
  pages.top += size.height + BETWEEN
}

const GUTTER = 26

/** The number in its disc, and the title beside it; so much more must follow on the page. */
export function titleOn(job: PrintJob, number: number, title: string, x: number, width: number, follows: number): void {
  const { pages } = job
  const lines = pages.breakLines(title, STYLES.heading, width - GUTTER)
  const height = lines.length * STYLES.heading.lead + 4
  pages.ensureRoom(height + follows)
  const { top } = pages
  badge(job, number, [x + 9, top + 8])
  pages.tagged('H2', () => pages.textBlock(lines, STYLES.heading, x + GUTTER, top))
  pages.bookmark(`${number}. ${title}`)
  pages.top = top + height
}

function badge({ pages }: PrintJob, number: number, [x, y]: readonly [number, number]): void {
  pages.ornament(() => pages.surface().path(polygon(round([x, y], 9.5)), { fill: INK.accent }))
  const style = { ...STYLES.strong, colour: INK.white }
  const said = String(number)
  pages.tagged('P', () => pages.textLine(said, x - pages.measure(style)(said) / 2, y + 3.5, style))
}

/** Cells with a picture go in pairs; words alone have a row to themselves. */
function rowsOf(cells: readonly Cell[]): Cell[][] {
  const rows: Cell[][] = []
  for (const cell of cells) {
    const last = rows.at(-1)
    if (cell.picture !== null && last?.length === 1 && last[0]?.picture != null) last.push(cell)
    else rows.push([cell])
  }
  return rows
}

/** Where the words of a cell stand: under its picture, or beside the only picture of a row. */
interface Laid {
  readonly title: readonly string[]
  readonly words: readonly (readonly string[])[]
  readonly head: number
  readonly wordsHeight: number
}

function laid(job: PrintJob, { step, sentences }: Cell, width: number): Laid {
  const { pages } = job
  const title = step === null ? [] : pages.breakLines(step.title, STYLES.heading, columnWidth(job) - GUTTER)
  const words = sentences.map((sentence) => pages.breakLines(sentence, STYLES.body, width))
  const wordsHeight = words.reduce((sum, lines) => sum + lines.length * STYLES.body.lead + 2, 0)
  return { title, words, head: title.length === 0 ? 0 : title.length * STYLES.heading.lead + 4, wordsHeight }
}

const isWide = (row: readonly Cell[]): boolean => row.length === 1

function heightOf(job: PrintJob, cell: Cell, alone: boolean): number {
  const { picture } = cell
  const width = alone && picture === null ? job.pages.width : columnWidth(job)
  const { head, wordsHeight } = laid(job, cell, width)
  if (picture === null) return head + wordsHeight
  return head + (alone ? Math.max(picture.height, wordsHeight) : picture.height + 4 + wordsHeight)
}

const rowHeight = (job: PrintJob, row: readonly Cell[]): number => Math.max(...row.map((cell) => heightOf(job, cell, isWide(row))))

function rowOn(job: PrintJob, row: readonly Cell[]): void {
  const { pages } = job
  const height = rowHeight(job, row)
  pages.ensureRoom(height)
  const { top } = pages
  // Pictures of one row stand on one line, their words begin at one height.
  const head = Math.max(...row.map((cell) => laid(job, cell, columnWidth(job)).head))
  const high = Math.max(...row.map(({ picture }) => picture?.height ?? 0))
  row.forEach((cell, at) => {
    const x = pages.left + at * (columnWidth(job) + GAP)
    pages.group('Sect', () => cellOn(job, cell, { x, top, head, high, alone: isWide(row) }))
  })
  pages.top = top + height + BETWEEN
}

interface Spot {
  readonly x: number
  readonly top: number
  readonly head: number
  readonly high: number
  readonly alone: boolean
}

function cellOn(job: PrintJob, cell: Cell, { x, top, head, high, alone }: Spot): void {
  const { pages } = job
  const { picture, step } = cell
  if (step !== null) {
    pages.top = top
    titleOn(job, step.number, step.title, x, columnWidth(job), 0)
  }
  if (picture !== null) pictureOn(job, picture, x + (columnWidth(job) - picture.width) / 2, top + head + (alone ? 0 : high - picture.height))
  const beside = alone && picture !== null
  const width = alone && picture === null ? pages.width : columnWidth(job)
  let y = top + head + (picture === null || beside ? 0 : high + 4)
  for (const lines of laid(job, cell, width).words) {
    pages.tagged('P', () => pages.textBlock(lines, STYLES.body, beside ? x + columnWidth(job) + GAP : x, y))
    y += lines.length * STYLES.body.lead + 2
  }
}

/** A picture whose letters are as large as the text. */
export function pictureOn({ pages, fabricFill }: PrintJob, { drawing, scale }: CellPicture, x: number, y: number): void {
  pages.figure(drawing.title, (surface) => drawPicture(surface, drawing, { at: [x, y], scale, fabricFill, leastLetters: LETTERS }))
}
