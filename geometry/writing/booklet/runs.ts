/**
 * Runs: joins that a maker sews in one go at the table, such as all seams of a row.
 *
 * In      the bench.
 * Out     runs in sewing order, each with its items from left to right (or top to bottom) and its joins; alike runs together. Every join after the
 *         units and before the borders is in exactly one run.
 * How     a join goes on with the run of one of its sides where that is of the same stage and runs the same way, so that a row is one run. Sections go
 *         on only where the piece is made as often: four alike quarters are made first and joined then.
 */
import type { Join, Stage } from '../../values.ts'
import { type Bench, type BenchPatch, patchesIn, spotOf } from './bench.ts'
import { centreOfAll, cross, dot, lengthOf, minus, unitOf } from './cloth.ts'
import type { Spot } from './values.ts'

export interface Item {
  /** A patch or a join. */
  readonly piece: string
  readonly patches: readonly BenchPatch[]
  /** The unit it is, if it is a whole one. */
  readonly unit: string | null
  readonly centre: Spot
}

export interface Run {
  readonly stage: Stage
  /** In sewing order. */
  readonly joins: readonly Join[]
  readonly final: Join
  /** Along which the items lie, from the first to the last; right or down, unless the seams slant. */
  readonly axis: Spot
  readonly items: readonly Item[]
}

/** Alike runs, made together: the first stands for all. */
export interface Together {
  readonly runs: readonly Run[]
  /** How a maker calls the piece that comes out. */
  readonly name: string
  readonly title: string
}

export function runsOf(bench: Bench): Run[] {
  const open = new Map<string, Join[]>()
  const made = repeatsByJoin(bench)
  for (const join of bench.report.joins) {
    if (join.stage === 'unit' || join.stage === 'border') continue
    const before = join.sides.find((side) => goesOn(bench.joins.get(side), join, made) && open.has(side))
    const chain = before === undefined ? [] : (open.get(before) as Join[])
    if (before !== undefined) open.delete(before)
    open.set(join.id, [...chain, join])
  }
  return [...open.values()].map((joins) => runOf(bench, joins)).sort((a, b) => numberOf(a.final) - numberOf(b.final))
}

export const numberOf = ({ id }: Join): number => Number(id.slice(2))

/** How many alike pieces there are of what each join makes. */
function repeatsByJoin({ report }: Bench): ReadonlyMap<string, number> {
  return new Map(report.repeats.flatMap((alike) => alike.map((join) => [join, alike.length] as const)))
}

function goesOn(side: Join | undefined, join: Join, made: ReadonlyMap<string, number>): boolean {
  if (side === undefined || side.stage !== join.stage || side.kind !== 'straight' || join.kind !== 'straight') return false
  if (join.stage === 'section' && (made.get(side.id) ?? 1) !== (made.get(join.id) ?? 1)) return false
  return sameWay(side, join)
}

const wayOf = ({ from, to }: Join): Spot => {
  const number = (value: number | string): number => {
    if (typeof value === 'number') return value
    const [top, bottom] = value.split('/').map(Number)
    return (top ?? 0) / (bottom ?? 1)
  }
  return unitOf([number(to[0]) - number(from[0]), number(to[1]) - number(from[1])])
}

const sameWay = (a: Join, b: Join): boolean => Math.abs(cross(wayOf(a), wayOf(b))) < 1e-9

function runOf(bench: Bench, joins: readonly Join[]): Run {
  const own = new Set(joins.map(({ id }) => id))
  const pieces = joins.flatMap(({ sides }) => sides.filter((side) => !own.has(side)))
  const items = pieces.map((piece) => itemOf(bench, piece))
  const final = joins.at(-1) as Join
  const axis = axisOf(joins, items)
  return { stage: final.stage, joins, final, axis, items: [...items].sort((a, b) => dot(a.centre, axis) - dot(b.centre, axis)) }
}

