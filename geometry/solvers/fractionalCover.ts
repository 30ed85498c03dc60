/**
 * Closed walks of four steps that need not be taken whole times: how few take every step as often as it is wanted, and a bound for whole ones.
 *
 * In      how often each step between two nodes is wanted, the walks that may be taken, work that may be done.
 * Out     parts of walks whose sum is least, and a number of whole walks that no cover goes below.
 * How     the linear program "each step is taken as often as it is wanted", by the simplex method. Then rows that only whole walks must keep: where
 *         4q + r steps are wanted between some nodes, q walks leave r of them for another, which then takes at most that many of them. A row that
 *         the parts break is added; the prices stay good, and the dual simplex method makes the amounts good again.
 * Exact   the simplex method computes in doubles, and nothing rests on it: its prices are made whole numbers, and whatever whole prices are given, no
 *         cover has fewer walks than (all that is wanted at these prices) / (the dearest walk), rounded up.
 * Source  rounding of mixed whole rows, Nemhauser and Wolsey, from memory; that no row asks too much is tested by a table of all covers.
 */
import { type SparseColumn, Simplex, surplusOf } from './simplex.ts'

/** The four nodes that a closed walk comes to, in order. */
export type Walk = readonly [number, number, number, number]

/** How often each step `from · nodes + to` is wanted. */
export interface Demand {
  readonly nodes: number
  readonly steps: Int32Array
}

interface WalkPart {
  readonly walk: Walk
  readonly times: number
}

export interface FractionalCover {
  readonly parts: readonly WalkPart[]
  readonly atLeast: number
  /** To go on from, for the same demand and walks. */
  readonly program: CoverProgram
}

/** Counted in numbers that are worked over. */
export interface Budget {
  left: number
}

/** Every `whole` of what the weights count ask for a walk more. */
interface RoundingCut {
  readonly weights: Int32Array
  readonly whole: number
}

/** Prices are rounded to so many parts: fine enough that a bound is lost only where it hangs on less than a millionth. */
const PARTS = 2 ** 24
const NEARLY = 1e-7
const ROUNDS = 6
const CUTS_A_ROUND = 12
/** In the basis: a walk of which one step is used. */
const LONE = -(2 ** 30)
const NONE = -(2 ** 31)
/** Up to so many nodes every choice of them is tried for a row. */
const FEW_NODES = 8

/**
 * Parts of walks, with rows for whole ones until more than `enough` are needed or no row is broken: `few` rows, of single steps, leave parts that
 * are easily made whole; `many` bound better; `none` is soonest done.
 */
export function fractionalCover(
  demand: Demand,
  walks: readonly Walk[],
  rows: 'none' | 'few' | 'many',
  enough: number,
  budget: Budget,
  before?: FractionalCover,
): FractionalCover {
  let program = before?.program ?? solved(new CoverProgram(demand, walks), budget)
  let atLeast = program.atLeast()
  const prices = program.pricesOfSteps()
  let pool: readonly RoundingCut[] | null = null
  for (let round = 0; rows !== 'none' && round < ROUNDS && atLeast <= enough && budget.left > 0; round++) {
    const parts = program.parts()
    let more = broken(demand, ofSingleSteps(demand), parts)
    if (more.length === 0 && rows === 'many') {
      pool ??= ofNodes(demand, prices)
      budget.left -= 10 * pool.length * (demand.steps.length + parts.length)
      more = broken(demand, pool, parts).slice(0, CUTS_A_ROUND)
    }
    if (more.length === 0) break
    program = solved(new CoverProgram(demand, walks, program, more), budget)
    atLeast = Math.max(atLeast, program.atLeast())
  }
  return { parts: program.parts(), atLeast, program }
}

function solved(program: CoverProgram, budget: Budget): CoverProgram {
  budget.left -= program.setUpCost
  while (budget.left > 0 && program.dualStep()) budget.left -= program.stepCost
  while (budget.left > 0 && program.step()) budget.left -= program.stepCost
  return program
}

