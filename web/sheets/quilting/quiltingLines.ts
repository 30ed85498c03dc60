/** The lines that fill patches of the block, and the widest place without a stitch. Points are in cells. */
import { type Block, echoLines, type Findings, largestGap, type StitchPoint, squareSpiral, type StitchedLine } from '../../../geometry/index.ts'
import { toDecimal, pointOf } from '../../document/shapes.ts'
import { label } from '../../words/words.ts'

export const FILLS = { none: label('nothing'), echo: label('echo lines'), spiral: label('a square spiral') } as const
export type Fill = keyof typeof FILLS

/** In the chosen units, or in every patch if none is chosen. The spacing is in inches or centimetres, as the block is measured. */
export function fillLines(report: Findings, block: Block, selected: readonly string[], fill: Fill, spacing: number): StitchedLine[] {
  if (fill === 'none') return []
  const cells = spacing / toDecimal(block.grid.cell)
  return report.patches
    .filter(({ unit }) => unit !== null && (selected.length === 0 || selected.includes(unit)))
    .flatMap(({ corners }) => {
      const places = corners.map((corner): StitchPoint => pointOf(corner))
      if (fill === 'echo') return echoLines(places, cells)
      const spiral = squareSpiral(inset(places, report.measure.seam / toDecimal(block.grid.cell)), cells)
      return spiral === null ? [] : [spiral]
    })
}

/** A square, smaller by one seam allowance on each side: its edges stay loose for joining, and no stitch runs along a seam's bulk. */
function inset(places: readonly StitchPoint[], by: number): StitchPoint[] {
  const [x, y] = [0, 1].map((axis) => places.reduce((sum, place) => sum + (place[axis] as number), 0) / places.length) as [number, number]
  const [first, second] = places as readonly [StitchPoint, StitchPoint]
  const side = Math.hypot(second[0] - first[0], second[1] - first[1])
  const factor = Math.max(0, 1 - (2 * by) / side)
  return places.map(([px, py]): StitchPoint => [x + (px - x) * factor, y + (py - y) * factor])
}

/** In inches or centimetres. The edges of the block count as stitched, because they will be joined or bound. */
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
