/** What a maker keeps in the library and has open: a block or a quilt. */
import type { Block, Quilt } from '../../geometry/index.ts'

export type Doc = Block | Quilt

export const isQuilt = (doc: Doc): doc is Quilt => doc.format === 'nestwright.quilt'
