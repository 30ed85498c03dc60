/**
 * Lay the units on the table: every patch as a polygon of whole numbers on one common denominator, borders round it.
 *
 * In      a block that has been read.
 * Out     patches with clockwise corners, grouped by unit; each border strip is a patch of its own.
 * Exact   a border's width may be any length, so borders stand one cell wide in the whole-number plane, whatever their width;
 *         `realX` and `realY` give back the true place in cells. Nothing that is decided depends on a border's width.
 */
import { add, compare, divide, lcm, multiply, type Rational, rational, subtract, toNumber, ZERO } from '../exact/rational.ts'
import { type Dot, doubleArea } from '../plane/dots.ts'
import { type ExactPoint, exactPoint, type Sewn, shapeOf } from '../units/kinds.ts'
import { cellOf, lengthOf } from './measure.ts'
import type { Block, Unit } from './values.ts'

export interface LaidPatch {
  readonly id: string
  /** The place of the unit in the block's list; −1 for a border strip. */
  readonly unit: number
  readonly name: string
  readonly fabric: string
  readonly corners: readonly Dot[]
}

/** One whole unit, or one border strip. */
export interface Part {
  readonly patches: readonly number[]
  readonly sewn: SewnPatches
}

/** A patch by its number, or two pieces sewn together. */
export type SewnPatches = number | readonly [SewnPatches, SewnPatches]

export interface Laid {
  readonly block: Block
  /** Steps to a cell. */
  readonly den: number
  /** Of the grid, in steps. */
  readonly width: number
  readonly height: number
  readonly patches: readonly LaidPatch[]
  /** Parts 0 … units − 1 are the units; four strips for each border follow: left, right, top, bottom. */
  readonly parts: readonly Part[]
  readonly borders: number
  /** Total border width up to each border, in cells: `depths[0]` is 0. */
  readonly depths: readonly Rational[]
}

interface Shape {
  readonly patches: readonly { readonly name: string; readonly corners: readonly ExactPoint[] }[]
  readonly sewn: Sewn
}

export function lay(block: Block): Laid {
  const shapes = block.units.map(shapeOnGrid)
  const den = Number(commonDenominator(shapes))
  const width = block.grid.columns * den
  const height = block.grid.rows * den
  const patches: LaidPatch[] = []
  const parts: Part[] = shapes.map((shape, unit) => {
    const numbers = new Map<string, number>()
    for (const { name, corners } of shape.patches) {
      numbers.set(name, patches.length)
      const fabric = (block.units[unit] as Unit).fabrics[name] as string
      patches.push({ id: `p:${patches.length + 1}`, unit, name, fabric, corners: clockwise(corners.map((corner) => whole(corner, den))) })
    }
    return { patches: [...numbers.values()], sewn: numbered(shape.sewn, numbers) }
  })
  const borders = block.borders ?? []
  borders.forEach((border, depth) => {
    for (const [name, corners] of strips(width, height, depth, den)) {
      parts.push({ patches: [patches.length], sewn: patches.length })
      patches.push({ id: `p:${patches.length + 1}`, unit: -1, name, fabric: border.fabric, corners })
    }
  })
  const depths: Rational[] = [ZERO]
  for (const border of borders) depths.push(add(depths.at(-1) as Rational, divide(lengthOf(border.finishedWidth), cellOf(block))))
  return { block, den, width, height, patches, parts, borders: borders.length, depths }
}

function shapeOnGrid(unit: Unit): Shape {
  if (unit.kind !== 'polygon') return shapeOf(unit)
  return { patches: [{ name: 'patch', corners: unit.corners.map(exactPoint) }], sewn: 'patch' }
}

function commonDenominator(shapes: readonly Shape[]): bigint {
  let common = 1n
  for (const { patches } of shapes)
    for (const { corners } of patches)
      for (const [x, y] of corners) {
        if (common % x.d !== 0n) common = lcm(common, x.d)
        if (common % y.d !== 0n) common = lcm(common, y.d)
      }
  return common
}

const whole = ([x, y]: ExactPoint, den: number): Dot => {
  const steps = BigInt(den)
  return [Number((x.n * steps) / x.d), Number((y.n * steps) / y.d)]
}

/** Clockwise, without corners that lie on a straight side. */
function clockwise(corners: Dot[]): Dot[] {
  return doubleArea(corners) < 0n ? corners.reverse() : corners
}

function numbered(sewn: Sewn, numbers: ReadonlyMap<string, number>): SewnPatches {
  return typeof sewn === 'string' ? (numbers.get(sewn) as number) : [numbered(sewn[0], numbers), numbered(sewn[1], numbers)]
}

/** Sides first, then top and bottom: handbook section 8. */
function strips(width: number, height: number, depth: number, den: number): [string, Dot[]][] {
  const inner = depth * den
  const outer = inner + den
  const box = (x0: number, y0: number, x1: number, y1: number): Dot[] => [
    [x0, y0],
    [x1, y0],
    [x1, y1],
    [x0, y1],
  ]
  return [
    ['left', box(-outer, -inner, -inner, height + inner)],
    ['right', box(width + inner, -inner, width + outer, height + inner)],
    ['top', box(-outer, -outer, width + outer, -inner)],
    ['bottom', box(-outer, height + inner, width + outer, height + outer)],
  ]
}

/** The true place of a step, in cells. */
function real(step: number, extent: number, { den, depths }: Laid): Rational {
  if (step < 0) return subtract(ZERO, depths[-step / den] as Rational)
  if (step > extent) return add(rational(extent, den), depths[(step - extent) / den] as Rational)
  return rational(step, den)
}

export const realX = (laid: Laid, x: number): Rational => real(x, laid.width, laid)
export const realY = (laid: Laid, y: number): Rational => real(y, laid.height, laid)

/** The same in doubles, for lengths that are printed or weighed. */
export function realDot(laid: Laid, [x, y]: Dot): [number, number] {
  const plain = x >= 0 && y >= 0 && x <= laid.width && y <= laid.height
  return plain ? [x / laid.den, y / laid.den] : [toNumber(realX(laid, x)), toNumber(realY(laid, y))]
}

/** Steps of a place given in cells (inside the grid or in a border), as a pair of rationals in steps; null beyond the block. */
export function stepsOf(laid: Laid, [x, y]: ExactPoint): ExactPoint | null {
  const sx = step(x, laid.width, laid)
  const sy = step(y, laid.height, laid)
  return sx === null || sy === null ? null : [sx, sy]
}

function step(place: Rational, extent: number, { den, depths }: Laid): Rational | null {
  const steps = multiply(place, rational(den))
  const beyond = steps.n < 0n ? subtract(ZERO, place) : subtract(place, rational(extent, den))
  if (beyond.n <= 0n) return steps
  for (let border = 1; border < depths.length; border++) {
    const outer = depths[border] as Rational
    const inner = depths[border - 1] as Rational
    if (compare(beyond, outer) > 0) continue
    const within = multiply(add(rational(border - 1), divide(subtract(beyond, inner), subtract(outer, inner))), rational(den))
    return steps.n < 0n ? subtract(ZERO, within) : add(rational(extent), within)
  }
  return null
}
