/**
 * The pipeline from end to end: a block in, one report out.
 *
 * lay → subdivide → plan → sew → press → meet; beside it cutting, edges and the ditch route. A layout that leaves a gap, overlaps or runs
 * beyond the grid cannot be sewn as it stands: then the parts that need sewn joins are empty and everything else is still said.
 */
import { lay } from '../block/lay.ts'
import type { Block } from '../values/block.ts'
import { found } from './findings.ts'
import { type QuiltingWishes, quilt } from '../quilting/quiltingRoute.ts'
import { planeOf, sewnBlock } from './sewing.ts'
import type { Ditch, Report } from '../values/report.ts'

const NO_DITCH: Ditch = { routes: [], retraced: 0, length: 0, starts: 0, turns: 0, proved: true }

export function report(block: Block): Report {
  const sewn = sewnBlock(block)
  return { ...found(sewn), ditch: sewn.sewn === null ? NO_DITCH : quilt(sewn.laid, sewn.plane) }
}

/** The quilting route as the maker wishes it: as long as the report's, unless she begins where that costs something. */
export function quiltingRoute(block: Block, wishes: QuiltingWishes = {}): Ditch {
  const laid = lay(block)
  const plane = planeOf(laid)
  // With borders on, the strips fill what lies round the grid: cloth beyond it overlaps them.
  return plane.faults.length > 0 ? NO_DITCH : quilt(laid, plane, wishes)
}
