/**
 * Steps as pictures with their words under them, two or three abreast.
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
  readonly columns: Columns
}

/** Between columns, at least, and between rows. Pictures have air of their own. */
const GAP = 0.2
const BETWEEN = 6
/** Words of neighbouring columns keep apart. */
const WORDS_APART = 14
/** What a picture is at least, and how tall the usual and the tallest one are: points. */
const LEAST_WIDTH = 6 * POINTS.cm
const USUAL_HEIGHT = 176
const MOST_HEIGHT = 260
/** Letters on pictures are as large as the text. */
const LETTERS = 10

/** As many columns as pictures of the least width find room in, two where there are only two. */
type Columns = 2 | 3

const columnWidth = ({ pages }: PrintJob, columns: Columns): number => (pages.width - (columns - 1) * GAP) / columns

/** A picture fitted to a column. */
export function fitted(drawing: Drawing, wide: number): CellPicture {
  const usual = Math.min(wide / drawing.width, USUAL_HEIGHT / drawing.height)
  const scale = Math.max(usual, Math.min(LEAST_WIDTH / drawing.width, MOST_HEIGHT / drawing.height))
  return { drawing, scale, width: drawing.width * scale, height: drawing.height * scale }
}

/** A step's cells: one for each action, or one with all its words and its first picture. */
export function stepCells(job: PrintJob, step: BookletStep, number: number): StepCells {
  const pictures = step.actions?.reduce((sum, { drawings }) => sum + drawings.length, 0) ?? 1
  const columns = pictures >= 3 && columnWidth(job, 3) >= LEAST_WIDTH ? 3 : 2
  const wide = columns === 3 ? LEAST_WIDTH : columnWidth(job, 2) - WORDS_APART
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
  return { number, step, columns, cells: alone ? [{ ...only, step: { number, title: step.title } }] : cells }
}

/** Steps of one cell stand beside each other; any other step has its title across the page. */
export function cellsOn(job: PrintJob, steps: readonly StepCells[]): void {
  let waiting: Cell[] = []
  const put = (): void => {
    const columns = waiting.length >= 3 && columnWidth(job, 3) >= LEAST_WIDTH ? 3 : 2
    for (const row of rowsOf(waiting, columns)) rowOn(job, row, columns)
    waiting = []
  }
  for (const one of steps) {
    if (one.cells.length === 1 && one.cells[0]?.step !== null) {
      waiting.push(...one.cells)
      continue
    }
    put()
    stepOn(job, one)
  }
  put()
}

/** How much stands on the page together with a chapter's title: the first step, to its first pictures. */
export function roomForFirst(job: PrintJob, steps: readonly StepCells[]): number {
  const [first] = steps
  if (first === undefined) return 0
  const rows = rowsOf(first.cells, first.columns)
  return TITLE + heightToFirstPicture(job, rows, first.columns)
}

/** A step's title of one or two lines. */
const TITLE = 24

function stepOn(job: PrintJob, { number, step, cells, columns }: StepCells): void {
  const { pages } = job
  const rows = rowsOf(cells, columns)
  pages.group('Sect', () => {
    titleOn(job, number, step.title, pages.left, pages.width, heightToFirstPicture(job, rows, columns))
    for (const row of rows) rowOn(job, row, columns)
    const { note = '' } = step
    if (note !== '') pages.paragraph(note, { ...STYLES.body, colour: INK.accent }, { after: 6 })
    photographOn(job, step)
  })
}

