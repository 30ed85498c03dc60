/**
 * The fewest closed walks of four steps that take every step between two nodes as often as it is wanted.
 *
 * In      how often each step is wanted, and a budget of work, in numbers worked over.
 * Out     walks, whether their number is proved to be the least, and a number that no cover goes below.
 * How     a bound from balance: a closed walk enters every node as often as it leaves it, so each wanted step too many that leaves a node must be
 *         answered by a spare one that enters. Where walks taken one by one, the best first, reach it, that is all. Else the bound of the linear
 *         program; covers that take the whole part of its walks and are searched for the rest; at last a search that leaves nothing out: some walk
 *         takes a chosen wanted step, so all walks through it are tried. What failed once is not looked at again.
 * Exact   bounds are whole-number facts; a cover is one because it leaves nothing wanted. Floats only say what to try first.
 */
import { type Budget, type Demand, differentWalks, type FractionalCover, fractionalCover, nameOfSteps, usedBy, type Walk } from './fractionalCover.ts'

export interface Cover {
  readonly walks: readonly Walk[]
  readonly proved: boolean
  readonly atLeast: number
}

/** Luck decides whether a search finds its way at once: many short tries before a few long ones. Parts of the work. */
const SHARES = [1 / 1000, 1 / 100, 1 / 30]
/** Beyond so many wanted steps, walks taken one by one hardly ever are the fewest. */
const FEW_STEPS = 40
/** A walk of which so little is lacking is taken as often as if it were whole: bold at first, which is soon done; shyer, covers are longer sought and shorter. */
const LACKING = [0.3, 0.25, 0.2, 0.15, 0.1]
const LITTLE = 0.15
/** Beyond so many walks the linear program is not asked. */
const MOST_WALKS = 10_000
/** Beyond so many different steps a walk is sought among a few: the search must end soon also where thousands of steps all differ. */
const MOST_STEPS = 1000
const A_FEW = 32
/** Beyond so many nodes walks are not all tried, only those that lead on by wanted steps. */
const MANY_NODES = 12

/**
 * The fewest walks.
 *
 * In      the demand, and how much work may be done before the search gives up.
 * Out     walks that take every step at least as often as it is wanted; `proved` where no fewer do, and `atLeast`, which no cover goes below.
 */
export function leastCover(demand: Demand, work: number): Cover {
  const budget: Budget = { left: work }
  const left = new Remaining(demand)
  let atLeast = left.bound()
  const walks = usefulWalks(demand)
  const simple = walks === null || left.total <= FEW_STEPS ? oneByOne(left) : null
  if (walks === null || simple?.length === atLeast) return coverOf(simple as Walk[], atLeast)
  const few = fractionalCover(demand, walks, 'few', (simple?.length ?? Number.POSITIVE_INFINITY) - 1, budget)
  atLeast = Math.max(atLeast, few.atLeast)
  if (simple?.length === atLeast) return coverOf(simple, atLeast)
  let best: readonly Walk[] | null = simple
  for (const lacking of LACKING) {
    const dived = dive(new Remaining(demand), walks, budget, lacking, few)
    best = best === null ? dived : shorter(best, dived)
    if (best.length === atLeast) return coverOf(best, atLeast)
  }
  if (best === null) throw new Error('impossible: no dive')
  const many = fractionalCover(demand, walks, 'many', best.length - 1, budget, few)
  atLeast = Math.max(atLeast, many.atLeast)
  for (const part of SHARES)
    for (const [rows, { parts }] of [
      ['few', few],
      ['many', many],
    ] as const)
      for (const kept of [0, 1, 2, 3]) {
        if (best.length <= atLeast) break
        best = wholeParts(demand, walks, rows, parts, kept, atLeast, best, budget, part * work)
      }
  while (best.length > atLeast && budget.left > 0) {
    const found = new Search(walks, 'many', budget).within(new Remaining(demand), atLeast)
    if (found !== null) best = found
    else if (budget.left > 0) atLeast++
  }
  return coverOf(best, atLeast)
}

const coverOf = (walks: readonly Walk[], atLeast: number): Cover => ({ walks, proved: walks.length === atLeast, atLeast })

const shorter = (one: readonly Walk[], other: readonly Walk[]): readonly Walk[] => (one.length < other.length ? one : other)

/** The whole part of each walk of the linear program but for `kept`, and a search for the rest; the best of before where that is no better. */
function wholeParts(
  demand: Demand,
  walks: readonly Walk[],
  rows: 'few' | 'many',
  parts: FractionalCover['parts'],
  kept: number,
  atLeast: number,
  before: readonly Walk[],
  budget: Budget,
  share: number,
): readonly Walk[] {
  const left = new Remaining(demand)
  const taken: Walk[] = []
  for (const { walk, times } of parts)
    for (let time = Math.floor(times + 1e-4) - kept; time > 0; time--) {
      if (left.take(walk).length === 0) break
      taken.push(walk)
    }
  const rest = left.demand()
  const best = shorter([...taken, ...dive(left, walks, budget, LITTLE)], before)
  const most = best.length - 1 - taken.length
  const own: Budget = { left: Math.min(share, budget.left) }
  budget.left -= own.left
  let found: Walk[] | null = null
  for (let allowed = atLeast - taken.length; allowed <= most && own.left > 0 && found === null; allowed++)
    found = new Search(walks, rows, own).within(new Remaining(rest), allowed)
  budget.left += own.left
  return found === null ? best : [...taken, ...found]
}

