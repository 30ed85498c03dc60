/** What to take care of, how wide to sew, and what the marks on the pictures mean: briefly, and only what this booklet has. */
import { keyColumns, keyOn } from '../pages/key.ts'
import { STYLES } from '../pageStyle.ts'
import type { PrintJob } from '../printJob.ts'
import { chapter, heading } from '../titles.ts'

export function shortBefore(job: PrintJob): void {
  const { pages, booklet, say } = job
  chapter(pages, say.pages.beforeYouBegin, 160)
  for (const { about, title, sentences } of booklet.cautions) {
    // Nothing is glued in what this edition tells.
    if (about !== 'glue') pages.paragraph(`${title}: ${sentences.join(' ')}`, STYLES.body, { after: 3 })
  }
  pages.top += 3
  pages.paragraph(booklet.seamAdvice.slice(0, 2).join(' '), STYLES.body, { after: 4 })
  key(job)
}

const COLUMNS = 3

/** The marks of this booklet's pictures, each once. */
function key(job: PrintJob): void {
  const { pages, say } = job
  const width = pages.width / COLUMNS
  const columns = keyColumns(job, width, COLUMNS)
  if (columns.height === 0) return
  heading(pages, say.pages.whatPicturesShow, columns.height)
  keyOn(job, columns, width)
  pages.top += columns.height
}
