/**
 * What to look after along a seam: nested seams, points, thick spots.
 *
 * In      the meetings of one or more joins.
 * Out     short clauses that begin with what to do.
 */
import type { Meeting, Verdict } from '../../values/report.ts'
import type { BookletContext } from './bookletContext.ts'

const CLAUSES = { nests: 'nests', open: 'opens', pin: 'pins', tip: 'tips', clashes: 'clashes' } as const satisfies Readonly<Record<Verdict, string>>

/** One clause for each kind of meeting, with how many there are: `nest the seams at 2 points`. */
export function matchingClauses(meetings: readonly Meeting[], { say }: Pick<BookletContext, 'say'>): string[] {
  return (Object.keys(CLAUSES) as Verdict[]).flatMap((verdict) => {
    const number = meetings.filter((meeting) => meeting.verdict === verdict).length
    return number === 0 ? [] : [say.join[CLAUSES[verdict]](number)]
  })
}

/** All meetings along some joins, by the ids of the joins. */
export const meetingsAlong = (context: BookletContext, joins: readonly string[]): Meeting[] =>
  joins.flatMap((join) => context.meetings.get(join) ?? [])
