/** Turns of a single unit that would fix a gap or an overlap, as buttons. */
import { useEffect, useState } from 'react'
import type { Findings } from '../../../geometry/index.ts'
import { useStore } from '../../document/store.ts'
import { said, t } from '../../words/words.ts'
import { FixButton } from './FixButton.tsx'
import { type LayoutRepair, layoutRepairs } from './layoutRepairs.ts'

/** Milliseconds without an edit before turns are tried: while the maker goes on laying, no advice is needed. */
const REST = 250

const TURNS: Readonly<Record<1 | 2 | 3, string>> = {
  1: said('Turn {unit} a quarter'),
  2: said('Turn {unit} half round'),
  3: said('Turn {unit} a quarter back'),
}

export function LayoutRepairs({ units, report }: { readonly units: readonly string[]; readonly report: Findings }) {
  const block = useStore(({ history }) => history.block)
  const [found, setFound] = useState<{ readonly report: Findings; readonly repairs: readonly LayoutRepair[] } | null>(null)
  useEffect(() => {
    const timer = setTimeout(() => setFound({ report, repairs: layoutRepairs(block, report, units) }), REST)
    return () => clearTimeout(timer)
  }, [block, report, units])
  const repairs = found?.report === report ? found.repairs : []
  if (repairs.length === 0) return null
  return (
    <div className="fixes">
      <span className="try">{t('Try:')}</span>
      {repairs.map(({ unit, quarters, edit }) => (
        <FixButton key={`${unit} ${quarters}`} name={t(TURNS[quarters], { unit })} getEdit={() => edit} />
      ))}
    </div>
  )
}
