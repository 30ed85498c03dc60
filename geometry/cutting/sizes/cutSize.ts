/**
 * How large to cut, from the geometry of the seam.
 *
 * In      finished lengths, the seam allowance and what cut sizes are rounded up to, all in the measure's unit.
 * Out     cut lengths. Pieces that are trimmed after sewing, and cut triangles, are rounded up; rectangles sewn as cut are exact.
 * Source  geese [S3][S5][S6], triangles [S37][S31][S24], hourglasses [S37], corners [S57]; the exact add-ons follow by geometry:
 *         a corner of 45° needs (1 + √2) seams beyond its leg.
 */
import { EPSILON, roundUp } from '../../exact/lengths.ts'
import type { MeasureUnit } from '../../values/block.ts'

export interface Rule {
  readonly seam: number
  readonly round: number
  /** Cut a little larger, trim to size: added to each square of a trimmed unit, beyond its rounded size; 0 by default. */
  readonly oversize?: number
  /** What straightening the end of fabric or of a strip set takes; 0 by default. */
  readonly straighten?: number
}

/** Straightening an end takes half an inch, or a centimetre: common practice, no source. */
export const STRAIGHTEN: Readonly<Record<MeasureUnit, number>> = { in: 1 / 2, cm: 1 }

const ROOT = Math.SQRT2

/** Text shows no finer length, and the side of a centre on point is rarely a fraction. */
const thousandth = (length: number): number => Math.round(length * 1000) / 1000

/** A finished length with a seam allowance on both sides, in the measure's unit. */
export const unfinished = (finished: number, { seam }: Rule): number => finished + 2 * seam

/** A square that is halved into two triangles with legs `finished`; also each square of two-at-a-time triangles. */
export const halved = (finished: number, { seam, round, oversize = 0 }: Rule): number => roundUp(finished + (2 + ROOT) * seam, round) + oversize

/** A square that is quartered into triangles with the long side `finished`; also each square of two-at-a-time hourglasses. */
export const quartered = (finished: number, { seam, round, oversize = 0 }: Rule): number =>
  roundUp(finished + (2 + 2 * ROOT) * seam, round) + oversize

/** Each square of four-at-a-time triangles. */
export const fourAtATime = (finished: number, { seam, round, oversize = 0 }: Rule): number =>
  roundUp(ROOT * (finished + 2 * seam) + 2 * seam, round) + oversize

/** Each square of eight-at-a-time triangles. */
export const eightAtATime = (finished: number, { oversize = 0, ...rule }: Rule): number => 2 * halved(finished, rule) + oversize

/** The square on point in a square of side `finished`, sewn as cut. */
export const onPoint = (finished: number, rule: Rule): number => thousandth(unfinished(finished / ROOT, rule))

/** Large and small squares of four-at-a-time geese, `width` by `height` finished. The small ones follow the large one where it is cut larger. */
export function geese(width: number, height: number, rule: Rule): { readonly large: number; readonly small: number } {
  const large = quartered(width, rule)
  const small = roundUp(large / 2 + rule.seam, rule.round)
  return { large, small: Math.max(small, roundUp(height + (2 + ROOT) * rule.seam, rule.round)) }
}

/** A rectangle that is halved into two triangles with legs `width` and `height`. */
export function halfRectangle(width: number, height: number, { seam, round, oversize = 0 }: Rule): readonly [number, number] {
  const round3 = width + height + Math.hypot(width, height)
  return [roundUp(width + (seam * round3) / height, round) + oversize, roundUp(height + (seam * round3) / width, round) + oversize]
}

/** Setting triangles of blocks on point, `finished` large: the square that is quartered into side triangles, the one halved into corners. */
export const settingTriangles = (finished: number, rule: Rule): { readonly side: number; readonly corner: number } => ({
  side: quartered(finished * ROOT, rule),
  corner: halved(finished / ROOT, rule),
})

/** A finished block on point from corner to corner. */
export const acrossOnPoint = (finished: number): number => finished * ROOT

/** Cross-cuts of a strip set, `height` finished, that the usable width holds. */
export const crossCuts = (height: number, rule: Rule, width: number): number => Math.floor(width / unfinished(height, rule) + EPSILON)

/**
 * Strip sets for a number of cross-cuts: as few as the usable width allows, all equally long, with enough left to straighten an end.
 *
 * In      how many cross-cuts are needed, their height (finished), and the usable width, in the measure's unit.
 * Out     sets, the length of their strips (at most the width), and how many cross-cuts that length gives too many. A full width is straightened too,
 *         but is counted on to hold what it holds.
 */
export function stripSets(
  count: number,
  height: number,
  rule: Rule,
  width: number,
): { readonly sets: number; readonly length: number; readonly spare: number } {
  const most = crossCuts(height, rule, width)
  const sets = Math.ceil(count / most)
  const each = Math.ceil(count / sets)
  const long = each * unfinished(height, rule) + (rule.straighten ?? 0)
  return long < width - EPSILON ? { sets, length: long, spare: sets * each - count } : { sets, length: width, spare: sets * most - count }
}
