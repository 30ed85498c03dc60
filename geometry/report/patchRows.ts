/**
 * The patches of a block as the report lists them.
 *
 * In      the laid block and the finished length of a cell in the measure's unit.
 * Out     a row for each patch: corners in cells, area in square finished units of measure.
 */
import type { Laid, LaidPatch } from '../block/lay.ts'
import { rational, toFile, toNumber } from '../exact/rational.ts'
import { type Dot, doubleArea } from '../plane/points.ts'
import type { Patch, ReportPoint } from '../values/report.ts'
import type { FindingsCache } from './findingsCache.ts'

export function patchesOf(laid: Laid, cell: number, cache: FindingsCache | null): Patch[] {
  if (cache === null) return laid.patches.map((patch) => patchRow(laid, patch, cell))
  const { patches } = cache
  patches.begin()
  return laid.patches.map((patch) => patches.keep(patch, patches.reuse(patch) ?? patchRow(laid, patch, cell)))
}

function patchRow(laid: Laid, { id, unit, name, fabric, corners }: LaidPatch, cell: number): Patch {
  const places = corners.map((corner) => (unit >= 0 ? asDrawn(laid, corner) : laid.places.written(corner)))
  const area = unit >= 0 ? Number(doubleArea(corners)) / (2 * laid.den * laid.den) : stripArea(laid, corners)
  return { id, unit: laid.block.units[unit]?.id ?? null, name, fabric, corners: places, area: area * cell * cell }
}

/** A unit may lie beyond the grid, where a border would be: its corners are as they are drawn. */
const asDrawn = ({ den }: Laid, [x, y]: Dot): ReportPoint => [toFile(rational(x, den)), toFile(rational(y, den))]

/** The area of a border strip, in square cells. */
function stripArea({ places }: Laid, corners: readonly Dot[]): number {
  const [from, , to] = corners as readonly [Dot, Dot, Dot]
  const wide = toNumber(places.x(to[0])) - toNumber(places.x(from[0]))
  return wide * (toNumber(places.y(to[1])) - toNumber(places.y(from[1])))
}
