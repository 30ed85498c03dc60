/** What the last edit changed about where seams meet, until the next. */
import { useMemo } from 'react'
import { useStore, useTold } from '../../state/store.ts'
import { type Difference, differenceOf } from './difference.ts'

/** The difference between now and before the last edit; null where there is nothing to say of it. */
export function useDifference(): { readonly found: Difference; readonly turned: boolean; readonly sewn: boolean } | null {
  const block = useStore(({ history }) => history.block)
  const edited = useStore((state) => state.edited)
  const { report } = useTold()
  return useMemo(() => {
    if (edited?.block !== block || report === null || edited.before.joins.length === 0) return null
    return { found: differenceOf(edited.before, report, edited.moved), turned: edited.turned, sewn: report.joins.length > 0 }
  }, [block, edited, report])
}
