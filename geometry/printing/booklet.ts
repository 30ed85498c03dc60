/**
 * The booklet as a PDF: what a teacher hands out.
 *
 * In      a report, its block, the booklet's steps and words, the block file, the paper, the PDF library and its type, and whether single pages are wanted.
 * Out     the bytes; the same for the same block, wherever they are made. The block file lies inside.
 */
import { bookletWords } from '../words/booklet/bookletWords.ts'
import type { Block } from '../values/block.ts'
import type { Report } from '../values/report.ts'
import type { Booklet } from '../writing/booklet/values.ts'
import { fabricFills } from './fabricFill.ts'
import { FILE_NAME } from './pdfAttachments.ts'
import type { Chapter, PrintJob } from './printJob.ts'
import type { PrintTools } from './pdfLibrary.ts'
import { beforeYouStart } from './pages/beforeYouStart.ts'
import { allCharts, ownCharts } from './pages/sizeChart.ts'
import { colouringPage } from './pages/colouring.ts'
import { cutListPages } from './pages/cutList.ts'
import { firstPage } from './pages/firstPage.ts'
import { missingPage } from './pages/missingLetters.ts'
import { allowanceTestPage } from './pages/allowanceTest.ts'
import { partPages } from './pages/steps.ts'
import { noTemplates, templatePages } from './pages/templates.ts'
import type { Edition, Paper, SinglePage } from './paper.ts'
import { PageWriter } from './pageWriter.ts'
import { shortEdition, shortParts } from './short/shortEdition.ts'
import { reportForBlocks } from '../writing/booklet/severalBlocks.ts'

interface PrintRequest {
  readonly report: Report
  readonly block: Block
  readonly booklet: Booklet
  /** The block file as it is written, in UTF-8: put into the booklet. */
  readonly file: Uint8Array
  readonly paper: Paper
  /** The short one unless another is asked for. */
  readonly edition?: Edition
  readonly only?: SinglePage | null
  readonly tools: PrintTools
  /** Told after each chapter, so that whoever waits sees how far it is. */
  readonly onProgress?: (done: number, of: number) => void
}

const SUBJECTS: Readonly<Record<SinglePage, string>> = {
  cutlist: 'Cut list',
  chart: 'Size chart',
  colouring: 'Colouring page',
  templates: 'Templates',
}

export async function bookletPdf({
  block,
  booklet: told,
  file,
  paper,
  edition = 'short',
  only = null,
  tools,
  onProgress,
  ...rest
}: PrintRequest): Promise<Uint8Array> {
  const report = reportForBlocks(rest.report, block)
  const say = bookletWords(told.language)
  const booklet = { ...told, title: told.title.trim() === '' ? say.pages.untitled : told.title }
  const subject = only === null ? say.pages.subject : SUBJECTS[only]
  const pages = new PageWriter(tools, paper, {
    title: booklet.title,
    by: booklet.by,
    subject,
    say: say.pages,
    language: booklet.language,
    banner: only === null ? '' : booklet.title,
  })
  const { unit } = report.measure
  const parts = edition === 'short' ? shortParts(booklet) : booklet.parts
  const drawings = [...parts.flatMap(({ steps }) => steps.flatMap((step) => step.drawings)), ...(booklet.rows === null ? [] : [booklet.rows.drawing])]
  const job: PrintJob = {
    drawings,
    say,
    pages,
    report,
    block,
    booklet,
    unit,
    fabricFill: fabricFills(block.fabrics),
    blank: fabricFills(block.fabrics, 'outline'),
  }
  const whole = edition === 'short' ? shortEdition : fullEdition
  const chapters = [...(only === null ? whole(booklet) : [SINGLE[only]]), missingPage]
  chapters.forEach((chapter, at) => {
    onProgress?.(at, chapters.length)
    chapter(job)
  })
  pages.attach(file, FILE_NAME, say.pages.blockFile)
  const bytes = await pages.bytes()
  onProgress?.(chapters.length, chapters.length)
  return bytes
}

function fullEdition({ parts }: Booklet): Chapter[] {
  let next = 1
  const making = parts.map(
    (part): Chapter =>
      (job) => {
        next = partPages(job, part, next)
      },
  )
  return [firstPage, beforeYouStart, (job) => cutListPages(job, false), ...making, allowanceTestPage, ownCharts, colouringPage, templatePages]
}

const SINGLE: Readonly<Record<SinglePage, Chapter>> = {
  cutlist: (job) => cutListPages(job, true),
  chart: allCharts,
  colouring: colouringPage,
  templates: (job) => (job.booklet.templates.length === 0 ? noTemplates(job) : templatePages(job)),
}
