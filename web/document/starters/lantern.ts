/** An invented example: a lantern with a body of scrap strips, cap and base bars, and clipped corners. */
import type { Block } from '../../../geometry/index.ts'

export const lantern: Block = {
  format: 'nestwright.block',
  version: 1,
  name: 'Harbour lantern (example)',
  measure: { unit: 'in', seam: '1/4' },
  grid: { columns: 6, rows: 8, cell: 1.5 },
  fabrics: [
    { id: 'night', name: 'Night sky', colour: '#2c3a52' },
    { id: 'iron', name: 'Iron', colour: '#565049' },
    { id: 'glow', name: 'Glow', colour: '#e8b64c' },
    { id: 'amber', name: 'Amber', colour: '#cf7f33' },
    { id: 'straw', name: 'Straw', colour: '#f0dfae' },
    { id: 'rust', name: 'Rust', colour: '#9c4a2d' },
  ],
  units: [
    { id: 'sky-1', kind: 'square', at: [0, 0], size: [2, 1], fabrics: { patch: 'night' } },
    { id: 'ring', kind: 'square', at: [2, 0], size: [2, 1], fabrics: { patch: 'iron' } },
    { id: 'sky-2', kind: 'square', at: [4, 0], size: [2, 1], fabrics: { patch: 'night' } },
    { id: 'cap-1', kind: 'hst', at: [0, 1], size: [1, 1], turn: 0, fabrics: { upper: 'night', lower: 'iron' } },
    { id: 'cap', kind: 'square', at: [1, 1], size: [4, 1], fabrics: { patch: 'iron' } },
    { id: 'cap-2', kind: 'hst', at: [5, 1], size: [1, 1], turn: 1, fabrics: { upper: 'night', lower: 'iron' } },
    {
      id: 'body',
      kind: 'strips',
      at: [0, 2],
      size: [6, 4],
      fabrics: { strip1: 'rust', strip2: 'amber', strip3: 'glow', strip4: 'straw', strip5: 'amber', strip6: 'rust' },
    },
    { id: 'base', kind: 'cornered', at: [0, 6], size: [6, 1], corner: 1, fabrics: { centre: 'iron', bottomLeft: 'night', bottomRight: 'night' } },
    { id: 'sky-3', kind: 'square', at: [0, 7], size: [6, 1], fabrics: { patch: 'night' } },
  ],
  order: 'auto',
}
