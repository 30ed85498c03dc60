/** What every page of one booklet is made from. */
import type { Block, MeasureUnit } from '../values/block.ts'
import type { Report } from '../values/report.ts'
import type { Booklet, Drawing } from '../writing/booklet/values.ts'
import type { BookletPhrases } from '../words/booklet/bookletWords.ts'
import type { FabricFill } from './fabricFill.ts'
import type { PageWriter } from './pageWriter.ts'

export interface PrintJob {
  readonly pages: PageWriter
  readonly report: Report
  readonly block: Block
  readonly booklet: Booklet
  /** What the pages say, in the booklet's language. */
  readonly say: BookletPhrases
  readonly unit: MeasureUnit
  readonly fabricFill: (fabric: string | null) => FabricFill
  /** Every picture of a step that is printed: the key tells what their marks mean. */
  readonly drawings: readonly Drawing[]
  /** Cloth as a blank outline. */
  readonly blank: (fabric: string | null) => FabricFill
}

/** Writes some of the pages. */
export type Chapter = (job: PrintJob) => void
