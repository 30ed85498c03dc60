/** The block or fabric that is being dragged from the list to the quilt. */
import type { Quilt } from '../../geometry/index.ts'
import { BlockPicture } from '../drawing/BlockPicture.tsx'
import { Swatch } from '../drawing/FabricDefs.tsx'
import { documentOf } from '../keeping/openBlock.ts'
import { useListDrag } from './listDrag.ts'
import { QuiltBlockPicture } from './QuiltBlockPicture.tsx'
import type { HandItem } from './quiltView.ts'

/** Pixels. */
const SIDE = 56

export function DraggedFromList({ quilt }: { readonly quilt: Quilt }) {
  const dragged = useListDrag()
  if (dragged === null) return null
  return (
    <div className="drag-image quilt-drag" aria-hidden="true" style={{ left: dragged.x, top: dragged.y }}>
      <ItemPicture quilt={quilt} item={dragged.item} side={SIDE} />
    </div>
  )
}

export function ItemPicture({ quilt, item, side }: { readonly quilt: Quilt; readonly item: HandItem; readonly side: number }) {
  if (item.type === 'block') return <QuiltBlockPicture quilt={quilt} id={item.id} side={side} />
  if (item.type === 'library') return <BlockPicture load={() => documentOf(item.card)} stamp={item.card} side={side} />
  const fabric = quilt.fabrics.find(({ id }) => id === item.fabric)
  return fabric === undefined ? null : <Swatch fabric={fabric} unit={quilt.measure.unit} />
}
