/**
 * How many pieces a length of fabric gives, and what to buy.
 *
 * In      lengths in the measure's unit.
 * Out     whole pieces: strips are cut across the fabric, then into pieces side by side; none is turned.
 * Source  squares in a yard [S114], in a fat quarter [S118]; fractions of a yard [S122].
 */
import { EPSILON, roundUp } from '../../exact/lengths.ts'

export const INCHES_IN_A_YARD = 36
const CM_IN_A_METRE = 100

/** Strips of one height from a length of fabric, once its end is straightened. */
export const stripsFrom = (length: number, height: number, straightening = 0): number =>
  Math.max(0, Math.floor((length - straightening) / height + EPSILON))

/** Pieces `wide` by `high` from a piece of fabric. */
export const piecesFrom = (fabric: readonly [number, number], [wide, high]: readonly [number, number], straightening = 0): number =>
  stripsFrom(fabric[1], high, straightening) * stripsFrom(fabric[0], wide)

/** How much to buy: yards, up to the next eighth, or metres, up to the next tenth. */
export const toBuy = (length: number, unit: 'in' | 'cm'): number =>
  unit === 'in' ? roundUp(length / INCHES_IN_A_YARD, 1 / 8) : Math.round(roundUp(length / CM_IN_A_METRE, 0.1) * 10) / 10
