/**
 * How a sewn block differs from the one that was laid out, and the fewest moves to put it right.
 *
 * In      the block as it was laid, and the same block as sewn: units turned, mirrored, swapped, or the whole block turned.
 * Out     a difference for each place that looks different, and moves that turn the sewn block into the laid one: the whole turned, a unit turned where it
 *         is, two units swapped (each turned as it goes), a unit sewn again.
 * How     units with the same picture are interchangeable. A place that only shows its unit turned costs one move. The other places form cycles: each holds
 *         what another needs; a cycle of k places takes k − 1 swaps, and a chain that needs a unit no place has takes one unit sewn again as well. So the
 *         fewest moves come from the most cycles: found by trying all for up to `TRIED` places, shortest cycles first beyond. The whole block
 *         is tried in each turn that fits, and the one with the fewest moves is taken.
 */
import { unitPlaces } from '../block/unitPlaces.ts'
import { toFile } from '../exact/rational.ts'
import { boxOf } from '../units/unitBox.ts'
import { pictureOf, viewOf } from '../units/unitPicture.ts'
import { turnBlock } from './unitEdits.ts'
import type { Block, Position, Turn, Unit } from '../values/block.ts'
import { type Message, message } from '../values/messages.ts'
import type { UnitPlace } from '../values/unitPlace.ts'

type MovedHow = 'turned' | 'mirrored' | 'swapped' | 'other' | 'missing'

interface SewnDifference {
  /** Top left of the place, in cells. */
  readonly at: readonly [Position, Position]
  /** The unit laid there, and the one sewn there. */
  readonly laid: string
  readonly sewn: string | null
  readonly how: MovedHow
  readonly message: Message
}

export type Move =
  | { readonly do: 'turn-block'; readonly quarters: Turn; readonly message: Message }
  | { readonly do: 'turn'; readonly what: string; readonly quarters: Turn; readonly message: Message }
  | { readonly do: 'swap'; readonly what: readonly [string, string]; readonly message: Message }
  | { readonly do: 'sew'; readonly what: string; readonly message: Message }

interface AsSewn {
  readonly differences: readonly SewnDifference[]
  readonly moves: readonly Move[]
  /** Whether no fewer moves are enough. */
  readonly proved: boolean
}

/** Up to this many places, every way of grouping them into cycles is tried. */
const TRIED = 12

export function asSewn(laid: Block, sewn: Block): AsSewn {
  const square = laid.grid.columns === laid.grid.rows
  const sides: readonly Turn[] = square ? [0, 1, 2, 3] : [0, 2]
  return sides.map((turn) => seenFrom(laid, turnedBlock(sewn, turn), turn)).reduce((best, one) => (one.moves.length < best.moves.length ? one : best))
}

/** The edit works on a copy, as every edit does. */
function turnedBlock(block: Block, turn: Turn): Block {
  const copy = JSON.parse(JSON.stringify(block))
  for (let quarter = 0; quarter < turn; quarter++) turnBlock().change(copy)
  return copy
}

interface Place {
  readonly laid: Unit
  readonly sewn: Unit | null
  readonly need: string
  readonly has: string
}

function seenFrom(laid: Block, sewn: Block, turn: Turn): AsSewn {
  const there = new Map(sewn.units.map((unit) => [boxKey(unit), unit]))
  const places = laid.units
    .map((unit): Place => {
      const other = there.get(boxKey(unit)) ?? null
      return { laid: unit, sewn: other, need: pictureOf(unit), has: other === null ? '' : pictureOf(other) }
    })
    .filter(({ laid: own, sewn: other }) => other === null || viewOf(own) !== viewOf(other))
  const turned = places.filter(({ need, has }) => need === has)
  const strange = places.filter(({ need, has }) => need !== has)
  const { cycles, proved } = inCycles(strange)
  const moves: Move[] = []
  const at = unitPlaces(laid)
  if (turn !== 0) moves.push({ do: 'turn-block', quarters: turn, message: message('move-turn-block', { quarters: turn }) })
  for (const { laid: own, sewn: other } of turned) {
    const quarters = quartersTo(other as Unit, own)
    moves.push({ do: 'turn', what: own.id, quarters, message: message('move-turn', { unit: at(own.id), quarters }) })
  }
  for (const cycle of cycles) {
    const [first, ...rest] = cycle.places as readonly [Place, ...Place[]]
    for (const place of rest)
      moves.push({
        do: 'swap',
        what: [first.laid.id, place.laid.id],
        message: message('move-swap', { units: [at(first.laid.id), at(place.laid.id)] }),
      })
    if (!cycle.closed)
      moves.push({
        do: 'sew',
        what: first.laid.id,
        message: message(isMirrored(first) ? 'move-sew-mirrored' : 'move-sew', { unit: at(first.laid.id) }),
      })
  }
  const held = new Set(strange.map(({ has }) => has))
  return { differences: places.map((place) => differenceAt(place, held, at(place.laid.id))), moves, proved }
}

