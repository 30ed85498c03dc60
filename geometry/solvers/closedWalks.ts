/**
 * The fewest closed walks of four steps that take every step as often as it is wanted.
 *
 * In      how often each step is wanted, and a budget in steps of work.
 * Out     walks, whether their number is proved to be the least, and a number that no cover goes below.
 * How     a bound from balance: a closed walk enters every fabric as often as it leaves it, so each wanted step too many that leaves a fabric must be
 *         answered by a spare one that enters. Where walks taken one by one, the best first, reach it, that is all. Else the bound of the relaxed
 *         program; covers that take the whole part of its walks and are searched for the rest; at last a search that leaves nothing out: some walk
 *         takes a chosen wanted step, so all walks through it are tried. What was looked at in vain is not looked at again.
 * Exact   bounds are whole-number facts; a cover is one because it leaves nothing wanted. Floats only say what to try first.
 */
import { type Budget, type Demand, differentWalks, nameOfSteps, type Relaxed, relaxed, usedBy, type Walk } from './fractionalCover.ts'

export interface Cover {
  readonly walks: readonly Walk[]
  readonly proved: boolean
  readonly atLeast: number
}

/** Luck decides whether a search finds its way at once: many short tries before a few long ones. Parts of the work. */
const SHARES = [1 / 1000, 1 / 100, 1 / 30]
/** Beyond so many geese walks taken one by one hardly ever are the fewest. */
const FEW_GEESE = 40
/** A walk of which so little is lacking is taken as often as if it were whole: bold at first, which is soon done; shyer, covers are longer sought and shorter. */
const LACKING = [0.3, 0.25, 0.2, 0.15, 0.1]
const LITTLE = 0.15
/** Beyond so many walks the relaxed program is not asked. */
const MOST_WALKS = 10_000
/** Beyond so many different geese a walk is sought among a few: the search must end soon also for a wall of scraps. */
const MOST_STEPS = 1000
const A_FEW = 32
/** Beyond so many fabrics walks are not all tried, only those that lead on by wanted steps. */
const MANY_FABRICS = 12

export function leastCover(demand: Demand, work: number): Cover {
  const budget: Budget = { left: work }
  const left = new Left(demand)
  let atLeast = left.bound()
  const walks = usefulWalks(demand)
  const simple = walks === null || left.geese <= FEW_GEESE ? oneByOne(left) : null
  if (walks === null || simple?.length === atLeast) return told(simple as Walk[], atLeast)
  const few = relaxed(demand, walks, 'few', (simple?.length ?? Number.POSITIVE_INFINITY) - 1, budget)
  atLeast = Math.max(atLeast, few.atLeast)
  if (simple?.length === atLeast) return told(simple, atLeast)
  let best: readonly Walk[] | null = simple
  for (const lacking of LACKING) {
    const dived = dive(new Left(demand), walks, budget, lacking, few)
    best = best === null ? dived : shorter(best, dived)
    if (best.length === atLeast) return told(best, atLeast)
  }
  if (best === null) throw new Error('impossible: no dive')
  const many = relaxed(demand, walks, 'many', best.length - 1, budget, few)
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
    const found = new Search(walks, 'many', budget).within(new Left(demand), atLeast)
    if (found !== null) best = found
    else if (budget.left > 0) atLeast++
  }
  return told(best, atLeast)
}

const told = (walks: readonly Walk[], atLeast: number): Cover => ({ walks, proved: walks.length === atLeast, atLeast })

const shorter = (one: readonly Walk[], other: readonly Walk[]): readonly Walk[] => (one.length < other.length ? one : other)

/** The whole part of each walk of the relaxed program but for `kept`, and a search for the rest; the best of before where that is no better. */
function wholeParts(
  demand: Demand,
  walks: readonly Walk[],
  rows: 'few' | 'many',
  parts: Relaxed['parts'],
  kept: number,
  atLeast: number,
  before: readonly Walk[],
  budget: Budget,
  share: number,
): readonly Walk[] {
  const left = new Left(demand)
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
    found = new Search(walks, rows, own).within(new Left(rest), allowed)
  budget.left += own.left
  return found === null ? best : [...taken, ...found]
}

/** One walk for each set of wanted steps that a walk can take; null where they are too many. */
function usefulWalks(demand: Demand): Walk[] | null {
  const left = new Left(demand)
  if (left.wanted().length > MOST_STEPS) return null
  if (demand.fabrics <= MANY_FABRICS) {
    const walks = everyRound(demand.fabrics)
    return differentWalks(demand, usedBy(demand, walks)).map((walk) => walks[walk] as Walk)
  }
  const found = new Map<number | string, Walk>()
  for (const step of left.wanted()) {
    for (const walk of left.through(step)) found.set(left.used(walk), walk)
    if (found.size > MOST_WALKS) return null
  }
  return [...found.values()]
}

/** Every walk, begun with its lowest fabric: where that comes twice, once for each way to begin. */
function everyRound(fabrics: number): Walk[] {
  const walks: Walk[] = []
  for (let a = 0; a < fabrics; a++)
    for (let b = a; b < fabrics; b++)
      for (let c = a; c < fabrics; c++) for (let d = a; d < fabrics; d++) if (c !== a || b <= d) walks.push([a, b, c, d])
  return walks
}

