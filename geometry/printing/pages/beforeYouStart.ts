/** Before the first cut: what to take care of, which seam to use where, what the pictures mean, and the test square. */
import type { Caution } from '../../writing/booklet/values.ts'
import { INK, STYLES } from '../pageStyle.ts'
import type { PrintJob } from '../printJob.ts'
import { testSquare, testSquareSide } from '../testSquare.ts'
import { chapter, heading } from '../titles.ts'
import { keyColumns, keyOn } from './key.ts'

/** What these pages need of a booklet, of a block or a quilt. */
type BeginJob = Pick<PrintJob, 'pages' | 'unit' | 'say' | 'drawings'> & { readonly booklet: Pick<PrintJob['booklet'], 'cautions' | 'seamAdvice'> }

/** Cautions, seam allowance and key. */
export function beforeYouStart(job: BeginJob): void {
  const { pages, booklet, say } = job
  chapter(pages, say.pages.beforeYouBegin, 160)
  cautions(job, booklet.cautions)
  if (booklet.seamAdvice.length > 0) heading(pages, say.pages.seamAllowance)
  for (const sentence of booklet.seamAdvice) pages.paragraph(sentence, STYLES.body, { after: 4 })
  key(job)
}

const GAP = 22

/** In two columns, each caution whole, the next always in the shorter column. */
function cautions({ pages }: BeginJob, all: readonly Caution[]): void {
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

/** Lines and marks of the pictures, with what they mean; the test square beside them. */
function key(job: BeginJob): void {
  const { pages, unit, say } = job
  const side = testSquareSide(unit)
  const width = (pages.width - side - GAP) / 2
  const columns = keyColumns(job, width)
  const height = Math.max(columns.height, side)
  heading(pages, say.pages.whatPicturesShow, height + 2 * STYLES.small.lead)
  const { top } = pages
  keyOn(job, columns, width)
  testSquare(pages, pages.left + pages.width - side, top - 4, unit, say.pages)
  pages.top = top + height + 4
  pages.paragraph(say.pages.printAtFullSize, STYLES.small)
}
