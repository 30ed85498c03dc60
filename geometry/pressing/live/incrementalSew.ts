/**
 * Sew the plans of a block again after an edit: an unchanged piece keeps its seam, its meetings and its pressing constraint.
 *
 * In      a laid block and its plane after each edit; the plane changes with its patches and keeps the numbers of its dots (see `Subdivision`).
 * Out     the same results as `sew`, `meet` and `constraintsOf` give for the block from nothing.
 * How     a piece is a patch, or two pieces joined, and each pair of joined pieces has one object. All fabric round an inner point of a seam lies in
 *         the two pieces it joins, so where the seam runs and what meets across it depend on these two alone; pieces are numbered again each time.
 *         A seam left open runs differently until it is finished: so meetings also depend on the piece in which everything left open is finished.
 */
import type { Laid, SewnPatches } from '../../block/lay.ts'
import type { Unit } from '../../values/block.ts'
import type { FingerprintCache } from '../../piecing/matchingPieces.ts'
import { contactOf } from '../../piecing/contact.ts'
import type { EdgesOf, DivisionContext } from '../../piecing/straightCuts.ts'
import { DivisionCache } from '../../piecing/divisionCache.ts'
import { carriedOn, lineOf } from '../../piecing/partialSeams.ts'
import { inSewingOrder, postOrder } from '../../piecing/sew.ts'
import { type Plan, type PlanChoice, planKey, type Seam, type Stage, type Tree } from '../../piecing/values.ts'
import { OUTSIDE, type PlaneEdge, type Subdivision } from '../../plane/subdivide.ts'
import { clockwiseSide, crossedAt, endsOf, type SideOf } from '../meet.ts'
import type { PlanSewer, SewnPlan } from '../plan.ts'
import { sideLookupOf } from '../sideLookup.ts'
import { isNumberedTheSame, isSame, type PatchableSewing, type InnerEdit, innerEdit, PlanPatcher } from './patchPlan.ts'
import type { Crossing, SeamEnd, PressConstraint } from '../values.ts'
import { seamConstraint, withRequestedPressing } from '../pressRules.ts'

/** Joins kept by the first piece they join; older ones are forgotten. */
const MOST_JOINTS = 12

/** After this many edits, patching a plan costs as much as sewing it from nothing. */
const MOST_LATE = 50

/** A piece and the number it has in the plan that is being sewn. */
abstract class CachedPiece {
  number = 0
  /** The pieces in which it is the first of the two. */
  private readonly joins: CachedJoin[] = []
  abstract readonly size: number

  with(far: CachedPiece, stage: Stage): CachedJoin {
    const known = this.joins.find((join) => join.far === far && join.stage === stage)
    if (known !== undefined) return known
    const made = new CachedJoin(this, far, stage)
    if (this.joins.push(made) > MOST_JOINTS) this.joins.shift()
    return made
  }
}

class CachedPatch extends CachedPiece {
  readonly size = 1
}

/** Where a seam runs as it is first sewn, and the seams left open before that it finishes, each with its whole path. */
interface Line extends Pick<Seam, 'kind' | 'path' | 'bends'> {
  readonly finishes: readonly { readonly join: CachedJoin; readonly path: readonly number[] }[]
}

/** The meetings of a seam by their pieces, and as they were last numbered. */
interface MetSeams {
  readonly seams: readonly CachedJoin[]
  crossing: Crossing
}

class CachedJoin extends CachedPiece {
  readonly near: CachedPiece
  readonly far: CachedPiece
  readonly stage: Stage
  readonly size: number
  line: Line | null = null
  clockwise: 0 | 1 = 0
  /** Found in the piece `scope`: null where nothing round it was left open. */
  met: { readonly scope: CachedJoin | null; readonly ends: readonly [number, number]; readonly crossings: readonly MetSeams[] } | null = null
  constraint: PressConstraint | null = null
  seam: Seam | null = null
  /** In the plan that is being sewn: its place, its unit, the seam that finishes it, its whole path, and the scope of its meetings. */
  index = 0
  unit = -1
  finishedBy: CachedJoin | null = null
  path: readonly number[] = []
  scope: CachedJoin | null = null

