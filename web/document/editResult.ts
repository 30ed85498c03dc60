/** What an edit makes of a block. Computed once: first to try whether the result fits, then to apply it. */
import { produce } from 'immer'
import type { Block, Edit } from '../../geometry/index.ts'

const known = new WeakMap<Edit, { readonly block: Block; readonly after: Block }>()

export function editResult(block: Block, edit: Edit): Block {
  const last = known.get(edit)
  if (last?.block === block) return last.after
  const after = produce(block, (draft) => {
    edit.change(draft as Parameters<typeof edit.change>[0])
  })
  known.set(edit, { block, after })
  return after
}
