import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import { isOnRuler, parseLength, roundUp, sayLength } from '../../geometry/exact/lengths.ts'
import { add, compare, divide, equal, lcm, multiply, parseRational, rational, subtract, toFile, toNumber } from '../../geometry/exact/rational.ts'

describe('a length', () => {
  it.each<[unknown, readonly [number, number] | null]>([
    [3, [3, 1]],
    [0.1, [1, 10]],
    ['2 1/2', [5, 2]],
    [' 1/4 ', [1, 4]],
    ['-1/8', [-1, 8]],
    ['-1 1/2', [-3, 2]],
    ['0.75', [3, 4]],
    [1e-7, [1, 10_000_000]],
    ['1/0', null],
    ['', null],
    ['.', null],
    ['1/2/3', null],
    ['0x10', null],
    ['NaN', null],
    ['Infinity', null],
    ['1 2', null],
    [Number.NaN, null],
    [Number.POSITIVE_INFINITY, null],
    [true, null],
    [null, null],
    [[1], null],
    [{}, null],
  ])('%j is read as %j', (written, wanted) => {
    expect(parseLength(written)).toEqual(wanted === null ? null : rational(...wanted))
  })

  it.each<[number, 'in' | 'cm', string, boolean]>([
    // Eighths and sixteenths as makers write them: common practice, no source.
    [3.875, 'in', '3 7/8', true],
    [0.25, 'in', '1/4', true],
    [12, 'in', '12', true],
    [0, 'in', '0', true],
    [-0.5, 'in', '-1/2', true],
    [2.0625, 'in', '2 1/16', true],
    [2.99, 'in', '3', false],
    [4.7426, 'in', '4 3/4', false],
    [0.01, 'in', '0', false],
    [-0.01, 'in', '0', false],
    [-12.5, 'in', '-12 1/2', true],
    [-0.04, 'cm', '0', false],
    [-9.8, 'cm', '-9.8', true],
    [9.8, 'cm', '9.8', true],
    [9.84, 'cm', '9.8', false],
    // A seam allowance of 0.75 cm is half a millimetre finer than a ruler's marks, and is said as it is: common practice, no source.
    [0.75, 'cm', '0.75', true],
    [8.25, 'cm', '8.25', true],
    [8.33, 'cm', '8.3', false],
    [10, 'cm', '10', true],
    [0.1 + 0.2, 'cm', '0.3', true],
  ])('of %d %s is said as %s', (length, unit, said, onRuler) => {
    expect(sayLength(length, unit)).toBe(said)
    expect(isOnRuler(length, unit)).toBe(onRuler)
  })

  it.each<[number, number, number, string]>([
    // A 3 inch half-square triangle is cut 3 7/8, a goose 6 inches wide from 7 1/4: common practice, no source.
    [3 + (2 + Math.SQRT2) / 4, 1 / 8, 3.875, 'half-square triangle'],
    [6 + (2 + 2 * Math.SQRT2) / 4, 1 / 8, 7.25, 'large square of a goose'],
    [3.5, 1 / 8, 3.5, 'a multiple already'],
    [3.5 + 1e-12, 1 / 8, 3.5, 'a multiple but for what doubles lose'],
    [3.5 + 1e-6, 1 / 8, 3.625, 'a hair over, which would come out short'],
    [9.1, 0.5, 9.5, 'centimetres'],
  ])('of %d in steps of %d is rounded up to %d', (length, step, wanted, why) => {
    expect(roundUp(length, step), why).toBe(wanted)
  })

  it('rounded up is a whole number of steps, never short and never a step too long', () => {
    fc.assert(
      fc.property(fc.integer({ min: 1, max: 1_000_000 }), fc.constantFrom(1 / 16, 1 / 8, 1 / 4, 1 / 2), (thousandths, step) => {
        const length = thousandths / 1000
        const rounded = roundUp(length, step)
        expect(Number.isInteger(rounded / step)).toBe(true)
        expect(rounded).toBeGreaterThanOrEqual(length)
        expect(rounded).toBeLessThan(length + step)
      }),
    )
  })

  it('said in inches can be read again, and lies within a thirty-second', () => {
    fc.assert(
      fc.property(fc.double({ min: 0, max: 1000, noNaN: true }), (length) => {
        const found = parseLength(sayLength(length, 'in'))
        expect(found).not.toBeNull()
        if (found !== null) expect(Math.abs(Number(found.n) / Number(found.d) - length)).toBeLessThanOrEqual(1 / 32)
      }),
    )
  })
})

