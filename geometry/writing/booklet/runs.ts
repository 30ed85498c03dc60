/**
 * Runs: joins that a maker sews in one go at the table, such as all seams of a row.
 *
 * In      the booklet context: report and block, with lengths in the unit of measure (in or cm).
 * Out     runs in sewing order, each with its items from left to right (or top to bottom) and its joins; alike runs together. Every join after the
 *         units and before the borders is in exactly one run.
 * How     a join goes on with the run of one of its sides where that is of the same stage and runs the same way, so that a row is one run. Sections go
 *         on only where the piece is made as often: four alike quarters are made first and joined then.
 */
import { type BlockLine, message, type StepTitle } from '../../values/messages.ts'
import type { Join, Stage } from '../../values/report.ts'
import { type BookletContext, type MeasuredPatch, patchesIn, spotOf } from './bookletContext.ts'
import { inCells } from '../pieceNames.ts'
import { centreOfAll, cornersOf, cross, dot, boundsOf, vectorLength, midpoint, minus, plus, rectangleOf, unitVector } from './pieceDrawing.ts'
import type { Spot } from './values.ts'

export interface RunItem {
  /** A patch or a join. */
  readonly piece: string
  readonly patches: readonly MeasuredPatch[]
  /** The unit it is, if it is a whole one. */
  readonly unit: string | null
  readonly centre: Spot
}

export interface SewingRun {
  readonly stage: Stage
  /** In sewing order. */
  readonly joins: readonly Join[]
  readonly final: Join
  /** Along which the items lie, from the first to the last; right or down, unless the seams slant. */
  readonly axis: Spot
  readonly items: readonly RunItem[]
}

/** Alike runs, made together: the first stands for all. */
export interface RunGroup {
  readonly runs: readonly SewingRun[]
  /** How a maker calls the piece that comes out. */
  readonly name: string
  readonly is: 'block' | BlockLine
  readonly heading: StepTitle
}

/** All runs of a block in sewing order. */
export function sewingRuns(context: BookletContext): SewingRun[] {
  const open = new Map<string, Join[]>()
  const made = repeatsByJoin(context)
  for (const join of context.report.joins) {
    if (join.stage === 'unit' || join.stage === 'border') continue
    const before = join.sides.find((side) => goesOn(context.joins.get(side), join, made) && open.has(side))
    const chain = before === undefined ? [] : (open.get(before) as Join[])
    if (before !== undefined) open.delete(before)
    open.set(join.id, [...chain, join])
  }
  return [...open.values()].map((joins) => runOf(context, joins)).sort((a, b) => numberOf(a.final) - numberOf(b.final))
}

/** The place of a join in sewing order, from its id. */
const numberOf = ({ id }: Join): number => Number(id.slice(2))

/** How many alike pieces there are of what each join makes. */
function repeatsByJoin({ report }: BookletContext): ReadonlyMap<string, number> {
  return new Map(report.repeats.flatMap((alike) => alike.map((join) => [join, alike.length] as const)))
}

function goesOn(side: Join | undefined, join: Join, made: ReadonlyMap<string, number>): boolean {
  if (side === undefined || side.stage !== join.stage || side.kind !== 'straight' || join.kind !== 'straight') return false
  if (join.stage === 'section' && (made.get(side.id) ?? 1) !== (made.get(join.id) ?? 1)) return false
  return sameWay(side, join)
}

const directionOf = ({ from, to }: Join): Spot => unitVector([inCells(to[0]) - inCells(from[0]), inCells(to[1]) - inCells(from[1])])

const sameWay = (a: Join, b: Join): boolean => Math.abs(cross(directionOf(a), directionOf(b))) < 1e-9

function runOf(context: BookletContext, joins: readonly Join[]): SewingRun {
  const own = new Set(joins.map(({ id }) => id))
  const pieces = joins.flatMap(({ sides }) => sides.filter((side) => !own.has(side)))
  const items = pieces.map((piece) => itemOf(context, piece))
  const final = joins.at(-1) as Join
  const axis = axisOf(joins, items)
  return { stage: final.stage, joins, final, axis, items: [...items].sort((a, b) => dot(a.centre, axis) - dot(b.centre, axis)) }
}

