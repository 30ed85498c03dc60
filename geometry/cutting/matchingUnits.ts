/**
 * Which units match: turned, they look the same; they are made by the same method, and cut larger by the same amount.
 *
 * In      a block that has been read.
 * Out     groups of units, with their finished size at turn 0 and the method that makes them.
 * Exact   pictures are compared as fractions of a cell.
 */
import { cellOf, lengthOf } from '../block/lengthsOf.ts'
import type { Block, Kind, Method, Unit } from '../values/block.ts'
import { multiply, subtract, toNumber } from '../exact/rational.ts'
import { type ExactPoint, methodOf, sizeAtRest } from '../units/kinds.ts'
import { boxOf } from '../units/unitBox.ts'
import { pictures } from '../units/unitPicture.ts'

export interface MatchingUnits {
  readonly units: readonly Unit[]
  readonly first: Unit
  /** Finished width and height at turn 0, in the measure's unit. */
  readonly finished: readonly [number, number]
  readonly method: Method
  /** How much larger it is cut, to be trimmed, in the measure's unit; 0 where it is sewn as cut. */
  readonly oversize: number
}

/** By unit: the key that matching units share. Units are never changed in place; an edit makes new ones. */
const keys = new WeakMap<Unit, string>()

export function matchingUnits(block: Block): MatchingUnits[] {
  const cell = cellOf(block)
  const groups = new Map<string, Unit[]>()
  const known = new Map<string, string>()
  const picture = pictures()
  for (const unit of block.units) {
    const key = keys.get(unit) ?? cachedKey(unit, known, picture)
    const there = groups.get(key)
    if (there === undefined) groups.set(key, [unit])
    else there.push(unit)
  }
  return [...groups.values()].map((units) => {
    const first = units[0] as Unit
    const [w, h] = first.kind === 'polygon' ? polygonSize(first) : sizeAtRest(first)
    return {
      units,
      first,
      finished: [toNumber(multiply(w, cell)), toNumber(multiply(h, cell))],
      method: takenMethod(first),
      oversize: oversizeOf(first),
    }
  })
}

function cachedKey(unit: Unit, known: Map<string, string>, picture: (unit: Unit) => string): string {
  const plain = plainKey(unit)
  const key = known.get(plain) ?? keyOf(unit, picture)
  known.set(plain, key)
  keys.set(unit, key)
  return key
}

/** The maker's method, or the first method of its kind that can make the unit. */
function takenMethod(unit: Unit): Method {
  if (unit.kind === 'hourglass' && unit.method === undefined && !twoByTwo(unit)) return 'plain'
  return methodOf(unit)
}

/** Whether a method's unit comes out larger than it must be, so that cutting larger still makes sense. */
export const isTrimmed = (kind: Kind, method: Method): boolean =>
  !['square', 'strips', 'polygon'].includes(kind) && !['corner-flip', 'strip-set'].includes(method)

function oversizeOf(unit: Unit): number {
  return unit.oversize !== undefined && isTrimmed(unit.kind, takenMethod(unit)) ? toNumber(lengthOf(unit.oversize)) : 0
}

/** Two-at-a-time hourglasses have the same pair of fabrics on both sides of the long seam. */
export function twoByTwo({ fabrics }: Unit): boolean {
  const pair = (one: string, other: string): string => [fabrics[one], fabrics[other]].sort().join(' ')
  return pair('top', 'right') === pair('bottom', 'left')
}

/** Cheap to make, and the same only for units that certainly match: saves drawing most units of a large block. */
function plainKey(unit: Unit): string {
  const fabrics = Object.entries(unit.fabrics).join()
  if (unit.kind === 'polygon') return JSON.stringify([unit.kind, unit.corners, fabrics, unit.method])
  const size = (unit.turn ?? 0) % 2 === 0 ? unit.size : [unit.size[1], unit.size[0]]
  return JSON.stringify([unit.kind, size, unit.mirror === true, unit.corner, fabrics, unit.method, unit.oversize])
}

function keyOf(unit: Unit, picture: (unit: Unit) => string): string {
  const how = [unit.kind, takenMethod(unit), oversizeOf(unit)]
  if (unit.kind === 'goose' && takenMethod(unit) === 'geese-4') return [...how, sizeText(sizeAtRest(unit)), unit.fabrics.goose].join('|')
  return [...how, picture(unit)].join('|')
}

/** Width and height of the box around a unit, in cells. */
export function polygonSize(unit: Unit): ExactPoint {
  const { low, high } = boxOf(unit)
  return [subtract(high[0], low[0]), subtract(high[1], low[1])]
}

const sizeText = ([x, y]: ExactPoint): string => `${x.n}/${x.d},${y.n}/${y.d}`
