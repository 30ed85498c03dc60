/** The size chart over the page: what to cut for any kind of unit, unit of measure, seam allowance, range of sizes and extra for trimming. */
import { useState } from 'react'
import { createPortal } from 'react-dom'
import {
  type MeasureUnit,
  CHART_KINDS,
  type ChartKind,
  OVERSIZES,
  parseRational,
  type Rational,
  sayLength,
  seamOf,
  type SizeChart,
  sizeChart,
  toNumber,
} from '../../../geometry/index.ts'
import { EntryField } from '../../controls/EntryField.tsx'
import { lengthForFile, lengthProblem } from '../../controls/lengthEntry.ts'
import { useModal } from '../../controls/useModal.ts'
import { useStore } from '../../document/store.ts'
import { sayOneSize } from '../../words/sizes.ts'
import { label, t } from '../../words/words.ts'
import { SizeChartTable } from './SizeChartTable.tsx'

const KIND_NAMES: Readonly<Record<ChartKind, string>> = {
  geese: label('Flying geese, four at a time'),
  hst: label('Half-square triangles, two at a time'),
  hst4: label('Half-square triangles, four at a time'),
  hst8: label('Half-square triangles, eight at a time'),
  hourglass: label('Hourglasses, two at a time'),
  diamond: label('Squares in squares'),
  setting: label('Setting triangles for blocks on point'),
}

/** Finished sizes that the chart begins with, in inches or centimetres. */
const FIRST_RANGE = { in: { from: '1', to: '12', step: '1/2' }, cm: { from: '2', to: '30', step: '1' } } as const
const MOST_ROWS = 400

const sizeProblem = (text: string): string | null => lengthProblem(text, { most: 1000 })

export function SizeChartDialog({ close }: { readonly close: () => void }) {
  const block = useStore(({ history }) => history.block)
  const dialog = useModal()
  const [kind, setKind] = useState<ChartKind>('geese')
  const [unit, setUnit] = useState<MeasureUnit>(block.measure.unit)
  const [seam, setSeam] = useState(sayLength(toNumber(seamOf(block)), block.measure.unit))
  const [range, setRange] = useState<{ readonly from: string; readonly to: string; readonly step: string }>(FIRST_RANGE[block.measure.unit])
  const [oversize, setOversize] = useState(0)
  const chart = computeChart(kind, unit, seam, range, oversize)
  const changeUnit = (next: MeasureUnit): void => {
    setUnit(next)
    setSeam(next === 'in' ? '1/4' : '0.75')
    setRange(FIRST_RANGE[next])
    setOversize(0)
  }
  return createPortal(
    <dialog ref={dialog} className="chart" aria-labelledby="chart-name" onClose={close}>
      <div className="titled">
        <h2 id="chart-name">{t('Size chart')}</h2>
        <button type="button" onClick={() => dialog.current?.close()}>
          {t('Close')}
        </button>
      </div>
      <div className="chart-fields">
        <label className="wide">
          {t('Unit')}
          <select value={kind} onChange={(event) => setKind(event.target.value as ChartKind)}>
            {CHART_KINDS.map((one) => (
              <option key={one} value={one}>
                {t(KIND_NAMES[one])}
              </option>
            ))}
          </select>
        </label>
        <label>
          {t('Inches or centimetres')}
          <select value={unit} onChange={(event) => changeUnit(event.target.value as MeasureUnit)}>
            <option value="in">{t('inches')}</option>
            <option value="cm">{t('centimetres')}</option>
          </select>
        </label>
        <EntryField
          label={t('Seam allowance ({unit})', { unit })}
          value={seam}
          validate={sizeProblem}
          onCommit={(text) => setSeam(lengthForFile(text))}
        />
        <EntryField
          label={t('Finished size from')}
          value={range.from}
          validate={sizeProblem}
          onCommit={(from) => setRange({ ...range, from: lengthForFile(from) })}
        />
        <EntryField
          label={t('Finished size to')}
          value={range.to}
          validate={sizeProblem}
          onCommit={(to) => setRange({ ...range, to: lengthForFile(to) })}
        />
        <EntryField
          label={t('Steps of')}
          value={range.step}
          validate={sizeProblem}
          onCommit={(step) => setRange({ ...range, step: lengthForFile(step) })}
        />
        <label className="wide">
          {t('Extra for trimming')}
          <select value={oversize} onChange={(event) => setOversize(Number(event.target.value))}>
            <option value={0}>{t('none')}</option>
            {OVERSIZES[unit].map((by) => (
              <option key={by} value={by}>
                {sayOneSize(by, unit)}
              </option>
            ))}
          </select>
        </label>
      </div>
      {typeof chart === 'string' ? <p className="trouble">{chart}</p> : <SizeChartTable chart={chart} name={t(KIND_NAMES[kind])} />}
    </dialog>,
    document.body,
  )
}

/** The chart, or a message that says why there is none. All lengths in the unit given. */
function computeChart(
  kind: ChartKind,
  unit: MeasureUnit,
  seam: string,
  range: { from: string; to: string; step: string },
  oversize: number,
): SizeChart | string {
  const exact = (text: string): Rational => parseRational(text.trim()) ?? { n: 1n, d: 1n }
  const [from, to, step] = [exact(range.from), exact(range.to), exact(range.step)]
  const rows = Math.floor((toNumber(to) - toNumber(from)) / toNumber(step) + 1e-9) + 1
  if (rows < 1) return t('The last size is smaller than the first. Enter a larger one.')
  if (rows > MOST_ROWS) return t('That makes {rows} rows. Enter larger steps.', { rows })
  return sizeChart({ kind, unit, seam: exact(seam), from, to, step, oversize: exact(String(oversize)) })
}
