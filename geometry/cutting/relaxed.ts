/**
 * Batches that need not be whole: how few cover what is wanted, and a bound for whole ones.
 *
 * In      how many steps from right wing to left wing are wanted, the walks that may be taken, work that may be done.
 * Out     parts of batches whose sum is least, and a number of whole batches that no plan goes below.
 * How     the linear program "each step is walked as often as it is wanted", by the simplex method. Then rows that only whole batches must keep: where
 *         the geese between some fabrics are 4q + r, q batches leave r of them for another, which then makes at most that many of them. A row that
 *         the parts break is added, and all is solved again.
 * Exact   the simplex method reckons in floats, and nothing rests on it: its prices are made whole numbers, and whatever whole prices are given, no
 *         plan has fewer batches than (all that is wanted at these prices) / (the dearest batch), rounded up.
 * Source  rounding of mixed whole rows, Nemhauser and Wolsey, from memory; that no row asks too much is tested by a table of all covers.
 */

/** The fabrics round a large square, clockwise. */
export type Walk = readonly [number, number, number, number]

/** How often each step `from · fabrics + to` is wanted. */
export interface Demand {
  readonly fabrics: number
  readonly steps: Int32Array
}

export interface Part {
  readonly walk: Walk
  readonly times: number
}

export interface Relaxed {
  readonly parts: readonly Part[]
  readonly atLeast: number
}

/** Counted in numbers that are worked over. */
export interface Budget {
  left: number
}

/** Every `whole` of what the weights count ask for a batch more. */
export interface Cut {
  readonly weights: Int32Array
  readonly whole: number
}

/** Prices are rounded to so many parts: fine enough that a bound is lost only where it hangs on less than a millionth. */
const PARTS = 2 ** 24
const NEARLY = 1e-7
const ROUNDS = 6
const CUTS_A_ROUND = 12
/** Up to so many fabrics every choice of them is tried for a row. */
const FEW_FABRICS = 8

/**
 * Parts of batches, with rows for whole ones until more than `enough` are needed or no row is broken: `few` rows, of single steps, leave parts that
 * are easily made whole; `many` bound better.
 */
export function relaxed(demand: Demand, walks: readonly Walk[], rows: 'few' | 'many', enough: number, budget: Budget): Relaxed {
  let program = solved(demand, walks, [], budget)
  let atLeast = program.atLeast()
  const prices = program.pricesOfSteps()
  let pool: readonly Cut[] | null = null
  for (let round = 0; round < ROUNDS && atLeast <= enough && budget.left > 0; round++) {
    const parts = program.parts()
    let more = broken(demand, ofSingleSteps(demand), parts)
    if (more.length === 0 && rows === 'many') {
      pool ??= ofFabrics(demand, prices)
      budget.left -= 10 * pool.length * (demand.steps.length + parts.length)
      more = broken(demand, pool, parts).slice(0, CUTS_A_ROUND)
    }
    if (more.length === 0) break
    program = solved(demand, walks, [...program.cuts, ...more], budget)
    atLeast = Math.max(atLeast, program.atLeast())
  }
  return { parts: program.parts(), atLeast }
}

function solved(demand: Demand, walks: readonly Walk[], cuts: readonly Cut[], budget: Budget): Program {
  const program = new Program(demand, walks, cuts)
  budget.left -= program.size
  while (budget.left > 0 && program.turn()) budget.left -= program.turnCost
  return program
}

/** An odd number of one goose: a batch that makes two of them does not make two halves. */
function ofSingleSteps({ fabrics, steps }: Demand): Cut[] {
  const cuts: Cut[] = []
  steps.forEach((wanted, step) => {
    if (wanted < 2) return
    const weights = new Int32Array(fabrics * fabrics)
    weights[step] = 1
    cuts.push({ weights, whole: 2 })
    if (Math.floor(step / fabrics) === step % fabrics) cuts.push({ weights, whole: 4 })
  })
  return cuts
}

/**
 * For each choice of fabrics: the geese whose wings are both of them, those with at least one wing of them, and those with both again, counted
 * otherwise: as the prices say; and twice where they add to what the fabrics lack in balance, not at all where they answer it.
 */
function ofFabrics({ fabrics, steps }: Demand, prices: Float64Array): Cut[] {
  const used = Array.from({ length: fabrics }, (_, one) => one).filter((one) => steps.some((count, step) => count > 0 && touches(step, one, fabrics)))
  const sets = used.length <= FEW_FABRICS ? choices(used) : connected(used, steps, fabrics)
  return sets.flatMap((set): Cut[] => {
    const balance = new Int32Array(fabrics)
    const weigh = (weight: (from: number, to: number, step: number) => number): Int32Array =>
      steps.map((count, step) => (count === 0 ? 0 : weight(Math.floor(step / fabrics), step % fabrics, step)))
    const both = weigh((from, to) => (set.has(from) && set.has(to) ? 1 : 0))
    both.forEach((one, step) => {
      const count = one * (steps[step] as number)
      const [from, to] = [Math.floor(step / fabrics), step % fabrics]
      balance[from] = (balance[from] as number) + count
      balance[to] = (balance[to] as number) - count
    })
    const gives = (one: number): number => ((balance[one] as number) > 0 ? 1 : 0)
    const either = weigh((from, to) => (set.has(from) || set.has(to) ? 1 : 0))
    const balanced = weigh((from, to, step) => (both[step] as number) * (1 + gives(from) - gives(to)))
    const priced = weigh((_from, _to, step) => (both[step] as number) * Math.round(12 * (prices[step] as number)))
    const cuts = [both, either, balanced].flatMap((weights) => [4, 2].map((whole): Cut => ({ weights, whole })))
    return [...cuts, { weights: priced, whole: 12 }, { weights: priced, whole: 6 }]
  })
}

