/**
 * Makes the PDF in a worker and saves it as a download.
 *
 * In      the block, and what to print of it.
 * Out     how far the work is, or null when nothing is being made; a notice says how it ended. Leaving the panel cancels it.
 */
import { useEffect, useRef, useState } from 'react'
import type { Block, SinglePage } from '../../../geometry/index.ts'
import { setView } from '../../document/store.ts'
import { fileName, saveAndSay } from '../../keeping/download.ts'
import { label, t } from '../../words/words.ts'
import type { PrintChoice } from '../../workers/print.worker.ts'
import { type Printing, startPrinting } from '../../workers/startPrinting.ts'

const BOOKLET = label('Booklet')
const PAGE_NAMES: Readonly<Record<SinglePage, string>> = {
  cutlist: label('Cut list'),
  chart: label('Size chart'),
  colouring: label('Colouring page'),
  templates: label('Templates'),
}

interface Progress {
  readonly done: number
  readonly of: number
}

interface Printer {
  readonly progress: Progress | null
  readonly start: (block: Block, choice: PrintChoice) => Promise<void>
  readonly cancel: () => void
}

export function usePrinting(): Printer {
  const [progress, setProgress] = useState<Progress | null>(null)
  const running = useRef<Printing | null>(null)
  useEffect(() => () => running.current?.cancel(), [])
  const start = async (block: Block, choice: PrintChoice): Promise<void> => {
    setProgress({ done: 0, of: 1 })
    const printing = startPrinting(block, choice, (done, of) => setProgress({ done, of }))
    running.current = printing
    try {
      const bytes = await printing.bytes
      if (bytes === null) {
        setView({ notice: t('Cancelled. Nothing was saved.') })
        return
      }
      saveAndSay(
        t(choice.only === null ? BOOKLET : PAGE_NAMES[choice.only]),
        `${fileName(block.name)}-${choice.only ?? 'booklet'}.pdf`,
        bytes,
        'application/pdf',
      )
    } catch (error) {
      setView({
        notice: t('The PDF couldn’t be made: {why}. Nothing was saved.', { why: error instanceof Error ? error.message : String(error) }),
      })
    } finally {
      setProgress(null)
    }
  }
  return { progress, start, cancel: () => running.current?.cancel() }
}
