/** The rows of a size chart, and the buttons to print, copy and save them. A size that no ruler shows is rounded and marked with a tilde. */
import { chartCsv, chartText, isOnRuler, message, sayLength, type SizeChart } from '../../../geometry/index.ts'
import { copyText } from '../../controls/copyText.ts'
import { saveAndSay } from '../../keeping/download.ts'
import { translateAny } from '../../words/translateAny.ts'
import { t } from '../../words/words.ts'

export function SizeChartTable({ chart, name }: { readonly chart: SizeChart; readonly name: string }) {
  const { unit, rows } = chart
  const pieces = rows[0]?.pieces.map(({ piece }) => piece) ?? []
  const rounded = rows.some((row) =>
    [...row.finished, ...row.unfinished, ...row.pieces.map(({ size }) => size)].some((size) => !isOnRuler(size, unit)),
  )
  const one = (size: number): string => `${isOnRuler(size, unit) ? '' : '~'}${sayLength(size, unit)}`
  const both = ([w, h]: readonly [number, number]): string => (w === h ? one(w) : `${one(w)} × ${one(h)}`)
  const file = `size-chart-${chart.kind}-${unit}`
  return (
    <>
      {/* biome-ignore lint/a11y/noNoninteractiveTabindex: a table that scrolls must be reachable by the keyboard */}
      <section className="rows" tabIndex={0} aria-label={name}>
        <table>
          <caption className="unseen">
            {name}, {t('Seam allowance ({unit})', { unit })} {sayLength(chart.seam, unit)}
          </caption>
          <thead>
            <tr>
              {[t('Finished'), t('Trim to'), ...pieces.map((piece) => translateAny(message('chart-piece', { piece })))].map((head) => (
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
                {row.pieces.map(({ piece, size }) => (
                  <td key={piece}>{one(size)}</td>
                ))}
              </tr>
            ))}
          </tbody>
        </table>
      </section>
      {rounded && <p className="hint">{unit === 'in' ? t('~ rounded to the nearest 1/16 in') : t('~ rounded to the nearest 0.1 cm')}</p>}
      <div className="buttons">
        <button type="button" className="main" onClick={() => window.print()}>
          {t('Print this chart')}
        </button>
        <button type="button" onClick={() => void copyChart(chart)}>
          {t('Copy as text')}
        </button>
        <button type="button" onClick={() => saveAndSay(t('Size chart'), `${file}.txt`, chartText(chart), 'text/plain')}>
          {t('Save as text')}
        </button>
        <button type="button" onClick={() => saveAndSay(t('Size chart'), `${file}.csv`, chartCsv(chart), 'text/csv')}>
          {t('Save as CSV')}
        </button>
      </div>
    </>
  )
}

const copyChart = (chart: SizeChart): Promise<void> =>
  copyText(chartText(chart), t('Size chart copied.'), t('Your browser blocks copying. Save the chart instead.'))
