/**
 * Batches that need not be whole: how few cover what is wanted, and a bound for whole ones.
 *
 * In      how many steps from right wing to left wing are wanted, the walks that may be taken, work that may be done.
 * Out     parts of batches whose sum is least, and a number of whole batches that no plan goes below.
 * How     the linear program "each step is walked as often as it is wanted", by the simplex method. Then rows that only whole batches must keep: where
 *         the geese between some fabrics are 4q + r, q batches leave r of them for another, which then makes at most that many of them. A row that
 *         the parts break is added; the prices stay good, and the dual simplex method makes the amounts good again.
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
  /** To go on from, for the same demand and walks. */
  readonly program: Program
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
/** In the basis: a batch of which one goose is used. */
const LONE = -(2 ** 30)
const NONE = -(2 ** 31)
/** Up to so many fabrics every choice of them is tried for a row. */
const FEW_FABRICS = 8

/**
 * Parts of batches, with rows for whole ones until more than `enough` are needed or no row is broken: `few` rows, of single steps, leave parts that
 * are easily made whole; `many` bound better; `none` is soonest done.
 */
export function relaxed(
  demand: Demand,
  walks: readonly Walk[],
  rows: 'none' | 'few' | 'many',
  enough: number,
  budget: Budget,
  before?: Relaxed,
): Relaxed {
  let program = before?.program ?? solved(new Program(demand, walks), budget)
  let atLeast = program.atLeast()
  const prices = program.pricesOfSteps()
  let pool: readonly Cut[] | null = null
  for (let round = 0; rows !== 'none' && round < ROUNDS && atLeast <= enough && budget.left > 0; round++) {
    const parts = program.parts()
    let more = broken(demand, ofSingleSteps(demand), parts)
    if (more.length === 0 && rows === 'many') {
      pool ??= ofFabrics(demand, prices)
      budget.left -= 10 * pool.length * (demand.steps.length + parts.length)
      more = broken(demand, pool, parts).slice(0, CUTS_A_ROUND)
    }
    if (more.length === 0) break
    program = solved(new Program(demand, walks, program, more), budget)
    atLeast = Math.max(atLeast, program.atLeast())
  }
  return { parts: program.parts(), atLeast, program }
}

