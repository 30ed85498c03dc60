/**
 * The plane of a block: points, and the seam pieces between them with the patch on either side.
 *
 * In      patches as clockwise polygons of whole numbers, and the outline of the whole.
 * Out     every stretch of patch outline, cut at every corner that lies on it, with what lies on its two sides; and whether the patches
 *         cover the outline once everywhere.
 * Exact   the number of layers of fabric jumps across an outline by (patches on one side) − (patches on the other). Where that jump is
 *         zero on every stretch (the outside counted as one more patch), the number of layers is one everywhere: no gap, no overlap.
 */
import { type Dot, greatestCommon } from './points.ts'

/** The side beyond the outline. */
export const OUTSIDE = -1

export interface Plane {
  readonly dots: readonly Dot[]
  readonly edges: readonly PlaneEdge[]
  /** Numbers of the edges that end at each dot. */
  readonly around: readonly (readonly number[])[]
  /** Stretches where the number of layers jumps; empty where the patches cover the outline once. */
  readonly faults: readonly Fault[]
}

/** From dot `a` to dot `b`, which runs right (or straight down); `plus` is the patch on its clockwise side (below a line that runs right). */
export interface PlaneEdge {
  readonly a: number
  readonly b: number
  readonly plus: number
  readonly minus: number
  /** Edges on one straight line share this number. */
  readonly line: number
}

/** Layers on the clockwise side of `from`→`to` less those on the other. */
export interface Fault {
  readonly from: Dot
  readonly to: Dot
  readonly jump: number
}

export function subdivide(patches: readonly (readonly Dot[])[], outline: readonly Dot[]): Plane {
  const { dots, edges, around, faults } = new Subdivision(patches, outline)
  return { dots, edges, around, faults }
}

type Polygon = readonly Dot[]

interface Stretch {
  readonly start: number
  readonly end: number
  patch: number
  readonly plus: boolean
}

/** Stretches on one straight line, and what they were cut into. */
interface Line {
  readonly number: number
  readonly dx: number
  readonly dy: number
  /** A point on it, from which the rest follow. */
  readonly origin: Dot
  readonly stretches: Stretch[]
  edges: number[]
  faults: readonly Fault[]
}

type DraftEdge = { -readonly [key in keyof PlaneEdge]: PlaneEdge[key] }

/** Takes the place of a removed edge: it ends nowhere and has no fabric beside it. */
const GONE: PlaneEdge = { a: -1, b: -1, plus: OUTSIDE, minus: OUTSIDE, line: -1 }

/**
 * A plane that changes with its patches: only lines on which some patch changed are cut again.
 *
 * Kept    dots keep their numbers, even those without a patch, which then have nothing around them; numbers of removed edges are used again.
 *         So everything known of an unchanged piece stays valid.
 */
export class Subdivision implements Plane {
  readonly dots: Dot[] = []
  readonly edges: PlaneEdge[] = []
  readonly around: number[][] = []
  /** Numbers of the edges along each patch. */
  readonly beside: number[][] = []
  private readonly lines = new Lines()
  private readonly numbers = new Map<number, Map<number, number>>()
  private readonly free: number[] = []
  private readonly faulty = new Set<Line>()

  constructor(patches: readonly Polygon[], outline: Polygon) {
    patches.forEach((corners, patch) => {
      this.beside.push([])
      this.put(corners, patch)
    })
    this.put([...outline].reverse(), OUTSIDE)
    for (const line of this.lines.all) this.cut(line)
  }

  get faults(): Fault[] {
    return [...this.faulty].flatMap((line) => line.faults)
  }

  /** The number of a dot that is or was a corner of some patch. */
  dotAt([x, y]: Dot): number | undefined {
    return this.numbers.get(x)?.get(y)
  }

  /**
   * Removes some patches and adds others; the rest keep their shapes. `numbers` gives the new number of each old patch, −1 for a removed one; null where no
   * number changes.
   */
  change(gone: ReadonlyMap<number, Polygon>, come: ReadonlyMap<number, Polygon>, numbers: Int32Array | null, count: number): void {
    const touched = new Set<Line>()
    for (const [patch, corners] of gone) for (const line of this.take(corners, patch)) touched.add(line)
    for (const line of touched) this.uncut(line)
    if (numbers !== null) this.renumber(numbers, count)
    while (this.beside.length < count) this.beside.push([])
    this.beside.length = count
    const fresh = new Set(touched)
    for (const [patch, corners] of come) for (const line of this.put(corners, patch)) fresh.add(line)
    for (const line of fresh) {
      if (!touched.has(line)) this.uncut(line)
      this.cut(line)
    }
  }

  private renumber(numbers: Int32Array, count: number): void {
    const now = (patch: number): number => (patch === OUTSIDE ? OUTSIDE : (numbers[patch] as number))
    for (const edge of this.edges as DraftEdge[]) {
      if (edge === GONE) continue
      edge.plus = now(edge.plus)
      edge.minus = now(edge.minus)
    }
    for (const { stretches } of this.lines.all) for (const stretch of stretches) stretch.patch = now(stretch.patch)
    const before = [...this.beside]
    this.beside.length = 0
    for (let patch = 0; patch < count; patch++) this.beside.push([])
    numbers.forEach((patch, old) => {
      if (patch >= 0) this.beside[patch] = before[old] as number[]
    })
  }

