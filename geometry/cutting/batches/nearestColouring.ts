/**
 * The colouring closest to the present one that needs fewer four-at-a-time batches.
 *
 * In      the wings of geese of one size and one goose fabric, [left, right] as seen with the tip up, and how many batches there may be.
 * Out     new wings for each goose, how many wings are changed, the corners of each batch, and whether no colouring changes fewer.
 * How     each goose gets one of the four sides of a batch. Two geese on sides that meet share the corner between them: where the left wing of
 *         one and the right wing of the other differ, one of them is changed, and nothing else. A side left empty costs nothing. So the
 *         problem is to share out the geese with the fewest corners that differ. Geese with the same two wings are one sort: where the sorts give
 *         few enough ways, all are tried; otherwise geese change places while that helps, and a bound from the balance of left and right wings
 *         may still prove that no colouring changes fewer. Every change of a single wing is tried too, by the number of batches
 *         it needs: one may be enough, and where none is, no colouring changes fewer than two.
 * Exact   counting only. Fabrics that no goose has would not help: one that some goose has changes no more.
 */
import type { Batch } from '../../values/report.ts'
import { demandOf, type Wings } from './geeseBatches.ts'
import { leastCover } from '../../solvers/closedWalks.ts'
import type { Walk } from '../../solvers/fractionalCover.ts'

interface Nearest {
  readonly wings: readonly Wings[]
  /** Wings of another fabric than before. */
  readonly changed: number
  readonly corners: readonly Batch['corners'][]
  /** No colouring that needs this many batches or fewer changes fewer wings. */
  readonly proved: boolean
}

/** About a second. */
const MOST_WAYS = 12_000_000
/** Work on the least number of batches of the present colouring, from which the search starts. */
const START_WORK = 200_000_000
/** Work on the number of batches of one changed colouring, and of all of them: about a second. */
const ONE_CHANGE = 5_000_000
const ONE_WORK = 1_000_000_000
/** Changes of place that are tried. */
const MOST_SWAPS = 20_000_000

/** The geese on the four sides of a batch, by number; −1 where a side is left empty. */
type Sides = readonly [number, number, number, number]

/** Null where there are more geese than the batches make. Up to `ways` ways are tried; where there are more, geese only change places. */
export function nearestColouring(geese: readonly Wings[], batches: number, ways = MOST_WAYS): Nearest | null {
  if (geese.length > 4 * batches) return null
  const all = everyWay(geese, batches, ways)
  if (all !== null) return { ...coloured(geese, all), proved: true }
  const fabrics = [...new Set(geese.flat())]
  const { walks, atLeast } = leastCover(demandOf(geese, fabrics), START_WORK)
  const shared = swapped(geese, exactly(geese, walks, fabrics, batches))
  const found = coloured(geese, shared)
  const least = Math.max(mustChange(geese, batches), atLeast > batches ? 1 : 0)
  if (found.changed <= least || least > 1 || found.changed < 2) return { ...found, proved: found.changed <= least }
  const one = byOneWing(geese, fabrics, batches)
  if (one.found !== null) return { ...one.found, proved: least === 1 }
  return { ...found, proved: one.none && found.changed === 2 }
}

interface ByOne {
  readonly found: Omit<Nearest, 'proved'> | null
  /** No change of one wing is enough. */
  readonly none: boolean
}

/** Tries every change of one wing; geese with the same two wings are tried once. */
function byOneWing(geese: readonly Wings[], fabrics: readonly string[], batches: number): ByOne {
  let none = true
  const tried = new Set<string>()
  let work = ONE_WORK
  for (const [goose, [left, right]] of geese.entries()) {
    const name = `${left} ${right}`
    if (tried.has(name)) continue
    tried.add(name)
    for (const other of fabrics.flatMap((fabric): Wings[] => [
      [fabric, right],
      [left, fabric],
    ])) {
      if (other[0] === left && other[1] === right) continue
      const after = geese.map((wings, place) => (place === goose ? other : wings))
      if (mustChange(after, batches) > 0) continue
      if (work <= 0) return { found: null, none: false }
      work -= ONE_CHANGE
      const { walks, atLeast } = leastCover(demandOf(after, fabrics), ONE_CHANGE)
      if (walks.length <= batches) return { found: { ...coloured(after, exactly(after, walks, fabrics, batches)), changed: 1 }, none: false }
      if (atLeast <= batches) none = false
    }
  }
  return { found: null, none }
}

