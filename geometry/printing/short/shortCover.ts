/** The top of the first page: title and maker, what must be put right first, the picture, its sizes, and the fabric to buy. */
import { STYLES } from '../pageStyle.ts'
import type { PrintJob } from '../printJob.ts'
import { fabricCells, front, notes, problems, title } from '../pages/firstPage.ts'

/** How tall the picture may be, in points: the cutting stands on the same page. */
const TALLEST = 260
/** Fabrics that have room beside the picture, with names of so many letters. */
const MOST_BESIDE = 4
const LONGEST_NAME = 24

export function shortCover(job: PrintJob): void {
  const { pages, booklet } = job
  pages.newPage()
  pages.bookmark(booklet.title)
  title(job)
  problems(job)
  if (booklet.introduction !== '') pages.paragraph(booklet.introduction, STYLES.lead, { after: 8 })
  const beside = booklet.fabrics.length <= MOST_BESIDE && booklet.fabrics.every(({ name }) => name.length <= LONGEST_NAME)
  front(
    job,
    TALLEST,
    booklet.facts.filter(({ of }) => of === 'size'),
    beside,
  )
  if (!beside) fabricCells(job)
  notes(job)
}
