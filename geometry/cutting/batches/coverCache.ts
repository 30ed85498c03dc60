/**
 * A batch solver that keeps its last answers: an edit beside a hundred scrappy geese needs the same batches again.
 *
 * In      the solver to call when no answer is kept, and how many answers to keep at most.
 * Out     a solver with the same answers. An answer depends only on how often each step is needed and on the work allowed: fabrics are
 *         numbers here, so geese that swap one fabric for another find their old answer too.
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