/** The geese on the sides of batches that make them as they are. */
const exactly = (geese: readonly Wings[], walks: readonly Walk[], fabrics: readonly string[], batches: number): Sides[] =>
  sharedOut(
    geese,
    walks.map((walk) => walk.map((one) => fabrics[one] as string)),
    batches,
  )

/**
 * Batches have as many left wings of a fabric as right ones, so surplus wings of either side need spare geese or must be changed; changing
 * one wing balances one.
 */
function mustChange(geese: readonly Wings[], batches: number): number {
  const balance = new Map<string, number>()
  for (const [left, right] of geese) {
    balance.set(right, (balance.get(right) ?? 0) + 1)
    balance.set(left, (balance.get(left) ?? 0) - 1)
  }
  const over = [...balance.values()].reduce((sum, one) => sum + Math.max(0, one), 0)
  return over - (4 * batches - geese.length)
}

/** The new wings: at each corner the fabric of the goose that has its right wing there, else of its neighbour. */
function coloured(geese: readonly Wings[], sides: readonly Sides[]): Omit<Nearest, 'proved'> {
  const wings = [...geese]
  let changed = 0
  const corners = sides.map((four): Batch['corners'] => {
    const some = geese[four.find((goose) => goose >= 0) as number] as Wings
    const fabrics = four.map((goose, side) => geese[goose]?.[1] ?? geese[four[(side + 3) % 4] as number]?.[0] ?? some[1])
    four.forEach((goose, side) => {
      if (goose < 0) return
      const left = fabrics[(side + 1) % 4] as string
      if (left !== (geese[goose] as Wings)[0]) changed++
      wings[goose] = [left, fabrics[side] as string]
    })
    return fabrics as unknown as Batch['corners']
  })
  return { wings, changed, corners }
}

const differs = (one: Wings | undefined, next: Wings | undefined): number => (one === undefined || next === undefined || one[0] === next[1] ? 0 : 1)

const cornersThatDiffer = (four: readonly (Wings | undefined)[]): number =>
  four.reduce((sum, one, side) => sum + differs(one, four[(side + 1) % 4]), 0)

/** Round a batch in every order, the first goose on the first side; three geese leave the last side empty, two lie opposite each other. */
const ORDERS: Readonly<Record<number, readonly Sides[]>> = {
  1: [[0, -1, -1, -1]],
  2: [[0, -1, 1, -1]],
  3: [
    [0, 1, 2, -1],
    [0, 2, 1, -1],
    [1, 0, 2, -1],
    [1, 2, 0, -1],
    [2, 0, 1, -1],
    [2, 1, 0, -1],
  ],
  4: [
    [0, 1, 2, 3],
    [0, 1, 3, 2],
    [0, 2, 1, 3],
    [0, 2, 3, 1],
    [0, 3, 1, 2],
    [0, 3, 2, 1],
  ],
}

interface Way {
  readonly changed: number
  /** Sorts of the batch that is made next, round it. */
  readonly sides: Sides | null
}

const NONE: Way = { changed: Number.POSITIVE_INFINITY, sides: null }

/**
 * The best of all ways to share out the geese; null where they are too many to try.
 *
 * It is long because its inner functions call each other and share one table of what is known; taken apart, each would need all of it handed in.
 */
