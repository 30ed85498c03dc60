/**
 * Cutting from what is on hand first: precut strips and squares, quarters of a yard, odd pieces.
 *
 * In      pieces to cut of one fabric, stash pieces of it with their number on hand, the width of the fabric that is bought.
 * Out     which stash piece can give which cut piece, and how many; how to cut those used; the least length still to buy.
 * How     a stash piece is cut like a short length of fabric: strips along one side or the other (of a print that may not be turned: across the print), each cut into pieces side by side. First three plans are compared: the smallest stash pieces filled
 *         first and the rest bought, the largest first, and everything bought. Then every other way is tried, as when nothing is on hand
 *         (see `stripSearch`), each strip out of the stash or bought, until the budget of steps is used.
 * Exact   prices under which no strip of the fabric holds more than its height give a lower bound on what is bought: all prices, less what the stash may hold.
 */
import { Filler } from './search/fillStrips.ts'
import { Filling, type Option, optionsAt } from './search/fullStrips.ts'
import { leastStrips } from './search/leastStrips.ts'
import { type StripsFor, sizeOf, stripOf } from './stripsPerFabric.ts'
import { pricesOf } from './search/stripPrices.ts'
import {
  type PieceKind,
  type FilledStrip,
  totalHeight,
  lowered,
  restOf,
  type SizedPieces,
  type StripTask,
  taskOf,
  wideIn,
} from './search/stripTask.ts'
import type { Strip } from '../../values/report.ts'

export interface StashPiece {
  readonly id: string
  readonly fabric: string
  /** Across the print, then along it, where the print has a direction; else either way. */
  readonly size: readonly [number, number]
  readonly onHand: number
}

interface Served {
  readonly size: readonly [number, number]
  readonly each: number
}

export interface FromStash {
  /** For every stash piece, the cut pieces it can give, and how many of each if cut for that alone. */
  readonly serves: readonly { readonly id: string; readonly pieces: readonly Served[] }[]
  /** One entry for every stash piece that is cut: strips run along `along`. */
  readonly cuts: readonly { readonly id: string; readonly along: number; readonly strips: readonly Strip[] }[]
  readonly toBuy: Pick<StripsFor, 'strips' | 'length' | 'atLeast'>
  /** No plan buys less. */
  readonly proved: boolean
}

/** Fabric that is sold precut, with its usable size in inches [S124][S125][S126]. */
export const PRECUTS = {
  strip: [42, 2.5],
  charm: [5, 5],
  ten: [10, 10],
  quarter: [21, 18],
} as const satisfies Readonly<Record<string, readonly [number, number]>>

const STEPS = 100_000_000

/** A sheet of the stash laid one way: strips are `wide` long, and their heights together at most `high`. */
interface Sheet {
  readonly stash: number
  readonly wide: number
  readonly high: number
}

interface Cut {
  readonly sheet: Sheet
  readonly strips: readonly FilledStrip[]
}

interface Plan {
  readonly cuts: readonly Cut[]
  readonly bought: readonly FilledStrip[]
}

