/**
 * Sews a plan: finds the line of every join on the plane.
 *
 * In      the laid patches, their plane, and a tree of parts. Units are sewn once for all plans of a block.
 * Out     seams in sewing order, units first, rows before the block, borders last; each with its path, its bends and its kind.
 * How     every piece keeps the list of the stretches on its outline; joining walks the shorter list, so sewing a block takes near-linear time.
 */
import type { Laid, SewnPatches } from '../block/lay.ts'
import { OUTSIDE, type Plane, type PlaneEdge } from '../plane/subdivide.ts'
import { contactOf } from './contact.ts'
import { carriedOn, lineOf } from './partialSeams.ts'
import type { Branch, Seam, Stage, Tree } from './values.ts'

type Draft = { -readonly [key in keyof Seam]: Seam[key] }

interface Step {
  readonly sides: readonly [number, number]
  readonly stage: Stage
  readonly unit: number
}

/** All units sewn: every plan of a block begins with these. */
interface SewnUnits {
  readonly seams: readonly Seam[]
  /** The piece each part has become. */
  readonly made: readonly number[]
  readonly pieces: Pieces
}

/** Sews every unit by itself, as its kind says. */
export function sewUnits(laid: Laid, plane: Plane): SewnUnits {
  const steps: Step[] = []
  const patches = laid.patches.length
  const inside = (sewn: SewnPatches, unit: number): number => {
    if (typeof sewn === 'number') return sewn
    const sides = [inside(sewn[0], unit), inside(sewn[1], unit)] as const
    steps.push({ sides, stage: 'unit', unit })
    return patches + steps.length - 1
  }
  const made = laid.parts.map((part, unit) => inside(part.sewn, unit))
  const pieces = new Pieces(plane, patches)
  const seams: Draft[] = []
  sewSteps(plane, steps, pieces, seams)
  return { seams, made, pieces }
}

/** The whole block: the seams of its units, then those of the plan in sewing order. */
export function sew(laid: Laid, plane: Plane, { seams: inUnits, made, pieces }: SewnUnits, tree: Tree): Seam[] {
  const patches = laid.patches.length
  const pieceOf = new Map<Tree, number>()
  const piece = (node: Tree): number => (typeof node === 'number' ? (made[node] as number) : (pieceOf.get(node) as number))
  const steps = inSewingOrder(postOrder(tree)).map((branch, index): Step => {
    pieceOf.set(branch, patches + inUnits.length + index)
    return { sides: [piece(branch.sides[0]), piece(branch.sides[1])], stage: branch.stage, unit: -1 }
  })
  const seams: Draft[] = [...inUnits]
  sewSteps(plane, steps, pieces.copy(), seams)
  return seams
}

function sewSteps(plane: Plane, steps: readonly Step[], pieces: Pieces, seams: Draft[]): void {
  const endsAt = new Map<number, Draft[]>()
  for (const { sides, stage, unit } of steps) {
    const [one, other] = sides
    const side = (patch: number): -1 | 0 | 1 => (patch === OUTSIDE ? -1 : pieces.holds(one, patch) ? 0 : pieces.holds(other, patch) ? 1 : -1)
    const contact = contactOf(plane, pieces.between(one, other), side)
    const { finishes, ...line } = lineOf(plane, contact, side, (dot) => endsAt.get(dot) ?? [])
    for (const { seam, run } of finishes) {
      seam.path = carriedOn(seam.path, run)
      seam.kind = 'partial'
      seam.finishedAfter = seams.length
    }
    const seam: Draft = { sides, stage, unit, finishedAfter: null, ...line }
    // A seam inside a unit is never left open, so no later seam needs its ends.
    if (unit < 0)
      for (const dot of [seam.path[0] as number, seam.path.at(-1) as number]) {
        const there = endsAt.get(dot)
        if (there === undefined) endsAt.set(dot, [seam])
        else there.push(seam)
      }
    seams.push(seam)
    pieces.join(one, other)
  }
}

const STAGES: readonly (readonly Stage[])[] = [['row', 'column', 'section'], ['block'], ['border']]

