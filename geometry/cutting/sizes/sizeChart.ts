/**
 * A size chart: what to cut for one kind of unit over a range of finished sizes.
 *
 * In      the kind, the measure, and lengths as fractions: the seam, the first and last finished width, the step.
 * Out     a row for each finished width: finished, unfinished and cut sizes, in the measure's unit.
 */
import { add, compare, divide, type Rational, rational, toNumber, ZERO } from '../../exact/rational.ts'
import type { Method } from '../../values/block.ts'
import type { ChartPieceId } from '../../values/messages.ts'
import { acrossOnPoint, eightAtATime, fourAtATime, geese, halved, onPoint, quartered, type Rule, settingTriangles, unfinished } from './cutSize.ts'

/** `hst` two at a time, `hst4` four and `hst8` eight; `diamond` the square on point in a square; `setting` the triangles round blocks on point. */
export const CHART_KINDS = ['geese', 'hst', 'hst4', 'hst8', 'hourglass', 'diamond', 'setting'] as const
export type ChartKind = (typeof CHART_KINDS)[number]

interface ChartPiece {
  readonly piece: ChartPieceId
  readonly size: number
}

export interface ChartRow {
  readonly finished: readonly [number, number]
  readonly unfinished: readonly [number, number]
  readonly pieces: readonly ChartPiece[]
}

export interface SizeChart {
  readonly kind: ChartKind
  readonly method: Method
  readonly unit: 'in' | 'cm'
  readonly seam: number
  /** How much larger than needed the squares of trimmed units are cut. */
  readonly oversize: number
  readonly rows: readonly ChartRow[]
}

interface SizeChartRequest {
  readonly kind: ChartKind
  readonly unit: 'in' | 'cm'
  readonly seam: Rational
  readonly from: Rational
  readonly to: Rational
  readonly step: Rational
  /** How much larger to cut, to trim to size; 0 by default. */
  readonly oversize?: Rational
}

const METHOD: Readonly<Record<ChartKind, Method>> = {
  geese: 'geese-4',
  hst: 'hst-2',
  hst4: 'hst-4',
  hst8: 'hst-8',
  hourglass: 'qst-2',
  diamond: 'plain',
  setting: 'plain',
}

export function sizeChart({ kind, unit, seam, from, to, step, oversize = ZERO }: SizeChartRequest): SizeChart {
  const rule = { seam: toNumber(seam), round: unit === 'in' ? 1 / 8 : 0.5, oversize: toNumber(oversize) }
  const rows: ChartRow[] = []
  for (let width = from; compare(width, to) <= 0; width = add(width, step)) {
    const wide = toNumber(width)
    const high = kind === 'geese' ? toNumber(divide(width, rational(2))) : wide
    rows.push({ finished: [wide, high], unfinished: [unfinished(wide, rule), unfinished(high, rule)], pieces: PIECES[kind](wide, high, rule) })
  }
  return { kind, method: METHOD[kind], unit, seam: rule.seam, oversize: rule.oversize, rows }
}

const PIECES: Readonly<Record<ChartKind, (wide: number, high: number, rule: Rule) => ChartPiece[]>> = {
  geese: (wide, high, rule) => {
    const { large, small } = geese(wide, high, rule)
    return [
      { piece: 'large-square', size: large },
      { piece: 'small-squares', size: small },
    ]
  },
  hst: (wide, _, rule) => [{ piece: 'squares', size: halved(wide, rule) }],
  hst4: (wide, _, rule) => [{ piece: 'squares', size: fourAtATime(wide, rule) }],
  hst8: (wide, _, rule) => [{ piece: 'squares', size: eightAtATime(wide, rule) }],
  hourglass: (wide, _, rule) => [{ piece: 'squares', size: quartered(wide, rule) }],
  diamond: (wide, _, rule) => [
    { piece: 'centre-square', size: onPoint(wide, rule) },
    { piece: 'halved-squares', size: halved(wide / 2, rule) },
  ],
  setting: (wide, _, rule) => {
    const { side, corner } = settingTriangles(wide, rule)
    return [
      { piece: 'across-on-point', size: acrossOnPoint(wide) },
      { piece: 'side-square', size: side },
      { piece: 'corner-square', size: corner },
    ]
  },
}
