/** What to cut, in which batches, and the fabric to buy, for one block or many. It can be copied or saved as CSV. */
import { lazy } from 'react'
import { type Block, cutListCsv, type Findings, type StashPiece } from '../../../geometry/index.ts'
import { MOST_COPIES_CUT, setCopies, useCopies } from '../../document/blockCount.ts'
import { deepClient } from '../../workers/clients.ts'
import { fileName, saveAndSay } from '../../keeping/download.ts'
import { useFindings, useStore } from '../../document/store.ts'
import { t, tableForm } from '../../words/words.ts'
import { copyText } from '../../controls/copyText.ts'
import { EntryField } from '../../controls/EntryField.tsx'
import { isCount } from '../../controls/lengthEntry.ts'
import { useWorker } from '../../workers/useWorker.ts'
import { CutAdvice } from './CutAdvice.tsx'
import { FabricCuts } from './FabricCuts.tsx'
import { GeeseBatches } from './GeeseBatches.tsx'
import './cutting.css'
import { LazyPanel } from '../../controls/LazyPanel.tsx'

const BatchStars = lazy(async () => ({ default: (await import('./BatchStars.tsx')).BatchStars }))
const HourglassPlans = lazy(async () => ({ default: (await import('./HourglassPlans.tsx')).HourglassPlans }))

const copiesProblem = (text: string): string | null =>
  isCount(text, MOST_COPIES_CUT) ? null : t('Enter a whole number from 1 to {most}.', { most: MOST_COPIES_CUT })
/** Always the same array, so that the request to the worker is the same from one render to the next. */
const NO_STASH: readonly StashPiece[] = []

export function CutList() {
  const block = useStore(({ history }) => history.block)
  const { report } = useFindings()
  const copies = useCopies()
  const many = useWorker(deepClient, 'cloth', copies === 1 ? null : [block, copies, NO_STASH])
  if (report === null) return null
  const list: Findings | null = copies === 1 ? report : many?.type === 'answer' ? { ...report, ...many.value.cloth } : null
  return (
    <section aria-labelledby="cut-title" className="cutsheet">
      <div className="titled">
        <h2 id="cut-title">{t('Cut list')}</h2>
        <EntryField label={t('Number of blocks')} value={String(copies)} validate={copiesProblem} onCommit={(text) => setCopies(Number(text))} />
      </div>
      {list === null ? <p className="hint">{t('Working…')}</p> : <List list={list} block={block} />}
      <LazyPanel>
        <BatchStars report={report} />
        <HourglassPlans block={block} />
      </LazyPanel>
      <p className="caution">
        {t(
          'Close the rotary cutter after every cut. Cut away from yourself, with your fingers behind the edge of the ruler. Mind the hot iron and its steam. Keep your fingers clear of the needle. Your tools’ instructions and your teacher come first.',
        )}
      </p>
    </section>
  )
}

function List({ list, block }: { readonly list: Findings; readonly block: Block }) {
  const batched = list.units.filter(({ batches }) => batches.length > 0)
  return (
    <>
      <CutAdvice advice={list.advice} />
      {list.cut.length === 0 && <p className="hint">{t('Put a unit on the board to see what to cut.')}</p>}
      <FabricCuts report={list} block={block} />
      {batched.length > 0 && <GeeseBatches rows={batched} block={block} />}
      {list.cut.length > 0 && (
        <div className="buttons">
          <button type="button" onClick={() => void copyCsv(list, block)}>
            {t('Copy as CSV')}
          </button>
          <button
            type="button"
            className="main"
            onClick={() => saveAndSay(t('Cut list'), `${fileName(block.name)}-cut-list.csv`, cutListCsv(list, block, tableForm()), 'text/csv')}
          >
            {t('Save as CSV')}
          </button>
        </div>
      )}
    </>
  )
}

const copyCsv = (report: Findings, block: Block): Promise<void> =>
  copyText(cutListCsv(report, block, tableForm()), t('Cut list copied as CSV.'), t('Your browser blocks copying. Save the list as CSV instead.'))
