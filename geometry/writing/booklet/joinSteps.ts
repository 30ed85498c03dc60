/**
 * Joining the units, run by run: what is sewn to what, which points match, which way it is pressed, what it measures then.
 *
 * In      the booklet context: report and block, with lengths in the unit of measure (in or cm).
 * Out     one step for each run; alike runs are one step, made together.
 * Source  pressing and nesting [S79][S89], partial seams [S95], set-in seams [S99]; chain piecing: common practice, no source.
 */
import type { Join } from '../../values/report.ts'
import type { PressDirection, ReadingOrder } from '../../words/booklet/joinEnglish.ts'
import { type BookletContext, NO_METHOD, spotOf } from './bookletContext.ts'
import { vectorLength, minus } from './pieceDrawing.ts'
import { inOrder, layoutPicture, placePicture, pressedRun, sewnNow } from './joinPictures.ts'
import type { SewingDraft } from './draftStep.ts'
import { matchingClauses, meetingsAlong } from './matchingPoints.ts'
import { rowsOrColumns, type RunItem, type SewingRun, sewingRuns, type RunGroup, groupRuns, towardSign } from './runs.ts'
import { setInSentences, stopShort } from './setInSeam.ts'
import type { Drawing, Spot } from './values.ts'

export function joinSteps(context: BookletContext): SewingDraft[] {
  const runs = sewingRuns(context)
  const all = sewingOrder(context, runs)
  const names = new Map(all.flatMap(({ runs: alike, name }) => alike.map(({ final }) => [final.id, name] as const)))
  const lines = lineNames(runs, names, context)
  const naming: Naming = { context, name: (item) => lines.get(item.piece) ?? names.get(item.piece) ?? unitName(item, context) }
  return all.map((group) => joinStep(group, naming))
}

/** Groups of runs as they are sewn: what is sewn inside the items of rows comes before all rows. */
export function sewingOrder(context: BookletContext, runs: readonly SewingRun[]): RunGroup[] {
  const groups = groupRuns(context, runs)
  if (rowsOrColumns(context, runs) === null) return groups
  const inside = (group: RunGroup): boolean => group.runs.every(({ stage }) => stage === 'section')
  return [...groups.filter(inside), ...groups.filter((group) => !inside(group))]
}

/** Whether a group of runs is a row or a column of the block. */
export const isLine = ({ is }: RunGroup): boolean => is === 'row' || is === 'column'

interface Naming {
  readonly context: BookletContext
  /** How an item is called in a sentence. */
  readonly name: (item: RunItem) => string
}

const unitName = ({ unit }: RunItem, context: BookletContext): string =>
  unit === null ? context.say.join.thePiece : (context.variantOf.get(unit)?.label ?? NO_METHOD)

/** In the block's last run each item has the name of its place. */
function lineNames(runs: readonly SewingRun[], names: ReadonlyMap<string, string>, context: BookletContext): ReadonlyMap<string, string> {
  const words = context.say.join
  const lines = rowsOrColumns(context, runs)
  const last = runs.find(({ items }) => items.some(({ piece }) => lines?.places.has(piece)))
  if (lines === null || last === undefined) return new Map()
  return new Map(
    last.items.map((item) => {
      const place = lines.places.get(item.piece) as number
      const own = item.unit === null ? names.get(item.piece) : unitName(item, context)
      const isOwn = own === undefined || own.startsWith(words.lines(lines.word, [0]).slice(0, 3))
      return [item.piece, isOwn ? words.lines(lines.word, [place]) : words.lineMadeOf(lines.word, place, own)] as const
    }),
  )
}

function joinStep(group: RunGroup, naming: Naming): SewingDraft {
  const { context } = naming
  const [run] = group.runs as [SewingRun]
  const number = group.runs.length
  const lastRun = run.stage === 'block' || group.is === 'block'
  const press = pressWords(run, naming)
  return {
    keys: keysOf(group, context),
    heading: group.heading,
    sentences: [
      ...(lastRun && run.joins.length <= MOST_TOLD && run.items.length > 2 ? oneByOne(run, naming) : asOne(run, number, naming)),
      ...stopShort(
        group.runs.flatMap(({ joins }) => joins),
        context,
      ),
      ...finished(group.runs, naming),
      press.words,
      ...measure(group, context),
    ],
    drawings: [...drawingsOf(run, group.name, naming, press.numbered), ...whereInBlock(group, context)],
    cautions: ['needle', 'iron'],
    count: number,
    joins: group.runs.flatMap(({ joins }) => joins.map(({ id }) => id)),
    units: [],
    cut: [],
  }
}

