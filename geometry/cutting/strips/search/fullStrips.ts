/**
 * Every full strip of enough value that holds one given piece.
 *
 * In      how many are left of each kind, the ways in which they fit a strip of one height, and the least value of the strip.
 * Out     fillings into which nothing that is left fits any more, with a piece as high as the strip: otherwise the same pieces would fit a lower strip.
 * How     kind after kind, the most valuable for its width first, as many as fit and then fewer; a branch ends where even a fraction of a piece
 *         would not give enough value.
 */
import { type PieceKind, wideIn } from './stripTask.ts'

/** Strips found for one piece. */
export const STRIPS_AT_ONCE = 20_000
/** Roughly what a step of this search costs, in the filler's steps. */
const NODE = 20
const KEEP = 20

export interface Option {
  readonly kind: number
  readonly wide: number
  readonly price: number
  /** It is as high as the strip. */
  readonly tight: boolean
}

/** What fits a strip of this height, the most valuable for its width first. */
export function optionsAt(kinds: readonly PieceKind[], height: number, width: number, price: ArrayLike<number>): Option[] {
  const fitting = kinds.flatMap((one, kind): Option[] => {
    const wide = wideIn(one, height, width)
    if (wide === 0) return []
    const high = one.long <= height ? one.long : one.short
    return [{ kind, wide, price: price[kind] as number, tight: high === height }]
  })
  return fitting.sort((a, b) => b.price * a.wide - a.price * b.wide)
}

/** Full fillings of one strip with enough value. */
export class Filling {
  readonly found: { held: (readonly [number, number])[]; worth: number }[] = []
  steps = 0
  ended = true
  private readonly most: number
  private readonly left: Int32Array
  private readonly options: readonly Option[]
  private readonly first: number
  private readonly enough: number
  private readonly taken: number[] = []

  constructor(left: Int32Array, options: readonly Option[], first: number, enough: number, most: number) {
    this.left = left
    this.most = most
    this.first = first
    this.enough = enough
    // The piece that must be in comes first; the rest follow by value.
    const own = options.filter(({ kind }) => kind === first)
    this.options = [...own, ...options.filter(({ kind }) => kind !== first && (left[kind] as number) > 0)]
  }

  from(place: number, room: number, worth = 0): void {
    this.steps += NODE
    if (this.steps > this.most || this.found.length > STRIPS_AT_ONCE) {
      this.ended = false
      return
    }
    const option = this.options[place]
    if (option === undefined) {
      this.steps += this.options.length * 4
      if (worth >= this.enough && this.isTight() && this.isFull(room)) this.keep(worth)
      return
    }
    if (worth + this.bound(place, room) < this.enough) return
    const { kind, wide, price } = option
    const most = Math.min(this.left[kind] as number, Math.floor(room / wide))
    const least = kind === this.first ? 1 : 0
    for (let count = most; count >= least; count--) {
      this.taken[place] = count
      this.from(place + 1, room - count * wide, worth + count * price)
    }
    this.taken[place] = 0
  }

  /** The most value that fits the room if the last piece may be a fraction. */
  private bound(place: number, room: number): number {
    let worth = 0
    for (let next = place; next < this.options.length; next++) {
      const { kind, wide, price } = this.options[next] as Option
      this.steps += 4
      const count = this.left[kind] as number
      // The first one comes before the others whatever its value: what follows may be worth more for its width.
      if (next === 0) {
        let rest = 0
        for (const one of this.options) rest = Math.max(rest, one.price / one.wide)
        return rest * room
      }
      if (count * wide >= room) return worth + (price * room) / wide
      worth += count * price
      room -= count * wide
    }
    return worth
  }

  private isTight(): boolean {
    return this.options.some(({ tight }, place) => tight && (this.taken[place] ?? 0) > 0)
  }

  private isFull(room: number): boolean {
    return this.options.every(({ kind, wide }, place) => wide > room || (this.taken[place] ?? 0) === this.left[kind])
  }

  private keep(worth: number): void {
    this.steps += KEEP * this.options.length
    const held = this.options.flatMap(({ kind }, place): (readonly [number, number])[] => {
      const count = this.taken[place] ?? 0
      return count > 0 ? [[kind, count]] : []
    })
    this.found.push({ held, worth })
  }
}