function solved(program: Program, budget: Budget): Program {
  budget.left -= program.size
  while (budget.left > 0 && program.mend()) budget.left -= program.turnCost
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
export interface Used {
  readonly steps: Int32Array
  readonly starts: Int32Array
}

/** These lists are made again and again: no list is made for a single walk. */
export function usedBy({ fabrics, steps: wanted }: Demand, walks: readonly Walk[]): Used {
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
export function differentWalks({ fabrics }: Demand, { steps, starts }: Used): number[] {
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

export class Program {
  readonly cuts: readonly Cut[]
  readonly size: number
  readonly turnCost: number
  private readonly demand: Demand
  private readonly walks: readonly Walk[]
  private readonly used: Used
  /** Places of the different walks among all. */
  private readonly different: readonly number[]
  private readonly least: readonly number[]
  /** Walk w is worth `worths[i]` to row `rowsOf[i]`, for i from `starts[w]` to before `starts[w + 1]`. */
  private readonly starts: Int32Array
  private readonly rowsOf: Int32Array
  private readonly worths: Int32Array
  /** The walk in each place; −1 − row where it is what that row has too much, `LONE` a batch of which one goose is used. */
  private readonly basis: Int32Array
  private readonly inverse: Float64Array
  private readonly amounts: Float64Array
  private readonly prices: Float64Array

  /** From nothing; or with more rows than a program before, which is solved: its prices stay, and the amounts are to be mended. */
  constructor(demand: Demand, walks: readonly Walk[], before?: Program, more: readonly Cut[] = []) {
    this.demand = demand
    this.used = before?.used ?? usedBy(demand, walks)
    this.different = before?.different ?? differentWalks(demand, this.used)
    this.walks = before?.walks ?? this.different.map((walk) => walks[walk] as Walk)
    this.cuts = [...(before?.cuts ?? []), ...more]
    const rows = more.map((cut) => new CutRow(demand, cut))
    this.least = [...(before?.least ?? demand.steps.filter((wanted) => wanted > 0)), ...rows.map(({ least }) => least)]
    ;[this.starts, this.rowsOf, this.worths] = before === undefined ? this.columnsOfSteps() : this.columnsWith(before, rows)
    const size = this.least.length
    this.basis = new Int32Array(size).fill(LONE)
    this.inverse = new Float64Array(size * size)
    // A hair more of each, all different: ties between rows would turn the method in circles.
    this.amounts = Float64Array.from(this.least, (least, row) => least + 1e-6 * (1 + ((row * 7919) % 104729) / 104729))
    this.prices = new Float64Array(size)
    // A batch of which one goose is used is no better than a walk, and a start that needs no search.
    if (before === undefined) for (let row = 0; row < size; row++) this.inverse[row * size + row] = this.prices[row] = 1
    else this.goOnFrom(before)
    this.turnCost = 2000 + 2 * size * size + this.rowsOf.length
    this.size = (before === undefined ? 40 : 10 * rows.length) * walks.length
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

  private columnsWith(before: Program, rows: readonly CutRow[]): readonly [Int32Array, Int32Array, Int32Array] {
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
        const worth = (rows[row] as CutRow).worth(this.used.steps, this.used.starts[walk] as number, this.used.starts[walk + 1] as number)
        if (worth === 0) continue
        rowsOf[end] = first + row
        worths[end++] = worth
      }
      starts[index + 1] = end
    })
    return [starts, rowsOf.slice(0, end), worths.slice(0, end)]
  }

  /** What the new rows have too much comes into the basis, which may be less than nothing. */
  private goOnFrom(before: Program): void {
    const [size, known] = [this.least.length, before.least.length]
    const { inverse, basis, amounts } = this
    for (let row = 0; row < known; row++) {
      basis[row] = before.basis[row] as number
      inverse.set(before.inverse.subarray(row * known, (row + 1) * known), row * size)
      this.prices[row] = before.prices[row] as number
    }
    for (let row = known; row < size; row++) {
      basis[row] = -1 - row
      inverse[row * size + row] = -1
      for (let place = 0; place < known; place++) {
        const worth = this.worthTo(basis[place] as number, row)
        if (worth === 0) continue
        for (let at = 0; at < known; at++)
          inverse[row * size + at] = (inverse[row * size + at] as number) + worth * (inverse[place * size + at] as number)
      }
    }
    const wanted = amounts.slice()
    for (let row = 0; row < size; row++) {
      let sum = 0
      for (let at = 0; at < size; at++) sum += (inverse[row * size + at] as number) * (wanted[at] as number)
      amounts[row] = sum
    }
  }

  private worthTo(column: number, row: number): number {
    if (column < 0) return 0
    for (let at = this.starts[column] as number, end = this.starts[column + 1] as number; at < end; at++)
      if (this.rowsOf[at] === row) return this.worths[at] as number
    return 0
  }

  /** One turn of the dual simplex method: what is most below nothing leaves; false where nothing is. */
  mend(): boolean {
    const size = this.least.length
    let out = -1
    let lowest = -1e-9
    for (let row = 0; row < size; row++) if ((this.amounts[row] as number) < lowest) [out, lowest] = [row, this.amounts[row] as number]
    if (out < 0) return false
    const from = out * size
    const { inverse, prices, starts, rowsOf, worths } = this
    let [enters, best, steepest, gain] = [NONE, Number.POSITIVE_INFINITY, 0, 0]
    // Of those that are as cheap the one that mends most: many cost nothing, and the method would go on among them.
    const offer = (column: number, rate: number, cost: number): void => {
      if (rate > -1e-7) return
      const ratio = Math.max(0, cost) / -rate
      if (ratio > best + 1e-9 || (ratio > best - 1e-9 && rate >= steepest)) return
      ;[enters, best, steepest, gain] = [column, ratio, rate, -cost]
    }
    for (let row = 0; row < size; row++) offer(-1 - row, -(inverse[from + row] as number), prices[row] as number)
    for (let walk = 0; walk < this.walks.length; walk++) {
      let [rate, worth] = [0, 0]
      for (let at = starts[walk] as number, end = starts[walk + 1] as number; at < end; at++) {
        rate += (inverse[from + (rowsOf[at] as number)] as number) * (worths[at] as number)
        worth += (prices[rowsOf[at] as number] as number) * (worths[at] as number)
      }
      offer(walk, rate, 1 - worth)
    }
    if (enters === NONE) return false
    this.exchange(enters, this.columnOf(enters), gain, out)
    return true
  }

  /** One turn of the simplex method; false where nothing is left to gain. */
  turn(): boolean {
    const row = this.cheapest()
    if (row >= 0) return this.enter(-1 - row, -(this.prices[row] as number))
    const { walk, worth } = this.dearest(this.prices)
    return worth > 1 + NEARLY && this.enter(walk, worth - 1)
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

  /** The column of a walk, or of what a row has too much, in terms of the basis. */
  private columnOf(enters: number): Float64Array {
    const size = this.least.length
    const { inverse, rowsOf, worths } = this
    const column = new Float64Array(size)
    if (enters < 0) {
      for (let row = 0; row < size; row++) column[row] = -(inverse[row * size - 1 - enters] as number)
      return column
    }
    for (let at = this.starts[enters] as number, end = this.starts[enters + 1] as number; at < end; at++) {
      const worth = worths[at] as number
      for (let row = 0, place = rowsOf[at] as number; row < size; row++, place += size)
        column[row] = (column[row] as number) + (inverse[place] as number) * worth
    }
    return column
  }

  /** The entering column takes the place of the one that is first used up. */
  private enter(enters: number, gain: number): boolean {
    const column = this.columnOf(enters)
    let out = -1
    let least = Number.POSITIVE_INFINITY
    for (let row = 0; row < column.length; row++) {
      const rate = column[row] as number
      if (rate > 1e-9 && (this.amounts[row] as number) / rate < least) [out, least] = [row, (this.amounts[row] as number) / rate]
    }
    if (out < 0) return false
    this.exchange(enters, column, gain, out)
    for (let row = 0; row < column.length; row++) if ((this.amounts[row] as number) < 0) this.amounts[row] = 0
    return true
  }

  /** `gain`: what the entering column is worth beyond its cost. */
  private exchange(enters: number, column: Float64Array, gain: number, out: number): void {
    const size = column.length
    const { inverse, amounts, prices } = this
    const pivot = column[out] as number
    const amount = (amounts[out] as number) / pivot
    const start = out * size
    for (let at = 0; at < size; at++) {
      const value = (inverse[start + at] as number) / pivot
      inverse[start + at] = value
      prices[at] = (prices[at] as number) - gain * value
    }
    amounts[out] = amount
    for (let row = 0; row < size; row++) {
      const rate = column[row] as number
      if (row === out || rate === 0) continue
      amounts[row] = (amounts[row] as number) - rate * amount
      for (let at = row * size, end = at + size, from = start; at < end; at++, from++)
        inverse[at] = (inverse[at] as number) - rate * (inverse[from] as number)
    }
    this.basis[out] = enters
  }
}
