/**
 * Makes the PDF in a worker and saves it as a download.
 *
 * In      the block, and what to print of it.
 * Out     how far the work is, or null when nothing is being made; a notice says how it ended. Leaving the panel cancels it.
 */
import { useEffect, useRef, useState } from 'react'
import type { Block, Quilt, SinglePage } from '../../../geometry/index.ts'
import { setView } from '../../document/store.ts'
import { fileName, saveAndSay } from '../../keeping/download.ts'
import { label, t } from '../../words/words.ts'
import type { PrintChoice, QuiltPrintChoice } from '../../workers/print.worker.ts'
import { type Printing, startPrinting, startPrintingQuilt } from '../../workers/startPrinting.ts'

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
  readonly startQuilt: (quilt: Quilt, choice: QuiltPrintChoice) => Promise<void>
  readonly cancel: () => void
}

export function usePrinting(): Printer {
  const [progress, setProgress] = useState<Progress | null>(null)
  const running = useRef<Printing | null>(null)
  useEffect(() => () => running.current?.cancel(), [])
  const follow = (done: number, of: number): void => setProgress({ done, of })
  const start = (block: Block, choice: PrintChoice): Promise<void> =>
    finish(
      () => startPrinting(block, choice, follow),
      t(choice.only === null ? BOOKLET : PAGE_NAMES[choice.only]),
      `${fileName(block.name)}-${choice.only ?? 'booklet'}.pdf`,
    )
  const startQuilt = (quilt: Quilt, choice: QuiltPrintChoice): Promise<void> =>
    finish(
      () => startPrintingQuilt(quilt, choice, follow),
      t(BOOKLET),
      `${fileName(quilt.name)}-${choice.part === null ? 'booklet' : `part-${choice.part}`}.pdf`,
    )
  const finish = async (begin: () => Printing, what: string, file: string): Promise<void> => {
    setProgress({ done: 0, of: 1 })
    const printing = begin()
    running.current = printing
    try {
      const bytes = await printing.bytes
      if (bytes === null) {
        setView({ notice: t('Cancelled. Nothing was saved.') })
        return
      }
      saveAndSay(what, file, bytes, 'application/pdf')
    } catch (error) {
      setView({
        notice: t('The PDF couldn’t be made: {why}. Nothing was saved.', { why: error instanceof Error ? error.message : String(error) }),
      })
    } finally {
      setProgress(null)
    }
  }
  return { progress, start, startQuilt, cancel: () => running.current?.cancel() }
}
