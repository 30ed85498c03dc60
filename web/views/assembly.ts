/**
 * The block as it comes together, join by join.
 *
 * In      the findings, how many joins have begun (0: none yet), and how far the last of them has come together (0 apart, 1 joined).
 * Out     a drawing in cells, and its box; pieces that are not joined yet lie apart, across the seams that will join them.
 * How     from the patches up, each piece knows how far its parts have moved (a box); two sides are moved apart so far that none of their parts touch, the
 *         smaller one farther. So nothing lies on anything else, and what is joined lies as it will in the block.
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

/** `step` counts joins from 1, `part` runs from 0 to 1. */
export function assembly(report: Findings, block: Block, step: number, part: number): Assembly {
  const { tree, gap, outlines, reach } = prepared.get(report.joins) ?? prepare(report)
  return { drawing: draw(report, tree, outlines, block, step, shiftsOf(tree, gap, step, part)), reach }
}

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
  const result = { tree, gap, outlines, reach: reachOf(outlines, shiftsOf(tree, gap, 0, 1)) }
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
function shiftsOf({ patches, sides, across, share, overlap }: Tree, gap: number, step: number, together: number): Point[] {
  const boxes: Box[] = Array.from({ length: patches }, (): Box => [0, 0, 0, 0])
  const moves = sides.map(([near, far], join) => {
    const open = join < step - 1 ? 0 : join === step - 1 ? 1 - together : 1
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
  const size = (gap: number, step: number): Point => {
    const [x0, y0, x1, y1] = reachOf(outlines, shiftsOf(tree, gap, step, 1))
    return [x1 - x0, y1 - y0]
  }
  const [joined, bare, wide] = [size(0, tree.sides.length), size(0, 0), size(1, 0)]
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

/** Which side of the current join each patch belongs to; −1 for neither. */
function sideOfPatches({ patches, sides }: Tree, step: number): readonly number[] {
  const side: number[] = new Array(patches + sides.length).fill(-1)
  const now = sides[step - 1]
  for (const which of [0, 1] as const) if (now !== undefined) side[now[which]] = which
  for (let join = step - 2; join >= 0; join--)
    for (const piece of sides[join] as readonly [number, number]) side[piece] = side[patches + join] as number
  return side
}

/** First the patches that wait, then the two sides that are being joined. */
function draw(
  report: Findings,
  tree: Tree,
  places: readonly (readonly Point[])[],
  block: Block,
  step: number,
  shifts: readonly Point[],
): ViewDrawing {
  const side = sideOfPatches(tree, step)
  const outlines = places.map((outline, patch) => {
    const [dx, dy] = shifts[patch] as Point
    return outline.map(([x, y]): Point => [x + dx, y + dy])
  })
  const current = report.patches.flatMap((_, patch) => ((side[patch] as number) >= 0 ? [patch] : []))
  const waiting = report.patches.flatMap((_, patch) => ((side[patch] as number) >= 0 ? [] : [patch]))
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
    ...(current.length === 0 ? [] : [{ type: 'round', outlines: current.map((patch) => outlines[patch] as readonly Point[]) } as const]),
    ...fabric(current, false),
    ...edges(current),
    ...joinParts(report, tree, step, shifts),
  ]
}

/** How far from its number a seam's arrow lies, as a part of the seam. */
const BESIDE = 0.22

/** The current join: its line on both sides, its number, and the side that its seam allowances lie on. */
function joinParts(report: Findings, { sides, across }: Tree, step: number, shifts: readonly Point[]): DrawingPart[] {
  const join = report.joins[step - 1]
  if (join === undefined) return []
  const lines = (sides[step - 1] as readonly [number, number]).map((piece) => {
    const [dx, dy] = shifts[piece] as Point
    return [join.from, ...join.via, join.to].map(pointOf).map(([x, y]): Point => [x + dx, y + dy])
  }) as [Point[], Point[]]
  const middles = lines.map(([a, b]): Point => [((a as Point)[0] + (b as Point)[0]) / 2, ((a as Point)[1] + (b as Point)[1]) / 2]) as [Point, Point]
  const at: Point = [(middles[0][0] + middles[1][0]) / 2, (middles[0][1] + middles[1][1]) / 2]
  const way = across[step - 1] as Point
  const { toward } = join.press
  const together = Math.hypot(middles[0][0] - middles[1][0], middles[0][1] - middles[1][1]) < 1e-9
  // Across the seam, beside its number.
  const [[ax, ay], [bx, by]] = lines[0] as [Point, Point]
  const beside: Point = [at[0] + (bx - ax) * BESIDE, at[1] + (by - ay) * BESIDE]
  const press: DrawingPart = {
    type: 'press',
    points: [beside],
    toward: toward === 0 ? [-way[0], -way[1]] : way,
    open: toward === 'open',
    asked: join.press.rule === 'asked',
  }
  return [{ type: 'join', lines: together ? [lines[0]] : lines }, ...(together ? [press] : []), { type: 'number', points: [at], text: String(step) }]
}
