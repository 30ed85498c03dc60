/**
 * How much fabric: strips across the usable width, cut into the pieces side by side.
 *
 * In      cut rows, the usable width, in the measure's unit, and the search effort.
 * Out     per fabric its strips, their length in all, what to buy, and whether less is proved impossible; rows too large for the fabric.
 * How     see `leastStrips`; the steps are shared out evenly, and what one fabric leaves goes to the next.
 */
import { EPSILON, tidy } from '../../exact/lengths.ts'
import type { Block } from '../../values/block.ts'
import type { CutRow, FabricRow, Strip } from '../../values/report.ts'
import { remembering } from '../../solvers/remembering.ts'
import { type Least, leastStrips } from './search/leastStrips.ts'
import { toBuyForStrips } from './yardage.ts'
import { type FilledStrip, type PieceKind, type SizedPieces, type StripTask, taskOf } from './search/stripTask.ts'

/** `quick` while a hand is on the block; `proving` for what is printed or cut from. */
export type FabricDepth = 'quick' | 'proving'

/** Steps of the search for all fabrics together: some milliseconds, and about half a second. */
const STEPS: Readonly<Record<FabricDepth, number>> = { quick: 400_000, proving: 150_000_000 }
/** About two seconds. */
const MOST_STEPS = 600_000_000

/** What to buy of each fabric for the cut list's rows, from fabric with a usable `width` in the measure's unit; and the rows that are too large for that width. */
export function fabricRows(
  block: Block,
  cut: readonly CutRow[],
  width: number,
  depth: FabricDepth,
  solve: StripSolver = stripsFor,
): { rows: FabricRow[]; tooLarge: CutRow[] } {
  const wanted = block.fabrics.flatMap(({ id }) => {
    const pieces = cut.filter((row) => row.fabric === id && fitsAcross(row, width))
    return pieces.length === 0 ? [] : [{ id, pieces }]
  })
  let steps = STEPS[depth]
  const rows = wanted.map(({ id, pieces }, index): FabricRow => {
    const found = solve(pieces, width, steps / (wanted.length - index))
    steps -= found.steps
    return { fabric: id, buy: toBuyForStrips(found.length, block.measure.unit), ...fabricColumns(found) }
  })
  return { rows, tooLarge: cut.filter((row) => !fitsAcross(row, width)) }
}

/** Whether the fabric is wide enough for it, one way at least. */
export const fitsAcross = ({ size, fixed }: CutRow, width: number): boolean => (fixed ? size[0] : Math.min(...size)) <= width + EPSILON

const fabricColumns = ({ length, atLeast, strips }: StripsFor): Pick<FabricRow, 'length' | 'proved' | 'atLeast' | 'strips'> =>
  length <= atLeast ? { length, proved: true, strips } : { length, proved: false, atLeast, strips }

export interface StripsFor {
  readonly strips: readonly Strip[]
  readonly length: number
  /** A lower bound on any cutting's length; where it equals the length, the strips are proved. */
  readonly atLeast: number
  /** What it took. */
  readonly steps: number
}

/** Finds the strips for pieces of one fabric: `stripsFor`, or one with a cache. */
export type StripSolver = (pieces: readonly SizedPieces[], width: number, steps: number) => StripsFor

/** More than the fabrics of nearly any block and its last few edits. */
const MOST_KEPT = 200

/** A solver with the same answers that keeps the last ones: most edits do not change what is cut from a fabric. */
export const cachedStrips = (solve: StripSolver = stripsFor, most = MOST_KEPT): StripSolver =>
  remembering(
    solve,
    (pieces, width, steps) => JSON.stringify([pieces.map(({ size, count, fixed }) => [size, count, fixed === true]), width, steps]),
    most,
  )

/** The least fabric for these pieces, all of one fabric. */
export function stripsFor(pieces: readonly SizedPieces[], width: number, steps = MOST_STEPS): StripsFor {
  const task = taskOf(pieces, width)
  const found: Least = leastStrips(task, steps)
  const length = sizeOf(task, found.length)
  return {
    strips: found.strips.map((strip) => stripOf(task, strip)),
    length,
    atLeast: found.proved ? length : sizeOf(task, found.atLeast),
    steps: found.steps,
  }
}

/** Converts steps of the ruler to the measure's unit. */
export const sizeOf = ({ perUnit }: StripTask, steps: number): number => tidy(steps / perUnit)

/** A strip with its pieces, from steps to the measure's unit. */
export function stripOf(task: StripTask, { height, held }: FilledStrip): Strip {
  const pieces = [...held].map(([kind, count]) => {
    const { long, short, fixed } = task.kinds[kind] as PieceKind
    if (fixed) return { size: [sizeOf(task, short), sizeOf(task, long)] as const, count, fixed }
    return { size: [sizeOf(task, long), sizeOf(task, short)] as const, count }
  })
  return { height: sizeOf(task, height), pieces }
}
