/**
 * Patch a sewn plan after an edit inside some parts: seams that touch none of them stay as they were.
 *
 * Cost    recolouring or turning a unit then costs only the work round it: in a block of 400 units a quarter of sewing the whole plan again.
 *
 * In      a plan as it was sewn, every seam straight; then edits that keep every part in its place with the same number of patches, and keep the tree.
 * Out     the same results as `sew`, `meet` and `constraintsOf` give for the block from nothing; null where a seam is no longer straight: then everything
 *         is sewn again.
 * Why     patches and seams keep their numbers, since the parts and the tree do. Where a seam runs, what ends along it and its pressing constraint all
 *         depend on the dots it passes and the fabric beside them. So a seam that passes no dot of a changed part, before or after the edit,
 *         is unchanged.
 * Kept    the same seam object, wherever the pieces it joins are unchanged: other caches use it as their key.
 * How     the seam along an edge is the first that joins the patches on its two sides, found by walking up the tree from both.
 */
import type { Laid, SewnPatches } from '../../block/lay.ts'
import { contactOf } from '../../piecing/contact.ts'
import { lineOf } from '../../piecing/partialSeams.ts'
import type { Seam, Tree } from '../../piecing/values.ts'
import { OUTSIDE, type PlaneEdge, type Subdivision } from '../../plane/subdivide.ts'
import { clockwiseSide, crossedAt, endsOf, type SideOf } from '../meet.ts'
import type { SewnPlan } from '../plan.ts'
import { sideLookupOf } from '../sideLookup.ts'
import type { Crossing, SeamEnd, PressConstraint } from '../values.ts'
import { seamConstraint, withRequestedPressing } from '../pressRules.ts'

/** A sewn plan that can be patched. `plain`: the constraints before the maker's requests about places. */
export interface PatchableSewing extends SewnPlan {
  readonly plain: readonly PressConstraint[]
}

/** Parts that an edit changed inside, and the dots that were corners of their patches. */
export interface InnerEdit {
  readonly parts: readonly number[]
  readonly dots: readonly number[]
}

/** Whether all parts and patches keep their numbers: the same total of patches is not enough, as one part may lose one and another gain one. */
export function isNumberedTheSame(before: Laid, now: Laid, changed: readonly number[]): boolean {
  if (before.parts.length !== now.parts.length || before.patches.length !== now.patches.length) return false
  return changed.every((part) => isEqual(before.parts[part]?.patches ?? [], now.parts[part]?.patches ?? []))
}

/** Which parts an edit changes inside, and the dots of the plane at their corners. */
export function innerEdit(before: Laid, plane: Subdivision, parts: readonly number[]): InnerEdit {
  const corners = parts.flatMap((part) => (before.parts[part]?.patches ?? []).flatMap((patch) => before.patches[patch]?.corners ?? []))
  return { parts, dots: corners.map((corner) => plane.dotAt(corner) as number) }
}

/** Borders are joined to the same piece object each time. */
export function isSame(one: Tree, other: Tree): boolean {
  if (one === other) return true
  if (typeof one === 'number' || typeof other === 'number' || one.stage !== 'border' || other.stage !== 'border') return false
  return isSame(one.sides[0], other.sides[0]) && isSame(one.sides[1], other.sides[1])
}

/** Everything known of each seam, by its number. */
interface Known {
  readonly seams: Seam[]
  readonly clockwise: (0 | 1)[]
  readonly ends: (readonly [number, number])[]
  readonly plain: PressConstraint[]
}

export class PlanPatcher {
  readonly tree: Tree
  private readonly patches: number
  /** By part: its first own seam. */
  private readonly own: Int32Array
  /** By seam: the pieces on its two sides. By piece: the seam it goes into, and how many patches it holds. */
  private near: Int32Array
  private far: Int32Array
  private readonly into: Int32Array
  private readonly size: Int32Array
  private sideOf: SideOf
  private known: Known
  private crossings: readonly Crossing[]
  /** By seam: where what meets across it begins in the list; one more for the end of the list. */
  private starts: Int32Array

