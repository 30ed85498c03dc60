/**
 * Other colourings of a block from its own fabrics: which patch takes which, the most symmetric first.
 *
 * In      a block that has been read, and the maker's request: which patches may change, which fabrics they may take.
 * Out     colourings, each different from the present one and from every other however the block is turned or mirrored; never more than `MOST_COLOURINGS`.
 * How     for each group of the block's own turns and mirrors, the largest first, patches that the group maps onto each other take the same fabric: so
 *         each choice of a fabric for each such set of patches is a colouring that the group leaves unchanged. Those that change the fewest sets come
 *         first; colourings found before are skipped.
 * Exact   whole numbers. The order is always the same.
 */
import { type Laid, lay } from '../block/lay.ts'
import type { PatchName } from '../edits/fabricEdits.ts'
import type { Block } from '../values/block.ts'
import { doubleArea } from '../plane/points.ts'
import { batchesIn, leastPossible } from './batchCount.ts'
import { groupsOfWays, orbitsOf, type Symmetry, symmetriesOf } from './blockSymmetry.ts'

export const MOST_COLOURINGS = 300
/** Limits of the search: colourings tried, and patches looked at in all of them. */
const MOST_TRIES = 20_000
const MOST_LOOKS = 4_000_000
/** The limit where batches are counted: each try takes longer then. */
const MOST_COUNTED = 3_000

export interface ColouringRequest {
  /** `points`: all triangles except the bodies of geese; `all`: every patch. */
  readonly what: 'points' | 'all'
  /** Fabrics that the patches may take. */
  readonly fabrics: readonly string[]
  /** Patches of the background fabric stay. */
  readonly keepBackground: boolean
  /** Keep the number of patches of each fabric: they only change places. */
  readonly sameAmounts: boolean
  /** Only colourings that need as few batches as the number of geese allows. */
  readonly fewestBatches: boolean
}

export interface Colouring {
  /** Of each patch of `slots`. */
  readonly fabrics: readonly string[]
  /** How many of the block's own turns and mirrors leave it unchanged; 1: only the identity. */
  readonly symmetry: number
}

export interface Colourings {
  /** The patches that may change, and their numbers in the laid block. */
  readonly slots: readonly PatchName[]
  readonly patches: readonly number[]
  readonly background: string | null
  /** The block's colouring now. */
  readonly present: Colouring
  readonly colourings: readonly Colouring[]
  /** Whether more may be found than are made. */
  readonly more: boolean
}

/** The fabric that covers most of the block, not counting borders; the first on the list where several tie. */
export const backgroundOf = (block: Block): string | null => backgroundIn(lay(block))

function backgroundIn({ block, patches }: Laid): string | null {
  const areas = new Map<string, bigint>()
  for (const { unit, fabric, corners } of patches) if (unit >= 0) areas.set(fabric, (areas.get(fabric) ?? 0n) + doubleArea(corners))
  return block.fabrics.reduce<string | null>((best, { id }) => ((areas.get(id) ?? 0n) > (areas.get(best ?? '') ?? 0n) ? id : best), null)
}

/** All colourings of a laid block that a maker's request allows. */
export function colouringsOf(laid: Laid, request: ColouringRequest): Colourings {
  const background = backgroundIn(laid)
  const slots = slotsOf(laid, request, request.keepBackground ? background : null)
  const search = new Search(laid, slots, request)
  const present = search.colouring()
  search.run()
  return { slots: slots.map((slot) => nameOf(laid, slot)), patches: slots, background, present, colourings: search.sorted(), more: search.more }
}

const nameOf = (laid: Laid, patch: number): PatchName => {
  const { unit, name } = laid.patches[patch] as Laid['patches'][number]
  return { unit: laid.block.units[unit]?.id as string, name }
}

function slotsOf(laid: Laid, { what }: ColouringRequest, kept: string | null): number[] {
  return laid.patches.flatMap(({ unit, name, fabric, corners }, patch) => {
    if (unit < 0 || fabric === kept) return []
    const isPoint = corners.length === 3 && !(laid.block.units[unit]?.kind === 'goose' && name === 'goose')
    return what === 'all' || isPoint ? [patch] : []
  })
}

/** Patches that match: the block's own turns and mirrors map them onto each other. */
export function matchingPatches(block: Block): { readonly patches: readonly PatchName[]; readonly fabrics: readonly string[] }[] {
  const laid = lay(block)
  const own = laid.patches.flatMap(({ unit }, patch) => (unit >= 0 ? [patch] : []))
  return orbitsOf(symmetriesOf(laid), own).map((orbit) => ({
    patches: orbit.map((patch) => nameOf(laid, patch)),
    fabrics: [...new Set(orbit.map((patch) => laid.patches[patch]?.fabric as string))],
  }))
}

class Search {
  more = false
  private readonly slots: readonly number[]
  private readonly request: ColouringRequest
  private readonly ways: readonly Symmetry[]
  /** Ways that map the patches that may change onto each other. */
  private readonly kept: readonly Symmetry[]
  /** Fabrics by number: those of the patches first, so that what lies near the present colouring comes first. */
  private readonly fabrics: readonly string[]
  private readonly choices: readonly number[]
  /** The fabric of each patch of the block, by number; the search writes in it. */
  private readonly full: Uint16Array
  private readonly seen = new Set<string>()
  private readonly found: Colouring[] = []
  private readonly countBatches: (fabrics: readonly string[]) => number
  private readonly fewest: number
  private readonly amountsNow: string
  private tries: number

