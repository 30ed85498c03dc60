/** What every page of a quilt's booklet is made from. */
import type { QuiltBooklet } from '../../writing/quilt/quiltBooklet.ts'
import type { QuiltContext } from '../../writing/quilt/quiltContext.ts'
import type { QuiltCut } from '../../writing/quilt/quiltCutPieces.ts'
import type { FabricFill } from '../fabricFill.ts'
import type { PageWriter } from '../pageWriter.ts'

export interface QuiltJob {
  readonly pages: PageWriter
  readonly booklet: QuiltBooklet
  readonly context: QuiltContext
  readonly cut: QuiltCut
  readonly fabricFill: (fabric: string | null) => FabricFill
}
