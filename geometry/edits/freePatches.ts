/**
 * Free patches: drawn corner by corner, joined, and cut away from each other.
 *
 * In      corners on the grid; shapes joined or cut by a polygon library, in doubles.
 * Out     what is wrong with an outline; the same shapes with every corner exact again.
 * Exact   a corner of the result is a corner of what was given, or the crossing of two of its sides: it is looked up among these and taken as a fraction.
 */
import { add, compare, divide, equal, lcm, multiply, type Rational, rational, subtract, toNumber } from '../exact/rational.ts'
import { type ExactPoint, exactPoint } from '../units/kinds.ts'
import { file } from '../block/boxes.ts'
import { boxOf } from '../units/unitBox.ts'
import { type Edit, freshId } from './unitEdits.ts'
import { crossed } from '../block/read.ts'
import type { Block, FilePoint, Mutable, PolygonUnit, Unit } from '../values/block.ts'
import type { EditName } from '../values/messages.ts'

/** Why corners do not make a patch, or null where they do. */
export function outlineTrouble(corners: readonly FilePoint[]): 'few' | 'crossed' | null {
  if (corners.length < 3) return 'few'
  return crossed(corners.map((corner) => exactPoint(corner))) ? 'crossed' : null
}

/** Whether the line from the last corner to the next crosses or touches the line drawn so far; returning to the first corner closes it and is fine. */
export function crossesPath(corners: readonly FilePoint[], next: FilePoint): boolean {
  const { outlines } = inParts([[...corners, next].map((corner) => exactPoint(corner))])
  const points = outlines[0] ?? []
  const to = points.at(-1)
  const from = points.at(-2)
  if (from === undefined || to === undefined) return false
  if (from[0] === to[0] && from[1] === to[1]) return true
  const closes = points.length > 3 && points[0]?.[0] === to[0] && points[0]?.[1] === to[1]
  // The side before shares its end with the new one: only going back along it counts as crossing.
  const before = points.at(-3)
  if (before !== undefined && signOf(before, from, to) === 0 && dot(before, from, to) < 0n) return true
  return points
    .slice(0, -3)
    .some((start, index) =>
      closes && index === 0 ? goesAlong(points[1] as WholePoint, start, from) : meetsAt(start, points[index + 1] as WholePoint, from, to),
    )
}

type WholePoint = readonly [number, number]

const big = (value: number): bigint => BigInt(value)

/** On which side of the line from a to b the point c lies. */
function signOf(a: WholePoint, b: WholePoint, c: WholePoint): -1 | 0 | 1 {
  const cross = big(b[0] - a[0]) * big(c[1] - a[1]) - big(b[1] - a[1]) * big(c[0] - a[0])
  return cross < 0n ? -1 : cross > 0n ? 1 : 0
}

/** The way from a to b, along the way from b to c. */
const dot = (a: WholePoint, b: WholePoint, c: WholePoint): bigint => big(b[0] - a[0]) * big(c[0] - b[0]) + big(b[1] - a[1]) * big(c[1] - b[1])

/** Whether the last side, which ends where the first begins, lies along the first. */
const goesAlong = (second: WholePoint, first: WholePoint, from: WholePoint): boolean =>
  signOf(second, first, from) === 0 && dot(second, first, from) < 0n

function meetsAt(a: WholePoint, b: WholePoint, c: WholePoint, d: WholePoint): boolean {
  const signs = [signOf(a, b, c), signOf(a, b, d), signOf(c, d, a), signOf(c, d, b)] as const
  if (signs[0] * signs[1] < 0 && signs[2] * signs[3] < 0) return true
  return (
    (signs[0] === 0 && within(a, b, c)) ||
    (signs[1] === 0 && within(a, b, d)) ||
    (signs[2] === 0 && within(c, d, a)) ||
    (signs[3] === 0 && within(c, d, b))
  )
}

const within = (a: WholePoint, b: WholePoint, p: WholePoint): boolean =>
  p[0] >= Math.min(a[0], b[0]) && p[0] <= Math.max(a[0], b[0]) && p[1] >= Math.min(a[1], b[1]) && p[1] <= Math.max(a[1], b[1])

/** The outline of a unit of one patch; null for a unit that has seams of its own. */
export function onePatch(unit: Unit): readonly ExactPoint[] | null {
  if (unit.kind === 'polygon') return unit.corners.map(exactPoint)
  if (unit.kind !== 'square') return null
  const { low, high } = boxOf(unit)
  return [low, [high[0], low[1]], high, [low[0], high[1]]]
}

export interface WholeOutlines {
  /** To a cell. */
  readonly parts: number
  readonly outlines: readonly (readonly (readonly [number, number])[])[]
}

/** Outlines in whole parts of a cell. */
export function inParts(outlines: readonly (readonly ExactPoint[])[]): WholeOutlines {
  const parts = outlines.flat().reduce((all, [x, y]) => lcm(lcm(all, x.d), y.d), 1n)
  const whole = ({ n, d }: Rational): number => Number(n * (parts / d))
  return { parts: Number(parts), outlines: outlines.map((corners) => corners.map(([x, y]) => [whole(x), whole(y)] as const)) }
}

