/** The marks of a drawing: one for each place and verdict, with a number where several crossings clash. */
import type { Verdict } from '../../geometry/index.ts'
import { marksPerPlace, type PlacedMark } from '../drawing/marks.ts'
import type { DrawingPart } from '../drawing/viewDrawing.ts'

/** `verdicts` are those that are marked, the last on top; points in cells. */
export function markParts(meetings: readonly Omit<PlacedMark, 'count'>[], verdicts: readonly Verdict[]): DrawingPart[] {
  const marks = marksPerPlace(meetings)
  const counts = [...new Set(marks.map(({ count }) => count))].sort((a, b) => a - b)
  return verdicts.flatMap((verdict) =>
    counts.flatMap((count): DrawingPart[] => {
      const points = marks.filter((mark) => mark.verdict === verdict && mark.count === count).map(({ at }) => at)
      return points.length === 0 ? [] : [{ type: 'mark', verdict, points, ...(count === 1 ? {} : { text: String(count) }) }]
    }),
  )
}