function everyWay(geese: readonly Wings[], batches: number, ways: number): Sides[] | null {
  const sorts = new Map<string, number[]>()
  geese.forEach((wings, goose) => {
    const name = wings.join(' ')
    sorts.set(name, [...(sorts.get(name) ?? []), goose])
  })
  const members = [...sorts.values()]
  const sort = members.length
  const threes = ((sort + 1) * (sort + 2) * (sort + 3)) / 6
  const states = members.reduce((product, { length }) => product * (length + 1), batches)
  if (states * threes > ways) return null
  const looks = members.map((of) => geese[of[0] as number] as Wings)
  const known = new Map<string, Way>()
  const groups = new Map<string, Way>()

  const group = (chosen: readonly number[]): Way => {
    const name = chosen.join()
    let best = groups.get(name)
    if (best !== undefined) return best
    best = NONE
    for (const order of ORDERS[chosen.length] as readonly Sides[]) {
      const sides = order.map((place) => (place < 0 ? -1 : (chosen[place] as number))) as unknown as Sides
      const changed = cornersThatDiffer(sides.map((one) => looks[one]))
      if (changed < best.changed) best = { changed, sides }
    }
    groups.set(name, best)
    return best
  }

  const best = (left: number[], many: number): Way => {
    const first = left.findIndex((count) => count > 0)
    if (first < 0) return { changed: 0, sides: null }
    if (left.reduce((sum, count) => sum + count, 0) > 4 * many) return NONE
    const name = `${many} ${left.join()}`
    const before = known.get(name)
    if (before !== undefined) return before
    let found = NONE
    const choose = (chosen: readonly number[], from: number): void => {
      const here = group(chosen)
      const after = best(left, many - 1).changed + here.changed
      if (after < found.changed) found = { changed: after, sides: here.sides }
      if (chosen.length === 4) return
      for (let next = from; next < left.length; next++) {
        if (left[next] === 0) continue
        left[next] = (left[next] as number) - 1
        choose([...chosen, next], next)
        left[next] = (left[next] as number) + 1
      }
    }
    left[first] = (left[first] as number) - 1
    choose([first], first)
    left[first] = (left[first] as number) + 1
    known.set(name, found)
    return found
  }

  const left = members.map(({ length }) => length)
  const shared: Sides[] = []
  for (let many = batches; ; many--) {
    const { sides } = best(left, many)
    if (sides === null) return shared
    shared.push(
      sides.map((one) => {
        if (one < 0) return -1
        left[one] = (left[one] as number) - 1
        return (members[one] as number[])[left[one] as number] as number
      }) as unknown as Sides,
    )
  }
}

/** The batches of a plan that use most geese; those of the others go wherever a side is empty. */
function sharedOut(geese: readonly Wings[], walks: readonly (readonly string[])[], batches: number): Sides[] {
  const waiting = new Map<string, number[]>()
  geese.forEach((wings, goose) => {
    const name = wings.join(' ')
    waiting.set(name, [...(waiting.get(name) ?? []), goose])
  })
  const full = walks.map((corners) => corners.map((fabric, side) => waiting.get(`${corners[(side + 1) % 4]} ${fabric}`)?.pop() ?? -1))
  const used = (four: readonly number[]): number => four.filter((goose) => goose >= 0).length
  full.sort((one, other) => used(other) - used(one))
  const over = full.slice(batches).flatMap((four) => four.filter((goose) => goose >= 0))
  const kept = Array.from({ length: batches }, (_, place) => full[place] ?? [-1, -1, -1, -1])
  return kept.map((four) => four.map((goose) => (goose >= 0 ? goose : (over.pop() ?? -1))) as unknown as Sides)
}

/** Geese, or a goose and an empty side, change places as long as fewer corners differ. */
function swapped(geese: readonly Wings[], sides: readonly Sides[]): Sides[] {
  const places = sides.flat()
  const at = (place: number): Wings | undefined => geese[places[place] as number]
  const around = (place: number): number => {
    const start = place - (place % 4)
    return cornersThatDiffer([at(start), at(start + 1), at(start + 2), at(start + 3)])
  }
  const cost = (one: number, other: number): number => around(one) + (one - (one % 4) === other - (other % 4) ? 0 : around(other))
  const exchange = (one: number, other: number): void => {
    ;[places[one], places[other]] = [places[other] as number, places[one] as number]
  }
  let tries = 0
  for (let better = true; better; ) {
    better = false
    for (let one = 0; one < places.length; one++) {
      if (around(one) === 0) continue
      for (let other = 0; other < places.length && tries < MOST_SWAPS; other++) {
        tries++
        const before = cost(one, other)
        exchange(one, other)
        if (cost(one, other) < before) better = true
        else exchange(one, other)
      }
    }
  }
  return sides.map((_four, batch) => places.slice(4 * batch, 4 * batch + 4) as unknown as Sides)
}
