/**
 * The joining order with the fewest bends in set-in seams, then the fewest set-in seams, then the fewest partial ones.
 *
 * In      the plane, the stretches on the outlines of some parts, and up to twelve items (pieces already sewn) that touch.
 * Out     a tree of joins over them.
 * How     every connected set of items has a least cost: the best over all its divisions into two such sets. A division whose seam
 *         bends at one dot may instead close a straight seam that was left open there; so each set also has a least cost "with the
 *         seam on this line open at this dot". Sets are tried from the whole down and every answer is kept, so the search ends, and it is complete:
 *         a division is skipped only where its seam and its two sets cannot cost less than what was found.
 */
import { OUTSIDE, type Plane, type PlaneEdge } from '../plane/subdivide.ts'
import { type Contact, contactOf, keepsItsSide, type StraightRun } from './contact.ts'
import type { Tree } from './values.ts'

export interface SewnItem {
  readonly tree: Tree
  readonly patches: readonly number[]
}

interface Best {
  readonly cost: number
  readonly tree: Tree | null
}

const NEVER: Best = { cost: Number.POSITIVE_INFINITY, tree: null }

/** Costs are compared as one number: at most eleven joins are made here, so a set-in seam outweighs all partial ones, and a bend all set-in ones. */
const PARTIAL = 1
const SET_IN = 2 ** 10
const BEND = 2 ** 20

/** A seam that bends is a stop and a pivot at each bend; one that only ends in an inner corner is set in without a bend. */
const costOf = ({ straight, runs }: Contact): number => (straight ? 0 : SET_IN + BEND * (runs.length - 1))

interface Touch {
  readonly a: number
  readonly b: number
  readonly edge: number
  readonly line: number
}

/** Whether two items lie on the two sides of a division. */
const parted = (near: number, far: number, a: number, b: number): boolean =>
  ((near >> a) & (far >> b) & 1) === 1 || ((near >> b) & (far >> a) & 1) === 1

/**
 * The tree of joins over all items with the fewest bends, then the fewest set-in seams, then the fewest partial ones; `edges` are those on the items'
 * outlines.
 *
 * It is long because `best` and `open` call each other and share what is known of every set; taken apart, each would need all of it handed in.
 */
