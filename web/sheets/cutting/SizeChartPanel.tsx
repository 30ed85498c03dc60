/** The button that opens the size chart. */
import { useState } from 'react'
import { t } from '../../words/words.ts'
import { SizeChartDialog } from './SizeChartDialog.tsx'
import './cutting.css'

export function SizeChartPanel() {
  const [open, setOpen] = useState(false)
  return (
    <section aria-labelledby="chart-title">
      <h2 id="chart-title">{t('Size chart')}</h2>
      <p className="hint">{t('See what to cut for units of any size, without a block.')}</p>
      <div className="buttons">
        <button type="button" className="main" aria-haspopup="dialog" onClick={() => setOpen(true)}>
          {t('Open the size chart')}
        </button>
      </div>
      {open && <SizeChartDialog close={() => setOpen(false)} />}
    </section>
  )
}
