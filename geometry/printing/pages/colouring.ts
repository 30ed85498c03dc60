/** The colouring page: the block in outlines, as large as the page lets it be, and blank boxes to try colours in. */
import { boxAt } from '../../writing/booklet/sketch.ts'
import type { Mark } from '../../writing/booklet/values.ts'
import { INK, STYLES } from '../pageStyle.ts'
import type { PrintJob } from '../printJob.ts'
import { polygon } from '../pen.ts'
import { chapter } from '../titles.ts'

const BOX = 22

export function colouringPage(job: PrintJob): void {
  const { pages, booklet, blank, say } = job
  pages.newPage()
  chapter(pages, say.pages.colouringPage, 0)
  const drawing = { ...booklet.front, title: say.pages.outlinesAlt(booklet.title), marks: booklet.front.marks.filter(isOutline) }
  const names = booklet.fabrics.slice(0, MOST)
  const rows = Math.ceil(names.length / COLUMNS)
  const foot = pages.end - rows * (BOX + 8)
  const room = foot - pages.top - 14
  const scale = Math.min(pages.width / Math.max(drawing.width, 1e-6), room / Math.max(drawing.height, 1e-6))
  if (drawing.marks.length === 0) pages.paragraph(say.pages.nothingToColour, STYLES.body)
  else pages.picture(drawing, [pages.left + (pages.width - drawing.width * scale) / 2, pages.top], scale, blank)
  const boxes = Math.min(foot, pages.top + (drawing.marks.length === 0 ? 40 : drawing.height * scale + 24))
  const width = pages.width / COLUMNS
  names.forEach((fabric, at) => {
    const [x, y] = [pages.left + (at % COLUMNS) * width, boxes + Math.floor(at / COLUMNS) * (BOX + 8)]
    pages.ornament(() => pages.surface().path(polygon(boxAt(x, y, BOX, BOX)), { line: { colour: INK.ink, width: 0.6 } }))
    pages.tagged('P', () => pages.textLineFitting(fabric.name, x + BOX + 7, y + BOX / 2 + 3, STYLES.small, width - BOX - 14))
  })
  pages.top = pages.end
}

const COLUMNS = 4
const MOST = 16

const isOutline = (mark: Mark): boolean => mark.type === 'area'
