/** Before the first cut: what to take care of, which seam to use where, what the pictures mean, and the test square. */
import { boxAt } from '../../writing/booklet/sketch.ts'
import type { Caution } from '../../writing/booklet/values.ts'
import { drawMark, LINE_WORDS, stroke, STROKES } from '../drawPicture.ts'
import { INK, STYLES } from '../pageStyle.ts'
import type { Job } from '../printJob.ts'
import { MARK_WORDS } from '../meetingMarks.ts'
import { polygon } from '../pen.ts'
import { SQUARE_WORDS, testSquare, testSquareSide } from '../testSquare.ts'
import { chapter, heading } from '../titles.ts'

export function beforeYouStartPages(job: Job): void {
  const { sheets, booklet } = job
  sheets.newSheet()
  chapter(sheets, 'Before you begin', 0)
  cautions(job, booklet.cautions)
  if (booklet.seamAdvice.length > 0) heading(sheets, 'Your seam allowance')
  for (const sentence of booklet.seamAdvice) sheets.write(sentence, STYLES.body, { after: 4 })
  key(job)
}

const GAP = 22

/** In two columns, each caution whole, the next always in the shorter column. */
function cautions({ sheets }: Job, all: readonly Caution[]): void {
  const width = (sheets.width - GAP) / 2
  const cells = all.map(({ title, sentences }) => ({
    title: sheets.lines(title, STYLES.strong, width - 12),
    body: sentences.map((sentence) => sheets.lines(sentence, STYLES.body, width - 12)),
  }))
  const heightOf = ({ title, body }: (typeof cells)[number]): number =>
    title.length * STYLES.strong.lead + body.reduce((sum, lines) => sum + lines.length * STYLES.body.lead + 2, 0)
  const tops = [sheets.top, sheets.top]
  for (const cell of cells) {
    const column = (tops[0] as number) <= (tops[1] as number) ? 0 : 1
    const x = sheets.left + column * (width + GAP)
    let y = tops[column] as number
    const height = heightOf(cell)
    sheets.panel(x, y + 2, 2.6, height - 4, INK.accent)
    sheets.group('Sect', () => {
      sheets.tagged('H2', () => sheets.block(cell.title, STYLES.strong, x + 12, y))
      y += cell.title.length * STYLES.strong.lead
      for (const lines of cell.body) {
        y += 2
        sheets.tagged('P', () => sheets.block(lines, STYLES.body, x + 12, y))
        y += lines.length * STYLES.body.lead
      }
    })
    tops[column] = y + 13
  }
  sheets.top = Math.max(...tops) - 4
}

const ROW = 15
const SAMPLE = 34

/** Lines and marks of the pictures, with what they mean; the test square beside them. */
function key({ sheets, unit }: Job): void {
  const lines = Object.entries(LINE_WORDS) as [keyof typeof LINE_WORDS, string][]
  const marks = Object.entries(MARK_WORDS) as [keyof typeof MARK_WORDS, string][]
  const rows = Math.max(lines.length + 1, marks.length)
  heading(sheets, 'What the pictures show', rows * ROW + 2 * STYLES.small.lead)
  const { top } = sheets
  const right = sheets.left + 142
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
    const box = polygon(boxAt(sheets.left, y, SAMPLE, 11))
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
  const side = testSquareSide(unit)
  testSquare(sheets, sheets.left + sheets.width - side, top - 4, unit)
  sheets.top = top + Math.max(rows * ROW, side) + 4
  sheets.write(SQUARE_WORDS, STYLES.small)
}
