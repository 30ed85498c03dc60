/** Single pages as PDF, pictures to scale and tables. */
import { useRef } from 'react'
import { type Block, type Paper, SINGLE_PAGES, type SinglePage } from '../../../geometry/index.ts'
import { bookletLanguage, label, t } from '../../words/words.ts'
import { PictureExport } from './PictureExport.tsx'
import { PrintingProgress } from './PrintingProgress.tsx'
import { TableExport } from './TableExport.tsx'
import { usePrinting } from './usePrinting.ts'

const BUTTONS: Readonly<Record<SinglePage, string>> = {
  cutlist: label('Save cut list as PDF'),
  chart: label('Save size chart as PDF'),
  colouring: label('Save colouring page as PDF'),
  templates: label('Save templates as PDF'),
}

interface Props {
  readonly block: Block
  readonly paper: Paper
  /** Whether the block has templates to save. */
  readonly templates: boolean
}

export function SavePages({ block, paper, templates }: Props) {
  const { progress, start, cancel } = usePrinting()
  const busy = progress !== null
  const title = useRef<HTMLHeadingElement>(null)
  const pages = SINGLE_PAGES.filter((page) => page !== 'templates' || templates)
  return (
    <section aria-labelledby="save-pages-title" className="prints">
      <h2 id="save-pages-title">{t('Pages, pictures and tables')}</h2>
      <h3 ref={title} tabIndex={-1}>
        {t('Single pages')}
      </h3>
      <div className="buttons">
        {pages.map((page) => (
          <button
            key={page}
            type="button"
            aria-disabled={busy}
            onClick={() => !busy && void start(block, { paper, edition: 'full', language: bookletLanguage(), only: page })}
          >
            {t(BUTTONS[page])}
          </button>
        ))}
      </div>
      {progress !== null && (
        <PrintingProgress
          progress={progress}
          cancel={() => {
            cancel()
            title.current?.focus()
          }}
        />
      )}
      <PictureExport block={block} />
      <TableExport block={block} />
    </section>
  )
}
