/**
 * Outlines laid over each other: every stretch cut where it meets another, and the faces between them.
 *
 * In      groups of stretches, each with what it adds from one side to the other; stretches of one group never cross or touch but at their ends.
 * Out     edges that meet only at their ends, and for each the faces above and below, with the sum of everything added.
 * How     stretches are cut where they meet; then all points are taken from left to right while the edges under way are kept
 *         from top to bottom. A face opens only where two edges part and closes where they meet, so nothing is cut through the whole plane.
 * Exact   every comparison is made by `Points`.
 */
import { type Cuts, cutsOf, type Stretch } from './intersections.ts'
import type { Points } from './vertices.ts'

/** The side of a patch, with its fabric on the clockwise side or the other: it cuts and is cut, and adds nothing. */
export interface PatchSide extends Stretch {
  readonly jump: 0
  readonly patch: number
  readonly below: boolean
}

export interface Edge extends Stretch {
  readonly above: number
  readonly below: number
}

/** The last edges over and under a stretch of a face, and the points where it begins and ends from left to right. */
export interface Window {
  readonly top: Edge
  readonly bottom: Edge
  readonly left: number
  readonly right: number
}

export interface Overlay {
  readonly edges: readonly Edge[]
  /** The sum in each face; face 0 is the outside. */
  readonly sums: readonly number[]
  /** One for each face except the first, if requested. */
  readonly windows: ReadonlyMap<number, Window>
  /** Pairs of faces that turned out to be one. */
  readonly same: readonly (readonly [number, number])[]
  /** Faces in which a patch has fabric along one of its sides. */
  readonly held: readonly { readonly face: number; readonly patch: number }[]
}

interface OverlayInput {
  /** The stretches of one group never cross or touch but at their ends. */
  readonly groups?: readonly (readonly Stretch[])[]
  /** Stretches that may cross anything. */
  readonly loose?: readonly Stretch[]
  readonly sides?: readonly PatchSide[]
  /** Whether to give `windows`. */
  readonly windows?: boolean
}

export function overlay(points: Points, { groups = [], loose = [], sides = [], windows = false }: OverlayInput): Overlay {
  const all = [...loose, ...groups.flat(), ...sides]
  const sizes = [...loose.map(() => 1), ...groups.map((group) => group.length), sides.length]
  return new Sweep(points, all, cutsOf(points, all, sizes), windows).run()
}

/** An edge under way, or about to begin; `end` is the place of its end in the order of all points. */
interface Active {
  readonly line: number
  readonly from: number
  readonly to: number
  readonly end: number
  jump: number
  above: number
  below: number
}

class Sweep {
  private readonly points: Points
  private readonly all: readonly Stretch[]
  private readonly looks: boolean
  /** The points from left to right, each once. */
  private readonly order: number[] = []
  /** Pieces of stretches between two cuts, in chains of those that start at one place. */
  private readonly pieces: { readonly stretch: Int32Array; readonly end: Int32Array; readonly next: Int32Array }
  private count = 0
  private readonly starting: number[] = []
  /** From top to bottom. */
  private readonly active: Active[] = []
  private readonly edges: Edge[] = []
  private readonly sums: number[] = [0]
  private readonly windows = new Map<number, Window>()
  private readonly same: [number, number][] = []
  private readonly held: { face: number; patch: number }[] = []
  /** Edges on this upright line under which a face opened. */
  private readonly opened = new Set<Edge>()

  constructor(points: Points, all: readonly Stretch[], cuts: Cuts, looks: boolean) {
    this.points = points
    this.looks = looks
    this.all = all
    const most = cuts.reduce((sum, own) => sum + (own?.length ?? 0), all.length)
    this.pieces = { stretch: new Int32Array(most), end: new Int32Array(most), next: new Int32Array(most) }
    const places = this.placesOf(all, cuts)
    const place = (point: number): number => places.get(point) as number
    all.forEach(({ from, to }, index) => {
      let start = place(from)
      const own = cuts[index]
      if (own !== undefined)
        for (const end of own.map(place).sort((a, b) => a - b)) {
          if (end > start) this.piece(index, start, end)
          start = end
        }
      this.piece(index, start, place(to))
    })
  }

  private placesOf(all: readonly Stretch[], cuts: Cuts): Map<number, number> {
    const places = new Map<number, number>()
    for (const { from, to } of all) places.set(from, 0).set(to, 0)
    for (const own of cuts) for (const point of own ?? []) places.set(point, 0)
    for (const point of [...places.keys()].sort((a, b) => this.points.order(a, b))) {
      const last = this.order.at(-1)
      if (last === undefined || this.points.order(last, point) !== 0) {
        this.order.push(point)
        this.starting.push(-1)
      }
      places.set(point, this.order.length - 1)
    }
    return places
  }

