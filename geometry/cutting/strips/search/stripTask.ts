/**
 * The task of cutting strips: kinds of pieces, the fabric's width, and how much of a strip of some height a piece takes.
 *
 * In      sizes with their numbers, and the width, in the measure's unit.
 * Out     the same in whole steps of a ruler on which every size lies, if there is one with at most a thousand steps to the unit; else in
 *         billionths of the unit, and then a little slack is allowed on the width.
 * How     in a strip high enough for a piece to stand, it stands: that takes the least of the strip's length. In a lower one it lies, if it can.
 *         So a strip of a given height holds every piece in one way, and cutting is packing: strips are bins whose cost is their height.
 *         A piece that may not be turned has one way only: it stands, `short` across the fabric and `long` along it, whichever is longer.
 */
export interface PieceKind {
  readonly long: number
  readonly short: number
  readonly count: number
  /** Cut from a print that may not be turned a quarter. */
  readonly fixed: boolean
}

export interface StripTask {
  readonly kinds: readonly PieceKind[]
  /** The usable length of one strip, slack included. */
  readonly width: number
  readonly perUnit: number
  /** How far sizes side by side may be off in total, in steps. */
  readonly slack: number
  /** The least difference between lengths that counts. */
  readonly least: number
}

/** A strip across the fabric: how many of each kind it holds. */
export interface FilledStrip {
  readonly height: number
  readonly held: ReadonlyMap<number, number>
}

export interface SizedPieces {
  readonly size: readonly [number, number]
  readonly count: number
  /** It may not be turned: its size is across the fabric, then along it. */
  readonly fixed?: true
}

const STEPS_TO_THE_UNIT = 1000
const BILLION = 1e9
/** Sizes are rounded to a billionth; this is how far two hundred of them side by side may be off. */
const SLACK = 100
/** In billionths: too small for any ruler to show. */
const UNSEEN = 1000

/** Makes the task for some pieces. `others`: further lengths that must lie on the ruler too. */
export function taskOf(pieces: readonly SizedPieces[], width: number, others: readonly number[] = []): StripTask {
  const sides = [...new Set([...pieces.flatMap(({ size }) => size), ...others])]
  const perUnit = rulerOf([...sides, width]) ?? BILLION
  const exact = perUnit !== BILLION
  const kinds = new Map<string, PieceKind>()
  for (const { size, count, fixed: turned } of pieces) {
    const fixed = turned === true && size[0] !== size[1]
    const long = Math.round((fixed ? size[1] : Math.max(...size)) * perUnit)
    const short = Math.round((fixed ? size[0] : Math.min(...size)) * perUnit)
    const key = `${long}|${short}|${fixed}`
    kinds.set(key, { long, short, count: (kinds.get(key)?.count ?? 0) + count, fixed })
  }
  const slack = exact ? 0 : SLACK
  return { kinds: [...kinds.values()], width: Math.round(width * perUnit) + slack, perUnit, slack, least: exact ? 1 : UNSEEN }
}

function rulerOf(lengths: readonly number[]): number | null {
  for (let steps = 1; steps <= STEPS_TO_THE_UNIT; steps++) {
    if (lengths.every((length) => Math.abs(length * steps - Math.round(length * steps)) <= steps / BILLION)) return steps
  }
  return null
}

/** How much of the strip a piece takes, or 0 where it does not fit. */
export function wideIn({ long, short, fixed }: Omit<PieceKind, 'count'>, height: number, width: number): number {
  if (long <= height && short <= width) return short
  return !fixed && short <= height && long <= width ? long : 0
}

/** Whether it can be cut with its long side across the fabric. */
export const mayLie = ({ long, fixed }: PieceKind, width: number): boolean => !fixed && long <= width

/** The heights a strip may have, the lowest first: each lets one more kind fit or stand. */
export function heightsOf({ kinds, width }: StripTask): number[] {
  const heights = kinds.flatMap((kind) => (mayLie(kind, width) ? [kind.short, kind.long] : [kind.long]))
  return [...new Set(heights)].sort((a, b) => a - b)
}

/** The same task for what is left; its kinds are numbered by their order in `kinds`. */
export function restOf(task: StripTask, left: ArrayLike<number>, kinds: readonly number[]): StripTask {
  return { ...task, kinds: kinds.map((kind) => ({ ...(task.kinds[kind] as PieceKind), count: left[kind] as number })) }
}

/** The length of fabric that strips take together, in the task's steps. */
export const totalHeight = (strips: readonly FilledStrip[]): number => strips.reduce((sum, { height }) => sum + height, 0)

/** The lowest strip that holds these side by side. */
export function lowered(task: StripTask, { height, held }: FilledStrip): FilledStrip {
  const kinds = [...held].map(([kind, count]) => ({ ...(task.kinds[kind] as PieceKind), count }))
  const heights = [...new Set(kinds.flatMap(({ long, short }) => [short, long]))].filter((one) => one < height).sort((a, b) => a - b)
  const fits = (one: number): boolean => {
    let wide = 0
    for (const kind of kinds) {
      const each = wideIn(kind, one, task.width)
      if (each === 0) return false
      wide += each * kind.count
    }
    return wide <= task.width
  }
  const lower = heights.find(fits)
  return lower === undefined ? { height, held } : { height: lower, held }
}
