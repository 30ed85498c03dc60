/**
 * What to look after along a seam: nested seams, points, thick spots.
 *
 * In      the meetings of one or more joins.
 * Out     short clauses that begin with what to do.
 */
import type { Meeting, Verdict } from '../../values/report.ts'
import { count } from '../phrases.ts'
import type { BookletContext } from './bookletContext.ts'

const CLAUSES: Readonly<Record<Verdict, (number: number) => string>> = {
  nests: (n) => (n === 1 ? 'nest the seams where they cross' : `nest the seams at ${n} crossings`),
  open: (n) => `pin ${count(n, 'crossing')} of seams that are pressed open`,
  pin: (n) => (n === 1 ? 'match 1 point with a pin' : `match ${n} points with pins`),
  tip: (n) => `sew a thread’s width above ${n === 1 ? 'the X to keep the point' : `each X to keep ${n} points`}`,
  clashes: (n) => `pin ${count(n, 'crossing')} where the seams don’t nest, and sew slowly there`,
}

/** One clause for each kind of meeting, with how many there are: `match 2 nested seams`. */
export function matchingClauses(meetings: readonly Meeting[]): string[] {
  return (Object.keys(CLAUSES) as Verdict[]).flatMap((verdict) => {
    const number = meetings.filter((meeting) => meeting.verdict === verdict).length
    return number === 0 ? [] : [CLAUSES[verdict](number)]
  })
}

/** All meetings along some joins, by the ids of the joins. */
export const meetingsAlong = (context: BookletContext, joins: readonly string[]): Meeting[] =>
  joins.flatMap((join) => context.meetings.get(join) ?? [])
