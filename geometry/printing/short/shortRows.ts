/** Laying out and sewing the rows: one picture of them all, with the words of each row beside it. */
import { wordsOf } from '../../writing/booklet/booklet.ts'
import type { BookletPart, BookletRows, BookletStep } from '../../writing/booklet/values.ts'
import { STYLES } from '../pageStyle.ts'
import type { PrintJob } from '../printJob.ts'
import { chapter } from '../titles.ts'
import { fitted, pictureOn, titleOn } from './cells.ts'

/** Of the page's width, for a picture beside the words; where more rows or letters need it, the whole width. */
const BESIDE = 0.52
const GAP = 18
/** Units of which a picture beside the words still shows the letters. */
const MOST_BESIDE = 30
/** How tall the picture may be, in points. */
const TALLEST = 400

export function rowsOn(job: PrintJob, layOut: BookletPart, first: number): void {
  const { pages, booklet } = job
  const { drawing, steps } = booklet.rows as BookletRows
  const joining = booklet.parts.find(({ key }) => key === 'join')?.steps ?? []
  const told = [
    ...layOut.steps.map((step, at) => ({ step, number: first + at })),
    ...steps.map((at) => ({ step: joining[at] as BookletStep, number: first + layOut.steps.length + at })),
  ]
  const beside = booklet.units <= MOST_BESIDE
  const wide = beside ? pages.width * BESIDE : pages.width
  const scale = Math.min(wide / drawing.width, TALLEST / drawing.height)
  const picture = { ...fitted(drawing, wide), scale, width: drawing.width * scale, height: drawing.height * scale }
  chapter(pages, layOut.title, 40 + picture.height)
  const { top } = pages
  pictureOn(job, picture, pages.left + (wide - picture.width) / 2, top)
  const [left, width] = beside ? [pages.left + wide + GAP, pages.width - wide - GAP] : [pages.left, pages.width]
  if (!beside) pages.top = top + picture.height + GAP
  const page = pages.pageCount
  for (const { step, number } of told) stepBeside(job, step, number, [left, width])
  if (pages.pageCount === page) pages.top = Math.max(pages.top, top + picture.height + GAP)
}

function stepBeside(job: PrintJob, step: BookletStep, number: number, [x, width]: readonly [number, number]): void {
  const { pages } = job
  pages.group('Sect', () => {
    titleOn(job, number, step.title, x, width, 2 * STYLES.body.lead)
    for (const sentence of [...wordsOf(step), ...(step.note === undefined ? [] : [step.note])])
      pages.paragraph(sentence, STYLES.body, { x, width, after: 2 })
  })
  pages.top += 8
}
