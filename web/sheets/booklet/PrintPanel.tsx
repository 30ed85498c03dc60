/** Everything that leaves the page for paper: the booklet and single pages as PDF, pictures to scale, tables. */
import { useRef, useState } from 'react'
import { PAPER_NAMES, PAPERS, type Paper, SINGLE_PAGES, type SinglePage } from '../../../geometry/index.ts'
import { readSetting, writeSetting } from '../../document/browserSettings.ts'
import { usualPaperHere } from '../../document/region.ts'
import { useStore } from '../../document/store.ts'
import { label, t } from '../../words/words.ts'
import { PictureExport } from './PictureExport.tsx'
import { TableExport } from './TableExport.tsx'
import { usePrinting } from './usePrinting.ts'
import './printPanel.css'

const PAGE_NAMES: Readonly<Record<SinglePage, string>> = {
  cutlist: label('Save cut list as PDF'),
  chart: label('Save size chart as PDF'),
  colouring: label('Save colouring page as PDF'),
  templates: label('Save templates as PDF'),
}

/** Remembers the paper that the maker chose last. */
const PAPER_SETTING = 'nestwright.paper'
const savedPaper = (): Paper | null => PAPERS.find((paper) => paper === readSetting(PAPER_SETTING)) ?? null

export function PrintPanel() {
  const block = useStore(({ history }) => history.block)
  const [paper, setPaper] = useState(() => savedPaper() ?? usualPaperHere())
  const { progress, start, cancel } = usePrinting()
  const busy = progress !== null
  // While busy the buttons are only marked as disabled, so that the keyboard's focus stays where it is.
  const print = (page: SinglePage | null): void => {
    if (!busy) void start(block, paper, page)
  }
  const printButton = useRef<HTMLButtonElement>(null)
  return (
    <section aria-labelledby="prints-title" className="prints">
      <h2 id="prints-title">{t('Save and print')}</h2>
      <fieldset>
        <legend>{t('Paper')}</legend>
        {PAPERS.map((one) => (
          <label key={one} className="choice">
            <input
              type="radio"
              name="paper"
              checked={one === paper}
              onChange={() => {
                setPaper(one)
                writeSetting(PAPER_SETTING, one)
              }}
            />
            {PAPER_NAMES[one]}
          </label>
        ))}
      </fieldset>
      <div className="buttons">
        <button ref={printButton} type="button" className="main" aria-disabled={busy} onClick={() => print(null)}>
          {t('Save booklet as PDF')}
        </button>
      </div>
      <p className="hint">{t('The PDF holds your block too, so you can open it here again. Print it at 100 %, “actual size”.')}</p>
      {progress !== null && (
        <div className="progress">
          <label>
            {t('Making the pages…')}
            <progress value={progress.done} max={progress.of} />
          </label>
          <button
            type="button"
            onClick={() => {
              cancel()
              printButton.current?.focus()
            }}
          >
            {t('Cancel')}
          </button>
        </div>
      )}
      <h3>{t('Single pages')}</h3>
      <div className="buttons">
        {SINGLE_PAGES.map((page) => (
          <button key={page} type="button" aria-disabled={busy} onClick={() => print(page)}>
            {t(PAGE_NAMES[page])}
          </button>
        ))}
      </div>
      <PictureExport block={block} />
      <TableExport block={block} />
    </section>
  )
}
