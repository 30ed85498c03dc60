/** A block's lengths, exact: the value that is written, or the measure's usual one. */
import { parseRational, type Rational, rational } from '../exact/rational.ts'
import type { Block, Length } from '../values/block.ts'

/** A length of a block that has been read, in the measure's unit. */
export function lengthOf(length: Length): Rational {
  const found = parseRational(length)
  if (found === null) throw new Error('impossible: a length that was never read')
  return found
}

/** A cell's side, in the measure's unit, finished. */
export const cellOf = (block: Block): Rational => lengthOf(block.grid.cell)

/** The seam allowance: 1/4 in [S70] or 0.75 cm [S20]. */
export const seamOf = ({ measure }: Block): Rational =>
  measure.seam === undefined ? (measure.unit === 'in' ? rational(1, 4) : rational(3, 4)) : lengthOf(measure.seam)

/** What cut sizes are rounded up to: 1/8 in or 0.5 cm (common practice, no source). */
export const roundOf = ({ measure }: Block): Rational =>
  measure.round === undefined ? (measure.unit === 'in' ? rational(1, 8) : rational(1, 2)) : lengthOf(measure.round)

/** The cloth's usable width: 42 in [S199][S71] or 106 cm. */
export const usableWidthOf = ({ measure, cloth }: Block): Rational =>
  cloth?.usableWidth === undefined ? rational(measure.unit === 'in' ? 42 : 106) : lengthOf(cloth.usableWidth)
