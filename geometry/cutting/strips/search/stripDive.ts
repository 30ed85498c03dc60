/**
 * Rounds fractions of strips to whole strips, in several dives that choose differently.
 *
 * In      a task, strips found so far, a length to stay below, and the steps to spend.
 * Out     the shortest strips found below it, or null.
 * How     Solve for fractions of strips; take the strips with a whole in them, or else the one with the largest fraction; solve again for what is left.
 *         The last few pieces are laid by the complete search. A dive ends early when its bound shows that it cannot be shorter. Each
 *         further dive takes the next choice instead of the first at one depth.
 */
import { Filler } from './fillStrips.ts'
import { pricesOf } from './stripPrices.ts'
import { searchStrips } from './stripSearch.ts'
import { type PieceKind, type FilledStrip, totalHeight, restOf } from './stripTask.ts'

/** At most this many pieces are laid by the complete search. */
const FEW = 12
const CHOICES = 3

export function stripsByDiving(filler: Filler, known: readonly FilledStrip[], below: number, atLeast: number, steps: number): FilledStrip[] | null {
  const end = filler.steps + steps
  let best: FilledStrip[] | null = null
  let limit = below
  for (let turn = 0; filler.steps < end && limit > atLeast; turn++) {
    const dive = new Dive(filler, known, limit, end, Math.floor(turn / (CHOICES - 1)), turn === 0 ? 0 : 1 + (turn % (CHOICES - 1)))
    const found = dive.run()
    if (found !== null) {
      best = found
      limit = totalHeight(found)
    }
    if (turn > 0 && dive.depth < Math.floor(turn / (CHOICES - 1))) break
  }
  return best
}

class Dive {
  depth = 0
  private readonly filler: Filler
  private readonly known: readonly FilledStrip[]
  private readonly below: number
  private readonly end: number
  private readonly other: number
  private readonly choice: number
  private readonly left: Int32Array
  private readonly taken: FilledStrip[] = []

  constructor(filler: Filler, known: readonly FilledStrip[], below: number, end: number, other: number, choice: number) {
    this.filler = filler
    this.known = known
    this.below = below
    this.end = end
    this.other = other
    this.choice = choice
    this.left = Int32Array.from(filler.task.kinds, ({ count }) => count)
  }

  run(): FilledStrip[] | null {
    for (; ; this.depth++) {
      const kinds = [...this.left.keys()].filter((kind) => (this.left[kind] as number) > 0)
      const room = this.below - totalHeight(this.taken)
      if (kinds.length === 0) return room > 0 ? this.taken : null
      if (this.filler.steps > this.end) return null
      const rest = new Filler(restOf(this.filler.task, this.left, kinds))
      const strips = this.next(rest, kinds, room)
      this.filler.steps += rest.steps
      if (strips === null) return null
      for (const { height, held } of strips) this.take({ height, held: new Map([...held].map(([kind, count]) => [kinds[kind] as number, count])) })
    }
  }

  /** The strips to take next, in the numbers of the rest. */
  private next(rest: Filler, kinds: readonly number[], room: number): readonly FilledStrip[] | null {
    const { task } = rest
    const budget = (this.end - this.filler.steps) / 2
    const { price, atLeast, amounts } = pricesOf(rest, this.knownOf(rest, kinds), budget)
    if (Math.ceil(atLeast - 1e-6) >= room) return null
    if (task.kinds.reduce((sum, { count }) => sum + count, 0) <= FEW) return searchStrips(rest, price, room, atLeast, budget).strips
    const whole = amounts.flatMap(({ strip, amount }) => Array.from({ length: Math.floor(amount + 1e-6) }, () => strip))
    if (whole.length > 0) return whole
    const wanted = [...amounts].sort((a, b) => b.amount - a.amount)
    const chosen = wanted[Math.min(wanted.length - 1, this.depth === this.other ? this.choice : 0)]
    return chosen === undefined ? null : [chosen.strip]
  }

  private knownOf({ task }: Filler, kinds: readonly number[]): FilledStrip[] {
    const place = new Map(kinds.map((kind, index) => [kind, index]))
    return this.known.flatMap(({ height, held }) => {
      const own = [...held].flatMap(([kind, count]): [number, number][] => {
        const index = place.get(kind)
        return index === undefined ? [] : [[index, Math.min(count, (task.kinds[index] as PieceKind).count)]]
      })
      return own.length === 0 ? [] : [{ height, held: new Map(own) }]
    })
  }

  /** Takes a strip. It may hold more of a kind than is left: then only those are cut. */
  private take({ height, held }: FilledStrip): void {
    const own = [...held].flatMap(([kind, count]): [number, number][] => {
      const some = Math.min(count, this.left[kind] as number)
      return some > 0 ? [[kind, some]] : []
    })
    if (own.length === 0) return
    for (const [kind, count] of own) this.left[kind] = (this.left[kind] as number) - count
    this.taken.push({ height, held: new Map(own) })
  }
}
