/**
 * A test of the seam allowance on paper: what each row and the whole block measure if every allowance is a hair too wide, or too narrow.
 *
 * In      the booklet context, and the runs that it is sewn in.
 * Out     for each piece the seams along the line that crosses most of them, across and down, and its size with every allowance off.
 * Exact   which seams a line crosses follows from fractions: between two neighbouring heights of corners the seams crossed are the same, so each such
 *         band is counted once. Sizes are doubles, for print.
 * How     every seam crossed takes two allowances; one that slants takes as much more as it slants. Seams inside units that are trimmed to size, or
 *         sewn on a base that keeps its own, take nothing. About 1/32 in a seam is lost [S75].
 */
import { compare, parseRational, type Rational, rational, subtract, toNumber } from '../../exact/rational.ts'
import type { Join, ReportPoint } from '../../values/report.ts'
import { capital } from '../../words/englishPhrases.ts'
import { toThousandths } from '../phrases.ts'
import type { Size } from '../../values/block.ts'
import { type BookletContext, joinsIn } from './bookletContext.ts'
import { sewingRuns, groupRuns } from './runs.ts'
import { onRuler } from './unitPictures.ts'
import type { AllowanceTest, AllowanceTestRow } from './values.ts'

const OFF = { in: 1 / 32, cm: 0.1 } as const

export function allowanceTest(context: BookletContext): AllowanceTest {
  const off = OFF[context.unit]
  const { report } = context
  if (report.joins.length === 0) return { off, rows: [], sentences: [context.say.book.nothingToCheck] }
  const pieces = groupRuns(context, sewingRuns(context))
    .map(({ runs, name, is }) => ({ what: capital(name), is, many: runs.length > 1, final: runs[0]?.final as Join }))
    .filter(({ final }) => final.unfinished !== null)
  const last = report.joins.at(-1) as Join
  const whole = last.stage === 'border' ? [{ what: context.say.book.blockWithBorders, is: 'block' as const, many: false, final: last }] : []
  const single =
    pieces.length === 0 && whole.length === 0 && last.unfinished !== null
      ? [{ what: context.say.book.wholeBlock, is: 'block' as const, many: false, final: last }]
      : []
  const rows = [...pieces, ...whole, ...single].map(({ final, ...named }) => rowOf(named, final, context, off))
  // Then no size depends on the allowance, and a table of equal sizes would say nothing.
  if (rows.length > 0 && rows.every(({ seams: [across, down] }) => across + down === 0))
    return { off, rows: [], sentences: [context.say.book.nothingDepends] }
  return { off, rows, sentences: sentences(rows, off, context) }
}

function rowOf(named: Pick<AllowanceTestRow, 'what' | 'is' | 'many'>, final: Join, context: BookletContext, off: number): AllowanceTestRow {
  const seams = joinsIn(context, final.id).filter((join) => takesCloth(join, context))
  const [across, down] = [worstLine(seams, 1), worstLine(seams, 0)]
  const planned = final.unfinished as Size
  const by = (sign: number): Size => [tidy(planned[0] + sign * 2 * off * across.taken), tidy(planned[1] + sign * 2 * off * down.taken)]
  return { ...named, seams: [across.seams, down.seams], planned, wide: by(-1), narrow: by(1) }
}

const tidy = (length: number): number => Math.round(length * 1e6) / 1e6

const KEEPS_SIZE: ReadonlySet<string> = new Set(['geese-4', 'hst-2', 'hst-4', 'hst-8', 'qst-2', 'corner-flip'])

function takesCloth(join: Join, context: BookletContext): boolean {
  if (join.stage !== 'unit') return true
  const patch = context.patches.get(leafOf(join.id, context))
  const variant = patch?.unit == null ? undefined : context.variantOf.get(patch.unit)
  return variant === undefined || !KEEPS_SIZE.has(variant.row.method)
}

function leafOf(piece: string, context: BookletContext): string {
  let id = piece
  for (let join = context.joins.get(id); join !== undefined; join = context.joins.get(id)) id = join.sides[0]
  return id
}

interface Line {
  readonly seams: number
  /** Seams by how much each takes: 1 for one square to the line. */
  readonly taken: number
}

