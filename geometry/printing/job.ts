/** What every page of one booklet is made from. */
import type { Block } from '../block/values.ts'
import type { Report } from '../values.ts'
import type { Booklet } from '../writing/booklet/values.ts'
import type { MeasureUnit } from '../writing/say.ts'
import type { Cloth } from './cloths.ts'
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
