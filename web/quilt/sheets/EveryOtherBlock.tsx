/** The first thing to try where blocks are pressed alike: every other one pressed the opposite way, and what that leaves. */
import { useMemo } from 'react'
import { type Mutable, pressPlaces, type Quilt, type QuiltReport } from '../../../geometry/index.ts'
import { t, tn } from '../../words/words.ts'
import { quiltWorker } from '../../workers/clients.ts'
import { useWorker } from '../../workers/useWorker.ts'
import { act, everyOther } from '../quiltActions.ts'

export function EveryOtherBlock({ quilt, report }: { readonly quilt: Quilt; readonly report: QuiltReport }) {
  const ids = useMemo(() => everyOther(quilt).flatMap(({ id, block, press }) => (block === undefined || press === 'opposite' ? [] : [id])), [quilt])
  const args = useMemo((): [Quilt] => [pressed(quilt, ids)], [quilt, ids])
  const reply = useWorker(quiltWorker, 'nesting', ids.length === 0 ? null : args)
  if (ids.length === 0) return null
  const left = reply?.type === 'answer' ? reply.value.pressing.between : null
  if (left !== null && left >= report.pressing.between) return null
  return (
    <div className="every-other" role="status">
      <p>
        <strong>{t('Press every other block the other way.')}</strong>{' '}
        {left === null
          ? t('Working…')
          : left === 0
            ? t('Then everything nests.')
            : tn(left, 'That leaves one crossing that doesn’t nest.', 'That leaves {n} crossings that don’t nest.')}
      </p>
      <div className="buttons">
        <button type="button" onClick={() => act(pressPlaces(ids, 'opposite'), t('Every other block is pressed the other way.'))}>
          {t('Press them')}
        </button>
      </div>
    </div>
  )
}

function pressed(quilt: Quilt, ids: readonly string[]): Quilt {
  const draft = { ...quilt, places: quilt.places.map((place) => ({ ...place })) } as unknown as Mutable<Quilt>
  pressPlaces(ids, 'opposite').change(draft)
  return draft as unknown as Quilt
}