/** Which pieces (cut sizes in the measure's unit) fit on fabric at hand, and the strips of new fabric, `width` wide, for the rest. */
export function fromStash(pieces: readonly SizedPieces[], stash: readonly StashPiece[], width: number, steps = STEPS): FromStash {
  const task = taskOf(
    pieces,
    width,
    stash.flatMap(({ size }) => size),
  )
  const directed = pieces.some(({ fixed }) => fixed)
  const sheets = stash.map(({ size }, index) => (directed ? waysOf(index, size, task).slice(0, 1) : waysOf(index, size, task)))
  const filler = new Filler(task)
  const { price } = pricesOf(filler, [], steps / 8)
  const hands = stash.map(({ onHand }) => onHand)
  const [first, ...others] = [
    plan(task, sheets, hands, price, steps / 8),
    plan(task, [...sheets].reverse(), hands, price, steps / 8),
    plan(task, [], hands, price, steps / 8),
  ] as [Plan, ...Plan[]]
  const quick = others.reduce((best, one) => (totalHeight(one.bought) < totalHeight(best.bought) ? one : best), first)
  const search = new Search(filler, sheets, hands, price, quick, filler.steps + steps / 2)
  const { found, ended } = search.run()
  const length = totalHeight(found.bought)
  const say = (strips: readonly FilledStrip[]): Strip[] => strips.map((strip) => stripOf(task, strip))
  const atLeast = ended ? length : search.atLeast
  return {
    serves: stash.map(({ id }, index) => ({ id, pieces: servedBy(task, sheets[index] as readonly Sheet[]) })),
    cuts: found.cuts.map(({ sheet, strips }) => ({
      id: (stash[sheet.stash] as StashPiece).id,
      along: sizeOf(task, sheet.wide - task.slack),
      strips: say(strips),
    })),
    toBuy: { strips: say(found.bought), length: sizeOf(task, length), atLeast: sizeOf(task, Math.min(length, atLeast)) },
    proved: length < atLeast + task.least,
  }
}

/** Strips along the one side, or the other. */
function waysOf(stash: number, size: readonly [number, number], { perUnit, slack }: StripTask): Sheet[] {
  const [a, b] = size.map((side) => Math.floor(side * perUnit + 1e-6) + slack) as [number, number]
  return a === b ? [{ stash, wide: a, high: b }] : [a, b].map((wide) => ({ stash, wide, high: wide === a ? b : a }))
}

function servedBy(task: StripTask, ways: readonly Sheet[]): Served[] {
  return task.kinds.flatMap((kind) => {
    const each = Math.max(...ways.map((sheet) => alone(kind, sheet)))
    const [first, second] = kind.fixed ? [kind.short, kind.long] : [kind.long, kind.short]
    return each > 0 ? [{ size: [sizeOf(task, first), sizeOf(task, second)] as const, each }] : []
  })
}

/** How many of one kind a sheet gives: low strips of pieces that lie, high ones of pieces that stand. */
export function alone({ long, short, fixed }: Omit<PieceKind, 'count'>, { wide, high }: Pick<Sheet, 'wide' | 'high'>): number {
  if (fixed) return Math.floor(high / long) * Math.floor(wide / short)
  let most = 0
  for (let low = 0; low * short <= high; low++) {
    const stand = Math.floor((high - low * short) / long)
    most = Math.max(most, low * Math.floor(wide / long) + stand * Math.floor(wide / short))
  }
  return most
}

/** Sheet after sheet, the smallest first, filled with the most value; the rest is bought. */
function plan(task: StripTask, sheets: readonly (readonly Sheet[])[], hands: readonly number[], price: Float64Array, steps: number): Plan {
  const left = Int32Array.from(task.kinds, ({ count }) => count)
  const fillers = new Map<number, Filler>()
  const fillerOf = (wide: number): Filler => {
    const filler = fillers.get(wide) ?? new Filler({ ...task, width: wide })
    fillers.set(wide, filler)
    return filler
  }
  const cuts: Cut[] = []
  for (const ways of sheets) {
    const count = hands[ways[0]?.stash as number] as number
    for (let used = 0; used < count; used++) {
      const filled = ways.map((sheet) => filledSheet(fillerOf(sheet.wide), sheet, left, price))
      const best = filled.reduce((one, other) => (other.worth > one.worth ? other : one))
      if (best.worth <= 0) break
      cuts.push(best)
      for (const { held } of best.strips) for (const [kind, some] of held) left[kind] = (left[kind] as number) - some
    }
  }
  const kinds = [...left.keys()].filter((kind) => (left[kind] as number) > 0)
  if (kinds.length === 0) return { cuts, bought: [] }
  const { strips } = leastStrips(restOf(task, left, kinds), steps)
  return {
    cuts,
    bought: strips.map(({ height, held }) => ({ height, held: new Map([...held].map(([kind, some]) => [kinds[kind] as number, some])) })),
  }
}

