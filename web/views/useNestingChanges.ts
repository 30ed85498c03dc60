/** What the last edit changed about where seams meet, until the next. */
import { useEffect, useState } from 'react'
import type { Findings } from '../../geometry/index.ts'
import { type AppState, useStore, useFindings } from '../document/store.ts'
import { type Difference, differenceOf } from './nestingChanges.ts'

export interface Changed {
  readonly found: Difference
  /** Something was turned or mirrored: then it is said, too, that nothing changed. */
  readonly turned: boolean
  readonly sewn: boolean
}

/** Meetings above which the comparison waits until the findings are on the screen. */
const MANY = 2_000

/** The difference between now and before the last edit; null where there is nothing to say of it. */
export function useDifference(): Changed | null {
  const block = useStore(({ history }) => history.block)
  const edited = useStore((state) => state.edited)
  const { report } = useFindings()
  const [, waited] = useState(0)
  // Of a large block what was found before stands a moment longer.
  const asked = edited?.block === block && report !== null && report !== edited.before && edited.before.joins.length > 0
  const large = asked && report.meetings.length > MANY && !isKnown(edited, report)
  useEffect(() => {
    if (!large || edited === null || report === null) return
    const later = setTimeout(() => {
      changed(edited, report)
      waited((times) => times + 1)
    }, 60)
    return () => clearTimeout(later)
  }, [large, edited, report])
  return asked && !large ? changed(edited, report) : null
}

type Edited = NonNullable<AppState['edited']>

let last: { readonly edited: Edited; readonly report: Findings; readonly changed: Changed } | null = null
const isKnown = (edited: Edited, report: Findings): boolean => last?.edited === edited && last.report === report

/** Worked out once for all who ask. */
function changed(edited: Edited, report: Findings): Changed {
  if (last === null || !isKnown(edited, report)) {
    const found = differenceOf(edited.before, report, edited.moved)
    last = { edited, report, changed: { found, turned: edited.turned, sewn: report.joins.length > 0 } }
  }
  return last.changed
}
