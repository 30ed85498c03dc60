/**
 * What pieces cost at least: prices under which no strip holds more than its height is worth.
 *
 * In      a task, strips that are known, steps to spend.
 * Out     a price for each piece, a length that no cutting goes below, and how often each strip is cut where parts of strips were allowed.
 * How     the linear program "strips in any amount, every piece covered, least length" by the simplex method, one row for each kind. Its
 *         prices say which strip, not yet known, would save most: the filler finds it, and it comes in. Where no strip holds more than its
 *         height, the prices add up to the program's least length.
 * Exact   the bound does not lean on the simplex: any prices, lowered until the filler says for every height that no filling is worth more, add up
 *         to a length that no cutting goes below, for each strip pays at most its height. It is lowered by a billionth for what
 *         floating numbers lose.
 */
import type { Filler } from './fillStrips.ts'
import { type Kind, type Laid, lowered, wideIn } from './stripTask.ts'

export interface Prices {
  readonly price: Float64Array<ArrayBuffer>
  /** In steps of the ruler, not rounded. */
  readonly atLeast: number
  readonly amounts: readonly { readonly strip: Laid; readonly amount: number }[]
  /** The program was solved to its end. */
  readonly solved: boolean
}

const EPS = 1e-9
/** New strips are sought under prices between the best so far and the program's own: those leap about until nearly all strips are known. */
const KEPT = 0.7
/** New strips taken in at once. */
const NEW_STRIPS = 24

interface Column {
  readonly strip: Laid
  readonly kinds: Int32Array
  readonly counts: Float64Array
}

export function pricesOf(filler: Filler, known: readonly Laid[], steps: number): Prices {
  const simplex = new Simplex(filler, known)
  const { task } = filler
  const counts = task.kinds.map(({ count }) => count)
  const end = filler.steps + steps
  // By area, no strip is worth more than its height.
  const areas = Float64Array.from(task.kinds, ({ long, short }) => (long * short) / task.width)
  let best = { price: areas, atLeast: areas.reduce((sum, each, kind) => sum + each * (counts[kind] as number), 0) * (1 - EPS) }
  for (;;) {
    simplex.settle(end)
    const bound = (given: Float64Array<ArrayBuffer>): ReturnType<typeof priced> => {
      const found = priced(filler, given, counts)
      const atLeast = found.price.reduce((sum, each, kind) => sum + each * (counts[kind] as number), 0)
      if (atLeast > best.atLeast) best = { price: found.price, atLeast }
      return found
    }
    const between = best.price.map((each, kind) => KEPT * each + (1 - KEPT) * (simplex.price[kind] as number))
    if (filler.steps > end) return { ...best, amounts: simplex.amounts(), solved: false }
    const fresh = bound(between).strips.filter((strip) => simplex.saves(strip))
    if (fresh.length === 0) {
      const { ratio, strips } = bound(simplex.price)
      if (strips.length === 0) return { ...best, amounts: simplex.amounts(), solved: ratio <= 1 + 1e-7 }
      fresh.push(...strips)
    }
    for (const strip of fresh) simplex.know(strip)
  }
}

/** Prices lowered until no strip is worth more than its height; and the strips that were worth most before. */
function priced(
  filler: Filler,
  given: Float64Array<ArrayBuffer>,
  counts: readonly number[],
): { price: Float64Array<ArrayBuffer>; ratio: number; strips: Laid[] } {
  const { heights } = filler
  const worth = given.map((each) => Math.max(0, each))
  const bounds = filler.bounds(worth, counts)
  const promising = heights.flatMap((height, index) => {
    const promise = (bounds[index] as number) / height
    return promise > 1 + EPS ? [{ height, promise }] : []
  })
  promising.sort((a, b) => b.promise - a.promise)
  let ratio = 1
  const strips: Laid[] = []
  for (const { height, promise } of promising) {
    // A bound counts a kind twice where it may lie or stand: the filling itself says what is true.
    if (strips.length >= NEW_STRIPS || promise <= ratio) {
      ratio = Math.max(ratio, promise)
      break
    }
    const { held, worth: most } = filler.best(height, worth, counts)
    ratio = Math.max(ratio, most / height)
    const gained = [...held].reduce((sum, [kind, count]) => sum + count * (worth[kind] as number), 0)
    if (gained > height * (1 + EPS)) strips.push(lowered(filler.task, { height, held }))
  }
  const lower = 1 / (ratio * (1 + EPS))
  return { price: worth.map((each) => each * lower), ratio, strips }
}

class Simplex {
  readonly price: Float64Array<ArrayBuffer>
  private readonly filler: Filler
  private readonly columns: Column[] = []
  private readonly known = new Set<string>()
  private readonly rows: number
  /** The inverse of the basis, row by row. */
  private readonly inverse: Float64Array
  private readonly amount: Float64Array
  /** By row: the column in the basis, or −1 − kind for more pieces than asked for. */
  private readonly basis: Int32Array
  private readonly entering: Float64Array

