/** Sizes as the screen shows them. */
import { isOnRuler, type MeasureUnit, type Rational, sayLength, toNumber } from '../../geometry/index.ts'

export const sayOneSize = (length: number, unit: MeasureUnit): string => `${sayLength(length, unit)} ${unit}`
export const saySides = ([wide, high]: readonly [number, number], unit: MeasureUnit): string =>
  `${sayLength(wide, unit)} × ${sayLength(high, unit)} ${unit}`
/** Yards or metres. */
export const sayBought = (length: number, unit: MeasureUnit): string => (unit === 'in' ? `${sayLength(length, 'in')} yd` : `${length} m`)

/** A length as a field shows it: `2 2/3` where no ruler shows it, else as everywhere. */
export function sayFieldLength(length: Rational, unit: MeasureUnit): string {
  const number = toNumber(length)
  if (isOnRuler(number, unit)) return sayLength(number, unit)
  if (unit === 'cm' && 1000n % length.d === 0n) return String(number)
  const whole = length.n / length.d
  return `${whole > 0n ? `${whole} ` : ''}${length.n - whole * length.d}/${length.d}`
}
export const saySidesExactly = ([wide, high]: readonly [Rational, Rational], unit: MeasureUnit): string =>
  `${sayFieldLength(wide, unit)} × ${sayFieldLength(high, unit)}`
