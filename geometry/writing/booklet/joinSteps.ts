/**
 * Joining the units, run by run: what is sewn to what, which points match, which way it is pressed, what it measures then.
 *
 * In      the bench.
 * Out     one step for each run; alike runs are one step, made together.
 * Source  pressing and nesting [S79][S89], partial seams [S95], set-in seams [S99]; chain piecing: common practice, no source.
 */
import type { Join } from '../../values/report.ts'
import { capital, inWords, listed, sayOne, saySize } from '../phrases.ts'
import { type Bench, NO_METHOD, spotOf } from './bookletContext.ts'
import { lengthOf, minus } from './pieceDrawing.ts'
import { inOrder, layoutPicture, placePicture, pressedRun, sewnNow } from './joinPictures.ts'
import type { Made } from './draftStep.ts'
import { matchingClauses, meetingsOf } from './matchingPoints.ts'
import { linesOf, listOf, type Item, type Run, runsOf, type Together, togetherOf, towardSign } from './runs.ts'
import { setInSentences, stopShort } from './setInSeam.ts'
import type { Drawing, Spot } from './values.ts'

export function joinSteps(bench: Bench): Made[] {
  const runs = runsOf(bench)
  const all = togetherOf(bench, runs)
  const names = new Map(all.flatMap(({ runs: alike, name }) => alike.map(({ final }) => [final.id, name] as const)))
  const lines = lineNames(runs, names, bench)
  const told: Told = { bench, name: (item) => lines.get(item.piece) ?? names.get(item.piece) ?? unitName(item, bench) }
  return all.map((together) => joinStep(together, told))
}

interface Told {
  readonly bench: Bench
  /** How an item is called in a sentence. */
  readonly name: (item: Item) => string
}

const unitName = ({ unit }: Item, bench: Bench): string => (unit === null ? 'the piece' : (bench.lookOf.get(unit)?.label ?? NO_METHOD))

/** In the block's last run each item has the name of its place. */
function lineNames(runs: readonly Run[], names: ReadonlyMap<string, string>, bench: Bench): ReadonlyMap<string, string> {
  const lines = linesOf(bench, runs)
  const last = runs.find(({ items }) => items.some(({ piece }) => lines?.places.has(piece)))
  if (lines === null || last === undefined) return new Map()
  return new Map(
    last.items.map((item) => {
      const own = item.unit === null ? names.get(item.piece) : unitName(item, bench)
      const also = own === undefined || own.startsWith(lines.word) ? '' : ` (${own})`
      return [item.piece, `${lines.word} ${lines.places.get(item.piece)}${also}`] as const
    }),
  )
}

function joinStep(together: Together, told: Told): Made {
  const { bench } = told
  const [run] = together.runs as [Run]
  const number = together.runs.length
  const many = number > 1 ? `: make ${inWords(number, 'alike', 'alike')}` : ''
  const lastRun = run.stage === 'block' || together.name === 'the block'
  const press = pressWords(run, told)
  return {
    keys: keysOf(together, bench),
    title: `${together.title}${many}`,
    sentences: [
      ...(lastRun && run.joins.length <= MOST_TOLD && run.items.length > 2 ? oneByOne(run, told) : asOne(run, number, told)),
      ...stopShort(
        together.runs.flatMap(({ joins }) => joins),
        bench,
      ),
      ...finished(together.runs, told),
      `Press ${press.words}.`,
      ...measure(run, number, together.name, bench),
    ],
    drawings: [...drawingsOf(run, together.name, told, press.numbered), ...whereInBlock(together, bench)],
    cautions: ['needle', 'iron'],
    count: number,
    joins: together.runs.flatMap(({ joins }) => joins.map(({ id }) => id)),
    units: [],
    cut: [],
  }
}