/** Again and again the whole part of the relaxed program, or the walk of which it has most. `first`: the program of all that is wanted. */
function dive(left: Left, walks: readonly Walk[], budget: Budget, lacking: number, first?: Relaxed): Walk[] {
  const taken: Walk[] = []
  for (let known = first; left.geese > 0; known = undefined) {
    const { parts } = known ?? relaxed(left.demand(), walks, 'none', 0, budget)
    const before = left.geese
    let most = parts[0]
    for (const part of parts) {
      if (part.times > (most?.times ?? 0)) most = part
      for (let time = Math.floor(part.times + lacking); time > 0 && left.take(part.walk).length > 0; time--) taken.push(part.walk)
    }
    if (left.geese < before) continue
    const walk = most?.walk ?? left.bestThrough(left.scarcest())
    left.take(walk)
    taken.push(walk)
  }
  return taken
}

function oneByOne(left: Left): Walk[] {
  const walks: Walk[] = []
  while (left.geese > 0) {
    const walk = left.bestThrough(left.scarcest())
    left.take(walk)
    walks.push(walk)
  }
  return walks
}

/** What is still wanted. */
class Left {
  geese = 0
  readonly fabrics: number
  private readonly steps: Int32Array
  /** Wanted steps that leave each fabric, less those that enter it. */
  private readonly balance: Int32Array
  private readonly known: number[] = []
  private readonly anywhere: [number, number][]

  constructor({ fabrics, steps }: Demand) {
    this.fabrics = fabrics
    this.steps = Int32Array.from(steps)
    this.balance = new Int32Array(fabrics)
    const all = Array.from({ length: fabrics <= MANY_FABRICS ? fabrics : 0 }, (_, one) => one)
    this.anywhere = all.flatMap((c) => all.map((d): [number, number] => [c, d]))
    steps.forEach((count, step) => {
      if (count === 0) return
      this.known.push(step)
      this.change(step, count)
    })
  }

  demand(): Demand {
    return { fabrics: this.fabrics, steps: Int32Array.from(this.steps) }
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
    return Math.ceil((this.geese + answers) / 4)
  }

  /** The steps of the walk that were wanted. */
  take(walk: Walk): number[] {
    const taken: number[] = []
    for (const step of stepsOf(walk, this.fabrics)) {
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

  /** A wanted step where the fabrics are least in balance: there the choice is smallest. */
  scarcest(): number {
    let best = -1
    let least = Number.POSITIVE_INFINITY
    for (const step of this.known) {
      const count = this.steps[step] as number
      if (count === 0) continue
      const [from, to] = [Math.floor(step / this.fabrics), step % this.fabrics]
      const back = this.steps[to * this.fabrics + from] as number
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
    const [a, b] = [Math.floor(step / this.fabrics), step % this.fabrics]
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
    return nameOfSteps(taken, 0, taken.length, this.fabrics)
  }

  private worthOf(walk: Walk): number {
    const taken = this.take(walk)
    const worth = taken.length * 1000 - this.bound()
    this.giveBack(taken)
    return worth
  }

  /** Walks that begin with this step, those that take most of what is wanted first; of walks that take the same or less than another, none. */
  through(step: number): Walk[] {
    const [a, b] = [Math.floor(step / this.fabrics), step % this.fabrics]
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
    if (this.fabrics <= MANY_FABRICS) return this.anywhere
    const wanted = this.wanted().map((step): [number, number] => [Math.floor(step / this.fabrics), step % this.fabrics])
    const after = new Set([a, b, ...wanted.flatMap(([from, to]) => (from === b ? [to] : []))])
    const before = new Set([a, b, ...wanted.flatMap(([from, to]) => (to === a ? [from] : []))])
    return [
      ...[...after].flatMap((c) => [...before].map((d): [number, number] => [c, d])),
      ...(wanted.length > MOST_STEPS ? wanted.slice(0, A_FEW) : wanted),
    ]
  }

  private change(step: number, by: number): void {
    const [from, to] = [Math.floor(step / this.fabrics), step % this.fabrics]
    this.geese += by
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
  private readonly vain = new Map<string, number>()
  private readonly chosen: Walk[] = []

  constructor(walks: readonly Walk[], rows: 'few' | 'many', budget: Budget) {
    this.walks = walks
    this.rows = rows
    this.budget = budget
  }

  within(left: Left, allowed: number): Walk[] | null {
    if (left.geese === 0) return this.chosen
    if (left.bound() > allowed || this.budget.left <= 0) return null
    const key = left.key()
    if ((this.vain.get(key) ?? -1) >= allowed) return null
    const { parts, atLeast } = relaxed(left.demand(), this.walks, this.rows, allowed, this.budget)
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
    if (this.budget.left > 0) this.vain.set(key, allowed)
    return null
  }

  /** All walks through the scarcest step, those of the relaxed program first. */
  private order(left: Left, parts: Relaxed['parts']): Walk[] {
    const step = left.scarcest()
    const named = new Map(parts.map(({ walk, times }) => [left.used(walk), times]))
    const times = (walk: Walk): number => named.get(left.used(walk)) ?? 0
    return left.through(step).sort((one, other) => times(other) - times(one))
  }
}

function stepsOf([a, b, c, d]: Walk, fabrics: number): number[] {
  return [a * fabrics + b, b * fabrics + c, c * fabrics + d, d * fabrics + a]
}
