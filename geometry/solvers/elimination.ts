/**
 * The least cost of many two-way choices of which some pairs are at odds: the general pressing problem, where seams are tied to be pressed alike.
 *
 * In      what each choice costs by itself, and what pairs cost when they are alike or unlike; a budget of steps.
 * Out     a way for each choice, its cost, and a cost that nothing can be below: the same where the budget held, and then it is the minimum.
 * How     choices are eliminated one by one, fewest neighbours first: for every way its neighbours may lie, the better of its two ways is written
 *         down, and the neighbours are left with that table. Nothing is lost, so what remains at the end is the least cost; the ways are read
 *         back in reverse. A table doubles with each neighbour. Where one would be too large for the budget, its parts are minimised apart: their sum can only be
 *         lower, so it is still a bound; the ways read back are then improved one by one, and two by two along the pairs.
 */
export interface Choices {
  /** Cost of way 0 and of way 1; infinite where a way is not open to it. */
  readonly own: readonly (readonly [number, number])[]
  readonly pairs: readonly Pair[]
}

export interface Pair {
  readonly a: number
  readonly b: number
  /** Cost where both have the same way, and where they have not. */
  readonly alike: number
  readonly unlike: number
}

interface LeastWays {
  readonly ways: readonly (0 | 1)[]
  readonly cost: number
  readonly atLeast: number
}

/** Entries of tables made and read: about two seconds. */
const STEPS = 4e7
/** Neighbours in one table where the budget does not reach. */
const APART = 12
/** A table of more neighbours than this is never made. */
const WIDEST = 22

interface Factor {
  /** Bit i of a place in the table is the way of `members[i]`. */
  readonly members: readonly number[]
  readonly table: Float64Array
}

/** A way for each choice with the least cost; `budget` is how many table entries may be worked through. */
export function leastWays(choices: Choices, budget: number = STEPS): LeastWays {
  const count = choices.own.length
  const buckets: Set<Factor>[] = Array.from({ length: count }, () => new Set())
  const add = (factor: Factor): void => {
    for (const member of factor.members) buckets[member]?.add(factor)
  }
  choices.own.forEach(([zero, one], member) => {
    add({ members: [member], table: Float64Array.of(zero, one) })
  })
  for (const { a, b, alike, unlike } of choices.pairs)
    if (a !== b) add({ members: a < b ? [a, b] : [b, a], table: Float64Array.of(alike, unlike, unlike, alike) })
  let atLeast = choices.pairs.reduce((sum, { a, b, alike }) => sum + (a === b ? alike : 0), 0)
  let left = budget
  let whole = true
  const read: { member: number; factors: readonly Factor[] }[] = []
  const queue = new Queue(count, (member) => neighboursOf(buckets[member] as Set<Factor>, member).length)
  for (let member = queue.next(); member !== null; member = queue.next()) {
    const factors = [...(buckets[member] as Set<Factor>)]
    read.push({ member, factors })
    for (const factor of factors) for (const other of factor.members) buckets[other]?.delete(factor)
    const around = neighboursOf(factors, member)
    const price = 2 ** (around.length + 1) * factors.length
    const exact = around.length <= WIDEST && price <= left
    const groups = exact ? [factors] : apart(factors)
    whole &&= groups.length === 1
    for (const group of groups) {
      const made = minimised(group, member)
      left -= 2 * made.table.length * group.length
      if (made.members.length === 0) atLeast += made.table[0] as number
      else add(made)
    }
    for (const other of around) queue.changed(other)
  }
  const ways: (0 | 1)[] = new Array(count).fill(0)
  for (const { member, factors } of read.reverse()) {
    const costs = ([0, 1] as const).map((way) => {
      ways[member] = way
      return factors.reduce((sum, factor) => sum + costAt(factor, ways), 0)
    }) as [number, number]
    ways[member] = costs[0] <= costs[1] ? 0 : 1
  }
  if (!whole) improve(choices, ways)
  return { ways, cost: costOfWays(choices, ways), atLeast: whole ? costOfWays(choices, ways) : atLeast }
}

function neighboursOf(factors: Iterable<Factor>, member: number): number[] {
  const around = new Set<number>()
  for (const { members } of factors) for (const other of members) if (other !== member) around.add(other)
  return [...around].sort((a, b) => a - b)
}