  /** Null for a plan with a seam that is not straight. */
  static from(laid: Laid, tree: Tree, sewn: PatchableSewing): PlanPatcher | null {
    return sewn.seams.every(({ kind }) => kind === 'straight') ? new PlanPatcher(laid, tree, sewn) : null
  }

  private constructor(laid: Laid, tree: Tree, { seams, sideOf, met, plain }: PatchableSewing) {
    this.tree = tree
    this.patches = laid.patches.length
    this.known = { seams: [...seams], clockwise: [...met.clockwise], ends: [...met.ends], plain: [...plain] }
    this.near = new Int32Array(seams.length)
    this.far = new Int32Array(seams.length)
    this.into = new Int32Array(this.patches + seams.length).fill(-1)
    this.size = new Int32Array(this.patches + seams.length).fill(1)
    this.own = new Int32Array(laid.parts.length).fill(-1)
    seams.forEach(({ sides, unit }, seam) => {
      this.join(seam, sides)
      if (unit >= 0 && this.own[unit] === -1) this.own[unit] = seam
    })
    this.sideOf = sideOf
    this.crossings = met.crossings
    this.starts = startsOf(met.crossings, seams.length)
  }

  private join(seam: number, [near, far]: readonly [number, number]): void {
    const piece = this.patches + seam
    this.near[seam] = near
    this.far[seam] = far
    this.into[near] = piece
    this.into[far] = piece
    this.size[piece] = (this.size[near] as number) + (this.size[far] as number)
  }

  after(laid: Laid, plane: Subdivision, shifts: readonly InnerEdit[]): SewnPlan | null {
    const parts = new Set(shifts.flatMap((shift) => shift.parts))
    const { seams, clockwise, ends, plain } = this.known
    this.known = { seams: [...seams], clockwise: [...clockwise], ends: [...ends], plain: [...plain] }
    this.sewInside(laid, parts)
    const touched = this.touched(laid, plane, parts, new Set(shifts.flatMap(({ dots }) => dots)))
    for (const seam of touched) if (!this.lay(plane, seam)) return null
    this.renew(laid, parts)
    this.meet(plane, touched)
    const constraint = seamConstraint(laid, plane)
    for (const seam of touched)
      this.known.plain[seam] = constraint(
        this.known.seams[seam] as Seam,
        this.known.ends[seam] as readonly [number, number],
        this.known.clockwise[seam] as 0 | 1,
      )
    const met = { crossings: this.crossings, ends: this.known.ends, clockwise: this.known.clockwise, loose: this.loose(laid, plane) }
    const { sideOf } = this
    return { seams: this.known.seams, sideOf, met, ...withRequestedPressing(laid, plane, this.known.seams, sideOf, this.known.plain) }
  }

  /** The parts' own seams join their patches as they do now. */
  private sewInside(laid: Laid, parts: ReadonlySet<number>): void {
    let renumbered = false
    const inside = (node: SewnPatches, from: number): { piece: number; next: number } => {
      if (typeof node === 'number') return { piece: node, next: from }
      const one = inside(node[0], from)
      const other = inside(node[1], one.next)
      const seam = other.next
      if (this.near[seam] !== one.piece || this.far[seam] !== other.piece) {
        if (!renumbered) [this.near, this.far] = [this.near.slice(), this.far.slice()]
        renumbered = true
        this.join(seam, [one.piece, other.piece])
      }
      return { piece: this.patches + seam, next: seam + 1 }
    }
    for (const part of parts) {
      const { sewn } = laid.parts[part] as Laid['parts'][number]
      if (typeof sewn !== 'number') inside(sewn, this.own[part] as number)
    }
    if (renumbered) this.sideOf = sideLookupOf(this.patches, this.near, this.far)
  }

