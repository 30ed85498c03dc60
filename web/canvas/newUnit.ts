/** A new unit of a kind, as it comes off the tray: its usual size, in the block's first fabrics. */
import { type Block, freshId, type Kind, KIND_FACTS, type Unit } from '../../geometry/index.ts'

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

export function newUnit(block: Block, kind: TrayKind, at: readonly [number, number]): Unit {
  const names = kind === 'strips' ? ['strip1', 'strip2', 'strip3'] : KIND_FACTS[kind].names
  const ids = block.fabrics.map(({ id }) => id)
  const fabrics = Object.fromEntries(names.map((name, index) => [name, ids[(kind === 'strips' ? index : Math.min(index, 1)) % ids.length] as string]))
  return { id: freshId(block, kind), kind, at, size: SIZES[kind], fabrics, ...(kind === 'cornered' ? { corner: 0.5 } : {}) } as Unit
}