  constructor(filler: Filler, known: readonly Laid[]) {
    this.filler = filler
    const { kinds, width } = filler.task
    this.rows = kinds.length
    this.inverse = new Float64Array(this.rows * this.rows)
    this.amount = new Float64Array(this.rows)
    this.basis = new Int32Array(this.rows)
    this.entering = new Float64Array(this.rows)
    this.price = new Float64Array(this.rows)
    kinds.forEach((kind, row) => {
      const { height, held } = alone(kind, width)
      const count = held
      this.basis[row] = this.know({ height, held: new Map([[row, count]]) })
      this.inverse[row * this.rows + row] = 1 / count
      // A little more than asked for, a little different for each kind: no two rows run out at once, so that the simplex never circles.
      this.amount[row] = (kind.count + ((row * 7919) % 1000) * 1e-7) / count
      this.price[row] = height / count
    })
    for (const strip of known) this.know(strip)
  }

  know(strip: Laid): number {
    const held = [...strip.held].sort(([a], [b]) => a - b)
    const key = `${strip.height}:${held.join(';')}`
    if (this.known.has(key)) return -1
    this.known.add(key)
    this.columns.push({ strip, kinds: Int32Array.from(held, ([kind]) => kind), counts: Float64Array.from(held, ([, count]) => count) })
    return this.columns.length - 1
  }

  saves({ height, held }: Laid): boolean {
    let worth = 0
    for (const [kind, count] of held) worth += count * (this.price[kind] as number)
    return worth > height * (1 + EPS)
  }

  amounts(): { strip: Laid; amount: number }[] {
    return [...this.basis].flatMap((column, row) => {
      const amount = this.amount[row] as number
      return column >= 0 && amount > 1e-6 ? [{ strip: (this.columns[column] as Column).strip, amount }] : []
    })
  }

  /** Until no known strip saves: true; false where the steps are spent. */
  settle(end: number): boolean {
    for (;;) {
      if (this.filler.steps > end) return false
      const column = this.cheapest()
      if (column === null || !this.pivot(column)) return true
    }
  }

  private cheapest(): number | null {
    let best: number | null = null
    let least = -EPS
    const { price } = this
    for (let kind = 0; kind < this.rows; kind++) {
      const saved = price[kind] as number
      if (saved < least * 1e3) {
        least = saved
        best = -1 - kind
      }
    }
    if (best !== null) return best
    this.columns.forEach(({ strip, kinds, counts }, index) => {
      let worth = 0
      for (let place = 0; place < kinds.length; place++) worth += (counts[place] as number) * (price[kinds[place] as number] as number)
      const saved = 1 - worth / strip.height
      if (saved < least) {
        least = saved
        best = index
      }
    })
    this.filler.steps += this.columns.length * 4
    return best
  }

  private pivot(column: number): boolean {
    const { rows, inverse, amount, basis, price, entering } = this
    this.enter(column)
    let leaves = -1
    let most = Number.POSITIVE_INFINITY
    for (let row = 0; row < rows; row++) {
      const share = entering[row] as number
      if (share <= 1e-7) continue
      const ratio = (amount[row] as number) / share
      if (ratio < most - 1e-12 || (ratio < most + 1e-12 && share > (entering[leaves] as number))) {
        most = ratio
        leaves = row
      }
    }
    if (leaves < 0) return false
    const cost = column >= 0 ? (this.columns[column] as Column).strip.height : 0
    const reduced = cost - this.worthOf(column)
    const share = entering[leaves] as number
    const from = leaves * rows
    for (let place = 0; place < rows; place++) inverse[from + place] = (inverse[from + place] as number) / share
    for (let row = 0; row < rows; row++) {
      const times = entering[row] as number
      if (row === leaves || times === 0) continue
      const to = row * rows
      for (let place = 0; place < rows; place++) inverse[to + place] = (inverse[to + place] as number) - times * (inverse[from + place] as number)
      this.filler.steps += rows
      amount[row] = Math.max(0, (amount[row] as number) - times * most)
    }
    amount[leaves] = most
    basis[leaves] = column
    for (let place = 0; place < rows; place++) price[place] = (price[place] as number) + reduced * (inverse[from + place] as number)
    this.filler.steps += 4 * rows
    return true
  }

  private worthOf(column: number): number {
    if (column < 0) return -(this.price[-1 - column] as number)
    const { kinds, counts } = this.columns[column] as Column
    return kinds.reduce((sum, kind, place) => sum + (counts[place] as number) * (this.price[kind] as number), 0)
  }

  /** The entering column in terms of the basis. */
  private enter(column: number): void {
    const { rows, inverse, entering } = this
    if (column < 0) {
      for (let row = 0; row < rows; row++) entering[row] = -(inverse[row * rows - 1 - column] as number)
      return
    }
    const { kinds, counts } = this.columns[column] as Column
    for (let row = 0; row < rows; row++) {
      let sum = 0
      for (let place = 0; place < kinds.length; place++) sum += (counts[place] as number) * (inverse[row * rows + (kinds[place] as number)] as number)
      entering[row] = sum
    }
    this.filler.steps += rows * kinds.length
  }
}

/** The cheaper way to fill a strip with one kind. */
function alone(kind: Kind, width: number): { height: number; held: number } {
  const { long, short, count } = kind
  const ways = [short, long].flatMap((height) => {
    const wide = wideIn(kind, height, width)
    return wide === 0 ? [] : [{ height, held: Math.min(count, Math.floor(width / wide)) }]
  })
  return ways.reduce((best, way) => (way.height * best.held < best.height * way.held ? way : best))
}
