/** What a class gets at a time: parts of the quilt, each a few places under a title. */
import { addPart, namePart, type Quilt, removePart } from '../../../geometry/index.ts'
import { editQuilt } from '../../document/store.ts'
import { t, tn } from '../../words/words.ts'
import { act } from '../quiltActions.ts'
import { selectedPlaces, setQuiltView, useQuiltView } from '../quiltView.ts'

export function PartsPanel({ quilt }: { readonly quilt: Quilt }) {
  const selected = useQuiltView((view) => view.selected)
  const parts = quilt.parts ?? []
  const ids = selectedPlaces(quilt, selected).map(({ id }) => id)
  const show = (places: readonly string[]): void =>
    setQuiltView({ selected: quilt.places.filter(({ id }) => places.includes(id)).map(({ at }) => at) })
  return (
    <section aria-labelledby="parts-title">
      <h2 id="parts-title">{t('Parts for a class')}</h2>
      <p className="hint">{t('What a class gets at a time, such as a block a month. Positions in no part come with the last.')}</p>
      {parts.map(({ title, places }, number) => (
        // biome-ignore lint/suspicious/noArrayIndexKey: a part is its number
        <div className="part" key={number}>
          <label>
            {t('Part {n}', { n: number + 1 })}
            <input value={title} maxLength={100} onChange={(event) => editQuilt(namePart(number, event.target.value))} />
          </label>
          <button type="button" aria-label={t('Select the positions of part {n}', { n: number + 1 })} onClick={() => show(places)}>
            {tn(places.length, 'one position', '{n} positions')}
          </button>
          <button
            type="button"
            className="danger"
            aria-label={t('Delete part {n}', { n: number + 1 })}
            onClick={() => act(removePart(number), t('Part {n} is deleted.', { n: number + 1 }))}
          >
            {t('Delete')}
          </button>
        </div>
      ))}
      <div className="buttons">
        <button
          type="button"
          disabled={ids.length === 0}
          onClick={() => act(addPart(t('Part {n}', { n: parts.length + 1 }), ids), t('The selected positions are a part now.'))}
        >
          {t('Make the selection a part')}
        </button>
      </div>
    </section>
  )
}
