/** An edit together with the same edit of every symmetric image, while edits are repeated around the middle of the block. */
import { type Block, type Edit, imagesOf, type Repeat, withImages } from '../../geometry/index.ts'
import { editResult } from './editResult.ts'

const known = new WeakMap<Edit, { readonly block: Block; readonly repeat: Repeat; readonly whole: Edit }>()

export function symmetricEdit(block: Block, edit: Edit, repeat: Repeat): Edit {
  if (repeat === 'off') return edit
  const last = known.get(edit)
  if (last?.block === block && last.repeat === repeat) return last.whole
  const images = imagesOf(block, editResult(block, edit), repeat)
  const { changed, added, removed } = images
  const whole = changed.length + added.length + removed.length === 0 ? edit : withImages(edit, images)
  known.set(edit, { block, repeat, whole })
  return whole
}