  private piece(stretch: number, start: number, end: number): void {
    this.pieces.stretch[this.count] = stretch
    this.pieces.end[this.count] = end
    this.pieces.next[this.count] = this.starting[start] as number
    this.starting[start] = this.count++
  }

  run(): Overlay {
    let left = 0
    this.order.forEach((point, place) => {
      if (this.points.orderAcross(this.order[left] as number, point) !== 0) {
        this.look(this.order[left] as number, point)
        left = place
      }
      this.pass(point, place)
    })
    return { edges: this.edges, sums: this.sums, windows: this.windows, same: this.same, held: this.held }
  }

  private pass(point: number, place: number): void {
    const first = this.firstAtOrBelow(point, place)
    let next = first
    while (this.active[next]?.end === place) next++
    const above = this.active[first - 1]?.below ?? 0
    const below = next > first ? (this.active[next - 1] as Active).below : above
    const begun = this.begun(point, place)
    this.open(begun, above, below)
    if (begun.length === 0 && above !== below) this.same.push([above, below])
    if (begun.length === next - first) for (const [index, edge] of begun.entries()) this.active[first + index] = edge
    else this.active.splice(first, next - first, ...begun)
    this.hold(place, begun, above)
  }

  /** The place of the first edge under way that ends at a point or runs below it. */
  private firstAtOrBelow(point: number, place: number): number {
    let [low, high] = [0, this.active.length]
    while (low < high) {
      const middle = (low + high) >> 1
      const { line, end } = this.active[middle] as Active
      if (end === place || this.points.side(line, point) < 0) high = middle
      else low = middle + 1
    }
    return low
  }

  /** The edges that begin at a point, from top to bottom; pieces on the same line are merged, and dropped where they add nothing (a single one stays, and divides nothing). */
  private begun(point: number, place: number): Active[] {
    const { stretch, end, next } = this.pieces
    const begun: Active[] = []
    for (let piece = this.starting[place] as number; piece >= 0; piece = next[piece] as number) {
      const { line, jump } = this.all[stretch[piece] as number] as Stretch
      if (jump === 0) continue
      const twin = begun.find((edge) => edge.line === line)
      if (twin !== undefined) twin.jump += jump
      else {
        const ends = end[piece] as number
        begun.push({ line, from: point, to: this.order[ends] as number, end: ends, jump, above: 0, below: 0 })
      }
    }
    if (begun.length < 2) return begun
    return begun.filter(({ jump }) => jump !== 0).sort((a, b) => this.points.turn(b.line, a.line))
  }

  /** Between two edges that begin at one point a face opens. */
  private open(begun: readonly Active[], above: number, below: number): void {
    let over = above
    begun.forEach((edge, index) => {
      edge.above = over
      if (index + 1 === begun.length) edge.below = below
      else {
        edge.below = this.sums.push((this.sums[over] as number) + edge.jump) - 1
        if (this.looks) this.opened.add(edge)
      }
      over = edge.below
      this.edges.push(edge)
    })
  }

  /** The face on the fabric's side of each patch's side that begins at a point, among the edges that do. */
  private hold(place: number, begun: readonly Active[], above: number): void {
    const { stretch, next } = this.pieces
    for (let piece = this.starting[place] as number; piece >= 0; piece = next[piece] as number) {
      const side = this.all[stretch[piece] as number] as Stretch | PatchSide
      if ('patch' in side) this.held.push({ face: this.faceBeside(side, begun, above), patch: side.patch })
    }
  }

  private faceBeside({ line, below }: PatchSide, begun: readonly Active[], above: number): number {
    let face = above
    for (const edge of begun) {
      const turn = edge.line === line ? 0 : this.points.turn(edge.line, line)
      if (turn < 0) break
      if (turn === 0) return below ? edge.below : edge.above
      face = edge.below
    }
    return face
  }

  /** Between two upright lines with no point between them, what lies under each edge is one window. */
  private look(left: number, right: number): void {
    if (this.opened.size === 0) return
    this.active.forEach((edge, index) => {
      const bottom = this.active[index + 1]
      if (bottom !== undefined && this.opened.has(edge)) this.windows.set(edge.below, { top: edge, bottom, left, right })
    })
    this.opened.clear()
  }
}
