/**
 * Outlines laid over each other: every stretch cut where it meets another, and the faces between them.
 *
 * In      groups of stretches, each with what it adds from one side to the other; stretches of one group never cross or touch but at their ends.
 * Out     edges that meet only at their ends, and the faces above and below each with the sum of all that was added.
 * How     stretches whose boxes touch are cut at each other; then all points are taken from left to right while the edges under way are kept
 *         from top to bottom. A face opens only where two edges part and closes where they meet, so nothing is cut through the whole plane.
 * Exact   every question is asked of `Points`.
 */
import type { Points } from './points.ts'

/** Runs right, or straight down. */
export interface Stretch {
  readonly line: number
  readonly from: number
  readonly to: number
  /** What the clockwise side (below it) has more than the other. */
  readonly jump: number
}

/** The side of a patch, with its cloth on the clockwise side or the other: it cuts and is cut, and adds nothing. */
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

export interface Arrangement {
  readonly edges: readonly Edge[]
  /** The sum in each face; face 0 is all round. */
  readonly sums: readonly number[]
  /** One for each face but the first. */
  readonly windows: readonly (Window | undefined)[]
  /** Pairs of faces that proved to be one. */
  readonly same: readonly (readonly [number, number])[]
  /** Faces in which a patch has cloth along one of its sides. */
  readonly held: readonly { readonly face: number; readonly patch: number }[]
}

export function arrange(points: Points, groups: readonly (readonly Stretch[])[], sides: readonly PatchSide[] = []): Arrangement {
  const all = [...groups.flat(), ...sides]
  const cuts = cutsOf(points, all, [...groups.flatMap((group, index) => group.map(() => index)), ...sides.map(() => groups.length)])
  return new Sweep(points, all, cuts).run()
}

/** For each stretch the points strictly inside it where another meets it. */
function cutsOf(points: Points, all: readonly Stretch[], group: readonly number[]): number[][] {
  const cuts: number[][] = all.map(() => [])
  const boxes = all.map(({ from, to }) => boxOf(points, from, to))
  const byLeft = all.map((_, index) => index).sort((a, b) => (boxes[a] as Box).left - (boxes[b] as Box).left)
  let open: number[] = []
  for (const next of byLeft) {
    const box = boxes[next] as Box
    const own = group[next]
    let kept = 0
    for (const other of open) {
      const beside = boxes[other] as Box
      if (beside.right < box.left) continue
      open[kept++] = other
      if (group[other] !== own && beside.top <= box.bottom && box.top <= beside.bottom) cutBoth(points, all, cuts, next, other)
    }
    open.length = kept
    open.push(next)
  }
  open = []
  return cuts
}

interface Box {
  readonly left: number
  readonly right: number
  readonly top: number
  readonly bottom: number
}

/** A little too large where a point is not exact. */
function boxOf(points: Points, from: number, to: number): Box {
  const [x0, y0, slack0] = points.near(from)
  const [x1, y1, slack1] = points.near(to)
  const slack = Math.max(slack0, slack1)
  return { left: Math.min(x0, x1) - slack, right: Math.max(x0, x1) + slack, top: Math.min(y0, y1) - slack, bottom: Math.max(y0, y1) + slack }
}

function cutBoth(points: Points, all: readonly Stretch[], cuts: readonly number[][], first: number, second: number): void {
  const [a, b] = [all[first] as Stretch, all[second] as Stretch]
  const cut = (stretch: number, point: number): void => {
    cuts[stretch]?.push(point)
  }
  if (a.line === b.line) {
    const inside = ({ from, to }: Stretch, point: number): boolean => points.order(from, point) < 0 && points.order(point, to) < 0
    for (const point of [b.from, b.to]) if (inside(a, point)) cut(first, point)
    for (const point of [a.from, a.to]) if (inside(b, point)) cut(second, point)
    return
  }
  const [bFrom, bTo] = [points.side(a.line, b.from), points.side(a.line, b.to)]
  if (bFrom * bTo > 0) return
  const [aFrom, aTo] = [points.side(b.line, a.from), points.side(b.line, a.to)]
  if (aFrom * aTo > 0) return
  const [aPasses, bPasses] = [aFrom * aTo < 0, bFrom * bTo < 0]
  if (aPasses && bPasses) {
    const point = points.crossing(a.line, b.line)
    cut(first, point)
    cut(second, point)
  } else if (aPasses) cut(first, bFrom === 0 ? b.from : b.to)
  else if (bPasses) cut(second, aFrom === 0 ? a.from : a.to)
}

/** A piece of a stretch between two cuts; its ends are places in the order of all points. */
interface Piece {
  readonly stretch: Stretch
  readonly start: number
  readonly end: number
}