const touches = (step: number, fabric: number, fabrics: number): boolean => Math.floor(step / fabrics) === fabric || step % fabrics === fabric

function choices(all: readonly number[]): Set<number>[] {
  return Array.from({ length: 2 ** all.length - 1 }, (_, bits) => new Set(all.filter((_one, place) => ((bits + 1) >> place) % 2 === 1)))
}

/** Fabrics that geese lead to from each other. */
function connected(used: readonly number[], steps: Int32Array, fabrics: number): Set<number>[] {
  const sets: Set<number>[] = []
  for (const start of used) {
    if (sets.some((set) => set.has(start))) continue
    const set = new Set([start])
    for (const one of set)
      for (const other of used) if ((steps[one * fabrics + other] as number) + (steps[other * fabrics + one] as number) > 0) set.add(other)
    sets.push(set)
  }
  return sets
}

/** Rows that the parts break, the most broken first. */
function broken(demand: Demand, cuts: readonly Cut[], parts: readonly Part[]): Cut[] {
  const found: { cut: Cut; lacks: number }[] = []
  const { steps, starts } = usedBy(
    demand,
    parts.map(({ walk }) => walk),
  )
  for (const cut of cuts) {
    const row = new CutRow(demand, cut)
    if (row.rest === 0) continue
    const has = parts.reduce((sum, { times }, part) => sum + row.worth(steps, starts[part] as number, starts[part + 1] as number) * times, 0)
    const lacks = (row.least - has) / row.rest
    if (lacks > 1e-4) found.push({ cut, lacks })
  }
  return found.sort((one, other) => other.lacks - one.lacks).map(({ cut }) => cut)
}

/**
 * Whole batches y of weight v each, with Σ v·y ≥ n = q·whole + rest and rest > 0, keep Σ (rest·⌊v / whole⌋ + min(rest, v mod whole))·y ≥ rest·(q + 1):
 * either those that count by their rest alone are enough for it, or the others number more than q.
 */
class CutRow {
  readonly rest: number
  readonly least: number
  private readonly cut: Cut

