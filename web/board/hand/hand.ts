/**
 * What a hand does on the board, from press to release: small steps from one state to the next, no screen and no history.
 *
 * In      where the pointer is, in pixels and cells, what lies there, and what the hand has taken up before.
 * Out     the gesture as it stands: what would be moved, resized, laid or chosen if the hand let go now.
 */
import {
  type Block,
  boxAround,
  type ExactBox,
  type FileBox,
  keepsProportion,
  multiply,
  type Rational,
  rational,
  sameSize,
  subtract,
  toFile,
  toNumber,
  type Turn,
  type Unit,
  add as plus,
  divide,
} from '../../../geometry/index.ts'
import type { DragTool } from '../../document/store.ts'
import { fits, pieceAt, unitById, unitsById, unitsIndex } from '../hitTest.ts'
import { CARRY, type Pinch, RESTING } from './pinch.ts'
import { runOf, sizeOfKind, type TrayKind } from '../newUnit.ts'
import { inside, decimal, unitShapes, type Rect, rectOf, type Point } from '../../document/shapes.ts'
import { type Around, type Snapped, snapMove, snapPoint } from './snapping.ts'

export interface Touch {
  /** Pixels. */
  readonly at: Point
  readonly cells: Point
  /** Halves of cells too. */
  readonly half: boolean
  /** To what is chosen already. */
  readonly add: boolean
  readonly by: string
}

export interface Scene {
  readonly block: Block
  readonly chosen: readonly string[]
  readonly tool: DragTool
  readonly taking: TrayKind | null
  /** Quarter turns of what is in hand. */
  readonly turned: Turn
  /** The fabric in hand. */
  readonly brush: string | null
  /** Pixels to a cell. */
  readonly scale: number
  readonly pan: Point
}

/** A corner of a box: 0 low, 1 high, across and down. */
export type Corner = readonly [0 | 1, 0 | 1]

export type Gesture =
  | { readonly sort: 'press'; readonly from: Touch; readonly unit: string | null; readonly name: string | null }
  /** On one of the round handles: it acts when the hand lets go. Drawn round the middle, the turn follows by quarters. */
  | {
      readonly sort: 'handle'
      readonly does: 'turn' | 'mirror'
      readonly from: Touch
      readonly ids: readonly string[]
      readonly middle: Point
      readonly quarters: Turn
      readonly off: boolean
    }
  /** A fabric drawn over patches. */
  | { readonly sort: 'pour'; readonly fabric: string; readonly over: readonly Patch[]; readonly last: Point }
  | {
      readonly sort: 'move'
      readonly from: Touch
      readonly ids: readonly string[]
      readonly box: ExactBox
      readonly snapped: Snapped
      readonly fits: boolean
      /** The unit that would change places with the one in hand; or one that is in the way and cannot. */
      readonly swap: string | null
      readonly inTheWay: string | null
    }
  | {
      readonly sort: 'resize'
      readonly from: Touch
      /** The corner has been drawn from its place. */
      readonly drawn: boolean
      readonly ids: readonly string[]
      readonly box: ExactBox
      readonly corner: Corner
      readonly to: FileBox
      readonly fits: boolean
    }
  | { readonly sort: 'run'; readonly kind: TrayKind; readonly turn: Turn; readonly from: Point; readonly units: readonly Unit[] }
  /** A corner of a free patch on its way under a finger, which covers where it lies. */
  | { readonly sort: 'corner'; readonly to: Touch }
  | { readonly sort: 'box'; readonly from: Touch; readonly to: Touch }
  | { readonly sort: 'round'; readonly from: Touch; readonly points: readonly Touch[] }
  | { readonly sort: 'pan'; readonly from: Point; readonly pan: Point }
  | Pinch

export interface Patch {
  readonly unit: string
  readonly name: string
}

export function pressed(touch: Touch, { block }: Scene): Gesture {
  const piece = pieceAt(block, touch.cells)
  return { sort: 'press', from: touch, unit: piece?.unit ?? null, name: piece?.name ?? null }
}

