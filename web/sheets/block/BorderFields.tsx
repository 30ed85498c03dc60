/** The block's borders from the inside out: the finished width, the fabric and the corner squares of each. */
import { type Block, type Edit, lengthOf, setBorders } from '../../../geometry/index.ts'
import { EntryField } from '../../controls/EntryField.tsx'
import { FabricOptions } from '../../controls/FabricOptions.tsx'
import { lengthForFile, lengthProblem } from '../../controls/lengthEntry.ts'
import { edit } from '../../document/store.ts'
import { sayFieldLength } from '../../words/sizes.ts'
import { t } from '../../words/words.ts'

export function BorderFields({ block }: { readonly block: Block }) {
  const { unit } = block.measure
  const borders = block.borders ?? []
  return (
    <>
      {borders.map((border, index) => (
        // biome-ignore lint/suspicious/noArrayIndexKey: a border is its place, counted from the block outward
        <div className="pairs" key={index}>
          <EntryField
            label={t('Border {n}, finished width ({unit})', { n: index + 1, unit })}
            value={sayFieldLength(lengthOf(border.finishedWidth), unit)}
            validate={lengthProblem}
            onCommit={(text) => edit(withChange(borders, index, { finishedWidth: lengthForFile(text) }))}
          />
          <label>
            {t('Fabric of border {n}', { n: index + 1 })}
            <select value={border.fabric} onChange={(event) => edit(withChange(borders, index, { fabric: event.target.value }))}>
              <FabricOptions fabrics={block.fabrics} />
            </select>
          </label>
          <label>
            {t('Corner squares of border {n}', { n: index + 1 })}
            <select value={border.corner ?? ''} onChange={(event) => edit(withCorner(borders, index, event.target.value))}>
              <option value="">{t('none')}</option>
              <FabricOptions fabrics={block.fabrics} />
            </select>
          </label>
        </div>
      ))}
      <div className="buttons">
        <button
          type="button"
          disabled={block.fabrics.length === 0}
          onClick={() => edit(setBorders([...borders, { finishedWidth: 1, fabric: block.fabrics[0]?.id as string }]))}
        >
          {t('Add a border')}
        </button>
        {borders.length > 0 && (
          <button className="danger" type="button" onClick={() => edit(setBorders(borders.slice(0, -1)))}>
            {t('Delete the outer border')}
          </button>
        )}
      </div>
    </>
  )
}

type Borders = Parameters<typeof setBorders>[0]

const withChange = (borders: Borders, place: number, change: Partial<Borders[number]>): Edit =>
  setBorders(borders.map((border, index) => (index === place ? { ...border, ...change } : border)))

/** Without corner squares, the top and bottom borders run through to the corners. */
const withCorner = (borders: Borders, place: number, fabric: string): Edit =>
  setBorders(
    borders.map((border, index) => {
      if (index !== place) return border
      const { corner: _, ...plain } = border
      return fabric === '' ? plain : { ...plain, corner: fabric }
    }),
  )