function filledSheet(filler: Filler, sheet: Sheet, given: Int32Array, price: Float64Array): Cut & { worth: number } {
  const left = given.slice()
  const strips: FilledStrip[] = []
  let [room, sum] = [sheet.high, 0]
  for (;;) {
    const bounds = filler.bounds(price, left)
    let best = -1
    filler.heights.forEach((height, index) => {
      if (height > room || (bounds[index] as number) <= 0) return
      if (best < 0 || (bounds[index] as number) / height > (bounds[best] as number) / (filler.heights[best] as number)) best = index
    })
    if (best < 0) return { sheet, strips, worth: sum }
    const { held } = filler.best(filler.heights[best] as number, price, left)
    if (held.size === 0) return { sheet, strips, worth: sum }
    const strip = lowered(filler.task, { height: filler.heights[best] as number, held })
    strips.push(strip)
    room -= strip.height
    for (const [kind, some] of held) {
      left[kind] = (left[kind] as number) - some
      sum += some * (price[kind] as number)
    }
  }
}

interface Open {
  readonly sheet: Sheet
  room: number
  readonly strips: FilledStrip[]
}

/** Tries every way, as long as the steps last. */
class Search {
  readonly atLeast: number
  private readonly filler: Filler
  private readonly sheets: readonly (readonly Sheet[])[]
  private readonly hands: number[]
  private readonly end: number
  private readonly left: Int32Array
  private readonly order: readonly number[]
  private readonly price: Float64Array
  private readonly options = new Map<string, Option[]>()
  /** By the length of a strip: the most value that one step of its height can hold. */
  private readonly rates = new Map<number, number>()
  private readonly seen = new Map<string, number>()
  private readonly open: Open[] = []
  private readonly bought: FilledStrip[] = []
  private found: Plan
  private below: number
  private ended = true

  constructor(filler: Filler, sheets: readonly (readonly Sheet[])[], hands: readonly number[], price: Float64Array, quick: Plan, end: number) {
    const { task } = filler
    this.filler = filler
    this.sheets = sheets
    this.hands = [...hands]
    this.end = end
    this.price = price
    this.found = quick
    this.below = totalHeight(quick.bought)
    this.left = Int32Array.from(task.kinds, ({ count }) => count)
    const sides = (kind: number): PieceKind => task.kinds[kind] as PieceKind
    this.order = task.kinds.map((_, kind) => kind).sort((a, b) => sides(b).short - sides(a).short || sides(b).long - sides(a).long)
    for (const { wide } of sheets.flat()) {
      if (this.rates.has(wide)) continue
      const other = new Filler({ ...task, width: wide })
      const bounds = other.bounds(price, this.left)
      this.rates.set(wide, Math.max(0, ...other.heights.map((height, index) => ((bounds[index] as number) / height) * (1 + 1e-9))))
    }
    this.atLeast = Math.max(0, Math.ceil(this.bound() - 1e-6))
  }

  run(): { found: Plan; ended: boolean } {
    if (this.below > this.atLeast) this.lay(0)
    return { found: this.found, ended: this.ended }
  }

  /** A lower bound on what must be bought for the pieces left: their prices, less what the stash may hold of them. */
  private bound(): number {
    let worth = 0
    for (let kind = 0; kind < this.left.length; kind++) worth += (this.left[kind] as number) * (this.price[kind] as number)
    const rate = ({ wide }: Sheet): number => this.rates.get(wide) as number
    for (const { sheet, room } of this.open) worth -= rate(sheet) * room
    this.sheets.forEach((ways, stash) => {
      worth -= (this.hands[stash] as number) * Math.max(...ways.map((sheet) => rate(sheet) * sheet.high))
    })
    return worth * (1 - 1e-9)
  }

