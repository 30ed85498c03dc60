/**
 * The booklet of a quilt as a PDF: all of it, or one part of a class.
 *
 * In      a quilt, its report and booklet, the quilt file, the paper, the PDF library and its type.
 * Out     the bytes; the same for the same quilt. The quilt file lies inside.
 */
import { partCount, quiltPart } from '../../quilt/parts.ts'
import type { QuiltReport } from '../../quilt/report.ts'
import type { Quilt } from '../../values/quilt.ts'
import { bookletWords } from '../../words/booklet/bookletWords.ts'
import { inEnglish } from '../../words/english.ts'
import { sayExact, sayOne, saySize } from '../../writing/phrases.ts'
import type { QuiltBooklet } from '../../writing/quilt/quiltBooklet.ts'
import { quiltContext } from '../../writing/quilt/quiltContext.ts'
import { quiltCutPieces } from '../../writing/quilt/quiltCutPieces.ts'
import { fabricFills } from '../fabricFill.ts'
import { PageWriter } from '../pageWriter.ts'
import { beforeYouStart } from '../pages/beforeYouStart.ts'
import { missingPage } from '../pages/missingLetters.ts'
import { stepPages } from '../pages/steps.ts'
import type { Paper } from '../paper.ts'
import type { PrintTools } from '../pdfLibrary.ts'
import { table } from '../table.ts'
import { chapter, heading } from '../titles.ts'
import { STYLES } from '../pageStyle.ts'
import { overviewPage } from './overviewPage.ts'
import type { QuiltJob } from './quiltJob.ts'

interface QuiltPrintRequest {
  readonly quilt: Quilt
  readonly report: QuiltReport
  readonly booklet: QuiltBooklet
  /** The quilt file as it is written, in UTF-8: put into the booklet. */
  readonly file: Uint8Array
  readonly paper: Paper
  readonly tools: PrintTools
  /** Told after each chapter, so that whoever waits sees how far it is. */
  readonly onProgress?: ((done: number, of: number) => void) | undefined
}

export async function quiltPdf({ quilt, report, booklet, file, paper, tools, onProgress }: QuiltPrintRequest): Promise<Uint8Array> {
  const title = booklet.part === null ? booklet.title : `${booklet.title}, part ${booklet.part.number} of ${booklet.part.of}`
  const say = bookletWords('en')
  const drawings = booklet.chapters.flatMap(({ steps }) => steps.flatMap((step) => step.drawings))
  const pages = new PageWriter(tools, paper, { title, by: '', subject: 'How to make a quilt', say: say.pages, language: 'en', banner: '' })
  const context = quiltContext(quilt, report)
  const cut = booklet.part === null ? report : quiltPart(quilt, booklet.part.number)
  const job: QuiltJob = { pages, booklet, context, cut, fabricFill: fabricFills(context.fabrics) }
  let next = 1
  const chapters = [
    () => overviewPage(job),
    () => cutListPage(job),
    () => {
      pages.newPage()
      beforeYouStart({ pages, say, drawings, unit: context.unit, booklet: { cautions: booklet.cautions, seamAdvice: [] } })
    },
    ...booklet.chapters.map((one) => () => {
      next = stepPages(
        job,
        { key: 'join', title: one.title, steps: one.steps, ...(one.introduction.length > 0 ? { introduction: one.introduction } : {}) },
        next,
      )
    }),
    () => missingPage({ pages }),
  ]
  chapters.forEach((write, at) => {
    onProgress?.(at, chapters.length)
    write()
  })
  pages.attach(file, 'quilt.json', 'The quilt file: open it in Nestwright')
  const bytes = await pages.bytes()
  onProgress?.(chapters.length, chapters.length)
  return bytes
}

/** What to cut, fabric by fabric, with what each piece is for. */
function cutListPage({ pages, context, cut, booklet }: QuiltJob): void {
  const { unit, quilt, report } = context
  pages.newPage()
  const last = booklet.part === null || booklet.part.number === partCount(quilt)
  chapter(pages, booklet.part === null ? 'Cut list' : 'Cut list for this part', 0)
  if (cut.cut.length === 0) {
    pages.paragraph('There is nothing to cut yet.', STYLES.body)
    return
  }
  pages.paragraph(
    `Every size includes its seam allowances of ${sayExact(report.measure.seam, unit)}. Cut strips across the fabric first, the widest strip first. Then cut the pieces from the strips.`,
    STYLES.body,
    { after: 6 },
  )
  const pieces = quiltCutPieces(cut, quilt)
  for (const { id } of context.fabrics) {
    const own = pieces.filter(({ fabric }) => fabric === id)
    if (own.length === 0) continue
    heading(pages, context.fabric(id), 60)
    table(
      pages,
      [
        { title: 'Cut', share: 0.35, strong: true, align: 'right' },
        { title: 'Size', share: 1.6, strong: true },
        { title: 'For', share: 2.4 },
      ],
      own.map((piece) => [String(piece.count), `${saySize(piece.size, unit)}${THEN[piece.then]}`, piece.purposes.map(inEnglish).join('; ')]),
    )
  }
  heading(pages, 'Have ready beside the fabrics', 40)
  for (const line of booklet.needs) pages.paragraph(line, STYLES.body, { after: 3 })
  if (last && report.binding !== null)
    pages.paragraph(`Binding when it is joined: ${sayOne(Math.floor(report.binding.length), unit)} long.`, STYLES.small)
}

const THEN = { none: '', halve: ', each cut once corner to corner', quarter: ', each cut twice corner to corner' } as const
