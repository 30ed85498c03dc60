/** How large the squares of a row of units are cut, in the measure's unit. */
import type { UnitRow } from '../../../values/report.ts'
import type { BookletContext } from '../bookletContext.ts'

/** The largest or smallest side of what a row's method cuts. */
export function cutSize({ report }: BookletContext, row: UnitRow, pick: 'largest' | 'smallest' = 'largest'): number {
  const wanted = new Set(row.for)
  const sizes = report.cut.filter(({ method, for: units }) => method === row.method && units.some((id) => wanted.has(id))).flatMap(({ size }) => size)
  return sizes.length === 0 ? (row.unfinished[0] as number) : pick === 'largest' ? Math.max(...sizes) : Math.min(...sizes)
}