  /** The seams, in sewing order, that pass a dot of a part that changed. */
  private touched(laid: Laid, plane: Subdivision, parts: ReadonlySet<number>, dots: Set<number>): number[] {
    for (const part of parts)
      for (const patch of laid.parts[part]?.patches ?? [])
        for (const edge of plane.beside[patch] as readonly number[]) {
          const { a, b } = plane.edges[edge] as PlaneEdge
          dots.add(a).add(b)
        }
    const found = new Set<number>()
    for (const dot of dots) for (const seam of this.seamsAt(plane, dot)) found.add(seam)
    return [...found].sort((a, b) => a - b)
  }

  /** The seams that end at a dot or pass it. */
  private seamsAt(plane: Subdivision, dot: number): Set<number> {
    const found = new Set<number>()
    for (const edge of plane.around[dot] as readonly number[]) {
      const { plus, minus } = plane.edges[edge] as PlaneEdge
      if (plus !== OUTSIDE && minus !== OUTSIDE) found.add(this.between(plus, minus))
    }
    return found
  }

  /** The seam that joins two patches. A piece has a higher number than those it is made of. */
  private between(one: number, other: number): number {
    let [a, b] = [one, other]
    while (a !== b)
      if (a < b) a = this.into[a] as number
      else b = this.into[b] as number
    return a - this.patches
  }

  /** False where the seam is not straight. */
  private lay(plane: Subdivision, index: number): boolean {
    const last = this.known.seams[index] as Seam
    const side = (patch: number): -1 | 0 | 1 => this.sideOf(index, patch)
    const contact = contactOf(plane, this.touching(plane, index), side)
    if (!contact.straight) return false
    const { finishes: _, ...line } = lineOf(plane, contact, side, () => [])
    const sides = [this.near[index] as number, this.far[index] as number] as const
    if (!isEqual(sides, last.sides) || !isEqual(line.path, last.path)) this.known.seams[index] = { ...last, ...line, sides }
    this.known.clockwise[index] = clockwiseSide(plane, line, index, this.sideOf)
    return true
  }

  /** A seam that joins changed fabric gets a new object even if it runs as before, because other caches use the object as their key. */
  private renew(laid: Laid, parts: ReadonlySet<number>): void {
    const renewed = new Set<number>()
    for (const part of parts)
      for (const patch of laid.parts[part]?.patches ?? [])
        for (let piece = this.into[patch] as number; piece !== -1 && !renewed.has(piece); piece = this.into[piece] as number) {
          renewed.add(piece)
          const seam = piece - this.patches
          this.known.seams[seam] = { ...(this.known.seams[seam] as Seam) }
        }
  }

  /** The stretches where the two sides of a seam touch. */
  private touching(plane: Subdivision, index: number): number[] {
    const [near, far] = [this.near[index] as number, this.far[index] as number]
    const [small, beyond] = (this.size[near] as number) <= (this.size[far] as number) ? [near, 1] : [far, 0]
    const found: number[] = []
    const waiting = [small]
    for (let piece = waiting.pop(); piece !== undefined; piece = waiting.pop()) {
      if (piece >= this.patches) {
        waiting.push(this.near[piece - this.patches] as number, this.far[piece - this.patches] as number)
        continue
      }
      for (const edge of plane.beside[piece] as readonly number[]) {
        const { plus, minus } = plane.edges[edge] as PlaneEdge
        if (this.sideOf(index, plus === piece ? minus : plus) === beyond) found.push(edge)
      }
    }
    return found
  }

  /** What meets across these seams, put in its place in the list. */
  private meet(plane: Subdivision, touched: readonly number[]): void {
    const met = new Map<number, readonly Crossing[]>()
    let longer = false
    for (const index of touched) {
      const [from, to] = [this.starts[index] as number, this.starts[index + 1] as number]
      const last = this.crossings.slice(from, to)
      const now = this.metBy(plane, index).map((crossing, place) => (isSameCrossing(last[place], crossing) ? (last[place] as Crossing) : crossing))
      met.set(index, now)
      if (now.length !== last.length) longer = true
    }
    this.crossings = longer ? this.spliced(met) : this.replaced(met)
    if (longer) this.starts = startsOf(this.crossings, this.known.seams.length)
  }