  constructor(near: CachedPiece, far: CachedPiece, stage: Stage) {
    super()
    this.near = near
    this.far = far
    this.stage = stage
    this.size = near.size + far.size
  }
}

interface CachedPart {
  /** Its place in the block's list when it was last there. */
  place: number
  readonly patches: readonly CachedPatch[]
  readonly joins: readonly CachedJoin[]
  readonly whole: CachedPiece
}

export class IncrementalSew implements PlanSewer {
  readonly fingerprints: FingerprintCache = { shapes: new WeakMap() }
  private readonly known = new Map<string, Tree>()
  private readonly divisions = new Map<string, DivisionCache>()
  private readonly units = new WeakMap<Unit, CachedPart>()
  private readonly strips: CachedPart[] = []
  private parts: CachedPart[] = []
  private current: EditedBlock | null = null
  private sewer: BlockSewer | null = null
  private readonly patchers = new Map<string, { readonly plan: PlanPatcher; late: InnerEdit[] }>()

  /** Whether the units kept from before are still in the same order: the cache relies on it. */
  inOrder(units: readonly Unit[]): boolean {
    let last = -1
    for (const unit of units) {
      const known = this.units.get(unit)
      if (known === undefined) continue
      if (known.place <= last) return false
      last = known.place
    }
    return true
  }

  /** The block after an edit. `changed`: the parts that changed; null where parts have other numbers than before. */
  next(laid: Laid, plane: Subdivision, changed: readonly number[] | null): void {
    const before = this.current?.laid ?? null
    const edit =
      before === null || changed === null ? null : { parts: changed, outlines: changed.filter((part) => liesOtherwise(before, laid, part)) }
    for (const cache of this.divisions.values()) cache.next(edit, laid.parts.length)
    if (this.known.size > MOST_KNOWN) this.known.clear()
    const numbered = before !== null && edit !== null && isNumberedTheSame(before, laid, edit.parts)
    if (numbered) for (const part of edit.parts) this.parts[part] = this.placed(laid, part)
    else this.parts = laid.parts.map((_, part) => this.placed(laid, part))
    if (numbered && edit.outlines.length === 0) this.shift(innerEdit(before, plane, edit.parts))
    else this.patchers.clear()
    this.current = { laid, plane, edgesOf: outlines(laid, plane) }
    this.sewer = null
  }

  /** Passes the edit to every plan that can be patched; drops a plan that has not been needed for many edits. */
  private shift(shift: InnerEdit): void {
    for (const [key, { late }] of this.patchers) if (late.push(shift) > MOST_LATE) this.patchers.delete(key)
  }

  /** A part with the numbers that it has now. */
  private placed(laid: Laid, index: number): CachedPart {
    const own = this.part(laid, index)
    const first = laid.parts[index]?.patches[0] as number
    if (own.place === index && own.patches[0]?.number === first) return own
    own.place = index
    for (let place = 0; place < own.patches.length; place++) (own.patches[place] as CachedPatch).number = first + place
    for (const join of own.joins) join.unit = index
    return own
  }

  private part(laid: Laid, index: number): CachedPart {
    const unit = laid.block.units[index]
    const known = unit === undefined ? this.strips[index - laid.block.units.length] : this.units.get(unit)
    if (known !== undefined) return known
    const made = partOf(laid, index)
    if (unit === undefined) this.strips[index - laid.block.units.length] = made
    else this.units.set(unit, made)
    return made
  }

  divisionContext(choice: PlanChoice): DivisionContext {
    const key = planKey(choice)
    let cache = this.divisions.get(key)
    if (cache === undefined) {
      cache = new DivisionCache()
      this.divisions.set(key, cache)
    }
    return { known: this.known, cache, edgesOf: (this.current as EditedBlock).edgesOf }
  }