/** Parts small enough to be minimised by themselves. */
function apart(factors: readonly Factor[]): Factor[][] {
  const groups: { members: Set<number>; factors: Factor[] }[] = []
  for (const factor of [...factors].sort((a, b) => b.members.length - a.members.length)) {
    const fits = groups.find(({ members }) => new Set([...members, ...factor.members]).size <= Math.max(APART, factor.members.length))
    if (fits === undefined) groups.push({ members: new Set(factor.members), factors: [factor] })
    else {
      fits.factors.push(factor)
      for (const member of factor.members) fits.members.add(member)
    }
  }
  return groups.map((group) => group.factors)
}

/** What the neighbours are left with once the better way of one choice is taken. */
function minimised(factors: readonly Factor[], member: number): Factor {
  const members = neighboursOf(factors, member)
  const bit = new Map(members.map((other, index) => [other, 2 ** index]))
  const table = new Float64Array(2 ** members.length)
  const sums = [new Float64Array(table.length), new Float64Array(table.length)] as const
  for (const { members: own, table: costs } of factors) {
    const bits = own.map((other) => bit.get(other) ?? 0)
    const mine = own.indexOf(member)
    for (let place = 0; place < table.length; place++) {
      let index = 0
      for (let i = 0; i < bits.length; i++) if ((place & (bits[i] as number)) !== 0) index |= 1 << i
      sums[0][place] = (sums[0][place] as number) + (costs[index] as number)
      sums[1][place] = (sums[1][place] as number) + (costs[index | (1 << mine)] as number)
    }
  }
  for (let place = 0; place < table.length; place++) table[place] = Math.min(sums[0][place] as number, sums[1][place] as number)
  return { members, table }
}

function costAt({ members, table }: Factor, ways: readonly (0 | 1)[]): number {
  let index = 0
  for (let i = 0; i < members.length; i++) if (ways[members[i] as number] === 1) index |= 1 << i
  return table[index] as number
}

/** What a way for each choice costs in all. */
export function costOfWays({ own, pairs }: Choices, ways: readonly (0 | 1)[]): number {
  const alone = own.reduce((sum, costs, member) => sum + costs[ways[member] as 0 | 1], 0)
  return pairs.reduce((sum, { a, b, alike, unlike }) => sum + (ways[a] === ways[b] ? alike : unlike), alone)
}

/** Turns one choice, or the two of a pair, as long as that costs less. */
function improve(choices: Choices, ways: (0 | 1)[]): void {
  const touching: Pair[][] = choices.own.map(() => [])
  for (const pair of choices.pairs) {
    touching[pair.a]?.push(pair)
    if (pair.b !== pair.a) touching[pair.b]?.push(pair)
  }
  const local = (members: readonly number[]): number =>
    members.reduce((sum, member) => sum + (choices.own[member]?.[ways[member] as 0 | 1] ?? 0), 0) +
    [...new Set(members.flatMap((member) => touching[member] ?? []))].reduce(
      (sum, { a, b, alike, unlike }) => sum + (ways[a] === ways[b] ? alike : unlike),
      0,
    )
  const moves = [...choices.own.map((_, member) => [member]), ...choices.pairs.filter(({ a, b }) => a !== b).map(({ a, b }) => [a, b])]
  const turn = (members: readonly number[]): void => {
    for (const member of members) ways[member] = ways[member] === 0 ? 1 : 0
  }
  for (let changed = true; changed; ) {
    changed = false
    for (const move of moves) {
      const before = local(move)
      turn(move)
      if (local(move) < before) changed = true
      else turn(move)
    }
  }
}

/** Choices by their number of neighbours, fewest first. */
class Queue {
  private readonly waiting: number[][] = []
  private readonly degree: number[]
  private readonly count: (member: number) => number

  constructor(size: number, count: (member: number) => number) {
    this.count = count
    this.degree = Array.from({ length: size }, (_, member) => count(member))
    for (let member = size - 1; member >= 0; member--) this.put(member)
  }

  private put(member: number): void {
    const degree = this.degree[member] as number
    this.waiting[degree] ??= []
    this.waiting[degree]?.push(member)
  }

  changed(member: number): void {
    if (this.degree[member] === -1) return
    this.degree[member] = this.count(member)
    this.put(member)
  }

  next(): number | null {
    for (let degree = 0; degree < this.waiting.length; degree++) {
      const there = this.waiting[degree] ?? []
      while (there.length > 0) {
        const member = there.pop() as number
        // Entries left behind by a change of degree are passed over.
        if (this.degree[member] !== degree) continue
        this.degree[member] = -1
        return member
      }
    }
    return null
  }
}