/** Found again by any unit of the piece: what else stands in the block does not matter. */
function keysOf({ runs, name }: Together, bench: Bench): string[] {
  const [run] = runs as [Run]
  if (name === 'the block') return ['join:block']
  const units = run.items.flatMap(({ patches }) => patches.map(({ unit }) => unit))
  const others = runs.slice(1).flatMap(({ items }) => items.flatMap(({ patches }) => patches.map(({ unit }) => unit)))
  const own = [...new Set([...units, ...others])].filter((unit) => unit !== null)
  const stage = run.stage === 'section' ? `section of ${new Set(units).size}` : run.stage
  return own.length === 0 ? [`join:${stage}:${bench.report.joins.indexOf(run.final)}`] : own.map((unit) => `join:${stage}:${unit}`)
}

/** Joins above which a run is told as a whole. */
const MOST_TOLD = 12

/** `Sew A, B and A together, from left to right.` */
function asOne(run: Run, number: number, told: Told): string[] {
  const crooked = run.joins.filter(({ kind }) => kind !== 'straight')
  const names = run.items.map(told.name)
  const chain =
    number > 1
      ? [`Make ${inWords(number, '', '').trim()}; chain piece them: feed them through one after the other, then snip the thread between.`]
      : []
  const match = matchingClauses(
    meetingsOf(
      told.bench,
      run.joins.map(({ id }) => id),
    ),
  )
  const clause = match.length === 0 ? '' : `: ${listedClauses(match)}`
  if (crooked.length > 0)
    return [
      ...crooked.flatMap((join) => crookedSentences(join, run, told)),
      ...(match.length === 0 ? [] : [`${capital(listedClauses(match))}.`]),
      ...chain,
    ]
  const how = run.items.length === 2 ? `Sew ${names[0]} to ${names[1]}` : `Sew ${row(names)} together, ${direction(run.axis)}`
  return [`${how}${clause}.`, ...chain]
}

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
  Math.abs(x) > Math.abs(y) * 4 ? 'from left to right' : Math.abs(y) > Math.abs(x) * 4 ? 'from top to bottom' : 'in the order of the picture'

/** Seam by seam: `Sew row 1 to row 2: match 2 nested seams.` */
function oneByOne(run: Run, told: Told): string[] {
  return inOrder(run, told.bench).flatMap((join, index) => {
    if (join.kind !== 'straight') return crookedSentences(join, run, told)
    const match = matchingClauses(told.bench.meetings.get(join.id) ?? [])
    const clause = match.length === 0 ? '' : `: ${listedClauses(match)}`
    return [`Sew ${told.name(run.items[index] as Item)} to ${told.name(run.items[index + 1] as Item)}${clause}.`]
  })
}

function crookedSentences(join: Join, run: Run, told: Told): string[] {
  const [one, other] = run.items.map(told.name)
  if (join.kind === 'set-in') return setInSentences(join, sideNames(join, run, told), told.bench)
  const open = openEnd(join, told.bench)
  const length = sewnNow(join, told.bench).reduce((sum, [a, b]) => sum + lengthOf(minus(b, a)), 0) / 2
  return [
    `Sew ${one} to ${other} only part of the way: begin at the ${OTHER_END[open]} end, stop after ${sayOne(length, told.bench.unit)} and leave the rest open. It is finished later; until then press it as far as it is sewn.`,
  ]
}

/** How the sides of a join are called, in the join's order. */
function sideNames({ sides }: Join, { items }: Run, told: Told): [string, string] {
  const [one, other] = sides.map((side) => told.name(items.find(({ piece }) => piece === side) ?? (items[0] as Item)))
  return [one as string, other as string]
}

const OTHER_END = { right: 'left', left: 'right', lower: 'upper', upper: 'lower' } as const

/** The end of a partial seam that stays open, as it lies on the table. */
function openEnd(join: Join, bench: Bench): keyof typeof OTHER_END {
  const [from, to] = [spotOf(bench, join.from), spotOf(bench, join.to)]
  const sewn = sewnNow(join, bench).flat()
  const near = (end: Spot): boolean => sewn.some((spot) => lengthOf(minus(spot, end)) < 1e-6)
  const [open, other] = near(from) ? [to, from] : [from, to]
  const way = minus(open, other)
  if (Math.abs(way[0]) > Math.abs(way[1])) return way[0] > 0 ? 'right' : 'left'
  return way[1] > 0 ? 'lower' : 'upper'
}

