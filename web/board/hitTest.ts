/** Which unit or patch lies at a place, and what lies in the way: asked of an index made once for each list of units. */
import type { Block, Unit } from '../../geometry/index.ts'
import { type Buckets, bucketsOf } from './spatialIndex.ts'
import { inside, type PatchShape, unitShapes, type Rect, rectOf, type Point } from '../document/shapes.ts'

const indexes = new WeakMap<Block['units'], Buckets<Unit>>()
const names = new WeakMap<Block['units'], ReadonlyMap<string, Unit>>()

/** The units of a block by where they lie. */
export function unitsIndex({ units }: Block): Buckets<Unit> {
  const known = indexes.get(units) ?? bucketsOf(units, rectOf)
  indexes.set(units, known)
  return known
}

export function unitById({ units }: Block, id: string): Unit | undefined {
  const known = names.get(units) ?? new Map(units.map((unit) => [unit.id, unit]))
  names.set(units, known)
  return known.get(id)
}

/** Makes the indexes before they are asked. */
export function getReady(block: Block): void {
  unitsIndex(block)
  unitById(block, '')
}

/** In the order of the ids; those that are gone are left out. */
export const unitsById = (block: Block, ids: readonly string[]): Unit[] => ids.flatMap((id) => unitById(block, id) ?? [])

/** A patch of a unit, the topmost under a spot. */
export function pieceAt(block: Block, at: Point): PatchShape | undefined {
  return unitsIndex(block)
    .touching(at, at)
    .flatMap((unit) => unitShapes(unit))
    .findLast(({ corners }) => inside(corners, at))
}

/** Spots of a cell that are asked one after the other; off the middle and the diagonals, where seams run. */
const SPOTS = [0.47, 0.13, 0.83, 0.29, 0.67]

/** The pieces that lie in a cell, the one in its middle first. */
export function piecesIn(block: Block, [x, y]: Point): PatchShape[] {
  const near = unitsIndex(block)
    .touching([x, y], [x + 1, y + 1])
    .flatMap((unit) => unitShapes(unit))
  const found = new Set<PatchShape>()
  for (const dy of SPOTS)
    for (const dx of SPOTS) {
      const piece = near.findLast(({ corners }) => inside(corners, [x + dx, y + dy - 0.05]))
      if (piece !== undefined) found.add(piece)
    }
  return [...found]
}

/** Units whose boxes share cloth with a box, not only an edge. */
export const unitsOver = (block: Block, rect: Rect): Unit[] =>
  unitsIndex(block)
    .touching(rect.at, [rect.at[0] + rect.size[0], rect.at[1] + rect.size[1]])
    .filter((unit) => over(rect, rectOf(unit)))

/** Whether boxes lie inside the grid and over no other unit's box. Free patches may lie over anything: their boxes say little, the findings say the rest. */
export function fits(block: Block, rects: readonly Rect[], besides: ReadonlySet<string>, units?: readonly Unit[]): boolean {
  return rects.every((rect, index) => onGrid(block, rect) && inTheWay(block, rect, besides, units?.[index]) === undefined)
}

/** A unit that has no room for a box beside it; none is in the way of a free patch. */
export function inTheWay(block: Block, rect: Rect, besides: ReadonlySet<string>, unit?: Unit): Unit | undefined {
  return unit?.kind === 'polygon' ? undefined : unitsOver(block, rect).find(({ id, kind }) => kind !== 'polygon' && !besides.has(id))
}

export function onGrid({ grid: { columns, rows } }: Block, { at, size }: Rect): boolean {
  return at[0] >= -HAIR && at[1] >= -HAIR && at[0] + size[0] <= columns + HAIR && at[1] + size[1] <= rows + HAIR
}

/** Cells: thirds and the like are not whole in doubles. Only what a hand may do hangs on this; what is wrong the findings say exactly. */
const HAIR = 1e-9

export const over = (a: Rect, b: Rect): boolean =>
  ([0, 1] as const).every((axis) => a.at[axis] + HAIR < b.at[axis] + b.size[axis] && b.at[axis] + HAIR < a.at[axis] + a.size[axis])
