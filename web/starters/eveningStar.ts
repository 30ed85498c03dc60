/** An invented example: a 12 inch star of one batch of geese, its points toward the corners. */
import type { Block } from '../../geometry/index.ts'

export const eveningStar: Block = {
  format: 'nestwright.block',
  version: 1,
  name: 'Evening star (example)',
  measure: { unit: 'in', seam: '1/4' },
  grid: { columns: 4, rows: 4, cell: 3 },
  fabrics: [
    { id: 'linen', name: 'Linen white', colour: '#f1e9da' },
    { id: 'brick', name: 'Old brick', colour: '#a8482f' },
    { id: 'moss', name: 'Moss', colour: '#5b7350' },
    { id: 'dusk', name: 'Dusk blue', colour: '#3b4f6e' },
    { id: 'honey', name: 'Honey', colour: '#d8a545' },
  ],
  units: [
    { id: 'corner-1', kind: 'square', at: [0, 0], size: [1, 1], fabrics: { patch: 'linen' } },
    { id: 'corner-2', kind: 'square', at: [3, 0], size: [1, 1], fabrics: { patch: 'linen' } },
    { id: 'corner-3', kind: 'square', at: [3, 3], size: [1, 1], fabrics: { patch: 'linen' } },
    { id: 'corner-4', kind: 'square', at: [0, 3], size: [1, 1], fabrics: { patch: 'linen' } },
    { id: 'centre', kind: 'square', at: [1, 1], size: [2, 2], fabrics: { patch: 'honey' } },
    { id: 'goose-top', kind: 'goose', at: [1, 0], size: [2, 1], turn: 2, method: 'geese-4', fabrics: { goose: 'linen', leftWing: 'brick', rightWing: 'brick' } },
    { id: 'goose-right', kind: 'goose', at: [3, 1], size: [1, 2], turn: 3, method: 'geese-4', fabrics: { goose: 'linen', leftWing: 'brick', rightWing: 'brick' } },
    { id: 'goose-bottom', kind: 'goose', at: [1, 3], size: [2, 1], turn: 0, method: 'geese-4', fabrics: { goose: 'linen', leftWing: 'brick', rightWing: 'brick' } },
    { id: 'goose-left', kind: 'goose', at: [0, 1], size: [1, 2], turn: 1, method: 'geese-4', fabrics: { goose: 'linen', leftWing: 'brick', rightWing: 'brick' } },
  ],
  order: 'auto',
}
