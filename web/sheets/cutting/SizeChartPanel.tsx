/** A size chart over the page: any kind, measure, seam and step; to read, print, copy or save. */
import { useEffect, useRef, useState } from 'react'
import { createPortal } from 'react-dom'
import {
  CHART_KINDS,
  type ChartKind,
  chartCsv,
  chartText,
  isOnRuler,
  OVERSIZES,
  parseRational,
  type Rational,
  sayLength,
  seamOf,
  type SizeChart,
  sizeChart,
  toNumber,
} from '../../../geometry/index.ts'
import { download } from '../../keeping/download.ts'
import { setView, useStore } from '../../document/store.ts'
import { said, t, tell } from '../../words/words.ts'
import { EntryField } from '../../controls/EntryField.tsx'
import { lengthProblem, lengthForFile } from '../../controls/lengthEntry.ts'
import { type MeasureUnit, sayOneSize } from '../../words/sizes.ts'
import './cutting.css'

const KINDS: Readonly<Record<ChartKind, string>> = {
  geese: said('Flying geese, four at a time'),
  hst: said('Triangles, two at a time'),
  hst4: said('Triangles, four at a time'),
  hst8: said('Triangles, eight at a time'),
  hourglass: said('Hourglasses, two at a time'),
  diamond: said('Squares in squares'),
  setting: said('Triangles round blocks on point'),
}

const USUAL = { in: { from: '1', to: '12', step: '1/2' }, cm: { from: '2', to: '30', step: '1' } } as const
const MOST_ROWS = 400

export function SizeChartPanel() {
  const [open, setOpen] = useState(false)
  return (
    <section aria-labelledby="chart-title">
      <h2 id="chart-title">{t('Size chart')}</h2>
      <p className="hint">{t('What to cut for a unit of any size, without a block.')}</p>
      <div className="buttons">
        <button type="button" aria-haspopup="dialog" onClick={() => setOpen(true)}>
          {t('Open the size chart')}
        </button>
      </div>
      {open && <ChartPage close={() => setOpen(false)} />}
    </section>
  )
}

const wrongLength = (text: string): string | null => lengthProblem(text, { most: 1000 })

function ChartPage({ close }: { readonly close: () => void }) {
  const block = useStore(({ history }) => history.block)
  const dialog = useRef<HTMLDialogElement>(null)
  const [kind, setKind] = useState<ChartKind>('geese')
  const [unit, setUnit] = useState<MeasureUnit>(block.measure.unit)
  const [seam, setSeam] = useState(sayLength(toNumber(seamOf(block)), block.measure.unit))
  const [range, setRange] = useState<{ readonly from: string; readonly to: string; readonly step: string }>(USUAL[block.measure.unit])
  const [oversize, setOversize] = useState(0)
  useEffect(() => dialog.current?.showModal(), [])
  const chart = chartOf(kind, unit, seam, range, oversize)
  const inMeasure = (next: MeasureUnit): void => {
    setUnit(next)
    setSeam(next === 'in' ? '1/4' : '0.75')
    setRange(USUAL[next])
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
      <div className="asked">
        <label className="wide">
          {t('Units')}
          <select value={kind} onChange={(event) => setKind(event.target.value as ChartKind)}>
            {CHART_KINDS.map((one) => (
              <option key={one} value={one}>
                {t(KINDS[one])}
              </option>
            ))}
          </select>
        </label>
        <label>
          {t('Measure')}
          <select value={unit} onChange={(event) => inMeasure(event.target.value as MeasureUnit)}>
            <option value="in">{t('inches')}</option>
            <option value="cm">{t('centimetres')}</option>
          </select>
        </label>
        <EntryField
          label={t('Seam allowance ({unit})', { unit })}
          value={seam}
          validate={wrongLength}
          onCommit={(text) => setSeam(lengthForFile(text))}
        />
        <EntryField
          label={t('From, finished')}
          value={range.from}
          validate={wrongLength}
          onCommit={(from) => setRange({ ...range, from: lengthForFile(from) })}
        />
        <EntryField label={t('To')} value={range.to} validate={wrongLength} onCommit={(to) => setRange({ ...range, to: lengthForFile(to) })} />
        <EntryField
          label={t('In steps of')}
          value={range.step}
          validate={wrongLength}
          onCommit={(step) => setRange({ ...range, step: lengthForFile(step) })}
        />
        <label className="wide">
          {t('Cut larger, then trim')}
          <select value={oversize} onChange={(event) => setOversize(Number(event.target.value))}>
            <option value={0}>{t('no larger than needed')}</option>
            {OVERSIZES[unit].map((by) => (
              <option key={by} value={by}>
                {t('by {length}', { length: sayOneSize(by, unit) })}
              </option>
            ))}
          </select>
        </label>
      </div>
      {typeof chart === 'string' ? <p className="trouble">{chart}</p> : <Rows chart={chart} name={t(KINDS[kind])} />}
    </dialog>,
    document.body,
  )
}

