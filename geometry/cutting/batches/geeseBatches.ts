/**
 * The fewest four-at-a-time batches that make all the geese needed.
 *
 * In      wing pairs [left, right] of geese of one size and one goose fabric, as seen with the tip up.
 * Out     batches, whether their number is proved to be the least, and a lower bound.
 * How     round the large square p1 p2 p3 p4 a batch makes geese whose (right, left) wings are (p1,p2), (p2,p3), (p3,p4), (p4,p1): a closed walk of
 *         four steps from right wing to left wing. So the problem is to find the fewest such walks that take every needed step often enough.
 * Source  common practice, no source: two small squares on opposite corners first, then the other two.
 */
import type { Unit } from '../../values/block.ts'
import type { Batch } from '../../values/report.ts'
import { leastCover } from '../../solvers/closedWalks.ts'
import type { Demand } from '../../solvers/fractionalCover.ts'
import type { CoverSolver } from './coverCache.ts'

/** [left, right], as seen with the tip up. */
export type Wings = readonly [string, string]

interface Batches {
  readonly batches: readonly Batch[]
  readonly proved: boolean
  readonly atLeast: number
}

/** Work before a search gives up, counted in table entries: about two seconds. */
export const BATCH_WORK = 1_000_000_000

/**
 * The fewest batches for geese of one size and one goose fabric.
 *
 * In      the goose fabric, the wings needed, the work allowed, and the solver to call: `leastCover`, or one with a cache (`cachedCovers`).
 * Out     batches that make them all, whether no fewer do, and a number that no plan goes below.
 */
export function leastBatches(goose: string, wanted: readonly Wings[], work = BATCH_WORK, solve: CoverSolver = leastCover): Batches {
  const fabrics = [...new Set(wanted.flat())]
  const { walks, proved, atLeast } = solve(demandOf(wanted, fabrics), work)
  const batches = walks.map(([a, b, c, d]) =>
    batchOf(goose, [fabrics[a] as string, fabrics[b] as string, fabrics[c] as string, fabrics[d] as string]),
  )
  return { batches, proved, atLeast }
}

/** What a batch with these corners, clockwise, makes: [left, right] wings. */
export function batchOf(goose: string, corners: Batch['corners']): Batch {
  const [a, b, c, d] = corners
  return {
    goose,
    corners,
    makes: [
      [b, a],
      [c, b],
      [d, c],
      [a, d],
    ],
  }
}

/** A goose's wings with the tip up, seen from the right side: a mirrored goose has them the other way round. */
export function wingsSeen(unit: Unit): Wings {
  const [left, right] = [unit.fabrics.leftWing as string, unit.fabrics.rightWing as string]
  return unit.kind === 'goose' && unit.mirror === true ? [right, left] : [left, right]
}

/** Geese as steps from their right wing's fabric to their left one's: how many of each, by the fabrics' places in the list. */
export function demandOf(wanted: readonly Wings[], fabrics: readonly string[]): Demand {
  const place = new Map(fabrics.map((id, index) => [id, index]))
  const steps = new Int32Array(fabrics.length * fabrics.length)
  for (const [left, right] of wanted) {
    const step = (place.get(right) as number) * fabrics.length + (place.get(left) as number)
    steps[step] = (steps[step] as number) + 1
  }
  return { nodes: fabrics.length, steps }
}
