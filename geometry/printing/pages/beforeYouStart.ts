/** Before the first cut: what to take care of, which seam to use where, what the pictures mean, and the test square. */
import { boxAt } from '../../writing/booklet/sketch.ts'
import type { Caution } from '../../writing/booklet/values.ts'
import { drawMark, LINE_WORDS, stroke, STROKES } from '../drawPicture.ts'
import { INK, STYLES } from '../pageStyle.ts'
import type { PrintJob } from '../printJob.ts'
import { MARK_WORDS } from '../meetingMarks.ts'
import { polygon } from '../pen.ts'
import { SQUARE_WORDS, testSquare, testSquareSide } from '../testSquare.ts'
import { chapter, heading } from '../titles.ts'

/** Cautions, seam allowance and key. */
export function beforeYouStart(job: PrintJob): void {
  const { pages, booklet } = job
  chapter(pages, 'Before you begin')
  cautions(job, booklet.cautions)
  if (booklet.seamAdvice.length > 0) heading(pages, 'Your seam allowance')
  for (const sentence of booklet.seamAdvice) pages.paragraph(sentence, STYLES.body, { after: 4 })
  key(job)
}

const GAP = 22

/** In two columns, each caution whole, the next always in the shorter column. */
function cautions({ pages }: PrintJob, all: readonly Caution[]): void {
  const width = (pages.width - GAP) / 2
  const cells = all.map(({ title, sentences }) => ({
    title: pages.breakLines(title, STYLES.strong, width - 12),
    body: sentences.map((sentence) => pages.breakLines(sentence, STYLES.body, width - 12)),
  }))
  const heightOf = ({ title, body }: (typeof cells)[number]): number =>
    title.length * STYLES.strong.lead + body.reduce((sum, lines) => sum + lines.length * STYLES.body.lead + 2, 0)
  const tops = [pages.top, pages.top]
  for (const cell of cells) {
    const column = (tops[0] as number) <= (tops[1] as number) ? 0 : 1
    const x = pages.left + column * (width + GAP)
    let y = tops[column] as number
    const height = heightOf(cell)
    pages.panel(x, y + 2, 2.6, height - 4, INK.accent)
    pages.group('Sect', () => {
      pages.tagged('H2', () => pages.textBlock(cell.title, STYLES.strong, x + 12, y))
      y += cell.title.length * STYLES.strong.lead
      for (const lines of cell.body) {
        y += 2
        pages.tagged('P', () => pages.textBlock(lines, STYLES.body, x + 12, y))
        y += lines.length * STYLES.body.lead
      }
    })
    tops[column] = y + 13
  }
  pages.top = Math.max(...tops) - 4
}

const ROW = 15
const SAMPLE = 34

/** Lines and marks of the pictures, with what they mean; the test square beside them. */
function key({ pages, unit }: PrintJob): void {
  const lines = Object.entries(LINE_WORDS) as [keyof typeof LINE_WORDS, string][]
  const marks = Object.entries(MARK_WORDS) as [keyof typeof MARK_WORDS, string][]
  const rows = Math.max(lines.length + 1, marks.length)
  heading(pages, 'What the pictures show', rows * ROW + 2 * STYLES.small.lead)
  const { top } = pages
  const right = pages.left + 142
  const say = (words: string, x: number, row: number): void => pages.tagged('P', () => pages.textBlock([words], STYLES.body, x, top + row * ROW))
  lines.forEach(([style, words], row) => {
    const y = top + row * ROW + STYLES.body.lead / 2
    pages.ornament(() =>
      stroke(
        pages.surface(),
        polygon(
          [
            [pages.left, y],
            [pages.left + SAMPLE, y],
          ],
          false,
        ),
        STROKES[style],
        1,
      ),
    )
    say(words, pages.left + SAMPLE + 10, row)
  })
  const last = lines.length
  pages.ornament(() => {
    const surface = pages.surface()
    const y = top + last * ROW + 1.5
    const box = polygon(boxAt(pages.left, y, SAMPLE, 11))
    surface.path(box, { fill: '#ece5dc' })
    surface.within(box, () => {
      for (let at = pages.left - 12; at < pages.left + SAMPLE; at += 4.5)
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
  say('the wrong side of the fabric', pages.left + SAMPLE + 10, last)
  marks.forEach(([mark, words], row) => {
    pages.ornament(() => drawMark(pages.surface(), mark, [right + 6, top + row * ROW + STYLES.body.lead / 2], 5))
    say(words, right + 20, row)
  })
  const side = testSquareSide(unit)
  testSquare(pages, pages.left + pages.width - side, top - 4, unit)
  pages.top = top + Math.max(rows * ROW, side) + 4
  pages.paragraph(SQUARE_WORDS, STYLES.small)
}