interface Reach {
  readonly low: Rational
  readonly high: Rational
  readonly weight: number
}

/** The line at one height (axis 1) or one place across (axis 0) that loses most. */
function worstLine(joins: readonly Join[], axis: 0 | 1): Line {
  const reaches = joins.flatMap((join) => reachesOf(join, axis))
  const events = reaches.flatMap(({ low, high, weight }) => [
    { at: low, seams: 1, taken: weight },
    { at: high, seams: -1, taken: -weight },
  ])
  // At one place what ends goes before what begins: a line runs between places, not through corners.
  events.sort((a, b) => compare(a.at, b.at) || a.seams - b.seams)
  let [seams, taken] = [0, 0]
  let worst: Line = { seams: 0, taken: 0 }
  for (const event of events) {
    seams += event.seams
    taken += event.taken
    if (taken > worst.taken + 1e-9) worst = { seams, taken }
  }
  return worst
}

const exact = (value: number | string): Rational => parseRational(value) ?? rational(0)

function reachesOf({ from, via, to }: Join, axis: 0 | 1): Reach[] {
  const way: ReportPoint[] = [from, ...via, to]
  return way.slice(1).flatMap((end, index) => {
    const start = way[index] as ReportPoint
    const [a, b] = [exact(start[axis]), exact(end[axis])]
    if (compare(a, b) === 0) return []
    const along = toNumber(subtract(b, a))
    const beside = toNumber(subtract(exact(end[axis === 0 ? 1 : 0]), exact(start[axis === 0 ? 1 : 0])))
    // A seam square to the line takes its two allowances; one at an angle as much more as the line cuts it longer.
    const weight = Math.hypot(along, beside) / Math.abs(along)
    return [{ low: compare(a, b) < 0 ? a : b, high: compare(a, b) < 0 ? b : a, weight }]
  })
}

function sentences(rows: readonly AllowanceTestRow[], off: number, context: BookletContext): string[] {
  const words = context.say.book
  const whole = rows.at(-1)
  if (whole === undefined) return [words.noRectangle]
  const { unit } = context
  const said = (size: Size): string => context.local(fine(size, unit))
  return [
    words.ifOff({
      off: context.local(unit === 'in' ? '1/32 in' : '0.1 cm'),
      what: whole.what,
      planned: context.size(whole.planned),
      wide: said(whole.wide),
      narrow: said(whole.narrow),
    }),
    words.seamsCrossed(...whole.seams),
    ...unequal(
      rows.filter(({ is }) => is === 'row' || is === 'column'),
      off,
      context,
    ),
  ]
}

/** Rows with more seams than their neighbours come out shorter: they will not match. */
function unequal(lines: readonly AllowanceTestRow[], off: number, { say, unit, local }: BookletContext): string[] {
  const across = lines[0]?.is === 'column' ? 1 : 0
  const sorted = [...lines].sort((a, b) => a.wide[across] - b.wide[across])
  const [most, least] = [sorted[0], sorted.at(-1)]
  if (most === undefined || least === undefined || least.wide[across] - most.wide[across] < off) return []
  const apart = local(thirtySeconds(least.wide[across] - most.wide[across], unit))
  const tested = ({ what, many, seams }: AllowanceTestRow) => ({ name: what, many, seams: seams[across] })
  return [say.book.unequal(tested(most), tested(least), across === 1, apart)]
}

/** To a thirty-second of an inch: the test is about hairs. */
function thirtySeconds(length: number, unit: 'in' | 'cm'): string {
  if (unit === 'cm') return `${toThousandths(length)} cm`
  const parts = Math.round(length * 32)
  return parts % 2 === 0 ? onRuler(parts / 32, unit) : `${Math.floor(parts / 32) > 0 ? `${Math.floor(parts / 32)} ` : ''}${parts % 32}/32 in`
}

const fine = ([wide, high]: Size, unit: 'in' | 'cm'): string =>
  unit === 'cm'
    ? `${toThousandths(wide)} × ${toThousandths(high)} cm`
    : `${thirtySeconds(wide, unit).replace(' in', '')} × ${thirtySeconds(high, unit)}`
