/**
 * Trimming a sewn unit to size: where the ruler's lines and its trimming corner lie.
 *
 * In      a box unit and its block, both read; the hand that holds the cutter.
 * Out     two cuts. For each: how the unit lies, which edges are cut, and where on the ruler its points and seams must be, in the measure's unit,
 *         measured from the ruler's two edges along which the cutter runs. None for units without a slanted seam: they are not trimmed.
 * How     a right hand cuts along the ruler's right and top edge, a left hand along its left and top edge; then the unit is turned half round, the two
 *         edges just cut lie on the ruler's lines for the unfinished size, and the other two are cut. The places follow from the unit's own seams, one
 *         allowance inside the unfinished outline.
 * Source  the tip one allowance below the raw edge, at half the unfinished width, 45° lines along the seams [S17][S8];
 *         the seam of a half rectangle one allowance in from both sides of the corner [S46]. Which hand cuts where: from memory.
 */
import { cellOf } from '../../block/lengthsOf.ts'
import type { Block, BoxUnit, Turn } from '../../values/block.ts'
import { EPSILON, tidy } from '../../exact/lengths.ts'
import { toNumber } from '../../exact/rational.ts'
import { type ExactPoint, shapeOf } from '../../units/kinds.ts'
import { ruleOf } from '../oneRun.ts'

export const HANDS = ['right', 'left'] as const
export type Hand = (typeof HANDS)[number]

/** How much larger a unit can be cut, to be trimmed to size. In cm: the nearest lines on a ruler. */
export const OVERSIZES = { in: [1 / 8, 1 / 4], cm: [0.3, 0.5] } as const

/** On the ruler: in from the edge at the cutting hand's side, and down from its top edge. */
interface RulerPoint {
  readonly fromSide: number
  readonly fromTop: number
}

interface TrimPoint {
  /** `tip`: seams meet at the finished edge; `middle`: they meet inside; `end`: one seam reaches the finished edge. */
  readonly type: 'tip' | 'middle' | 'end'
  readonly at: RulerPoint
}

interface TrimSeam {
  /** To the ruler's top edge, 0 to 90 degrees. */
  readonly angle: number
  /** Where the seam's line reaches the raw edge. */
  readonly ends: readonly [RulerPoint, RulerPoint]
}

export interface RulerCut {
  /** How the unit lies: quarter turns clockwise from turn 0 of its kind. */
  readonly turn: Turn
  readonly edges: readonly [Hand, 'top']
  /** Unfinished width and height as it lies: the ruler's lines that must still have fabric under them, and in the second cut lie on the edges cut first. */
  readonly size: readonly [number, number]
  readonly points: readonly TrimPoint[]
  readonly seams: readonly TrimSeam[]
}

export function trimCuts(unit: BoxUnit, block: Block, hand: Hand): RulerCut[] {
  const first = firstTurn(unit, hand)
  return [first, ((first + 2) % 4) as Turn]
    .map((turn) => cutAt(unit, block, hand, turn))
    .filter(({ seams }) => seams.some(({ angle }) => angle % 90 > EPSILON))
}

/** A single diagonal runs into the ruler's trimming corner; other units are trimmed with their top up first. */
function firstTurn({ kind, mirror = false }: BoxUnit, hand: Hand): Turn {
  if (kind !== 'hst' && kind !== 'half-rectangle') return 0
  return (hand === 'left') === mirror ? 0 : 1
}

type Flat = readonly [number, number]
interface Line {
  readonly a: Flat
  readonly b: Flat
}

function cutAt(unit: BoxUnit, block: Block, hand: Hand, turn: Turn): RulerCut {
  const [cell, { seam }] = [toNumber(cellOf(block)), ruleOf(block)]
  const lying: BoxUnit = { ...unit, at: [0, 0], turn, size: turn % 2 === (unit.turn ?? 0) % 2 ? unit.size : [unit.size[1], unit.size[0]] }
  const flat = ([x, y]: ExactPoint): Flat => [toNumber(x) * cell, toNumber(y) * cell]
  const patches = shapeOf(lying).patches.map(({ corners }) => corners.map(flat))
  const [wide, high] = [0, 1].map((axis) => Math.max(...patches.flat().map((corner) => corner[axis] as number))) as [number, number]
  const lines = seamLines(patches, [wide, high])
  const onRuler = ([x, y]: Flat): RulerPoint => ({ fromSide: tidy(hand === 'right' ? wide - x + seam : x + seam), fromTop: tidy(y + seam) })
  return {
    turn,
    edges: [hand, 'top'],
    size: [tidy(wide + 2 * seam), tidy(high + 2 * seam)],
    points: trimPoints(lines, [wide, high]).map(({ type, at }) => ({ type, at: onRuler(at) })),
    seams: lines.map((line) => {
      const [from, to] = toRawEdge(line, [wide, high], seam)
      return { angle: tidy(angleOf(line)), ends: [onRuler(from), onRuler(to)] }
    }),
  }
}

