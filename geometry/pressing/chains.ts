/**
 * The least number of clashes, then the fewest seams pressed against their preference.
 *
 * Why it is the least: every seam has two ends, and each end lies on at most one other seam across a join. So the pairs tie seams into
 * chains and rings. Along a chain the best continuation depends only on which way the last seam lies: keep the best for either way and walk on.
 * A ring is a chain walked once for each way of its first seam. Nothing is left out, so the sum over chains and rings is the minimum; each seam is
 * visited at most four times, so it is linear.
 */
import type { Crossing, Pressed, Toward, Wish } from './values.ts'

interface Tie {
  readonly crossing: number
  readonly other: number
  /** Whether the two nest when both are pressed toward the side of the same number. */
  readonly nestsAlike: boolean
}

/** A clash outweighs every preference of any block that can be read. */
export const CLASH = 1e7

export function pressAll(crossings: readonly Crossing[], wishes: readonly Wish[]): Pressed {
  const ties = tied(crossings, wishes)
  const toward: Toward[] = wishes.map(({ fixed }) => fixed ?? 0)
  const seen = wishes.map(() => false)
  const start = (seam: number): void => {
    for (const [one, way] of walk(seam, ties, wishes, seen)) toward[one] = way
  }
  ties.forEach((own, seam) => {
    if (!seen[seam] && own.length < 2) start(seam)
  })
  ties.forEach((_, seam) => {
    if (!seen[seam]) start(seam)
  })
  return judged(crossings, wishes, toward)
}

export function judged(crossings: readonly Crossing[], wishes: readonly Wish[], toward: readonly Toward[]): Pressed {
  const clashing = crossings.flatMap((crossing, index) => (verdictOf(crossing, toward) === 'clashes' ? [index] : []))
  const against = wishes.filter(({ fixed, preference }, seam) => fixed === null && preference !== null && toward[seam] !== preference).length
  return { toward, clashes: clashing.length, atLeast: clashing.length, against, clashing }
}

export function verdictOf({ sort, leans, seams }: Crossing, toward: readonly Toward[]): 'nests' | 'clashes' | 'open' | 'pin' | 'tip' {
  if (sort !== 'pair' || leans === null) return sort === 'pin' ? 'pin' : 'tip'
  const [a, b] = [toward[seams[0] as number] as Toward, toward[seams[1] as number] as Toward]
  if (a === 'open' || b === 'open') return 'open'
  return lean(leans[0], a) === lean(leans[1], b) ? 'clashes' : 'nests'
}

const lean = (toSide0: -1 | 1, toward: 0 | 1): number => (toward === 0 ? toSide0 : -toSide0)

export function tied(crossings: readonly Crossing[], wishes: readonly Wish[]): Tie[][] {
  const ties: Tie[][] = wishes.map(() => [])
  crossings.forEach(({ sort, leans, seams }, crossing) => {
    if (sort !== 'pair' || leans === null) return
    const [a, b] = seams as readonly [number, number]
    if (wishes[a]?.fixed === 'open' || wishes[b]?.fixed === 'open') return
    const nestsAlike = leans[0] !== leans[1]
    ties[a]?.push({ crossing, other: b, nestsAlike })
    ties[b]?.push({ crossing, other: a, nestsAlike })
  })
  return ties
}

/** One chain or ring from a seam on: each of its seams with the way it is pressed. */
function walk(first: number, ties: readonly (readonly Tie[])[], wishes: readonly Wish[], seen: boolean[]): [number, Toward][] {
  const members = [first]
  const links: Tie[] = []
  seen[first] = true
  let last = -1
  let ring: Tie | null = null
  for (let seam = first; ; ) {
    const onward = ties[seam]?.find(({ crossing }) => crossing !== last)
    if (onward === undefined) break
    last = onward.crossing
    if (onward.other === first) {
      ring = onward
      break
    }
    links.push(onward)
    members.push(onward.other)
    seen[onward.other] = true
    seam = onward.other
  }
  const tries = ring === null ? [null] : ([0, 1] as const)
  const found = tries.map((way) => along(members, links, wishes, ring, way))
  const best = found.length === 1 || (found[0] as Walked).cost <= (found[1] as Walked).cost ? (found[0] as Walked) : (found[1] as Walked)
  return members.map((seam, index) => [seam, best.ways[index] as Toward])
}

interface Walked {
  readonly cost: number
  readonly ways: readonly Toward[]
}

/** The best ways along a chain; for a ring, with its first seam pressed `firstWay`. */
function along(members: readonly number[], links: readonly Tie[], wishes: readonly Wish[], ring: Tie | null, firstWay: 0 | 1 | null): Walked {
  const price = (place: number, way: 0 | 1): number => {
    const { fixed, preference } = wishes[members[place] as number] as Wish
    if (fixed === 'open') return 0
    if (fixed !== null) return fixed === way ? 0 : Number.POSITIVE_INFINITY
    return preference !== null && preference !== way ? 1 : 0
  }
  const clash = (tie: Tie, a: 0 | 1, b: 0 | 1): number => ((a === b) === tie.nestsAlike ? 0 : CLASH)
  let costs: [number, number] = [firstWay === 1 ? Number.POSITIVE_INFINITY : price(0, 0), firstWay === 0 ? Number.POSITIVE_INFINITY : price(0, 1)]
  const from: [0 | 1, 0 | 1][] = [[0, 1]]
  links.forEach((tie, index) => {
    const came: [0 | 1, 0 | 1] = [0, 0]
    const next = ([0, 1] as const).map((way) => {
      const [stay, other] = [costs[0] + clash(tie, 0, way), costs[1] + clash(tie, 1, way)]
      came[way] = stay <= other ? 0 : 1
      return Math.min(stay, other) + price(index + 1, way)
    })
    from.push(came)
    costs = next as [number, number]
  })
  if (ring !== null && firstWay !== null) costs = [costs[0] + clash(ring, 0, firstWay), costs[1] + clash(ring, 1, firstWay)]
  let way: 0 | 1 = costs[0] <= costs[1] ? 0 : 1
  const cost = costs[way]
  const ways: Toward[] = []
  for (let place = members.length - 1; place >= 0; place--) {
    ways.push(wishes[members[place] as number]?.fixed === 'open' ? 'open' : way)
    if (place > 0) way = (from[place] as [0 | 1, 0 | 1])[way]
  }
  return { cost, ways: ways.reverse() }
}