export function fewestBends(plane: Plane, edges: readonly number[], items: readonly SewnItem[]): Tree {
  const itemOf = itemsByPatch(items)
  const touches = touching(plane, edges, itemOf)
  const beside = items.map((_, item) => touches.reduce((mask, { a, b }) => (a === item ? mask | (1 << b) : b === item ? mask | (1 << a) : mask), 0))
  const hangsTogether = connected(beside)
  const known = new Map<number, Best>()
  const knownOpen = new Map<string, Best>()
  const contacts = new Map<number, Contact>()
  const whole = 2 ** items.length - 1

  const contact = (near: number, far: number): Contact => {
    const key = near * 4096 + far
    const seen = contacts.get(key)
    if (seen !== undefined) return seen
    const edges: number[] = []
    for (const { a, b, edge } of touches) if (parted(near, far, a, b)) edges.push(edge)
    const made = contactOf(plane, edges, sideIn(itemOf, near, far))
    contacts.set(key, made)
    return made
  }

  /** On how many lines two sets share something, 3 meaning three or more. On two, their seam bends; on three, more than one seam would be left open. */
  const linesBetween = (near: number, far: number): number => {
    let [one, other] = [-1, -1]
    for (const { a, b, line } of touches) {
      if (line === one || line === other || !parted(near, far, a, b)) continue
      if (other !== -1) return 3
      if (one === -1) one = line
      else other = line
    }
    return other === -1 ? 1 : 2
  }

  /** Every division of a set into two connected sets. */
  const divisions = (set: number, each: (near: number, far: number) => boolean): void => {
    const lowest = set & -set
    const rest = set ^ lowest
    for (let some = (rest - 1) & rest; ; some = (some - 1) & rest) {
      const near = some | lowest
      const far = set ^ near
      if (far !== 0 && hangsTogether(near) && hangsTogether(far) && each(near, far)) return
      if (some === 0) return
    }
  }

  const best = (set: number): Best => {
    const seen = known.get(set)
    if (seen !== undefined) return seen
    if ((set & (set - 1)) === 0) return { cost: 0, tree: (items[31 - Math.clz32(set)] as SewnItem).tree }
    let found = NEVER
    const offer = (one: Best, other: Best, near: boolean, seam: number): void => {
      const cost = one.cost + other.cost + seam
      if (cost < found.cost)
        found = { cost, tree: { sides: near ? [one.tree as Tree, other.tree as Tree] : [other.tree as Tree, one.tree as Tree], stage: 'section' } }
    }
    divisions(set, (near, far) => {
      // The two sets alone may already cost too much; a seam on two lines is at least partial, one on three is set in round two bends.
      const least = [0, PARTIAL, SET_IN + 2 * BEND][linesBetween(near, far) - 1] as number
      if (least >= found.cost) return false
      const [one, other] = [best(near), best(far)]
      if (one.cost + other.cost + least >= found.cost) return false
      const seam = contact(near, far)
      if (seam.runs.length === 0) return false
      offer(one, other, true, costOf(seam))
      if (!seam.straight) {
        for (const { run, dot } of closable(plane, seam, sideIn(itemOf, near, far))) {
          offer(open(near, dot, run.line), other, true, PARTIAL)
          offer(open(far, dot, run.line), one, false, PARTIAL)
        }
      }
      return found.cost === 0
    })
    known.set(set, found)
    return found
  }

  /** The best tree for a set in which some straight seam on `line` ends at `dot`, and is left open there. */
  const open = (set: number, dot: number, line: number): Best => {
    if ((set & (set - 1)) === 0) return NEVER
    const key = `${set},${dot},${line}`
    const seen = knownOpen.get(key)
    if (seen !== undefined) return seen
    let found = NEVER
    divisions(set, (near, far) => {
      // A set that leaves this seam open leaves no other open, so a seam that bends is set in.
      const lines = linesBetween(near, far)
      const least = lines === 1 ? 0 : SET_IN + BEND * (lines - 1)
      if (least >= found.cost || best(near).cost + best(far).cost + least >= found.cost) return false
      const seam = contact(near, far)
      if (seam.runs.length === 0) return false
      const run = seam.runs[0] as StraightRun
      const opens = seam.straight && run.line === line && (run.dots[0] === dot || run.dots.at(-1) === dot)
      const choices = opens
        ? [[best(near), best(far)] as const]
        : [[open(near, dot, line), best(far)] as const, [best(near), open(far, dot, line)] as const]
      for (const [one, other] of choices) {
        const cost = one.cost + other.cost + costOf(seam)
        if (cost < found.cost) found = { cost, tree: { sides: [one.tree as Tree, other.tree as Tree], stage: 'section' } }
      }
      return found.cost === 0
    })
    knownOpen.set(key, found)
    return found
  }

  const found = best(whole)
  if (found.tree === null) throw new Error('impossible: a piece that hangs together and cannot be joined')
  return found.tree
}

/** Ends of a bent contact that may be the rest of a seam left open: the run, and the dot where it turns. */
function closable(plane: Plane, { runs }: Contact, side: (patch: number) => -1 | 0 | 1): { run: StraightRun; dot: number }[] {
  if (runs.length !== 2) return []
  const [first, second] = runs as readonly [StraightRun, StraightRun]
  const found: { run: StraightRun; dot: number }[] = []
  const dot = second.dots[0] as number
  if (keepsItsSide(plane, first, 0, side)) found.push({ run: second, dot })
  if (keepsItsSide(plane, second, second.dots.length - 1, side)) found.push({ run: first, dot })
  return found
}

function sideIn(itemOf: ReadonlyMap<number, number>, near: number, far: number): (patch: number) => -1 | 0 | 1 {
  return (patch) => {
    const item = patch === OUTSIDE ? undefined : itemOf.get(patch)
    return item === undefined ? -1 : (near >> item) & 1 ? 0 : (far >> item) & 1 ? 1 : -1
  }
}

function itemsByPatch(items: readonly SewnItem[]): Map<number, number> {
  return new Map(items.flatMap(({ patches }, item) => patches.map((patch) => [patch, item] as const)))
}

function touching(plane: Plane, edges: readonly number[], itemOf: ReadonlyMap<number, number>): Touch[] {
  return edges.flatMap((edge) => {
    const { plus, minus, line } = plane.edges[edge] as PlaneEdge
    const a = itemOf.get(plus)
    const b = itemOf.get(minus)
    return a === undefined || b === undefined || a === b ? [] : [{ a, b, edge, line }]
  })
}

function connected(beside: readonly number[]): (set: number) => boolean {
  const [unknown, apart, together] = [0, 1, 2]
  const known = new Uint8Array(2 ** beside.length)
  return (set) => {
    if (known[set] !== unknown) return known[set] === together
    let reached = set & -set
    for (let grown = -1; grown !== reached; ) {
      grown = reached
      beside.forEach((mask, item) => {
        if ((reached >> item) & 1) reached |= mask & set
      })
    }
    known[set] = reached === set ? together : apart
    return reached === set
  }
}

