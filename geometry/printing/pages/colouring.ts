/** The colouring page: the block in outlines, as large as the sheet lets it be, and blank boxes to try colours in. */
import { boxAt } from '../../writing/booklet/sketch.ts'
import type { Mark } from '../../writing/booklet/values.ts'
import { INK, STYLES } from '../pageStyle.ts'
import type { Job } from '../printJob.ts'
import { polygon } from '../pen.ts'
import { chapter } from '../titles.ts'

const BOX = 22

export function colouringPage(job: Job): void {
  const { sheets, booklet, blank } = job
  sheets.newSheet()
  chapter(sheets, 'Colouring page', 0)
  const drawing = { ...booklet.front, title: `${booklet.title} in outlines, to colour in`, marks: booklet.front.marks.filter(isOutline) }
  const names = booklet.fabrics.slice(0, MOST)
  const rows = Math.ceil(names.length / COLUMNS)
  const foot = sheets.end - rows * (BOX + 8)
  const room = foot - sheets.top - 14
  const scale = Math.min(sheets.width / Math.max(drawing.width, 1e-6), room / Math.max(drawing.height, 1e-6))
  if (drawing.marks.length === 0) sheets.write('There is nothing to colour yet.', STYLES.body)
  else sheets.picture(drawing, [sheets.left + (sheets.width - drawing.width * scale) / 2, sheets.top], scale, blank)
  const boxes = Math.min(foot, sheets.top + (drawing.marks.length === 0 ? 40 : drawing.height * scale + 24))
  const width = sheets.width / COLUMNS
  names.forEach((fabric, at) => {
    const [x, y] = [sheets.left + (at % COLUMNS) * width, boxes + Math.floor(at / COLUMNS) * (BOX + 8)]
    sheets.ornament(() => sheets.surface().path(polygon(boxAt(x, y, BOX, BOX)), { line: { colour: INK.ink, width: 0.6 } }))
    sheets.tagged('P', () => sheets.sayFitting(fabric.name, x + BOX + 7, y + BOX / 2 + 3, STYLES.small, width - BOX - 14))
  })
  sheets.top = sheets.end
}

const COLUMNS = 4
const MOST = 16

const isOutline = (mark: Mark): boolean => mark.type === 'area'
