/**
 * What to buy of a fabric: fractions of a yard as shops cut them [S122], or tenths of a metre.
 */
import { roundUp } from '../../exact/lengths.ts'
import type { MeasureUnit } from '../../values/block.ts'
import { STRAIGHTEN } from '../sizes/cutSize.ts'

export const INCHES_IN_A_YARD = 36
const CM_IN_A_METRE = 100

/** How much to buy for strips `length` long together, with enough to straighten the end of the fabric; nothing for nothing. */
export const toBuyForStrips = (length: number, unit: MeasureUnit): number => (length === 0 ? 0 : toBuy(length + STRAIGHTEN[unit], unit))

/** How much to buy: yards, up to the next eighth, or metres, up to the next tenth. */
export const toBuy = (length: number, unit: MeasureUnit): number =>
  unit === 'in' ? roundUp(length / INCHES_IN_A_YARD, 1 / 8) : Math.round(roundUp(length / CM_IN_A_METRE, 0.1) * 10) / 10
