/**
 * Batting and backing of each place, and how far quilting stays from its edge.
 *
 * In      the measures of a quilt, a laid place, and which of its sides lie at the quilt's rim.
 * Out     sizes as cut and as trimmed; null for a quilt that is quilted whole.
 * Source  an unquilted margin of 1 in [S155][S245]; batting at finished size [S247]; a backing margin of 1/2 in [S245]; backing brought over twice its rim [S248].
 */
import { add, type Rational, rational, ZERO } from '../exact/rational.ts'
import { type ExactSize, type Measures, sum, times } from './measures.ts'
import type { LaidPlace } from './places.ts'

interface CutAndTrimmed {
  readonly cut: ExactSize
  readonly trim: ExactSize
}

export interface PlaceLayers {
  readonly front: ExactSize
  readonly batting: CutAndTrimmed
  readonly backing: CutAndTrimmed
  readonly loose: Rational
}

/** How a place is layered: its front, batting and backing as cut and as trimmed, and how far its quilting stays inside the raw edge, in the measure's unit; null for a whole quilt. */
export function layersOf(
  { join, seam, inches, over, width }: Measures,
  { place, size, finished }: LaidPlace,
  columns: number,
  rows: number,
): PlaceLayers | null {
  if (join === 'whole') return null
  const larger = (one: ExactSize, by: Rational): ExactSize => [add(one[0], by), add(one[1], by)]
  const front = larger(finished, times(seam, 2))
  const around = times(over, 2)
  const rest = { front, loose: ZERO }
  if (join === 'backing-over') {
    const backing = larger(front, times(width, 4))
    return { ...rest, batting: { cut: front, trim: front }, backing: { cut: backing, trim: backing } }
  }
  if (join !== 'fronts') {
    const layer = { cut: larger(front, around), trim: front }
    return { ...rest, batting: layer, backing: layer }
  }
  const rim = (axis: 0 | 1, count: number): Rational => times(seam, (place.at[axis] === 0 ? 1 : 0) + (place.at[axis] + size[axis] === count ? 1 : 0))
  const trim: ExactSize = [add(finished[0], rim(0, columns)), add(finished[1], rim(1, rows))]
  const margin = inches ? rational(1) : rational(5, 2)
  const backing = larger(front, margin)
  return { front, loose: margin, batting: { cut: larger(trim, around), trim }, backing: { cut: backing, trim: backing } }
}

/** In no layers at all, quilting may run to the edge. */
export const looseOf = (layers: PlaceLayers | null): Rational => layers?.loose ?? sum()
