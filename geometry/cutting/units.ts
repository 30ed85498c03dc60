/**
 * Which units are alike: those that turning makes the same picture, made by the same method.
 *
 * In      a block that has been read.
 * Out     groups of units, with their finished size at turn 0 and the method that makes them.
 * Exact   pictures are compared as fractions of a cell.
 */
import { cellOf } from '../block/measure.ts'
import type { Block, Method, Unit } from '../block/values.ts'
import { multiply, subtract, toNumber } from '../exact/rational.ts'
import { type ExactPoint, methodOf, sizeAtRest } from '../units/kinds.ts'
import { exactBox, pictures } from '../units/picture.ts'

export interface Alike {
  readonly units: readonly Unit[]
  readonly first: Unit
  /** Finished width and height at turn 0, in the measure's unit. */
  readonly finished: readonly [number, number]
  readonly method: Method
}

export function alikeUnits(block: Block): Alike[] {
  const cell = cellOf(block)
  const groups = new Map<string, Unit[]>()
  const known = new Map<string, string>()
  const picture = pictures()
  for (const unit of block.units) {
    const plain = plainKey(unit)
    const key = known.get(plain) ?? keyOf(unit, picture)
    known.set(plain, key)
    const there = groups.get(key)
    if (there === undefined) groups.set(key, [unit])
    else there.push(unit)
  }
  return [...groups.values()].map((units) => {
    const first = units[0] as Unit
    const [w, h] = first.kind === 'polygon' ? polygonSize(first) : sizeAtRest(first)
    return { units, first, finished: [toNumber(multiply(w, cell)), toNumber(multiply(h, cell))], method: takenMethod(first) }
  })
}

/** The method asked for, or the first its kind lists that can make the unit. */
export function takenMethod(unit: Unit): Method {
  if (unit.kind === 'hourglass' && unit.method === undefined && !twoByTwo(unit)) return 'plain'
  return methodOf(unit)
}

/** Two-at-a-time hourglasses have the same pair of fabrics on both sides of the long seam. */
export function twoByTwo({ fabrics }: Unit): boolean {
  const pair = (one: string, other: string): string => [fabrics[one], fabrics[other]].sort().join(' ')
  return pair('top', 'right') === pair('bottom', 'left')
}

/** Cheap to make and the same only for units that are surely alike: spares the pictures of large blocks. */
function plainKey(unit: Unit): string {
  const fabrics = Object.entries(unit.fabrics).join()
  if (unit.kind === 'polygon') return JSON.stringify([unit.kind, unit.corners, fabrics, unit.method])
  const size = (unit.turn ?? 0) % 2 === 0 ? unit.size : [unit.size[1], unit.size[0]]
  return JSON.stringify([unit.kind, size, unit.mirror === true, unit.corner, fabrics, unit.method])
}

function keyOf(unit: Unit, picture: (unit: Unit) => string): string {
  if (unit.kind === 'goose' && takenMethod(unit) === 'geese-4') return ['goose', 'geese-4', said(sizeAtRest(unit)), unit.fabrics.goose].join('|')
  return [unit.kind, takenMethod(unit), picture(unit)].join('|')
}

function polygonSize(unit: Unit): ExactPoint {
  const { low, high } = exactBox(unit)
  return [subtract(high[0], low[0]), subtract(high[1], low[1])]
}

const said = ([x, y]: ExactPoint): string => `${x.n}/${x.d},${y.n}/${y.d}`