  sew({ tree }: Plan, choice: PlanChoice): SewnPlan {
    const { laid, plane } = this.current as EditedBlock
    const key = planKey(choice)
    const last = this.patchers.get(key)
    if (last !== undefined && isSame(last.plan.tree, tree)) {
      const late = last.late
      last.late = []
      const sewn = last.plan.after(laid, plane, late)
      if (sewn !== null) return sewn
    }
    this.sewer ??= new BlockSewer(laid, plane, this.parts)
    const sewn = this.sewer.sew(tree)
    const plan = PlanPatcher.from(laid, tree, sewn)
    if (plan === null) this.patchers.delete(key)
    else this.patchers.set(key, { plan, late: [] })
    return sewn
  }
}

/** A block as it is laid out to be sewn. */
interface EditedBlock {
  readonly laid: Laid
  readonly plane: Subdivision
  readonly edgesOf: EdgesOf
}

/** Whether a part covers a different area: every kind of unit except a free patch fills its box. */
function liesOtherwise(before: Laid, now: Laid, part: number): boolean {
  const [was, is] = [before.parts[part], now.parts[part]]
  if (was === undefined || is === undefined || isFree(before, part) || isFree(now, part)) return true
  return ([0, 1] as const).some((axis) => was.low[axis] !== is.low[axis] || was.high[axis] !== is.high[axis])
}

const isFree = ({ block }: Laid, part: number): boolean => block.units[part]?.kind === 'polygon'

/** How many pieces without a straight cut are remembered by their shape. */
const MOST_KNOWN = 2_000

function partOf(laid: Laid, index: number): CachedPart {
  const { patches, sewn } = laid.parts[index] as Laid['parts'][number]
  const first = patches[0] as number
  const own = patches.map(() => new CachedPatch())
  const joins: CachedJoin[] = []
  const inside = (node: SewnPatches): CachedPiece => {
    if (typeof node === 'number') return own[node - first] as CachedPatch
    const join = inside(node[0]).with(inside(node[1]), 'unit')
    joins.push(join)
    return join
  }
  return { place: -1, patches: own, joins, whole: inside(sewn) }
}

/** One block between two edits. */
class BlockSewer {
  private readonly laid: Laid
  private readonly plane: Subdivision
  private readonly parts: readonly CachedPart[]
  private readonly inUnits: CachedJoin[] = []
  private readonly constraint: ReturnType<typeof seamConstraint>

  constructor(laid: Laid, plane: Subdivision, parts: readonly CachedPart[]) {
    this.laid = laid
    this.plane = plane
    this.parts = parts
    for (const { joins } of parts) for (const join of joins) this.inUnits.push(join)
    this.constraint = seamConstraint(laid, plane)
  }

  sew(tree: Tree): PatchableSewing {
    const joins = this.joinsOf(tree)
    const sideOf = this.numbered(joins)
    this.lay(joins, sideOf)
    const seams: Seam[] = []
    const clockwise: (0 | 1)[] = []
    for (const join of joins) {
      seams.push(this.seamOf(join))
      clockwise.push(join.clockwise)
    }
    const crossings = this.meet(joins, new Ends(this.plane, seams, clockwise), sideOf)
    const ends: (readonly [number, number])[] = []
    const plain: PressConstraint[] = []
    for (const join of joins) {
      const { ends: own } = join.met as NonNullable<CachedJoin['met']>
      join.constraint ??= this.constraint(join.seam as Seam, own, join.clockwise)
      ends.push(own)
      plain.push(join.constraint)
    }
    const met = { crossings, ends, clockwise, loose: looseOf(this.laid, this.plane, seams, clockwise) }
    return { seams, sideOf, met, plain, ...withRequestedPressing(this.laid, this.plane, seams, sideOf, plain) }
  }

