/**
 * Whole-number points and exact tests on them.
 *
 * Exact   while every difference is at most 2^26 a product fits a double; beyond that the same sum is taken in BigInt.
 */

/** x, y in steps of the block's common denominator: right and down. */
export type Dot = readonly [number, number]

const SAFE = 2 ** 26

const small = (n: number): boolean => n <= SAFE && n >= -SAFE

/** The sign of ux·vy − uy·vx: positive where v lies clockwise of u on the screen (y runs down). */
export function crossSign(ux: number, uy: number, vx: number, vy: number): -1 | 0 | 1 {
  if (small(ux) && small(uy) && small(vx) && small(vy)) {
    const area = ux * vy - uy * vx
    return area > 0 ? 1 : area < 0 ? -1 : 0
  }
  const area = BigInt(ux) * BigInt(vy) - BigInt(uy) * BigInt(vx)
  return area > 0n ? 1 : area < 0n ? -1 : 0
}

/** On which side of the line a→b the point p lies: 1 clockwise (below a line that runs right), −1 the other, 0 on it. */
export const sideOf = (a: Dot, b: Dot, p: Dot): -1 | 0 | 1 => crossSign(b[0] - a[0], b[1] - a[1], p[0] - a[0], p[1] - a[1])

/** Twice the area of a polygon, positive where its corners run clockwise. */
export function doubleArea(corners: readonly Dot[]): bigint {
  let sum = 0n
  const origin = corners[0] as Dot
  for (let i = 1; i + 1 < corners.length; i++) {
    const a = corners[i] as Dot
    const b = corners[i + 1] as Dot
    const ux = a[0] - origin[0]
    const uy = a[1] - origin[1]
    const vx = b[0] - origin[0]
    const vy = b[1] - origin[1]
    sum += small(ux) && small(uy) && small(vx) && small(vy) ? BigInt(ux * vy - uy * vx) : BigInt(ux) * BigInt(vy) - BigInt(uy) * BigInt(vx)
  }
  return sum
}

/** The greatest common divisor of two whole numbers, never negative. */
export function greatestCommon(a: number, b: number): number {
  let x = Math.abs(a)
  let y = Math.abs(b)
  while (y !== 0) [x, y] = [y, x % y]
  return x
}

/** Where a point lies: 1 inside, 0 on the outline, −1 outside. */
export function insidePolygon(corners: readonly Dot[], [x, y]: Dot): -1 | 0 | 1 {
  let inside = false
  for (let i = 0; i < corners.length; i++) {
    const a = corners[i] as Dot
    const b = corners[(i + 1) % corners.length] as Dot
    const side = sideOf(a, b, [x, y])
    if (side === 0 && x >= Math.min(a[0], b[0]) && x <= Math.max(a[0], b[0]) && y >= Math.min(a[1], b[1]) && y <= Math.max(a[1], b[1])) return 0
    if (a[1] <= y !== b[1] <= y && side === (b[1] > a[1] ? -1 : 1)) inside = !inside
  }
  return inside ? 1 : -1
}
