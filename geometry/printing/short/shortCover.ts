/** The top of the first page: title and maker, what must be put right first, the picture, its sizes, and the fabric to buy. */
import { STYLES } from '../pageStyle.ts'
import type { PrintJob } from '../printJob.ts'
import { fabricCells, front, notes, problems, title } from '../pages/firstPage.ts'

/** How tall the picture may be, in points: the cutting stands on the same page. */
const TALLEST = 250

export function shortCover(job: PrintJob): void {
  const { pages, booklet } = job
  pages.newPage()
  pages.bookmark(booklet.title)
  title(job)
  problems(job)
  if (booklet.introduction !== '') pages.paragraph(booklet.introduction, STYLES.lead, { after: 8 })
  front(
    job,
    TALLEST,
    booklet.facts.filter(({ of }) => of === 'size'),
  )
  fabricCells(job)
  notes(job)
}
