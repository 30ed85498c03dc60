/**
 * Divide a piece into halves along straight full-length cuts, again and again, until only parts are left.
 *
 * In      the plane and a set of parts that touch each other.
 * Out     a tree of joins: straight ones wherever some straight seam runs through; else as few bends, then set-in, then partial joins as can be found
 *         (the least for pieces of up to twelve parts, see `fewest`).
 * How     touching stretches on one line, end to end, are a run. A run whose two ends lie on the piece's own outline cuts it in two.
 *         `middle` cuts halves and quarters, `outside` peels strips as for a log cabin.
 */
import type { Laid } from '../block/lay.ts'
import { type Dot, doubleArea, sideOf } from '../plane/points.ts'
import { OUTSIDE, type Plane, type PlaneEdge } from '../plane/subdivide.ts'
import { contactOf } from './contact.ts'
import { type SewnItem, fewestBends, joinNeighbours } from './fewestBends.ts'
import { innerRectangle, type SizedPart } from './innerRectangle.ts'
import type { PieceToDivide, StraightCut, Division, CachedDivision, DivisionCache, CutDirection } from './divisionCache.ts'
import { type PartBox, partBox } from './rows.ts'
import type { CutOrder, PlanChoice, Tree } from './values.ts'

/** With more parts than this, the number of bends, set-in and partial joins is not proved to be the least. */
const PROVED_PARTS = 12

/** The stretches on the outline of a part, in any order. */
export type EdgesOf = (part: number) => readonly number[]

/** What a division can reuse. */
export interface DivisionContext {
  /** Pieces without a straight seam, by their shape. */
  readonly known: Map<string, Tree>
  /** How pieces were divided before an edit; null where nothing is kept. */
  readonly cache: DivisionCache | null
  /** The outlines of the parts, where they are known already. */
  readonly edgesOf: EdgesOf | null
}

/** A piece on its direction: its cut, and how it was divided before by the same one. */
interface Halved {
  readonly cut: StraightCut
  readonly kept: CachedDivision | null
}

/** The two halves joined; the same tree object as before where both are unchanged. */
function joined(near: Tree, far: Tree, kept: CachedDivision | null): Tree {
  const before = kept?.tree ?? null
  if (before !== null && typeof before !== 'number' && before.sides[0] === near && before.sides[1] === far) return before
  return { sides: [near, far], stage: 'section' }
}

/** A stretch inside a piece, and the place of the part where it was found. */
interface Inner {
  readonly edge: number
  readonly place: number
}

/** The same tree with its parts renamed. */
function namedBy(tree: Tree, names: ReadonlyMap<number, number>): Tree {
  if (typeof tree === 'number') return names.get(tree) as number
  return { ...tree, sides: [namedBy(tree.sides[0], names), namedBy(tree.sides[1], names)] }
}

/** The stretches on the outline of each part. */
function outlines(laid: Laid, plane: Plane, partOf: Int32Array): EdgesOf {
  const edgesOf: number[][] = laid.parts.map(() => [])
  plane.edges.forEach(({ plus, minus }, edge) => {
    const a = plus === OUTSIDE ? -1 : (partOf[plus] as number)
    const b = minus === OUTSIDE ? -1 : (partOf[minus] as number)
    if (a === b) return
    if (a >= 0) edgesOf[a]?.push(edge)
    if (b >= 0) edgesOf[b]?.push(edge)
  })
  return (part) => edgesOf[part] as readonly number[]
}

export class Divider {
  private readonly laid: Laid
  private readonly plane: Plane
  private readonly cutOrder: CutOrder
  private readonly skippedCuts: number
  /** Pieces without a straight seam, by their shape, with their parts numbered in order: other plans, and repeats within a block, meet the same ones. */
  private readonly known: Map<string, Tree>
  /** Which piece each part is in, while pieces are divided. */
  private readonly pieceOf: Int32Array
  private readonly partOf: Int32Array
  private readonly edgesOf: EdgesOf
  private readonly cache: DivisionCache | null
  /** The piece in which an edge was last seen inside, or a dot last seen on the outline: cheaper than a new set for every piece. */
  private readonly inner: Int32Array
  private readonly outline: Int32Array
  /** The search in which an edge was last closed, a part last reached. */
  private readonly closed: Int32Array
  private readonly reached: Int32Array
  /** By run: the place, in its piece, of the first part that has a stretch inside on the same line. */
  private readonly firsts = new WeakMap<readonly number[], number>()
  private pieces = 0
  /** The parts whose patches decided between equally good cuts. */
  private decidedBy: number[] = []
  private marks = 0
  /** Whether every piece without a straight cut was small enough for a proof. */
  proved = true

