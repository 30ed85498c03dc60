/** Draws what the hand drags, the selection and the cursor: again for each step, for nothing else lies on its layer. */
import { type RefObject, useEffect, useMemo } from 'react'
import { unitShapes, pointOf, rectOf } from '../../document/shapes.ts'
import { useInk } from '../../drawing/useInk.ts'
import { gestureOf } from '../hand/hand.ts'
import { handlesFor } from '../hand/handles.ts'
import { nextCorner } from '../hand/snapContext.ts'
import { trayTarget } from '../hand/trayDrop.ts'
import { useTrayDrag } from '../hand/trayDrag.ts'
import { handContext } from '../hand/useHand.ts'
import type { HandState } from '../hand/values.ts'
import { unitById, unitsById } from '../hitTest.ts'
import { dragImages, editOnRelease, idsDragged, pathsOfUnits, symmetricImages, symmetryLines } from './dragImages.ts'
import { type DragOverlay, drawDragOverlay } from './dragOverlay.ts'
import { clearMarks, type MarksScene } from './marksLayer.ts'
import { pointOfFinding } from './pointedFinding.ts'
import type { BoardLayers, ShownBlock } from './useLayers.ts'

/** `byKeys`: the board is worked with the keyboard. */
export function useDragLayer(
  board: RefObject<HTMLDivElement | null>,
  layers: RefObject<BoardLayers | null>,
  { block, report, view }: ShownBlock,
  hand: HandState,
  byKeys: boolean,
  marks: MarksScene,
): void {
  const tray = useTrayDrag()
  const { ink, paper, accent } = useInk()
  const context = handContext(marks.size)
  const gesture = gestureOf(hand, context.document)
  const ids = idsDragged(gesture)
  // Made once for each drag, and then only moved.
  const dragged = useMemo(() => (ids === null ? null : pathsOfUnits(block, ids)), [block, ids])
  const pressing = view.mode === 'pressing'
  const selected = useMemo(() => (pressing ? [] : unitsById(block, view.selected).map(rectOf)), [block, view.selected, pressing])
  const patch = useMemo(() => {
    const unit = view.patch === null ? undefined : unitById(block, view.patch.unit)
    return unit === undefined ? null : (unitShapes(unit).find(({ name }) => name === view.patch?.name)?.corners ?? null)
  }, [block, view.patch])
  useEffect(() => {
    const target = tray?.type === 'unit' ? trayTarget(tray, pixelsOf(board.current, tray), context) : null
    const symmetric = symmetricImages(block, editOnRelease(gesture, target), view.repeat)
    const drawing = view.tool === 'patch'
    const resting = gesture === null && tray === null
    const overlay: DragOverlay = {
      block,
      selected: dragged !== null || gesture?.type === 'resize' ? [] : selected,
      handles: handlesFor({ ...hand, gesture }, context),
      images: [...symmetric.images, ...dragImages(block, gesture, dragged, target)],
      left: [...(dragged === null ? [] : [dragged]), ...symmetric.left],
      guides: gesture?.type === 'move' && gesture.swap === null ? gesture.snapped.guides : (target?.guides ?? []),
      box: gesture?.type === 'box' ? { from: gesture.from.at, to: gesture.to.at } : null,
      loop: gesture?.type === 'loop' ? gesture.points.map(({ at }) => at) : [],
      corners: drawing ? view.corners.map(pointOf) : [],
      nextCorner: drawing ? (nextCorner(hand.hover, context) ?? (byKeys ? view.cursor : null)) : null,
      cursor: byKeys && !drawing && !pressing ? view.cursor : null,
      patch: pressing ? null : patch,
      finding: pointOfFinding(view.finding, report),
      clearMarks: resting ? (pen) => clearMarks(pen, marks) : null,
      symmetry: symmetryLines(view.repeat, block.grid),
      ink,
      paper,
      accent,
    }
    layers.current?.canvas.drag.show((pen) => drawDragOverlay(pen, overlay, marks.frame))
  })
}

function pixelsOf(board: HTMLElement | null, { x, y }: { readonly x: number; readonly y: number }): [number, number] {
  const box = board?.getBoundingClientRect()
  return [x - (box?.left ?? 0), y - (box?.top ?? 0)]
}
