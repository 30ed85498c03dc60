/** The unit or fabric that is being dragged between the lists at the left and the board. */
import { UnitPicture } from '../board/UnitPicture.tsx'
import { useTrayDrag } from '../board/hand/trayDrag.ts'
import { useStore } from '../document/store.ts'
import { Swatch } from '../drawing/FabricDefs.tsx'

export function DraggedItem() {
  const dragged = useTrayDrag()
  const block = useStore(({ history }) => history.block)
  if (dragged === null) return null
  const fabric = dragged.type === 'fabric' ? block.fabrics.find(({ id }) => id === dragged.fabric) : undefined
  return (
    <div className="drag-image" aria-hidden="true" style={{ left: dragged.x, top: dragged.y }}>
      {fabric !== undefined && <Swatch fabric={fabric} unit={block.measure.unit} />}
      {dragged.type === 'unit' && <UnitPicture block={block} kind={dragged.kind} />}
    </div>
  )
}
