/** What else the seam check says about the whole block: its sizes, seams that are not straight, and its bulkiest spot. */
import { type Findings, sayLength } from '../../../geometry/index.ts'
import { setView } from '../../document/store.ts'
import { t, tn } from '../../words/words.ts'

export function BlockSizes({ report }: { readonly report: Findings }) {
  const { unit } = report.measure
  const say = ([w, h]: readonly [number, number]): string => `${sayLength(w, unit)} × ${sayLength(h, unit)} ${unit}`
  const { finished, unfinished, withBorders } = report.block
  return (
    <dl className="size">
      <dt>{t('Finished')}</dt>
      <dd>{say(finished)}</dd>
      <dt>{t('Unfinished')}</dt>
      <dd>{say(unfinished)}</dd>
      {withBorders[0] !== unfinished[0] && (
        <>
          <dt>{t('With borders')}</dt>
          <dd>{say(withBorders)}</dd>
        </>
      )}
    </dl>
  )
}

/** How many seams are not straight, and whether another way of joining could need fewer. */
export function CrookedSeams({ report: { crooked } }: { readonly report: Findings }) {
  const { setIn, partial, proved } = crooked
  if (setIn + partial === 0) return null
  const parts = [
    ...(setIn > 0 ? [tn(setIn, '1 set-in seam', '{n} set-in seams')] : []),
    ...(partial > 0 ? [tn(partial, '1 partial seam', '{n} partial seams')] : []),
  ]
  const seams = parts.length === 2 ? t('{one} and {other}', { one: parts[0] as string, other: parts[1] as string }) : (parts[0] as string)
  return (
    <p className="hint">
      {t('This block needs {seams}.', { seams })} {proved ? t('That’s the fewest possible.') : t('That’s the fewest found.')}
    </p>
  )
}

export function ThickestSpot({ report: { bulk } }: { readonly report: Findings }) {
  if (bulk === null) return null
  return (
    <p className="hint">
      <button
        type="button"
        className="plain"
        onClick={() => setView({ finding: 'bulk', mode: 'layers' })}
        onPointerEnter={() => setView({ finding: 'bulk' })}
        onFocus={() => setView({ finding: 'bulk' })}
      >
        {tn(bulk.most, 'Bulkiest spot: 1 layer', 'Bulkiest spot: {n} layers')}
      </button>
    </p>
  )
}
