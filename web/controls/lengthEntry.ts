/**
 * Lengths and counts as a maker types them.
 *
 * In      the text of a field: `3`, `2 1/2`, `0.75`, and what some keyboards type, `2½` and `0,75`. Inches or centimetres; nothing here depends on which.
 * Out     the length as a block file writes it, or a message that says what to type instead. Every text accepted here can be read back from a file.
 */
import { parseRational, toNumber } from '../../geometry/index.ts'
import { t } from '../words/words.ts'

/** Characters. A file may hold longer numbers, but no ruler shows them, and each would be computed with exactly. */
const LONGEST = 40
const FRACTIONS = /[\u00bc-\u00be\u2150-\u215e]/g
/** A comma followed by exactly three digits may mean thousands, so it is not read as a decimal comma. */
const COMMA = /^(\d*),(\d{1,2}|\d{4,})$/

/** Both included. */
interface Bounds {
  readonly least?: number
  readonly most?: number
}

/** The text as a file writes it; text that is no length comes back as it is. */
export function lengthForFile(text: string): string {
  const plain = text.replace(FRACTIONS, (sign) => ` ${sign.normalize('NFKD').replace('\u2044', '/')}`)
  return plain.trim().replace(COMMA, '$1.$2')
}

/** The length as a number, or null if the text is not a length within the bounds. */
export function parseLengthEntry(text: string, bounds: Bounds = {}): number | null {
  return lengthProblem(text, bounds) === null ? toNumber(parseRational(lengthForFile(text)) as Exclude<ReturnType<typeof parseRational>, null>) : null
}

/** A message if the text is not a length within the bounds, else null. */
export function lengthProblem(text: string, { least = 0.001, most = 10_000 }: Bounds = {}): string | null {
  const plain = lengthForFile(text)
  const length = plain.length > LONGEST ? null : parseRational(plain)
  if (length === null || length.n <= 0n) return t('Enter a length above zero, such as 3 or 2 1/2.')
  const number = toNumber(length)
  return number < least || number > most ? t('Enter a length from {least} to {most}, such as 3 or 2 1/2.', { least, most }) : null
}

/** Whether the text is a whole number from 1 to `most`, of three digits at most. */
export const isCount = (text: string, most: number): boolean => /^\d{1,3}$/.test(text.trim()) && Number(text) >= 1 && Number(text) <= most