  constructor(laid: Laid, slots: readonly number[], request: ColouringRequest) {
    this.slots = slots
    this.request = request
    this.ways = symmetriesOf(laid)
    const wanted = new Set(slots)
    this.kept = this.ways.filter(({ to }) => slots.every((slot) => wanted.has(to[slot] as number)))
    const own = laid.patches.filter(({ unit }) => unit >= 0)
    const now = slots.map((slot) => own[slot]?.fabric as string)
    const allowed = request.sameAmounts ? now : request.fabrics
    const sorted = [...new Set([...now, ...request.fabrics])].filter((fabric) => allowed.includes(fabric))
    this.fabrics = [...new Set([...sorted, ...own.map(({ fabric }) => fabric)])]
    this.choices = sorted.map((_, number) => number)
    this.full = Uint16Array.from(own, ({ fabric }) => this.fabrics.indexOf(fabric))
    this.countBatches = batchesIn(laid)
    this.fewest = leastPossible(laid)
    this.tries = Math.min(request.fewestBatches ? MOST_COUNTED : MOST_TRIES, Math.max(MOST_COLOURINGS, Math.floor(MOST_LOOKS / (own.length + 1))))
    this.seen.add(this.nameOfLook())
    this.amountsNow = this.amounts()
  }

  run(): void {
    const now = Uint16Array.from(this.full)
    for (const group of groupsOfWays(this.kept)) {
      const orbits = orbitsOf(group, this.slots)
      const rest = orbits.map(([first]) => this.allowed(now[first as number] as number))
      orbits.forEach((orbit, at) => {
        this.fill(orbit, rest[at] as number)
      })
      for (let changed = 0; changed <= orbits.length && !this.more; changed++) this.change(orbits, rest, 0, changed)
      this.full.set(now)
    }
  }

  /** The most symmetric first; ties in the order found. */
  sorted(): Colouring[] {
    return this.found
      .map((colouring, place) => ({ colouring, place }))
      .sort((one, other) => other.colouring.symmetry - one.colouring.symmetry || one.place - other.place)
      .map(({ colouring }) => colouring)
  }

  private allowed(fabric: number): number {
    return this.choices.includes(fabric) ? fabric : (this.choices[0] ?? fabric)
  }

  private fill(orbit: readonly number[], fabric: number): void {
    for (const patch of orbit) this.full[patch] = fabric
  }

  /** Gives other fabrics to more and more orbits, from one up: colourings that change the fewest come first. */
  private change(orbits: readonly (readonly number[])[], rest: readonly number[], from: number, changed: number): void {
    if (changed === 0) return this.take()
    for (let at = from; at + changed <= orbits.length && !this.more; at++) {
      const orbit = orbits[at] as readonly number[]
      for (const fabric of this.choices) {
        if (fabric === rest[at] || this.more) continue
        this.fill(orbit, fabric)
        this.change(orbits, rest, at + 1, changed - 1)
      }
      this.fill(orbit, rest[at] as number)
    }
  }

  private take(): void {
    if (this.tries-- <= 0 || this.found.length >= MOST_COLOURINGS) {
      this.more = true
      return
    }
    if (this.request.sameAmounts && this.amounts() !== this.amountsNow) return
    const look = this.nameOfLook()
    if (this.seen.has(look)) return
    this.seen.add(look)
    if (!this.request.fewestBatches || this.countBatches(this.looks()) <= this.fewest) this.found.push(this.colouring())
  }

  /** The colouring in `full` now. */
  colouring(): Colouring {
    return {
      fabrics: this.slots.map((slot) => this.fabrics[this.full[slot] as number] as string),
      symmetry: this.kept.filter(({ to }) => this.staysUnder(to)).length,
    }
  }

  private looks(): string[] {
    return Array.from(this.full, (fabric) => this.fabrics[fabric] as string)
  }

  private amounts(): string {
    return this.slots
      .map((slot) => this.full[slot] as number)
      .sort((a, b) => a - b)
      .join()
  }

  private staysUnder(to: readonly number[]): boolean {
    return this.slots.every((slot) => this.full[to[slot] as number] === this.full[slot])
  }

  /** One name for all turns and mirror images of the look. */
  private nameOfLook(): string {
    let least = ''
    for (const { to } of this.ways) {
      const seen = new Uint16Array(to.length)
      to.forEach((place, patch) => {
        seen[place] = this.full[patch] as number
      })
      const name = textOf(seen)
      if (least === '' || name < least) least = name
    }
    return least
  }
}

/** So many numbers at once are given to a function. */
const AT_ONCE = 10_000

function textOf(numbers: Uint16Array): string {
  let text = ''
  for (let from = 0; from < numbers.length; from += AT_ONCE) text += String.fromCharCode(...numbers.subarray(from, from + AT_ONCE))
  return text
}
