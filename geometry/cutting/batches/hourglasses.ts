/**
 * Hourglasses of one finished size made together, two at a time: also those with three or four fabrics, and with squares shared between them.
 *
 * In      a block that has been read; hourglasses set to be made from single triangles are left out.
 * Out     for each finished size the pairs of squares to sew into triangles, which triangles to lay on each other and cut across, what comes out,
 *         and whether fewer pairs of squares are impossible.
 * How     two squares a, b make two triangles a|b. A triangle a|b laid on one c|d makes one hourglass a b c d, clockwise, and one d c b a, its mirror
 *         image. So an hourglass and its mirror image take as many such lays as the more frequent of the two (half as many, rounded up, where
 *         they look the same), each either a|b on c|d or b|c on d|a. The number of triangles is always the same; one is wasted for each pair
 *         of fabrics that needs an odd number. For each picture, an odd or an even number is laid the first way: all choices
 *         are tried, or, where there are too many, one choice after another is changed while that helps.
 * Exact   counting only; pictures are compared by fabrics.
 * Source  [S37]; that the two come out as mirror images: by folding, as the tests do with paper.
 */
import { roundOf, seamOf } from '../../block/lengthsOf.ts'
import type { Block, BoxUnit } from '../../values/block.ts'
import { toNumber } from '../../exact/rational.ts'
import { quartered, type Rule, unfinished } from '../sizes/cutSize.ts'
import { matchingUnits } from '../matchingUnits.ts'

export type FabricPair = readonly [string, string]

interface Laying {
  /** Two triangles, the fabrics of the long seam's either side as they follow clockwise: `first`, then `second`. */
  readonly first: FabricPair
  readonly second: FabricPair
  readonly count: number
  /** Units that come out, of either hand; the rest is left over. */
  readonly makes: readonly string[]
}

export interface HourglassPlan {
  readonly finished: number
  readonly unfinished: number
  /** The side of every square. */
  readonly square: number
  /** Pairs of squares, each sewn into two triangles. */
  readonly pairs: readonly { readonly fabrics: FabricPair; readonly count: number }[]
  readonly layings: readonly Laying[]
  readonly runs: number
  /** Pairs of squares where each look is made by itself. */
  readonly alone: number
  /** Squares, each cut twice corner to corner, of which single triangles would be sewn. */
  readonly singles: number
  readonly proved: boolean
}

/** Whether the plan is worth showing: it shares squares, or an hourglass has more than two fabrics. All else is in the cut list already. */
export const isSharing = ({ runs, alone, layings }: HourglassPlan): boolean =>
  runs < alone || layings.some(({ first, second }) => pairName(first) !== pairName(second))

/** Clockwise from the top. */
type Round = readonly [string, string, string, string]

/** Hourglasses that are each other's mirror image, or one that is its own. */
interface Look {
  readonly round: Round
  readonly own: readonly string[]
  readonly mirrored: readonly string[]
  readonly lays: number
}

/** Looks up to which all choices are tried. */
const TRIED = 12

/** How the hourglasses of a block can be made two at a time: one plan for each size, finished in the measure's unit. */
export function hourglassPlans(block: Block): HourglassPlan[] {
  const sizes = new Map<string, { finished: number; oversize: number; units: BoxUnit[] }>()
  for (const { units, first, finished, oversize } of matchingUnits(block)) {
    if (first.kind !== 'hourglass' || first.method === 'plain') continue
    const key = `${finished[0]} ${oversize}`
    const there = sizes.get(key) ?? { finished: finished[0], oversize, units: [] }
    there.units.push(...(units as readonly BoxUnit[]))
    sizes.set(key, there)
  }
  return [...sizes.values()].map(({ finished, oversize, units }) => {
    const rule: Rule = { seam: toNumber(seamOf(block)), round: toNumber(roundOf(block)), oversize }
    const looks = looksOf(units.map((unit) => [unit.id, fabricsRound(unit)] as const))
    const { chosen, proved } = leastOdd(looks)
    const layings = looks.flatMap((look, place) => layingsOf(look, chosen[place] as 0 | 1))
    const pairs = pairsOf(layings)
    return {
      finished,
      unfinished: unfinished(finished, rule),
      square: quartered(finished, rule),
      pairs,
      layings,
      runs: runsOfPairs(pairs),
      alone: looks.reduce((sum, look) => sum + leastAlone(look), 0),
      singles: singlesOf(units),
      proved,
    }
  })
}

function singlesOf(units: readonly BoxUnit[]): number {
  const triangles = new Map<string, number>()
  for (const fabric of units.flatMap((unit) => fabricsRound(unit))) triangles.set(fabric, (triangles.get(fabric) ?? 0) + 1)
  return [...triangles.values()].reduce((sum, count) => sum + Math.ceil(count / 4), 0)
}

