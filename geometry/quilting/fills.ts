/**
 * What fills the patches of a block, as its maker chose.
 *
 * In      a block (its `quilting`, and that of its units) and the patches of its report.
 * Out     lines in cells, each with a start of its own, and how many patches were to be filled and are too small for a line at the chosen distance.
 */
import { cellOf } from '../block/lengthsOf.ts'
import { quiltingOf } from '../block/quiltingOf.ts'
import { toNumber } from '../exact/rational.ts'
import type { Block, Fill } from '../values/block.ts'
import type { Patch } from '../values/report.ts'
import { echoLines } from './echo.ts'
import { spiralLines } from './spiral.ts'
import { type StitchedLine, type StitchPoint, stitchPoint } from './stitchedLines.ts'

interface Fills {
  readonly lines: readonly StitchedLine[]
  readonly tooSmall: number
}

const LINES: Readonly<Record<Exclude<Fill, 'none'>, (corners: readonly StitchPoint[], spacing: number) => StitchedLine[]>> = {
  echo: echoLines,
  spiral: spiralLines,
}

/** Border strips stay as they are. */
export function fillsOf(block: Block, patches: readonly Pick<Patch, 'unit' | 'corners'>[]): Fills {
  const { spacing, fillOf } = quiltingOf(block)
  const fills = new Map(block.units.map((unit) => [unit.id, fillOf(unit)]))
  const cells = spacing / toNumber(cellOf(block))
  const filled = patches.flatMap(({ unit, corners }): StitchedLine[][] => {
    const fill = unit === null ? 'none' : (fills.get(unit) ?? 'none')
    return fill === 'none' ? [] : [LINES[fill](corners.map(stitchPoint), cells)]
  })
  return { lines: filled.flat(), tooSmall: filled.filter((lines) => lines.length === 0).length }
}