/** Words before the first row of pictures stay with it. */
function heightToFirstPicture(job: PrintJob, rows: readonly (readonly Cell[])[], columns: Columns): number {
  const first = rows.findIndex((row) => row.some(({ picture }) => picture !== null))
  return rows.slice(0, first + 1).reduce((sum, row) => sum + rowHeight(job, row, columns), 0)
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

/** Cells with a picture go beside each other; words alone have a row to themselves. */
function rowsOf(cells: readonly Cell[], columns: Columns): Cell[][] {
  const rows: Cell[][] = []
  for (const cell of cells) {
    const last = rows.at(-1)
    if (cell.picture !== null && last !== undefined && last.length < columns && last[0]?.picture != null) last.push(cell)
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

/** How wide the words of a cell may be. */
function wordsWidth(job: PrintJob, { picture }: Cell, alone: boolean, columns: Columns): number {
  const column = columnWidth(job, columns)
  if (!alone) return column - WORDS_APART
  return picture === null ? job.pages.width : job.pages.width - column - WORDS_APART
}

function laid(job: PrintJob, cell: Cell, alone: boolean, columns: Columns): Laid {
  const { pages } = job
  const { step, sentences } = cell
  const title = step === null ? [] : pages.breakLines(step.title, STYLES.heading, columnWidth(job, columns) - GUTTER - WORDS_APART)
  const words = sentences.map((sentence) => pages.breakLines(sentence, STYLES.body, wordsWidth(job, cell, alone, columns)))
  const wordsHeight = words.reduce((sum, lines) => sum + lines.length * STYLES.body.lead + 2, 0)
  return { title, words, head: title.length === 0 ? 0 : title.length * STYLES.heading.lead + 4, wordsHeight }
}

const isAlone = (row: readonly Cell[]): boolean => row.length === 1

function rowHeight(job: PrintJob, row: readonly Cell[], columns: Columns): number {
  const alone = isAlone(row)
  const all = row.map((cell) => laid(job, cell, alone, columns))
  const head = Math.max(...all.map((one) => one.head))
  const high = Math.max(...row.map(({ picture }) => picture?.height ?? 0))
  const words = Math.max(...all.map(({ wordsHeight }) => wordsHeight))
  if (high === 0) return head + words
  return head + (alone ? Math.max(high, words) : high + 4 + words)
}

function rowOn(job: PrintJob, row: readonly Cell[], columns: Columns): void {
  const { pages } = job
  const height = rowHeight(job, row, columns)
  pages.ensureRoom(height)
  const { top } = pages
  // Pictures of one row stand on one line, their words begin at one height.
  const head = Math.max(...row.map((cell) => laid(job, cell, isAlone(row), columns).head))
  const high = Math.max(...row.map(({ picture }) => picture?.height ?? 0))
  row.forEach((cell, at) => {
    const x = pages.left + at * (columnWidth(job, columns) + GAP)
    pages.group('Sect', () => cellOn(job, cell, { x, top, head, high, alone: isAlone(row), columns }))
  })
  pages.top = top + height + BETWEEN
}

interface CellPlace {
  readonly x: number
  readonly top: number
  readonly head: number
  readonly high: number
  readonly alone: boolean
  readonly columns: Columns
}

function cellOn(job: PrintJob, cell: Cell, { x, top, head, high, alone, columns }: CellPlace): void {
  const { pages } = job
  const { picture, step } = cell
  const column = columnWidth(job, columns)
  if (step !== null) {
    pages.top = top
    titleOn(job, step.number, step.title, x, column - WORDS_APART, 0)
  }
  if (picture !== null) pictureOn(job, picture, x + (column - picture.width) / 2, top + head + (alone ? 0 : high - picture.height))
  const beside = alone && picture !== null
  let y = top + head + (picture === null || beside ? 0 : high + 4)
  for (const lines of laid(job, cell, alone, columns).words) {
    pages.tagged('P', () => pages.textBlock(lines, STYLES.body, beside ? x + column + WORDS_APART : x, y))
    y += lines.length * STYLES.body.lead + 2
  }
}

/** A picture whose letters are as large as the text. */
export function pictureOn({ pages, fabricFill }: PrintJob, { drawing, scale }: CellPicture, x: number, y: number): void {
  pages.figure(drawing.title, (surface) => drawPicture(surface, drawing, { at: [x, y], scale, fabricFill, leastLetters: LETTERS }))
}