function fabricsRound({ fabrics, mirror }: BoxUnit): Round {
  const { top = '', right = '', bottom = '', left = '' } = fabrics
  return mirror === true ? [top, left, bottom, right] : [top, right, bottom, left]
}

const turnedRound = ([a, b, c, d]: Round): Round => [b, c, d, a]
const mirrorRound = ([a, b, c, d]: Round): Round => [d, c, b, a]

/** One key for a look, however it is turned. */
function nameOf(round: Round): string {
  const turns = [round, turnedRound(round), turnedRound(turnedRound(round)), turnedRound(turnedRound(turnedRound(round)))]
  return turns.map((one) => one.join(' ')).sort()[0] as string
}

function looksOf(units: readonly (readonly [string, Round])[]): Look[] {
  const looks = new Map<string, { round: Round; own: string[]; mirrored: string[] }>()
  for (const [id, round] of units) {
    const [name, other] = [nameOf(round), nameOf(mirrorRound(round))]
    const seen = looks.get(name)
    const twin = looks.get(other)
    if (seen !== undefined) seen.own.push(id)
    else if (twin !== undefined) twin.mirrored.push(id)
    else looks.set(name, { round, own: [id], mirrored: [] })
  }
  return [...looks.values()].map((look) => {
    const symmetric = nameOf(look.round) === nameOf(mirrorRound(look.round))
    return { ...look, lays: symmetric ? Math.ceil(look.own.length / 2) : Math.max(look.own.length, look.mirrored.length) }
  })
}

/** One lay or none the first way, as `odd` says, and the rest the other way: only the parity changes the number of pairs. */
function layingsOf({ round, own, mirrored, lays }: Look, odd: 0 | 1): Laying[] {
  const [a, b, c, d] = round
  const symmetric = nameOf(round) === nameOf(mirrorRound(round))
  const made = (from: number, count: number): string[] =>
    symmetric ? own.slice(2 * from, 2 * (from + count)) : [...own.slice(from, from + count), ...mirrored.slice(from, from + count)]
  const ways: Laying[] = [
    { first: [a, b], second: [c, d], count: odd, makes: made(0, odd) },
    { first: [b, c], second: [d, a], count: lays - odd, makes: made(odd, lays - odd) },
  ]
  return ways.filter(({ count }) => count > 0)
}

const pairName = ([a, b]: FabricPair): string => (a < b ? `${a} ${b}` : `${b} ${a}`)

function pairsOf(layings: readonly Laying[]): { fabrics: FabricPair; count: number }[] {
  const triangles = new Map<string, { fabrics: FabricPair; count: number }>()
  for (const { first, second, count } of layings)
    for (const fabrics of [first, second]) {
      const name = pairName(fabrics)
      triangles.set(name, { fabrics: triangles.get(name)?.fabrics ?? fabrics, count: (triangles.get(name)?.count ?? 0) + count })
    }
  return [...triangles.values()].map(({ fabrics, count }) => ({ fabrics, count: Math.ceil(count / 2) }))
}

const runsOfPairs = (pairs: readonly { readonly count: number }[]): number => pairs.reduce((sum, { count }) => sum + count, 0)
const runsOf = (looks: readonly Look[], chosen: readonly (0 | 1)[]): number =>
  runsOfPairs(pairsOf(looks.flatMap((look, place) => layingsOf(look, chosen[place] as 0 | 1))))
const leastAlone = (look: Look): number => Math.min(runsOf([look], [0]), runsOf([look], [1]))

/** For each look, whether an odd number of it is laid the first way: the fewest pairs of squares. */
function leastOdd(looks: readonly Look[]): { chosen: (0 | 1)[]; proved: boolean } {
  const toggles = looks.map((_, place) => place)
  let chosen: (0 | 1)[] = looks.map(() => 0)
  let best = runsOf(looks, chosen)
  const triangles = looks.reduce((sum, { lays }) => sum + 2 * lays, 0)
  const atLeast = Math.ceil(triangles / 2)
  const better = (other: (0 | 1)[]): boolean => {
    const runs = runsOf(looks, other)
    if (runs >= best) return false
    best = runs
    chosen = other
    return true
  }
  if (looks.length <= TRIED) {
    for (let bits = 1; bits < 2 ** looks.length && best > atLeast; bits++) better(toggles.map((place) => ((bits >> place) & 1) as 0 | 1))
    return { chosen, proved: true }
  }
  const changed = (...places: number[]): (0 | 1)[] => chosen.map((one, place) => (places.includes(place) ? ((1 - one) as 0 | 1) : one))
  for (let again = true; again && best > atLeast; )
    again = toggles.some((one) => better(changed(one)) || toggles.some((other) => other < one && better(changed(one, other))))
  return { chosen, proved: best === atLeast }
}
