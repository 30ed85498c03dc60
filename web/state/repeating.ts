/** An edit with what it does to the images of what it touches, while edits repeat. */
import { produce } from 'immer'
import { type Block, type Edit, imagesOf, type Repeat, withImages } from '../../geometry/index.ts'

export const outcome = (block: Block, { change }: Edit): Block =>
  produce(block, (draft) => {
    change(draft as Parameters<typeof change>[0])
  })

export function repeating(block: Block, edit: Edit, repeat: Repeat): Edit {
  if (repeat === 'off') return edit
  const images = imagesOf(block, outcome(block, edit), repeat)
  const { changed, added, removed } = images
  return changed.length + added.length + removed.length === 0 ? edit : withImages(edit, images)
}