/** One walk for each set of wanted steps that a walk can take; null where they are too many. */
function usefulWalks(demand: Demand): Walk[] | null {
  const left = new Remaining(demand)
  if (left.wanted().length > MOST_STEPS) return null
  if (demand.nodes <= MANY_NODES) {
    const walks = everyRound(demand.nodes)
    return differentWalks(demand, usedBy(demand, walks)).map((walk) => walks[walk] as Walk)
  }
  const found = new Map<number | string, Walk>()
  for (const step of left.wanted()) {
    for (const walk of left.through(step)) found.set(left.used(walk), walk)
    if (found.size > MOST_WALKS) return null
  }
  return [...found.values()]
}

/** Every walk, begun with its lowest node: where that comes twice, once for each way to begin. */
function everyRound(nodes: number): Walk[] {
  const walks: Walk[] = []
  for (let a = 0; a < nodes; a++)
    for (let b = a; b < nodes; b++) for (let c = a; c < nodes; c++) for (let d = a; d < nodes; d++) if (c !== a || b <= d) walks.push([a, b, c, d])
  return walks
}

/** Again and again the whole part of the linear program, or the walk of which it has most. `first`: the program of all that is wanted. */
function dive(left: Remaining, walks: readonly Walk[], budget: Budget, lacking: number, first?: FractionalCover): Walk[] {
  const taken: Walk[] = []
  for (let known = first; left.total > 0; known = undefined) {
    const { parts } = known ?? fractionalCover(left.demand(), walks, 'none', 0, budget)
    const before = left.total
    let most = parts[0]
    for (const part of parts) {
      if (part.times > (most?.times ?? 0)) most = part
      for (let time = Math.floor(part.times + lacking); time > 0 && left.take(part.walk).length > 0; time--) taken.push(part.walk)
    }
    if (left.total < before) continue
    const walk = most?.walk ?? left.bestThrough(left.scarcest())
    left.take(walk)
    taken.push(walk)
  }
  return taken
}

function oneByOne(left: Remaining): Walk[] {
  const walks: Walk[] = []
  while (left.total > 0) {
    const walk = left.bestThrough(left.scarcest())
    left.take(walk)
    walks.push(walk)
  }
  return walks
}

/** What is still wanted. */
class Remaining {
  /** Wanted steps, each as often as it is wanted. */
  total = 0
  readonly nodes: number
  private readonly steps: Int32Array
  /** Wanted steps that leave each node, less those that enter it. */
  private readonly balance: Int32Array
  private readonly known: number[] = []
  private readonly anywhere: [number, number][]

  constructor({ nodes, steps }: Demand) {
    this.nodes = nodes
    this.steps = Int32Array.from(steps)
    this.balance = new Int32Array(nodes)
    const all = Array.from({ length: nodes <= MANY_NODES ? nodes : 0 }, (_, one) => one)
    this.anywhere = all.flatMap((c) => all.map((d): [number, number] => [c, d]))
    steps.forEach((count, step) => {
      if (count === 0) return
      this.known.push(step)
      this.change(step, count)
    })
  }

  demand(): Demand {
    return { nodes: this.nodes, steps: Int32Array.from(this.steps) }
  }

  key(): string {
    return this.known.map((step) => this.steps[step]).join()
  }

  wanted(): number[] {
    return this.known.filter((step) => (this.steps[step] as number) > 0)
  }

  bound(): number {
    let answers = 0
    for (const one of this.balance) if (one > 0) answers += one
    return Math.ceil((this.total + answers) / 4)
  }

  /** The steps of the walk that were wanted. */
  take(walk: Walk): number[] {
    const taken: number[] = []
    for (const step of stepsOf(walk, this.nodes)) {
      if ((this.steps[step] as number) === 0) continue
      this.steps[step] = (this.steps[step] as number) - 1
      this.change(step, -1)
      taken.push(step)
    }
    return taken
  }

  giveBack(taken: readonly number[]): void {
    for (const step of taken) {
      this.steps[step] = (this.steps[step] as number) + 1
      this.change(step, 1)
    }
  }

  /** A name for the wanted steps that the walk takes. */
  used(walk: Walk): number | string {
    const taken = this.take(walk)
    this.giveBack(taken)
    return this.nameOf(taken)
  }

  /** A wanted step where the nodes are least in balance: there the choice is smallest. */
  scarcest(): number {
    let best = -1
    let least = Number.POSITIVE_INFINITY
    for (const step of this.known) {
      const count = this.steps[step] as number
      if (count === 0) continue
      const [from, to] = [Math.floor(step / this.nodes), step % this.nodes]
      const back = this.steps[to * this.nodes + from] as number
      const ways = from === to ? 1e6 + count : back * 1e3 + count
      if (ways < least) {
        least = ways
        best = step
      }
    }
    return best
  }