/** How far a double may be from its exact corner, in parts of a cell. */
const NEAR = 1e-3

/** A ring in parts of a cell, with exact corners; null where a corner matches none of the possible ones. Corners along a straight side are left out. */
export function exactRing(ring: readonly (readonly [number, number])[], { parts, outlines }: WholeOutlines): readonly FilePoint[] | null {
  const sides = outlines.flatMap((corners) => corners.map((from, index) => [from, corners[(index + 1) % corners.length]] as const))
  const found: ExactPoint[] = []
  for (const spot of ring) {
    const exact = outlines.flat().find((corner) => near(corner, spot))
    const point: ExactPoint | null =
      exact === undefined ? crossingNear(sides as readonly WholeSide[], spot) : [rational(exact[0]), rational(exact[1])]
    if (point === null) return null
    found.push([divide(point[0], rational(parts)), divide(point[1], rational(parts))])
  }
  return straightened(found).map(file)
}

type WholeSide = readonly [readonly [number, number], readonly [number, number]]

const near = ([ax, ay]: readonly [number, number], [bx, by]: readonly [number, number]): boolean =>
  Math.abs(ax - bx) < NEAR && Math.abs(ay - by) < NEAR

function crossingNear(sides: readonly WholeSide[], spot: readonly [number, number]): ExactPoint | null {
  const beside = sides.filter(([a, b]) => passes(a, b, spot))
  for (const [index, one] of beside.entries())
    for (const other of beside.slice(index + 1)) {
      const point = crossing(one, other)
      if (point !== null && near([toNumber(point[0]), toNumber(point[1])], spot)) return point
    }
  return null
}

/** Whether a side runs by a spot, within `NEAR`. */
function passes([ax, ay]: readonly [number, number], [bx, by]: readonly [number, number], [x, y]: readonly [number, number]): boolean {
  const off = Math.abs((bx - ax) * (y - ay) - (by - ay) * (x - ax)) / Math.hypot(bx - ax, by - ay)
  return off < NEAR && x > Math.min(ax, bx) - NEAR && x < Math.max(ax, bx) + NEAR && y > Math.min(ay, by) - NEAR && y < Math.max(ay, by) + NEAR
}

function crossing([[ax, ay], [bx, by]]: WholeSide, [[cx, cy], [dx, dy]]: WholeSide): ExactPoint | null {
  const [ux, uy, vx, vy] = [bx - ax, by - ay, dx - cx, dy - cy].map(BigInt) as [bigint, bigint, bigint, bigint]
  const cross = ux * vy - uy * vx
  if (cross === 0n) return null
  const along = rational(BigInt(cx - ax) * vy - BigInt(cy - ay) * vx, cross)
  return [add(rational(ax), multiply(rational(ux), along)), add(rational(ay), multiply(rational(uy), along))]
}

function straightened(corners: readonly ExactPoint[]): readonly ExactPoint[] {
  return corners.filter((corner, index) => {
    const before = corners[(index + corners.length - 1) % corners.length] as ExactPoint
    const after = corners[(index + 1) % corners.length] as ExactPoint
    const turn = compare(
      multiply(subtract(corner[0], before[0]), subtract(after[1], corner[1])),
      multiply(subtract(corner[1], before[1]), subtract(after[0], corner[0])),
    )
    return turn !== 0 && !(equal(corner[0], after[0]) && equal(corner[1], after[1]))
  })
}

/** Gives units of one patch new outlines: the first outline keeps the unit's id, others become new units of the same fabric; with none, the unit is removed. */
export const reshape = (block: Block, name: EditName, shapes: ReadonlyMap<string, readonly (readonly FilePoint[])[]>): Edit => ({
  name,
  change: (draft) => {
    const taken = new Set<string>()
    const made = block.units.flatMap((unit): Mutable<Unit>[] => {
      const outlines = shapes.get(unit.id)
      if (outlines === undefined) return []
      const { id, fabrics } = unit
      return outlines.map((corners, index) => {
        const own = index === 0 ? id : freshId(block, id.replace(/-\d+$/, ''), taken)
        taken.add(own)
        const free: PolygonUnit = { ...extrasOf(unit), id: own, kind: 'polygon', corners, fabrics: { patch: fabrics.patch as string } }
        return JSON.parse(JSON.stringify(free)) as Mutable<Unit>
      })
    })
    draft.units = [...draft.units.filter(({ id }) => !shapes.has(id)), ...made]
  },
})

/** The fields a reshaped unit keeps: the maker's requests about it and unknown fields, but not its shape and method. */
function extrasOf(unit: Unit): Record<string, unknown> {
  const { kind: _, method: __, fabrics: ___, ...kept } = unit as Unit & Record<string, unknown>
  for (const name of ['at', 'size', 'turn', 'mirror', 'corner', 'corners']) delete kept[name]
  return kept
}
