/**
 * From a sewn block to a finished piece: borders, binding, backing, batting.
 *
 * In      sizes in the measure's unit, [width, height]; `finished` without the outer seam allowances, `top` as it lies on the table.
 * Out     strips to cut with their lengths, the size after each round, fabric for binding and backing, sizes of backing and batting.
 * Source  beside each function; where sources differ, also the rule taken and why. Lengths in cm are the inches rounded, from memory.
 */
import { lengthOf } from '../block/lengthsOf.ts'
import type { Block, MeasureUnit, Size } from '../values/block.ts'
import { type BattingSize, message } from '../values/messages.ts'
import { EPSILON, roundUp } from '../exact/lengths.ts'
import { toNumber } from '../exact/rational.ts'
import { type Rule, unfinished } from './sizes/cutSize.ts'
import { toBuy } from './strips/yardage.ts'

interface Round {
  readonly finishedWidth: number
  readonly fabric: string
  /** The fabric of squares in the four corners; without them top and bottom run through. */
  readonly corners?: string
}

export interface CutStrip {
  readonly fabric: string
  /** Across the strip, then along it; never rounded. */
  readonly size: Size
  readonly count: number
}

/** One border, in sewing order: sides, then top and bottom, with the corner squares sewn to their ends first. */
interface BorderRound {
  readonly sides: CutStrip
  readonly corners: CutStrip | null
  readonly topAndBottom: CutStrip
  /** Unfinished size once this round is on. */
  readonly becomes: Size
}

/** Shown before any strip is cut: the arithmetic is right, the sewn size seldom is. [S128], and [S129][S130] for the mean. */
export const MEASURE_FIRST = message('measure-before-borders')

/** Lengths follow the sum of [S128]: sides as high as the piece, top and bottom as wide as the piece and both its sides. */
export function borderRounds(finished: Size, rounds: readonly Round[], rule: Rule): BorderRound[] {
  let [wide, high] = finished
  return rounds.map(({ finishedWidth, fabric, corners }) => {
    const across = unfinished(finishedWidth, rule)
    const [before, beside] = [wide, high]
    wide += 2 * finishedWidth
    high += 2 * finishedWidth
    return {
      sides: { fabric, size: [across, unfinished(beside, rule)], count: 2 },
      corners: corners === undefined ? null : { fabric: corners, size: [across, across], count: 4 },
      topAndBottom: { fabric, size: [across, unfinished(corners === undefined ? wide : before, rule)], count: 2 },
      becomes: [unfinished(wide, rule), unfinished(high, rule)],
    }
  })
}

/** A block's own borders, from the inside. */
export const roundsOf = (block: Block): Round[] =>
  (block.borders ?? []).map(({ finishedWidth, fabric, corner }) => ({
    finishedWidth: toNumber(lengthOf(finishedWidth)),
    fabric,
    ...(corner === undefined ? {} : { corners: corner }),
  }))

interface Measured {
  /** What both strips of a pair are cut to. */
  readonly length: number
  /** By measurement: whether a strip of that length can be eased on there. */
  readonly eases: readonly boolean[]
}

/** The mean of what was measured, to the next 1/8 in [S129][S130]; an edge within 1/4 in of the mean can be eased on [S131]. */
export function stripFor(measured: readonly number[], unit: MeasureUnit): Measured {
  const mean = measured.reduce((sum, one) => sum + one, 0) / measured.length
  const most = unit === 'in' ? 1 / 4 : 0.6
  return { length: roundUp(mean, unit === 'in' ? 1 / 8 : 0.5), eases: measured.map((one) => Math.abs(one - mean) <= most + EPSILON) }
}

/** Strip 2 1/2 in, the widest of the usual ones [S139]; handling 10 in beyond the edge to be bound, from memory. */
const BINDING = { in: { strip: 2.5, handling: 10 }, cm: { strip: 6.5, handling: 25 } } as const

interface Binding {
  readonly strips: number
  /** Across one strip. */
  readonly strip: number
  /** Once the strips are joined on the slant. */
  readonly length: number
  /** Length of fabric for all strips, then yards or metres to buy. */
  readonly fabricLength: number
  readonly buy: number
}

/**
 * Binding cut across the fabric. Printed rules add 24 [S135], 20 [S139], 10 (from memory) or nothing [S136] to the edge, or take 2 off each strip [S137].
 * Used here: edge + 10 by the usable width, and never fewer than edge by (width − strip), because each join on the slant, the
 * closing one included, uses up one strip's width. Every printed pattern agrees with that; the larger additions would cut one strip too many in some,
 * and edge + 10 by itself can come out short from five strips on.
 */