  constructor(laid: Laid, plane: Plane, { cutOrder, skippedCuts }: Omit<PlanChoice, 'name'>, { known, cache, edgesOf }: DivisionContext) {
    this.known = known
    this.cache = cache
    this.skippedCuts = skippedCuts
    this.laid = laid
    this.plane = plane
    this.cutOrder = cutOrder
    this.partOf = new Int32Array(laid.patches.length)
    laid.parts.forEach(({ patches }, part) => {
      for (const patch of patches) this.partOf[patch] = part
    })
    this.pieceOf = new Int32Array(laid.parts.length).fill(-1)
    this.reached = new Int32Array(laid.parts.length).fill(-1)
    this.inner = new Int32Array(plane.edges.length).fill(-1)
    this.closed = new Int32Array(plane.edges.length).fill(-1)
    this.outline = new Int32Array(plane.dots.length).fill(-1)
    this.edgesOf = edgesOf ?? outlines(laid, plane, this.partOf)
  }

  private part(patch: number): number {
    return patch === OUTSIDE ? -1 : (this.partOf[patch] as number)
  }

  private box(part: number): Pick<PartBox, 'low' | 'high'> {
    return this.laid.parts[part] as Laid['parts'][number]
  }

  /** The tree of a piece, given by its parts; cuts are made from the whole down, and halves joined on the way back, without recursion. */
  divide(parts: readonly number[]): Tree {
    const done = new Map<readonly number[], Division>()
    const halves = new Map<readonly number[], Halved>()
    const before = new Map<readonly number[], CutDirection>()
    const waiting: (readonly number[])[] = [parts]
    while (waiting.length > 0) {
      const piece = waiting.pop() as readonly number[]
      const request: PieceToDivide = { parts: piece, last: before.get(piece) ?? null, skipped: piece === parts ? this.skippedCuts : 0 }
      const halved = halves.get(piece)
      if (halved !== undefined) {
        const [near, far] = [done.get(halved.cut.near) as Division, done.get(halved.cut.far) as Division]
        const divided = { tree: joined(near.tree, far.tree, halved.kept), proved: near.proved && far.proved }
        done.set(piece, this.kept(request, divided, halved.cut))
        continue
      }
      const known = piece.length === 1 ? null : (this.cache?.find(request) ?? null)
      if (piece.length === 1 || known?.holds === 'all') {
        done.set(piece, known?.kept ?? { tree: piece[0] as number, proved: true })
        continue
      }
      const cut = known?.kept.cut ?? this.cut(request)
      if (cut === null) {
        done.set(piece, this.kept(request, { tree: this.crooked(piece), proved: piece.length <= PROVED_PARTS }, null))
        continue
      }
      halves.set(piece, { cut, kept: known?.kept ?? null })
      before.set(cut.near, cut.direction).set(cut.far, cut.direction)
      waiting.push(piece, cut.near, cut.far)
    }
    const { tree, proved } = done.get(parts) as Division
    if (!proved) this.proved = false
    return tree
  }

  private kept(piece: PieceToDivide, divided: Division, cut: StraightCut | null): Division {
    this.cache?.keep(piece, divided, cut)
    return divided
  }

  private crooked(parts: readonly number[]): Tree {
    const sorted = [...parts].sort((a, b) => this.before(a, b))
    const key = this.shapeOf(sorted)
    const known = this.known.get(key) ?? namedBy(this.fewestBendsOf(sorted), new Map(sorted.map((part, place) => [part, place])))
    this.known.set(key, known)
    return namedBy(known, new Map(sorted.map((part, place) => [place, part])))
  }

  /** From top to bottom, then from left to right: the same for pieces of one shape wherever they lie. */
  private before(a: number, b: number): number {
    const [one, other] = [this.box(a), this.box(b)]
    return one.low[1] - other.low[1] || one.low[0] - other.low[0] || one.high[1] - other.high[1] || one.high[0] - other.high[0] || a - b
  }

  /** Where each part lies, seen from the first; each outline from its least corner on, however its unit is turned. */
  private shapeOf(sorted: readonly number[]): string {
    const [x0, y0] = this.box(sorted[0] as number).low
    const outline = (patch: number): string => {
      const corners = (this.laid.patches[patch]?.corners ?? []).map(([x, y]) => `${x - x0},${y - y0}`)
      const least = corners.reduce((best, corner, place) => (corner < (corners[best] as string) ? place : best), 0)
      return [...corners.slice(least), ...corners.slice(0, least)].join(' ')
    }
    return sorted.map((part) => (this.laid.parts[part]?.patches ?? []).map(outline).sort().join(';')).join('|')
  }

