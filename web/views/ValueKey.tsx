/** What the value view shows: how many pairs of neighbours blur into each other, with a way to the sheet that lists them. */
import { useBlurs } from '../workers/useBlurs.ts'
import { setView, useStore } from '../document/store.ts'
import { t, tn } from '../words/words.ts'

export function ValueKey() {
  const block = useStore(({ history }) => history.block)
  const blurs = useBlurs(block)
  if (blurs === null) return <p className="layers">{t('Comparing neighbouring fabrics…')}</p>
  if (blurs.length === 0) return <p className="layers">{t('Neighbouring fabrics stand out.')}</p>
  const lines = blurs.flatMap((blur) => blur.lines)
  const showLines = (): void => setView({ pointedLines: lines })
  const hideLines = (): void => setView({ pointedLines: null })
  return (
    <p className="layers">
      <button
        type="button"
        className="plain"
        onPointerEnter={showLines}
        onPointerLeave={hideLines}
        onFocus={showLines}
        onBlur={hideLines}
        onClick={() => setView({ sheet: 'colour' })}
      >
        {tn(blurs.length, 'One pair of neighbouring fabrics looks alike.', '{n} pairs of neighbouring fabrics look alike.')}
      </button>
    </p>
  )
}
