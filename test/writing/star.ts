/** A star of four geese and a plain middle, its points half moss and half plum; every fabric invented. */
import type { Block } from '../../geometry/index.ts'

const wings = (leftWing: string, rightWing: string) => ({ goose: 'linen', leftWing, rightWing })

export const STAR: Block = {
  format: 'nestwright.block',
  version: 1,
  name: 'Evening star',
  measure: { unit: 'in', seam: '1/4' },
  grid: { columns: 4, rows: 4, cell: 3 },
  fabrics: [
    { id: 'linen', name: 'Linen white', colour: '#f3ede1' },
    { id: 'moss', name: 'Moss', colour: '#5c7a4b' },
    { id: 'plum', name: '=Plum, "dark"', colour: '#5b3350' },
  ],
  units: [
    { id: 'c1', kind: 'square', at: [0, 0], size: [1, 1], fabrics: { patch: 'linen' } },
    { id: 'c2', kind: 'square', at: [3, 0], size: [1, 1], fabrics: { patch: 'linen' } },
    { id: 'c3', kind: 'square', at: [0, 3], size: [1, 1], fabrics: { patch: 'linen' } },
    { id: 'c4', kind: 'square', at: [3, 3], size: [1, 1], fabrics: { patch: 'linen' } },
    { id: 'g1', kind: 'goose', at: [1, 0], size: [2, 1], turn: 2, fabrics: wings('moss', 'moss') },
    { id: 'g2', kind: 'goose', at: [3, 1], size: [1, 2], turn: 3, fabrics: wings('moss', 'plum') },
    { id: 'g3', kind: 'goose', at: [1, 3], size: [2, 1], turn: 0, fabrics: wings('plum', 'plum') },
    { id: 'g4', kind: 'goose', at: [0, 1], size: [1, 2], turn: 1, fabrics: wings('plum', 'moss') },
    { id: 'm', kind: 'square', at: [1, 1], size: [2, 2], fabrics: { patch: 'moss' } },
  ],
}

/** The block with one corner missing. */
export const withGap = (block: Block): Block => ({ ...block, units: block.units.filter(({ id }) => id !== 'c1') })
