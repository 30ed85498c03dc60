/**
 * The least number of clashes, then the fewest seams pressed against their preference.
 *
 * Why it is the least: every seam has two ends, and each end lies on at most one other seam across a join. So the pairs tie seams into
 * chains and rings. Along a chain the best continuation depends only on which way the last seam lies: keep the best for either way and go on.
 * A ring is a chain walked once for each way of its first seam. Every case is covered, so the sum over chains and rings is the minimum; each seam
 * is visited at most four times, so the time is linear.
 */
import { verdictOf } from './nesting.ts'
import type { Crossing, Pressed, Toward, PressConstraint } from './values.ts'

interface Tie {
  readonly crossing: number
  readonly other: number
  /** Whether the two nest when both are pressed toward the side of the same number. */
  readonly nestsSameSide: boolean
}

/** A clash outweighs every preference of any block that can be read. */
export const CLASH = 1e7

/** Presses a whole plan: a way for every seam, with the fewest clashes, then the fewest seams against their preference. */
export function press(crossings: readonly Crossing[], constraints: readonly PressConstraint[]): Pressed {
  const chains = new Chains(crossings, constraints)
  const toward: Toward[] = constraints.map(({ fixed }) => fixed ?? 0)
  // Chains are walked from their ends; the seams left after that form rings.
  for (let seam = 0; seam < constraints.length; seam++) if (chains.isEnd(seam)) chains.press(seam, toward)
  for (let seam = 0; seam < constraints.length; seam++) chains.press(seam, toward)
  return scorePressing(crossings, constraints, toward)
}

const NONE = -1

/** The ties of all seams in flat lists, two places for each, and buffers to walk along them: a plan is pressed at every edit. */
class Chains {
  private readonly constraints: readonly PressConstraint[]
  /** The seam tied to, by which crossing, and whether the two nest when both are pressed toward the side of the same number. */
  private readonly other: Int32Array
  private readonly crossing: Int32Array
  private readonly sameSide: Uint8Array
  private readonly ties: Uint8Array
  private readonly seen: Uint8Array
  /** The seams of the walk, and how each link nests. */
  private readonly members: Int32Array
  private readonly links: Uint8Array
  /** Bit `way`: the way of the seam before it that makes this seam cheapest when it lies `way`. */
  private readonly came: Uint8Array
  private readonly bestCame: Uint8Array

  constructor(crossings: readonly Crossing[], constraints: readonly PressConstraint[]) {
    const count = constraints.length
    this.constraints = constraints
    this.other = new Int32Array(2 * count).fill(NONE)
    this.crossing = new Int32Array(2 * count).fill(NONE)
    this.sameSide = new Uint8Array(2 * count)
    this.ties = new Uint8Array(count)
    this.seen = new Uint8Array(count)
    this.members = new Int32Array(count)
    this.links = new Uint8Array(count)
    this.came = new Uint8Array(count)
    this.bestCame = new Uint8Array(count)
    for (let index = 0; index < crossings.length; index++) {
      const { type, leans, seams } = crossings[index] as Crossing
      if (type !== 'pair' || leans === null) continue
      const a = seams[0] as number
      const b = seams[1] as number
      if (constraints[a]?.fixed === 'open' || constraints[b]?.fixed === 'open') continue
      const sameSide = leans[0] === leans[1] ? 0 : 1
      this.tie(a, b, index, sameSide)
      this.tie(b, a, index, sameSide)
    }
  }

  private tie(seam: number, other: number, crossing: number, sameSide: 0 | 1): void {
    const ties = this.ties[seam] as number
    if (ties === 2) throw new Error('impossible: a seam has two ends, and each lies on one other seam at the most')
    const place = 2 * seam + ties
    this.other[place] = other
    this.crossing[place] = crossing
    this.sameSide[place] = sameSide
    this.ties[seam] = ties + 1
  }

  isEnd(seam: number): boolean {
    return (this.ties[seam] as number) < 2
  }

