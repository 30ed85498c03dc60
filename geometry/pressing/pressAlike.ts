/**
 * Press a plan in which matching units are pressed the same way.
 *
 * In      the crossings, the constraint on each seam, and which seams match (see `matchingSeams`).
 * Out     the pressing with the fewest clashes, then the fewest seams against their preference, and a lower bound on the clashes; the
 *         constraints once a fixed seam has fixed those that match it; and the seams whose matches are fixed in two ways.
 * How     matching seams are one choice; then the problem is the general one (see `solvers/elimination`).
 */
import { CLASH, scorePressing } from './press.ts'
import { type Choices, leastWays, type Pair } from '../solvers/elimination.ts'
import type { MatchingSeam } from './matchingSeams.ts'
import type { Crossing, Pressed, Toward, PressConstraint } from './values.ts'
import { message } from '../values/messages.ts'

const LIKE_MATCHING_UNITS = message('like-alike-units')

export interface SharedChoices {
  readonly constraints: readonly PressConstraint[]
  /** By seam: the choice it belongs to. */
  readonly choiceOf: readonly number[]
  /** By seam: whether it lies toward its side 1 where the choice says 0. */
  readonly flipped: readonly boolean[]
  /** Seams that are fixed a different way from a seam that matches them. */
  readonly conflicting: readonly number[]
}

/** One choice for all matching seams that are free; those with a fixed match are fixed the same way. */
export function shareChoices(constraints: readonly PressConstraint[], matching: readonly (MatchingSeam | null)[]): SharedChoices {
  const members = new Map<number, number[]>()
  matching.forEach((one, seam) => {
    if (one === null) return
    const there = members.get(one.group)
    if (there === undefined) members.set(one.group, [seam])
    else there.push(seam)
  })
  const flipped = matching.map((one) => one?.side0 === 1)
  const settled: PressConstraint[] = [...constraints]
  const choiceOf = constraints.map((_, seam) => seam)
  const conflicting: number[] = []
  for (const seams of members.values()) {
    const fixed = seams.filter((seam) => constraints[seam]?.fixed !== null)
    const ways = new Set(fixed.map((seam) => wayOf(constraints[seam]?.fixed ?? null, flipped[seam] as boolean)))
    // Where matches are fixed in two ways, each keeps its own, and the free ones are tied only to each other.
    if (ways.size > 1) conflicting.push(...fixed)
    const leader = fixed[0]
    const led = seams.filter((seam) => constraints[seam]?.fixed === null)
    if (ways.size === 1 && leader !== undefined) {
      const { rule, fixed: way } = constraints[leader] as PressConstraint
      const common = wayOf(way, flipped[leader] as boolean)
      const why = LIKE_MATCHING_UNITS
      for (const seam of led) settled[seam] = { fixed: wayOf(common, flipped[seam] as boolean), rule, preference: null, why }
    }
    for (const seam of led) choiceOf[seam] = led[0] as number
  }
  return { constraints: settled, choiceOf, flipped, conflicting }
}

const wayOf = (way: Toward | null, flipped: boolean): Toward | null => (way === null || way === 'open' || !flipped ? way : way === 0 ? 1 : 0)

/** `budget`: steps of the search. If they run out, `atLeast` may be below `clashes`. */
export function pressAlike(crossings: readonly Crossing[], { constraints, choiceOf, flipped }: SharedChoices, budget?: number): Pressed {
  const numbers = new Map<number, number>()
  const numberOf = (seam: number): number => {
    const choice = choiceOf[seam] as number
    const number = numbers.get(choice) ?? numbers.size
    numbers.set(choice, number)
    return number
  }
  const own: [number, number][] = []
  constraints.forEach(({ fixed, preference }, seam) => {
    if (fixed === 'open') return
    const number = numberOf(seam)
    own[number] ??= [0, 0]
    const costs = own[number] as [number, number]
    for (const way of [0, 1] as const) {
      const toward = wayOf(way, flipped[seam] as boolean)
      if (fixed !== null) costs[way] += fixed === toward ? 0 : Number.POSITIVE_INFINITY
      else if (preference !== null && preference !== toward) costs[way] += 1
    }
  })
  const pairs = crossings.flatMap(({ type, leans, seams: [a, b] }): Pair[] => {
    if (type !== 'pair' || leans === null || a === undefined || b === undefined) return []
    if (constraints[a]?.fixed === 'open' || constraints[b]?.fixed === 'open') return []
    // The choices nest as the seams do, the other way round where exactly one of them is flipped.
    const nestsSameSide = (leans[0] !== leans[1]) === (flipped[a] === flipped[b])
    return [{ a: numberOf(a), b: numberOf(b), alike: nestsSameSide ? 0 : CLASH, unlike: nestsSameSide ? CLASH : 0 }]
  })
  const choices: Choices = { own, pairs }
  const { ways, cost, atLeast } = leastWays(choices, budget)
  const toward = constraints.map(({ fixed }, seam) => fixed ?? (wayOf(ways[numberOf(seam)] as 0 | 1, flipped[seam] as boolean) as Toward))
  const pressed = scorePressing(crossings, constraints, toward)
  return { ...pressed, atLeast: cost === atLeast ? pressed.clashes : Math.ceil(Math.max(0, atLeast) / CLASH - 1e-9 - 0.5) }
}