/** An odd number of one step: a walk that takes it twice does not take two halves. */
function ofSingleSteps({ nodes, steps }: Demand): RoundingCut[] {
  const cuts: RoundingCut[] = []
  steps.forEach((wanted, step) => {
    if (wanted < 2) return
    const weights = new Int32Array(nodes * nodes)
    weights[step] = 1
    cuts.push({ weights, whole: 2 })
    if (Math.floor(step / nodes) === step % nodes) cuts.push({ weights, whole: 4 })
  })
  return cuts
}

/**
 * For each choice of nodes: the steps between two of them, those that touch at least one of them, and those between two again, counted
 * otherwise: as the prices say; and twice where they add to what the nodes lack in balance, not at all where they answer it.
 */
function ofNodes({ nodes, steps }: Demand, prices: Float64Array): RoundingCut[] {
  const used = Array.from({ length: nodes }, (_, one) => one).filter((one) => steps.some((count, step) => count > 0 && touches(step, one, nodes)))
  const sets = used.length <= FEW_NODES ? choices(used) : connected(used, steps, nodes)
  return sets.flatMap((set): RoundingCut[] => {
    const balance = new Int32Array(nodes)
    const weigh = (weight: (from: number, to: number, step: number) => number): Int32Array =>
      steps.map((count, step) => (count === 0 ? 0 : weight(Math.floor(step / nodes), step % nodes, step)))
    const both = weigh((from, to) => (set.has(from) && set.has(to) ? 1 : 0))
    both.forEach((one, step) => {
      const count = one * (steps[step] as number)
      const [from, to] = [Math.floor(step / nodes), step % nodes]
      balance[from] = (balance[from] as number) + count
      balance[to] = (balance[to] as number) - count
    })
    const gives = (one: number): number => ((balance[one] as number) > 0 ? 1 : 0)
    const either = weigh((from, to) => (set.has(from) || set.has(to) ? 1 : 0))
    const balanced = weigh((from, to, step) => (both[step] as number) * (1 + gives(from) - gives(to)))
    const priced = weigh((_from, _to, step) => (both[step] as number) * Math.round(12 * (prices[step] as number)))
    const cuts = [both, either, balanced].flatMap((weights) => [4, 2].map((whole): RoundingCut => ({ weights, whole })))
    return [...cuts, { weights: priced, whole: 12 }, { weights: priced, whole: 6 }]
  })
}

const touches = (step: number, node: number, nodes: number): boolean => Math.floor(step / nodes) === node || step % nodes === node

function choices(all: readonly number[]): Set<number>[] {
  return Array.from({ length: 2 ** all.length - 1 }, (_, bits) => new Set(all.filter((_one, place) => ((bits + 1) >> place) % 2 === 1)))
}

/** Nodes that wanted steps lead to from each other. */
function connected(used: readonly number[], steps: Int32Array, nodes: number): Set<number>[] {
  const sets: Set<number>[] = []
  for (const start of used) {
    if (sets.some((set) => set.has(start))) continue
    const set = new Set([start])
    for (const one of set)
      for (const other of used) if ((steps[one * nodes + other] as number) + (steps[other * nodes + one] as number) > 0) set.add(other)
    sets.push(set)
  }
  return sets
}

/** Rows that the parts break, the most broken first. */
function broken(demand: Demand, cuts: readonly RoundingCut[], parts: readonly WalkPart[]): RoundingCut[] {
  const found: { cut: RoundingCut; lacks: number }[] = []
  const { steps, starts } = usedBy(
    demand,
    parts.map(({ walk }) => walk),
  )
  for (const cut of cuts) {
    const row = new RoundingRow(demand, cut)
    if (row.rest === 0) continue
    const has = parts.reduce((sum, { times }, part) => sum + row.worth(steps, starts[part] as number, starts[part + 1] as number) * times, 0)
    const lacks = (row.least - has) / row.rest
    if (lacks > 1e-4) found.push({ cut, lacks })
  }
  return found.sort((one, other) => other.lacks - one.lacks).map(({ cut }) => cut)
}