/** Partial seams that can be closed once these joins are sewn. */
function finished(runs: readonly Run[], { bench }: Told): string[] {
  const own = new Set(runs.flatMap(({ joins }) => joins.map(({ id }) => id)))
  const closed = bench.report.joins.filter(({ finishedAfter }) => finishedAfter !== undefined && own.has(finishedAfter))
  return closed.length === 0
    ? []
    : [
        `Now finish the ${closed.length === 1 ? 'seam that was' : `${closed.length} seams that were`} left open, from where the stitches end to the edge.`,
      ]
}

function pressWords(run: Run, told: Told): { words: string; numbered: boolean } {
  const joins = inOrder(run, told.bench)
  const signs = joins.map((join) => towardSign(join, run, told.bench))
  const all = signs.length === 1 ? 'the seam' : signs.length === 2 ? 'both seams' : 'every seam'
  const towards = signs.map((sign, index) => (sign === 0 ? 'open' : told.name(run.items[sign === 1 ? index + 1 : index] as Item)))
  const aways = signs.map((sign, index) => (sign === 0 ? 'open' : told.name(run.items[sign === 1 ? index : index + 1] as Item)))
  if (signs.every((sign) => sign === 0)) return { words: `${all} open`, numbered: false }
  if (signs.length === 1) return { words: `the seam ${sideWords(run.axis, signs[0] as number)}, toward ${towards[0]}`, numbered: false }
  if (new Set(signs).size === 1) return { words: `${all} ${sideWords(run.axis, signs[0] as number)}`, numbered: false }
  const names = [...new Set(towards)]
  if (names.length <= 2 && !names.includes('open') && !aways.some((away) => names.includes(away)))
    return { words: `${all} toward ${listed(names)}`, numbered: false }
  const by = [...new Set(signs)].flatMap((sign) => {
    const places = signs.flatMap((one, index) => (one === sign ? [index + 1] : []))
    if (places.length === 0) return []
    return [`${places.length === 1 ? 'seam' : 'seams'} ${listOf(places)} ${sign === 0 ? 'open' : sideWords(run.axis, sign)}`]
  })
  return { words: `${listed(by)}, counted ${direction(run.axis)}`, numbered: true }
}

/** `to the right`, `down`, `up and to the left`. */
function sideWords([x, y]: Spot, sign: number): string {
  const [dx, dy] = [x * sign, y * sign]
  const level = Math.abs(dx) > Math.abs(dy) * 4
  const upright = Math.abs(dy) > Math.abs(dx) * 4
  const words = [...(level ? [] : [dy < 0 ? 'up' : 'down']), ...(upright ? [] : [dx < 0 ? 'to the left' : 'to the right'])]
  return words.join(' and ')
}

function measure({ final }: Run, number: number, name: string, bench: Bench): string[] {
  if (final.unfinished === null) return []
  const what =
    number > 1
      ? name.startsWith('row')
        ? 'Each row'
        : name.startsWith('column')
          ? 'Each column'
          : 'Each'
      : capital(name.startsWith('the ') ? name : `${name}`)
  return [`${what} now measures ${saySize(final.unfinished, bench.unit)}.`]
}

function drawingsOf(run: Run, name: string, told: Told, numbered: boolean): Drawing[] {
  const { bench } = told
  const labels = run.items.map((item) => shortName(told.name(item), run.items.length))
  const laid = layoutPicture(
    run,
    labels,
    bench,
    numbered,
    `${capital(name)} laid out from the right side, its pieces apart; arrows say which way each seam is pressed.`,
  )
  const behind = pressedRun(run, bench, `${capital(name)} from the wrong side, sewn and pressed.`)
  return behind === null ? [laid] : [laid, behind]
}

/** A section is no row: where it lies in the block is shown beside it. */
function whereInBlock({ runs, name }: Together, bench: Bench): Drawing[] {
  if (!name.startsWith('section')) return []
  return [placePicture(runs, bench, `Where ${name} lies in the block.`)]
}

/** Little room is left in a picture of many. */
const shortName = (name: string, number: number): string => (number > 30 ? '' : name)
