/** The booklet sheet: the booklet saved as PDF, its steps, and single pages, pictures and tables. */
import { useMemo, useState } from 'react'
import { bookletOf, type Edition, EDITIONS, PAPERS, type Paper } from '../../../geometry/index.ts'
import { readSetting, writeSetting } from '../../document/browserSettings.ts'
import { usualPaperHere } from '../../document/region.ts'
import { bookletLanguage } from '../../words/words.ts'
import { useStore } from '../../document/store.ts'
import { BookletPanel } from './BookletPanel.tsx'
import { SaveBooklet } from './SaveBooklet.tsx'
import { SavePages } from './SavePages.tsx'
import { sameButBooklet, useWholeReport } from '../../views/useWholeReport.ts'
import './printPanel.css'

/** Remember what the maker chose last. */
const PAPER_SETTING = 'nestwright.paper'
const EDITION_SETTING = 'nestwright.edition'
const savedEdition = (): Edition => EDITIONS.find((edition) => edition === readSetting(EDITION_SETTING)) ?? 'short'
const savedPaper = (): Paper | null => PAPERS.find((paper) => paper === readSetting(PAPER_SETTING)) ?? null

export function BookletSheet() {
  const block = useStore(({ history }) => history.block)
  const [paper, setPaper] = useState(() => savedPaper() ?? usualPaperHere())
  const [edition, setEdition] = useState(savedEdition)
  const { result, trouble } = useWholeReport(block)
  const booklet = useMemo(
    () => (result === null ? null : bookletOf(result.report, { ...result.block, booklet: block.booklet }, bookletLanguage())),
    [result, block.booklet],
  )
  const choosePaper = (next: Paper): void => {
    setPaper(next)
    writeSetting(PAPER_SETTING, next)
  }
  const chooseEdition = (next: Edition): void => {
    setEdition(next)
    writeSetting(EDITION_SETTING, next)
  }
  return (
    <>
      <SaveBooklet block={block} paper={paper} setPaper={choosePaper} edition={edition} setEdition={chooseEdition} />
      <BookletPanel block={block} booklet={booklet} outdated={result !== null && !sameButBooklet(result.block, block)} trouble={trouble} />
      <SavePages block={block} paper={paper} templates={(booklet?.templates.length ?? 0) > 0} />
    </>
  )
}
