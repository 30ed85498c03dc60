/** My star came out differently: the block as laid, kept while the board shows what was sewn, and the moves back. */
import { useMemo } from 'react'
import { asSewn } from '../../geometry/index.ts'
import { keepLaid, look, replace, useStore, useTold } from '../state/store.ts'
import { summary } from './FindingsLine.tsx'

export function AsSewn() {
  const laid = useStore((state) => state.laid)
  const block = useStore(({ history }) => history.block)
  const { report } = useTold()
  const said = useMemo(() => (laid === null ? null : asSewn(laid, block)), [laid, block])
  return (
    <section aria-labelledby="sewn-title">
      <h2 id="sewn-title">As it came out</h2>
      {laid === null || said === null ? (
        <>
          <p className="hint">
            Did it come out otherwise than you laid it? Keep this layout, then turn and swap units on the board until it looks like what you sewed.
          </p>
          <div className="buttons">
            <button
              type="button"
              onClick={() => {
                keepLaid(block)
                look({ notice: 'This layout is kept as laid. Now make the board look like what you sewed.' })
              }}
            >
              Keep this as laid
            </button>
          </div>
        </>
      ) : (
        <>
          <p className="sum" data-testid="moves">
            {said.moves.length === 0
              ? 'It is as it was laid.'
              : said.moves.length === 1
                ? 'One move leads back:'
                : `${said.moves.length} moves lead back${said.proved ? '' : ' (the fewest found)'}:`}
          </p>
          <ol className="moves">
            {said.moves.map(({ message }) => (
              <li key={message}>{message}</li>
            ))}
          </ol>
          {said.differences.length > 0 && (
            <details className="order">
              <summary>
                {said.differences.length} {said.differences.length === 1 ? 'place looks' : 'places look'} otherwise
              </summary>
              <ul className="moves">
                {said.differences.map(({ laid: id, message }) => (
                  <li key={id}>
                    <button type="button" className="plain" onClick={() => look({ chosen: [id] })}>
                      {message}
                    </button>
                  </li>
                ))}
              </ul>
            </details>
          )}
          {report !== null && <p className="hint">As it came out: {summary(report)}</p>}
          <div className="buttons">
            <button
              type="button"
              disabled={said.differences.length === 0}
              onClick={() => {
                replace(laid, 'go back to the layout')
                keepLaid(null)
              }}
            >
              Back to the layout
            </button>
            <button type="button" onClick={() => keepLaid(null)}>
              Stop comparing
            </button>
          </div>
        </>
      )}
    </section>
  )
}
