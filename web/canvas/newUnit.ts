/** A new unit of a kind, as it comes off the tray: its usual size, in the block's first fabrics. */
import { type Block, type FilePoint, freshId, type Kind, KIND_FACTS, type Unit } from '../../geometry/index.ts'
import { fits } from './find.ts'
import type { Spot } from './shapes.ts'

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

export function newUnit(block: Block, kind: TrayKind, at: FilePoint, id = freshId(block, kind)): Unit {
  const names = kind === 'strips' ? ['strip1', 'strip2', 'strip3'] : KIND_FACTS[kind].names
  const ids = block.fabrics.map(({ id }) => id)
  const fabrics = Object.fromEntries(names.map((name, index) => [name, ids[(kind === 'strips' ? index : Math.min(index, 1)) % ids.length] as string]))
  return { id, kind, at, size: SIZES[kind], fabrics, ...(kind === 'cornered' ? { corner: 0.5 } : {}) } as Unit
}

export const sizeOfKind = (kind: TrayKind): readonly [number, number] => SIZES[kind]

/** More than a maker lays in one go. */
const MOST = 4000

/** A run from one cell to another: as many of a kind as stand side by side between them, where there is room. */
export function runOf(block: Block, kind: TrayKind, from: Spot, to: Spot): Unit[] {
  const [w, h] = SIZES[kind]
  const steps = (axis: 0 | 1, size: number): number[] => {
    const count = Math.floor(Math.abs(to[axis] - from[axis]) / size) + 1
    const way = to[axis] < from[axis] ? -size : size
    return Array.from({ length: count }, (_, index) => from[axis] + index * way)
  }
  const places = steps(1, h).flatMap((y) => steps(0, w).map((x): Spot => [x, y]))
  const ids = freshIds(block, kind, Math.min(MOST, places.length))
  return places
    .slice(0, MOST)
    .filter((at) => fits(block, [{ at, size: SIZES[kind] }], new Set()))
    .map((at, index) => newUnit(block, kind, at, ids[index]))
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
