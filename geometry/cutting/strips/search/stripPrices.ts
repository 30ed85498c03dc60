/**
 * Prices for pieces under which no strip holds more value than its height: they give a lower bound on the fabric.
 *
 * In      a task, strips that are known, steps to spend.
 * Out     a price for each piece, a lower bound on any cutting's length, and how often each strip is cut if fractions were allowed.
 * How     the linear program "strips in any amount, every piece covered, least length" by the simplex method, one row for each kind. Its
 *         prices say which strip, not yet known, would save most: the filler finds it, and it is added. Where no strip holds more than its
 *         height, the prices add up to the program's least length.
 * Exact   the bound does not depend on the simplex: take any prices and lower them until the filler shows for every height that no filling has more value;
 *         they then add up to a lower bound, because each strip pays at most its height. It is lowered by a billionth for rounding.
 */
import { EPSILON } from '../../../exact/lengths.ts'
import { type SparseColumn, Simplex, surplusOf } from '../../../solvers/simplex.ts'
import type { Filler } from './fillStrips.ts'
import { type PieceKind, type FilledStrip, lowered, wideIn } from './stripTask.ts'

interface Prices {
  readonly price: Float64Array<ArrayBuffer>
  /** In steps of the ruler, not rounded. */
  readonly atLeast: number
  readonly amounts: readonly { readonly strip: FilledStrip; readonly amount: number }[]
  /** The program was solved completely. */
  readonly solved: boolean
}

/** New strips are found with prices between the best so far and the program's own, which jump about until nearly all strips are known. */
const KEPT = 0.7
/** New strips added per round. */
const NEW_STRIPS = 24

export function pricesOf(filler: Filler, known: readonly FilledStrip[], steps: number): Prices {
  const program = new StripProgram(filler, known)
  const { task } = filler
  const counts = task.kinds.map(({ count }) => count)
  const end = filler.steps + steps
  // Priced by area, no strip has more value than its height.
  const areas = Float64Array.from(task.kinds, ({ long, short }) => (long * short) / task.width)
  let best = { price: areas, atLeast: areas.reduce((sum, each, kind) => sum + each * (counts[kind] as number), 0) * (1 - EPSILON) }
  for (;;) {
    program.settle(end)
    const bound = (given: Float64Array<ArrayBuffer>): ReturnType<typeof priced> => {
      const found = priced(filler, given, counts)
      const atLeast = found.price.reduce((sum, each, kind) => sum + each * (counts[kind] as number), 0)
      if (atLeast > best.atLeast) best = { price: found.price, atLeast }
      return found
    }
    const between = best.price.map((each, kind) => KEPT * each + (1 - KEPT) * (program.prices[kind] as number))
    if (filler.steps > end) return { ...best, amounts: program.amounts(), solved: false }
    const fresh = bound(between).strips.filter((strip) => program.saves(strip))
    if (fresh.length === 0) {
      const { ratio, strips } = bound(program.prices)
      if (strips.length === 0) return { ...best, amounts: program.amounts(), solved: ratio <= 1 + 1e-7 }
      fresh.push(...strips)
    }
    for (const strip of fresh) program.know(strip)
  }
}

/** Lowers prices until no strip has more value than its height; also gives the strips that had the most value before. */
function priced(
  filler: Filler,
  given: Float64Array<ArrayBuffer>,
  counts: readonly number[],
): { price: Float64Array<ArrayBuffer>; ratio: number; strips: FilledStrip[] } {
  const { heights } = filler
  const worth = given.map((each) => Math.max(0, each))
  const bounds = filler.bounds(worth, counts)
  const promising = heights.flatMap((height, index) => {
    const promise = (bounds[index] as number) / height
    return promise > 1 + EPSILON ? [{ height, promise }] : []
  })
  promising.sort((a, b) => b.promise - a.promise)
  let ratio = 1
  const strips: FilledStrip[] = []
  for (const { height, promise } of promising) {
    // A bound counts a kind twice where it may lie or stand, so the filling itself decides.
    if (strips.length >= NEW_STRIPS || promise <= ratio) {
      ratio = Math.max(ratio, promise)
      break
    }
    const { held, worth: most } = filler.best(height, worth, counts)
    ratio = Math.max(ratio, most / height)
    const gained = [...held].reduce((sum, [kind, count]) => sum + count * (worth[kind] as number), 0)
    if (gained > height * (1 + EPSILON)) strips.push(lowered(filler.task, { height, held }))
  }
  const lower = 1 / (ratio * (1 + EPSILON))
  return { price: worth.map((each) => each * lower), ratio, strips }
}

