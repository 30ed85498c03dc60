/** Which unit, patch or meeting lies at a place, and whether there is room: looked up in an index that is made once for each list. Lengths in cells. */
import { type Block, type Findings, type Meeting, type SpatialIndex, spatialIndex, type Unit } from '../../geometry/index.ts'
import { inside, type PatchShape, unitShapes, type Point, pointOf, type Rect, rectOf } from '../document/shapes.ts'

const unitIndexes = new WeakMap<Block['units'], SpatialIndex<Unit>>()
const unitsByName = new WeakMap<Block['units'], ReadonlyMap<string, Unit>>()
const meetingIndexes = new WeakMap<Findings['meetings'], SpatialIndex<PlacedMeeting>>()

/** The units of a block by where they lie. */
export function unitsIndex({ units }: Block): SpatialIndex<Unit> {
  const index = unitIndexes.get(units) ?? spatialIndex(units, (unit) => boxOf(rectOf(unit)))
  unitIndexes.set(units, index)
  return index
}

const boxOf = ({ at: [x, y], size: [width, height] }: Rect) =>
  [
    [x, y],
    [x + width, y + height],
  ] as const

/** A unit by its id; undefined where the block has none of that id. */
export function unitById({ units }: Block, id: string): Unit | undefined {
  const byId = unitsByName.get(units) ?? new Map(units.map((unit) => [unit.id, unit]))
  unitsByName.set(units, byId)
  return byId.get(id)
}

/** Makes the indexes before they are needed. */
export function prepareIndexes(block: Block): void {
  unitsIndex(block)
  unitById(block, '')
}

/** In the order of the ids; those that are gone are left out. */
export const unitsById = (block: Block, ids: readonly string[]): Unit[] => ids.flatMap((id) => unitById(block, id) ?? [])

export interface PlacedMeeting {
  readonly at: Point
  readonly meeting: Meeting
}

/** The meetings of a block by where they lie. */
export function meetingsIndex({ meetings }: Findings): SpatialIndex<PlacedMeeting> {
  const placed = (): PlacedMeeting[] => clashesLast(meetings).map((meeting) => ({ at: pointOf(meeting.at), meeting }))
  const index = meetingIndexes.get(meetings) ?? spatialIndex(placed(), ({ at }) => [at, at])
  meetingIndexes.set(meetings, index)
  return index
}

/** Two pairs of seams may meet at one point: the one that clashes is the one to see. */
const clashesLast = (meetings: readonly Meeting[]): readonly Meeting[] =>
  [...meetings].sort((a, b) => Number(a.verdict === 'clashes') - Number(b.verdict === 'clashes'))

/** The topmost meeting within reach of a point, by its number in the report; null where there is none. */
export function meetingAt(report: Findings, [x, y]: Point, reach: number): number | null {
  const found = meetingsIndex(report)
    .touching([x - reach, y - reach], [x + reach, y + reach])
    .at(-1)
  return found === undefined ? null : report.meetings.indexOf(found.meeting)
}

/** The topmost patch of a unit at a point. */
export function pieceAt(block: Block, at: Point): PatchShape | undefined {
  return unitsIndex(block)
    .touching(at, at)
    .flatMap((unit) => unitShapes(unit))
    .findLast(({ corners }) => inside(corners, at))
}

/** Units whose boxes overlap a box; an edge in common is no overlap. */
export const unitsOver = (block: Block, rect: Rect): Unit[] =>
  unitsIndex(block)
    .touching(rect.at, [rect.at[0] + rect.size[0], rect.at[1] + rect.size[1]])
    .filter((unit) => overlap(rect, rectOf(unit)))

/**
 * Whether boxes lie inside the grid and over no other unit's box, `except` aside. `units` are the units whose boxes they are: a free patch may lie over
 * anything, for its box says little; the findings say the rest.
 */
export function hasRoom(block: Block, rects: readonly Rect[], except: ReadonlySet<string>, units?: readonly Unit[]): boolean {
  return rects.every((rect, index) => onGrid(block, rect) && unitInTheWay(block, rect, except, units?.[index]) === undefined)
}

/** A unit that a box would overlap; nothing is in the way of a free patch. */
export function unitInTheWay(block: Block, rect: Rect, except: ReadonlySet<string>, unit?: Unit): Unit | undefined {
  return unit?.kind === 'polygon' ? undefined : unitsOver(block, rect).find(({ id, kind }) => kind !== 'polygon' && !except.has(id))
}

function onGrid({ grid: { columns, rows } }: Block, { at, size }: Rect): boolean {
  return at[0] >= -EPSILON && at[1] >= -EPSILON && at[0] + size[0] <= columns + EPSILON && at[1] + size[1] <= rows + EPSILON
}

/** Cells: thirds and the like are not whole in doubles. It decides only what a hand may do; what is wrong with the block the findings say exactly. */
const EPSILON = 1e-9

const overlap = (a: Rect, b: Rect): boolean =>
  ([0, 1] as const).every((axis) => a.at[axis] + EPSILON < b.at[axis] + b.size[axis] && b.at[axis] + EPSILON < a.at[axis] + a.size[axis])