/** Found again by any unit of the piece: what else stands in the block does not matter. */
function keysOf({ runs, is }: RunGroup, context: BookletContext): string[] {
  const [run] = runs as [SewingRun]
  if (is === 'block') return ['join:block']
  const units = run.items.flatMap(({ patches }) => patches.map(({ unit }) => unit))
  const others = runs.slice(1).flatMap(({ items }) => items.flatMap(({ patches }) => patches.map(({ unit }) => unit)))
  const own = [...new Set([...units, ...others])].filter((unit) => unit !== null)
  const stage = run.stage === 'section' ? `section of ${new Set(units).size}` : run.stage
  return own.length === 0 ? [`join:${stage}:${context.report.joins.indexOf(run.final)}`] : own.map((unit) => `join:${stage}:${unit}`)
}

/** Joins above which a run is described as a whole. */
const MOST_TOLD = 12

/** `Sew A, B and A together, from left to right.` */
function asOne(run: SewingRun, number: number, naming: Naming): string[] {
  const words = naming.context.say.join
  const crooked = run.joins.filter(({ kind }) => kind !== 'straight')
  const names = run.items.map(naming.name)
  const chain = number > 1 ? [words.makeAlike(number)] : []
  const joins = run.joins.map(({ id }) => id)
  const match = matchingClauses(meetingsAlong(naming.context, joins), naming.context)
  if (crooked.length > 0)
    return [...crooked.flatMap((join) => crookedSentences(join, run, naming)), ...(match.length === 0 ? [] : [words.matched(match)]), ...chain]
  const [one, other] = names as [string, string]
  if (names.length !== 2) return [words.together(row(names, naming), direction(run.axis), match), ...chain]
  const sewn = one === other ? words.twoAlike(one, run.items[0]?.unit !== null, match) : words.oneToOther(one, other, match)
  return [sewn, ...chain]
}

/** `A, B, A`, with stretches of one letter counted: `4 A, B`. */
function row(names: readonly string[], { context }: Naming): string[] {
  const stretches: { name: string; number: number }[] = []
  for (const name of names) {
    const last = stretches.at(-1)
    if (last?.name === name) last.number += 1
    else stretches.push({ name, number: 1 })
  }
  return stretches.map(({ name, number }) => (number === 1 ? name : context.say.join.several(number, name)))
}

const direction = ([x, y]: Spot): ReadingOrder => (Math.abs(x) > Math.abs(y) * 4 ? 'across' : Math.abs(y) > Math.abs(x) * 4 ? 'down' : 'as shown')

/** Seam by seam: `Sew row 1 to row 2: nest the seams at 2 points.` */
function oneByOne(run: SewingRun, naming: Naming): string[] {
  return inOrder(run, naming.context).flatMap((join, index) => {
    if (join.kind !== 'straight') return crookedSentences(join, run, naming)
    const match = matchingClauses(naming.context.meetings.get(join.id) ?? [], naming.context)
    const [one, other] = [run.items[index], run.items[index + 1]].map((item) => naming.name(item as RunItem)) as [string, string]
    return [naming.context.say.join.oneToOther(one, other, match)]
  })
}

function crookedSentences(join: Join, run: SewingRun, naming: Naming): string[] {
  const [one, other] = run.items.map(naming.name) as [string, string]
  if (join.kind === 'set-in') return setInSentences(join, sideNames(join, run, naming), naming.context)
  const length = sewnNow(join, naming.context).reduce((sum, [a, b]) => sum + vectorLength(minus(b, a)), 0) / 2
  return [naming.context.say.join.partial({ one, other, start: OTHER_END[openEnd(join, naming.context)], length: naming.context.one(length) })]
}

/** How the sides of a join are called, in the join's order. */
function sideNames({ sides }: Join, { items }: SewingRun, naming: Naming): [string, string] {
  const [one, other] = sides.map((side) => naming.name(items.find(({ piece }) => piece === side) ?? (items[0] as RunItem)))
  return [one as string, other as string]
}

const OTHER_END = { right: 'left', left: 'right', lower: 'upper', upper: 'lower' } as const

/** The end of a partial seam that stays open, as it lies on the table. */
function openEnd(join: Join, context: BookletContext): keyof typeof OTHER_END {
  const [from, to] = [spotOf(context, join.from), spotOf(context, join.to)]
  const sewn = sewnNow(join, context).flat()
  const near = (end: Spot): boolean => sewn.some((spot) => vectorLength(minus(spot, end)) < 1e-6)
  const [open, other] = near(from) ? [to, from] : [from, to]
  const way = minus(open, other)
  if (Math.abs(way[0]) > Math.abs(way[1])) return way[0] > 0 ? 'right' : 'left'
  return way[1] > 0 ? 'lower' : 'upper'
}

