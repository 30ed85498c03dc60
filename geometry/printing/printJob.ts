/** What every page of one booklet is made from. */
import type { Block } from '../values/block.ts'
import type { Report } from '../values/report.ts'
import type { Booklet } from '../writing/booklet/values.ts'
import type { MeasureUnit } from '../writing/phrases.ts'
import type { Cloth } from './fabricFill.ts'
import type { Sheets } from './sheets.ts'

export interface Job {
  readonly sheets: Sheets
  readonly report: Report
  readonly block: Block
  readonly booklet: Booklet
  readonly unit: MeasureUnit
  readonly cloth: (fabric: string | null) => Cloth
  /** Cloth as a blank outline. */
  readonly blank: (fabric: string | null) => Cloth
}
