/**
 * The meetings of a pressed plan as the report lists them.
 *
 * In      the sewn block, its plan, and the fixes of each clash by the number of its crossing.
 * Out     a row for each crossing: where it is, in cells, its verdict, its fixes, and the layers of fabric there where they were counted.
 */
import type { Dot } from '../plane/points.ts'
import { Thickness } from '../pressing/layers/thickness.ts'
import type { PressedPlan } from '../pressing/plan.ts'
import { verdictOf } from '../pressing/nesting.ts'
import type { Fix, Meeting } from '../values/report.ts'
import type { FindingsCache } from './findingsCache.ts'
import { joinId } from './joinRows.ts'
import type { Sewing } from './sewing.ts'

export function meetingsOf(
  { laid, plane, layers }: Sewing,
  plan: PressedPlan,
  fixes: ReadonlyMap<number, readonly Fix[]>,
  cache: FindingsCache | null,
): Meeting[] {
  const thickness = layers === null ? null : new Thickness(plane, plan, layers.folds)
  cache?.meetings.begin()
  return plan.met.crossings.map((crossing, index): Meeting => {
    const verdict = verdictOf(crossing, plan.pressed.toward)
    const last = cache?.meetings.reuse(crossing)
    if (cache !== null && last?.verdict === verdict && verdict !== 'clashes') return cache.meetings.keep(crossing, last)
    const meeting: Meeting = {
      at: laid.places.written(plane.dots[crossing.dot] as Dot),
      join: joinId(crossing.join),
      seams: crossing.seams.map(joinId),
      verdict,
      fix: fixes.get(index) ?? [],
      ...thickness?.at(crossing),
    }
    return cache?.meetings.keep(crossing, meeting) ?? meeting
  })
}
