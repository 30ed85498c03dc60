/**
 * Sizes of the block and of the pieces it is sewn from, in the measure's unit.
 *
 * Finished is the size in the sewn block; unfinished adds a seam allowance on every side.
 */
import type { Laid, LaidPatch } from '../block/lay.ts'
import { cellOf, seamOf } from '../block/lengthsOf.ts'
import { add, multiply, type Rational, rational, subtract, toNumber } from '../exact/rational.ts'
import type { Seam } from '../piecing/values.ts'
import { type Dot, doubleArea } from '../plane/points.ts'

/** Width and height of the block: finished, unfinished, and unfinished with its borders on. */
export function sizesOf(laid: Laid): { finished: [number, number]; unfinished: [number, number]; withBorders: [number, number] } {
  const { block } = laid
  const cell = cellOf(block)
  const seams = multiply(seamOf(block), rational(2))
  const around = multiply(multiply(laid.depths.at(-1) as Rational, cell), rational(2))
  const finished = [multiply(rational(block.grid.columns), cell), multiply(rational(block.grid.rows), cell)] as const
  const both = (change: (length: Rational) => Rational): [number, number] => [toNumber(change(finished[0])), toNumber(change(finished[1]))]
  return {
    finished: both((length) => length),
    unfinished: both((length) => add(length, seams)),
    withBorders: both((length) => add(add(length, seams), around)),
  }
}

/** The box that a piece lies in, and twice its area, in steps. */
export interface Extent {
  readonly x0: number
  readonly y0: number
  readonly x1: number
  readonly y1: number
  readonly area: bigint
}

/** The unfinished size of each piece that a seam makes. Call it with the seams in sewing order. */
export class PieceSizes {
  private readonly laid: Laid
  private readonly cell: Rational
  private readonly allowances: Rational
  private readonly known = new Map<number, number>()
  private readonly made: Extent[] = []

  constructor(laid: Laid) {
    this.laid = laid
    this.cell = cellOf(laid.block)
    this.allowances = multiply(seamOf(laid.block), rational(2))
  }

  /** The extent of the next piece; `known` where it is the same as before an edit. */
  next({ sides }: Seam, known: Extent | undefined): Extent {
    const extent = known ?? together(this.extent(sides[0]), this.extent(sides[1]))
    this.made.push(extent)
    return extent
  }

  /** Unfinished width and height of a piece that is a rectangle square to the grid, in the measure's unit; else null. */
  unfinished({ x0, y0, x1, y1, area }: Extent): [number, number] | null {
    if (BigInt(x1 - x0) * BigInt(y1 - y0) * 2n !== area) return null
    const { width, height, places } = this.laid
    if (x0 >= 0 && y0 >= 0 && x1 <= width && y1 <= height) return [this.inGrid(x1 - x0), this.inGrid(y1 - y0)]
    return [this.length(places.x(x0), places.x(x1)), this.length(places.y(y0), places.y(y1))]
  }

  private extent(piece: number): Extent {
    const { patches } = this.laid
    return piece < patches.length ? extentOf((patches[piece] as LaidPatch).corners) : (this.made[piece - patches.length] as Extent)
  }

  private inGrid(steps: number): number {
    const length = this.known.get(steps) ?? this.length(rational(0), rational(steps, this.laid.den))
    this.known.set(steps, length)
    return length
  }

  private length(from: Rational, to: Rational): number {
    return toNumber(add(multiply(subtract(to, from), this.cell), this.allowances))
  }
}

const together = (a: Extent, b: Extent): Extent => ({
  x0: Math.min(a.x0, b.x0),
  y0: Math.min(a.y0, b.y0),
  x1: Math.max(a.x1, b.x1),
  y1: Math.max(a.y1, b.y1),
  area: a.area + b.area,
})

function extentOf(corners: readonly Dot[]): Extent {
  const xs = corners.map(([x]) => x)
  const ys = corners.map(([, y]) => y)
  return { x0: Math.min(...xs), y0: Math.min(...ys), x1: Math.max(...xs), y1: Math.max(...ys), area: doubleArea(corners) }
}