function itemOf(context: BookletContext, piece: string): RunItem {
  const patches = patchesIn(context, piece)
  const units = new Set(patches.map(({ unit }) => unit))
  const [unit] = units
  return { piece, patches, unit: units.size === 1 ? (unit ?? null) : null, centre: centreOfAll(patches) }
}

/** Across straight seams; from one middle to the other where a seam bends. */
function axisOf(joins: readonly Join[], items: readonly RunItem[]): Spot {
  const join = joins[0] as Join
  const [x, y] = directionOf(join)
  const straight = joins.every(({ kind }) => kind !== 'set-in')
  const [first, last] = [items[0] as RunItem, items.at(-1) as RunItem]
  const between = unitVector(minus(last.centre, first.centre))
  const axis: Spot = straight || vectorLength(between) < 1e-9 ? [-y, x] : between
  const forward = Math.abs(axis[0]) < 1e-9 ? axis[1] > 0 : axis[0] > 0
  return forward ? axis : [-axis[0], -axis[1]]
}

/**
 * Alike runs together, named; rows and columns by where they lie, sections in the order in which they are made. Pieces that look alike but are
 * pressed differently are not alike: each has a place of its own in the block.
 */
export function groupRuns(context: BookletContext, runs: readonly SewingRun[]): RunGroup[] {
  const repeat = new Map(context.report.repeats.flatMap((alike, place) => alike.map((join) => [join, place] as const)))
  const groups: SewingRun[][] = []
  const byPrint = new Map<number, SewingRun[][]>()
  const kindOf = new Map<string, string>()
  const kind = ({ piece, unit }: RunItem): string => (unit === null ? (kindOf.get(piece) ?? piece) : (context.variantOf.get(unit)?.label ?? piece))
  for (const run of runs) {
    const print = repeat.get(run.final.id)
    const known = print === undefined ? [] : (byPrint.get(print) ?? [])
    const group = known.find(([first]) => sewnAlike(context, first as SewingRun, run, kind)) ?? []
    if (group.length === 0) groups.push(group)
    if (group.length === 0 && print !== undefined) byPrint.set(print, [...known, group])
    group.push(run)
    kindOf.set(run.final.id, (group[0] as SewingRun).final.id)
  }
  return named(context, groups, runs)
}

/** Whether some turn lays one run on the other, item on item of its kind, each seam pressed the same way. */
function sewnAlike(context: BookletContext, one: SewingRun, other: SewingRun, kind: (item: RunItem) => string): boolean {
  if (one.items.length !== other.items.length) return false
  return TURNS.some((turn) => {
    const lay = laidOn(one, other, turn)
    const items = other.items.every((item) => {
      const at = lay(item.centre)
      return one.items.some((mine) => vectorLength(minus(mine.centre, at)) < NEAR && kind(mine) === kind(item))
    })
    return items && other.joins.every((join) => one.joins.some((mine) => pressedAlike(context, [one, mine], [other, join], lay, turn)))
  })
}

const NEAR = 1e-6
type Turn = (spot: Spot) => Spot
const TURNS: readonly Turn[] = [([x, y]) => [x, y], ([x, y]) => [-y, x], ([x, y]) => [-x, -y], ([x, y]) => [y, -x]]

/** Moves the other run, turned, on top of the one. */
function laidOn(one: SewingRun, other: SewingRun, turn: Turn): Turn {
  const corner = (spots: readonly Spot[]): Spot => {
    const { left, top } = boundsOf(spots)
    return [left, top]
  }
  const to = corner(one.items.flatMap(({ patches }) => cornersOf(patches)))
  const from = corner(other.items.flatMap(({ patches }) => cornersOf(patches)).map(turn))
  return (spot) => plus(turn(spot), minus(to, from))
}

