/**
 * The least fabric for a task: strips found quickly, then shortened and proved within a budget of steps.
 *
 * In      a task, and the steps to spend (table entries and the like; a computer takes hundreds of millions a second).
 * Out     strips, and a lower bound on their length; where the two meet, the strips are proved.
 * How     1. Turn kinds of pieces, and fill strip after strip with the most valuable pieces. 2. Price the pieces: that gives a bound, and fractions of
 *         strips that show what to cut. 3. Cut those strips whole, and fill the rest by value again. 4. Try every way that is left, if the budget
 *         lasts.
 * Exact   lengths are whole steps of a ruler. A bound is rounded up to the next sum of heights.
 */
import { Filler } from './fillStrips.ts'
import { stripsByDiving } from './stripDive.ts'
import { pricesOf } from './stripPrices.ts'
import { quickStrips } from './quickStrips.ts'
import { searchStrips } from './stripSearch.ts'
import { type FilledStrip, totalHeight, type StripTask } from './stripTask.ts'
import { stripsByTurning } from './stripsByTurning.ts'

export interface Least {
  readonly strips: readonly FilledStrip[]
  readonly length: number
  readonly atLeast: number
  readonly proved: boolean
  /** Steps used. */
  readonly steps: number
}

const ROUNDS = 12
/** The gap between bound and length is searched in this many parts, one after the other. */
const PARTS = 8
const MANY_ROUNDS = 100
/** Pricing n kinds takes about this many steps times n³. */
const PRICED = 100
/** Sums of heights are listed up to this many steps of the ruler. */
const SUMS = 200_000

export function leastStrips(task: StripTask, steps: number): Least {
  const filler = new Filler(task)
  let best: FilledStrip[] = stripsByTurning(task)
  const known: FilledStrip[] = [...best]
  const better = (strips: FilledStrip[] | null): void => {
    if (strips !== null && totalHeight(strips) < totalHeight(best)) best = strips
  }
  const result = (atLeast: number): Least => ({
    strips: best,
    length: totalHeight(best),
    atLeast,
    proved: totalHeight(best) < atLeast + task.least,
    steps: filler.steps,
  })
  let atLeast = nextSum(filler, task, boundByArea(task))
  if (result(atLeast).proved) return result(atLeast)
  // With many kinds, the prices alone would use up all the steps.
  const many = PRICED * task.kinds.length ** 3 > steps
  const share = many ? steps : steps / 4
  // One round costs about as much as filling every height once for every strip.
  const round = best.length * filler.tableCost()
  if (round < share)
    better(quickStrips(filler, { steps: share - round, rounds: many ? MANY_ROUNDS : ROUNDS, until: atLeast, seen: (strip) => known.push(strip) }))
  if (result(atLeast).proved || many || filler.steps > steps) return result(atLeast)
  const { price, atLeast: bound, amounts } = pricesOf(filler, known, (steps - filler.steps) / 2)
  atLeast = Math.max(atLeast, nextSum(filler, task, bound))
  if (result(atLeast).proved || filler.steps > steps) return result(atLeast)
  if (amounts.length > 0) better(rounded(filler, price, amounts, atLeast, (steps - filler.steps) / 4))
  if (result(atLeast).proved || filler.steps > steps) return result(atLeast)
  known.push(...amounts.map(({ strip }) => strip))
  better(stripsByDiving(filler, known, totalHeight(best), atLeast, (steps - filler.steps) / 2))
  if (result(atLeast).proved || filler.steps > steps) return result(atLeast)
  // From the bound upwards: where nothing is found below a length, that length is a better bound; what is found below it is the least of all.
  while (!result(atLeast).proved && filler.steps < steps) {
    const below = Math.min(totalHeight(best), atLeast + Math.max(task.least, Math.floor((totalHeight(best) - atLeast) / PARTS)))
    const { strips, ended } = searchStrips(filler, price, below, atLeast, steps - filler.steps)
    better(strips)
    if (!ended) break
    atLeast = strips === null ? nextSum(filler, task, below) : totalHeight(strips)
  }
  return result(atLeast)
}

function rounded(
  filler: Filler,
  price: Float64Array,
  amounts: readonly { strip: FilledStrip; amount: number }[],
  atLeast: number,
  steps: number,
): FilledStrip[] {
  const left = Int32Array.from(filler.task.kinds, ({ count }) => count)
  const whole: FilledStrip[] = []
  for (const { strip, amount } of amounts) {
    for (let times = Math.floor(amount + 1e-6); times > 0; times--) {
      whole.push(strip)
      for (const [kind, count] of strip.held) left[kind] = Math.max(0, (left[kind] as number) - count)
    }
  }
  const until = atLeast - totalHeight(whole)
  return [...whole, ...(left.some((count) => count > 0) ? quickStrips(filler, { steps, rounds: 30, worth: price, left, until }) : [])]
}

function boundByArea({ kinds, width }: StripTask): number {
  return kinds.reduce((sum, { long, short, count }) => sum + long * short * count, 0) / width
}

/** The smallest sum of heights that is no less than a length. */
function nextSum({ heights }: Filler, { least }: StripTask, length: number): number {
  const from = Math.ceil(length * (1 - 1e-9) - 1e-6)
  const lowest = heights[0] as number
  if (least > 1 || from > SUMS) return from
  const most = from + lowest
  const sums = new Uint8Array(most + 1)
  sums[0] = 1
  for (const height of heights) for (let sum = height; sum <= most; sum++) if (sums[sum - height] === 1) sums[sum] = 1
  let next = from
  while (next <= most && sums[next] === 0) next++
  return next
}
