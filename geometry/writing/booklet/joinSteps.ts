/**
 * Joining the units, run by run: what is sewn to what, which points match, which way it is pressed, what it measures then.
 *
 * In      the booklet context: report and block, with lengths in the unit of measure (in or cm).
 * Out     one step for each run; alike runs are one step, made together.
 * Source  pressing and nesting [S79][S89], partial seams [S95], set-in seams [S99]; chain piecing: common practice, no source.
 */
import type { Join } from '../../values/report.ts'
import { capital, inWords } from '../../words/englishPhrases.ts'
import { listed, sayOne, saySize } from '../phrases.ts'
import { type BookletContext, NO_METHOD, spotOf } from './bookletContext.ts'
import { vectorLength, minus } from './pieceDrawing.ts'
import { inOrder, layoutPicture, placePicture, pressedRun, sewnNow } from './joinPictures.ts'
import type { SewingDraft } from './draftStep.ts'
import { matchingClauses, meetingsAlong } from './matchingPoints.ts'
import { rowsOrColumns, listedNumbers, type RunItem, type SewingRun, sewingRuns, type RunGroup, groupRuns, towardSign } from './runs.ts'
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
export const isLine = ({ heading }: RunGroup): boolean =>
  heading.code === 'step-sew-line' && 'line' in heading.params && heading.params.line !== 'section'

interface Naming {
  readonly context: BookletContext
  /** How an item is called in a sentence. */
  readonly name: (item: RunItem) => string
}

const unitName = ({ unit }: RunItem, context: BookletContext): string =>
  unit === null ? 'the piece' : (context.variantOf.get(unit)?.label ?? NO_METHOD)

/** In the block's last run each item has the name of its place. */
function lineNames(runs: readonly SewingRun[], names: ReadonlyMap<string, string>, context: BookletContext): ReadonlyMap<string, string> {
  const lines = rowsOrColumns(context, runs)
  const last = runs.find(({ items }) => items.some(({ piece }) => lines?.places.has(piece)))
  if (lines === null || last === undefined) return new Map()
  return new Map(
    last.items.map((item) => {
      const own = item.unit === null ? names.get(item.piece) : unitName(item, context)
      const also = own === undefined || own.startsWith(lines.word) ? '' : ` (${own})`
      return [item.piece, `${lines.word} ${lines.places.get(item.piece)}${also}`] as const
    }),
  )
}