  private fewestBendsOf(parts: readonly number[]): Tree {
    const edges = this.edgesAmong(parts)
    let items: (SewnItem & SizedPart)[] = parts.map((part) => {
      const patches = [...(this.laid.parts[part]?.patches ?? [])]
      const twice = patches.reduce((sum, patch) => sum + doubleArea(this.laid.patches[patch]?.corners ?? []), 0n)
      return { tree: part, patches, box: partBox(this.laid, part), twice }
    })
    while (items.length > PROVED_PARTS) {
      const inner = innerRectangle(items, PROVED_PARTS)
      if (inner === null) break
      const chosen = inner.map((place) => items[place] as SewnItem & SizedPart)
      items = [...items.filter((item) => !chosen.includes(item)), this.sewn(chosen, edges)]
    }
    return fewestBends(this.plane, edges, items.length <= PROVED_PARTS ? items : joinNeighbours(this.plane, edges, items, PROVED_PARTS))
  }

  /** The stretches on the outlines of some parts, from left to right: in the same order for pieces of one shape wherever they lie. */
  private edgesAmong(parts: readonly number[]): number[] {
    const { dots, edges } = this.plane
    const place = (edge: number, end: 'a' | 'b', axis: 0 | 1): number => dots[(edges[edge] as PlaneEdge)[end]]?.[axis] as number
    return [...new Set(parts.flatMap((part) => this.edgesOf(part)))].sort(
      (one, other) =>
        place(one, 'a', 0) - place(other, 'a', 0) ||
        place(one, 'a', 1) - place(other, 'a', 1) ||
        place(one, 'b', 0) - place(other, 'b', 0) ||
        place(one, 'b', 1) - place(other, 'b', 1),
    )
  }

  /** A few items that fill a rectangle, sewn into one. */
  private sewn(items: readonly (SewnItem & SizedPart)[], edges: readonly number[]): SewnItem & SizedPart {
    const end = (axis: 0 | 1, side: 'low' | 'high'): number => Math[side === 'low' ? 'min' : 'max'](...items.map(({ box }) => box[side][axis]))
    return {
      tree: fewestBends(this.plane, edges, items),
      patches: items.flatMap(({ patches }) => patches),
      box: { part: -1, low: [end(0, 'low'), end(1, 'low')], high: [end(0, 'high'), end(1, 'high')] },
      twice: items.reduce((sum, { twice }) => sum + twice, 0n),
    }
  }

  /** The two halves of a piece along a straight full-length seam; null where there is none. */
  private cut({ parts, last, skipped }: PieceToDivide): StraightCut | null {
    this.decidedBy = []
    const piece = ++this.pieces
    for (const part of parts) this.pieceOf[part] = piece
    const inner: Inner[] = []
    for (const [place, part] of parts.entries())
      for (const edge of this.edgesOf(part)) {
        const { a, b, plus, minus } = this.plane.edges[edge] as PlaneEdge
        if (!this.within(plus, piece) || !this.within(minus, piece)) {
          this.outline[a] = piece
          this.outline[b] = piece
        } else if (this.inner[edge] !== piece) {
          this.inner[edge] = piece
          inner.push({ edge, place })
        }
      }
    let found: StraightCut | null = null
    let left = skipped
    for (const run of this.ordered(this.runs(inner, piece), parts, last)) {
      const halves = this.halves(parts, run, piece)
      if (halves === null) continue
      found = { near: halves[0], far: halves[1], direction: this.directionOf(run), decidedBy: this.decidedBy }
      if (left-- === 0) break
    }
    return found
  }

  private within(patch: number, piece: number): boolean {
    const part = this.part(patch)
    return part >= 0 && this.pieceOf[part] === piece
  }

  /** Straight runs of inner edges from outline to outline. */
  private runs(inner: readonly Inner[], piece: number): number[][] {
    const lines = new Map<number, { readonly edges: number[]; readonly first: number }>()
    for (const { edge, place } of inner) {
      const { line } = this.plane.edges[edge] as PlaneEdge
      const there = lines.get(line)
      if (there === undefined) lines.set(line, { edges: [edge], first: place })
      else there.edges.push(edge)
    }
    const runs: number[][] = []
    for (const { edges, first } of lines.values()) {
      const upright = this.upright(edges[0] as number)
      const place = (edge: number): number => {
        const { a } = this.plane.edges[edge] as PlaneEdge
        const [x, y] = this.plane.dots[a] as readonly [number, number]
        return upright ? y : x
      }
      edges.sort((a, b) => place(a) - place(b))
      let run: number[] = []
      let whole = false
      const close = (end: number): void => {
        if (!whole || run.length === 0 || this.outline[end] !== piece) return
        this.firsts.set(run, first)
        runs.push(run)
      }
      edges.forEach((edge, index) => {
        const { a } = this.plane.edges[edge] as PlaneEdge
        const before = index > 0 ? (this.plane.edges[edges[index - 1] as number] as PlaneEdge).b : -1
        if (before !== a || this.outline[a] === piece) {
          if (before >= 0) close(before)
          run = []
          whole = this.outline[a] === piece
        }
        run.push(edge)
      })
      close((this.plane.edges[edges.at(-1) as number] as PlaneEdge).b)
    }
    return runs
  }

