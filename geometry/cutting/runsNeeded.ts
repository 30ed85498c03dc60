/**
 * How many runs a method needs when it makes several units at once.
 *
 * In      how many units of one look are needed, and how many one run makes.
 * Out     runs (pairs of squares, or strip sets), and the units left over.
 * How     two squares make triangles of their own two fabrics only, so units of other fabrics never share a pair, and the least number is a division.
 *         Where the maker may mix methods, taking eights first, then fours, then twos leaves at most one over.
 * Source  two [S37], four [S33] and eight [S24] triangles at a time.
 */
import type { Method } from '../values/block.ts'

interface RunCount {
  readonly runs: number
  readonly spare: number
}

/** How many units the two squares of one run make. */
export const AT_A_TIME: Partial<Record<Method, number>> = { 'hst-2': 2, 'hst-4': 4, 'hst-8': 8, 'qst-2': 2 }

export function runsNeeded(count: number, each: number): RunCount {
  const runs = Math.ceil(count / each)
  return { runs, spare: runs * each - count }
}

/** The method for each of `count` half-square triangles, with the fewest left over, then the fewest pairs of squares to sew. */
export function mixedMethods(count: number): Method[] {
  const { byEight, byFour } = mixedRuns(count)
  return Array.from({ length: count }, (_, place) => (place < 8 * byEight ? 'hst-8' : place < 8 * byEight + 4 * byFour ? 'hst-4' : 'hst-2'))
}

/** Half-square triangles by several methods together: the fewest left over, then the fewest pairs of squares. */
export function mixedRuns(count: number): RunCount & { readonly byEight: number; readonly byFour: number; readonly byTwo: number } {
  const pairs = Math.ceil(count / 2)
  const [byEight, byFour, byTwo] = [Math.floor(pairs / 4), Math.floor((pairs % 4) / 2), pairs % 2]
  return { byEight, byFour, byTwo, runs: byEight + byFour + byTwo, spare: 2 * pairs - count }
}
