/**
 * Blocks as a quilt wears them, planned and pressed.
 *
 * In      a quilt that has been read.
 * Out     for each block its sewing, with the quilt's fabrics in the place of its own (`block/fabric` where it wears none).
 */
import { cellOf, lengthOf } from '../block/lengthsOf.ts'
import { add, type Rational, ZERO } from '../exact/rational.ts'
import { sewBlock } from '../report/report.ts'
import type { Sewing } from '../report/sewing.ts'
import type { Block, Fabric } from '../values/block.ts'
import type { Quilt, QuiltBlock } from '../values/quilt.ts'
import { type ExactSize, times } from './measures.ts'

export interface WornBlock {
  readonly id: string
  readonly block: Block
  readonly sewing: Sewing
  /** With its own borders, before turning. */
  readonly finished: ExactSize
}

export function wornBlocks(quilt: Quilt): ReadonlyMap<string, WornBlock> {
  return new Map(
    quilt.blocks.map((item) => {
      const block = wornBlock(quilt, item)
      return [item.id, { id: item.id, block, sewing: sewBlock(block, 'quick'), finished: finishedOf(block) }]
    }),
  )
}

/** A block with the quilt's fabrics in the place of its own, measured as the quilt is. */
export function wornBlock(quilt: Quilt, { id, block, wear = {} }: QuiltBlock): Block {
  const worn = (fabric: string): string => (Object.hasOwn(wear, fabric) ? (wear[fabric] as string) : `${id}/${fabric}`)
  const fabrics = new Map<string, Fabric>()
  for (const fabric of block.fabrics) {
    const name = worn(fabric.id)
    fabrics.set(name, quilt.fabrics.find((one) => one.id === name) ?? { ...fabric, id: name })
  }
  const { cloth: _, ...own } = block
  return {
    ...own,
    measure: quilt.measure,
    ...(quilt.cloth === undefined ? {} : { cloth: quilt.cloth }),
    fabrics: [...fabrics.values()],
    units: block.units.map((unit) => ({
      ...unit,
      fabrics: Object.fromEntries(Object.entries(unit.fabrics).map(([patch, fabric]) => [patch, worn(fabric)])),
    })),
    ...(block.borders === undefined
      ? {}
      : {
          borders: block.borders.map((border) => ({
            ...border,
            fabric: worn(border.fabric),
            ...(border.corner === undefined ? {} : { corner: worn(border.corner) }),
          })),
        }),
  }
}

/** A block's finished size with its own borders, in the measure's unit. */
export function finishedOf(block: Block): ExactSize {
  const borders = (block.borders ?? []).reduce<Rational>((all, { finishedWidth }) => add(all, times(lengthOf(finishedWidth), 2)), ZERO)
  const cell = cellOf(block)
  return [add(times(cell, block.grid.columns), borders), add(times(cell, block.grid.rows), borders)]
}
