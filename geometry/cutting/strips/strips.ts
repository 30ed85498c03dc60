/**
 * How much cloth: strips across the usable width, cut into the pieces side by side.
 *
 * In      cut rows, the usable width, in the measure's unit, and how much is given to the search.
 * Out     per fabric its strips, their length in all, what to buy, and whether less is proved impossible; rows too large for the cloth.
 * How     see `leastStrips`; the steps are shared out evenly, and what one fabric leaves goes to the next.
 */
import type { Block } from '../../values/block.ts'
import type { CutRow, FabricRow, Strip } from '../../values/report.ts'
import { type Least, leastStrips } from './leastStrips.ts'
import { type Laid, type Kind, type Sized, type Task, taskOf } from './stripTask.ts'

/** `quick` while a hand is on the block; `proving` for what is printed or cut from. */
export type ClothDepth = 'quick' | 'proving'

/** Steps of the search for all fabrics together: some milliseconds, and about half a second. */
const STEPS: Readonly<Record<ClothDepth, number>> = { quick: 400_000, proving: 150_000_000 }
/** About two seconds. */
const MOST_STEPS = 600_000_000

export function clothOf(block: Block, cut: readonly CutRow[], width: number, depth: ClothDepth): { rows: FabricRow[]; tooLarge: CutRow[] } {
  const wanted = block.fabrics.flatMap(({ id }) => {
    const pieces = cut.filter((row) => row.fabric === id && fits(row, width))
    return pieces.length === 0 ? [] : [{ id, pieces }]
  })
  let steps = STEPS[depth]
  const rows = wanted.map(({ id, pieces }, index): FabricRow => {
    const found = (depth === 'quick' ? stripsAgain : stripsFor)(pieces, width, steps / (wanted.length - index))
    steps -= found.steps
    return { fabric: id, buy: bought(found.length, block.measure.unit), ...cloth(found) }
  })
  return { rows, tooLarge: cut.filter((row) => !fits(row, width)) }
}

/** Whether the cloth is wide enough for it, one way at least. */
export const fits = ({ size, fixed }: CutRow, width: number): boolean => (fixed ? size[0] : Math.min(...size)) <= width + 1e-9

const cloth = ({ length, atLeast, strips }: Cloth): Pick<FabricRow, 'length' | 'proved' | 'atLeast' | 'strips'> =>
  length <= atLeast ? { length, proved: true, strips } : { length, proved: false, atLeast, strips }

export interface Cloth {
  readonly strips: readonly Strip[]
  readonly length: number
  /** No cutting goes below; where it is the length, the strips are proved. */
  readonly atLeast: number
  /** What it took. */
  readonly steps: number
}

/** By all that is asked: most edits leave what is cut from a fabric as it was. */
const answers = new Map<string, Cloth>()
const MOST_ANSWERS = 200

function stripsAgain(pieces: readonly Sized[], width: number, steps: number): Cloth {
  const asked = JSON.stringify([pieces.map(({ size, count, fixed }) => [size, count, fixed === true]), width, steps])
  const known = answers.get(asked)
  if (known !== undefined) return known
  const found = stripsFor(pieces, width, steps)
  if (answers.size >= MOST_ANSWERS) answers.clear()
  answers.set(asked, found)
  return found
}

/** The least cloth for these pieces, all of one fabric. */
export function stripsFor(pieces: readonly Sized[], width: number, steps = MOST_STEPS): Cloth {
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

/** Steps of the ruler, said in the measure's unit. */
export const sizeOf = ({ perUnit }: Task, steps: number): number => tidy(steps / perUnit)

export function stripOf(task: Task, { height, held }: Laid): Strip {
  const pieces = [...held].map(([kind, count]) => {
    const { long, short, fixed } = task.kinds[kind] as Kind
    if (fixed) return { size: [sizeOf(task, short), sizeOf(task, long)] as const, count, fixed }
    return { size: [sizeOf(task, long), sizeOf(task, short)] as const, count }
  })
  return { height: sizeOf(task, height), pieces }
}

const tidy = (length: number): number => Math.round(length * 1e9) / 1e9

/** Yards to the next eighth, or metres to the next tenth. */
export function bought(length: number, unit: 'in' | 'cm'): number {
  return unit === 'in' ? Math.ceil((length / 36) * 8 - 1e-9) / 8 : Math.ceil((length / 100) * 10 - 1e-9) / 10
}
