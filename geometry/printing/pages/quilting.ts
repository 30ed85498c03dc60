/** The quilting line on a page of its own: the block in thin lines, the way of the needle, its turning points numbered in order. */
import { cellOf } from '../../block/measure.ts'
import { toNumber } from '../../exact/rational.ts'
import { routeLines, stitchedPoints } from '../../quilting/lines.ts'
import type { Drawing, Mark, Spot } from '../../writing/booklet/values.ts'
import { point } from '../../writing/pieces.ts'
import { count, sayOne } from '../../writing/say.ts'
import { STYLES } from '../ink.ts'
import type { Job } from '../job.ts'
import { chapter } from '../titles.ts'

/** Turning points above which only starts are numbered: more would hide the line. */
const MOST_NUMBERED = 90

export function quiltingPage(job: Job): void {
  const { sheets, report, unit, blank } = job
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
  const drawing = quiltingDrawing(job)
  const scale = Math.min(sheets.width / drawing.width, (sheets.end - sheets.top) / drawing.height)
  sheets.picture(drawing, [sheets.left + (sheets.width - drawing.width * scale) / 2, sheets.top], scale, blank)
  sheets.top = sheets.end
}

export function quiltingDrawing({ report, block }: Pick<Job, 'report' | 'block'>): Drawing {
  const cell = toNumber(cellOf(block))
  const corners = report.patches.map((patch) => patch.corners.map(point))
  const all = corners.flat()
  const [left, top] = [Math.min(...all.map(([x]) => x)), Math.min(...all.map(([, y]) => y))]
  const put = ([x, y]: Spot): Spot => [(x - left) * cell, (y - top) * cell]
  const areas = corners.map((outline): Mark => ({ sort: 'area', outline: outline.map(put), fabric: null, side: 'right', line: 'seam' }))
  const routes = routeLines(report.ditch).map((line) => ({ ...line, points: line.points.map(put) }))
  const lines = routes.map(({ points, closed }): Mark => ({ sort: 'line', points, closed, style: 'stitch' }))
  return {
    width: Math.max(...all.map(([x]) => x - left)) * cell,
    height: Math.max(...all.map(([, y]) => y - top)) * cell,
    marks: [...areas, ...lines, ...numbersOf(routes.map(stitchedPoints))],
    title: `The quilting line: ${count(routes.length, 'line')} along the seams`,
  }
}

/** A place that is passed more than once has all its numbers beside each other. */
function numbersOf(routes: readonly (readonly Spot[])[]): Mark[] {
  const points = routes.reduce((sum, route) => sum + route.length, 0)
  const said = points <= MOST_NUMBERED ? routes : routes.map((route) => route.slice(0, 1))
  const places = new Map<string, { at: Spot; numbers: number[] }>()
  let number = 0
  for (const at of said.flat()) {
    number += 1
    const key = at.map((value) => value.toFixed(4)).join(' ')
    const known = places.get(key)
    if (known === undefined) places.set(key, { at, numbers: [number] })
    else known.numbers.push(number)
  }
  return [...places.values()].map(({ at, numbers }): Mark => ({ sort: 'point', at, mark: 'number', text: numbers.join(' · ') }))
}
