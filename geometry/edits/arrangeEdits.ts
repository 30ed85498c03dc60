/**
 * Edits of arranging: change places, resize, align, spread evenly, lay a run, put another kind in place.
 *
 * In      ids, boxes and places in cells.
 * Out     named pure changes, as in `edits.ts`. Whether there is room on the grid is checked beforehand, by the caller that offers the edit.
 * Exact   fractions throughout: even gaps are even, and a box scaled there and back is the box it was.
 */
import { add, compare, divide, equal, multiply, type Rational, rational, subtract, toFile } from '../exact/rational.ts'
import { type ExactPoint, exactPoint, KIND_FACTS, shapeOf } from '../units/kinds.ts'
import { boxAround, exact, file, shift } from '../block/boxes.ts'
import { boxOf, type ExactBox } from '../units/unitBox.ts'
import type { Draft, Edit } from './unitEdits.ts'
import type { BoxUnit, FilePoint, Kind, Mutable, Turn, Unit } from '../values/block.ts'
import { message } from '../values/messages.ts'

type DraftUnit = Mutable<Unit>

function unitsIn(draft: Draft, ids: readonly string[]): DraftUnit[] {
  const wanted = new Set(ids)
  return draft.units.filter(({ id }) => wanted.has(id))
}

const copyOf = (unit: Unit): DraftUnit => JSON.parse(JSON.stringify(unit)) as DraftUnit

/** Adds units; those whose ids are taken are left out. */
export const placeUnits = (units: readonly Unit[]): Edit => ({
  name: message('place-units', { units: units.length }),
  change: (draft) => {
    const taken = new Set(draft.units.map(({ id }) => id))
    for (const unit of units) {
      if (taken.has(unit.id)) continue
      taken.add(unit.id)
      draft.units.push(copyOf(unit))
    }
  },
})

/** Two units of one size change places; others stay. */
export const swapUnits = (one: string, other: string): Edit => ({
  name: message('swap-units'),
  change: (draft) => {
    const [a, b] = [one, other].map((id) => draft.units.find((unit) => unit.id === id))
    if (a === undefined || b === undefined || a === b || !sameSize(a, b)) return
    const by = ([0, 1] as const).map((axis) => subtract(boxOf(b).low[axis], boxOf(a).low[axis])) as [Rational, Rational]
    shift(a, toFile(by[0]), toFile(by[1]))
    shift(b, toFile(subtract(rational(0), by[0])), toFile(subtract(rational(0), by[1])))
  },
})

/** Whether the boxes around two units have the same width and height. */
export function sameSize(a: Unit | DraftUnit, b: Unit | DraftUnit): boolean {
  const [one, other] = [sizeOf(boxOf(a)), sizeOf(boxOf(b))]
  return equal(one[0], other[0]) && equal(one[1], other[1])
}

const sizeOf = ({ low, high }: ExactBox): ExactPoint => [subtract(high[0], low[0]), subtract(high[1], low[1])]

export type Side = 'left' | 'centre' | 'right' | 'top' | 'middle' | 'bottom'

/** Aligns units within the box round all of them. */
export const alignUnits = (ids: readonly string[], side: Side): Edit => ({
  name: message('align-units'),
  change: (draft) => {
    const units = unitsIn(draft, ids)
    const all = boxAround(units)
    if (all === null) return
    const axis = side === 'left' || side === 'centre' || side === 'right' ? 0 : 1
    const part = side === 'left' || side === 'top' ? rational(0) : side === 'right' || side === 'bottom' ? rational(1) : rational(1, 2)
    for (const unit of units) {
      const own = boxOf(unit)
      const room = subtract(sizeOf(all)[axis], sizeOf(own)[axis])
      const by = subtract(add(all.low[axis], multiply(room, part)), own.low[axis])
      moveAlong(unit, axis, by)
    }
  },
})

function moveAlong(unit: DraftUnit, axis: 0 | 1, by: Rational): void {
  if (by.n !== 0n) shift(unit, axis === 0 ? toFile(by) : 0, axis === 1 ? toFile(by) : 0)
}

/** Makes the gaps between neighbours equal; the first and the last stay. Fewer than three units stay as they are. */
export const spreadUnits = (ids: readonly string[], way: 'across' | 'down'): Edit => ({
  name: message('spread-units'),
  change: (draft) => {
    const axis = way === 'across' ? 0 : 1
    const units = unitsIn(draft, ids).sort((a, b) => compare(boxOf(a).low[axis], boxOf(b).low[axis]))
    const [first, last] = [units[0], units.at(-1)]
    if (units.length < 3 || first === undefined || last === undefined) return
    const taken = units.slice(0, -1).reduce((sum, unit) => add(sum, sizeOf(boxOf(unit))[axis]), rational(0))
    const whole = subtract(boxOf(last).low[axis], boxOf(first).low[axis])
    const gap = divide(subtract(whole, taken), rational(units.length - 1))
    let next = boxOf(first).low[axis]
    for (const unit of units) {
      moveAlong(unit, axis, subtract(next, boxOf(unit).low[axis]))
      next = add(add(next, sizeOf(boxOf(unit))[axis]), gap)
    }
  },
})

/** A box in cells, as files write places. */
export interface FileBox {
  readonly at: FilePoint
  readonly size: FilePoint
}

/** Whether the units must keep the proportion of width to height. */
export const keepsProportion = (units: readonly Unit[]): boolean => units.some(({ kind }) => KIND_FACTS[kind].proportion !== 'any')

