/**
 * The least number of four-at-a-time batches whose yield covers the geese asked for.
 *
 * In      wing pairs [left, right] of geese of one size and one goose fabric, as seen with the tip up.
 * Out     batches, whether their number is proved to be the least, and a lower bound.
 * How     round the large square p1 p2 p3 p4 a batch makes geese whose (right, left) wings are (p1,p2), (p2,p3), (p3,p4), (p4,p1): a closed walk of
 *         four steps from right wing to left wing. A closed walk enters every fabric as often as it leaves it, so each goose too many that leaves
 *         a fabric must be answered by a spare one that enters: (geese + those answers) / 4, rounded up, is a bound. From there one batch more is
 *         allowed until a search that leaves nothing out finds a cover, or its budget of steps is used.
 * Source  common practice, no source: two small squares on opposite corners first, then the other two.
 */
import type { Batch } from '../values.ts'

export interface Batches {
  readonly batches: readonly Batch[]
  readonly proved: boolean
  readonly atLeast: number
}

type Walk = readonly [number, number, number, number]

/** Partial covers looked at before the search gives up; some hundred milliseconds. */
const BUDGET = 60_000

export function leastBatches(goose: string, wanted: readonly (readonly [string, string])[]): Batches {
  const fabrics = [...new Set(wanted.flat())]
  const place = new Map(fabrics.map((id, index) => [id, index]))
  const size = fabrics.length
  const demand = new Int32Array(size * size)
  for (const [left, right] of wanted) {
    const step = (place.get(right) as number) * size + (place.get(left) as number)
    demand[step] = (demand[step] as number) + 1
  }
  const search = new Search(size, demand)
  const { walks, proved, atLeast } = search.run()
  return {
    proved,
    atLeast,
    batches: walks.map((walk) => batchOf(goose, walk.map((one) => fabrics[one] as string) as unknown as [string, string, string, string])),
  }
}

/** What a batch with these corners, clockwise, makes: [left, right] wings. */
export function batchOf(goose: string, corners: readonly [string, string, string, string]): Batch {
  const [a, b, c, d] = corners
  return {
    goose,
    corners,
    makes: [
      [b, a],
      [c, b],
      [d, c],
      [a, d],
    ],
  }
}

class Search {
  private readonly size: number
  private readonly left: Int32Array
  private readonly dead = new Map<string, number>()
  private steps = 0
  private chosen: Walk[] = []

  constructor(size: number, demand: Int32Array) {
    this.size = size
    this.left = demand
  }

  run(): { walks: Walk[]; proved: boolean; atLeast: number } {
    const least = this.bound()
    const start = Int32Array.from(this.left)
    for (let allowed = least; ; allowed++) {
      this.left.set(start)
      this.chosen = []
      if (this.cover(allowed)) return { walks: this.chosen, proved: true, atLeast: allowed }
      if (this.steps > BUDGET) {
        this.left.set(start)
        const walks = this.greedy()
        return { walks, proved: walks.length === allowed, atLeast: allowed }
      }
    }
  }

  private bound(): number {
    let geese = 0
    let answers = 0
    for (let one = 0; one < this.size; one++) {
      let balance = 0
      for (let other = 0; other < this.size; other++) {
        const out = this.left[one * this.size + other] as number
        geese += out
        balance += out - (this.left[other * this.size + one] as number)
      }
      answers += Math.max(0, balance)
    }
    return Math.ceil((geese + answers) / 4)
  }

  private cover(allowed: number): boolean {
    const bound = this.bound()
    if (bound === 0) return true
    if (bound > allowed) return false
    if (++this.steps > BUDGET) return false
    const key = this.left.join()
    if ((this.dead.get(key) ?? -1) >= allowed) return false
    const step = this.scarcest()
    for (const walk of this.through(step)) {
      const taken = this.take(walk)
      this.chosen.push(walk)
      if (this.cover(allowed - 1)) return true
      this.chosen.pop()
      for (const one of taken) this.left[one] = (this.left[one] as number) + 1
      if (this.steps > BUDGET) return false
    }
    this.dead.set(key, Math.max(this.dead.get(key) ?? -1, allowed))
    return false
  }

  private take(walk: Walk): number[] {
    return stepsOf(walk, this.size).filter((step) => {
      if (this.left[step] === 0) return false
      this.left[step] = (this.left[step] as number) - 1
      return true
    })
  }

  /** A goose that is wanted where the fabrics are least in balance: there the choice is smallest. */
  private scarcest(): number {
    let best = -1
    let least = Number.POSITIVE_INFINITY
    this.left.forEach((count, step) => {
      if (count === 0) return
      const [from, to] = [Math.floor(step / this.size), step % this.size]
      const back = this.left[to * this.size + from] as number
      const ways = from === to ? 1e6 + count : back * 1e3 + count
      if (ways < least) {
        least = ways
        best = step
      }
    })
    return best
  }

  /** Closed walks of four steps that begin with this one, those that make most of what is wanted first. */
  private through(step: number): Walk[] {
    const [a, b] = [Math.floor(step / this.size), step % this.size]
    const found: { walk: Walk; worth: number }[] = []
    for (let c = 0; c < this.size; c++)
      for (let d = 0; d < this.size; d++) {
        const walk: Walk = [a, b, c, d]
        const taken = this.take(walk)
        found.push({ walk, worth: taken.length * 1000 - this.bound() })
        for (const one of taken) this.left[one] = (this.left[one] as number) + 1
      }
    return found.sort((one, other) => other.worth - one.worth).map(({ walk }) => walk)
  }

  private greedy(): Walk[] {
    const walks: Walk[] = []
    while (this.left.some((count) => count > 0)) {
      const walk = this.through(this.scarcest())[0] as Walk
      this.take(walk)
      walks.push(walk)
    }
    return walks
  }
}

function stepsOf([a, b, c, d]: Walk, size: number): number[] {
  return [a * size + b, b * size + c, c * size + d, d * size + a]
}
