/** The borders of a whole quilt, from the inside out. */
import { type Border, type Quilt, setQuiltBorders } from '../../../geometry/index.ts'
import { EntryField } from '../../controls/EntryField.tsx'
import { FabricOptions } from '../../controls/FabricOptions.tsx'
import { lengthForFile, lengthProblem } from '../../controls/lengthEntry.ts'
import { editQuilt } from '../../document/store.ts'
import { sayFieldLength } from '../../words/sizes.ts'
import { t } from '../../words/words.ts'
import { exactOf } from './FrameFields.tsx'

export function BorderPanel({ quilt }: { readonly quilt: Quilt }) {
  const { unit } = quilt.measure
  const borders = quilt.borders ?? []
  const change = (index: number, next: Border): void => editQuilt(setQuiltBorders(borders.map((one, place) => (place === index ? next : one))))
  const fabric = quilt.fabrics[0]?.id
  return (
    <section aria-labelledby="borders-title">
      <h2 id="borders-title">{t('Borders')}</h2>
      {borders.map((border, index) => (
        // biome-ignore lint/suspicious/noArrayIndexKey: a border is its place, counted from the middle outward
        <div className="pairs" key={index}>
          <EntryField
            label={t('Border {n}, finished width ({unit})', { n: index + 1, unit })}
            value={sayFieldLength(exactOf(border.finishedWidth), unit)}
            validate={lengthProblem}
            onCommit={(text) => change(index, { ...border, finishedWidth: lengthForFile(text) })}
          />
          <label>
            {t('Fabric of border {n}', { n: index + 1 })}
            <select value={border.fabric} onChange={(event) => change(index, { ...border, fabric: event.target.value })}>
              <FabricOptions fabrics={quilt.fabrics} />
            </select>
          </label>
        </div>
      ))}
      <div className="buttons">
        <button
          type="button"
          disabled={fabric === undefined}
          onClick={() => editQuilt(setQuiltBorders([...borders, { finishedWidth: unit === 'in' ? 3 : 8, fabric: fabric as string }]))}
        >
          {t('Add a border')}
        </button>
        {borders.length > 0 && (
          <button className="danger" type="button" onClick={() => editQuilt(setQuiltBorders(borders.slice(0, -1)))}>
            {t('Delete the outer border')}
          </button>
        )}
      </div>
    </section>
  )
}
