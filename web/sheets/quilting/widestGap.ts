/** The widest place without a stitch. */
import { type Block, largestGap, type StitchedLine } from '../../../geometry/index.ts'
import { toDecimal } from '../../document/shapes.ts'

/** In inches or centimetres; lines in cells. The edges of the block count as stitched, because they will be joined or bound. */
export function widestGap(lines: readonly StitchedLine[], block: Block): { width: number; atMost: number } | null {
  const { columns, rows } = block.grid
  const gap = largestGap(lines, [
    [0, 0],
    [columns, 0],
    [columns, rows],
    [0, rows],
  ])
  const cell = toDecimal(block.grid.cell)
  return gap === null ? null : { width: gap.width * cell, atMost: gap.atMost * cell }
}