/** The sign a mouse carries over the board: what a press there would do. */
export function cursorOver(on: 'turn' | 'mirror' | Corner | null, unit: string | null, { tool, taking, brush }: Scene): string {
  if (on !== null) return typeof on === 'string' ? 'pointer' : on[0] === on[1] ? 'nwse-resize' : 'nesw-resize'
  if (tool !== 'hand') return 'crosshair'
  if (brush !== null) return unit === null ? 'default' : 'cell'
  if (unit !== null) return 'grab'
  return taking === null ? 'default' : 'copy'
}

/** A finger rolls where it rests; a mouse does not. */
export const isCarried = (from: Touch, { at }: Touch): boolean =>
  Math.hypot(at[0] - from.at[0], at[1] - from.at[1]) > (from.by === 'touch' ? RESTING : CARRY)

/** A press that has gone so far that it is a drag. */
export function carried(press: Extract<Gesture, { sort: 'press' }>, touch: Touch, scene: Scene): Gesture {
  const { from, unit } = press
  const { block, tool, taking, turned, brush, chosen, pan } = scene
  if (tool === 'box') return { sort: 'box', from, to: touch }
  if (tool === 'round') return { sort: 'round', from, points: [from, touch] }
  if (tool === 'patch') return from.by === 'touch' ? { sort: 'corner', to: touch } : { sort: 'pan', from: from.at, pan }
  if (unit !== null && brush !== null && !from.add) return followed({ sort: 'pour', fabric: brush, over: [], last: from.cells }, touch, scene)
  if (unit !== null) {
    const ids = chosen.includes(unit) ? chosen : from.add ? [...chosen, unit] : [unit]
    const box = boxAround(unitsById(block, ids))
    if (box !== null)
      return followed({ sort: 'move', from, ids, box, snapped: { by: [0, 0], guides: [] }, fits: true, swap: null, inTheWay: null }, touch, scene)
  }
  if (taking !== null) return followed({ sort: 'run', kind: taking, turn: turned, from: cellOf(from.cells), units: [] }, touch, scene)
  return from.by === 'touch' ? { sort: 'pan', from: from.at, pan } : { sort: 'box', from, to: touch }
}

const cellOf = ([x, y]: Point): Point => [Math.floor(x), Math.floor(y)]

export function resizing(ids: readonly string[], corner: Corner, block: Block, from: Touch): Gesture | null {
  const box = boxAround(unitsById(block, ids))
  return box === null ? null : { sort: 'resize', from, drawn: false, ids, box, corner, to: fileBox(box.low, box.high), fits: true }
}

export function followed(gesture: Gesture, touch: Touch, scene: Scene): Gesture {
  if (gesture.sort === 'move') return moved(gesture, touch, scene)
  if (gesture.sort === 'resize') return resized(gesture, touch, scene)
  if (gesture.sort === 'run') return { ...gesture, units: runOf(scene.block, gesture.kind, gesture.from, cellOf(touch.cells), gesture.turn) }
  if (gesture.sort === 'handle') return drawnRound(gesture, touch, scene)
  if (gesture.sort === 'pour') return poured(gesture, touch, scene)
  if (gesture.sort === 'box' || gesture.sort === 'corner') return { ...gesture, to: touch }
  if (gesture.sort === 'round') return { ...gesture, points: [...gesture.points, touch] }
  return gesture
}

/** Pixels from a handle at which it is let alone. */
const LEFT = 30
/** Cells round the thing in hand within which other edges draw it. */
const NEAR = 3
const MOST_NEAR = 60
/** Pixels within which another edge draws it. */
const REACH = 9

export function aroundOf({ block, scale }: Scene, low: Point, high: Point, besides: ReadonlySet<string>, half: boolean): Around {
  const units = unitsIndex(block)
    .touching([low[0] - NEAR, low[1] - NEAR], [high[0] + NEAR, high[1] + NEAR])
    .filter(({ id }) => !besides.has(id))
    .slice(0, MOST_NEAR)
  return { grid: block.grid, units, half, reach: Math.min(0.3, REACH / scale) }
}

export function onHandle(does: 'turn' | 'mirror', from: Touch, ids: readonly string[], block: Block): Gesture | null {
  const box = boxAround(unitsById(block, ids))
  if (box === null) return null
  const [low, high] = [numbers(box.low), numbers(box.high)]
  return { sort: 'handle', does, from, ids, middle: [(low[0] + high[0]) / 2, (low[1] + high[1]) / 2], quarters: 0, off: false }
}