/**
 * Whole walks y of weight v each, with Σ v·y ≥ n = q·whole + rest and rest > 0, keep Σ (rest·⌊v / whole⌋ + min(rest, v mod whole))·y ≥ rest·(q + 1):
 * either those that count by their rest alone are enough for it, or the others number more than q.
 */
class RoundingRow {
  readonly rest: number
  readonly least: number
  private readonly cut: RoundingCut

  constructor(demand: Demand, cut: RoundingCut) {
    this.cut = cut
    let all = 0
    for (let step = 0; step < demand.steps.length; step++) all += (cut.weights[step] as number) * (demand.steps[step] as number)
    this.rest = all % cut.whole
    this.least = this.rest * Math.ceil(all / cut.whole)
  }

  /** What a walk is worth that uses these steps. */
  worth(used: Int32Array, from: number, to: number): number {
    const { weights, whole } = this.cut
    let weight = 0
    for (let at = from; at < to; at++) weight += weights[used[at] as number] as number
    return this.rest * Math.floor(weight / whole) + Math.min(this.rest, weight % whole)
  }
}

/** Walk w uses `steps[i]`, for i from `starts[w]` to before `starts[w + 1]`: those wanted, each at most as often as it is wanted, in rising order. */
interface Used {
  readonly steps: Int32Array
  readonly starts: Int32Array
}

/** These lists are made again and again: no list is made for a single walk. */
export function usedBy({ nodes, steps: wanted }: Demand, walks: readonly Walk[]): Used {
  const steps = new Int32Array(4 * walks.length)
  const starts = new Int32Array(walks.length + 1)
  let end = 0
  for (let index = 0; index < walks.length; index++) {
    const walk = walks[index] as Walk
    const start = end
    for (let side = 0; side < 4; side++) {
      const step = (walk[side] as number) * nodes + (walk[(side + 1) % 4] as number)
      let at = end
      while (at > start && (steps[at - 1] as number) > step) at--
      let before = 0
      while (before < at - start && steps[at - 1 - before] === step) before++
      if (before >= (wanted[step] as number)) continue
      steps.copyWithin(at + 1, at, end)
      steps[at] = step
      end++
    }
    starts[index + 1] = end
  }
  return { steps, starts }
}

/** A name for up to four steps in rising order: a number where a double holds it. */
export function nameOfSteps(steps: ArrayLike<number>, from: number, to: number, nodes: number): number | string {
  const base = nodes * nodes + 1
  if (base ** 4 > Number.MAX_SAFE_INTEGER) return Array.from({ length: to - from }, (_, at) => steps[from + at]).join()
  let name = 0
  for (let at = from; at < to; at++) name = name * base + (steps[at] as number) + 1
  return name
}

/** One walk for each choice of steps that is used. */
export function differentWalks({ nodes }: Demand, { steps, starts }: Used): number[] {
  const seen = new Set<number | string>()
  const different: number[] = []
  for (let walk = 0; walk + 1 < starts.length; walk++) {
    const [from, to] = [starts[walk] as number, starts[walk + 1] as number]
    if (from === to) continue
    const name = nameOfSteps(steps, from, to, nodes)
    if (seen.has(name)) continue
    seen.add(name)
    different.push(walk)
  }
  return different
}

class CoverProgram {
  readonly cuts: readonly RoundingCut[]
  /** What setting it up costs of a budget, and what one step of the simplex method does. */
  readonly setUpCost: number
  readonly stepCost: number
  private readonly demand: Demand
  private readonly walks: readonly Walk[]
  private readonly used: Used
  /** Places of the different walks among all. */
  private readonly different: readonly number[]
  private readonly least: readonly number[]
  /** Walk w gives `worths[i]` to row `rowsOf[i]`, for i from `starts[w]` to before `starts[w + 1]`. */
  private readonly starts: Int32Array
  private readonly rowsOf: Int32Array
  private readonly worths: Int32Array
  /** Its columns: the walk of that number; `LONE` a walk of which one step is used. */
  private readonly simplex: Simplex

