/** My star came out differently: the block as laid, kept while the board shows what was sewn, and the moves back. */
import { useMemo } from 'react'
import { asSewn } from '../../geometry/index.ts'
import { keepLaid, look, replace, useStore, useTold } from '../state/store.ts'
import { t, tell, tn } from '../words/words.ts'
import { summary } from './FindingsLine.tsx'

export function AsSewn() {
  const laid = useStore((state) => state.laid)
  const block = useStore(({ history }) => history.block)
  const { report } = useTold()
  const said = useMemo(() => (laid === null ? null : asSewn(laid, block)), [laid, block])
  if (laid === null && block.units.length === 0) return null
  return (
    <section aria-labelledby="sewn-title">
      <h2 id="sewn-title">{t('As it came out')}</h2>
      {laid === null || said === null ? (
        <>
          <p className="hint">
            {t(
              'Did it come out otherwise than you laid it? Keep this layout, then turn and swap units on the board until it looks like what you sewed.',
            )}
          </p>
          <div className="buttons">
            <button
              type="button"
              onClick={() => {
                keepLaid(block)
                look({ notice: t('This layout is kept as laid. Now make the board look like what you sewed.') })
              }}
            >
              {t('Keep this as laid')}
            </button>
          </div>
        </>
      ) : (
        <>
          <p className="sum" data-testid="moves">
            {movesWords(said)}
          </p>
          <ol className="moves">
            {said.moves.map(({ message }) => (
              <li key={message}>{tell(message)}</li>
            ))}
          </ol>
          {said.differences.length > 0 && (
            <details className="order">
              <summary>{tn(said.differences.length, 'One place looks otherwise', '{n} places look otherwise')}</summary>
              <ul className="moves">
                {said.differences.map(({ laid: id, message }) => (
                  <li key={id}>
                    <button type="button" className="plain" onClick={() => look({ chosen: [id] })}>
                      {tell(message)}
                    </button>
                  </li>
                ))}
              </ul>
            </details>
          )}
          {report !== null && <p className="hint">{t('As it came out: {summary}', { summary: summary(report) })}</p>}
          <div className="buttons">
            <button
              type="button"
              disabled={said.differences.length === 0}
              onClick={() => {
                replace(laid, t('go back to the layout'))
                keepLaid(null)
              }}
            >
              {t('Back to the layout')}
            </button>
            <button type="button" onClick={() => keepLaid(null)}>
              {t('Stop comparing')}
            </button>
          </div>
        </>
      )}
    </section>
  )
}

function movesWords({ moves, proved }: ReturnType<typeof asSewn>): string {
  if (moves.length === 0) return t('It is as it was laid.')
  if (proved || moves.length === 1) return tn(moves.length, 'One move leads back:', '{n} moves lead back:')
  return t('{n} moves lead back (the fewest found):', { n: moves.length })
}
