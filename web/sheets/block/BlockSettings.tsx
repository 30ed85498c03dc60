/** The block's measures: grid, cell, seam allowance, order of joining, borders, cloth. */
import {
  type Edit,
  ORDERS,
  type Order,
  setBorders,
  setCloth,
  setGrid,
  setMeasure,
  setOrder,
  setPressAlike,
  seamOf,
  sayLength,
  toNumber,
  usableWidthOf,
} from '../../../geometry/index.ts'
import { edit, useStore } from '../../document/store.ts'
import { said, t } from '../../words/words.ts'
import { FabricOptions } from '../../controls/FabricOptions.tsx'
import { EntryField } from '../../controls/EntryField.tsx'
import { lengthProblem, lengthForFile } from '../../controls/lengthEntry.ts'

const ORDER_NAMES: Readonly<Record<Order, string>> = {
  auto: said('as nests best'),
  rows: said('rows'),
  columns: said('columns'),
  sections: said('sections'),
}

const notCount = (text: string): string | null =>
  /^\d{1,3}$/.test(text.trim()) && Number(text) >= 1 && Number(text) <= 100 ? null : t('Give a whole number of cells from 1 to 100.')

export function BlockSettings() {
  const block = useStore(({ history }) => history.block)
  const { unit } = block.measure
  const borders = block.borders ?? []
  const length = (value: number | string): string => (typeof value === 'string' ? value : sayLength(value, unit))
  return (
    <section aria-labelledby="settings-title">
      <h2 id="settings-title">{t('Measures')}</h2>
      <div className="pairs">
        <EntryField
          label={t('Columns')}
          value={String(block.grid.columns)}
          validate={notCount}
          onCommit={(text) => edit(setGrid({ columns: Number(text) }))}
        />
        <EntryField
          label={t('Rows')}
          value={String(block.grid.rows)}
          validate={notCount}
          onCommit={(text) => edit(setGrid({ rows: Number(text) }))}
        />
        <EntryField
          label={t('Cell, finished ({unit})', { unit })}
          value={length(block.grid.cell)}
          validate={lengthProblem}
          onCommit={(text) => edit(setGrid({ cell: lengthForFile(text) }))}
        />
        <EntryField
          label={t('Seam allowance ({unit})', { unit })}
          value={length(block.measure.seam ?? toNumber(seamOf(block)))}
          validate={lengthProblem}
          onCommit={(text) => edit(setMeasure({ seam: lengthForFile(text) }))}
        />
        <label>
          {t('Measure')}
          <select value={unit} onChange={(event) => edit(setMeasure({ unit: event.target.value as 'in' | 'cm' }))}>
            <option value="in">{t('inches')}</option>
            <option value="cm">{t('centimetres')}</option>
          </select>
        </label>
        <EntryField
          label={t('Usable cloth width ({unit})', { unit })}
          value={length(block.cloth?.usableWidth ?? toNumber(usableWidthOf(block)))}
          validate={lengthProblem}
          onCommit={(text) => edit(setCloth(lengthForFile(text)))}
        />
        <label>
          {t('Join by')}
          <select value={block.order ?? 'auto'} onChange={(event) => edit(setOrder(event.target.value as Order))}>
            {ORDERS.map((order) => (
              <option key={order} value={order}>
                {t(ORDER_NAMES[order])}
              </option>
            ))}
          </select>
        </label>
      </div>
      <label className="tick">
        <input type="checkbox" checked={block.pressAlike === true} onChange={(event) => edit(setPressAlike(event.target.checked))} />
        {t('Press alike units alike')}
      </label>
      {borders.map((border, index) => (
        // biome-ignore lint/suspicious/noArrayIndexKey: a border is its place, counted from the block outward
        <div className="pairs" key={index}>
          <EntryField
            label={t('Border {n}, finished ({unit})', { n: index + 1, unit })}
            value={length(border.finishedWidth)}
            validate={lengthProblem}
            onCommit={(text) => edit(changed(borders, index, { finishedWidth: lengthForFile(text) }))}
          />
          <label>
            {t('Its fabric')}
            <select value={border.fabric} onChange={(event) => edit(changed(borders, index, { fabric: event.target.value }))}>
              <FabricOptions fabrics={block.fabrics} />
            </select>
          </label>
          <label>
            {t('Its corner squares')}
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
          <button type="button" onClick={() => edit(setBorders(borders.slice(0, -1)))}>
            {t('Remove the outer border')}
          </button>
        )}
      </div>
    </section>
  )
}

type Borders = Parameters<typeof setBorders>[0]

const changed = (borders: Borders, place: number, change: Partial<Borders[number]>): Edit =>
  setBorders(borders.map((border, index) => (index === place ? { ...border, ...change } : border)))

/** Without a fabric top and bottom run through. */
const withCorner = (borders: Borders, place: number, fabric: string): Edit =>
  setBorders(
    borders.map((border, index) => {
      if (index !== place) return border
      const { corner: _, ...plain } = border
      return fabric === '' ? plain : { ...plain, corner: fabric }
    }),
  )
