/** The block's measurements: grid, cell, seam allowance, unit of measure, fabric width, sewing order and borders. */
import {
  cellOf,
  ORDERS,
  type Order,
  setUsableWidth,
  setGrid,
  setSeam,
  setOrder,
  setPressAlike,
  seamOf,
  toNumber,
  usableWidthOf,
} from '../../../geometry/index.ts'
import { edit, useStore } from '../../document/store.ts'
import { sayFieldLength } from '../../words/sizes.ts'
import { label, t } from '../../words/words.ts'
import { EntryField } from '../../controls/EntryField.tsx'
import { isCount, lengthForFile, lengthProblem } from '../../controls/lengthEntry.ts'
import { BlockSize } from './BlockSize.tsx'
import { BorderFields } from './BorderFields.tsx'
import { MeasureSelect } from './MeasureSelect.tsx'

const ORDER_NAMES: Readonly<Record<Order, string>> = {
  auto: label('best for nesting'),
  rows: label('rows'),
  columns: label('columns'),
  sections: label('sections'),
}

/** What is left of fabric 44 in (112 cm) wide without its selvages, and of a narrower one: common practice, no source. */
const USUAL_WIDTHS = { in: [42, 40], cm: [106, 102] } as const

const cellCountProblem = (text: string): string | null => (isCount(text, 100) ? null : t('Enter a whole number from 1 to 100.'))

export function BlockSettings() {
  const block = useStore(({ history }) => history.block)
  const { unit } = block.measure
  return (
    <section aria-labelledby="settings-title">
      <h2 id="settings-title">{t('Block settings')}</h2>
      <BlockSize />
      <div className="pairs">
        <EntryField
          label={t('Columns')}
          value={String(block.grid.columns)}
          validate={cellCountProblem}
          onCommit={(text) => edit(setGrid({ columns: Number(text) }))}
        />
        <EntryField
          label={t('Rows')}
          value={String(block.grid.rows)}
          validate={cellCountProblem}
          onCommit={(text) => edit(setGrid({ rows: Number(text) }))}
        />
        <EntryField
          label={t('Grid square, finished ({unit})', { unit })}
          value={sayFieldLength(cellOf(block), unit)}
          validate={lengthProblem}
          onCommit={(text) => edit(setGrid({ cell: lengthForFile(text) }))}
        />
        <EntryField
          label={t('Seam allowance ({unit})', { unit })}
          value={sayFieldLength(seamOf(block), unit)}
          validate={lengthProblem}
          onCommit={(text) => edit(setSeam(lengthForFile(text)))}
        />
        <MeasureSelect />
        <EntryField
          label={t('Usable width of fabric ({unit})', { unit })}
          value={sayFieldLength(usableWidthOf(block), unit)}
          validate={lengthProblem}
          onCommit={(text) => edit(setUsableWidth(lengthForFile(text)))}
        />
        <div className="buttons usual-widths">
          {USUAL_WIDTHS[unit].map((width) => (
            <button key={width} type="button" aria-pressed={toNumber(usableWidthOf(block)) === width} onClick={() => edit(setUsableWidth(width))}>
              {t('{width} {unit} wide', { width, unit })}
            </button>
          ))}
        </div>
        <label>
          {t('Sewing order')}
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
        {t('Press matching units the same way')}
      </label>
      <BorderFields block={block} />
    </section>
  )
}
