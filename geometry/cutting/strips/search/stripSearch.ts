/**
 * Tries every way to cut strips that could still be shorter than the best known, one strip after the other.
 *
 * In      a task, prices under which no strip holds more than its height, a length to stay below, steps to spend.
 * Out     the shortest strips found below it, and whether the search was complete: then there are none shorter.
 * How     the next strip is one that holds the piece with the largest short side still left: it must lie somewhere. Such a strip is filled until
 *         nothing left fits: a piece laid later could always be moved into it without adding length. A strip's loss is its height less
 *         the prices of what it holds; the length is the sum of all prices and all losses, so the losses must stay below
 *         what the length to beat allows. A set of pieces left that was reached before with no more loss is not searched again.
 */
import type { Filler } from './fillStrips.ts'
import { Filling, type Option, optionsAt, STRIPS_AT_ONCE } from './fullStrips.ts'
import { type PieceKind, type FilledStrip, totalHeight, wideIn } from './stripTask.ts'

interface Searched {
  /** Null where nothing below the given length was found. */
  readonly strips: FilledStrip[] | null
  readonly ended: boolean
}

/** Sets of pieces left that are remembered. */
const REMEMBERED = 300_000
interface Choice {
  readonly height: number
  readonly held: readonly (readonly [number, number])[]
  readonly lost: number
}

export function searchStrips(filler: Filler, price: Float64Array, below: number, atLeast: number, steps: number): Searched {
  return new Search(filler, price, below, atLeast, filler.steps + steps).run()
}

class Search {
  private readonly filler: Filler
  private readonly end: number
  private readonly atLeast: number
  private readonly left: Int32Array
  private readonly order: readonly number[]
  /** By height: what fits, the most valuable for its width first. */
  private readonly options: readonly (readonly Option[])[]
  private readonly seen = new Map<string, number>()
  private readonly chosen: FilledStrip[] = []
  private readonly priced: number
  private below: number
  private best: FilledStrip[] | null = null
  private whole = true

  constructor(filler: Filler, price: Float64Array, below: number, atLeast: number, end: number) {
    const { task, heights } = filler
    this.filler = filler
    this.end = end
    this.below = below
    this.atLeast = atLeast
    this.left = Int32Array.from(task.kinds, ({ count }) => count)
    this.priced = task.kinds.reduce((sum, { count }, kind) => sum + count * (price[kind] as number), 0)
    const sides = (kind: number): PieceKind => task.kinds[kind] as PieceKind
    this.order = task.kinds.map((_, kind) => kind).sort((a, b) => sides(b).short - sides(a).short || sides(b).long - sides(a).long)
    this.options = heights.map((height) => optionsAt(task.kinds, height, task.width, price))
  }

  run(): Searched {
    this.lay(0)
    return { strips: this.best, ended: this.whole }
  }

  /** How much may still be lost; a little more than exact, so that nothing is skipped. */
  private allowed(lost: number): number {
    return (this.below - this.filler.task.least - this.priced) * (1 + 1e-12) + 1e-5 - lost
  }

  private lay(lost: number): void {
    const { left, filler } = this
    const next = this.order.find((kind) => (left[kind] as number) > 0)
    if (next === undefined) {
      const length = totalHeight(this.chosen)
      if (length < this.below) {
        this.below = length
        this.best = [...this.chosen]
      }
      return
    }
    if (this.passed(lost)) return
    for (const { height, held, lost: more } of this.stripsWith(next, this.allowed(lost))) {
      if (more > this.allowed(lost)) break
      if (filler.steps > this.end) {
        this.whole = false
        return
      }
      for (const [kind, count] of held) left[kind] = (left[kind] as number) - count
      this.chosen.push({ height, held: new Map(held) })
      this.lay(lost + more)
      this.chosen.pop()
      for (const [kind, count] of held) left[kind] = (left[kind] as number) + count
      if (this.below <= this.atLeast) return
    }
  }

  /** Whether this set of pieces was reached before with no more loss; if not, it is remembered. */
  private passed(lost: number): boolean {
    const key = this.left.join()
    this.filler.steps += this.left.length * 60
    const before = this.seen.get(key)
    if (before !== undefined && before <= lost + 1e-9) return true
    if (before !== undefined || this.seen.size < REMEMBERED) this.seen.set(key, lost)
    return false
  }

  /** Full strips that hold this piece and lose no more than allowed, the least loss first. */
  private stripsWith(first: number, allowed: number): Choice[] {
    const found: Choice[] = []
    const { heights, task } = this.filler
    heights.forEach((height, index) => {
      const wide = wideIn(task.kinds[first] as PieceKind, height, task.width)
      if (wide === 0 || found.length > STRIPS_AT_ONCE || this.filler.steps > this.end) return
      const options = this.options[index] as readonly Option[]
      const fill = new Filling(this.left, options, first, height - allowed, this.end - this.filler.steps)
      fill.from(0, task.width)
      this.filler.steps += fill.steps
      if (!fill.ended) this.whole = false
      for (const { held, worth } of fill.found) found.push({ height, held, lost: height - worth })
    })
    if (found.length > STRIPS_AT_ONCE || this.filler.steps > this.end) this.whole = false
    return found.sort((a, b) => a.lost - b.lost)
  }
}