function chartOf(
  kind: ChartKind,
  unit: MeasureUnit,
  seam: string,
  range: { from: string; to: string; step: string },
  oversize: number,
): SizeChart | string {
  const exact = (text: string): Rational => parseRational(text.trim()) ?? { n: 1n, d: 1n }
  const [from, to, step] = [exact(range.from), exact(range.to), exact(range.step)]
  const rows = Math.floor((toNumber(to) - toNumber(from)) / toNumber(step) + 1e-9) + 1
  if (rows < 1) return t('The last size is below the first; give a larger one.')
  if (rows > MOST_ROWS) return t('That would be {rows} rows; take larger steps.', { rows })
  return sizeChart({ kind, unit, seam: exact(seam), from, to, step, oversize: exact(String(oversize)) })
}

function Rows({ chart, name }: { readonly chart: SizeChart; readonly name: string }) {
  const { unit, rows } = chart
  const pieces = rows[0]?.pieces.map((piece) => piece.name) ?? []
  const about = rows.some((row) => [...row.finished, ...row.unfinished, ...row.pieces.map(({ size }) => size)].some((size) => !isOnRuler(size, unit)))
  const one = (size: number): string => `${isOnRuler(size, unit) ? '' : '~'}${sayLength(size, unit)}`
  const both = ([w, h]: readonly [number, number]): string => (w === h ? one(w) : `${one(w)} × ${one(h)}`)
  const file = `size-chart-${chart.kind}-${unit}`
  return (
    <>
      {/* biome-ignore lint/a11y/noNoninteractiveTabindex: a table that scrolls is reached by the keyboard */}
      <section className="rows" tabIndex={0} aria-label={name}>
        <table>
          <caption className="unseen">
            {name}, {t('Seam allowance ({unit})', { unit })} {sayLength(chart.seam, unit)}
          </caption>
          <thead>
            <tr>
              {[t('Finished'), t('Trim to'), ...pieces.map(tell)].map((head) => (
                <th key={head} scope="col">
                  {head}
                </th>
              ))}
            </tr>
          </thead>
          <tbody>
            {rows.map((row) => (
              <tr key={row.finished.join()}>
                <th scope="row">{both(row.finished)}</th>
                <td>{both(row.unfinished)}</td>
                {row.pieces.map((piece) => (
                  <td key={piece.name}>{one(piece.size)}</td>
                ))}
              </tr>
            ))}
          </tbody>
        </table>
      </section>
      {about && (
        <p className="hint">{unit === 'in' ? t('~ the nearest 1/16 in, not the size itself') : t('~ the nearest 0.1 cm, not the size itself')}</p>
      )}
      <div className="buttons">
        <button type="button" onClick={() => window.print()}>
          {t('Print')}
        </button>
        <button type="button" onClick={() => void copied(chartText(chart))}>
          {t('Copy as text')}
        </button>
        <button type="button" onClick={() => download(`${file}.txt`, chartText(chart), 'text/plain')}>
          {t('Save as text')}
        </button>
        <button type="button" onClick={() => download(`${file}.csv`, chartCsv(chart), 'text/csv')}>
          {t('Save as CSV')}
        </button>
      </div>
    </>
  )
}

async function copied(text: string): Promise<void> {
  try {
    await navigator.clipboard.writeText(text)
    setView({ notice: t('The size chart is copied.') })
  } catch {
    setView({ notice: t('This browser does not let the page copy; save the chart instead.') })
  }
}