function boxKey(unit: Unit): string {
  const { low, high } = boxOf(unit)
  return [...low, ...high].map(({ n, d }) => `${n}/${d}`).join()
}

const quartersTo = (sewn: Unit, laid: Unit): Turn => ([1, 2, 3] as const).find((turn) => viewOf(sewn, turn) === viewOf(laid)) ?? 2

/** Only a unit in a box has a mirror image of its kind; a free patch is turned over in the hand. */
const isMirrored = ({ need, sewn }: Place): boolean =>
  sewn !== null && sewn.kind !== 'polygon' && pictureOf({ ...sewn, mirror: sewn.mirror !== true }) === need

function differenceAt(place: Place, held: ReadonlySet<string>, unit: UnitPlace): SewnDifference {
  const { laid, sewn, need, has } = place
  const { low } = boxOf(laid)
  const how: MovedHow = sewn === null ? 'missing' : need === has ? 'turned' : isMirrored(place) ? 'mirrored' : held.has(need) ? 'swapped' : 'other'
  const reason =
    how === 'turned' ? message('unit-turned', { unit, quarters: sewn === null ? 0 : quartersTo(sewn, laid) }) : message(`unit-${how}`, { unit })
  return { at: [toFile(low[0]), toFile(low[1])], laid: laid.id, sewn: sewn?.id ?? null, how, message: reason }
}

interface Cycle {
  /** Each holds what the next one needs. */
  readonly places: readonly Place[]
  /** Whether the last holds what the first needs; else the first must be sewn again. */
  readonly closed: boolean
}

function inCycles(places: readonly Place[]): { cycles: Cycle[]; proved: boolean } {
  const tried = places.length <= TRIED
  const found = tried ? mostCycles(places) : shortestFirst(places)
  const used = new Set(found.flat())
  const left = new Set([...places.keys()].filter((place) => !used.has(place)))
  const cycles: Cycle[] = found.map((cycle) => ({ places: cycle.map((place) => places[place] as Place), closed: true }))
  // The places left form chains: each needs a unit that no place has.
  while (left.size > 0) {
    const held = new Set([...left].map((place) => (places[place] as Place).has))
    const first = [...left].find((place) => !held.has((places[place] as Place).need)) ?? ([...left][0] as number)
    const chain: Place[] = []
    for (let next: number | undefined = first; next !== undefined; ) {
      left.delete(next)
      const { has } = places[next] as Place
      chain.push(places[next] as Place)
      next = [...left].find((place) => (places[place] as Place).need === has)
    }
    cycles.push({ places: chain, closed: false })
  }
  return { cycles, proved: tried }
}

/** The most cycles that use each place at most once. */
function mostCycles(places: readonly Place[]): number[][] {
  const known = new Map<number, number[][]>()
  const most = (free: number): number[][] => {
    if (free === 0) return []
    const seen = known.get(free)
    if (seen !== undefined) return seen
    const first = 31 - Math.clz32(free & -free)
    // The first place is either in no cycle or in one of these.
    let best = most(free & ~(1 << first))
    const extend = (cycle: readonly number[], left: number): void => {
      const { has } = places[cycle.at(-1) as number] as Place
      if (has === (places[first] as Place).need) {
        const rest = most(left)
        if (rest.length + 1 > best.length) best = [[...cycle], ...rest]
        return
      }
      places.forEach(({ need }, next) => {
        if ((left >> next) & 1 && need === has) extend([...cycle, next], left & ~(1 << next))
      })
    }
    extend([first], free & ~(1 << first))
    known.set(free, best)
    return best
  }
  return most(2 ** places.length - 1)
}

/** Pairs that swap first, then for each place that is left the shortest cycle through it. */
function shortestFirst(places: readonly Place[]): number[][] {
  const left = new Set(places.keys())
  const found: number[][] = []
  const waiting = new Map<string, number[]>()
  places.forEach(({ need, has }, place) => {
    const other = waiting.get(`${has}\n${need}`)?.pop()
    if (other === undefined) waiting.set(`${need}\n${has}`, [...(waiting.get(`${need}\n${has}`) ?? []), place])
    else {
      found.push([other, place])
      left.delete(other)
      left.delete(place)
    }
  })
  for (const first of [...left]) {
    const cycle = left.has(first) ? cycleFrom(places, left, first) : null
    if (cycle === null) continue
    found.push(cycle)
    for (const place of cycle) left.delete(place)
  }
  return found
}

function cycleFrom(places: readonly Place[], left: ReadonlySet<number>, first: number): number[] | null {
  const before = new Map<number, number>()
  const queue = [first]
  for (const place of queue) {
    const { has } = places[place] as Place
    if (has === (places[first] as Place).need) {
      const cycle = [place]
      while (cycle[0] !== first) cycle.unshift(before.get(cycle[0] as number) as number)
      return cycle
    }
    for (const next of left)
      if (next !== first && !before.has(next) && (places[next] as Place).need === has) {
        before.set(next, place)
        queue.push(next)
      }
  }
  return null
}