export function bindingFor(top: Size, unit: MeasureUnit, usableWidth: number, strip: number = BINDING[unit].strip): Binding {
  const edge = 2 * (top[0] + top[1])
  const strips = Math.max(Math.ceil((edge + BINDING[unit].handling) / usableWidth - EPSILON), Math.ceil(edge / (usableWidth - strip) - EPSILON))
  return { strips, strip, length: strips * usableWidth - (strips - 1) * strip, fabricLength: strips * strip, buy: toBuy(strips * strip, unit) }
}

/** How the whole quilt will be quilted: on a frame (`longarm`) or under a home machine. */
export const QUILTED = ['home', 'longarm'] as const
export type Quilted = (typeof QUILTED)[number]

/**
 * How far backing and batting reach beyond each edge. Backing on a frame 4 in [S141][S142][S144], the upper end of the usual 3 to 4 [S143], so that it fits any frame; batting 3 in, "6 in
 * all" [S147] and within what most quilters leave [S146]. Home machine: 1 and 2 in, one page only [S145].
 */
export const MARGINS: Readonly<Record<MeasureUnit, Readonly<Record<Quilted, { readonly backing: number; readonly batting: number }>>>> = {
  in: { longarm: { backing: 4, batting: 3 }, home: { backing: 1, batting: 2 } },
  cm: { longarm: { backing: 10, batting: 7.5 }, home: { backing: 2.5, batting: 5 } },
}

interface Layers {
  readonly backing: Size
  readonly batting: Size
  /** How the backing is cut from fabric of the usable width. */
  readonly panels: Panels
  /** The smallest batting sold in one piece that is large enough; null where none is. */
  readonly sold: SoldBatting | null
}

interface Panels {
  /** Equal lengths of fabric, selvages cut off, joined side by side [S144]. */
  readonly count: number
  readonly length: number
  /** Whether the seams between them run from side to side or from top to bottom; null where there is none. */
  readonly seams: 'across' | 'down' | null
  /** Yards or metres. */
  readonly buy: number
}

interface SoldBatting {
  readonly soldAs: BattingSize
  readonly size: Size
}

/** Inches: [S147], also [S148][S149]; craft [S148]; throw from memory. */
export const BATTING_SIZES: readonly SoldBatting[] = [
  { soldAs: 'craft', size: [36, 45] },
  { soldAs: 'crib', size: [45, 60] },
  { soldAs: 'throw', size: [60, 60] },
  { soldAs: 'twin', size: [72, 90] },
  { soldAs: 'full', size: [81, 96] },
  { soldAs: 'queen', size: [90, 108] },
  { soldAs: 'king', size: [120, 120] },
]
const CM_IN_AN_INCH = 2.54

/** A backing is never smaller than its batting, which would stick to the table and to the foot beyond it: common practice, no source. */
export function layersFor(top: Size, unit: MeasureUnit, quilted: Quilted, usableWidth: number, rule: Rule): Layers {
  const { backing: least, batting } = MARGINS[unit][quilted]
  const backing = Math.max(least, batting)
  const larger = (by: number): Size => [top[0] + 2 * by, top[1] + 2 * by]
  return {
    backing: larger(backing),
    batting: larger(batting),
    panels: panelsFor(larger(backing), unit, usableWidth, rule),
    sold: soldFor(larger(batting), unit),
  }
}

/** Panels lie the way that takes less fabric; where both take the same, the seams run across, so that they do not pile up on a roller [S144]. */
export function panelsFor(size: Size, unit: MeasureUnit, usableWidth: number, rule: Rule): Panels {
  const across = panelsAlong(size[1], size[0], usableWidth, rule)
  const down = panelsAlong(size[0], size[1], usableWidth, rule)
  const [taken, seams] = across.count * across.length <= down.count * down.length ? ([across, 'across'] as const) : ([down, 'down'] as const)
  return { ...taken, seams: taken.count === 1 ? null : seams, buy: toBuy(taken.count * taken.length, unit) }
}

/** `reach` is filled by panels side by side, each seam taking two allowances. */
function panelsAlong(reach: number, length: number, usableWidth: number, { seam }: Rule): { readonly count: number; readonly length: number } {
  const each = usableWidth - 2 * seam
  return { count: Math.max(1, Math.ceil((reach - 2 * seam) / each - EPSILON)), length }
}

/** Batting may be turned. */
function soldFor(size: Size, unit: MeasureUnit): SoldBatting | null {
  const inInches = unit === 'in' ? 1 : CM_IN_AN_INCH
  const [short, long] = [Math.min(...size) / inInches, Math.max(...size) / inInches]
  return BATTING_SIZES.find(({ size: [wide, high] }) => short <= wide + EPSILON && long <= high + EPSILON) ?? null
}
