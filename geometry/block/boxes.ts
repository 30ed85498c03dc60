/**
 * Boxes of units; units moved, turned and mirrored within a box.
 *
 * In      units, places in cells.
 * Out     the box round one unit or several; a unit changed in place.
 * Exact   fractions throughout.
 */
import { add, compare, parseRational, type Rational, rational, subtract, toFile } from '../exact/rational.ts'
import { type ExactPoint, exactPoint } from '../units/kinds.ts'
import { boxOf, type ExactBox } from '../units/unitBox.ts'
import type { FilePoint, Mutable, Position, Turn, Unit } from '../values/block.ts'

/** The exact value of a position of a block that has been read; 0 where it is none. */
export const exact = (value: Position): Rational => parseRational(value) ?? rational(0)
/** A point as a file writes it. */
export const file = ([x, y]: ExactPoint): [Position, Position] => [toFile(x), toFile(y)]

/** Moves a unit by so many cells. */
export function shift(unit: Mutable<Unit>, dx: Position, dy: Position): void {
  const by: ExactPoint = [exact(dx), exact(dy)]
  const moved = (point: FilePoint): [Position, Position] => {
    const [x, y] = exactPoint(point)
    return file([add(x, by[0]), add(y, by[1])])
  }
  if (unit.kind === 'polygon') unit.corners = unit.corners.map(moved)
  else unit.at = moved(unit.at)
}

/** The box round several units; null round none. */
export function boxAround(units: readonly (Unit | Mutable<Unit>)[]): ExactBox | null {
  return units.map(boxOf).reduce<ExactBox | null>((all, box) => {
    if (all === null) return box
    const low = ([0, 1] as const).map((axis) => (compare(all.low[axis], box.low[axis]) <= 0 ? all.low[axis] : box.low[axis]))
    const high = ([0, 1] as const).map((axis) => (compare(all.high[axis], box.high[axis]) >= 0 ? all.high[axis] : box.high[axis]))
    return { low: low as unknown as ExactPoint, high: high as unknown as ExactPoint }
  }, null)
}

const quarter = (turn: number): Turn => (((turn % 4) + 4) % 4) as Turn

/** A quarter turn clockwise inside a box; the box's top left corner stays. */
export function turnIn(unit: Mutable<Unit>, { low, high }: ExactBox): void {
  const height = subtract(high[1], low[1])
  const turned = ([x, y]: ExactPoint): ExactPoint => [add(low[0], subtract(height, subtract(y, low[1]))), add(low[1], subtract(x, low[0]))]
  if (unit.kind === 'polygon') {
    unit.corners = unit.corners.map((corner) => file(turned(exactPoint(corner))))
    return
  }
  const own = boxOf(unit)
  const corner = turned([own.low[0], own.high[1]])
  unit.at = file(corner)
  unit.size = [unit.size[1], unit.size[0]]
  unit.turn = quarter((unit.turn ?? 0) + 1)
}

/** Left for right inside a box. */
export function mirrorIn(unit: Mutable<Unit>, { low, high }: ExactBox): void {
  const mirrored = (x: Rational): Rational => subtract(add(low[0], high[0]), x)
  if (unit.kind === 'polygon') {
    unit.corners = unit.corners
      .map((corner) => exactPoint(corner))
      .map(([x, y]) => file([mirrored(x), y]))
      .reverse()
    return
  }
  unit.at = [toFile(mirrored(boxOf(unit).high[0])), unit.at[1]]
  // A mirror after a turn is the mirror before the turn the other way.
  unit.mirror = unit.mirror !== true
  unit.turn = quarter(-(unit.turn ?? 0))
}
