/** The booklet of the quilt as PDF: all of it, or one part for a class. */
import '../../sheets/booklet/printPanel.css'
import { useRef, useState } from 'react'
import { isError, type Paper, PAPER_NAMES, PAPERS, type Quilt } from '../../../geometry/index.ts'
import { usualPaperHere } from '../../document/region.ts'
import { PrintingProgress } from '../../sheets/booklet/PrintingProgress.tsx'
import { usePrinting } from '../../sheets/booklet/usePrinting.ts'
import { t } from '../../words/words.ts'
import { useQuiltReport } from '../useQuiltReport.ts'
import { PartsPanel } from './PartsPanel.tsx'

export function QuiltBookletSheet({ quilt }: { readonly quilt: Quilt }) {
  const [paper, setPaper] = useState<Paper>(usualPaperHere())
  const [part, setPart] = useState<number | null>(null)
  const { progress, startQuilt, cancel } = usePrinting()
  const { report } = useQuiltReport()
  const button = useRef<HTMLButtonElement>(null)
  const unready = report === null || report.problems.some(isError)
  const parts = quilt.parts ?? []
  const chosen = part !== null && part <= parts.length ? part : null
  const disabled = progress !== null || unready
  return (
    <>
      <section aria-labelledby="quilt-booklet-title" className="prints">
        <h2 id="quilt-booklet-title">{t('Booklet as PDF')}</h2>
        {parts.length > 0 && (
          <label>
            {t('What to print')}
            <select value={chosen ?? ''} onChange={(event) => setPart(event.target.value === '' ? null : Number(event.target.value))}>
              <option value="">{t('the whole quilt')}</option>
              {parts.map(({ title }, index) => (
                // biome-ignore lint/suspicious/noArrayIndexKey: a part is its number
                <option key={index} value={index + 1}>
                  {t('Part {n}', { n: index + 1 })}: {title}
                </option>
              ))}
            </select>
          </label>
        )}
        <fieldset>
          <legend>{t('Paper')}</legend>
          {PAPERS.map((one) => (
            <label key={one} className="choice">
              <input type="radio" name="paper" checked={one === paper} onChange={() => setPaper(one)} />
              {PAPER_NAMES[one]}
            </label>
          ))}
        </fieldset>
        <div className="buttons">
          <button
            ref={button}
            type="button"
            className="main"
            aria-disabled={disabled}
            onClick={() => !disabled && void startQuilt(quilt, { paper, part: chosen })}
          >
            {t('Save booklet as PDF')}
          </button>
        </div>
        <p className="hint">
          {unready ? t('Fill every position first. The seam check says what is missing.') : t('Print it at 100 %, “actual size”.')}
        </p>
        {progress !== null && (
          <PrintingProgress
            progress={progress}
            cancel={() => {
              cancel()
              button.current?.focus()
            }}
          />
        )}
      </section>
      <PartsPanel quilt={quilt} />
    </>
  )
}