function joinStep(group: RunGroup, naming: Naming): SewingDraft {
  const { context } = naming
  const [run] = group.runs as [SewingRun]
  const number = group.runs.length
  const lastRun = run.stage === 'block' || group.name === 'the block'
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
      `Press ${press.words}.`,
      ...measure(run, number, group.name, context),
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
function keysOf({ runs, name }: RunGroup, context: BookletContext): string[] {
  const [run] = runs as [SewingRun]
  if (name === 'the block') return ['join:block']
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
  const crooked = run.joins.filter(({ kind }) => kind !== 'straight')
  const names = run.items.map(naming.name)
  const chain =
    number > 1
      ? [`Make ${inWords(number, '', '').trim()}. Chain piece them: feed them through one after the other, then snip the threads between them.`]
      : []
  const match = matchingClauses(
    meetingsAlong(
      naming.context,
      run.joins.map(({ id }) => id),
    ),
  )
  const clause = match.length === 0 ? '' : `: ${listedClauses(match)}`
  if (crooked.length > 0)
    return [
      ...crooked.flatMap((join) => crookedSentences(join, run, naming)),
      ...(match.length === 0 ? [] : [`${capital(listedClauses(match))}.`]),
      ...chain,
    ]
  const how = run.items.length === 2 ? pair(names[0] as string, names[1] as string) : `Sew ${row(names)} together, ${direction(run.axis)}`
  return [`${how}${clause}.`, ...chain]
}

/** `Sew A to B`; `Sew two section 1s together`. */
const pair = (one: string, other: string): string =>
  one !== other ? `Sew ${one} to ${other}` : `Sew two ${one.includes(' ') ? `${one}s` : `${one} units`} together`

/** `A, B, A`, with stretches of one letter counted: `4 A, B`. */
function row(names: readonly string[]): string {
  const stretches: { name: string; number: number }[] = []
  for (const name of names) {
    const last = stretches.at(-1)
    if (last?.name === name) last.number += 1
    else stretches.push({ name, number: 1 })
  }
  return listed(stretches.map(({ name, number }) => (number === 1 ? name : `${number} ${name}`)))
}

const listedClauses = (clauses: readonly string[]): string => clauses.join('; ')

const direction = ([x, y]: Spot): string =>
  Math.abs(x) > Math.abs(y) * 4 ? 'from left to right' : Math.abs(y) > Math.abs(x) * 4 ? 'from top to bottom' : 'in the order the picture shows'

/** Seam by seam: `Sew row 1 to row 2: match 2 nested seams.` */
function oneByOne(run: SewingRun, naming: Naming): string[] {
  return inOrder(run, naming.context).flatMap((join, index) => {
    if (join.kind !== 'straight') return crookedSentences(join, run, naming)
    const match = matchingClauses(naming.context.meetings.get(join.id) ?? [])
    const clause = match.length === 0 ? '' : `: ${listedClauses(match)}`
    return [`Sew ${naming.name(run.items[index] as RunItem)} to ${naming.name(run.items[index + 1] as RunItem)}${clause}.`]
  })
}

function crookedSentences(join: Join, run: SewingRun, naming: Naming): string[] {
  const [one, other] = run.items.map(naming.name)
  if (join.kind === 'set-in') return setInSentences(join, sideNames(join, run, naming), naming.context)
  const open = openEnd(join, naming.context)
  const length = sewnNow(join, naming.context).reduce((sum, [a, b]) => sum + vectorLength(minus(b, a)), 0) / 2
  return [
    `Sew ${one} to ${other} only part of the way: start at the ${OTHER_END[open]} end, stop after ${sayOne(length, naming.context.unit)} and leave the rest open. You’ll finish it later. Until then, press it as far as it’s sewn.`,
  ]
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
  return closed.length === 0
    ? []
    : [`Now finish the ${closed.length === 1 ? 'seam' : `${closed.length} seams`} you left open, from the last stitch to the edge.`]
}

function pressWords(run: SewingRun, naming: Naming): { words: string; numbered: boolean } {
  const joins = inOrder(run, naming.context)
  const signs = joins.map((join) => towardSign(join, run, naming.context))
  const all = signs.length === 1 ? 'the seam' : signs.length === 2 ? 'both seams' : 'all seams'
  const towards = signs.map((sign, index) => (sign === 0 ? 'open' : naming.name(run.items[sign === 1 ? index + 1 : index] as RunItem)))
  const aways = signs.map((sign, index) => (sign === 0 ? 'open' : naming.name(run.items[sign === 1 ? index : index + 1] as RunItem)))
  if (signs.every((sign) => sign === 0)) return { words: `${all} open`, numbered: false }
  if (signs.length === 1) {
    const toward = towards[0] === aways[0] ? '' : `, toward ${towards[0]}`
    return { words: `the seam ${sideWords(run.axis, signs[0] as number)}${toward}`, numbered: false }
  }
  if (new Set(signs).size === 1) return { words: `${all} ${sideWords(run.axis, signs[0] as number)}`, numbered: false }
  const names = [...new Set(towards)]
  if (names.length <= 2 && !names.includes('open') && !aways.some((away) => names.includes(away)))
    return { words: `${all} toward ${listed(names)}`, numbered: false }
  return { words: `${byNumber(signs, run.axis)}, counting ${direction(run.axis)}`, numbered: true }
}

/** `seam 1 down and seam 2 up`; `all seams to the right except 4, 8 and 12, and those to the left`. */
function byNumber(signs: readonly number[], axis: Spot): string {
  const ways = [...new Set(signs)]
    .map((sign) => ({
      way: sign === 0 ? 'open' : sideWords(axis, sign),
      places: signs.flatMap((one, index) => (one === sign ? [index + 1] : [])),
    }))
    .sort((a, b) => b.places.length - a.places.length)
  const [most, rest] = ways
  if (ways.length === 2 && most !== undefined && rest !== undefined && most.places.length > Math.max(2, rest.places.length))
    return `all seams ${most.way} except ${listedNumbers(rest.places)}, and ${rest.places.length === 1 ? 'that one' : 'those'} ${rest.way}`
  return listed(
    ways
      .sort((a, b) => (a.places[0] as number) - (b.places[0] as number))
      .map(({ way, places }) => `${places.length === 1 ? 'seam' : 'seams'} ${listedNumbers(places)} ${way}`),
  )
}

/** `to the right`, `down`, `up and to the left`. */
function sideWords([x, y]: Spot, sign: number): string {
  const [dx, dy] = [x * sign, y * sign]
  const level = Math.abs(dx) > Math.abs(dy) * 4
  const upright = Math.abs(dy) > Math.abs(dx) * 4
  const words = [...(level ? [] : [dy < 0 ? 'up' : 'down']), ...(upright ? [] : [dx < 0 ? 'to the left' : 'to the right'])]
  return words.join(' and ')
}

function measure({ final }: SewingRun, number: number, name: string, context: BookletContext): string[] {
  if (final.unfinished === null) return []
  const what =
    number > 1
      ? name.startsWith('row')
        ? 'Each row'
        : name.startsWith('column')
          ? 'Each column'
          : 'Each'
      : capital(name.startsWith('the ') ? name : `${name}`)
  return [`${what} should measure ${saySize(final.unfinished, context.unit)}.`]
}

function drawingsOf(run: SewingRun, name: string, naming: Naming, numbered: boolean): Drawing[] {
  const { context } = naming
  const labels = run.items.map((item) => shortName(naming.name(item), run.items.length))
  const laid = layoutPicture(
    run,
    labels,
    context,
    numbered,
    `${capital(name)} laid out right side up, its pieces apart; arrows show which way to press each seam.`,
  )
  const behind = pressedRun(run, context, `${capital(name)} from the wrong side, sewn and pressed.`)
  return behind === null ? [laid] : [laid, behind]
}

/** A section is no row: where it lies in the block is shown beside it. */
function whereInBlock({ runs, name }: RunGroup, context: BookletContext): Drawing[] {
  if (!name.startsWith('section')) return []
  return [placePicture(runs, context, `Where ${name} goes in the block.`)]
}

/** Little room is left in a picture of many. */
const shortName = (name: string, number: number): string => (number > 30 ? '' : name)
