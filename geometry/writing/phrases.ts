/**
 * How makers say sizes, counts, kinds and methods.
 *
 * In      values of the report.
 * Out     plain words. A size that is not on the ruler is said as the nearest that is, with the size itself beside it.
 */
import type { MeasureUnit, Size } from '../values/block.ts'
import { isOnRuler, sayLength } from '../exact/lengths.ts'

/** A length with its unit, as the nearest mark on a ruler: `3 1/2 in`. */
export function sayOne(length: number, unit: MeasureUnit): string {
  return `${sayLength(length, unit)} ${unit}`
}

/** As `sayOne`; where no ruler shows it, the length itself: `0.75 cm`. */
export const sayExact = (length: number, unit: MeasureUnit): string =>
  isOnRuler(length, unit) ? sayOne(length, unit) : `${toThousandths(length)} ${unit}`

/** `6 1/2 × 3 1/2 in`, or `about 3 5/16 × 3 5/16 in (exactly 3.333 × 3.333)`. */
export function saySize([width, height]: Size, unit: MeasureUnit, about = inEnglishAbout): string {
  const said = `${sayLength(width, unit)} × ${sayLength(height, unit)} ${unit}`
  return isOnRuler(width, unit) && isOnRuler(height, unit) ? said : about(said, `${toThousandths(width)} × ${toThousandths(height)}`)
}

const inEnglishAbout = (said: string, exactly: string): string => `about ${said} (exactly ${exactly})`

/** A number to three places: `0.75`. */
export const toThousandths = (length: number): string => String(Math.round(length * 1000) / 1000)

/** Yards are sold by the eighth. */
export function purchaseText(buy: number, unit: MeasureUnit): string {
  return unit === 'cm' ? `${toThousandths(buy)} m` : sayOne(buy, 'in').replace(' in', ' yd')
}

/** `1 seam`, `2 seams`. */
export function count(number: number, one: string, many = `${one}s`): string {
  return `${number} ${number === 1 ? one : many}`
}

/** `a`, `a and b`, `a, b and c`. */
export function listed(words: readonly string[]): string {
  return words.length < 2 ? (words[0] ?? '') : `${words.slice(0, -1).join(', ')} and ${words.at(-1)}`
}

/** `topLeft` as a maker reads it: `top left`. */
export const patchWords = (name: string): string =>
  name.replace(/([a-z])([A-Z0-9])/g, (_, before: string, after: string) => `${before} ${after.toLowerCase()}`)

/** The letter of the unit row at a place of the report, as the booklet's layout picture has it: `A` to `Z`, then `AA`. */
export function letterAt(place: number): string {
  const last = String.fromCharCode(65 + (place % 26))
  return place < 26 ? last : `${letterAt(Math.floor(place / 26) - 1)}${last}`
}