function pressedAlike(
  context: BookletContext,
  [one, mine]: readonly [SewingRun, Join],
  [other, join]: readonly [SewingRun, Join],
  lay: Turn,
  turn: Turn,
): boolean {
  if (mine.kind !== join.kind || vectorLength(minus(middleOfSeam(context, mine), lay(middleOfSeam(context, join)))) > NEAR) return false
  const [ours, theirs] = [towardSign(mine, one, context), towardSign(join, other, context)]
  const turned = turn(other.axis)
  return ours === 0 || theirs === 0 ? ours === theirs : dot(one.axis, turned) * ours * theirs > 0
}

const middleOfSeam = (context: BookletContext, { from, to }: Join): Spot => midpoint(spotOf(context, from), spotOf(context, to))

/** +1 where a seam is pressed toward what lies after it, −1 before it, 0 open. */
export function towardSign(join: Join, run: SewingRun, context: BookletContext): -1 | 0 | 1 {
  if (join.press.toward === 'open') return 0
  const place = seamPlace(context, run, join)
  const toward = join.sides[join.press.toward]
  const item = run.items.find(({ piece }) => piece === toward)
  const other = run.items.find(({ piece }) => piece === join.sides[join.press.toward === 0 ? 1 : 0])
  // One of the two is an item of its own; the other may be the run so far.
  if (item !== undefined) return dot(item.centre, run.axis) > place ? 1 : -1
  return other !== undefined && dot(other.centre, run.axis) > place ? -1 : 1
}

function named(context: BookletContext, groups: readonly (readonly SewingRun[])[], runs: readonly SewingRun[]): RunGroup[] {
  const lines = rowsOrColumns(context, runs)
  const words = context.say.join
  let sections = 0
  return groups.map((group): RunGroup => {
    const [first] = group as [SewingRun]
    if (isBlock(context, first)) return { runs: group, name: words.theBlock, is: 'block', heading: blockHeading(first, lines) }
    const places = group.flatMap((run) => lines?.places.get(run.final.id) ?? []).sort((a, b) => a - b)
    const isLine = lines !== null && places.length === group.length
    if (!isLine) sections += 1
    const line = isLine ? lines.word : 'section'
    const numbers = isLine ? places : [sections]
    const heading = message('step-sew-line', { line, places: numbers, alike: group.length })
    return { runs: group, name: words.lines(line, numbers), is: line, heading }
  })
}

function isBlock(context: BookletContext, { final }: SewingRun): boolean {
  const next = context.usedBy.get(final.id)
  return next === undefined || next.stage === 'border'
}

function blockHeading(run: SewingRun, lines: RowsOrColumns | null): StepTitle {
  if (lines !== null) return message('step-join-lines', { line: lines.word })
  return run.items.every(({ unit }) => unit !== null) ? message('step-sew-block') : message('step-join-lines', { line: 'section' })
}

interface RowsOrColumns {
  readonly word: 'row' | 'column'
  /** By piece, from 1. */
  readonly places: ReadonlyMap<string, number>
}

/** Rows or columns: what the block's last run joins, each from edge to edge; at least two that were sewn before, or three of which one was. */
export function rowsOrColumns(context: BookletContext, runs: readonly SewingRun[]): RowsOrColumns | null {
  const last = runs.find((run) => isBlock(context, run))
  // One more strip sewn to a piece that grows, as round a log cabin, makes no rows.
  if (last === undefined || last.items.filter(({ unit }) => unit === null).length < (last.items.length > 2 ? 1 : 2)) return null
  const across = Math.abs(last.axis[1]) > 1 - 1e-9 ? 0 : Math.abs(last.axis[0]) > 1 - 1e-9 ? 1 : null
  if (across === null) return null
  const far = context.report.block.finished[across]
  const wide = last.items.every(({ patches }) => {
    const box = rectangleOf(patches)
    return box !== null && Math.abs((across === 0 ? box.right - box.left : box.bottom - box.top) - far) < 1e-6
  })
  return wide ? { word: across === 0 ? 'row' : 'column', places: new Map(last.items.map(({ piece }, index) => [piece, index + 1])) } : null
}

/** The middle of a join's seam along the axis of its run. */
export const seamPlace = (context: BookletContext, run: SewingRun, join: Join): number => {
  const [a, b] = [spotOf(context, join.from), spotOf(context, join.to)]
  return (dot(a, run.axis) + dot(b, run.axis)) / 2
}
