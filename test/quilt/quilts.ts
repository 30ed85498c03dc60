/** Quilts for tests, short to write; every fabric and block is invented. */
import type { Block, Turn, Unit } from '../../geometry/values/block.ts'
import type { Quilt, QuiltPlace, QuiltWay } from '../../geometry/values/quilt.ts'
import { sequence } from '../help.ts'

const FABRICS = [
  { id: 'pale', name: 'Pale', colour: '#eeeeee' },
  { id: 'deep', name: 'Deep', colour: '#224466' },
]

/** Plain places, one a cell. */
export function plainQuilt(columns: number, rows: number, cell: number | string, way: QuiltWay, seam: number | string = '1/4'): Quilt {
  const places: QuiltPlace[] = Array.from({ length: columns * rows }, (_, index) => ({
    id: `a${index}`,
    at: [index % columns, Math.floor(index / columns)],
    plain: 'pale',
  }))
  const measure = { unit: 'in' as const, seam }
  return {
    format: 'nestwright.quilt',
    version: 1,
    name: 'Invented',
    measure,
    grid: { columns, rows, cell },
    fabrics: FABRICS,
    blocks: [],
    places,
    way,
  }
}

/** A half-square triangle and three squares: seams across, up and aslant into a corner. */
export const UNITS: readonly Unit[] = [
  { id: 'h', kind: 'hst', at: [0, 0], size: [1, 1], fabrics: { upper: 'pale', lower: 'deep' } },
  { id: 'a', kind: 'square', at: [1, 0], size: [1, 1], fabrics: { patch: 'deep' } },
  { id: 'b', kind: 'square', at: [0, 1], size: [1, 1], fabrics: { patch: 'deep' } },
  { id: 'c', kind: 'hst', at: [1, 1], size: [1, 1], fabrics: { upper: 'deep', lower: 'pale' } },
]

export const block = (units: readonly Unit[], across = 2): Block => ({
  format: 'nestwright.block',
  version: 1,
  name: 'Invented',
  measure: { unit: 'in', seam: '1/4' },
  grid: { columns: across, rows: across, cell: 3 },
  fabrics: FABRICS,
  units,
  order: 'rows',
})

/** Copies of one block, edge to edge. */
export function pieced(across: number, extra: Partial<Quilt> = {}): Quilt {
  const quilt = plainQuilt(across, across, 6, {})
  const places = quilt.places.map(({ id, at }) => ({ id, at, block: 'one' }))
  return { ...quilt, blocks: [{ id: 'one', block: block(UNITS), wear: { pale: 'pale', deep: 'deep' } }], places, order: 'rows', ...extra }
}

/** A block of random squares and half-square triangles; `across` cells a side fill 12 inches. */
function randomBlock(random: () => number, across: number): Block {
  const fabric = (): string => (random() < 0.5 ? 'pale' : 'deep')
  const units = Array.from({ length: across * across }, (_, index): Unit => {
    const at = [index % across, Math.floor(index / across)] as const
    if (random() < 0.5) return { id: `u${index}`, kind: 'square', at, size: [1, 1], fabrics: { patch: fabric() } }
    return { id: `u${index}`, kind: 'hst', at, size: [1, 1], turn: Math.floor(random() * 4) as Turn, fabrics: { upper: fabric(), lower: fabric() } }
  })
  return { ...block(units, across), grid: { columns: across, rows: across, cell: `${12}/${across}` }, order: 'auto' }
}

/** Different random blocks of 2, 3 and 4 cells a side in places of 12 inches, turned at random; some lie across two places between frames. */
export function randomQuilt(columns: number, rows: number, seed: number, { spans = false, kinds = 4 } = {}): Quilt {
  const random = sequence(seed)
  const blocks = Array.from({ length: kinds }, (_, index) => ({
    id: `b${index}`,
    block: randomBlock(random, 2 + (index % 3)),
    wear: { pale: 'pale', deep: 'deep' },
  }))
  const taken = new Set<number>()
  const places: QuiltPlace[] = []
  for (let cell = 0; cell < columns * rows; cell++) {
    if (taken.has(cell)) continue
    const at = [cell % columns, Math.floor(cell / columns)] as const
    const wide = spans && at[0] + 1 < columns && random() < 0.3
    if (wide) taken.add(cell + 1)
    places.push({
      id: `p${cell}`,
      at,
      ...(wide ? { size: [2, 1] as const } : {}),
      block: `b${Math.floor(random() * kinds)}`,
      turn: Math.floor(random() * 4) as Turn,
    })
  }
  return { ...plainQuilt(columns, rows, 12, {}), blocks, places, frame: [{ fabric: 'pale' }] }
}
