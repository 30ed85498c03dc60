/**
 * Lengths as makers write and cut them.
 *
 * In      lengths in inches or centimetres as doubles, or as a file writes them.
 * Out     rounded up to what a ruler shows, and text: `3 7/8` or `9.8`, with `8.25` as it is.
 */
import { parseRational, type Rational } from './rational.ts'

/** A length as a file writes it (a number, or text such as `"2 1/2"`); null where it is no length. */
export const parseLength = (value: unknown): Rational | null => parseRational(value)

/** In any unit: far below what a ruler shows, far above what doubles lose. Lengths that differ by less are the same. */
export const EPSILON = 1e-9

/** A length without what doubles lost on the way: to the nearest billionth of its unit. */
export const tidy = (length: number): number => Math.round(length * 1e9) / 1e9

/** Up to the next multiple of `step`; a length that is one already (to within `EPSILON`) stays. */
export function roundUp(length: number, step: number): number {
  return Math.ceil(length / step - EPSILON) * step
}

/** The sides of what is cut as makers say them: the short one, its width, first. */
export const shortSideFirst = ([a, b]: readonly [number, number]): readonly [width: number, length: number] => (a <= b ? [a, b] : [b, a])

/** Parts of a unit that a maker can read off a ruler: sixteenths of an inch, half millimetres. */
const READ = { in: 16, cm: 20 } as const

/** Whether text shows the length itself and not its nearest neighbour. */
export function isOnRuler(length: number, unit: 'in' | 'cm'): boolean {
  const parts = length * READ[unit]
  return Math.abs(parts - Math.round(parts)) < EPSILON * READ[unit]
}

/** Without the unit: `3 7/8`, `1/4`, `12`; or `9.8`, `8.25`, `10`. What no ruler shows: to the nearest sixteenth of an inch or millimetre. */
export function sayLength(length: number, unit: 'in' | 'cm'): string {
  const shown = unit === 'in' ? 16 : isOnRuler(length, unit) ? 20 : 10
  const parts = Math.round(Math.abs(length) * shown)
  const sign = length < 0 && parts > 0 ? '-' : ''
  if (unit === 'cm') return `${sign}${parts / shown}`
  const whole = Math.floor(parts / 16)
  let top = parts % 16
  let bottom = 16
  while (top > 0 && top % 2 === 0) [top, bottom] = [top / 2, bottom / 2]
  const fraction = top === 0 ? '' : `${top}/${bottom}`
  return `${sign}${[whole > 0 || fraction === '' ? String(whole) : '', fraction].filter(Boolean).join(' ')}`
}