/** Resizes the box round the units, and everything in it with it. A size that a kind's proportion forbids changes nothing. */
export const resizeUnits = (ids: readonly string[], to: FileBox): Edit => ({
  name: message('resize-units', { units: ids.length }),
  change: (draft) => {
    const units = unitsIn(draft, ids)
    const from = boxAround(units)
    if (from === null) return
    const [low, size, old] = [exactPoint(to.at), exactPoint(to.size), sizeOf(from)]
    if (size.some(({ n }) => n <= 0n) || old.some(({ n }) => n <= 0n)) return
    const by: ExactPoint = [divide(size[0], old[0]), divide(size[1], old[1])]
    if (keepsProportion(units as readonly Unit[]) && !equal(by[0], by[1])) return
    const placed = ([x, y]: ExactPoint): ExactPoint => [
      add(low[0], multiply(subtract(x, from.low[0]), by[0])),
      add(low[1], multiply(subtract(y, from.low[1]), by[1])),
    ]
    for (const unit of units) scale(unit, placed, by)
  },
})

function scale(unit: DraftUnit, placed: (point: ExactPoint) => ExactPoint, by: ExactPoint): void {
  if (unit.kind === 'polygon') {
    unit.corners = unit.corners.map((corner) => file(placed(exactPoint(corner))))
    return
  }
  const size = exactPoint(unit.size)
  unit.at = file(placed(exactPoint(unit.at)))
  unit.size = file([multiply(size[0], by[0]), multiply(size[1], by[1])])
  if (unit.corner !== undefined) {
    const smaller = compare(by[0], by[1]) <= 0 ? by[0] : by[1]
    unit.corner = toFile(multiply(exact(unit.corner), smaller))
  }
}

/** Whether a unit's box can hold another kind. */
export function canBecome(unit: Unit, kind: Kind): boolean {
  if (unit.kind === 'polygon' || kind === 'polygon') return false
  const [w, h] = exactPoint(unit.size)
  const { proportion } = KIND_FACTS[kind]
  if (proportion === 'square') return equal(w, h)
  if (proportion === 'any') return true
  return equal(w, multiply(h, rational(2))) || equal(h, multiply(w, rational(2)))
}

/** The strips that a unit gets when it is replaced by strips. */
const STRIPS = ['strip1', 'strip2', 'strip3'] as const

/** Another kind in the same boxes and of the same fabrics. Units whose box cannot hold it stay as they are. */
export const replaceKind = (ids: readonly string[], kind: Kind): Edit => ({
  name: message('replace-units', { units: ids.length }),
  change: (draft) => {
    const wanted = new Set(ids)
    draft.units.forEach((unit, place) => {
      if (wanted.has(unit.id) && unit.kind !== kind && canBecome(unit as Unit, kind))
        draft.units[place] = become(unit as BoxUnit, kind as BoxUnit['kind'])
    })
  },
})

function become(unit: BoxUnit, kind: BoxUnit['kind']): DraftUnit {
  const [w, h] = exactPoint(unit.size)
  const names = kind === 'strips' ? STRIPS : KIND_FACTS[kind].names
  const { method: _, corner: __, turn: ___, mirror: ____, ...kept } = unit
  const bare = { ...kept, kind, turn: turnFor(unit, kind), fabrics: Object.fromEntries(names.map((name) => [name, ''])) } as BoxUnit
  const shorter = compare(w, h) <= 0 ? w : h
  const next: BoxUnit = kind === 'cornered' ? { ...bare, corner: toFile(divide(shorter, rational(4))) } : bare
  const fabrics = fabricsFor(next, unit)
  const plain = copyOf({ ...next, fabrics } as Unit)
  if (plain.kind !== 'polygon' && plain.turn === 0) delete plain.turn
  return plain
}

/** A goose takes the turn that fits its box; other kinds keep their turn, if their shape allows turns. */
function turnFor({ turn = 0, size }: BoxUnit, kind: Kind): Turn {
  if (KIND_FACTS[kind].proportion !== 'twice as wide as high') return turn
  const [w, h] = exactPoint(size)
  const upright = compare(w, h) < 0
  return upright === (turn % 2 === 1) ? turn : upright ? 1 : 0
}

/** Patches that keep their name keep their fabric; the others take, in order, the fabrics that would otherwise be lost, then any of the unit's fabrics. */
function fabricsFor(next: BoxUnit, before: BoxUnit): Record<string, string> {
  const names = shapeOf(next).patches.map(({ name }) => name)
  const had = shapeOf(before).patches.map(({ name }) => before.fabrics[name] as string)
  const same = (name: string): string | undefined => (Object.hasOwn(before.fabrics, name) ? before.fabrics[name] : undefined)
  const used = new Set(names.flatMap((name) => same(name) ?? []))
  const waiting = [...new Set(had)].filter((fabric) => !used.has(fabric))
  return Object.fromEntries(names.map((name, index) => [name, same(name) ?? waiting.shift() ?? (had[index % had.length] as string)]))
}

/** The box that units fill, as files write it; null where there are none. */
export function fileBoxOf(units: readonly Unit[]): { readonly at: FilePoint; readonly size: FilePoint } | null {
  const box = boxAround(units)
  return box === null ? null : { at: file(box.low), size: file(sizeOf(box)) }
}

/** a + b, both as files write places. */
