/**
 * The block as it comes together, step by step.
 *
 * In      the findings, the steps as the places of their joins, how many steps have begun (0: none yet), and how far the last of them has come (from 0 to 1).
 * Out     a drawing in cells, and its box; pieces that are not joined yet lie apart, across the seams that will join them.
 * How     from the patches up, each piece knows how far its parts have moved (a box); two sides are moved apart so far that none of their parts touch, the
 *         smaller one farther. So nothing lies on anything else, and what is joined lies as it will in the block. Within a step a join waits for those
 *         that make its sides; joins that wait for none come together at once, so that a row grows piece by piece and four geese are made side by side.
 */
import type { Block, Findings, Join, Patch } from '../../geometry/index.ts'
import { type Point, pointOf } from '../document/shapes.ts'
import { fabricParts } from '../drawing/fabricParts.ts'
import type { ViewDrawing, DrawingPart } from '../drawing/viewDrawing.ts'

interface Assembly {
  readonly drawing: ViewDrawing
  /** Left, top, right, bottom, in cells: the same at every step. */
  readonly reach: readonly [number, number, number, number]
}

type Box = readonly [number, number, number, number]

/** Cells between two sides that are apart, and how much all gaps together may add, as a part of the block's width. */
const APART = 0.35
const MOST_ADDED = 0.5

/** A step of the sewing, as the board needs it: the places of its joins among the findings' own, and of the units' letters. */
interface AssemblyStep {
  readonly joins: readonly number[]
}

/** Where the sewing has come to: `step` counts from 1, `part` runs from 0 to 1. */
interface Progress {
  readonly steps: readonly AssemblyStep[]
  readonly step: number
  readonly part: number
}

/** `letters`: what units are called in the steps, by id. */
export function assembly(report: Findings, block: Block, progress: Progress, letters: ReadonlyMap<string, string>): Assembly {
  const { tree, gap, outlines, reach } = prepared.get(report.joins) ?? prepare(report)
  const shifts = shiftsOf(tree, gap, opennessOf(tree, progress))
  return { drawing: draw(report, tree, outlines, block, progress, shifts, letters), reach }
}

/** How often joins of one step come together one after another. */
export const wavesIn = (report: Findings, { joins }: AssemblyStep): number =>
  Math.max(0, ...wavesOf((prepared.get(report.joins) ?? prepare(report)).tree, joins).values())

/** For each join of a step how many come together before it in the step, itself counted. */
function wavesOf({ patches, sides }: Tree, joins: readonly number[]): ReadonlyMap<number, number> {
  const waves = new Map<number, number>()
  for (const join of [...joins].sort((a, b) => a - b))
    waves.set(join, 1 + Math.max(...(sides[join] as readonly [number, number]).map((side) => waves.get(side - patches) ?? 0)))
  return waves
}

/** From 1, apart, to 0, joined, for each join. What no step sews is joined with the first. */
function opennessOf(tree: Tree, { steps, step, part }: Progress): readonly number[] {
  const open: number[] = new Array(tree.sides.length).fill(step === 0 ? 1 : 0)
  for (const { joins } of steps.slice(step)) for (const join of joins) open[join] = 1
  const waves = wavesOf(tree, steps[step - 1]?.joins ?? [])
  const last = Math.max(1, ...waves.values())
  for (const [join, wave] of waves) open[join] = 1 - comingTogether(Math.min(1, Math.max(0, part * last - (wave - 1))))
  return open
}

/** Apart for a moment, then together, slower at the end. */
const comingTogether = (part: number): number => 1 - (1 - Math.max(0, part - 0.25) / 0.75) ** 3

/** What is the same at every step. */
interface Prepared {
  readonly tree: Tree
  readonly gap: number
  readonly outlines: readonly (readonly Point[])[]
  readonly reach: Box
}

const prepared = new WeakMap<Findings['joins'], Prepared>()

function prepare(report: Findings): Prepared {
  const tree = treeOf(report)
  const outlines = report.patches.map(({ corners }) => corners.map(pointOf))
  const gap = gapOf(outlines, tree)
  const result = {
    tree,
    gap,
    outlines,
    reach: reachOf(
      outlines,
      shiftsOf(
        tree,
        gap,
        tree.sides.map(() => 1),
      ),
    ),
  }
  prepared.set(report.joins, result)
  return result
}

interface Tree {
  readonly patches: number
  /** For each join: the pieces on its two sides (patches first, then joins), and the way across from side 0 to side 1, of length one. */
  readonly sides: readonly (readonly [number, number])[]
  readonly across: readonly Point[]
  /** The first side's share of the way apart: the smaller side moves farther, so that the middle of the fabric stays where it is. */
  readonly share: readonly number[]
  /** Cells by which the two sides reach past each other across the join; more than zero only where it bends. */
  readonly overlap: readonly number[]
}

