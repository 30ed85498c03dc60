/** An invented block of free patches alone: a paper boat, in centimetres. */
import type { Block, FilePoint, Unit } from '../../../geometry/index.ts'

const patch = (id: string, fabric: string, ...corners: FilePoint[]): Unit => ({ id, kind: 'polygon', corners, fabrics: { patch: fabric } })

export const paperBoat: Block = {
  format: 'nestwright.block',
  version: 1,
  name: 'Paper boat (example)',
  measure: { unit: 'cm' },
  grid: { columns: 6, rows: 4, cell: 4 },
  fabrics: [
    { id: 'sky', name: 'Pale sky', colour: '#cfe0e6' },
    { id: 'sail', name: 'Newsprint', colour: '#f1ede2' },
    { id: 'shade', name: 'Grey print', colour: '#b9b3a6' },
    { id: 'hull', name: 'Tar', colour: '#3a3733' },
    { id: 'sea', name: 'Deep sea', colour: '#2f5568' },
  ],
  units: [
    patch('sky-left', 'sky', [0, 0], [3, 0], [1, 3], [0, 3]),
    patch('sail', 'sail', [3, 0], [3, 3], [1, 3]),
    patch('jib', 'shade', [3, 1], [5, 3], [3, 3]),
    patch('sky-right', 'sky', [3, 0], [6, 0], [6, 3], [5, 3], [3, 1]),
    patch('sea-left', 'sea', [0, 3], [1, 4], [0, 4]),
    patch('hull', 'hull', [0, 3], [6, 3], [5, 4], [1, 4]),
    patch('sea-right', 'sea', [6, 3], [6, 4], [5, 4]),
  ],
}