  /** From nothing; or with more rows than a program before, which is solved: its prices stay, and dual steps bring the amounts up to nothing again. */
  constructor(demand: Demand, walks: readonly Walk[], before?: CoverProgram, more: readonly RoundingCut[] = []) {
    this.demand = demand
    this.used = before?.used ?? usedBy(demand, walks)
    this.different = before?.different ?? differentWalks(demand, this.used)
    this.walks = before?.walks ?? this.different.map((walk) => walks[walk] as Walk)
    this.cuts = [...(before?.cuts ?? []), ...more]
    const rows = more.map((cut) => new RoundingRow(demand, cut))
    this.least = [...(before?.least ?? demand.steps.filter((wanted) => wanted > 0)), ...rows.map(({ least }) => least)]
    ;[this.starts, this.rowsOf, this.worths] = before === undefined ? this.columnsOfSteps() : this.columnsWith(before, rows)
    const size = this.least.length
    // A little more of each, all different: ties between rows would turn the method in circles.
    const wants = Float64Array.from(this.least, (least, row) => least + 1e-6 * (1 + ((row * 7919) % 104729) / 104729))
    if (before === undefined) {
      // A walk of which one step is used is no better than another, and a start that needs no search.
      this.simplex = new Simplex(size, { least: 1e-9, tie: 0 })
      for (let row = 0; row < size; row++) this.simplex.start(row, LONE, 1, 1, wants[row] as number)
    } else this.simplex = before.simplex.withRows(wants, (walk, row) => this.worthTo(walk, row))
    this.stepCost = 2000 + 2 * size * size + this.rowsOf.length
    this.setUpCost = (before === undefined ? 40 : 10 * rows.length) * walks.length
  }

  private columnsOfSteps(): readonly [Int32Array, Int32Array, Int32Array] {
    const places = new Int32Array(this.demand.steps.length)
    let row = 0
    this.demand.steps.forEach((wanted, step) => {
      if (wanted > 0) places[step] = row++
    })
    const starts = new Int32Array(this.different.length + 1)
    const rowsOf = new Int32Array(4 * this.different.length)
    let end = 0
    this.different.forEach((walk, index) => {
      // A step walked twice has two entries in its row: they add up.
      const to = this.used.starts[walk + 1] as number
      for (let at = this.used.starts[walk] as number; at < to; at++) rowsOf[end++] = places[this.used.steps[at] as number] as number
      starts[index + 1] = end
    })
    return [starts, rowsOf.slice(0, end), new Int32Array(end).fill(1)]
  }

  private columnsWith(before: CoverProgram, rows: readonly RoundingRow[]): readonly [Int32Array, Int32Array, Int32Array] {
    const first = before.least.length
    const starts = new Int32Array(before.starts.length)
    const rowsOf = new Int32Array(before.rowsOf.length + rows.length * this.different.length)
    const worths = new Int32Array(rowsOf.length)
    let end = 0
    this.different.forEach((walk, index) => {
      const to = before.starts[index + 1] as number
      for (let at = before.starts[index] as number; at < to; at++, end++) {
        rowsOf[end] = before.rowsOf[at] as number
        worths[end] = before.worths[at] as number
      }
      for (let row = 0; row < rows.length; row++) {
        const worth = (rows[row] as RoundingRow).worth(this.used.steps, this.used.starts[walk] as number, this.used.starts[walk + 1] as number)
        if (worth === 0) continue
        rowsOf[end] = first + row
        worths[end++] = worth
      }
      starts[index + 1] = end
    })
    return [starts, rowsOf.slice(0, end), worths.slice(0, end)]
  }

  private worthTo(walk: number, row: number): number {
    if (walk < 0) return 0
    for (let at = this.starts[walk] as number, end = this.starts[walk + 1] as number; at < end; at++)
      if (this.rowsOf[at] === row) return this.worths[at] as number
    return 0
  }

  private columnOf(walk: number): SparseColumn {
    const [start, end] = [this.starts[walk], this.starts[walk + 1]]
    return { rows: this.rowsOf.subarray(start, end), gives: this.worths.subarray(start, end) }
  }