  /** In sewing order: the units' own, then those of the tree. */
  private joinsOf(tree: Tree): CachedJoin[] {
    const made: CachedJoin[] = []
    const waiting: CachedPiece[] = []
    const piece = (node: Tree): CachedPiece => (typeof node === 'number' ? (this.parts[node] as CachedPart).whole : (waiting.pop() as CachedPiece))
    for (const { sides, stage } of postOrder(tree)) {
      const far = piece(sides[1])
      const join = piece(sides[0]).with(far, stage)
      waiting.push(join)
      made.push(join)
    }
    return [...this.inUnits, ...inSewingOrder(made)]
  }

  private numbered(joins: readonly CachedJoin[]): SideOf {
    const patches = this.laid.patches.length
    const near = new Int32Array(joins.length)
    const far = new Int32Array(joins.length)
    joins.forEach((join, index) => {
      join.index = index
      join.number = patches + index
      join.finishedBy = null
      join.scope = null
      near[index] = join.near.number
      far[index] = join.far.number
    })
    return sideLookupOf(patches, near, far)
  }

  /** Where each seam runs, once all that is left open is finished. */
  private lay(joins: readonly CachedJoin[], sideOf: SideOf): void {
    let finishes = false
    for (const join of joins) {
      join.line ??= this.lineOf(join, sideOf)
      join.path = join.line.path
      for (const { join: open, path } of join.line.finishes) {
        open.finishedBy = join
        open.path = path
        finishes = true
      }
    }
    if (finishes) scope(joins)
  }

  private lineOf(join: CachedJoin, sideOf: SideOf): Line {
    const side = (patch: number): -1 | 0 | 1 => sideOf(join.index, patch)
    const contact = contactOf(this.plane, this.between(join, side), side)
    const { finishes, ...line } = lineOf(this.plane, contact, side, (dot) => endingAt(join, dot))
    join.clockwise = clockwiseSide(this.plane, line, join.index, sideOf)
    return { ...line, finishes: finishes.map(({ seam, run }) => ({ join: seam.join, path: carriedOn(seam.path, run) })) }
  }

  /** The stretches where two pieces touch. */
  private between({ near, far }: CachedJoin, side: (patch: number) => -1 | 0 | 1): number[] {
    const [small, beyond] = near.size <= far.size ? [near, 1] : [far, 0]
    const found: number[] = []
    for (const { number } of patchesIn(small))
      for (const edge of this.plane.beside[number] as readonly number[]) {
        const { plus, minus } = this.plane.edges[edge] as PlaneEdge
        if (side(plus === number ? minus : plus) === beyond) found.push(edge)
      }
    return found
  }

  private seamOf(join: CachedJoin): Seam {
    const { near, far, stage, unit, finishedBy, path, seam: last } = join
    const { kind, bends } = join.line as Line
    const finishedAfter = finishedBy?.index ?? null
    const kept =
      last !== null &&
      last.sides[0] === near.number &&
      last.sides[1] === far.number &&
      last.unit === unit &&
      last.path === path &&
      last.finishedAfter === finishedAfter
    if (kept) return last
    join.seam = { sides: [near.number, far.number], stage, unit, finishedAfter, kind: finishedBy === null ? kind : 'partial', path, bends }
    return join.seam
  }

  private meet(joins: readonly CachedJoin[], ends: Ends, sideOf: SideOf): Crossing[] {
    const crossings: Crossing[] = []
    const finishing = finishedBy(joins)
    const cross = (join: CachedJoin): void => {
      if (join.met === null || join.met.scope !== join.scope) {
        join.met = this.metBy(join, ends, joins, sideOf)
        join.constraint = null
      }
      for (const met of join.met.crossings) crossings.push(renumbered(met, join.index))
    }
    for (const join of joins) {
      if (join.finishedBy === null) cross(join)
      if (finishing.size > 0) for (const open of finishing.get(join) ?? []) cross(open)
    }
    return crossings
  }

