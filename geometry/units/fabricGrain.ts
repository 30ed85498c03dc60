/**
 * How the fabric of a patch lies in the block.
 *
 * In      a unit and the name of one of its patches.
 * Out     quarter turns clockwise from how the fabric comes off the bolt, from 0 up to 3.5: fabric is cut square to its unit at turn 0 and turns with it.
 *         A patch that is cut square and set on point lies half a quarter turn round: the middle of a square in a square; halves made four at a time, whose outside
 *         edges are on the bias. Fabric has a right side, so a mirrored unit is another unit, and its fabric is not mirrored. Free patches lie straight.
 * Source  halves made four at a time have bias edges outside [S33]; the rest common practice, no source.
 */
import type { Unit } from '../values/block.ts'
import { methodOf } from './kinds.ts'

export function lieOf(unit: Unit, patch: string): number {
  return unit.kind === 'polygon' ? 0 : (unit.turn ?? 0) + (isOnPoint(unit, patch) ? 0.5 : 0)
}

function isOnPoint(unit: Unit, patch: string): boolean {
  const method = methodOf(unit)
  return (unit.kind === 'diamond' && patch === 'centre' && method === 'plain') || (unit.kind === 'hst' && method === 'hst-4')
}