/** From a handle that has not left its place a press means one quarter; drawn round, it means as many as the hand has gone round by. */
function drawnRound(gesture: Extract<Gesture, { sort: 'handle' }>, touch: Touch, { scale }: Scene): Gesture {
  const { from, middle, does } = gesture
  const off = gesture.off || isCarried(from, touch)
  if (!off || does === 'mirror') return { ...gesture, off: off && Math.hypot(touch.at[0] - from.at[0], touch.at[1] - from.at[1]) > LEFT }
  // Near the middle a hair's breadth is a quarter: what was shown stays.
  if (Math.hypot(touch.cells[0] - middle[0], touch.cells[1] - middle[1]) * scale < RESTING) return { ...gesture, off }
  const way = ([x, y]: Point): number => Math.atan2(y - middle[1], x - middle[0])
  const quarters = Math.round((way(touch.cells) - way(from.cells)) / (Math.PI / 2))
  return { ...gesture, off, quarters: (((quarters % 4) + 4) % 4) as Turn }
}

/** Every patch on the way from the last place to this one, each once. */
function poured(gesture: Extract<Gesture, { sort: 'pour' }>, touch: Touch, { block, scale }: Scene): Gesture {
  const { over, last } = gesture
  const [dx, dy] = [touch.cells[0] - last[0], touch.cells[1] - last[1]]
  const steps = Math.max(1, Math.ceil((Math.hypot(dx, dy) * scale) / RESTING))
  const found = [...over]
  for (let step = 0; step <= steps; step++) {
    const piece = pieceAt(block, [last[0] + (dx * step) / steps, last[1] + (dy * step) / steps])
    if (piece?.unit == null || found.some(({ unit, name }) => unit === piece.unit && name === piece.name)) continue
    found.push({ unit: piece.unit, name: piece.name })
  }
  return { ...gesture, over: found, last: touch.cells }
}

/** Where a unit from the tray comes to lie, its middle under the hand. */
export function landed(kind: TrayKind, turn: Turn, [x, y]: Point, half: boolean, scene: Scene): Snapped {
  const [w, h] = sizeOfKind(kind, turn)
  const low: Point = [x - w / 2, y - h / 2]
  const box: ExactBox = { low: [rational(0), rational(0)], high: [rational(w), rational(h)] }
  return snapMove(box, low, aroundOf(scene, low, [low[0] + w, low[1] + h], new Set(), half))
}

function moved(gesture: Extract<Gesture, { sort: 'move' }>, touch: Touch, scene: Scene): Gesture {
  const { block } = scene
  const { from, ids, box } = gesture
  const by: Point = [touch.cells[0] - from.cells[0], touch.cells[1] - from.cells[1]]
  const held = new Set(ids)
  const [low, high] = [numbers(box.low), numbers(box.high)]
  const snapped = snapMove(box, by, aroundOf(scene, [low[0] + by[0], low[1] + by[1]], [high[0] + by[0], high[1] + by[1]], held, touch.half))
  const shift: Point = [decimal(snapped.by[0]), decimal(snapped.by[1])]
  const units = unitsById(block, ids)
  const free = fits(
    block,
    units.map((unit) => shifted(rectOf(unit), shift)),
    held,
    units,
  )
  const [only] = units
  const under = free || units.length !== 1 ? null : (pieceAt(block, touch.cells)?.unit ?? null)
  const other = under === null || held.has(under) ? undefined : unitById(block, under)
  const swap = other !== undefined && only !== undefined && sameSize(only, other) ? other.id : null
  return { ...gesture, snapped, fits: free, swap, inTheWay: swap === null ? (other?.id ?? null) : null }
}

const shifted = ({ at, size }: Rect, by: Point): Rect => ({ at: [at[0] + by[0], at[1] + by[1]], size })
const numbers = ([x, y]: readonly [Rational, Rational]): Point => [toNumber(x), toNumber(y)]

