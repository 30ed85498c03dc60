/**
 * The best filling of a strip: pieces with known values, side by side, with the greatest total value that fits the width.
 *
 * In      a task, the value of each piece, and how many of each kind are left.
 * Out     for every height an upper bound on the value of the best filling; for one height the best filling itself.
 * How     a table over the width, in cells: as heights grow, kinds come in one after the other (lying, then standing) and the table is carried
 *         on. A kind may be in the table both lying and standing, so its value for a height is a bound and may be too large. For one
 *         height the table is built again, each kind in its one way, and read back.
 * Exact   a cell is one step of the ruler where the table stays small; else widths are rounded down to whole cells: bounds stay valid, and a
 *         filling that comes out too wide gives back its least valuable pieces.
 */
import { heightsOf, type PieceKind, mayLie, type StripTask, wideIn } from './stripTask.ts'

/** Cells of the table times kinds: keeps the table small. */
const TABLE = 400_000
const LEAST_CELLS = 512
const MOST_CELLS = 50_000

interface Event {
  readonly kind: number
  readonly wide: number
}

export class Filler {
  readonly task: StripTask
  readonly heights: readonly number[]
  /** Table entries written so far: every budget is counted in these. */
  steps = 0
  private readonly cells: number
  private readonly cell: number
  /** By height: kinds that come in there. */
  private readonly events: readonly (readonly Event[])[]
  private readonly table: Float64Array

  constructor(task: StripTask) {
    this.task = task
    this.heights = heightsOf(task)
    const step = task.kinds.reduce((found, { long, short }) => divisor(divisor(found, long), short), 0)
    const most = Math.min(MOST_CELLS, Math.max(LEAST_CELLS, Math.floor(TABLE / Math.max(1, task.kinds.length))))
    this.cell = Math.max(step, Math.ceil(task.width / most))
    this.cells = Math.floor(task.width / this.cell)
    const place = new Map(this.heights.map((height, index) => [height, index]))
    const events: Event[][] = this.heights.map(() => [])
    task.kinds.forEach((sides, kind) => {
      const { long, short } = sides
      const lies = mayLie(sides, task.width)
      if (lies) events[place.get(short) as number]?.push({ kind, wide: long })
      if (!lies || long > short) events[place.get(long) as number]?.push({ kind, wide: short })
    })
    this.events = events
    this.table = new Float64Array(this.cells + 1)
  }

  /** About how many table entries it takes to bound every height once. */
  tableCost(): number {
    return 2 * this.task.kinds.length * this.cells
  }

  /** For every height, an upper bound on the value of its best filling. */
  bounds(worth: ArrayLike<number>, left: ArrayLike<number>): Float64Array {
    const { table } = this
    table.fill(0)
    return Float64Array.from(this.events, (events) => {
      for (const { kind, wide } of events) {
        const each = worth[kind] as number
        if (each > 0 && (left[kind] as number) > 0) this.carryOn(wide, each, left[kind] as number)
      }
      return table[this.cells] as number
    })
  }

  private carryOn(wide: number, each: number, left: number): void {
    const { table, cells } = this
    const one = Math.floor(wide / this.cell)
    let rest = Math.min(left, one === 0 ? left : Math.floor(cells / one))
    for (let part = 1; rest > 0; part *= 2) {
      const taken = Math.min(part, rest)
      rest -= taken
      const [width, worth] = [taken * one, taken * each]
      this.steps += cells - width
      for (let cell = cells; cell >= width; cell--) {
        const other = (table[cell - width] as number) + worth
        if (other > (table[cell] as number)) table[cell] = other
      }
    }
  }

  /** The best filling of a strip of this height. */
  best(height: number, worth: ArrayLike<number>, left: ArrayLike<number>): { held: Map<number, number>; worth: number } {
    const { table, cells, task } = this
    table.fill(0)
    const parts: { kind: number; taken: number; width: number; chosen: Uint8Array }[] = []
    task.kinds.forEach((sides, kind) => {
      const wide = wideIn(sides, height, task.width)
      const each = worth[kind] as number
      if (wide === 0 || each <= 0 || (left[kind] as number) <= 0) return
      const one = Math.floor(wide / this.cell)
      let rest = Math.min(left[kind] as number, Math.floor(task.width / wide))
      for (let part = 1; rest > 0; part *= 2) {
        const taken = Math.min(part, rest)
        rest -= taken
        const width = taken * one
        const chosen = new Uint8Array(cells + 1)
        this.steps += cells - width
        for (let cell = cells; cell >= width; cell--) {
          const other = (table[cell - width] as number) + taken * each
          if (other > (table[cell] as number)) {
            table[cell] = other
            chosen[cell] = 1
          }
        }
        parts.push({ kind, taken, width, chosen })
      }
    })
    const held = new Map<number, number>()
    let cell = cells
    for (const { kind, taken, width, chosen } of parts.reverse()) {
      if (chosen[cell] !== 1) continue
      held.set(kind, (held.get(kind) ?? 0) + taken)
      cell -= width
    }
    this.giveBack(height, held, worth)
    return { held, worth: table[cells] as number }
  }

  private giveBack(height: number, held: Map<number, number>, worth: ArrayLike<number>): void {
    const { kinds, width } = this.task
    const wide = (kind: number): number => wideIn(kinds[kind] as PieceKind, height, width)
    let over = -width
    for (const [kind, count] of held) over += count * wide(kind)
    while (over > 0) {
      let least = -1
      for (const kind of held.keys()) if (least < 0 || (worth[kind] as number) < (worth[least] as number)) least = kind
      over -= wide(least)
      const rest = (held.get(least) as number) - 1
      if (rest > 0) held.set(least, rest)
      else held.delete(least)
    }
  }
}

function divisor(a: number, b: number): number {
  while (b > 0) [a, b] = [b, a % b]
  return a
}
