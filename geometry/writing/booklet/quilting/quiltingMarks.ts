/**
 * Pictures of the quilting line: numbered stops, an arrow on every leg, two lines where a seam is stitched twice.
 *
 * In      lines in the order of stitching, in cells, and how cells become places of the picture.
 * Out     marks, stops last: they lie on top.
 */
import { legsOf, type NumberedStop, stopsOf } from '../../../quilting/numberedStops.ts'
import type { StitchedLine } from '../../../quilting/stitchedLines.ts'
import type { Mark, Spot } from '../values.ts'

/** All of some lines as marks. */
export function quiltingMarks(lines: readonly StitchedLine[], put: (spot: Spot) => Spot): Mark[] {
  const legs = legsOf(lines).map(({ points, beside }): Mark => ({ type: 'leg', points: points.map(put), beside }))
  const stops = stopsOf(lines).map(
    (stop): Mark => ({ type: 'stop', at: put(stop.at), text: stopText(stop), end: stop.starts.length + stop.ends.length > 0 }),
  )
  return [...legs, ...stops]
}

const stopText = ({ numbers, starts, ends }: NumberedStop): string =>
  numbers.map((number) => `${starts.includes(number) ? 'Start ' : ''}${number}${ends.includes(number) ? ' End' : ''}`).join(' · ')