  /** One step of the dual simplex method: what is most below nothing leaves; false where nothing is. */
  dualStep(): boolean {
    const { simplex, starts, rowsOf, worths } = this
    const out = simplex.dualLeaving()
    if (out < 0) return false
    const given = simplex.rowOfInverse(out)
    let [enters, best, steepest, gain] = [NONE, Number.POSITIVE_INFINITY, 0, 0]
    // Of those that are as cheap the one that brings up most: many cost nothing, and the method would go on among them.
    const offer = (column: number, rate: number, cost: number): void => {
      if (rate > -1e-7) return
      const ratio = Math.max(0, cost) / -rate
      if (ratio > best + 1e-9 || (ratio > best - 1e-9 && rate >= steepest)) return
      ;[enters, best, steepest, gain] = [column, ratio, rate, -cost]
    }
    for (let row = 0; row < simplex.rows; row++) offer(surplusOf(row), -(given[row] as number), simplex.prices[row] as number)
    for (let walk = 0; walk < this.walks.length; walk++) {
      let [rate, worth] = [0, 0]
      for (let at = starts[walk] as number, end = starts[walk + 1] as number; at < end; at++) {
        rate += (given[rowsOf[at] as number] as number) * (worths[at] as number)
        worth += (simplex.prices[rowsOf[at] as number] as number) * (worths[at] as number)
      }
      offer(walk, rate, 1 - worth)
    }
    if (enters === NONE) return false
    simplex.exchange(enters, enters < 0 ? simplex.surplusInUse(surplusOf(enters)) : simplex.inUse(this.columnOf(enters)), gain, out)
    return true
  }

  /** One step of the simplex method; false where nothing is left to gain. */
  step(): boolean {
    const { simplex } = this
    const row = this.cheapestRow()
    if (row >= 0) return simplex.enter(surplusOf(row), simplex.surplusInUse(row), -(simplex.prices[row] as number)) !== null
    const { walk, worth } = this.dearest(simplex.prices)
    return worth > 1 + NEARLY && simplex.enter(walk, simplex.inUse(this.columnOf(walk)), worth - 1) !== null
  }

  /** The walks taken, each so often. */
  parts(): WalkPart[] {
    const parts: WalkPart[] = []
    this.simplex.basis.forEach((walk, place) => {
      const times = this.simplex.amounts[place] as number
      if (times >= 1e-5 && walk >= 0) parts.push({ walk: this.walks[walk] as Walk, times })
    })
    return parts
  }

  /** A number of whole walks that no cover goes below. */
  atLeast(): number {
    const whole = this.simplex.prices.map((price) => Math.max(0, Math.round(price * PARTS)))
    const dear = this.dearest(whole).worth
    // All are whole numbers below 2^53, and a quotient of such is never rounded past a whole number.
    const all = this.least.reduce((sum, least, row) => sum + least * (whole[row] as number), 0)
    return dear > 0 ? Math.ceil(all / dear) : 0
  }

  /** What one more of each step would cost. */
  pricesOfSteps(): Float64Array {
    const prices = new Float64Array(this.demand.steps.length)
    let row = 0
    this.demand.steps.forEach((wanted, step) => {
      if (wanted > 0) prices[step] = this.simplex.prices[row++] as number
    })
    return prices
  }

  private dearest(prices: Float64Array): { walk: number; worth: number } {
    const { starts, rowsOf, worths } = this
    let [walk, worth] = [0, 0]
    for (let one = 0; one < this.walks.length; one++) {
      let sum = 0
      const end = starts[one + 1] as number
      for (let at = starts[one] as number; at < end; at++) sum += (prices[rowsOf[at] as number] as number) * (worths[at] as number)
      if (sum > worth) [walk, worth] = [one, sum]
    }
    return { walk, worth }
  }

  /** The row whose price is most below nothing; −1 where none is. */
  private cheapestRow(): number {
    let best = -1
    let least = -NEARLY
    this.simplex.prices.forEach((price, row) => {
      if (price < least) [best, least] = [row, price]
    })
    return best
  }
}
