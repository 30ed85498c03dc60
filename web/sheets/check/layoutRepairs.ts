/**
 * Turns that mend a layout: a unit that was turned so that it lies over others, or leaves a gap, is turned back.
 *
 * In      a block whose findings name gaps, overlaps or cloth beyond the grid, and the units that one of them names.
 * Out     the turns of one unit that leave less of that than now, the best first; none for blocks of so many units that trying takes longer than a look.
 */
import { type Block, type Edit, type Findings, findings, turnUnits } from '../../../geometry/index.ts'
import { produce } from 'immer'

export interface LayoutRepair {
  readonly unit: string
  readonly quarters: 1 | 2 | 3
  readonly edit: Edit
}

/** Units of a block, and units named by one problem, up to which turns are tried. */
const MOST_UNITS = 64
const MOST_NAMED = 4
const OFFERED = 2

export function layoutRepairs(block: Block, report: Findings, units: readonly string[]): LayoutRepair[] {
  if (block.units.length > MOST_UNITS || units.length > MOST_NAMED) return []
  const now = faults(report)
  const tried = units.flatMap((unit) =>
    ([1, 2, 3] as const).map((quarters) => {
      const edit = turned(unit, quarters)
      const after = produce(block, (draft) => edit.change(draft as Parameters<typeof edit.change>[0]))
      return { unit, quarters, edit, left: faults(findings(after)) }
    }),
  )
  return tried
    .filter(({ left }) => left < now - 1e-9)
    .sort((a, b) => a.left - b.left)
    .slice(0, OFFERED)
    .map(({ unit, quarters, edit }) => ({ unit, quarters, edit }))
}

/** Square cells that lie empty, double or beyond the grid. */
const faults = ({ problems }: Findings): number => problems.reduce((sum, { area = 0 }) => sum + area, 0)

function turned(unit: string, quarters: 1 | 2 | 3): Edit {
  const { name, change } = turnUnits([unit])
  return {
    name,
    change: (draft) => {
      for (let quarter = 0; quarter < quarters; quarter++) change(draft)
    },
  }
}