  /** Presses the chain or ring that starts at a seam, unless it has been walked already. */
  press(first: number, toward: Toward[]): void {
    if (this.seen[first] === 1) return
    let length = 1
    let last = NONE
    let ring = NONE
    this.members[0] = first
    this.seen[first] = 1
    for (let seam = first; ; ) {
      const place = this.onward(seam, last)
      if (place === NONE) break
      last = this.crossing[place] as number
      const next = this.other[place] as number
      if (next === first) {
        ring = this.sameSide[place] as number
        break
      }
      this.links[length] = this.sameSide[place] as number
      this.members[length++] = next
      this.seen[next] = 1
      seam = next
    }
    let { cost, way } = this.along(length, ring, ring === NONE ? NONE : 0)
    if (ring !== NONE) {
      this.bestCame.set(this.came.subarray(0, length))
      const other = this.along(length, ring, 1)
      if (other.cost < cost) ({ cost, way } = other)
      else this.came.set(this.bestCame.subarray(0, length))
    }
    for (let place = length - 1; place >= 0; place--) {
      const seam = this.members[place] as number
      if (this.constraints[seam]?.fixed !== 'open') toward[seam] = way as 0 | 1
      if (place > 0) way = ((this.came[place] as number) >> way) & 1
    }
  }

  /** Where the walk goes on from a seam it reached across `last`. */
  private onward(seam: number, last: number): number {
    const place = 2 * seam
    if (this.other[place] !== NONE && this.crossing[place] !== last) return place
    return this.other[place + 1] !== NONE && this.crossing[place + 1] !== last ? place + 1 : NONE
  }

  private price(seam: number, way: 0 | 1): number {
    const { fixed, preference } = this.constraints[seam] as PressConstraint
    if (fixed === 'open') return 0
    if (fixed !== null) return fixed === way ? 0 : Number.POSITIVE_INFINITY
    return preference !== null && preference !== way ? 1 : 0
  }

  /** The least cost along the walk and the way its last seam lies then; for a ring, with its first seam pressed `firstWay`. */
  private along(length: number, ring: number, firstWay: number): { cost: number; way: number } {
    const first = this.members[0] as number
    let zero = firstWay === 1 ? Number.POSITIVE_INFINITY : this.price(first, 0)
    let one = firstWay === 0 ? Number.POSITIVE_INFINITY : this.price(first, 1)
    for (let place = 1; place < length; place++) {
      const seam = this.members[place] as number
      // The cost across the link when both seams lie the same way, and when they lie opposite ways.
      const same = this.links[place] === 1 ? 0 : CLASH
      const opposite = CLASH - same
      const [zeroFromZero, zeroFromOne] = [zero + same, one + opposite]
      const [oneFromZero, oneFromOne] = [zero + opposite, one + same]
      this.came[place] = (zeroFromZero <= zeroFromOne ? 0 : 1) | (oneFromZero <= oneFromOne ? 0 : 2)
      zero = Math.min(zeroFromZero, zeroFromOne) + this.price(seam, 0)
      one = Math.min(oneFromZero, oneFromOne) + this.price(seam, 1)
    }
    if (ring !== NONE) {
      const same = ring === 1 ? 0 : CLASH
      zero += firstWay === 0 ? same : CLASH - same
      one += firstWay === 1 ? same : CLASH - same
    }
    return zero <= one ? { cost: zero, way: 0 } : { cost: one, way: 1 }
  }
}

/** Scores a given pressing: which crossings clash, and how many free seams lie against their preference. */
export function scorePressing(crossings: readonly Crossing[], constraints: readonly PressConstraint[], toward: readonly Toward[]): Pressed {
  const clashing: number[] = []
  for (let index = 0; index < crossings.length; index++) if (verdictOf(crossings[index] as Crossing, toward) === 'clashes') clashing.push(index)
  let against = 0
  for (let seam = 0; seam < constraints.length; seam++) {
    const { fixed, preference } = constraints[seam] as PressConstraint
    if (fixed === null && preference !== null && toward[seam] !== preference) against++
  }
  return { toward, clashes: clashing.length, atLeast: clashing.length, against, clashing }
}

/** By seam: the seams it lies on across later joins, at most one for each of its two ends; none where either is pressed open. */
export function tiesOf(crossings: readonly Crossing[], constraints: readonly PressConstraint[]): Tie[][] {
  const ties: Tie[][] = constraints.map(() => [])
  crossings.forEach(({ type, leans, seams }, crossing) => {
    if (type !== 'pair' || leans === null) return
    const [a, b] = seams as readonly [number, number]
    if (constraints[a]?.fixed === 'open' || constraints[b]?.fixed === 'open') return
    const nestsSameSide = leans[0] !== leans[1]
    ties[a]?.push({ crossing, other: b, nestsSameSide })
    ties[b]?.push({ crossing, other: a, nestsSameSide })
  })
  return ties
}
