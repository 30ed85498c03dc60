/**
 * The report of a booklet that makes several blocks.
 *
 * In      a block's report, and the block with how many the booklet makes.
 * Out     the report with what is cut, bought and made for all of them; seams, patches and sizes stay those of one block. For one block, the report
 *         as it is.
 */
import { fabricForCopies } from '../../cutting/strips/fabricForCopies.ts'
import type { Block } from '../../values/block.ts'
import type { Report } from '../../values/report.ts'

/** How many blocks a block's booklet makes. */
export const blocksOf = ({ booklet }: Block): number => booklet?.blocks ?? 1

/** The report for as many blocks as the booklet makes. */
export function reportForBlocks(report: Report, block: Block): Report {
  const blocks = blocksOf(block)
  if (blocks === 1) return report
  const { units, cut, fabric } = fabricForCopies(block, blocks, 'quick')
  return { ...report, units, cut, fabric }
}
