/**
 * Turns of a single unit that fix a layout, such as a unit that was turned so that it overlaps others or leaves a gap.
 *
 * In      a block whose findings name gaps, overlaps or fabric beyond the grid, and the units that one of them names.
 * Out     the turns of one unit that leave less of that than now, the best first. None for a block of so many units that trying turns would make the maker
 *         wait.
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
const MOST_OFFERED = 2

export function layoutRepairs(block: Block, report: Findings, units: readonly string[]): LayoutRepair[] {
  if (block.units.length > MOST_UNITS || units.length > MOST_NAMED) return []
  const now = faultyArea(report)
  const tried = units.flatMap((unit) =>
    ([1, 2, 3] as const).map((quarters) => {
      const edit = turnEdit(unit, quarters)
      const after = produce(block, (draft) => edit.change(draft as Parameters<typeof edit.change>[0]))
      return { unit, quarters, edit, left: faultyArea(findings(after)) }
    }),
  )
  return tried
    .filter(({ left }) => left < now - 1e-9)
    .sort((a, b) => a.left - b.left)
    .slice(0, MOST_OFFERED)
    .map(({ unit, quarters, edit }) => ({ unit, quarters, edit }))
}

/** Square cells that are empty, covered twice or beyond the grid. */
const faultyArea = ({ problems }: Findings): number => problems.reduce((sum, { area = 0 }) => sum + area, 0)

function turnEdit(unit: string, quarters: 1 | 2 | 3): Edit {
  const { name, change } = turnUnits([unit])
  return {
    name,
    change: (draft) => {
      for (let quarter = 0; quarter < quarters; quarter++) change(draft)
    },
  }
}