  private lay(length: number): void {
    this.filler.steps += 200
    if (this.filler.steps > this.end) {
      this.ended = false
      return
    }
    const next = this.order.find((kind) => (this.left[kind] as number) > 0)
    if (next === undefined) {
      if (length >= this.below) return
      this.below = length
      this.found = { cuts: this.open.map(({ sheet, strips }) => ({ sheet, strips: [...strips] })), bought: [...this.bought] }
      return
    }
    if (length + Math.max(0, this.bound()) > this.below - this.filler.task.least + 1e-5 || this.passed(length)) return
    this.fromOpen(next, length)
    this.fromNew(next, length)
    this.fromNewFabric(next, length)
  }

  private passed(length: number): boolean {
    const open = this.open.map(({ sheet, room }) => `${sheet.wide}:${room}`).sort()
    const key = `${this.left.join()}|${this.hands.join()}|${open.join()}`
    const before = this.seen.get(key)
    if (before !== undefined && before <= length) return true
    if (this.seen.size < 200_000) this.seen.set(key, length)
    return false
  }

  private fromOpen(next: number, length: number): void {
    const tried = new Set<string>()
    for (const open of [...this.open]) {
      const key = `${open.sheet.wide}:${open.room}`
      if (tried.has(key)) continue
      tried.add(key)
      this.cutFrom(open, next, length)
    }
  }

  private fromNew(next: number, length: number): void {
    this.sheets.forEach((ways, stash) => {
      if ((this.hands[stash] as number) <= 0) return
      this.hands[stash] = (this.hands[stash] as number) - 1
      for (const sheet of ways) {
        const open: Open = { sheet, room: sheet.high, strips: [] }
        this.open.push(open)
        this.cutFrom(open, next, length)
        this.open.pop()
      }
      this.hands[stash] = (this.hands[stash] as number) + 1
    })
  }

  private cutFrom(open: Open, next: number, length: number): void {
    for (const strip of this.stripsWith(next, open.sheet.wide, open.room)) {
      open.room -= strip.height
      open.strips.push(strip)
      this.without(strip, () => this.lay(length))
      open.strips.pop()
      open.room += strip.height
    }
  }

  private fromNewFabric(next: number, length: number): void {
    for (const strip of this.stripsWith(next, this.filler.task.width, this.below - length - this.filler.task.least)) {
      this.bought.push(strip)
      this.without(strip, () => this.lay(length + strip.height))
      this.bought.pop()
    }
  }

  private without({ held }: FilledStrip, go: () => void): void {
    for (const [kind, count] of held) this.left[kind] = (this.left[kind] as number) - count
    go()
    for (const [kind, count] of held) this.left[kind] = (this.left[kind] as number) + count
  }

  private stripsWith(first: number, width: number, highest: number): FilledStrip[] {
    const { heights, task } = this.filler
    const strips: FilledStrip[] = []
    for (const height of this.heightsFor(width, heights)) {
      if (height > highest || wideIn(task.kinds[first] as PieceKind, height, width) === 0) continue
      const fill = new Filling(this.left, this.optionsAt(height, width), first, Number.NEGATIVE_INFINITY, this.end - this.filler.steps)
      fill.from(0, width)
      this.filler.steps += fill.steps
      if (!fill.ended) this.ended = false
      for (const { held } of fill.found) strips.push({ height, held: new Map(held) })
    }
    return strips
  }

  /** A piece that can only stand in the new fabric may lie in a strip of another length, so every side may be a height. */
  private heightsFor(width: number, heights: readonly number[]): readonly number[] {
    if (width === this.filler.task.width) return heights
    return [...new Set(this.filler.task.kinds.flatMap(({ long, short }) => [short, long]))].sort((a, b) => a - b)
  }

  private optionsAt(height: number, width: number): Option[] {
    const key = `${height}:${width}`
    const known = this.options.get(key) ?? optionsAt(this.filler.task.kinds, height, width, this.price)
    this.options.set(key, known)
    return known
  }
}
