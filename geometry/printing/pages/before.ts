/** Before the first cut: what to take care of, which seam to use where, what the pictures mean, and the test square. */
import type { Caution } from '../../writing/booklet/values.ts'
import { drawMark, LINE_WORDS, stroke, STROKES } from '../draw.ts'
import { INK, STYLES } from '../ink.ts'
import type { Job } from '../job.ts'
import { MARK_WORDS } from '../marks.ts'
import { polygon } from '../pen.ts'
import { squareNote, testSquare, testSquareSide } from '../testSquare.ts'
import { chapter, heading } from '../titles.ts'

export function beforePages(job: Job): void {
  const { sheets, booklet } = job
  chapter(sheets, 'Before you begin', 300)
  cautions(job, booklet.cautions)
  if (booklet.seamAdvice.length > 0) heading(sheets, 'Your seam allowance')
  for (const sentence of booklet.seamAdvice) sheets.write(sentence, STYLES.body, { after: 4 })
  key(job)
  square(job)
}

const COLUMNS = 2
const GAP = 20

/** Side by side in two columns, each caution whole. */
function cautions({ sheets }: Job, all: readonly Caution[]): void {
  const width = (sheets.width - GAP) / COLUMNS
  const cells = all.map(({ title, sentences }) => ({
    title: sheets.lines(title, STYLES.strong, width - 14),
    body: sentences.map((sentence) => sheets.lines(sentence, STYLES.body, width - 14)),
  }))
  const heightOf = ({ title, body }: (typeof cells)[number]): number => (title.length + body.flat().length) * STYLES.body.lead + body.length * 2 + 8
  for (let first = 0; first < cells.length; first += COLUMNS) {
    const row = cells.slice(first, first + COLUMNS)
    const height = Math.max(...row.map(heightOf))
    sheets.need(height)
    const { top } = sheets
    row.forEach((cell, at) => {
      const x = sheets.left + at * (width + GAP)
      sheets.panel(x, top + 1, 3, heightOf(cell) - 12, INK.accent)
      let y = top
      sheets.tagged('H3', () => sheets.block(cell.title, STYLES.strong, x + 12, y))
      y += cell.title.length * STYLES.strong.lead + 1
      for (const lines of cell.body) {
        sheets.tagged('P', () => sheets.block(lines, STYLES.body, x + 12, y))
        y += lines.length * STYLES.body.lead + 2
      }
    })
    sheets.top = top + height + 4
  }
}

const ROW = 15
const SAMPLE = 34

/** Lines and marks of the pictures, with what they mean. */
function key({ sheets }: Job): void {
  const lines = Object.entries(LINE_WORDS) as [keyof typeof LINE_WORDS, string][]
  const marks = Object.entries(MARK_WORDS) as [keyof typeof MARK_WORDS, string][]
  const rows = Math.max(lines.length + 1, marks.length)
  heading(sheets, 'What the pictures show', rows * ROW + 6)
  const { top } = sheets
  const right = sheets.left + 176
  const say = (words: string, x: number, row: number): void => sheets.tagged('P', () => sheets.block([words], STYLES.body, x, top + row * ROW))
  lines.forEach(([style, words], row) => {
    const y = top + row * ROW + STYLES.body.lead / 2
    sheets.ornament(() =>
      stroke(
        sheets.surface(),
        polygon(
          [
            [sheets.left, y],
            [sheets.left + SAMPLE, y],
          ],
          false,
        ),
        STROKES[style],
        1,
      ),
    )
    say(words, sheets.left + SAMPLE + 10, row)
  })
  const last = lines.length
  sheets.ornament(() => {
    const surface = sheets.surface()
    const y = top + last * ROW + 1.5
    const box = polygon([
      [sheets.left, y],
      [sheets.left + SAMPLE, y],
      [sheets.left + SAMPLE, y + 11],
      [sheets.left, y + 11],
    ])
    surface.path(box, { fill: '#ece5dc' })
    surface.within(box, () => {
      for (let at = sheets.left - 12; at < sheets.left + SAMPLE; at += 4.5)
        surface.path(
          polygon(
            [
              [at + 12, y],
              [at, y + 12],
            ],
            false,
          ),
          { line: { colour: '#a79c91', width: 0.35 } },
        )
    })
    surface.path(box, { line: { colour: '#3c312b', width: 0.55 } })
  })
  say('the wrong side of the cloth', sheets.left + SAMPLE + 10, last)
  marks.forEach(([mark, words], row) => {
    sheets.ornament(() => drawMark(sheets.surface(), mark, [right + 6, top + row * ROW + STYLES.body.lead / 2], 5))
    say(words, right + 20, row)
  })
  sheets.top = top + rows * ROW + 8
}

function square({ sheets, unit }: Job): void {
  const side = testSquareSide(unit)
  sheets.skip(10)
  sheets.need(side + 6)
  const { top } = sheets
  testSquare(sheets, sheets.left + 1, top, unit)
  squareNote(sheets, sheets.left + side + 16, top + side / 2 - 14, 230)
  sheets.top = top + side + 6
}
