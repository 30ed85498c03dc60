/**
 * When two seams that meet at a join nest: laid right sides together they lie on each other, and their allowances lean opposite ways.
 *
 * In      seam ends at a dot of a join, as directions in steps; and the side that each seam is pressed toward.
 * Out     whether two ends lie on each other, which way allowances lean along the join, and the verdict.
 * Exact   directions are whole numbers, so "mirror image" is an equality, never a tolerance.
 * Source  common practice, no source.
 */
import { crossSign } from '../plane/points.ts'
import type { Crossing, SeamEnd, Toward } from './values.ts'

/** The verdict on a crossing once its seams are pressed. A pair nests when its allowances lean opposite ways along the join. */
export function verdictOf({ type, leans, seams }: Crossing, toward: readonly Toward[]): 'nests' | 'clashes' | 'open' | 'pin' | 'tip' {
  if (type !== 'pair' || leans === null) return type === 'pin' ? 'pin' : 'tip'
  const [a, b] = [toward[seams[0] as number] as Toward, toward[seams[1] as number] as Toward]
  if (a === 'open' || b === 'open') return 'open'
  return lean(leans[0], a) === lean(leans[1], b) ? 'clashes' : 'nests'
}

const lean = (toSide0: -1 | 1, toward: 0 | 1): number => (toward === 0 ? toSide0 : -toSide0)

/** Right sides together, the far piece is folded over the join: two seams coincide when one is the mirror image of the other in it. */
export function mirrored([ex, ey]: readonly [number, number], a: SeamEnd, b: SeamEnd): boolean {
  const parts = (end: SeamEnd): [bigint, bigint] => {
    const [x, y, u, v] = [BigInt(end.dx), BigInt(end.dy), BigInt(ex), BigInt(ey)]
    return [u * x + v * y, u * y - v * x]
  }
  const square = ex * a.dx + ey * a.dy
  if (square === 0 && Number.isSafeInteger(square)) return ex * b.dx + ey * b.dy === 0
  const [alongA, awayA] = parts(a)
  const [alongB, awayB] = parts(b)
  return alongA * awayB === -alongB * awayA
}

/** The way the allowances of a seam lean along a join when they are pressed toward its side 0. */
export function leanToSide0([ex, ey]: readonly [number, number], end: SeamEnd): -1 | 1 {
  const beside = crossSign(ex, ey, end.dx, end.dy)
  // `clockwise` is the side that lies clockwise of the leaving direction.
  const toClockwise = end.clockwise === 0
  return (toClockwise ? -beside : beside) > 0 ? 1 : -1
}
