/**
 * A length as a maker types it.
 *
 * In      what stands in a field: `3`, `2 1/2`, `0.75`, and as keyboards have it too, `2½` and `0,75`.
 * Out     the same as a block file writes it, or one sentence that says what to give instead. What is taken here can be read back from a file.
 */
import { parseRational, toNumber } from '../../geometry/index.ts'
import { t } from '../words/words.ts'

/** Letters: a file holds longer ones, but no ruler shows them, and each would be reckoned with exactly. */
const LONGEST = 40
const FRACTIONS = /[\u00bc-\u00be\u2150-\u215e]/g
/** With three digits behind it, a comma may stand for thousands: that is not guessed at. */
const COMMA = /^(\d*),(\d{1,2}|\d{4,})$/

export interface Bounds {
  readonly least?: number
  readonly most?: number
}

/** As a file writes it; of what is no length, the text itself. */
export function written(text: string): string {
  const plain = text.replace(FRACTIONS, (sign) => ` ${sign.normalize('NFKD').replace('\u2044', '/')}`)
  return plain.trim().replace(COMMA, '$1.$2')
}

/** The length as a number; null where it will not do. */
export function lengthIn(text: string, bounds: Bounds = {}): number | null {
  return lengthTrouble(text, bounds) === null ? toNumber(parseRational(written(text)) as Exclude<ReturnType<typeof parseRational>, null>) : null
}

export function lengthTrouble(text: string, { least = 0.001, most = 10_000 }: Bounds = {}): string | null {
  const plain = written(text)
  const length = plain.length > LONGEST ? null : parseRational(plain)
  if (length === null || length.n <= 0n) return t('Give a length above zero, such as 3 or 2 1/2.')
  const number = toNumber(length)
  return number < least || number > most ? t('Give a length from {least} to {most}, such as 3 or 2 1/2.', { least, most }) : null
}
