/** What the last edit changed where seams meet, until the next edit. */
import { useEffect, useState } from 'react'
import type { Findings } from '../../geometry/index.ts'
import { type AppState, useStore, useFindings } from '../document/store.ts'
import { compareNesting, type NestingComparison } from './nestingChanges.ts'

export interface LastEditChanges {
  readonly changes: NestingComparison
  /** Something was turned or mirrored: then it is said even if nothing changed. */
  readonly turned: boolean
  readonly sewn: boolean
}

/** With more meetings than this, the comparison waits until the findings are on the screen. */
const MANY = 2_000

/** What is different from before the last edit; null where there is nothing to compare. */
export function useNestingChanges(): LastEditChanges | null {
  const block = useStore(({ history }) => history.block)
  const edited = useStore((state) => state.edited)
  const { report } = useFindings()
  const [, redraw] = useState(0)
  // Of a large block the last comparison stays a moment longer.
  const comparable = edited?.block === block && report !== null && report !== edited.before && edited.before.joins.length > 0
  const large = comparable && report.meetings.length > MANY && !isKnown(edited, report)
  useEffect(() => {
    if (!large || edited === null || report === null) return
    const timer = setTimeout(() => {
      changesOf(edited, report)
      redraw((times) => times + 1)
    }, 60)
    return () => clearTimeout(timer)
  }, [large, edited, report])
  return comparable && !large ? changesOf(edited, report) : null
}

type Edited = NonNullable<AppState['edited']>

let last: { readonly edited: Edited; readonly report: Findings; readonly changes: LastEditChanges } | null = null
const isKnown = (edited: Edited, report: Findings): boolean => last?.edited === edited && last.report === report

/** Computed once for everyone who asks. */
function changesOf(edited: Edited, report: Findings): LastEditChanges {
  if (last === null || !isKnown(edited, report)) {
    const changes = compareNesting(edited.before, report, edited.moved)
    last = { edited, report, changes: { changes, turned: edited.turned, sewn: report.joins.length > 0 } }
  }
  return last.changes
}
