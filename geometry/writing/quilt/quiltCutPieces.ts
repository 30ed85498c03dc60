/**
 * The cut list of a quilt as a maker reads it: alike pieces together, the largest first, each with what it is for.
 *
 * In      a quilt; its report, or one of its parts.
 * Out     rows as those of a block's cut list.
 */
import { shortSideFirst } from '../../exact/lengths.ts'
import type { QuiltCutRow } from '../../quilt/cutting.ts'
import { type Message, message, type QuiltCutPart } from '../../values/messages.ts'
import type { Quilt } from '../../values/quilt.ts'
import type { FabricRow, UnitRow } from '../../values/report.ts'
import { cutPieces, type ListedPiece } from '../cutPieces.ts'

/** What is cut for a quilt, or for one of its parts. */
export interface QuiltCut {
  readonly units: readonly UnitRow[]
  readonly cut: readonly QuiltCutRow[]
  readonly fabric: readonly FabricRow[]
}

export function quiltCutPieces({ units, cut }: QuiltCut, quilt: Quilt): ListedPiece[] {
  const ofUnits = cut.filter((row) => row.part === 'block' && row.for.some((id) => id.includes('/')))
  const others = cut.filter((row) => !ofUnits.includes(row)).map((row) => otherPiece(row, quilt))
  const pieces = cutPieces({ units, cut: ofUnits, patches: [], measure: { unit: quilt.measure.unit, seam: 0 } })
  return [...pieces, ...others].sort((a, b) => b.size[0] * b.size[1] - a.size[0] * a.size[1])
}

function otherPiece(row: QuiltCutRow, quilt: Quilt): ListedPiece {
  const purpose: Message = message('cut-for-quilt', { part: partOf(row, quilt), each: row.pieced ?? 1 })
  const long = row.part === 'border' && row.shape !== 'square'
  return { ...row, size: shortSideFirst(row.size), hand: null, methods: [row.method], purposes: [purpose], units: [], isBorderStrip: long }
}

function partOf({ part, shape, fabric }: QuiltCutRow, { way }: Quilt): QuiltCutPart {
  if (part === 'block') return 'block-border'
  return part === 'sash' && shape === 'square' && fabric === way?.sash?.corner ? 'corner' : part
}