  constructor(demand: Demand, cut: Cut) {
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
function usedBy({ fabrics, steps: wanted }: Demand, walks: readonly Walk[]): Used {
  const steps = new Int32Array(4 * walks.length)
  const starts = new Int32Array(walks.length + 1)
  let end = 0
  for (let index = 0; index < walks.length; index++) {
    const walk = walks[index] as Walk
    const start = end
    for (let side = 0; side < 4; side++) {
      const step = (walk[side] as number) * fabrics + (walk[(side + 1) % 4] as number)
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

/** A name for a few steps in rising order: a number where a double holds it. */
export function nameOfSteps(steps: ArrayLike<number>, from: number, to: number, fabrics: number): number | string {
  const base = fabrics * fabrics + 1
  if (base ** 4 > Number.MAX_SAFE_INTEGER) return Array.from({ length: to - from }, (_, at) => steps[from + at]).join()
  let name = 0
  for (let at = from; at < to; at++) name = name * base + (steps[at] as number) + 1
  return name
}

/** One walk for each choice of steps that is used. */
function differentWalks({ fabrics }: Demand, { steps, starts }: Used): number[] {
  const seen = new Set<number | string>()
  const different: number[] = []
  for (let walk = 0; walk + 1 < starts.length; walk++) {
    const [from, to] = [starts[walk] as number, starts[walk + 1] as number]
    if (from === to) continue
    const name = nameOfSteps(steps, from, to, fabrics)
    if (seen.has(name)) continue
    seen.add(name)
    different.push(walk)
  }
  return different
}

class Program {
  readonly cuts: readonly Cut[]
  readonly size: number
  readonly turnCost: number
  private readonly demand: Demand
  private readonly walks: readonly Walk[]
  private readonly least: number[]
  /** Walk w is worth `worths[i]` to row `rowsOf[i]`, for i from `starts[w]` to before `starts[w + 1]`. */
  private readonly starts: Int32Array
  private readonly rowsOf: Int32Array
  private readonly worths: Int32Array
  /** The walk in each place; −1 where it is what a row has too much, −2 a batch of which one goose is used. */
  private readonly basis: Int32Array
  private readonly inverse: Float64Array
  private readonly amounts: Float64Array
  private readonly prices: Float64Array

  constructor(demand: Demand, walks: readonly Walk[], cuts: readonly Cut[]) {
    const places = new Int32Array(demand.steps.length)
    this.least = []
    demand.steps.forEach((wanted, step) => {
      if (wanted > 0) places[step] = this.least.push(wanted) - 1
    })
    const rows = cuts.map((cut) => new CutRow(demand, cut))
    const first = this.least.length
    this.least.push(...rows.map(({ least }) => least))
    const size = this.least.length
    this.demand = demand
    this.cuts = cuts
    const used = usedBy(demand, walks)
    const different = differentWalks(demand, used)
    this.walks = different.map((walk) => walks[walk] as Walk)
    this.starts = new Int32Array(different.length + 1)
    this.rowsOf = new Int32Array(different.length * (4 + rows.length))
    this.worths = new Int32Array(this.rowsOf.length)
    let end = 0
    const enter = (row: number, worth: number): void => {
      this.rowsOf[end] = row
      this.worths[end] = worth
      end++
    }
    different.forEach((walk, index) => {
      const [from, to] = [used.starts[walk] as number, used.starts[walk + 1] as number]
      // A step walked twice has two entries in its row: they add up.
      for (let at = from; at < to; at++) enter(places[used.steps[at] as number] as number, 1)
      for (let at = 0; at < rows.length; at++) {
        const worth = (rows[at] as CutRow).worth(used.steps, from, to)
        if (worth > 0) enter(first + at, worth)
      }
      this.starts[index + 1] = end
    })
    // A batch of which one goose is used is no better than a walk, and a start that needs no search.
    this.basis = new Int32Array(size).fill(-2)
    this.inverse = new Float64Array(size * size)
    for (let row = 0; row < size; row++) this.inverse[row * size + row] = 1
    // A hair more of each, all different: ties between rows would turn the method in circles.
    this.amounts = Float64Array.from(this.least, (least, row) => least + 1e-6 * (1 + ((row * 7919) % 104729) / 104729))
    this.prices = new Float64Array(size).fill(1)
    this.turnCost = 2000 + 2 * size * size + end
    this.size = 10 * walks.length * (4 + rows.length)
  }

  /** One turn of the simplex method; false where nothing is left to gain. */
  turn(): boolean {
    const row = this.cheapest()
    if (row >= 0) return this.enter(-1, this.columnOf([row], [-1], 0, 1), -(this.prices[row] as number))
    const { walk, worth } = this.dearest(this.prices)
    if (worth <= 1 + NEARLY) return false
    return this.enter(walk, this.columnOf(this.rowsOf, this.worths, this.starts[walk] as number, this.starts[walk + 1] as number), worth - 1)
  }

  parts(): Part[] {
    const parts: Part[] = []
    this.basis.forEach((walk, row) => {
      const times = this.amounts[row] as number
      if (times >= 1e-5 && walk >= 0) parts.push({ walk: this.walks[walk] as Walk, times })
    })
    return parts
  }

  atLeast(): number {
    const whole = this.prices.map((price) => Math.max(0, Math.round(price * PARTS)))
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
      if (wanted > 0) prices[step] = this.prices[row++] as number
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

  /** The row whose price is most below nothing. */
  private cheapest(): number {
    let best = -1
    let least = -NEARLY
    for (let row = 0; row < this.prices.length; row++) {
      const price = this.prices[row] as number
      if (price < least) [best, least] = [row, price]
    }
    return best
  }

  private columnOf(rows: ArrayLike<number>, worths: ArrayLike<number>, start: number, end: number): Float64Array {
    const size = this.least.length
    const column = new Float64Array(size)
    for (let row = 0; row < size; row++) {
      let sum = 0
      for (let at = start; at < end; at++) sum += (this.inverse[row * size + (rows[at] as number)] as number) * (worths[at] as number)
      column[row] = sum
    }
    return column
  }

  /** The entering column takes the place of the one that is first used up. */
  private enter(walk: number, column: Float64Array, gain: number): boolean {
    const size = this.least.length
    const { inverse, amounts, prices } = this
    let out = -1
    let least = Number.POSITIVE_INFINITY
    for (let row = 0; row < size; row++) {
      const rate = column[row] as number
      if (rate > 1e-9 && (amounts[row] as number) / rate < least) [out, least] = [row, (amounts[row] as number) / rate]
    }
    if (out < 0) return false
    const pivot = column[out] as number
    for (let at = out * size, end = at + size, price = 0; at < end; at++, price++) {
      const value = (inverse[at] as number) / pivot
      inverse[at] = value
      prices[price] = (prices[price] as number) - gain * value
    }
    amounts[out] = least
    for (let row = 0; row < size; row++) {
      const rate = column[row] as number
      if (row === out || rate === 0) continue
      amounts[row] = Math.max(0, (amounts[row] as number) - rate * least)
      for (let at = row * size, end = at + size, from = out * size; at < end; at++, from++)
        inverse[at] = (inverse[at] as number) - rate * (inverse[from] as number)
    }
    this.basis[out] = walk
    return true
  }
}
