/**
 * The pipeline to its last stage: the whole report of a block, and the quilting route as a maker wants it.
 *
 * It stands apart from the findings, because a page that follows a hand needs no quilting route: the route's search is loaded with the sheet that shows it.
 */
import { planeOf } from '../block/blockPlane.ts'
import { lay } from '../block/lay.ts'
import { quiltingOf } from '../block/quiltingOf.ts'
import { type QuiltingPart, quiltingParts } from '../quilting/quiltingParts.ts'
import { type QuiltingOptions, quilt } from '../quilting/quiltingRoute.ts'
import type { Block } from '../values/block.ts'
import type { Ditch, Report } from '../values/report.ts'
import { findingsOf, sewBlock } from './report.ts'

/** The whole report of a block. */
export function report(block: Block): Report {
  const sewing = sewBlock(block, 'whole')
  return { ...findingsOf(sewing), ditch: sewing.plans === null ? NO_DITCH : quilt(sewing.laid, sewing.plane) }
}

const NO_DITCH: Ditch = { routes: [], retraced: 0, length: 0, starts: 0, turns: 0, proved: true }

/** The quilting route as the maker wants it: as long as the report's, unless she chose a start that costs something. */
export function quiltingRoute(block: Block): Ditch {
  const { begin } = quiltingOf(block)
  const options: QuiltingOptions = begin === null ? {} : { begin, atAnyCost: true }
  const laid = lay(block)
  const plane = planeOf(laid)
  // With borders on, the strips fill what lies round the grid: fabric beyond it overlaps them.
  return plane.faults.length > 0 ? NO_DITCH : quilt(laid, plane, options)
}

/** The quilting of a large block part by part, each part with a line of its own; none where the layout can't be sewn. */
export function quiltingByParts(block: Block): QuiltingPart[] {
  const laid = lay(block)
  const plane = planeOf(laid)
  return plane.faults.length > 0 ? [] : quiltingParts(laid, plane)
}
