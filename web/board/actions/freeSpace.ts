/**
 * The nearest free place for units, whole cells away.
 *
 * In      a block, and units that are to be placed in it.
 * Out     how many cells across and down they must move; null where there is no room.
 * How     rows of places are tried from the nearest on, each from its middle outwards. Where a unit is in the way, the next place tried is beyond it: so a
 *         row costs as many tries as it has units, however many cells it has. Nothing farther than a place already found is tried.
 */
import type { Block, Unit } from '../../../geometry/index.ts'
import { unitInTheWay } from '../hitTest.ts'
import { around, type Rect, rectOf, type Point } from '../../document/shapes.ts'

const NO_IDS: ReadonlySet<string> = new Set()

export function freePlace(block: Block, units: readonly Unit[]): Point | null {
  const rects = units.map(rectOf)
  const all = around(rects)
  if (all === null) return null
  const { columns, rows } = block.grid
  const low: Point = [-Math.floor(all.at[0]), -Math.floor(all.at[1])]
  const high: Point = [Math.floor(columns - all.at[0] - all.size[0]), Math.floor(rows - all.at[1] - all.size[1])]
  if (high[0] < low[0] || high[1] < low[1]) return null
  let best: Point | null = null
  for (const dy of outward(low[1], high[1])) {
    if (best !== null && Math.abs(dy) > Math.hypot(...best)) break
    for (const way of [-1, 1] as const) {
      const dx = firstFree(block, units, rects, dy, way, low[0], high[0])
      if (dx !== null && (best === null || comesBefore([dx, dy], best))) best = [dx, dy]
    }
  }
  return best
}

/** The nearer one; of two that are as near, the upper, then the left. */
function comesBefore(a: Point, b: Point): boolean {
  const [far, farther] = [Math.hypot(...a), Math.hypot(...b)]
  return far < farther || (far === farther && (a[1] < b[1] || (a[1] === b[1] && a[0] < b[0])))
}

/** Whole numbers from low to high, the nearest to zero first. */
function* outward(low: number, high: number): Generator<number> {
  const farthest = Math.max(Math.abs(low), Math.abs(high))
  for (let off = 0; off <= farthest; off++) {
    if (off > 0 && -off >= low && -off <= high) yield -off
    if (off >= low && off <= high) yield off
  }
}

/** The first place in a row where all have room, going one way from zero. */
function firstFree(block: Block, units: readonly Unit[], rects: readonly Rect[], dy: number, way: -1 | 1, low: number, high: number): number | null {
  let dx = 0 + Math.min(high, Math.max(low, 0))
  while (dx >= low && dx <= high) {
    const next = beyond(block, units, rects, dx, dy, way)
    if (next === dx) return dx
    dx = next
  }
  return null
}

/** The same place if all have room there; else the next one that is clear of the first unit in the way. */
function beyond(block: Block, units: readonly Unit[], rects: readonly Rect[], dx: number, dy: number, way: -1 | 1): number {
  for (const [index, { at, size }] of rects.entries()) {
    const wall = unitInTheWay(block, { at: [at[0] + dx, at[1] + dy], size }, NO_IDS, units[index])
    if (wall === undefined) continue
    const rect = rectOf(wall)
    const clear = way > 0 ? Math.ceil(rect.at[0] + rect.size[0] - at[0] - EPSILON) : Math.floor(rect.at[0] - at[0] - size[0] + EPSILON)
    return way > 0 ? Math.max(dx + 1, clear) : Math.min(dx - 1, clear)
  }
  return dx
}

/** Cells: thirds and the like are not whole in doubles. */
const EPSILON = 1e-9
