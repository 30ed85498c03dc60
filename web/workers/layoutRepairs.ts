/**
 * Turns of a single unit that fix a layout, such as a unit that was turned so that it overlaps others or leaves a gap.
 *
 * In      a block whose findings name gaps, overlaps or fabric beyond the grid.
 * Out     for each of the first problems, the turns of one of its units that leave less faulty area than now, the best first.
 * Cost    the findings are computed for the block and for each turn that is tried, up to a dozen for one problem, so this runs in a worker. A block of very many
 *         units is skipped even there.
 */
import { type Block, type Edit, type Findings, findings, turnUnits } from '../../geometry/index.ts'
import { produce } from 'immer'

export interface LayoutRepair {
  readonly unit: string
  readonly quarters: 1 | 2 | 3
}

/** Units of a block, and units named by one problem, up to which turns are tried; problems that get suggestions. */
const MOST_UNITS = 64
const MOST_NAMED = 4
const MOST_PROBLEMS = 3
const MOST_OFFERED = 2

type Problem = Findings['problems'][number]

/** Whether turns are tried for one of a block's problems. */
export const canRepair = (block: Block, { area, units }: Problem, index: number): boolean =>
  block.units.length <= MOST_UNITS && area !== undefined && units.length <= MOST_NAMED && index < MOST_PROBLEMS

export function layoutRepairs(block: Block): readonly (readonly LayoutRepair[])[] {
  const { problems } = findings(block)
  const now = faultyArea(problems)
  return problems.slice(0, MOST_PROBLEMS).map((problem, index) => (canRepair(block, problem, index) ? bestTurns(block, problem.units, now) : []))
}

function bestTurns(block: Block, units: readonly string[], now: number): LayoutRepair[] {
  return units
    .flatMap((unit) =>
      ([1, 2, 3] as const).map((quarters) => {
        const { change } = repairEdit({ unit, quarters })
        const after = produce(block, (draft) => change(draft as Parameters<typeof change>[0]))
        return { unit, quarters, left: faultyArea(findings(after).problems) }
      }),
    )
    .filter(({ left }) => left < now - 1e-9)
    .sort((a, b) => a.left - b.left)
    .slice(0, MOST_OFFERED)
    .map(({ unit, quarters }) => ({ unit, quarters }))
}

/** Square cells that are empty, covered twice or beyond the grid. */
const faultyArea = (problems: readonly Problem[]): number => problems.reduce((sum, { area = 0 }) => sum + area, 0)

export function repairEdit({ unit, quarters }: LayoutRepair): Edit {
  const { name, change } = turnUnits([unit])
  return {
    name,
    change: (draft) => {
      for (let quarter = 0; quarter < quarters; quarter++) change(draft)
    },
  }
}
