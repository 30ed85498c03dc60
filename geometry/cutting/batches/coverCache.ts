/**
 * A batch solver that keeps its last answers: an edit beside a hundred scrappy geese asks for the same cover again.
 *
 * In      the solver to ask where no answer is kept, and how many answers are kept at most.
 * Out     a solver with the same answers. An answer depends on how often each step is wanted and on the work allowed, and on nothing else: fabrics are
 *         numbers here, so geese recoloured all alike find their old answer too.
 */
import { type Cover, leastCover } from '../../solvers/closedWalks.ts'
import type { Demand } from '../../solvers/fractionalCover.ts'
import { remembering } from '../../solvers/remembering.ts'

export type CoverSolver = (demand: Demand, work: number) => Cover

/** More than the sizes and goose fabrics of nearly any block. */
const MOST_KEPT = 256

export const cachedCovers = (solve: CoverSolver = leastCover, most = MOST_KEPT): CoverSolver => remembering(solve, keyOf, most)

function keyOf({ nodes, steps }: Demand, work: number): string {
  const wanted: string[] = [`${work}/${nodes}`]
  steps.forEach((count, step) => {
    if (count > 0) wanted.push(`${step}:${count}`)
  })
  return wanted.join(' ')
}
