/**
 * Where whole-number steps of a laid block really are, and back.
 *
 * In      the size of the grid in steps, the steps to a cell, and how deep the borders are, in cells.
 * Out     positions in cells: exact, as doubles, or as a report writes them. A border of any width stands one cell wide in steps; here it gets its
 *         true width back.
 * Exact   fractions where they are asked for; doubles only for lengths that are printed or compared by size.
 */
import { add, compare, divide, multiply, type Rational, rational, subtract, toFile, toNumber, ZERO } from '../exact/rational.ts'
import type { Dot } from '../plane/points.ts'
import type { ExactPoint } from '../units/kinds.ts'
import type { Position } from '../values/block.ts'

/** The size of a laid block: `den` steps to a cell; the grid's `width` and `height` in steps; the total border width up to each border in cells. */
interface Size {
  readonly den: number
  readonly width: number
  readonly height: number
  readonly depths: readonly Rational[]
}

export class Places {
  private readonly size: Size

  constructor(size: Size) {
    this.size = size
  }

  /** The true x of a step, in cells. */
  x(step: number): Rational {
    return cellsAt(step, this.size.width, this.size)
  }

  /** The true y of a step, in cells. */
  y(step: number): Rational {
    return cellsAt(step, this.size.height, this.size)
  }

  /** A dot (steps) in cells, as doubles: for lengths that are printed or compared by size. */
  cells([x, y]: Dot): [number, number] {
    const { den, width, height } = this.size
    const plain = x >= 0 && y >= 0 && x <= width && y <= height
    return plain ? [x / den, y / den] : [toNumber(this.x(x)), toNumber(this.y(y))]
  }

  /** A dot (steps) in cells, as the report writes it. */
  written([x, y]: Dot): readonly [Position, Position] {
    return [written(x, this.size.width, this.size), written(y, this.size.height, this.size)]
  }

  /** The steps of a point given in cells (inside the grid or in a border); null beyond the block. */
  steps([x, y]: ExactPoint): ExactPoint | null {
    const across = stepsAt(x, this.size.width, this.size)
    const down = stepsAt(y, this.size.height, this.size)
    return across === null || down === null ? null : [across, down]
  }
}

function cellsAt(step: number, extent: number, { den, depths }: Size): Rational {
  if (step >= 0 && step <= extent && step % den === 0) return { n: BigInt(step / den), d: 1n }
  if (step < 0) return subtract(ZERO, depths[-step / den] as Rational)
  if (step > extent) return add(rational(extent, den), depths[(step - extent) / den] as Rational)
  return rational(step, den)
}

function stepsAt(place: Rational, extent: number, { den, depths }: Size): Rational | null {
  const steps = multiply(place, rational(den))
  const beyond = steps.n < 0n ? subtract(ZERO, place) : subtract(place, rational(extent, den))
  if (beyond.n <= 0n) return steps
  for (let border = 1; border < depths.length; border++) {
    const outer = depths[border] as Rational
    const inner = depths[border - 1] as Rational
    if (compare(beyond, outer) > 0) continue
    const within = multiply(add(rational(border - 1), divide(subtract(beyond, inner), subtract(outer, inner))), rational(den))
    return steps.n < 0n ? subtract(ZERO, within) : add(rational(extent), within)
  }
  return null
}

/** With a power of two of steps to a cell, and no more than this, the decimal of a step is short and reads back exactly. */
const SHORT = 1024

/** Whole cells, and steps whose decimal is short, need no fraction. */
function written(step: number, extent: number, size: Size): Position {
  const { den } = size
  const plain = step >= 0 && step <= extent && (step % den === 0 || (den <= SHORT && (den & (den - 1)) === 0))
  return plain ? step / den : toFile(cellsAt(step, extent, size))
}
