/** Where the sewn block differs from the planned layout, and the fewest moves that lead back to it. */
import { useMemo } from 'react'
import { asSewn, type Block, message } from '../../../geometry/index.ts'
import { setComparedLayout, setView, replaceDocument, useStore, useFindings } from '../../document/store.ts'
import { translateAny } from '../../words/translateAny.ts'
import { t, tn } from '../../words/words.ts'
import { summaryText } from './CheckSummary.tsx'

export function SewnDifferences({ laid: layout }: { readonly laid: Block }) {
  const block = useStore(({ history }) => history.block)
  const { report } = useFindings()
  const comparison = useMemo(() => asSewn(layout, block), [layout, block])
  return (
    <>
      <p className="sum" data-testid="moves">
        {movesWords(comparison)}
      </p>
      <ol className="moves">
        {comparison.moves.map((move) => (
          <li key={translateAny(move.message)}>{translateAny(move.message)}</li>
        ))}
      </ol>
      {comparison.differences.length > 0 && (
        <details className="order">
          <summary>{tn(comparison.differences.length, 'One unit is different', '{n} units are different')}</summary>
          <ul className="moves">
            {comparison.differences.map(({ laid: id, message: difference }) => (
              <li key={id}>
                <button type="button" className="plain" onClick={() => setView({ selected: [id] })}>
                  {translateAny(difference)}
                </button>
              </li>
            ))}
          </ul>
        </details>
      )}
      {report !== null && <p className="hint">{t('As sewn: {summary}', { summary: summaryText(report) })}</p>}
      <div className="buttons">
        <button
          type="button"
          disabled={comparison.differences.length === 0}
          onClick={() => {
            replaceDocument(layout, message('go-back-to-layout'))
            setComparedLayout(null)
          }}
        >
          {t('Go back to the plan')}
        </button>
        <button type="button" onClick={() => setComparedLayout(null)}>
          {t('Stop comparing')}
        </button>
      </div>
    </>
  )
}

function movesWords({ moves, proved }: ReturnType<typeof asSewn>): string {
  if (moves.length === 0) return t('It matches the plan.')
  if (proved || moves.length === 1) return tn(moves.length, 'One change fixes it:', '{n} changes fix it:')
  return t('{n} changes fix it (the fewest found):', { n: moves.length })
}
