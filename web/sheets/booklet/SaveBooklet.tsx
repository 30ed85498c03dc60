/** Saves the whole booklet as PDF, on the paper that the maker chooses. */
import { useRef } from 'react'
import { type Block, type Edition, EDITIONS, PAPER_NAMES, PAPERS, type Paper } from '../../../geometry/index.ts'
import { bookletLanguage, label, t } from '../../words/words.ts'
import { PrintingProgress } from './PrintingProgress.tsx'
import { usePrinting } from './usePrinting.ts'

interface Props {
  readonly block: Block
  readonly paper: Paper
  readonly setPaper: (paper: Paper) => void
  readonly edition: Edition
  readonly setEdition: (edition: Edition) => void
}

const EDITION_NAMES: Readonly<Record<Edition, string>> = {
  short: label('Short: the pages to sew from'),
  full: label('Full: with layering, quilting, binding and charts'),
}

export function SaveBooklet({ block, paper, setPaper, edition, setEdition }: Props) {
  const { progress, start, cancel } = usePrinting()
  const busy = progress !== null
  const button = useRef<HTMLButtonElement>(null)
  return (
    <section aria-labelledby="save-booklet-title" className="prints">
      <h2 id="save-booklet-title">{t('Booklet as PDF')}</h2>
      <fieldset>
        <legend>{t('Edition')}</legend>
        {EDITIONS.map((one) => (
          <label key={one} className="choice">
            <input type="radio" name="edition" checked={one === edition} onChange={() => setEdition(one)} />
            {t(EDITION_NAMES[one])}
          </label>
        ))}
      </fieldset>
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
        {/* While busy the button is only marked as disabled, so that the keyboard's focus stays where it is. */}
        <button
          ref={button}
          type="button"
          className="main"
          aria-disabled={busy}
          onClick={() => !busy && void start(block, { paper, edition, language: bookletLanguage(), only: null })}
        >
          {t('Save booklet as PDF')}
        </button>
      </div>
      <p className="hint">{t('The PDF holds your block too, so you can open it here again. Print it at 100 %, “actual size”.')}</p>
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
  )
}
