/** The mark of each verdict, with its own shape and colour, the same on the board and in the lists. Paths lie in a box from −8 to 8. */
import type { Verdict } from '../../geometry/index.ts'
import type { Point } from '../document/shapes.ts'
import { label } from '../words/words.ts'

interface MarkStyle {
  readonly path: string
  readonly fill: string
  readonly sentence: string
}

export const MARKS: Readonly<Record<Verdict, MarkStyle>> = {
  nests: {
    path: 'M-7 0C-4 -6 4 -6 7 0C4 6 -4 6 -7 0Z',
    fill: '#2f7d6b',
    sentence: label('The seam allowances lie in opposite directions, so the seams lock together.'),
  },
  clashes: {
    path: 'M-7 -7L-1 -3L1 -8L3 -2L8 -1L3 2L6 7L0 4L-4 8L-4 2L-8 0L-4 -2Z',
    fill: '#c22f3d',
    sentence: label('Both seam allowances lie the same way, so the seams don’t nest: they pile up and shift.'),
  },
  open: {
    path: 'M-6 -6H6V6H-6ZM-3 -3V3H3V-3Z',
    fill: '#3f6fb0',
    sentence: label('One seam is pressed open: match the stitching lines with a pin.'),
  },
  pin: {
    path: 'M0 -8A4 4 0 1 1 -0.01 -8ZM-1 0H1L0.6 8H-0.6Z',
    fill: '#a66a12',
    sentence: label('These seams meet at different angles: push a pin through both points.'),
  },
  tip: {
    path: 'M0 -7L8 6H-8ZM0 -2L-3 4H3Z',
    fill: '#7a4a8c',
    sentence: label('A point ends here. Sew a thread’s width above the X to keep the point.'),
  },
}

/** In the order of the seam check: what has to be fixed, what needs care at the machine, what is fine. */
export const VERDICTS = ['clashes', 'pin', 'tip', 'open', 'nests'] as const satisfies readonly Verdict[]

/**
 * One mark for all crossings with the same verdict at one place. `count`: how many clash there, to be shown beside the mark if there are several; 1 for
 * other verdicts.
 */
export interface PlacedMark {
  readonly at: Point
  readonly verdict: Verdict
  readonly count: number
}

export function marksPerPlace(meetings: readonly Omit<PlacedMark, 'count'>[]): PlacedMark[] {
  const marks = new Map<string, PlacedMark>()
  for (const { at, verdict } of meetings) {
    const key = `${at} ${verdict}`
    marks.set(key, { at, verdict, count: 1 + (verdict === 'clashes' ? (marks.get(key)?.count ?? 0) : 0) })
  }
  return [...marks.values()]
}