/** Partial seams that can be closed once these joins are sewn. */
function finished(runs: readonly SewingRun[], { context }: Naming): string[] {
  const own = new Set(runs.flatMap(({ joins }) => joins.map(({ id }) => id)))
  const closed = context.report.joins.filter(({ finishedAfter }) => finishedAfter !== undefined && own.has(finishedAfter))
  return closed.length === 0 ? [] : [context.say.join.finishOpen(closed.length)]
}

function pressWords(run: SewingRun, naming: Naming): { words: string; numbered: boolean } {
  const said = naming.context.say.join
  const joins = inOrder(run, naming.context)
  const signs = joins.map((join) => towardSign(join, run, naming.context))
  const nameAt = (index: number): string => naming.name(run.items[index] as RunItem)
  const towards = signs.map((sign, index) => (sign === 0 ? null : nameAt(sign === 1 ? index + 1 : index)))
  const aways = signs.map((sign, index) => (sign === 0 ? null : nameAt(sign === 1 ? index : index + 1)))
  if (signs.every((sign) => sign === 0)) return { words: said.pressOpen(signs.length), numbered: false }
  const [sign, toward] = [signs[0] as number, towards[0] ?? null]
  if (signs.length === 1) {
    if (toward === null || toward === aways[0]) return { words: said.pressSeams(1, wayOf(run.axis, sign)), numbered: false }
    const bent = joins[0]?.kind === 'set-in'
    return { words: bent ? said.pressBentToward(toward) : said.pressSeamToward(wayOf(run.axis, sign), toward), numbered: false }
  }
  if (new Set(signs).size === 1) return { words: said.pressSeams(signs.length, wayOf(run.axis, sign)), numbered: false }
  const names = [...new Set(towards)].filter((name) => name !== null)
  if (names.length <= 2 && !towards.includes(null) && !aways.some((away) => away !== null && names.includes(away)))
    return { words: said.pressToward(signs.length, names), numbered: false }
  return { words: byNumber(signs, run.axis, naming), numbered: true }
}

/** `seam 1 down and seam 2 up`; `all seams to the right, except 4, 8 and 12`. */
function byNumber(signs: readonly number[], axis: Spot, { context: { say } }: Naming): string {
  const ways = [...new Set(signs)]
    .map((sign) => ({
      to: sign === 0 ? ('open' as const) : wayOf(axis, sign),
      seams: signs.flatMap((one, index) => (one === sign ? [index + 1] : [])),
    }))
    .sort((a, b) => b.seams.length - a.seams.length)
  const [most, rest] = ways
  if (ways.length === 2 && most !== undefined && rest !== undefined && most.seams.length > Math.max(2, rest.seams.length))
    return say.join.pressExcept(most.to, rest.to, rest.seams, direction(axis))
  return say.join.pressByNumber(
    ways.sort((a, b) => (a.seams[0] as number) - (b.seams[0] as number)),
    direction(axis),
  )
}

/** `to the right`, `down`, `up and to the left`. */
function wayOf([x, y]: Spot, sign: number): PressDirection {
  const [dx, dy] = [x * sign, y * sign]
  const one = (length: number): -1 | 0 | 1 => (length < 0 ? -1 : 1)
  return [Math.abs(dy) > Math.abs(dx) * 4 ? 0 : one(dx), Math.abs(dx) > Math.abs(dy) * 4 ? 0 : one(dy)]
}

function measure({ runs, name, is }: RunGroup, context: BookletContext): string[] {
  const unfinished = runs[0]?.final.unfinished
  if (unfinished == null) return []
  const size = context.size(unfinished)
  return [runs.length > 1 ? context.say.join.eachShouldMeasure(is === 'block' ? null : is, size) : context.say.join.shouldMeasure(name, size)]
}

function drawingsOf(run: SewingRun, name: string, naming: Naming, numbered: boolean): Drawing[] {
  const { context } = naming
  const { pictures } = context.say.join
  const labels = run.items.map((item) => shortName(naming.name(item), run.items.length))
  const laid = layoutPicture(run, labels, context, numbered, pictures.laidApart(name))
  const behind = pressedRun(run, context, pictures.behind(name))
  return behind === null ? [laid] : [laid, behind]
}

/** A section is no row: where it lies in the block is shown beside it. */
function whereInBlock({ runs, name, is }: RunGroup, context: BookletContext): Drawing[] {
  return is === 'section' ? [placePicture(runs, context, context.say.join.pictures.where(name))] : []
}

/** Little room is left in a picture of many. */
const shortName = (name: string, number: number): string => (number > 30 ? '' : name)
