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
  nests: (n) => (n === 1 ? 'nest the seams where they cross' : `nest the seams at ${n} points`),
  open: (n) => `pin ${count(n, 'pair')} of seams that are pressed open`,
  pin: (n) => `match ${count(n, 'point')} by pinning`,
  tip: (n) =>
    `sew just across ${count(n, 'point')}, where ${n === 1 ? 'its' : 'their'} seams cross, so that ${n === 1 ? 'it is not' : 'none is'} cut off`,
  clashes: (n) => `pin the seams at ${count(n, 'crossing')} where they don't nest, and sew slowly there`,
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