  private replaced(met: ReadonlyMap<number, readonly Crossing[]>): Crossing[] {
    const crossings = [...this.crossings]
    for (const [index, now] of met)
      for (let place = 0; place < now.length; place++) crossings[(this.starts[index] as number) + place] = now[place] as Crossing
    return crossings
  }

  private spliced(met: ReadonlyMap<number, readonly Crossing[]>): Crossing[] {
    const parts: (readonly Crossing[])[] = []
    let from = 0
    for (const [index, now] of met) {
      parts.push(this.crossings.slice(from, this.starts[index]), now)
      from = this.starts[index + 1] as number
    }
    return [...parts, this.crossings.slice(from)].flat()
  }

  private metBy(plane: Subdivision, index: number): Crossing[] {
    const seam = this.known.seams[index] as Seam
    const counts: [number, number] = [0, 0]
    const found: Crossing[] = []
    for (let place = 1; place + 1 < seam.path.length; place++) {
      const there = this.endsAt(plane, seam.path[place] as number, index)
      if (there.length === 0) continue
      found.push(...crossedAt(plane, seam, index, place, there, this.known.clockwise[index] as 0 | 1, this.sideOf, counts))
    }
    if (!isEqual(counts, this.known.ends[index] as readonly number[])) this.known.ends[index] = counts
    return found
  }

  /** The ends at a dot of seams sewn before one, in sewing order. */
  private endsAt(plane: Subdivision, dot: number, until: number): SeamEnd[] {
    const found: SeamEnd[] = []
    for (const index of [...this.seamsAt(plane, dot)].sort((a, b) => a - b)) {
      if (index >= until) break
      const seam = this.known.seams[index] as Seam
      const { path } = seam
      if (path[0] !== dot && path.at(-1) !== dot) continue
      found.push(endsOf(plane, seam, index, this.known.clockwise[index] as 0 | 1)[path[0] === dot ? 0 : 1] as SeamEnd)
    }
    return found
  }

  /** Along the outline of the block, which no straight seam passes: all that end there are loose. */
  private loose(laid: Laid, plane: Subdivision): Iterable<readonly [number, readonly SeamEnd[]]> {
    const { borders, den, width, height } = laid
    const out = borders * den
    const endsAt = (dot: number): SeamEnd[] => this.endsAt(plane, dot, Number.POSITIVE_INFINITY)
    return {
      *[Symbol.iterator]() {
        for (let dot = 0; dot < plane.dots.length; dot++) {
          const [x, y] = plane.dots[dot] as readonly [number, number]
          if (x !== -out && x !== width + out && y !== -out && y !== height + out) continue
          const there = endsAt(dot)
          if (there.length > 0) yield [dot, there] as const
        }
      },
    }
  }
}

function startsOf(crossings: readonly Crossing[], seams: number): Int32Array {
  const starts = new Int32Array(seams + 1)
  let place = 0
  for (let seam = 0; seam <= seams; seam++) {
    while (place < crossings.length && (crossings[place] as Crossing).join < seam) place++
    starts[seam] = place
  }
  return starts
}

function isEqual(one: readonly unknown[], other: readonly unknown[]): boolean {
  return one.length === other.length && one.every((value, place) => value === other[place])
}

function isSameCrossing(one: Crossing | undefined, other: Crossing): boolean {
  if (one === undefined || one.dot !== other.dot || one.type !== other.type || !isEqual(one.seams, other.seams)) return false
  return one.leans === other.leans || (one.leans !== null && other.leans !== null && isEqual(one.leans, other.leans))
}
