/** The quilting line on a page of its own: the block in thin lines, the way of the needle, its turning points numbered in order. */
import { count, sayOne } from '../../writing/say.ts'
import { STYLES } from '../ink.ts'
import type { Job } from '../job.ts'
import { chapter } from '../titles.ts'
import { viewDrawing } from '../views.ts'

export function quiltingPage(job: Job): void {
  const { sheets, report, block, unit, blank } = job
  const { ditch } = report
  if (ditch.routes.length === 0) return
  sheets.newSheet()
  chapter(sheets, 'The quilting line', 0)
  const twice = ditch.retraced === 0 ? 'no seam is stitched twice' : `${sayOne(ditch.retraced, unit)} of it is stitched twice`
  sheets.write(
    `Stitch in the ditch, on the low side of each seam: ${sayOne(ditch.length, unit)} in ${count(ditch.routes.length, 'line')}; ${twice}. Begin at 1 and follow the numbers; secure both ends.`,
    STYLES.body,
    { after: 10 },
  )
  const drawing = viewDrawing('quilting', report, block)
  const scale = Math.min(sheets.width / drawing.width, (sheets.end - sheets.top) / drawing.height)
  sheets.picture(drawing, [sheets.left + (sheets.width - drawing.width * scale) / 2, sheets.top], scale, blank)
  sheets.top = sheets.end
}
