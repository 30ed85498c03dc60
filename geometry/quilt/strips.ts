/**
 * The strips that join places: what is cut for each joint, by way of joining.
 *
 * In      a joint's length and matching marks, the quilt's way and measures.
 * Out     cut sizes, across the strip then along it; exact, never rounded.
 * Source  widths of strips and covers: handbook of ways of joining [S152][S229][S153][S226]; the lap 1/8 in or 0.3 cm covers the second seam.
 */
import { add, multiply, type Rational, rational, subtract } from '../exact/rational.ts'
import type { QuiltWay } from '../values/quilt.ts'
import { type ExactSize, type Measures, sum, times } from './measures.ts'

export interface JointStrip {
  readonly front?: ExactSize
  readonly cover?: ExactSize
  readonly coverIs?: 'folded' | 'flat'
  readonly batting?: ExactSize | null
  readonly sash?: readonly ExactSize[]
  readonly corners?: number
  readonly corner?: ExactSize | null
}

/** `crossings`: where joints of both sides end at one point of this joint, from its start. */
export function jointStrip(
  { join, seam, gap, width, inches }: Measures,
  way: QuiltWay,
  length: Rational,
  crossings: readonly Rational[],
): JointStrip | null {
  const seams = times(seam, 2)
  if (join === 'strips') {
    const lap = inches ? rational(1, 8) : rational(3, 10)
    const flat = way.cover === 'flat'
    const cover = flat ? sum(gap, seams, lap) : times(sum(gap, seam, lap), 2)
    const filled = subtract(gap, seams)
    return {
      front: [add(gap, seams), length],
      cover: [cover, length],
      coverIs: flat ? 'flat' : 'folded',
      batting: filled.n > 0n ? [filled, length] : null,
    }
  }
  if (join === 'butted') {
    const cut: ExactSize = [add(width, inches ? rational(1, 2) : rational(12, 10)), length]
    return { front: cut, cover: cut, coverIs: 'flat' }
  }
  if (join !== 'whole' || way.sash === undefined || gap.n === 0n) return null
  const squares = way.sash.corner === undefined ? [] : crossings
  const across = add(gap, seams)
  return { sash: pieced(length, squares, gap, seams, across), corners: squares.length, corner: squares.length > 0 ? [across, across] : null }
}

/** The pieces of a sash between its corner squares, whose middles are given. */
export function pieced(length: Rational, squares: readonly Rational[], gap: Rational, seams: Rational, across: Rational): ExactSize[] {
  const half = multiply(gap, rational(1, 2))
  let from = rational(0)
  const pieces: ExactSize[] = []
  for (const middle of squares) {
    pieces.push([across, add(subtract(subtract(middle, half), from), seams)])
    from = add(middle, half)
  }
  pieces.push([across, subtract(length, from)])
  return pieces
}