/** An edge under way. */
interface Active {
  readonly line: number
  readonly end: number
  readonly edge: Edge
}

class Sweep {
  private readonly points: Points
  /** The points from left to right, each once. */
  private readonly order: number[] = []
  /** Pieces by the place where they start. */
  private readonly starting: Piece[][] = []
  /** From top to bottom. */
  private readonly active: Active[] = []
  private readonly edges: Edge[] = []
  private readonly sums: number[] = [0]
  private readonly windows: (Window | undefined)[] = [undefined]
  private readonly same: [number, number][] = []
  private readonly held: { face: number; patch: number }[] = []
  /** Edges on this upright line under which a face opened. */
  private readonly opened = new Set<Edge>()

  constructor(points: Points, all: readonly Stretch[], cuts: readonly (readonly number[])[]) {
    this.points = points
    const places = this.placesOf([...new Set([...all.flatMap(({ from, to }) => [from, to]), ...cuts.flat()])])
    all.forEach((stretch, index) => {
      const stops = [stretch.from, ...(cuts[index] as readonly number[]), stretch.to].map((point) => places.get(point) as number)
      stops.sort((a, b) => a - b)
      for (let next = 1; next < stops.length; next++) {
        const [start, end] = [stops[next - 1] as number, stops[next] as number]
        if (start !== end) this.starting[start]?.push({ stretch, start, end })
      }
    })
  }

  private placesOf(all: number[]): Map<number, number> {
    const places = new Map<number, number>()
    all.sort((a, b) => this.points.order(a, b))
    for (const point of all) {
      const last = this.order.at(-1)
      if (last === undefined || this.points.order(last, point) !== 0) {
        this.order.push(point)
        this.starting.push([])
      }
      places.set(point, this.order.length - 1)
    }
    return places
  }

  run(): Arrangement {
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
    const above = this.active[first - 1]?.edge.below ?? 0
    const below = next > first ? (this.active[next - 1] as Active).edge.below : above
    const pieces = this.starting[place] as Piece[]
    const begun = this.begin(pieces, point, above, below)
    if (begun.length === 0 && above !== below) this.same.push([above, below])
    if (begun.length > 0 || next > first) this.active.splice(first, next - first, ...begun)
    for (const { stretch } of pieces) if ('patch' in stretch) this.held.push(this.hold(stretch as PatchSide, begun, above))
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

  /** The edges that begin at a point, from top to bottom, between the face above and the one below. */
  private begin(pieces: readonly Piece[], point: number, above: number, below: number): Active[] {
    const begun = this.summed(pieces)
    let over = above
    return begun.map(({ stretch: { line }, end, jump }, index) => {
      const under = index + 1 === begun.length ? below : this.open((this.sums[over] as number) + jump)
      const edge: Edge = { line, from: point, to: this.order[end] as number, jump, above: over, below: under }
      if (index + 1 < begun.length) this.opened.add(edge)
      this.edges.push(edge)
      over = under
      return { line, end, edge }
    })
  }

  /** Pieces that lie on each other are one edge, or none where nothing is left to add. */
  private summed(pieces: readonly Piece[]): (Piece & { jump: number })[] {
    const found: (Piece & { jump: number })[] = []
    for (const piece of pieces) {
      if (piece.stretch.jump === 0) continue
      const twin = found.find(({ stretch }) => stretch.line === piece.stretch.line)
      if (twin === undefined) found.push({ ...piece, jump: piece.stretch.jump })
      else twin.jump += piece.stretch.jump
    }
    const left = found.filter(({ jump }) => jump !== 0)
    return left.length > 1 ? left.sort((a, b) => this.points.turn(b.stretch.line, a.stretch.line)) : left
  }

  private open(sum: number): number {
    this.windows.push(undefined)
    return this.sums.push(sum) - 1
  }

  /** The face on the cloth's side of a patch's side that begins among these edges. */
  private hold({ line, below, patch }: PatchSide, begun: readonly Active[], above: number): { face: number; patch: number } {
    let face = above
    for (const { edge } of begun) {
      const turn = edge.line === line ? 0 : this.points.turn(edge.line, line)
      if (turn < 0) break
      if (turn === 0) return { face: below ? edge.below : edge.above, patch }
      face = edge.below
    }
    return { face, patch }
  }

  /** Between two upright lines with no point between them, what lies under each edge is one window. */
  private look(left: number, right: number): void {
    if (this.opened.size === 0) return
    this.active.forEach(({ edge }, index) => {
      const bottom = this.active[index + 1]?.edge
      if (bottom !== undefined && this.opened.has(edge)) this.windows[edge.below] = { top: edge, bottom, left, right }
    })
    this.opened.clear()
  }
}
