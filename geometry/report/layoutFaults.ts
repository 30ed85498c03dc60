/**
 * What keeps a layout from being sewn.
 *
 * In      a laid block, and the faults of the plane of its units within the grid.
 * Out     a problem for each gap, each overlap and each stretch of fabric beyond the grid, from left to right: where it is, in cells, and its area, in
 *         square cells. None where the patches cover the grid exactly once.
 */
import type { Laid } from '../block/lay.ts'
import { multiply, rational, toFile } from '../exact/rational.ts'
import { regions } from '../plane/regions.ts'
import type { Plane } from '../plane/subdivide.ts'
import type { Problem } from '../values/report.ts'
import { message } from '../values/messages.ts'

const FAULTS = {
  gap: message('cloth-missing'),
  overlap: message('units-overlap'),
  outside: message('cloth-outside'),
}

export function layoutFaults(laid: Laid, faults: Plane['faults']): Problem[] {
  if (faults.length === 0) return []
  const own = laid.patches.filter(({ unit }) => unit >= 0)
  const corners = own.map((patch) => patch.corners)
  const sorted = [...faults].sort((a, b) => a.from[0] - b.from[0] || a.from[1] - b.from[1] || a.to[0] - b.to[0] || a.to[1] - b.to[1])
  return regions(sorted, corners, laid.width, laid.height).map(({ kind, at, area, patches }) => ({
    code: kind,
    at: [toFile(multiply(at[0], rational(1, laid.den))), toFile(multiply(at[1], rational(1, laid.den)))],
    units: unitIds(
      laid,
      patches.map((patch) => (own[patch] as Laid['patches'][number]).unit),
    ),
    message: FAULTS[kind],
    area: area / (laid.den * laid.den),
  }))
}

/** Ids of units by their places in the block's list, each once; −1 (a border) has none. */
export const unitIds = (laid: Laid, units: readonly number[]): string[] => [...new Set(units)].flatMap((unit) => laid.block.units[unit]?.id ?? [])