function treeOf({ patches, joins }: Findings): Tree {
  const place = new Map<string, number>([...patches, ...joins].map(({ id }, index) => [id, index]))
  const sides = joins.map(({ sides }): [number, number] => [place.get(sides[0]) as number, place.get(sides[1]) as number])
  const across = joins.map(acrossOf)
  const reach = (piece: number, way: Point): number =>
    piece < patches.length
      ? Math.max(...(patches[piece] as Patch).corners.map(pointOf).map(([x, y]) => x * way[0] + y * way[1]))
      : Math.max(...(sides[piece - patches.length] as [number, number]).map((side) => reach(side, way)))
  const overlap = joins.map(({ kind }, join) => {
    if (kind !== 'set-in') return 0
    const [way, [near, far]] = [across[join] as Point, sides[join] as [number, number]]
    return Math.max(0, reach(near, way) + reach(far, [-way[0], -way[1]]))
  })
  const areas = patches.map(({ area }) => area)
  const share = sides.map(([near, far]) => {
    const [a, b] = [areas[near] as number, areas[far] as number]
    areas.push(a + b)
    return b / (a + b)
  })
  return { patches: patches.length, sides, across, share, overlap }
}

/** The clockwise side lies at (−dy, dx) of the way from start to end. */
function acrossOf({ from, via, to, clockwise }: Join): Point {
  const points = [from, ...via, to].map(pointOf)
  const [start, end] = [points[0], points.at(-1)] as [Point, Point]
  const [dx, dy] = [end[0] - start[0], end[1] - start[1]]
  const length = Math.hypot(dx, dy)
  if (length < 1e-9) return [0, 1]
  const sign = clockwise === 1 ? 1 : -1
  return [(-dy / length) * sign, (dx / length) * sign]
}

/** How far each patch is moved from its place in the block. */
function shiftsOf({ patches, sides, across, share, overlap }: Tree, gap: number, openness: readonly number[]): Point[] {
  const boxes: Box[] = Array.from({ length: patches }, (): Box => [0, 0, 0, 0])
  const moves = sides.map(([near, far], join) => {
    const open = openness[join] as number
    const way = across[join] as Point
    const [a, b] = [boxes[near] as Box, boxes[far] as Box]
    const apart = open * (gap + (overlap[join] as number) + farthest(a, way) + farthest(b, [-way[0], -way[1]]))
    const part = share[join] as number
    const one: Point = [-way[0] * apart * part, -way[1] * apart * part]
    const other: Point = [way[0] * apart * (1 - part), way[1] * apart * (1 - part)]
    boxes.push(around(moved(a, one), moved(b, other)))
    return [one, other] as const
  })
  const shifts: Point[] = Array.from({ length: patches + sides.length }, () => [0, 0])
  for (let join = sides.length - 1; join >= 0; join--) {
    const [near, far] = sides[join] as readonly [number, number]
    const own = shifts[patches + join] as Point
    const [one, other] = moves[join] as readonly [Point, Point]
    shifts[near] = [own[0] + one[0], own[1] + one[1]]
    shifts[far] = [own[0] + other[0], own[1] + other[1]]
  }
  return shifts
}

const farthest = ([x0, y0, x1, y1]: Box, [x, y]: Point): number => Math.max(0, (x > 0 ? x1 : x0) * x + (y > 0 ? y1 : y0) * y)
const moved = ([x0, y0, x1, y1]: Box, [x, y]: Point): Box => [x0 + x, y0 + y, x1 + x, y1 + y]
const around = (a: Box, b: Box): Box => [Math.min(a[0], b[0]), Math.min(a[1], b[1]), Math.max(a[2], b[2]), Math.max(a[3], b[3])]

/** As wide as `APART`, unless the block has so many pieces that all the gaps together would be wider than they are. */
function gapOf(outlines: readonly (readonly Point[])[], tree: Tree): number {
  const size = (gap: number, open: 0 | 1): Point => {
    const openness = tree.sides.map(() => open)
    const [x0, y0, x1, y1] = reachOf(outlines, shiftsOf(tree, gap, openness))
    return [x1 - x0, y1 - y0]
  }
  const [joined, bare, wide] = [size(0, 0), size(0, 1), size(1, 1)]
  const most = ([0, 1] as const).map((axis) => (joined[axis] * MOST_ADDED) / Math.max(wide[axis] - bare[axis], 1e-9))
  return Math.min(APART, ...most)
}

function reachOf(outlines: readonly (readonly Point[])[], shifts: readonly Point[]): Box {
  let [x0, y0, x1, y1] = [Number.POSITIVE_INFINITY, Number.POSITIVE_INFINITY, Number.NEGATIVE_INFINITY, Number.NEGATIVE_INFINITY]
  outlines.forEach((outline, patch) => {
    const [dx, dy] = shifts[patch] as Point
    for (const [x, y] of outline) [x0, y0, x1, y1] = [Math.min(x0, x + dx), Math.min(y0, y + dy), Math.max(x1, x + dx), Math.max(y1, y + dy)]
  })
  return [x0, y0, x1, y1]
}

