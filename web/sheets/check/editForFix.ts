/**
 * Turns a fix of the report into an edit of the block.
 *
 * In      the fix, and the report that suggests it.
 * Out     a named edit. Once it is applied, the clash that the report lists is gone.
 */
import {
  type Edit,
  type Fix,
  type Join,
  type Order,
  type Findings,
  setOrder,
  setPress,
  setPressFree,
  setPressedOpen,
  setTurn,
} from '../../../geometry/index.ts'
import { type DrawnSeam, drawnSeams, type Point } from '../../document/shapes.ts'

export function editForFix(fix: Fix, report: Findings): Edit {
  if (fix.do === 'order') return setOrder(fix.what as Order)
  if (fix.do === 'turn') return setTurn(fix.what, fix.turn ?? 0, fix.mirror ?? false)
  const join = report.joins.findIndex(({ id }) => id === fix.what)
  if (join < 0) return fix.do === 'open' ? setPressedOpen([fix.what], true) : setPressFree([fix.what], true)
  const at = pointOn(report, join)
  if (fix.do === 'open') return setPress({ at, toward: 'open' })
  return setPress({ at, toward: beyond(report, join, at) })
}

/** A point of the seam that lies on no other seam: halfway between its start and the first place where another seam ends on it. In cells. */
function pointOn(report: Findings, index: number): Point {
  const lines = drawnSeams(report)
  const [a, b] = (lines[index] as DrawnSeam).points as [Point, Point]
  const ends = lines.flatMap(({ points }, other) => (other === index ? [] : [points[0] as Point, points.at(-1) as Point, ...points.slice(1, -1)]))
  const along = ends.flatMap(([x, y]) => {
    const [dx, dy] = [b[0] - a[0], b[1] - a[1]]
    const part = ((x - a[0]) * dx + (y - a[1]) * dy) / (dx * dx + dy * dy)
    const off = Math.abs((x - a[0]) * dy - (y - a[1]) * dx)
    return off < 1e-9 && part > 1e-9 && part < 1 - 1e-9 ? [part] : []
  })
  // Fractions of a cell in powers of two stay exact in the file.
  const part = Math.min(1, ...along) / 2
  return [a[0] + (b[0] - a[0]) * part, a[1] + (b[1] - a[1]) * part]
}

/** A point just off the seam, on the side that its allowance is not pressed to now. In cells. */
function beyond(report: Findings, index: number, [x, y]: Point): Point {
  const { lies } = drawnSeams(report)[index] as { lies: Point | null; join: Join }
  const [dx, dy] = lies ?? [0, 1]
  const step = 1 / 64
  return [x - (Math.round(dx * 1024) / 1024) * step, y - (Math.round(dy * 1024) / 1024) * step]
}