  private metBy(join: CachedJoin, ends: Ends, joins: readonly CachedJoin[], sideOf: SideOf): NonNullable<CachedJoin['met']> {
    const { path, index, clockwise, scope } = join
    const line = { path, bends: (join.line as Line).bends }
    const counts: [number, number] = [0, 0]
    const crossings: MetSeams[] = []
    for (let place = 1; place + 1 < path.length; place++) {
      const there = ends.at(path[place] as number, index)
      if (there.length === 0) continue
      for (const crossing of crossedAt(this.plane, line, index, place, there, clockwise, sideOf, counts))
        crossings.push({ seams: crossing.seams.map((seam) => joins[seam] as CachedJoin), crossing })
    }
    return { scope, ends: counts, crossings }
  }
}

/** The seams that each finishes, in sewing order. */
function finishedBy(joins: readonly CachedJoin[]): Map<CachedJoin, CachedJoin[]> {
  const finishing = new Map<CachedJoin, CachedJoin[]>()
  for (const join of joins) if (join.finishedBy !== null) finishing.set(join.finishedBy, [...(finishing.get(join.finishedBy) ?? []), join])
  return finishing
}

function outlines(laid: Laid, plane: Subdivision): EdgesOf {
  const partOf = new Int32Array(laid.patches.length)
  laid.parts.forEach(({ patches }, part) => {
    for (const patch of patches) partOf[patch] = part
  })
  const known: (readonly number[] | undefined)[] = new Array(laid.parts.length)
  const found = (part: number): number[] => {
    const edges: number[] = []
    for (const patch of laid.parts[part]?.patches ?? [])
      for (const edge of plane.beside[patch] as readonly number[]) {
        const { plus, minus } = plane.edges[edge] as PlaneEdge
        const beyond = plus === patch ? minus : plus
        if (beyond === OUTSIDE || partOf[beyond] !== part) edges.push(edge)
      }
    known[part] = edges
    return edges
  }
  return (part) => known[part] ?? found(part)
}

function renumbered(met: MetSeams, join: number): Crossing {
  const { crossing, seams } = met
  let same = crossing.join === join
  for (let place = 0; same && place < seams.length; place++) same = (seams[place] as CachedJoin).index === crossing.seams[place]
  if (!same) met.crossing = { ...crossing, join, seams: seams.map(({ index }) => index) }
  return met.crossing
}

/** The outermost piece round each seam in which one that was left open is finished. None is ever left open inside a unit. */
function scope(joins: readonly CachedJoin[]): void {
  for (let index = joins.length - 1; index >= 0; index--) {
    const join = joins[index] as CachedJoin
    if (join.scope === null && join.line?.finishes.length !== 0) join.scope = join
    if (join.scope === null) continue
    for (const piece of [join.near, join.far]) if (piece instanceof CachedJoin && piece.stage !== 'unit') piece.scope = join.scope
  }
}

function patchesIn(piece: CachedPiece): CachedPatch[] {
  const found: CachedPatch[] = []
  const waiting = [piece]
  for (let next = waiting.pop(); next !== undefined; next = waiting.pop())
    if (next instanceof CachedJoin) waiting.push(next.near, next.far)
    else found.push(next as CachedPatch)
  return found
}

/** The seams of the plan in a piece that end at a dot, in sewing order, as they run when the piece is joined. */
function endingAt(whole: CachedJoin, dot: number): { kind: Seam['kind']; path: readonly number[]; join: CachedJoin }[] {
  const found: CachedJoin[] = []
  const waiting: CachedPiece[] = [whole.near, whole.far]
  for (let next = waiting.pop(); next !== undefined; next = waiting.pop()) {
    if (!(next instanceof CachedJoin) || next.stage === 'unit') continue
    const { path } = next.line as Line
    if (path[0] === dot || path.at(-1) === dot) found.push(next)
    waiting.push(next.near, next.far)
  }
  return found
    .sort((a, b) => a.index - b.index)
    .map((join) => ({ kind: join.finishedBy === null ? (join.line as Line).kind : 'partial', path: join.path, join }))
}

const NONE = -1