  private upright(edge: number): boolean {
    const { a, b } = this.plane.edges[edge] as PlaneEdge
    return this.plane.dots[a]?.[0] === this.plane.dots[b]?.[0]
  }

  private directionOf(run: readonly number[]): CutDirection {
    const [x0, y0] = this.plane.dots[(this.plane.edges[run[0] as number] as PlaneEdge).a] as CutDirection
    const [x1, y1] = this.plane.dots[(this.plane.edges[run.at(-1) as number] as PlaneEdge).b] as CutDirection
    return [x1 - x0, y1 - y0]
  }

  /**
   * By how near the middle of each run lies to the middle of the piece, or how far from it; where that ties, first those in the direction of the last
   * cut (opposite sides one after the other [S55]), then long ones, then those along an earlier part, by the order of its sides.
   */
  private ordered(runs: readonly number[][], parts: readonly number[], last: CutDirection | null): number[][] {
    const middle = ([0, 1] as const).map((axis) => {
      let low = Number.POSITIVE_INFINITY
      let high = Number.NEGATIVE_INFINITY
      for (const part of parts) {
        const box = this.box(part)
        if (box.low[axis] < low) low = box.low[axis]
        if (box.high[axis] > high) high = box.high[axis]
      }
      return (low + high) / 2
    })
    const measured = runs.map((run) => {
      const [x0, y0] = this.plane.dots[(this.plane.edges[run[0] as number] as PlaneEdge).a] as CutDirection
      const [dx, dy] = this.directionOf(run)
      const length = Math.hypot(dx, dy)
      // Rounded to a millionth of a step, so that sides equally far from the middle tie.
      const away = Math.round((Math.abs(dx * ((middle[1] as number) - y0) - dy * ((middle[0] as number) - x0)) / length) * 1e6)
      const across = last === null || dx * last[1] === dy * last[0] ? 0 : 1
      return {
        run,
        x0,
        y0,
        steep: dx === 0 ? Number.POSITIVE_INFINITY : Math.abs(dy / dx),
        length,
        across,
        away: this.cutOrder === 'middle' ? away : -away,
      }
    })
    measured.sort((a, b) => a.away - b.away || a.across - b.across || b.length - a.length || this.byParts(parts, a.run, b.run))
    return measured.map(({ run }) => run)
  }

  private byParts(parts: readonly number[], a: readonly number[], b: readonly number[]): number {
    const [one, other] = [this.firsts.get(a) as number, this.firsts.get(b) as number]
    return one - other || this.firstSide(parts[one] as number, a) - this.firstSide(parts[one] as number, b)
  }

  /** The first side of a part, patch by patch, that lies on the line of a run. */
  private firstSide(part: number, run: readonly number[]): number {
    if (!this.decidedBy.includes(part)) this.decidedBy.push(part)
    const { a, b } = this.plane.edges[run[0] as number] as PlaneEdge
    const [from, to] = [this.plane.dots[a] as Dot, this.plane.dots[b] as Dot]
    const sides = (this.laid.parts[part]?.patches ?? []).flatMap((patch) => {
      const { corners } = this.laid.patches[patch] as Laid['patches'][number]
      return corners.map((corner, place) => [corner, corners[(place + 1) % corners.length] as Dot] as const)
    })
    return sides.findIndex((ends) => ends.every((end) => sideOf(from, to, end) === 0))
  }

  private halves(parts: readonly number[], run: readonly number[], piece: number): [number[], number[]] | null {
    const mark = ++this.marks
    for (const edge of run) this.closed[edge] = mark
    const first = this.part((this.plane.edges[run[0] as number] as PlaneEdge).plus)
    const other = this.part((this.plane.edges[run[0] as number] as PlaneEdge).minus)
    this.reached[first] = mark
    const waiting = [first]
    while (waiting.length > 0) {
      for (const edge of this.edgesOf(waiting.pop() as number)) {
        if (this.closed[edge] === mark || this.inner[edge] !== piece) continue
        const { plus, minus } = this.plane.edges[edge] as PlaneEdge
        for (const next of [this.part(plus), this.part(minus)]) {
          if (next === other) return null
          if (this.reached[next] === mark) continue
          this.reached[next] = mark
          waiting.push(next)
        }
      }
    }
    const side = (patch: number): -1 | 0 | 1 => (!this.within(patch, piece) ? -1 : this.reached[this.part(patch)] === mark ? 0 : 1)
    if (!contactOf(this.plane, run, side).straight) return null
    const near: number[] = []
    const far: number[] = []
    for (const part of parts) (this.reached[part] === mark ? near : far).push(part)
    return [near, far]
  }
}
