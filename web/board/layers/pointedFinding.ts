/** What the findings point at on the board. A finding is named by its type and its number in the report: `meeting 3`. */
import type { Findings } from '../../../geometry/index.ts'
import { drawnSeams, toDecimal, type Point, pointOf, seamsTiedThroughMeetings } from '../../document/shapes.ts'

/** Where a finding lies, in cells; null where there is none. */
export function pointOfFinding(finding: string | null, report: Findings | null): Point | null {
  if (finding === null || report === null) return null
  const [type, index] = finding.split(' ')
  if (type === 'bulk') return report.bulk === null ? null : [report.bulk.at[0], report.bulk.at[1]]
  const at = type === 'meeting' ? report.meetings[Number(index)]?.at : type === 'problem' ? report.problems[Number(index)]?.at : undefined
  if (at !== undefined) return pointOf(at)
  const join = type === 'join' ? report.joins[Number(index)] : undefined
  return join === undefined ? null : [(toDecimal(join.from[0]) + toDecimal(join.to[0])) / 2, (toDecimal(join.from[1]) + toDecimal(join.to[1])) / 2]
}

/** The seams that a clash is tied to through other meetings, as lines in cells; none for other findings. */
export function seamsTiedTo(finding: string | null, report: Findings | null): readonly (readonly Point[])[] {
  const [type, index] = (finding ?? '').split(' ')
  if (report === null || type !== 'meeting' || report.meetings[Number(index)]?.verdict !== 'clashes') return []
  const tied = new Set(seamsTiedThroughMeetings(report, Number(index)))
  return drawnSeams(report)
    .filter(({ join }) => tied.has(join.id))
    .map(({ points }) => points)
}