/** Joins in sewing order: rows before the block, borders last, each after the pieces it joins. */
export function inSewingOrder<Join extends { readonly stage: Stage }>(joins: readonly Join[]): Join[] {
  return STAGES.flatMap((stages) => joins.filter(({ stage }) => stages.includes(stage)))
}

/** The joins of a tree, each after those of its first side and then those of its second. */
export function postOrder(tree: Tree): Branch[] {
  const found: Branch[] = []
  const waiting: Tree[] = [tree]
  while (waiting.length > 0) {
    const node = waiting.pop() as Tree
    if (typeof node === 'number') continue
    found.push(node)
    waiting.push(node.sides[0], node.sides[1])
  }
  return found.reverse()
}

/** Pieces while they are being sewn: which piece holds which patch, and the stretches on each outline, linked one to the next. */
class Pieces {
  private readonly plane: Plane
  private readonly leader: Int32Array
  private readonly named: number[]
  /** By leader: the first and last stretch of its outline, and how many there are. Stretch 2e is edge e seen from `plus`, 2e + 1 from `minus`. */
  private readonly first: Int32Array
  private readonly last: Int32Array
  private readonly count: Int32Array
  private readonly next: Int32Array

  constructor(plane: Plane, patches: number, from?: Pieces) {
    this.plane = plane
    this.leader = from?.leader.slice() ?? Int32Array.from({ length: patches }, (_, patch) => patch)
    this.named = from === undefined ? Array.from({ length: patches }, (_, patch) => patch) : [...from.named]
    this.first = from?.first.slice() ?? new Int32Array(patches).fill(-1)
    this.last = from?.last.slice() ?? new Int32Array(patches).fill(-1)
    this.count = from?.count.slice() ?? new Int32Array(patches)
    this.next = from?.next.slice() ?? new Int32Array(plane.edges.length * 2).fill(-1)
    if (from !== undefined) return
    plane.edges.forEach(({ plus, minus }, edge) => {
      if (plus !== OUTSIDE) this.put(plus, 2 * edge)
      if (minus !== OUTSIDE) this.put(minus, 2 * edge + 1)
    })
  }

  copy(): Pieces {
    return new Pieces(this.plane, this.leader.length, this)
  }

  private put(leader: number, stretch: number): void {
    if (this.first[leader] === -1) this.first[leader] = stretch
    else this.next[this.last[leader] as number] = stretch
    this.last[leader] = stretch
    this.next[stretch] = -1
    this.count[leader] = (this.count[leader] as number) + 1
  }

  private lead(patch: number): number {
    let top = patch
    while (this.leader[top] !== top) {
      this.leader[top] = this.leader[this.leader[top] as number] as number
      top = this.leader[top] as number
    }
    return top
  }

  private leadOf(piece: number): number {
    return this.lead(this.named[piece] as number)
  }

  holds(piece: number, patch: number): boolean {
    return patch !== OUTSIDE && this.lead(patch) === this.leadOf(piece)
  }

  private bySize(one: number, other: number): [number, number] {
    const [a, b] = [this.leadOf(one), this.leadOf(other)]
    return (this.count[a] as number) <= (this.count[b] as number) ? [a, b] : [b, a]
  }

  between(one: number, other: number): number[] {
    const [small, large] = this.bySize(one, other)
    const found: number[] = []
    for (let stretch = this.first[small] as number; stretch !== -1; stretch = this.next[stretch] as number) {
      const edge = stretch >> 1
      const { plus, minus } = this.plane.edges[edge] as PlaneEdge
      if (plus === OUTSIDE || minus === OUTSIDE) continue
      const far = this.lead(plus) === small ? minus : plus
      if (this.lead(far) === large) found.push(edge)
    }
    return found
  }

  join(one: number, other: number): void {
    const [small, large] = this.bySize(one, other)
    this.leader[small] = large
    for (let stretch = this.first[small] as number; stretch !== -1; ) {
      const following = this.next[stretch] as number
      const { plus, minus } = this.plane.edges[stretch >> 1] as PlaneEdge
      if (plus === OUTSIDE || minus === OUTSIDE || this.lead(plus) !== this.lead(minus)) this.put(large, stretch)
      stretch = following
    }
    this.named.push(large)
  }
}
