/** New units, as they come off the tray: of their usual size, in the block's first fabrics. All lengths in cells. */
import { type Block, type FilePoint, freshId, type Kind, KIND_FACTS, type Turn, type Unit } from '../../geometry/index.ts'
import { hasRoom } from './hitTest.ts'
import type { Point } from '../document/shapes.ts'

/** The kinds in the tray, in their order there. */
export const TRAY = ['square', 'hst', 'hourglass', 'goose', 'diamond', 'cornered', 'strips', 'half-rectangle'] as const satisfies readonly Kind[]
export type TrayKind = (typeof TRAY)[number]

const SIZES: Readonly<Record<TrayKind, readonly [number, number]>> = {
  square: [1, 1],
  hst: [1, 1],
  hourglass: [1, 1],
  goose: [2, 1],
  diamond: [2, 2],
  cornered: [2, 2],
  strips: [2, 2],
  'half-rectangle': [1, 2],
}

/** `at` is its top left corner; `turn` counts quarters clockwise, after it is mirrored. */
export function newUnit(block: Block, kind: TrayKind, at: FilePoint, turn: Turn = 0, id = freshId(block, kind), mirror = false): Unit {
  const names = kind === 'strips' ? ['strip1', 'strip2', 'strip3'] : KIND_FACTS[kind].names
  const ids = block.fabrics.map(({ id }) => id)
  const fabrics = Object.fromEntries(names.map((name, index) => [name, ids[(kind === 'strips' ? index : Math.min(index, 1)) % ids.length] as string]))
  return {
    id,
    kind,
    at,
    size: sizeOfKind(kind, turn),
    ...(turn === 0 ? {} : { turn }),
    ...(mirror ? { mirror } : {}),
    fabrics,
    ...(kind === 'cornered' ? { corner: 0.5 } : {}),
  } as Unit
}

/** Width and height in cells; a quarter turn stands it on end. */
export function sizeOfKind(kind: TrayKind, turn: Turn = 0): readonly [number, number] {
  const [w, h] = SIZES[kind]
  return turn % 2 === 0 ? [w, h] : [h, w]
}

/**
 * Where a unit lands that is placed by a press on a point: on whole cells, over the point, where there is room; its middle as near to the point as it can
 * be, its first cell under the pointer where two places are as near. null where there is no room anywhere over the point.
 */
export function roomAround(block: Block, kind: TrayKind, turn: Turn, [x, y]: Point): Point | null {
  const size = sizeOfKind(kind, turn)
  const along = (at: number, length: number): number[] => Array.from({ length }, (_, index) => Math.floor(at) - index)
  const distance = ([left, top]: Point): number => Math.hypot(left + size[0] / 2 - x, top + size[1] / 2 - y)
  const places = along(y, size[1]).flatMap((top) => along(x, size[0]).map((left): Point => [left, top]))
  return places.filter((at) => hasRoom(block, [{ at, size }], new Set())).sort((a, b) => distance(a) - distance(b))[0] ?? null
}

/** More units than anyone places in one drag. */
const MOST = 4000

/** As many units of a kind as stand side by side from one cell to another, each where there is room. */
export function fillBetween(block: Block, kind: TrayKind, from: Point, to: Point, turn: Turn = 0, mirror = false): Unit[] {
  const [w, h] = sizeOfKind(kind, turn)
  const steps = (axis: 0 | 1, size: number): number[] => {
    const count = Math.floor(Math.abs(to[axis] - from[axis]) / size) + 1
    const step = to[axis] < from[axis] ? -size : size
    return Array.from({ length: count }, (_, index) => from[axis] + index * step)
  }
  const places = steps(1, h).flatMap((y) => steps(0, w).map((x): Point => [x, y]))
  const ids = freshIds(block, kind, Math.min(MOST, places.length))
  return places
    .slice(0, MOST)
    .filter((at) => hasRoom(block, [{ at, size: [w, h] }], new Set()))
    .map((at, index) => newUnit(block, kind, at, turn, ids[index], mirror))
}

/** One square, or rectangle, over all cells from one to another; null where there is no room for it. */
export function squareOver(block: Block, from: Point, to: Point): Unit | null {
  const at: Point = [Math.min(from[0], to[0]), Math.min(from[1], to[1])]
  const size: Point = [Math.abs(to[0] - from[0]) + 1, Math.abs(to[1] - from[1]) + 1]
  return hasRoom(block, [{ at, size }], new Set()) ? ({ ...newUnit(block, 'square', at), size } as Unit) : null
}

function freshIds(block: Block, stem: string, count: number): string[] {
  const taken = new Set([...block.units.map(({ id }) => id), ...block.fabrics.map(({ id }) => id)])
  const ids: string[] = []
  for (let number = 1; ids.length < count; number++) {
    const id = number === 1 ? stem : `${stem}-${number}`
    if (!taken.has(id)) ids.push(id)
  }
  return ids
}
