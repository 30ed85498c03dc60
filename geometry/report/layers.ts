/**
 * What takes longer than a hand waits: the layers of fabric, and the wrong side sheet by sheet.
 *
 * In      a block.
 * Out     the findings with every place counted; the sheets as they lie on the ironing board.
 */
import type { Laid } from '../block/lay.ts'
import { outlineOf } from '../plane/outline.ts'
import { blockBounds, cellsByLayers } from '../pressing/layers/countLayers.ts'
import { folded } from '../pressing/layers/folds.ts'
import { wrongSideSheets } from '../pressing/layers/wrongSideSheets.ts'
import type { Block } from '../values/block.ts'
import type { Findings } from '../values/report.ts'
import { findingsOf, sewBlock } from './report.ts'

/** The findings with the layers of fabric, and the block cut into convex cells by its layers (flat lists x, y, x, y … in cells). */
export interface Layered {
  readonly findings: Findings
  readonly cells: readonly { readonly poly: readonly number[]; readonly layers: number }[]
}

/** The pressing with the fewest layers that can be found, with every place counted; no cells where the block is not sewn or has too many layers to count. */
export function layered(block: Block): Layered {
  const sewing = sewBlock(block, 'whole')
  const { layers, plans } = sewing
  const findings = findingsOf(sewing)
  if (plans === null || layers === null) return { findings, cells: [] }
  const plies = folded(layers.folds, plans.taken.pressed.toward)
  const cells = plies === null ? null : cellsByLayers(plies, blockBounds(layers.folds), layers.folds.allowance)
  return { findings, cells: cells ?? [] }
}

/** The block from its wrong side: sheets of fabric in cells as seen from the right side, the one nearest the ironing board first. */
export interface IronedSheet {
  readonly patch: string
  readonly fabric: string
  /** The right side shows where an allowance is folded back. */
  readonly face: 'wrong' | 'right'
  /** Convex parts side by side, flat lists x, y, x, y … */
  readonly parts: readonly (readonly number[])[]
  /** Cut and folded edges: x0, y0, x1, y1. */
  readonly edges: readonly (readonly number[])[]
}

/** Null where the block is not sewn, or has more sheets than anyone looks at. Pressed as `layered` presses it. */
export function wrongSide(block: Block): IronedSheet[] | null {
  const { laid, layers, plans } = sewBlock(block, 'whole')
  const sheets = plans === null || layers === null ? null : wrongSideSheets(layers.folds, plans.taken.pressed.toward)
  if (sheets === null) return null
  return sheets.map(({ patch, face, plies }): IronedSheet => {
    const parts = plies.map(({ poly }) => poly)
    const { id, fabric } = laid.patches[patch] as Laid['patches'][number]
    return { patch: id, fabric, face, parts, edges: outlineOf(parts) }
  })
}