function resized(gesture: Extract<Gesture, { sort: 'resize' }>, touch: Touch, scene: Scene): Gesture {
  const { ids, box, corner, from } = gesture
  if (!gesture.drawn && !isCarried(from, touch)) return gesture
  const held = new Set(ids)
  const point = snapPoint(touch.cells, aroundOf(scene, touch.cells, touch.cells, held, touch.half))
  const least = touch.half ? rational(1, 2) : rational(1)
  const sides = ([0, 1] as const).map((axis) => {
    const side = corner[axis] === 1 ? subtract(point[axis], box.low[axis]) : subtract(box.high[axis], point[axis])
    return toNumber(side) < toNumber(least) ? least : side
  }) as [Rational, Rational]
  const units = unitsById(scene.block, ids)
  const size = keepsProportion(units) ? inProportion(box, sides) : sides
  const low = ([0, 1] as const).map((axis) => (corner[axis] === 1 ? box.low[axis] : subtract(box.high[axis], size[axis]))) as [Rational, Rational]
  const high: [Rational, Rational] = [plus(low[0], size[0]), plus(low[1], size[1])]
  const to = fileBox(low, high)
  const grown = rectsScaled(units, box, to)
  return { ...gesture, drawn: true, to, fits: fits(scene.block, grown, held, units) }
}

/** The larger of the two changes decides; the other side follows. */
function inProportion({ low, high }: ExactBox, [w, h]: readonly [Rational, Rational]): [Rational, Rational] {
  const own = [subtract(high[0], low[0]), subtract(high[1], low[1])] as const
  const by = [divide(w, own[0]), divide(h, own[1])] as const
  const part = toNumber(by[0]) >= toNumber(by[1]) ? by[0] : by[1]
  return [multiply(own[0], part), multiply(own[1], part)]
}

const fileBox = (low: readonly [Rational, Rational], high: readonly [Rational, Rational]): FileBox => ({
  at: [toFile(low[0]), toFile(low[1])],
  size: [toFile(subtract(high[0], low[0])), toFile(subtract(high[1], low[1]))],
})

/** A place in one box as it lies in the other, for drawing and for room. */
export function scaling(box: ExactBox, to: FileBox): (spot: Point) => Point {
  const [low, high] = [numbers(box.low), numbers(box.high)]
  const by = ([0, 1] as const).map((axis) => decimal(to.size[axis]) / (high[axis] - low[axis])) as [number, number]
  return ([x, y]) => [decimal(to.at[0]) + (x - low[0]) * by[0], decimal(to.at[1]) + (y - low[1]) * by[1]]
}

function rectsScaled(units: readonly Unit[], box: ExactBox, to: FileBox): Rect[] {
  const place = scaling(box, to)
  return units.map((unit) => {
    const { at, size } = rectOf(unit)
    const [low, high] = [place(at), place([at[0] + size[0], at[1] + size[1]])]
    return { at: low, size: [high[0] - low[0], high[1] - low[1]] }
  })
}

/** Units that a drawn box touches, or whose middle lies in a drawn round; after those chosen already where the hand adds. */
export function chosenBy(gesture: Extract<Gesture, { sort: 'box' | 'round' }>, { block, chosen }: Scene): string[] {
  const found =
    gesture.sort === 'box'
      ? inBox(block, gesture.from.cells, gesture.to.cells)
      : inRound(
          block,
          gesture.points.map(({ cells }) => cells),
        )
  return [...new Set([...(gesture.from.add ? chosen : []), ...found.map(({ id }) => id)])]
}

export function inBox(block: Block, a: Point, b: Point): Unit[] {
  return unitsIndex(block).touching([Math.min(a[0], b[0]), Math.min(a[1], b[1])], [Math.max(a[0], b[0]), Math.max(a[1], b[1])])
}

function inRound(block: Block, points: readonly Point[]): Unit[] {
  const [xs, ys] = [points.map(([x]) => x), points.map(([, y]) => y)]
  return inBox(block, [Math.min(...xs), Math.min(...ys)], [Math.max(...xs), Math.max(...ys)]).filter((unit) => inside(points, middleOf(unit)))
}

function middleOf(unit: Unit): Point {
  if (unit.kind !== 'polygon') {
    const { at, size } = rectOf(unit)
    return [at[0] + size[0] / 2, at[1] + size[1] / 2]
  }
  const corners = unitShapes(unit)[0]?.corners ?? []
  const sum = corners.reduce<Point>(([x, y], [cx, cy]) => [x + cx, y + cy], [0, 0])
  return [sum[0] / corners.length, sum[1] / corners.length]
}
