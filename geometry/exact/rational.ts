/**
 * Exact fractions for positions and lengths.
 *
 * In      JSON numbers (taken as the decimal that is written, so 0.1 is one tenth) and text such as `"1/3"`, `"2 1/2"`, `"-0.5"`.
 * Out     `{ n, d }` in lowest terms with `d > 0`; both whole numbers.
 * Exact   numerators and denominators are BigInt, so nothing is ever lost; a double appears only through `toNumber`.
 */
export interface Rational {
  readonly n: bigint
  readonly d: bigint
}

export const ZERO: Rational = { n: 0n, d: 1n }

function gcd(a: bigint, b: bigint): bigint {
  let x = a < 0n ? -a : a
  let y = b < 0n ? -b : b
  while (y !== 0n) [x, y] = [y, x % y]
  return x
}

/** The least common multiple of two numbers above 0. */
export function lcm(a: bigint, b: bigint): bigint {
  return (a / gcd(a, b)) * b
}

/** The fraction n/d in lowest terms. Throws on d = 0: only a mistake of ours can ask for it. */
export function rational(n: bigint | number, d: bigint | number = 1n): Rational {
  let top = BigInt(n)
  let bottom = BigInt(d)
  if (bottom === 0n) throw new Error('impossible: a fraction over nothing')
  if (bottom < 0n) [top, bottom] = [-top, -bottom]
  const common = gcd(top, bottom)
  return common > 1n ? { n: top / common, d: bottom / common } : { n: top, d: bottom }
}

/** a + b. */
export const add = (a: Rational, b: Rational): Rational => rational(a.n * b.d + b.n * a.d, a.d * b.d)
/** a − b. */
export const subtract = (a: Rational, b: Rational): Rational => rational(a.n * b.d - b.n * a.d, a.d * b.d)
/** a · b. */
export const multiply = (a: Rational, b: Rational): Rational => rational(a.n * b.n, a.d * b.d)
/** a / b. Throws where b is 0. */
export const divide = (a: Rational, b: Rational): Rational => rational(a.n * b.d, a.d * b.n)
const negate = (a: Rational): Rational => ({ n: -a.n, d: a.d })

/** Negative, zero or positive as a is less than, equal to or greater than b. */
export function compare(a: Rational, b: Rational): number {
  const difference = a.n * b.d - b.n * a.d
  return difference < 0n ? -1 : difference > 0n ? 1 : 0
}

/** Whether two fractions in lowest terms are the same. */
export const equal = (a: Rational, b: Rational): boolean => a.n === b.n && a.d === b.d

/** The nearest double. */
export function toNumber(a: Rational): number {
  const whole = a.n / a.d
  return Number(whole) + Number(a.n - whole * a.d) / Number(a.d)
}

const DECIMAL = /^([+-]?)(\d*)(?:\.(\d*))?(?:[eE]([+-]?\d{1,3}))?$/
const MIXED = /^([+-]?)(?:(\d{1,12})\s+)?(\d{1,12})\s*\/\s*(\d{1,12})$/

/** The exact value of a number or of text such as `"1/3"`, `"2 1/2"` or `"0.75"`; null where it is neither or not finite. */
export function parseRational(value: unknown): Rational | null {
  if (typeof value === 'number') return Number.isFinite(value) ? parseDecimal(String(value)) : null
  if (typeof value !== 'string') return null
  const text = value.trim()
  const mixed = MIXED.exec(text)
  if (mixed === null) return parseDecimal(text)
  const [, sign, whole = '0', top = '0', bottom = '1'] = mixed
  const under = BigInt(bottom)
  if (under === 0n) return null
  const size = BigInt(whole) * under + BigInt(top)
  return rational(sign === '-' ? -size : size, under)
}

function parseDecimal(text: string): Rational | null {
  const found = DECIMAL.exec(text)
  if (found === null) return null
  const [, sign, whole = '', part = '', power = '0'] = found
  if (whole === '' && part === '') return null
  const digits = BigInt(`${whole}${part}` || '0')
  const shift = Number(power) - part.length
  const size = shift >= 0 ? rational(digits * 10n ** BigInt(shift)) : rational(digits, 10n ** BigInt(-shift))
  return sign === '-' ? negate(size) : size
}

/**
 * As block files write it.
 *
 * In      a fraction.
 * Out     a JSON number where reading its shortest decimal gives the fraction back (`1`, `0.5`, `2.125`), else text such as `"1/3"`.
 */
export function toFile(a: Rational): number | string {
  if ((a.d & (a.d - 1n)) !== 0n) return `${a.n}/${a.d}`
  const number = toNumber(a)
  const read = parseRational(number)
  return read !== null && equal(read, a) ? number : `${a.n}/${a.d}`
}
