/**
 * A block's four edges as the report lists them: the seam ends strictly between the corners.
 *
 * In      the edges with their ends, and how each seam is pressed.
 * Out     ends by distance in cells from each edge's start, going clockwise; +1 where the allowances lie further along, −1 where they lie back.
 */
import { compare, toFile } from '../exact/rational.ts'
import type { Toward } from '../pressing/values.ts'
import type { EdgeEnd, Edges } from '../values/report.ts'
import { leanOf, type ShownEdges, type ShownEnd } from './looseEnds.ts'

export function edgesOf({ edges }: ShownEdges, toward: readonly Toward[]): Edges {
  const [top, right, bottom, left] = edges.map((ends) => between(ends, toward)) as [EdgeEnd[], EdgeEnd[], EdgeEnd[], EdgeEnd[]]
  return { top, right, bottom, left }
}

function between(ends: readonly ShownEnd[], toward: readonly Toward[]): EdgeEnd[] {
  return ends
    .filter(({ corner }) => corner === null)
    .map((end) => ({ end, angle: angleOf(end) }))
    .sort((a, b) => compare(a.end.place, b.end.place) || a.angle - b.angle)
    .map(({ end, angle }) => ({ at: toFile(end.place), lean: leanOf(end, toward), angle }))
}

/** Degrees from the clockwise direction. */
const angleOf = ({ along, inward }: ShownEnd): number => (Math.atan2(inward, along) * 180) / Math.PI
