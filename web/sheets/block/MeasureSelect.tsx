/** Inches or centimetres. Before a block is converted, it says what that does to its sizes. */
import { useState } from 'react'
import { type Block, cellOf, convertMeasure, finishedSizeOf, type MeasureUnit, seamOf } from '../../../geometry/index.ts'
import { editResult } from '../../document/editResult.ts'
import { edit, setView, useStore } from '../../document/store.ts'
import { sayFieldLength, saySidesExactly } from '../../words/sizes.ts'
import { label, t } from '../../words/words.ts'

const NAMES: Readonly<Record<MeasureUnit, string>> = { in: label('inches'), cm: label('centimetres') }

export function MeasureSelect() {
  const block = useStore(({ history }) => history.block)
  const [wanted, setWanted] = useState<MeasureUnit | null>(null)
  const { unit } = block.measure
  const other = wanted === unit ? null : wanted
  const convert = (to: MeasureUnit): void => {
    edit(convertMeasure(to))
    setView({ notice: t('The block is in {measure} now.', { measure: t(NAMES[to]) }) })
    setWanted(null)
  }
  return (
    <>
      <label>
        {t('Unit')}
        <select value={other ?? unit} onChange={(event) => setWanted(event.target.value as MeasureUnit)}>
          <option value="in">{t(NAMES.in)}</option>
          <option value="cm">{t(NAMES.cm)}</option>
        </select>
      </label>
      {other !== null && (
        <div className="offers wide" role="status">
          <p>{t('Sizes are rounded to what is easy to cut:')}</p>
          <Changes before={block} after={editResult(block, convertMeasure(other))} />
          <div className="buttons">
            <button type="button" className="main" onClick={() => convert(other)}>
              {t('Change to {unit}', { unit: t(NAMES[other]) })}
            </button>
            <button type="button" onClick={() => setWanted(null)}>
              {t('Cancel')}
            </button>
          </div>
        </div>
      )}
    </>
  )
}

function Changes({ before, after }: { readonly before: Block; readonly after: Block }) {
  const [from, to] = [before.measure.unit, after.measure.unit]
  const lines = [
    [t('Finished size'), `${saySidesExactly(finishedSizeOf(before), from)} ${from}`, `${saySidesExactly(finishedSizeOf(after), to)} ${to}`],
    [t('Grid square'), `${sayFieldLength(cellOf(before), from)} ${from}`, `${sayFieldLength(cellOf(after), to)} ${to}`],
    [t('Seam allowance'), `${sayFieldLength(seamOf(before), from)} ${from}`, `${sayFieldLength(seamOf(after), to)} ${to}`],
  ] as const
  return (
    <ul>
      {lines.map(([name, was, becomes]) => (
        <li key={name}>{t('{name}: {was} becomes {becomes}', { name, was, becomes })}</li>
      ))}
    </ul>
  )
}
