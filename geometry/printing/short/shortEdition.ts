/**
 * The short edition: the few pages that a class sews from.
 *
 * In      a print job.
 * Out     picture and sizes, what to cut, what to take care of, units action by action, rows on one picture, borders, and templates where there are
 *         any. Layering, quilting, binding, charts and the colouring page are left to the full edition.
 */
import type { Booklet, BookletPart } from '../../writing/booklet/values.ts'
import { STYLES } from '../pageStyle.ts'
import type { Chapter, PrintJob } from '../printJob.ts'
import { shortBefore } from './shortBefore.ts'
import { templatePages } from '../pages/templates.ts'
import { chapter } from '../titles.ts'
import { shortCover } from './shortCover.ts'
import { shortCutting } from './shortCutting.ts'
import { type StepCells, cellsOn, roomForFirst, stepCells } from './cells.ts'
import { rowsOn } from './shortRows.ts'

const LEFT_OUT: ReadonlySet<BookletPart['key']> = new Set(['sandwich', 'quilt', 'finish'])

/** The parts that the short edition tells. */
export const shortParts = ({ parts }: Pick<Booklet, 'parts'>): BookletPart[] => parts.filter(({ key }) => !LEFT_OUT.has(key))

/** The chapters of the short edition, in order. */
export function shortEdition(booklet: Booklet): Chapter[] {
  const told = shortParts(booklet)
  let next = 1
  const chapters = told.map((part): Chapter => {
    const first = next
    next += part.steps.length
    return (job) => (part.key === 'cut' ? shortCutting(job, part, first) : sewing(job, part, first))
  })
  const cutting = told.findIndex(({ key }) => key === 'cut') + 1
  return [shortCover, ...chapters.slice(0, cutting), shortBefore, ...chapters.slice(cutting), theEnd, templatePages]
}

/** A chapter's title. */
const CHAPTER = 40

function sewing(job: PrintJob, part: BookletPart, first: number): void {
  const { rows } = job.booklet
  // Where the block is laid out row by row, one picture shows the layout and the rows.
  if (part.key === 'lay out' && rows !== null) return rowsOn(job, part, first)
  const inRows = new Set(part.key === 'join' ? rows?.steps : [])
  const steps = part.steps.map((step, at) => ({ step, number: first + at })).filter((_, at) => !inRows.has(at))
  const cells = steps.map(({ step, number }): StepCells => stepCells(job, step, number))
  // Rows that were sewn a moment ago are joined under the same title.
  if (part.key !== 'join' || rows === null || steps.length > 1) chapter(job.pages, part.title, CHAPTER + roomForFirst(job, cells))
  cellsOn(job, cells)
}

/** Sizes are checked in the last step of sewing; here it says where to go on. */
function theEnd({ pages, booklet, say }: PrintJob): void {
  if (!booklet.parts.some(({ key }) => key === 'finish')) return
  pages.gap(10)
  pages.paragraph(say.pages.theEnd, STYLES.body)
}