/** Which seams of a plan end at a dot, and which pass it. */
class Ends {
  private readonly plane: Subdivision
  private readonly seams: readonly Seam[]
  private readonly clockwise: readonly (0 | 1)[]
  /** Chains by dot, with two places for each seam: its first end and its last. */
  private heads: Int32Array | null = null
  private nexts = new Int32Array(0)
  private passing: Map<number, number[]> | null = null

  constructor(plane: Subdivision, seams: readonly Seam[], clockwise: readonly (0 | 1)[]) {
    this.plane = plane
    this.seams = seams
    this.clockwise = clockwise
  }

  private chain(): Int32Array {
    const heads = new Int32Array(this.plane.dots.length).fill(NONE)
    this.nexts = new Int32Array(this.seams.length * 2)
    for (let index = this.seams.length - 1; index >= 0; index--) {
      const { path } = this.seams[index] as Seam
      const [first, last] = [path[0] as number, path.at(-1) as number]
      // A seam that goes all the way round has no ends.
      if (first === last) continue
      this.nexts[2 * index + 1] = heads[last] as number
      heads[last] = 2 * index + 1
      this.nexts[2 * index] = heads[first] as number
      heads[first] = 2 * index
    }
    this.heads = heads
    return heads
  }

  private endsAt(dot: number): SeamEnd[] {
    const heads = this.heads ?? this.chain()
    const found: SeamEnd[] = []
    for (let end = heads[dot] as number; end !== NONE; end = this.nexts[end] as number) {
      const index = end >> 1
      found.push(endsOf(this.plane, this.seams[index] as Seam, index, this.clockwise[index] as 0 | 1)[end & 1] as SeamEnd)
    }
    return found
  }

  /** The seam ends that are loose at a dot when a seam passes it, or after everything is sewn where `seam` is null. */
  at(dot: number, seam: number | null): readonly SeamEnd[] {
    const ends = this.endsAt(dot)
    if (ends.length === 0) return ends
    const until = seam === null ? Number.POSITIVE_INFINITY : this.timeOf(seam)
    const earlier = ends.filter((end) => end.seam < until)
    return seam !== null && this.seams[seam]?.kind === 'straight' ? earlier : this.left(dot, earlier, until)
  }

  /** Ends that an earlier seam passed are no longer loose. */
  private left(dot: number, ends: readonly SeamEnd[], until: number): readonly SeamEnd[] {
    this.passing ??= passingOf(this.seams)
    const times = (this.passing.get(dot) ?? []).map((seam) => this.timeOf(seam)).filter((time) => time < until)
    return ends.filter((end) => times.every((time) => end.seam >= time))
  }

  /** A seam meets others when it is sewn, one that is left open just after it is finished; of two finished at once, the earlier comes first. */
  private timeOf(seam: number): number {
    const after = this.seams[seam]?.finishedAfter ?? null
    return after === null ? seam : after + 0.5 + seam * 2 ** -24
  }
}

function passingOf(seams: readonly Seam[]): Map<number, number[]> {
  const passing = new Map<number, number[]>()
  seams.forEach(({ path }, seam) => {
    for (const dot of path.slice(1, -1)) {
      const there = passing.get(dot)
      if (there === undefined) passing.set(dot, [seam])
      else there.push(seam)
    }
  })
  return passing
}

/** The seam ends on the outline of the block, where alone they are needed; found on demand. */
function looseOf(
  { borders, den, width, height }: Laid,
  plane: Subdivision,
  seams: readonly Seam[],
  clockwise: readonly (0 | 1)[],
): Iterable<readonly [number, readonly SeamEnd[]]> {
  const out = borders * den
  const [left, top, right, bottom] = [-out, -out, width + out, height + out]
  return {
    *[Symbol.iterator]() {
      const ends = new Ends(plane, seams, clockwise)
      for (const [dot, [x, y]] of plane.dots.entries()) {
        if (x !== left && x !== right && y !== top && y !== bottom) continue
        const there = ends.at(dot, null)
        if (there.length > 0) yield [dot, there] as const
      }
    },
  }
}
