/**
 * Where each unit lies, as a maker points at it: "the top goose", "the first square in row 2".
 *
 * In      a block.
 * Out     for a unit's id its place: the maker's own name for it; else its kind with its side of the block, where no other of its kind is on
 *         that side; else its kind with its row. No two units have the same place, unless the maker gave them the same name.
 * Exact   fractions throughout.
 */
import { add, compare, equal, rational, type Rational } from '../exact/rational.ts'
import { boxOf, type ExactBox } from '../units/unitBox.ts'
import type { Block, Unit } from '../values/block.ts'
import type { UnitNoun, UnitPlace, UnitSide } from '../values/unitPlace.ts'
import { exact } from './boxes.ts'

/** The place of each unit of a block. An id that the block doesn't have gets the place of a free patch: it can't be pointed at. */
export function unitPlaces(block: Block): (id: string) => UnitPlace {
  const places = placesByBlock.get(block.units) ?? allPlaces(block)
  placesByBlock.set(block.units, places)
  return (id) => places.get(id) ?? { type: 'only', noun: 'polygon' }
}

/** Messages ask for one unit after another. */
const placesByBlock = new WeakMap<Block['units'], ReadonlyMap<string, UnitPlace>>()

interface BoxedUnit {
  readonly unit: Unit
  readonly box: ExactBox
  readonly row: number
}

function allPlaces({ units, grid }: Block): ReadonlyMap<string, UnitPlace> {
  const places = new Map<string, UnitPlace>()
  const byNoun = new Map<UnitNoun, BoxedUnit[]>()
  for (const unit of units) {
    const box = boxOf(unit)
    pushTo(byNoun, nounOf(unit), { unit, box, row: rowOf(box, grid.rows) })
  }
  for (const [noun, those] of byNoun) for (const [id, place] of placesOfNoun(noun, those, grid)) places.set(id, place)
  for (const { id, name = '' } of units) if (name.trim() !== '') places.set(id, { type: 'named', name: name.trim() })
  return places
}

const nounOf = (unit: Unit): UnitNoun => (unit.kind === 'square' && !equal(exact(unit.size[0]), exact(unit.size[1])) ? 'rectangle' : unit.kind)

/** What begins above or below the grid counts to its nearest row. */
function rowOf({ low }: ExactBox, rows: number): number {
  const { n, d } = low[1]
  return Math.min(Math.max(Number(n / d), 0) + 1, rows)
}

/** By side where each has a side of its own; else by row. */
function placesOfNoun(noun: UnitNoun, those: readonly BoxedUnit[], grid: Block['grid']): [string, UnitPlace][] {
  const [first] = those
  if (those.length === 1 && first !== undefined) return [[first.unit.id, { type: 'only', noun }]]
  const sides = those.length > SIDES ? [] : those.map(({ box }) => sideOf(box, grid))
  if (new Set(sides).size === those.length) return those.map(({ unit }, index) => [unit.id, { type: 'side', noun, side: sides[index] as UnitSide }])
  const rows = new Map<number, BoxedUnit[]>()
  for (const one of those) pushTo(rows, one.row, one)
  return [...rows].flatMap(([row, within]) =>
    within
      .sort((a, b) => compare(a.box.low[0], b.box.low[0]) || compare(a.box.low[1], b.box.low[1]))
      .map(({ unit }, index): [string, UnitPlace] => [unit.id, { type: 'row', noun, row, ...(within.length === 1 ? {} : { nth: index + 1 }) }]),
  )
}

function pushTo<Key>(lists: Map<Key, BoxedUnit[]>, key: Key, one: BoxedUnit): void {
  const list = lists.get(key)
  if (list === undefined) lists.set(key, [one])
  else list.push(one)
}

const SIDES = 9

const SIDE_NAMES: readonly (readonly UnitSide[])[] = [
  ['topLeft', 'top', 'topRight'],
  ['left', 'centre', 'right'],
  ['bottomLeft', 'bottom', 'bottomRight'],
]

/** On which side of the grid's centre the unit's own centre lies. */
function sideOf({ low, high }: ExactBox, { columns, rows }: Block['grid']): UnitSide {
  const side = (start: Rational, end: Rational, cells: number): number => Math.sign(compare(add(start, end), rational(cells)))
  return SIDE_NAMES[side(low[1], high[1], rows) + 1]?.[side(low[0], high[0], columns) + 1] as UnitSide
}