function itemOf(bench: Bench, piece: string): Item {
  const patches = patchesIn(bench, piece)
  const units = new Set(patches.map(({ unit }) => unit))
  const [unit] = units
  return { piece, patches, unit: units.size === 1 ? (unit ?? null) : null, centre: centreOfAll(patches) }
}

/** Across straight seams; from one middle to the other where a seam bends. */
function axisOf(joins: readonly Join[], items: readonly Item[]): Spot {
  const join = joins[0] as Join
  const [x, y] = wayOf(join)
  const straight = joins.every(({ kind }) => kind !== 'set-in')
  const [first, last] = [items[0] as Item, items.at(-1) as Item]
  const between = unitOf(minus(last.centre, first.centre))
  const axis: Spot = straight || lengthOf(between) < 1e-9 ? [-y, x] : between
  const forward = Math.abs(axis[0]) < 1e-9 ? axis[1] > 0 : axis[0] > 0
  return forward ? axis : [-axis[0], -axis[1]]
}

/** Alike runs together, named; rows and columns by where they lie, sections in the order in which they are made. */
export function togetherOf(bench: Bench, runs: readonly Run[]): Together[] {
  const repeat = new Map(bench.report.repeats.flatMap((alike, place) => alike.map((join) => [join, place] as const)))
  const groupOf = new Map<string, Run[]>()
  const keyOf = new Map<string, string>()
  for (const run of runs) {
    const kinds = run.items.map(({ piece, unit }) => (unit === null ? (keyOf.get(piece) ?? piece) : (bench.lookOf.get(unit)?.label ?? piece)))
    const order = [kinds.join('|'), [...kinds].reverse().join('|')].sort()[0]
    const print = repeat.get(run.final.id)
    const key = print === undefined ? run.final.id : `${print} ${order} ${run.joins.length}`
    keyOf.set(run.final.id, key)
    groupOf.set(key, [...(groupOf.get(key) ?? []), run])
  }
  return named(bench, [...groupOf.values()], runs)
}

function named(bench: Bench, groups: readonly (readonly Run[])[], runs: readonly Run[]): Together[] {
  const places = linePlaces(runs)
  let sections = 0
  return groups.map((group): Together => {
    const [first] = group as [Run]
    const next = bench.usedBy.get(first.final.id)
    if (next === undefined || next.stage === 'border') return { runs: group, name: 'the block', title: TITLES[first.stage] ?? 'Join the block' }
    const lines = group.flatMap((run) => places.get(run.final.id) ?? [])
    if (lines.length === group.length) {
      const word = first.stage === 'column' ? 'column' : 'row'
      const said = lines.length === 1 ? `${word} ${lines[0]}` : `${word}s ${listOf(lines)}`
      return { runs: group, name: said, title: `Sew ${said}` }
    }
    sections += 1
    return { runs: group, name: `section ${sections}`, title: `Sew section ${sections}` }
  })
}

const TITLES: Partial<Record<Stage, string>> = {
  block: 'Join the block',
  row: 'Sew the block',
  column: 'Sew the block',
  section: 'Join the sections',
}

export const listOf = (numbers: readonly number[]): string =>
  numbers.length < 2 ? String(numbers[0] ?? '') : `${numbers.slice(0, -1).join(', ')} and ${numbers.at(-1)}`

/** Which row or column each item of the block's last run is, from 1. */
function linePlaces(runs: readonly Run[]): ReadonlyMap<string, number> {
  const last = runs.find(({ stage }) => stage === 'block')
  const lines = new Set(runs.filter(({ stage }) => stage === 'row' || stage === 'column').map(({ final }) => final.id))
  return new Map((last?.items ?? []).flatMap(({ piece }, index) => (lines.has(piece) ? [[piece, index + 1] as const] : [])))
}

/** The middle of a join's seam along the axis of its run. */
export const seamPlace = (bench: Bench, run: Run, join: Join): number => {
  const [a, b] = [spotOf(bench, join.from), spotOf(bench, join.to)]
  return (dot(a, run.axis) + dot(b, run.axis)) / 2
}