  private put(corners: Polygon, patch: number): Line[] {
    return corners.map((from, place) => {
      const to = corners[(place + 1) % corners.length] as Dot
      const forward = to[0] > from[0] || (to[0] === from[0] && to[1] > from[1])
      const [left, right] = forward ? [from, to] : [to, from]
      const line = this.lines.through(left, right)
      const axis = line.dx === 0 ? 1 : 0
      line.stretches.push({ start: left[axis], end: right[axis], patch, plus: forward })
      return line
    })
  }

  private take(corners: Polygon, patch: number): Line[] {
    return corners.map((from, place) => {
      const to = corners[(place + 1) % corners.length] as Dot
      const [left, right] = to[0] > from[0] || (to[0] === from[0] && to[1] > from[1]) ? [from, to] : [to, from]
      const line = this.lines.through(left, right)
      const start = left[line.dx === 0 ? 1 : 0]
      line.stretches.splice(
        line.stretches.findIndex((stretch) => stretch.patch === patch && stretch.start === start),
        1,
      )
      return line
    })
  }

  private uncut(line: Line): void {
    for (const edge of line.edges) {
      const { a, b, plus, minus } = this.edges[edge] as PlaneEdge
      for (const list of [this.around[a], this.around[b], this.beside[plus], this.beside[minus]]) list?.splice(list.indexOf(edge), 1)
      this.edges[edge] = GONE
      this.free.push(edge)
    }
    line.edges = []
    line.faults = []
    this.faulty.delete(line)
  }

  private cut(line: Line): void {
    const faults: Fault[] = []
    sweep(line.stretches, (start, end, plus, minus) => {
      if (plus.length === 1 && minus.length === 1) this.edge(line, start, end, plus[0] as number, minus[0] as number)
      else if (plus.length !== minus.length) faults.push({ from: along(line, start), to: along(line, end), jump: plus.length - minus.length })
    })
    line.faults = faults
    if (faults.length > 0) this.faulty.add(line)
  }

  private edge(line: Line, start: number, end: number, plus: number, minus: number): void {
    const [a, b] = [this.numberOf(along(line, start)), this.numberOf(along(line, end))]
    const edge = this.free.pop() ?? this.edges.length
    this.edges[edge] = { a, b, plus, minus, line: line.number }
    line.edges.push(edge)
    for (const list of [this.around[a], this.around[b], this.beside[plus], this.beside[minus]]) list?.push(edge)
  }

  private numberOf(dot: Dot): number {
    let column = this.numbers.get(dot[0])
    if (column === undefined) {
      column = new Map()
      this.numbers.set(dot[0], column)
    }
    const known = column.get(dot[1])
    if (known !== undefined) return known
    column.set(dot[1], this.dots.length)
    this.around.push([])
    return this.dots.push(dot) - 1
  }
}

/** Straight lines by their direction in lowest terms and how far they pass from the origin. */
class Lines {
  readonly all: Line[] = []
  private readonly known = new Map<number, Map<number, Map<number | bigint, Line>>>()

  /** `left` comes first: the line runs right, or straight down. */
  through(left: Dot, right: Dot): Line {
    const [wide, high] = [right[0] - left[0], right[1] - left[1]]
    const common = wide === 0 ? high : high === 0 ? wide : greatestCommon(wide, high)
    const [dx, dy] = [wide / common, high / common]
    const there = inner(inner(this.known, dx), dy)
    const offset = offsetOf(dx, dy, left)
    const known = there.get(offset)
    if (known !== undefined) return known
    const line: Line = { number: this.all.length, dx, dy, origin: left, stretches: [], edges: [], faults: [] }
    there.set(offset, line)
    this.all.push(line)
    return line
  }
}

function inner<Value>(known: Map<number, Map<number, Value>>, key: number): Map<number, Value>
function inner<Value>(known: Map<number, Map<number | bigint, Value>>, key: number): Map<number | bigint, Value>
function inner(known: Map<number, Map<unknown, unknown>>, key: number): Map<unknown, unknown> {
  const there = known.get(key)
  if (there !== undefined) return there
  const made = new Map<unknown, unknown>()
  known.set(key, made)
  return made
}

function offsetOf(dx: number, dy: number, [x, y]: Dot): number | bigint {
  const near = Math.max(Math.abs(dx), Math.abs(dy)) * Math.max(Math.abs(x), Math.abs(y)) < 2 ** 51
  return near ? dx * y - dy * x : BigInt(dx) * BigInt(y) - BigInt(dy) * BigInt(x)
}

/** The dot of a line at x (at y on an upright line). Whole, because every stretch begins and ends on dots of that line. */
function along({ dx, dy, origin }: Line, place: number): Dot {
  if (dx === 0) return [origin[0], place]
  return [place, origin[1] + ((place - origin[0]) / dx) * dy]
}

function sweep(stretches: readonly Stretch[], each: (start: number, end: number, plus: readonly number[], minus: readonly number[]) => void): void {
  const starts = [...stretches].sort((a, b) => a.start - b.start)
  const ends = [...stretches].sort((a, b) => a.end - b.end)
  const plus: number[] = []
  const minus: number[] = []
  let next = 0
  let place = 0
  for (const ended of ends) {
    while (next < starts.length && (starts[next] as Stretch).start < ended.end) {
      const begun = starts[next] as Stretch
      if (begun.start > place && plus.length + minus.length > 0) each(place, begun.start, plus, minus)
      place = plus.length + minus.length > 0 ? Math.max(place, begun.start) : begun.start
      ;(begun.plus ? plus : minus).push(begun.patch)
      next++
    }
    if (ended.end > place && plus.length + minus.length > 0) each(place, ended.end, plus, minus)
    place = ended.end
    const side = ended.plus ? plus : minus
    side.splice(side.indexOf(ended.patch), 1)
  }
}
