/** What an edit makes of a document. Computed once: first to try whether the result fits, then to apply it. */
import { produce } from 'immer'
import type { Edit, Quilt, QuiltEdit } from '../../geometry/index.ts'
import type { Doc } from './document.ts'

/** An edit of a block or of a quilt. */
export type DocEdit<D extends Doc> = D extends Quilt ? QuiltEdit : Edit

const known = new WeakMap<object, { readonly block: Doc; readonly after: Doc }>()

export function editResult<D extends Doc>(block: D, edit: DocEdit<D>): D {
  const last = known.get(edit)
  if (last?.block === block) return last.after as D
  const after = produce(block, (draft) => {
    edit.change(draft as never)
  })
  known.set(edit, { block, after })
  return after
}
