/** Sizes as the screen shows them. */
import { type MeasureUnit, sayLength } from '../../geometry/index.ts'

export const sayOneSize = (length: number, unit: MeasureUnit): string => `${sayLength(length, unit)} ${unit}`
export const saySides = ([wide, high]: readonly [number, number], unit: MeasureUnit): string =>
  `${sayLength(wide, unit)} × ${sayLength(high, unit)} ${unit}`
/** Yards or metres. */
export const sayBought = (length: number, unit: MeasureUnit): string => (unit === 'in' ? `${sayLength(length, 'in')} yd` : `${length} m`)
