/**
 * The cell size nearest to the block's own with which every piece sewn as cut is on the ruler.
 *
 * In      a report whose exact sizes are not all on the ruler, and its block.
 * Out     that cell, in the measure's unit; null where no other cell would do better (pieces on the slant, an odd seam allowance).
 * Exact   a piece is p/q cells and two seams: with the seams on the ruler, the cells that do, on the ruler themselves, are the multiples of
 *         one mark × lcm(q).
 */
import type { Block } from '../values/block.ts'
import { lcm, parseRational, toNumber } from '../exact/rational.ts'
import { isOnRuler } from '../exact/lengths.ts'
import type { CutRow, Findings } from '../values/report.ts'

/** Parts of a unit of measure that a maker can read off. */
const MARKS = { in: 16, cm: 10 } as const
/** Finer parts of a cell than this are not a piece on the grid but one on the slant. */
const FINEST = 512

/** That cell in the unit of measure, or null. */
export function friendlyCell(report: Findings, block: Block): number | null {
  const { unit, seam } = report.measure
  const cell = toNumber(parseRational(block.grid.cell) ?? { n: 0n, d: 1n })
  if (cell <= 0 || !isOnRuler(2 * seam, unit)) return null
  const lengths = report.cut.filter(sewnAsCut).flatMap(({ method, size }) => (method === 'strip-set' ? [Math.min(...size)] : size))
  const parts = lengths.map((length) => fraction((length - 2 * seam) / cell))
  if (parts.length === 0 || parts.includes(null)) return null
  const over = parts.reduce((sum, part) => lcm(sum, part?.q ?? 1n), 1n)
  // The cell itself, one cell over, must be on the ruler too: so the whole numbers p share nothing.
  const step = Number(over) / MARKS[unit]
  const nearest = Math.max(1, Math.round(cell / step)) * step
  return Math.abs(nearest - cell) < 1e-9 ? null : nearest
}

const sewnAsCut = (row: CutRow): boolean => row.for.length > 0 && row.then === 'none' && ['plain', 'corner-flip', 'strip-set'].includes(row.method)

function fraction(value: number): { readonly q: bigint } | null {
  for (let q = 1; q <= FINEST; q += 1) {
    const p = Math.round(value * q)
    if (p > 0 && Math.abs(value * q - p) < 1e-7) return { q: BigInt(q) }
  }
  return null
}
