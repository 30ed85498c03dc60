/** A quilt's lengths, exact, in its unit of measure: what is written, or what is usual for its way of joining. */
import { lengthOf, seamOf } from '../block/lengthsOf.ts'
import { add, multiply, type Rational, rational, ZERO } from '../exact/rational.ts'
import type { Block } from '../values/block.ts'
import type { Quilt, Way } from '../values/quilt.ts'

export type ExactSize = readonly [width: Rational, height: Rational]

export interface Measures {
  readonly inches: boolean
  readonly seam: Rational
  readonly join: Way
  readonly cell: ExactSize
  /** Between finished areas of neighbours. */
  readonly gap: Rational
  /** Of the joining strip, the rim or the strip over the zigzag; 0 where there is none. */
  readonly width: Rational
  /** How far layers are cut beyond what is trimmed. */
  readonly over: Rational
}

/** A length so many times. */
export const times = (length: Rational, count: number): Rational => multiply(length, rational(count))
/** Lengths added up. */
export const sum = (...lengths: readonly Rational[]): Rational => lengths.reduce(add, ZERO)

/** Usual widths: the rim of [S248] 3/4 in or 2 cm; a strip over the zigzag 1 in or 2.5 cm, common practice, no source. */
export function measuresOf(quilt: Quilt): Measures {
  const { unit } = quilt.measure
  const inches = unit === 'in'
  const seam = seamOf({ measure: quilt.measure } as Block)
  const way = quilt.way ?? {}
  const join = way.join ?? 'whole'
  const { cell } = quilt.grid
  const [across, down] = typeof cell === 'object' ? cell : [cell, cell]
  const seams = times(seam, 2)
  const usual: Readonly<Record<Way, Rational>> = {
    whole: ZERO,
    fronts: ZERO,
    strips: seams,
    'backing-over': inches ? rational(3, 4) : rational(2),
    butted: inches ? rational(1) : rational(5, 2),
  }
  const width = way.width === undefined || join === 'whole' || join === 'fronts' ? usual[join] : lengthOf(way.width)
  const sash = join === 'whole' && way.sash !== undefined ? lengthOf(way.sash.width) : ZERO
  const gaps: Readonly<Record<Way, Rational>> = { whole: sash, strips: width, fronts: ZERO, 'backing-over': seams, butted: seams }
  const over = way.over === undefined ? (join === 'fronts' ? ZERO : inches ? rational(1) : rational(5, 2)) : lengthOf(way.over)
  return { inches, seam, join, cell: [lengthOf(across), lengthOf(down)], gap: gaps[join], width, over }
}

/** Finished cells side by side with the gaps between them. */
export function spanOf({ cell, gap }: Measures, axis: 0 | 1, cells: number): Rational {
  return add(times(cell[axis], cells), times(gap, cells - 1))
}

/** Where a cell begins, from the first one's finished edge. */
export const startOf = ({ cell, gap }: Measures, axis: 0 | 1, index: number): Rational => times(add(cell[axis], gap), index)
