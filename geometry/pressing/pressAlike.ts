/**
 * Press a plan in which alike units are pressed alike.
 *
 * In      the crossings, what is asked of each seam, and the likeness of seams (see `likeness`).
 * Out     the pressing with the fewest clashes, then the fewest seams against their preference, and the number of clashes that none can be below; the wishes
 *         as they stand once one unit's settled seams have settled those of its likes; and the seams whose likes are settled in two ways.
 * How     seams of one likeness are one choice; then the problem is the general one (see `eliminate`).
 */
import { CLASH, judged } from './press.ts'
import { type Choices, leastWays, type Pair } from '../solvers/elimination.ts'
import type { Like } from './matchingSeams.ts'
import type { Crossing, Pressed, Toward, Wish } from './values.ts'

export interface Tied {
  readonly wishes: readonly Wish[]
  /** The choice each seam belongs to, and whether its way is the choice's turned about. */
  readonly choiceOf: readonly number[]
  readonly about: readonly boolean[]
  /** Seams settled otherwise than others of their likeness. */
  readonly odd: readonly number[]
}

export function tieUp(wishes: readonly Wish[], like: readonly (Like | null)[]): Tied {
  const members = new Map<number, number[]>()
  like.forEach((one, seam) => {
    if (one === null) return
    const there = members.get(one.likeness)
    if (there === undefined) members.set(one.likeness, [seam])
    else there.push(seam)
  })
  const about = like.map((one) => one?.side0 === 1)
  const settled: Wish[] = [...wishes]
  const choiceOf = wishes.map((_, seam) => seam)
  const odd: number[] = []
  for (const seams of members.values()) {
    const fixed = seams.filter((seam) => wishes[seam]?.fixed !== null)
    const ways = new Set(fixed.map((seam) => wayOf(wishes[seam]?.fixed ?? null, about[seam] as boolean)))
    // Settled in two ways: each keeps its own, and the others are tied to each other alone.
    if (ways.size > 1) odd.push(...fixed)
    const leader = fixed[0]
    const led = seams.filter((seam) => wishes[seam]?.fixed === null)
    if (ways.size === 1 && leader !== undefined) {
      const { rule, fixed: way } = wishes[leader] as Wish
      const common = wayOf(way, about[leader] as boolean)
      const why = 'Pressed like the other units that are alike.'
      for (const seam of led) settled[seam] = { fixed: wayOf(common, about[seam] as boolean), rule, preference: null, why }
    }
    for (const seam of led) choiceOf[seam] = led[0] as number
  }
  return { wishes: settled, choiceOf, about, odd }
}

const wayOf = (way: Toward | null, about: boolean): Toward | null => (way === null || way === 'open' || !about ? way : way === 0 ? 1 : 0)

export function pressTogether(crossings: readonly Crossing[], { wishes, choiceOf, about }: Tied, budget?: number): Pressed {
  const numbers = new Map<number, number>()
  const numberOf = (seam: number): number => {
    const choice = choiceOf[seam] as number
    const number = numbers.get(choice) ?? numbers.size
    numbers.set(choice, number)
    return number
  }
  const own: [number, number][] = []
  wishes.forEach(({ fixed, preference }, seam) => {
    if (fixed === 'open') return
    const number = numberOf(seam)
    own[number] ??= [0, 0]
    const costs = own[number] as [number, number]
    for (const way of [0, 1] as const) {
      const toward = wayOf(way, about[seam] as boolean)
      if (fixed !== null) costs[way] += fixed === toward ? 0 : Number.POSITIVE_INFINITY
      else if (preference !== null && preference !== toward) costs[way] += 1
    }
  })
  const pairs = crossings.flatMap(({ sort, leans, seams: [a, b] }): Pair[] => {
    if (sort !== 'pair' || leans === null || a === undefined || b === undefined) return []
    if (wishes[a]?.fixed === 'open' || wishes[b]?.fixed === 'open') return []
    // Alike in their own sides, turned about where their choices count the other way.
    const nestsAlike = (leans[0] !== leans[1]) === (about[a] === about[b])
    return [{ a: numberOf(a), b: numberOf(b), alike: nestsAlike ? 0 : CLASH, unlike: nestsAlike ? CLASH : 0 }]
  })
  const choices: Choices = { own, pairs }
  const { ways, cost, atLeast } = leastWays(choices, budget)
  const toward = wishes.map(({ fixed }, seam) => fixed ?? (wayOf(ways[numberOf(seam)] as 0 | 1, about[seam] as boolean) as Toward))
  const pressed = judged(crossings, wishes, toward)
  return { ...pressed, atLeast: cost === atLeast ? pressed.clashes : Math.ceil(Math.max(0, atLeast) / CLASH - 1e-9 - 0.5) }
}
