/**
 * How many patches a block has, without laying it out.
 *
 * In      a block that has been read.
 * Out     the patches of its units, and of its borders: four strips each, and four corner squares where they have a fabric.
 */
import type { Block } from '../values/block.ts'

export function patchCount({ units, borders = [] }: Block): number {
  const inUnits = units.reduce((sum, { fabrics }) => sum + Object.keys(fabrics).length, 0)
  return borders.reduce((sum, { corner }) => sum + (corner === undefined ? 4 : 8), inUnits)
}