const cross = (o: Flat, a: Flat, b: Flat): number => (a[0] - o[0]) * (b[1] - o[1]) - (a[1] - o[1]) * (b[0] - o[0])
const angleOf = ({ a, b }: Line): number => (Math.atan2(Math.abs(b[1] - a[1]), Math.abs(b[0] - a[0])) * 180) / Math.PI

/** The sides of patches inside the unit; sides along one line are joined. */
function seamLines(patches: readonly (readonly Flat[])[], size: Flat): Line[] {
  const sides = patches.flatMap((corners) => corners.map((a, index): Line => ({ a, b: corners[(index + 1) % corners.length] as Flat })))
  const lines: Line[] = []
  for (const side of sides.filter((one) => !onOutline(one, size))) {
    const index = lines.findIndex((line) => alongside(line, side))
    if (index < 0) lines.push(side)
    else lines[index] = longest([...ends(lines[index] as Line), ...ends(side)])
  }
  return lines
}

const ends = ({ a, b }: Line): Flat[] => [a, b]
const onEdge = (value: number, far: number): boolean => Math.abs(value) < EPSILON || Math.abs(value - far) < EPSILON

function onOutline({ a, b }: Line, size: Flat): boolean {
  return ([0, 1] as const).some((axis) => Math.abs(a[axis] - b[axis]) < EPSILON && onEdge(a[axis], size[axis]))
}

const alongside = ({ a, b }: Line, other: Line): boolean => Math.abs(cross(a, b, other.a)) < EPSILON && Math.abs(cross(a, b, other.b)) < EPSILON

function longest(points: readonly Flat[]): Line {
  const sorted = [...points].sort(([ax, ay], [bx, by]) => ax - bx || ay - by)
  return { a: sorted[0] as Flat, b: sorted.at(-1) as Flat }
}

function trimPoints(lines: readonly Line[], size: Flat): { type: TrimPoint['type']; at: Flat }[] {
  const at = new Map<string, Flat>()
  for (const point of [...lines.flatMap(ends), ...lines.flatMap((line) => lines.flatMap((other) => crossing(line, other)))]) {
    at.set(point.map(tidy).join(), point)
  }
  return [...at.values()].map((point) => {
    const through = lines.filter((line) => holds(line, point)).length
    const edge = onEdge(point[0], size[0]) || onEdge(point[1], size[1])
    return { type: through < 2 ? 'end' : edge ? 'tip' : 'middle', at: point }
  })
}

function crossing({ a, b }: Line, other: Line): Flat[] {
  const [from, to] = [cross(other.a, other.b, a), cross(other.a, other.b, b)]
  if (Math.abs(from - to) < EPSILON) return []
  const part = from / (from - to)
  const point: Flat = [a[0] + (b[0] - a[0]) * part, a[1] + (b[1] - a[1]) * part]
  return holds({ a, b }, point) && holds(other, point) ? [point] : []
}

/** Whether a point lies on the seam itself, ends included. */
function holds({ a, b }: Line, point: Flat): boolean {
  const within = ([0, 1] as const).every(
    (axis) => point[axis] >= Math.min(a[axis], b[axis]) - EPSILON && point[axis] <= Math.max(a[axis], b[axis]) + EPSILON,
  )
  return within && Math.abs(cross(a, b, point)) < EPSILON * 10
}

/** Extends the seam's line to the raw edge, one allowance outside the finished one. */
function toRawEdge({ a, b }: Line, [wide, high]: Flat, seam: number): [Flat, Flat] {
  const [dx, dy] = [b[0] - a[0], b[1] - a[1]]
  const reach = (start: number, step: number, far: number): [number, number] => {
    if (Math.abs(step) < EPSILON) return [Number.NEGATIVE_INFINITY, Number.POSITIVE_INFINITY]
    const [one, other] = [(-seam - start) / step, (far + seam - start) / step]
    return [Math.min(one, other), Math.max(one, other)]
  }
  const [x, y] = [reach(a[0], dx, wide), reach(a[1], dy, high)]
  return [Math.max(x[0], y[0]), Math.min(x[1], y[1])].map((part): Flat => [a[0] + dx * part, a[1] + dy * part]) as [Flat, Flat]
}
