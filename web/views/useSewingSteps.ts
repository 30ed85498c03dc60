/** The steps that sew the block, as the booklet has them, with the report that they are written from. */
import { useMemo } from 'react'
import { type Block, type Report, type SewingStep, sewingSteps, unitLetters } from '../../geometry/index.ts'
import { bookletLanguage } from '../words/words.ts'
import { useWholeReport } from './useWholeReport.ts'

export interface StepOnScreen extends SewingStep {
  /** The places of its joins among those of the report. */
  readonly places: readonly number[]
}

export interface SewingInSteps {
  readonly report: Report
  readonly block: Block
  readonly steps: readonly StepOnScreen[]
  readonly letters: ReadonlyMap<string, string>
}

/** Null until the report is there; `trouble` says why there is none. */
export function useSewingSteps(block: Block): { readonly sewing: SewingInSteps | null; readonly trouble: string | null } {
  const { result, trouble } = useWholeReport(block)
  const sewing = useMemo(
    () => (result === null ? null : inSteps(result.report, { ...result.block, ...(block.booklet === undefined ? {} : { booklet: block.booklet }) })),
    [result, block.booklet],
  )
  return { sewing, trouble }
}

/** The steps of a report; exported for tests. */
export function inSteps(report: Report, block: Block): SewingInSteps {
  const places = new Map(report.joins.map(({ id }, place) => [id, place]))
  const steps = sewingSteps(report, block, bookletLanguage()).map((step) => ({ ...step, places: step.joins.flatMap((id) => places.get(id) ?? []) }))
  return { report, block, steps, letters: unitLetters(report, block) }
}
