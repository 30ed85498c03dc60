/**
 * Turns of a single unit that fix a layout, such as a unit that was turned so that it overlaps others or leaves a gap. Beside an edge of the grid a turn moved
 * it a cell as well, so each quarter turn is tried a cell to every side too.
 *
 * In      a block whose findings name gaps, overlaps or fabric beyond the grid.
 * Out     for each of the first problems, the turns of one of its units that leave less faulty area than now, the best first.
 * Cost    the findings are computed for the block and for each turn that is tried, up to eleven for each unit of a problem, so this runs in a worker. A block of very many
 *         units is skipped even there.
 */
import { type Block, type Edit, type Findings, findings, moveUnits, turnUnits } from '../../geometry/index.ts'
import { produce } from 'immer'

export interface LayoutRepair {
  readonly unit: string
  readonly quarters: 1 | 2 | 3
  /** Cells that it moves, across and down. */
  readonly by: readonly [number, number]
}

const IN_PLACE = [0, 0] as const
const BESIDE = [IN_PLACE, [0, 1], [1, 0], [0, -1], [-1, 0]] as const

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
      ([1, 2, 3] as const).flatMap((quarters) =>
        (quarters === 2 ? [IN_PLACE] : BESIDE).map((by) => {
          const { change } = repairEdit({ unit, quarters, by })
          const after = produce(block, (draft) => change(draft as Parameters<typeof change>[0]))
          return { unit, quarters, by, left: faultyArea(findings(after).problems) }
        }),
      ),
    )
    .filter(({ left }) => left < now - 1e-9)
    .sort((a, b) => a.left - b.left)
    .filter(({ unit, quarters }, place, all) => all.findIndex((other) => other.unit === unit && other.quarters === quarters) === place)
    .slice(0, MOST_OFFERED)
    .map(({ unit, quarters, by }) => ({ unit, quarters, by }))
}

/** Square cells that are empty, covered twice or beyond the grid. */
const faultyArea = (problems: readonly Problem[]): number => problems.reduce((sum, { area = 0 }) => sum + area, 0)

export function repairEdit({ unit, quarters, by }: LayoutRepair): Edit {
  const { name, change } = turnUnits([unit])
  const move = moveUnits([unit], ...by)
  return {
    name,
    change: (draft) => {
      for (let quarter = 0; quarter < quarters; quarter++) change(draft)
      if (by.some((cells) => cells !== 0)) move.change(draft)
    },
  }
}