/** A strip as a column of the program: what it gives to each kind of piece. */
interface StripColumn extends SparseColumn {
  readonly strip: FilledStrip
}

/** A surplus comes in before any strip, the first whose price is this many times below the strips'; a later one only where it is as many times lower again. */
const CHEAP_SURPLUS = 1e3

/** The program "strips in any amount, every piece covered, least length", over the strips that are known. */
class StripProgram {
  private readonly filler: Filler
  private readonly simplex: Simplex
  private readonly columns: StripColumn[] = []
  private readonly known = new Set<string>()

  constructor(filler: Filler, known: readonly FilledStrip[]) {
    this.filler = filler
    const { kinds, width } = filler.task
    this.simplex = new Simplex(kinds.length, { least: 1e-7, tie: 1e-12 })
    kinds.forEach((kind, row) => {
      const { height, held } = alone(kind, width)
      // Each kind's count is raised by a slightly different amount: no two rows run out at once, so the simplex never cycles.
      const wants = kind.count + ((row * 7919) % 1000) * 1e-7
      this.simplex.start(row, this.know({ height, held: new Map([[row, held]]) }), held, height, wants)
    })
    for (const strip of known) this.know(strip)
  }

  /** By kind: what one more piece would cost in the strips known so far. */
  get prices(): Float64Array<ArrayBuffer> {
    return this.simplex.prices
  }

  /** Its number; −1 where it was known before. */
  know(strip: FilledStrip): number {
    const held = [...strip.held].sort(([a], [b]) => a - b)
    const key = `${strip.height}:${held.join(';')}`
    if (this.known.has(key)) return -1
    this.known.add(key)
    this.columns.push({ strip, rows: Int32Array.from(held, ([kind]) => kind), gives: Float64Array.from(held, ([, count]) => count) })
    return this.columns.length - 1
  }

  saves({ height, held }: FilledStrip): boolean {
    let worth = 0
    for (const [kind, count] of held) worth += count * (this.prices[kind] as number)
    return worth > height * (1 + EPSILON)
  }

  amounts(): { strip: FilledStrip; amount: number }[] {
    return [...this.simplex.basis].flatMap((column, place) => {
      const amount = this.simplex.amounts[place] as number
      return column >= 0 && amount > 1e-6 ? [{ strip: (this.columns[column] as StripColumn).strip, amount }] : []
    })
  }

  /** Runs until no known strip saves anything (true), or the steps are spent (false). */
  settle(end: number): boolean {
    for (;;) {
      if (this.filler.steps > end) return false
      const column = this.cheapest()
      if (column === null || !this.enter(column)) return true
    }
  }

  private cheapest(): number | null {
    let best: number | null = null
    let least = -EPSILON
    this.prices.forEach((price, kind) => {
      if (price < least * CHEAP_SURPLUS) [best, least] = [surplusOf(kind), price]
    })
    if (best !== null) return best
    this.columns.forEach((column, index) => {
      const saved = 1 - this.simplex.worthOf(column) / column.strip.height
      if (saved < least) [best, least] = [index, saved]
    })
    this.filler.steps += this.columns.length * 4
    return best
  }

  private enter(enters: number): boolean {
    const { simplex, filler } = this
    const { rows } = simplex
    const column = this.columns[enters]
    if (column !== undefined) filler.steps += rows * column.rows.length
    const gain = column === undefined ? -(simplex.prices[surplusOf(enters)] as number) : simplex.worthOf(column) - column.strip.height
    const changed = simplex.enter(enters, column === undefined ? simplex.surplusInUse(surplusOf(enters)) : simplex.inUse(column), gain)
    if (changed === null) return false
    filler.steps += (changed + 4) * rows
    return true
  }
}

/** The cheaper way to fill a strip with one kind. */
function alone(kind: PieceKind, width: number): { height: number; held: number } {
  const { long, short, count } = kind
  const ways = [short, long].flatMap((height) => {
    const wide = wideIn(kind, height, width)
    return wide === 0 ? [] : [{ height, held: Math.min(count, Math.floor(width / wide)) }]
  })
  return ways.reduce((best, way) => (way.height * best.held < best.height * way.held ? way : best))
}