/**
 * Join items that share a whole straight side, small ones first, until few enough are left. Only where the two touch along one line and nowhere else, not
 * even at a point: then each piece is without a hole or a pinch, and of such pieces some two can always be joined.
 */
export function joinNeighbours(plane: Plane, edges: readonly number[], items: readonly SewnItem[], most: number): SewnItem[] {
  let left = [...items]
  while (left.length > most) {
    const itemOf = itemsByPatch(left)
    const pairs = new Map<number, number[]>()
    const dots = outlineDots(plane, edges, itemOf, left.length)
    for (const { a, b, edge } of touching(plane, edges, itemOf)) {
      const key = Math.min(a, b) * left.length + Math.max(a, b)
      const there = pairs.get(key)
      if (there === undefined) pairs.set(key, [edge])
      else there.push(edge)
    }
    const joined = bestPairs(plane, left, itemOf, pairs, dots, Math.min(left.length - most, Math.max(1, Math.floor(left.length / ROUND))))
    if (joined.length === 0) throw new Error('impossible: a piece that hangs together and cannot be joined')
    const used = new Set(joined.flat())
    const made = joined.map(([a, b]): SewnItem => {
      const [one, other] = [left[a] as SewnItem, left[b] as SewnItem]
      return { tree: { sides: [one.tree, other.tree], stage: 'section' }, patches: [...one.patches, ...other.patches] }
    })
    left = [...left.filter((_, item) => !used.has(item)), ...made]
  }
  return left
}

/** With many items, one pair in this many is joined before all pairs are compared again. */
const ROUND = 16

/** The best pairs with no item in common, all leaving as few loose ends as the first. */
function bestPairs(
  plane: Plane,
  items: readonly SewnItem[],
  itemOf: ReadonlyMap<number, number>,
  pairs: ReadonlyMap<number, readonly number[]>,
  dots: readonly ReadonlySet<number>[],
  most: number,
): [number, number][] {
  const offers: { a: number; b: number; loose: number; size: number }[] = []
  for (const [key, edges] of pairs) {
    const a = Math.floor(key / items.length)
    const b = key % items.length
    const side = (patch: number): -1 | 0 | 1 => (itemOf.get(patch) === a ? 0 : itemOf.get(patch) === b ? 1 : -1)
    const contact = contactOf(plane, edges, side)
    if (contact.runs.length === 0) continue
    const size = (items[a] as SewnItem).patches.length + (items[b] as SewnItem).patches.length
    const loose = contact.straight ? looseEnds(plane, contact.runs[0] as StraightRun, side) : 2 + contact.runs.length
    if (!pinched(contact, dots[a] as ReadonlySet<number>, dots[b] as ReadonlySet<number>)) offers.push({ a, b, loose, size })
  }
  offers.sort((one, other) => one.loose - other.loose || one.size - other.size)
  const used = new Set<number>()
  const found: [number, number][] = []
  for (const { a, b, loose } of offers) {
    if (found.length === most || loose !== offers[0]?.loose) break
    if (used.has(a) || used.has(b)) continue
    used.add(a).add(b)
    found.push([a, b])
  }
  return found
}

function outlineDots(plane: Plane, edges: readonly number[], itemOf: ReadonlyMap<number, number>, items: number): Set<number>[] {
  const dots = Array.from({ length: items }, () => new Set<number>())
  for (const edge of edges) {
    const { a, b, plus, minus } = plane.edges[edge] as PlaneEdge
    const [one, other] = [itemOf.get(plus), itemOf.get(minus)]
    if (one === other) continue
    for (const item of [one, other]) if (item !== undefined) dots[item]?.add(a).add(b)
  }
  return dots
}

/** Whether two pieces touch at a dot that is not on the line along which they would be joined. */
function pinched({ runs }: Contact, one: ReadonlySet<number>, other: ReadonlySet<number>): boolean {
  const line = new Set(runs.flatMap((run) => run.dots))
  const [small, large] = one.size < other.size ? [one, other] : [other, one]
  for (const dot of small) if (large.has(dot) && !line.has(dot)) return true
  return false
}

/** How many ends of a straight seam would leave an inner corner in the piece that it makes. */
function looseEnds(plane: Plane, run: StraightRun, side: (patch: number) => -1 | 0 | 1): number {
  return [0, run.dots.length - 1].filter((place) => {
    const end = run.dots[place] as number
    const carriesOn = (plane.around[end] ?? []).filter((edge) => (plane.edges[edge] as PlaneEdge).line === run.line)
    return carriesOn.some((edge) => {
      const { plus, minus } = plane.edges[edge] as PlaneEdge
      const [p, m] = [side(plus), side(minus)]
      return (p === -1) !== (m === -1)
    })
  }).length
}