/** The patches of the pieces that a step makes; all of them where it only lays them out. */
function patchesIn({ patches, sides }: Tree, { joins }: AssemblyStep): readonly boolean[] {
  const inside: boolean[] = new Array(patches + sides.length).fill(joins.length === 0)
  for (const join of joins) inside[patches + join] = true
  for (let join = sides.length - 1; join >= 0; join--)
    if (inside[patches + join]) for (const piece of sides[join] as readonly [number, number]) inside[piece] = true
  return inside
}

/** First the patches that wait, then the pieces that are being made. */
function draw(
  report: Findings,
  tree: Tree,
  places: readonly (readonly Point[])[],
  block: Block,
  { steps, step }: Progress,
  shifts: readonly Point[],
  letters: ReadonlyMap<string, string>,
): ViewDrawing {
  const now = steps[step - 1] ?? null
  const inside = now === null ? [] : patchesIn(tree, now)
  const outlines = places.map((outline, patch) => {
    const [dx, dy] = shifts[patch] as Point
    return outline.map(([x, y]): Point => [x + dx, y + dy])
  })
  const current = report.patches.flatMap((_, patch) => (inside[patch] ? [patch] : []))
  const waiting = report.patches.flatMap((_, patch) => (inside[patch] ? [] : [patch]))
  const fabric = (patches: readonly number[], faint: boolean): DrawingPart[] =>
    fabricParts(
      block,
      patches.map((patch) => ({ ...(report.patches[patch] as Patch), outline: outlines[patch] as readonly Point[] })),
      faint && step > 0,
    )
  const edges = (patches: readonly number[]): DrawingPart[] =>
    patches.length === 0 ? [] : [{ type: 'edge', outlines: patches.map((patch) => outlines[patch] as readonly Point[]) }]
  return [
    ...fabric(waiting, true),
    ...edges(waiting),
    ...(now === null || now.joins.length === 0
      ? []
      : [{ type: 'round', outlines: current.map((patch) => outlines[patch] as readonly Point[]) } as const]),
    ...fabric(current, false),
    ...edges(current),
    ...(now?.joins ?? []).flatMap((join) => joinParts(report, tree, join, shifts)),
    ...letterParts(report, current, outlines, letters),
  ]
}

/** With more units than this in a step, their letters would cover the fabric. */
const MOST_LETTERS = 60

/** The letter of each unit in the middle of its largest patch. */
function letterParts(
  { patches }: Findings,
  current: readonly number[],
  outlines: readonly (readonly Point[])[],
  letters: ReadonlyMap<string, string>,
): DrawingPart[] {
  const largest = new Map<string, number>()
  for (const patch of current) {
    const { unit, area } = patches[patch] as Patch
    if (unit === null || !letters.has(unit)) continue
    const before = largest.get(unit)
    if (before === undefined || area > (patches[before] as Patch).area) largest.set(unit, patch)
  }
  if (largest.size > MOST_LETTERS) return []
  return [...largest].map(
    ([unit, patch]): DrawingPart => ({ type: 'number', points: [middleOf(outlines[patch] as readonly Point[])], text: letters.get(unit) ?? '' }),
  )
}

const middleOf = (outline: readonly Point[]): Point => [
  outline.reduce((sum, [x]) => sum + x, 0) / outline.length,
  outline.reduce((sum, [, y]) => sum + y, 0) / outline.length,
]

/** A join of the step: its line on both sides, and once it is made an arrow the way it is pressed. */
function joinParts({ joins }: Findings, { sides, across }: Tree, place: number, shifts: readonly Point[]): DrawingPart[] {
  const join = joins[place] as Join
  const lines = (sides[place] as readonly [number, number]).map((piece) => {
    const [dx, dy] = shifts[piece] as Point
    return [join.from, ...join.via, join.to].map(pointOf).map(([x, y]): Point => [x + dx, y + dy])
  }) as [Point[], Point[]]
  const middles = lines.map(([a, b]): Point => [((a as Point)[0] + (b as Point)[0]) / 2, ((a as Point)[1] + (b as Point)[1]) / 2]) as [Point, Point]
  const together = Math.hypot(middles[0][0] - middles[1][0], middles[0][1] - middles[1][1]) < 1e-9
  if (!together) return [{ type: 'join', lines }]
  const way = across[place] as Point
  const { toward, rule } = join.press
  const press: DrawingPart = {
    type: 'press',
    points: [middles[0]],
    toward: toward === 0 ? [-way[0], -way[1]] : way,
    open: toward === 'open',
    asked: rule === 'asked',
  }
  return [{ type: 'join', lines: [lines[0]] }, press]
}
