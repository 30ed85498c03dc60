/**
 * The order in which the places of a quilt are joined.
 *
 * In      places as boxes of whole cells; `rows`, `columns` or `sections`.
 * Out     joints in sewing order, in cells: each cuts its piece from edge to edge; null where the places cannot be joined by straight full-length joints.
 */
import { add, compare, multiply, type Rational, subtract, ZERO } from '../exact/rational.ts'
import type { LaidPlace } from './places.ts'

export const JOINT_ORDERS = ['rows', 'columns', 'sections'] as const
export type JointOrder = (typeof JOINT_ORDERS)[number]
type JointStage = 'row' | 'column' | 'section' | 'quilt'

/** Cells: left, top, right, bottom. */
export type CellBox = readonly [number, number, number, number]

export interface CellJoint {
  readonly stage: JointStage
  /** 0: the joint stands upright; 1: it lies flat. */
  readonly axis: 0 | 1
  /** The grid line it lies on, and from which to which line it runs. */
  readonly cut: number
  readonly from: number
  readonly to: number
  /** A place by its number, or an earlier joint j as places + j. */
  readonly sides: readonly [number, number]
  readonly boxes: readonly [CellBox, CellBox]
}

interface Piece {
  readonly places: readonly number[]
  readonly box: CellBox
}

/** Finished measures of a box of cells: what the most equal halves and the longer side are judged by. */
type SpanOf = (axis: 0 | 1, cells: number) => Rational

export function jointsOf(places: readonly LaidPlace[], order: JointOrder, span: SpanOf): readonly CellJoint[] | null {
  if (places.length === 0) return []
  const boxes = places.map(({ place: { at }, size }): CellBox => [at[0], at[1], at[0] + size[0], at[1] + size[1]])
  return new Joiner(boxes, span).all(order)
}

class NoStraightJoint extends Error {}

class Joiner {
  private readonly joints: CellJoint[] = []
  private readonly boxes: readonly CellBox[]
  private readonly span: SpanOf

  constructor(boxes: readonly CellBox[], span: SpanOf) {
    this.boxes = boxes
    this.span = span
  }

  all(order: JointOrder): readonly CellJoint[] | null {
    const whole = this.pieceOf(this.boxes.map((_, index) => index))
    try {
      if (order === 'sections') this.halved(whole, 'quilt')
      else this.slabs(whole, order)
      return this.joints
    } catch (error) {
      if (error instanceof NoStraightJoint) return null
      throw error
    }
  }

  private pieceOf(places: readonly number[]): Piece {
    const own = places.map((place) => this.boxes[place] as CellBox)
    const least = (side: 0 | 1): number => Math.min(...own.map((box) => box[side]))
    const most = (side: 2 | 3): number => Math.max(...own.map((box) => box[side]))
    return { places, box: [least(0), least(1), most(2), most(3)] }
  }

  /** The grid lines across the piece that cut through none of its places. */
  private cuts({ places, box }: Piece, axis: 0 | 1): number[] {
    const free = new Array(box[axis + 2] as number).fill(true)
    for (const place of places) {
      const own = this.boxes[place] as CellBox
      for (let line = (own[axis] as number) + 1; line < (own[axis + 2] as number); line++) free[line] = false
    }
    const lines: number[] = []
    for (let line = (box[axis] as number) + 1; line < (box[axis + 2] as number); line++) if (free[line]) lines.push(line)
    return lines
  }

  private parts(piece: Piece, axis: 0 | 1, cuts: readonly number[]): Piece[] {
    const edges = [...cuts, Number.POSITIVE_INFINITY]
    const parts: number[][] = edges.map(() => [])
    for (const place of piece.places) parts[edges.findIndex((edge) => ((this.boxes[place] as CellBox)[axis] as number) < edge)]?.push(place)
    return parts.map((places) => this.pieceOf(places))
  }

  private join(axis: 0 | 1, stage: JointStage, one: Piece & { by: number }, other: Piece & { by: number }): Piece & { by: number } {
    const whole = this.pieceOf([...one.places, ...other.places])
    const along = axis === 0 ? 1 : 0
    this.joints.push({
      stage,
      axis,
      cut: other.box[axis] as number,
      from: whole.box[along] as number,
      to: whole.box[along + 2] as number,
      sides: [one.by, other.by],
      boxes: [one.box, other.box],
    })
    return { ...whole, by: this.boxes.length + this.joints.length - 1 }
  }

  /** Slabs, every one made before they are joined; in each the items between its cuts. */
  private slabs(whole: Piece, order: 'rows' | 'columns'): void {
    const [across, along] = order === 'rows' ? ([1, 0] as const) : ([0, 1] as const)
    const made = this.parts(whole, across, this.cuts(whole, across)).map((slab) => {
      const items = this.parts(slab, along, this.cuts(slab, along)).map((item) => this.halved(item, 'section'))
      return items.reduce((one, other) => this.join(along, order === 'rows' ? 'row' : 'column', one, other))
    })
    made.reduce((one, other) => this.join(across, 'quilt', one, other))
  }

  private halved(piece: Piece, last: JointStage): Piece & { by: number } {
    const [only, second] = piece.places
    if (only !== undefined && second === undefined) return { ...piece, by: only }
    const { axis, cut } = this.bestCut(piece)
    const [one, other] = this.parts(piece, axis, [cut]).map((half) => this.halved(half, 'section')) as [
      Piece & { by: number },
      Piece & { by: number },
    ]
    return this.join(axis, last, one, other)
  }

  private bestCut(piece: Piece): { axis: 0 | 1; cut: number } {
    const { box } = piece
    const sizes = [this.span(0, box[2] - box[0]), this.span(1, box[3] - box[1])] as const
    const longer: 0 | 1 = compare(sizes[1], sizes[0]) > 0 ? 1 : 0
    const axes: readonly (0 | 1)[] = [longer, longer === 0 ? 1 : 0]
    let best: { axis: 0 | 1; cut: number; apart: Rational } | null = null
    for (const axis of axes)
      for (const cut of this.cuts(piece, axis)) {
        const beside = sizes[axis === 0 ? 1 : 0] as Rational
        const difference = subtract(this.span(axis, cut - (box[axis] as number)), this.span(axis, (box[axis + 2] as number) - cut))
        const size = multiply(difference.n < 0n ? subtract(ZERO, difference) : difference, beside)
        if (best === null || compare(size, best.apart) < 0) best = { axis, cut, apart: add(size, ZERO) }
      }
    if (best === null) throw new NoStraightJoint()
    return best
  }
}
