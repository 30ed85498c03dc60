/**
 * The simplex method on a covering program whose columns come in as they are found: least Σ cost · amount, where each row gets at least what it wants.
 *
 * In      a first column for each row; then columns that the caller chooses to bring in, numbered by it from 0. What a row has too much is a column as
 *         well: it costs nothing and is numbered −1 − row.
 * Out     the columns in use with their amounts, and a price for each row. Where no column is worth more than it costs at these prices, and no price is below
 *         0, the amounts are the least.
 * How     the inverse of the basis is kept whole, row by row, and changed by each exchange. Which column comes in is the caller's choice, for only it
 *         knows them all; which one leaves, and all arithmetic, is here. Wants should differ by a little from row to row: ties turn the method in circles.
 * Exact   no: doubles. A caller proves its bounds by itself, from the prices.
 * Source  the revised simplex method and its dual, G. B. Dantzig and C. E. Lemke, from memory.
 */

/** What one of a column gives to each row that it gives anything. */
export interface SparseColumn {
  readonly rows: ArrayLike<number>
  readonly gives: ArrayLike<number>
}

interface Pivoting {
  /** A row that gets no more than this of the entering column never makes way for it. */
  readonly least: number
  /** Rows whose ratios differ by less are tied, and the one that gets most makes way. */
  readonly tie: number
}

/** The column that brings out what a row has too much. */
export const surplusOf = (row: number): number => -1 - row

/** Entering columns are worth more than they cost by more than this, and leaving amounts are below 0 by more. */
const BELOW_NOTHING = -1e-9

export class Simplex {
  readonly rows: number
  /** By place: the column in use there. */
  readonly basis: Int32Array
  readonly amounts: Float64Array
  /** By row: what one more of its want would cost. */
  readonly prices: Float64Array<ArrayBuffer>
  private readonly pivoting: Pivoting
  private readonly inverse: Float64Array

  constructor(rows: number, pivoting: Pivoting) {
    this.rows = rows
    this.pivoting = pivoting
    this.basis = new Int32Array(rows)
    this.amounts = new Float64Array(rows)
    this.prices = new Float64Array(rows)
    this.inverse = new Float64Array(rows * rows)
  }

  /** The first column of a row, which gives to that row alone. */
  start(row: number, column: number, gives: number, cost: number, wants: number): void {
    this.basis[row] = column
    this.inverse[row * this.rows + row] = 1 / gives
    this.amounts[row] = wants / gives
    this.prices[row] = cost / gives
  }

  /**
   * The same with more rows, whose prices are 0: what they have too much comes in, and may be less than nothing (see `dualLeaving`).
   * `gives`: what one of a column gives to one of the new rows. `wants`: of all rows.
   */
  withRows(wants: Float64Array, gives: (column: number, row: number) => number): Simplex {
    const more = new Simplex(wants.length, this.pivoting)
    const [size, known] = [wants.length, this.rows]
    const { inverse } = more
    for (let row = 0; row < known; row++) {
      more.basis[row] = this.basis[row] as number
      inverse.set(this.inverse.subarray(row * known, (row + 1) * known), row * size)
      more.prices[row] = this.prices[row] as number
    }
    for (let row = known; row < size; row++) {
      more.basis[row] = surplusOf(row)
      inverse[row * size + row] = -1
      for (let place = 0; place < known; place++) {
        const each = gives(more.basis[place] as number, row)
        if (each === 0) continue
        for (let at = 0; at < known; at++)
          inverse[row * size + at] = (inverse[row * size + at] as number) + each * (inverse[place * size + at] as number)
      }
    }
    for (let row = 0; row < size; row++) {
      let sum = 0
      for (let at = 0; at < size; at++) sum += (inverse[row * size + at] as number) * (wants[at] as number)
      more.amounts[row] = sum
    }
    return more
  }

  /** What one of a column is worth at these prices. */
  worthOf({ rows, gives }: SparseColumn): number {
    let worth = 0
    for (let at = 0; at < rows.length; at++) worth += (gives[at] as number) * (this.prices[rows[at] as number] as number)
    return worth
  }

  /** A column in terms of those in use, by place. */
  inUse({ rows, gives }: SparseColumn): Float64Array {
    const size = this.rows
    const column = new Float64Array(size)
    for (let at = 0; at < rows.length; at++) {
      const each = gives[at] as number
      for (let row = 0, place = rows[at] as number; row < size; row++, place += size)
        column[row] = (column[row] as number) + (this.inverse[place] as number) * each
    }
    return column
  }

  surplusInUse(row: number): Float64Array {
    const size = this.rows
    const column = new Float64Array(size)
    for (let place = 0; place < size; place++) column[place] = -(this.inverse[place * size + row] as number)
    return column
  }

  /**
   * One step of the simplex method: a column comes in as far as the amounts allow. `gain`: what it is worth beyond its cost.
   * Gives the number of places whose amount changed beside its own; null where nothing would have to make way.
   */
  enter(enters: number, column: Float64Array, gain: number): number | null {
    const { least, tie } = this.pivoting
    let leaves = -1
    let most = Number.POSITIVE_INFINITY
    for (let place = 0; place < column.length; place++) {
      const each = column[place] as number
      if (each <= least) continue
      const ratio = (this.amounts[place] as number) / each
      if (ratio < most - tie || (ratio < most + tie && each > (column[leaves] as number))) [leaves, most] = [place, ratio]
    }
    if (leaves < 0) return null
    const changed = this.exchange(enters, column, gain, leaves)
    for (let place = 0; place < column.length; place++) if ((this.amounts[place] as number) < 0) this.amounts[place] = 0
    return changed
  }

  /** The place whose amount is most below 0, which leaves in a step of the dual method; −1 where none is. */
  dualLeaving(): number {
    let leaves = -1
    let lowest = BELOW_NOTHING
    for (let place = 0; place < this.rows; place++) {
      const amount = this.amounts[place] as number
      if (amount < lowest) [leaves, lowest] = [place, amount]
    }
    return leaves
  }

  /** By row, what one of it gives to a place: what a column gives there is the sum over its rows. */
  rowOfInverse(place: number): Float64Array {
    return this.inverse.subarray(place * this.rows, (place + 1) * this.rows)
  }

  /** A column takes the place of another: see `enter`. */
  exchange(enters: number, column: Float64Array, gain: number, leaves: number): number {
    const size = this.rows
    const { inverse, amounts, prices } = this
    const pivot = column[leaves] as number
    const amount = (amounts[leaves] as number) / pivot
    const start = leaves * size
    for (let at = 0; at < size; at++) {
      const value = (inverse[start + at] as number) / pivot
      inverse[start + at] = value
      prices[at] = (prices[at] as number) - gain * value
    }
    amounts[leaves] = amount
    let changed = 0
    for (let row = 0; row < size; row++) {
      const rate = column[row] as number
      if (row === leaves || rate === 0) continue
      changed++
      amounts[row] = (amounts[row] as number) - rate * amount
      for (let at = row * size, end = at + size, from = start; at < end; at++, from++)
        inverse[at] = (inverse[at] as number) - rate * (inverse[from] as number)
    }
    this.basis[leaves] = enters
    return changed
  }
}