describe('a fraction', () => {
  const FRACTIONS = fc.tuple(fc.bigInt({ min: -999n, max: 999n }), fc.bigInt({ min: 1n, max: 99n })).map(([n, d]) => rational(n, d))

  it.each([
    [2, -4, [-1, 2]],
    [-6, -4, [3, 2]],
    [0, -7, [0, 1]],
    [12, 4, [3, 1]],
    [5, 1, [5, 1]],
  ] as const)('%i over %i is kept in lowest terms, its sign above the line', (n, d, [top, bottom]) => {
    expect(rational(n, d)).toEqual({ n: BigInt(top), d: BigInt(bottom) })
  })

  it('over nothing is refused', () => {
    expect(() => rational(1, 0)).toThrow('impossible')
    expect(() => divide(rational(1), rational(0))).toThrow('impossible')
  })

  // School arithmetic: over one denominator, fractions add and compare as their numerators do.
  it('is less than, equal to or greater than another as their numerators are over one denominator', () => {
    fc.assert(
      fc.property(FRACTIONS, FRACTIONS, (a, b) => {
        const [left, right] = [a.n * b.d, b.n * a.d]
        expect(Math.sign(compare(a, b))).toBe(left < right ? -1 : left === right ? 0 : 1)
        expect(equal(a, b)).toBe(left === right)
        expect(compare(a, a)).toBe(0)
      }),
    )
  })

  it('added to another and taken away again, or multiplied and divided again, is what it was', () => {
    fc.assert(
      fc.property(FRACTIONS, FRACTIONS, (a, b) => {
        expect(subtract(add(a, b), b)).toEqual(a)
        expect(subtract(a, a)).toEqual(rational(0))
        if (b.n !== 0n) expect(divide(multiply(a, b), b)).toEqual(a)
      }),
    )
    expect(add(rational(1, 2), rational(1, 3))).toEqual(rational(5, 6))
    expect(multiply(rational(2, 3), rational(3, 4))).toEqual(rational(1, 2))
  })

  it('has a least common multiple that both divide', () => {
    expect([lcm(4n, 6n), lcm(6n, 4n), lcm(1n, 5n), lcm(8n, 8n), lcm(3n, 7n)]).toEqual([12n, 12n, 5n, 8n, 21n])
  })

  it('is the nearest double, also where its whole part is large', () => {
    expect(toNumber(rational(-7, 2))).toBe(-3.5)
    expect(toNumber(rational((1n << 60n) * 3n + 1n, 3n))).toBe(2 ** 60)
  })

  it('is the same after it was written and read', () => {
    fc.assert(
      fc.property(fc.bigInt({ min: -10_000n * 55_440n, max: 10_000n * 55_440n }), fc.bigInt({ min: 1n, max: 55_440n }), (n, d) => {
        const value = rational(n, d)
        const read = parseRational(toFile(value))
        expect(read !== null && equal(read, value)).toBe(true)
      }),
    )
  })

  it.each([
    // a fraction whose shortest decimal is another fraction
    [184_799_667n, 8192n, '184799667/8192'],
    [1n, 1n << 60n, `1/${1n << 60n}`],
    [(1n << 53n) + 1n, 1n, `${(1n << 53n) + 1n}/1`],
    [99_999n * 2048n + 1n, 2048n, 99_999 + 1 / 2048],
    // and some whose decimal is the fraction itself
    [1n, 2n, 0.5],
    [-3n, 8n, -0.375],
    [1n, 1024n, 0.0009765625],
    [10_000n * 1024n - 1n, 1024n, 9999.9990234375],
    [5n, 1n, 5],
    [1n, 3n, '1/3'],
    [1n, 5n, '1/5'],
  ])('%i/%i is written so that it can be read back', (n, d, written) => {
    expect(toFile(rational(n, d))).toBe(written)
  })

  it('over any power of two is the same after it was written and read', () => {
    fc.assert(
      fc.property(fc.bigInt({ min: -(10_000n << 20n), max: 10_000n << 20n }), fc.integer({ min: 0, max: 20 }), (n, power) => {
        const value = rational(n, 1n << BigInt(power))
        const read = parseRational(toFile(value))
        expect(read !== null && equal(read, value)).toBe(true)
      }),
    )
  })
})
