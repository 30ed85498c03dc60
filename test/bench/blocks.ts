/** Blocks of any size for the measured runs: every kind of the first slice, no two neighbours alike, always the same. */
import type { Block, Turn, Unit } from '../../geometry/index.ts'

const FABRICS = ['linen', 'moss', 'plum', 'clay'] as const
const fabric = (index: number): string => FABRICS[index % FABRICS.length] as string

/** n × n units; each fills one cell. */
export function manyUnits(n: number): Block {
  const units = Array.from({ length: n * n }, (_, index) => unitAt(index % n, Math.floor(index / n)))
  return {
    format: 'nestwright.block',
    version: 1,
    name: `${n} by ${n}`,
    measure: { unit: 'in' },
    grid: { columns: n, rows: n, cell: 3 },
    fabrics: FABRICS.map((id, index) => ({ id, name: id, colour: ['#f3ede1', '#5c7a4b', '#70405f', '#b5653f'][index] as string })),
    units,
  }
}

function unitAt(x: number, y: number): Unit {
  const base = { id: `u${x}.${y}`, at: [x, y], size: [1, 1] } as const
  const turn = ((x + 2 * y) % 4) as Turn
  const [a, b] = [fabric(x + y), fabric(x + y + 1)]
  switch ((x * 3 + y) % 4) {
    case 0:
      return { ...base, kind: 'square', fabrics: { patch: a } }
    case 1:
      return { ...base, kind: 'hst', turn, fabrics: { upper: a, lower: b } }
    case 2:
      return { ...base, kind: 'hourglass', turn, fabrics: { top: a, right: b, bottom: a, left: b } }
    default:
      return { ...base, kind: 'strips', turn, fabrics: { strip1: a, strip2: b, strip3: a } }
  }
}

/** The same block with one unit turned: what an edit on the canvas leaves behind. */
export function turned(block: Block, index: number): Block {
  return {
    ...block,
    units: block.units.map((unit, at) => (at === index && unit.kind !== 'polygon' ? { ...unit, turn: (((unit.turn ?? 0) + 1) % 4) as Turn } : unit)),
  }
}