  /** The walk that begins with this step and takes most of what is wanted; of such, one that leaves least to answer. */
  bestThrough(step: number): Walk {
    const [a, b] = [Math.floor(step / this.nodes), step % this.nodes]
    let best: Walk = [a, b, a, b]
    let most = Number.NEGATIVE_INFINITY
    for (const [c, d] of this.onward(a, b)) {
      const walk: Walk = [a, b, c, d]
      const worth = this.worthOf(walk)
      if (worth > most) [best, most] = [walk, worth]
    }
    return best
  }

  /** Puts the steps in order. */
  private nameOf(taken: number[]): number | string {
    taken.sort((one, other) => one - other)
    return nameOfSteps(taken, 0, taken.length, this.nodes)
  }

  private worthOf(walk: Walk): number {
    const taken = this.take(walk)
    const worth = taken.length * 1000 - this.bound()
    this.giveBack(taken)
    return worth
  }

  /** Walks that begin with this step, those that take most of what is wanted first; of walks that take the same or less than another, none. */
  through(step: number): Walk[] {
    const [a, b] = [Math.floor(step / this.nodes), step % this.nodes]
    const found = new Map<number | string, { walk: Walk; taken: number[]; worth: number }>()
    for (const [c, d] of this.onward(a, b)) {
      const walk: Walk = [a, b, c, d]
      const taken = this.take(walk)
      const worth = taken.length * 1000 - this.bound()
      this.giveBack(taken)
      const key = this.nameOf(taken)
      if (!found.has(key)) found.set(key, { walk, taken, worth })
    }
    const sorted = [...found.values()].sort((one, other) => other.worth - one.worth)
    return sorted.filter(({ taken }, place) => !sorted.some((other, at) => at < place && within(taken, other.taken))).map(({ walk }) => walk)
  }

  private onward(a: number, b: number): [number, number][] {
    if (this.nodes <= MANY_NODES) return this.anywhere
    const wanted = this.wanted().map((step): [number, number] => [Math.floor(step / this.nodes), step % this.nodes])
    const after = new Set([a, b, ...wanted.flatMap(([from, to]) => (from === b ? [to] : []))])
    const before = new Set([a, b, ...wanted.flatMap(([from, to]) => (to === a ? [from] : []))])
    return [
      ...[...after].flatMap((c) => [...before].map((d): [number, number] => [c, d])),
      ...(wanted.length > MOST_STEPS ? wanted.slice(0, A_FEW) : wanted),
    ]
  }

  private change(step: number, by: number): void {
    const [from, to] = [Math.floor(step / this.nodes), step % this.nodes]
    this.total += by
    this.balance[from] = (this.balance[from] as number) + by
    this.balance[to] = (this.balance[to] as number) - by
  }
}

/** Whether sorted `few` are among sorted `many`, each as often. */
function within(few: readonly number[], many: readonly number[]): boolean {
  let at = 0
  for (const one of few) {
    while (at < many.length && (many[at] as number) < one) at++
    if (many[at] !== one) return false
    at++
  }
  return true
}

/** Every cover within a number of walks, depth first; null also where the budget ends, which then has nothing left. */
class Search {
  private readonly walks: readonly Walk[]
  private readonly rows: 'few' | 'many'
  private readonly budget: Budget
  /** Walks that were not enough for what was left. */
  private readonly failed = new Map<string, number>()
  private readonly chosen: Walk[] = []

  constructor(walks: readonly Walk[], rows: 'few' | 'many', budget: Budget) {
    this.walks = walks
    this.rows = rows
    this.budget = budget
  }

  within(left: Remaining, allowed: number): Walk[] | null {
    if (left.total === 0) return this.chosen
    if (left.bound() > allowed || this.budget.left <= 0) return null
    const key = left.key()
    if ((this.failed.get(key) ?? -1) >= allowed) return null
    const { parts, atLeast } = fractionalCover(left.demand(), this.walks, this.rows, allowed, this.budget)
    if (atLeast <= allowed) {
      for (const walk of this.order(left, parts)) {
        const taken = left.take(walk)
        this.chosen.push(walk)
        if (this.within(left, allowed - 1) !== null) return this.chosen
        this.chosen.pop()
        left.giveBack(taken)
        if (this.budget.left <= 0) return null
      }
    }
    if (this.budget.left > 0) this.failed.set(key, allowed)
    return null
  }

  /** All walks through the scarcest step, those of the linear program first. */
  private order(left: Remaining, parts: FractionalCover['parts']): Walk[] {
    const step = left.scarcest()
    const named = new Map(parts.map(({ walk, times }) => [left.used(walk), times]))
    const times = (walk: Walk): number => named.get(left.used(walk)) ?? 0
    return left.through(step).sort((one, other) => times(other) - times(one))
  }
}

function stepsOf([a, b, c, d]: Walk, nodes: number): number[] {
  return [a * nodes + b, b * nodes + c, c * nodes + d, d * nodes + a]
}
